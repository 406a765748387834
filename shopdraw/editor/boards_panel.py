"""The list of boards, and below it the chosen board alone with its cuts and joints."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QPainter, QPaintEvent, QResizeEvent, QTransform
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.mark import Mark, Text
from shopdraw.editor.board_list import BoardModel, carried, cut_words, left_words, rows_of
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import batch, paint
from shopdraw.editor.said import said
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import State
from shopdraw.editor.tongue import translate

if TYPE_CHECKING:
    from shopdraw.editor.router_job import RouterSight
    from shopdraw.wood.assembly import Assembly

_ROOM = 14.0
PIXELS_PER_PAPER_MM = 3.0
MM3_IN_CM3 = 1000.0
NAMES = 1
"""The column of names."""
LEAST_NAME_IN_LETTERS = 14
"""How wide the column of names is at least: the longest single word."""


class BoardsPanel(QWidget):
    """All boards.

    Signals:
        chosen: the id of the board chosen here.
        router_wished: a board that is to be seen as the router gets it.
    """

    chosen = Signal(str)
    router_wished = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._state: State | None = None
        self._shown: Shown | None = None
        self.model = BoardModel()
        self.table = BoardTable(self)
        self.table.setModel(self.model)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        self.table.setTabKeyNavigation(False)
        self.table.verticalHeader().hide()
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        # Long names go on in a second line; all the rest stays in sight.
        header.setSectionResizeMode(NAMES, QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(False)
        self.table.setWordWrap(True)
        self.table.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setHighlightSections(False)
        self.table.setAccessibleName(self.tr("Boards of the piece"))
        self.alone = BoardView(self)
        self.sight = QComboBox(self)
        self.sight.addItem(self.tr("The board alone"), False)
        self.sight.addItem(self.tr("As the router gets it"), True)
        self.sight.setAccessibleName(self.tr("How the chosen board is shown"))
        self.sight.setToolTip(self.tr("The finished board, or what the router cuts and what it leaves"))
        self.sight.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.sight.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.sight.activated.connect(lambda _row: self._show_alone(self.board))
        self.about = QLabel(self)
        self.about.setWordWrap(True)
        self.about.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.about.setText(self.tr("Choose a board to see it alone, with its cuts and joints."))
        whole = QVBoxLayout(self)
        whole.addWidget(self.table, 3)
        whole.addWidget(self.sight, 0, Qt.AlignmentFlag.AlignLeft)
        whole.addWidget(self.alone, 2)
        told = ReadingArea(self)
        told.setWidget(self.about)
        told.setWidgetResizable(True)
        told.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        told.setAccessibleName(self.tr("Cuts and joints of the chosen board"))
        self.about.setAlignment(Qt.AlignmentFlag.AlignTop)
        whole.addWidget(told, 1)
        self.table.selectionModel().currentRowChanged.connect(self._choose)

    def show_state(self, state: State, shown: Shown) -> None:
        """Shows the boards of a state."""
        self._state, self._shown = state, shown
        self.model.show_rows(rows_of(state.assembly, shown) if state.assembly else ())
        self._show_alone(self.board)

    @property
    def board(self) -> str:
        """The chosen board's id, or ""."""
        row = self.table.currentIndex().row()
        return self.model.rows[row].board if 0 <= row < len(self.model.rows) else ""

    def choose(self, board: str) -> None:
        """Chooses a board from outside, without telling that it was chosen here."""
        row = self.model.row_of(board)
        if row == self.table.currentIndex().row():
            return
        with_signals = self.table.selectionModel().blockSignals(True)
        try:
            self.table.setCurrentIndex(self.model.index(row, 0) if row >= 0 else QModelIndex())
        finally:
            self.table.selectionModel().blockSignals(with_signals)
        if row >= 0:
            self.table.scrollTo(self.model.index(row, 0))
        self.table.viewport().update()
        self._show_alone(board)

    def _choose(self, _current: QModelIndex, _before: QModelIndex) -> None:
        self._show_alone(self.board)
        self.chosen.emit(self.board)

    def _show_alone(self, name: str) -> None:
        state, shown = self._state, self._shown
        assembly = state.assembly if state else None
        if assembly is None or shown is None or not name or not assembly.has(name):
            self.alone.show_marks(())
            return
        board = assembly.board(name)
        if self.sight.currentData() and self.isVisible():
            self.about.setText(self.tr("The router's file of {name} is being made…").format(name=said(board.name)))
            self.router_wished.emit(board)
            return
        # Lines of a board come from its solid: loaded when the first board is chosen.
        from shopdraw.editor.views import board_alone

        self.alone.show_marks(board_alone(board) if self.isVisible() else ())
        sizes = " × ".join(shown.length(mm) for mm in (board.length, board.width, board.thickness))
        head = f"{board.label}  {said(board.name)}: {sizes}"
        self.about.setText("\n".join((head, *carried(assembly, board, shown))))


    def show_router(self, sight: RouterSight) -> None:
        """Shows a board as the router gets it, where that is still wanted."""
        shown = self._shown
        if shown is None or sight.board != self.board or not self.sight.currentData():
            return
        self.alone.show_marks(sight.marks, true_letters=True)
        assembly = self._state.assembly if self._state else None
        if assembly is not None:
            self.about.setText(said(sight.why_not) or "\n".join(self._router_lines(assembly, sight, shown)))

    def _router_lines(self, assembly: Assembly, sight: RouterSight, shown: Shown) -> Iterator[str]:
        for number, (face, layers) in enumerate(sight.settings, start=1):
            yield self.tr("Setting {number}, {face} up").format(number=number, face=translate("Face", face))
            for layer in layers:
                deep = self.tr("{deep} deep").format(deep=shown.length_with_unit(layer.depth))
                yield f"    {layer.name}: {cut_words(assembly, layer.purpose)}, {deep}, {said(layer.cutter)}"
        if not sight.left:
            yield self.tr("Nothing is left for another setting.")
            return
        yield self.tr("Left for another setting or by hand")
        for left in sight.left:
            wood = self.tr("{volume} cm³ of wood").format(volume=shown.number(left.volume / MM3_IN_CM3, 2))
            told = (left_words(assembly, left.kind, left.what), said(left.where), wood)
            yield "    " + "; ".join(words for words in told if words)


class BoardTable(QTableView):
    """The rows of boards; names take what the other columns leave, so that no column is out of sight."""

    def setModel(self, model: QAbstractItemModel | None) -> None:  # noqa: N802  # Qt's name
        """Fits the columns again whenever other rows are there."""
        super().setModel(model)
        if model is not None:
            model.modelReset.connect(self._fit)
            model.dataChanged.connect(self._fit)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Fits the columns to the room."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        header = self.horizontalHeader()
        header.resizeSections(QHeaderView.ResizeMode.ResizeToContents)
        others = sum(header.sectionSize(at) for at in range(header.count()) if at != NAMES)
        least = self.fontMetrics().averageCharWidth() * LEAST_NAME_IN_LETTERS
        header.resizeSection(NAMES, max(least, self.viewport().width() - others))


class ReadingArea(QScrollArea):
    """Words that are longer than their room: the keyboard comes here and scrolls them, and a frame says so."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFrameShadow(QScrollArea.Shadow.Plain)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setLineWidth(1)

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802  # Qt's name
        """The keyboard comes."""
        super().focusInEvent(event)
        self.setFrameShape(QScrollArea.Shape.Box)

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802  # Qt's name
        """The keyboard goes."""
        super().focusOutEvent(event)
        self.setFrameShape(QScrollArea.Shape.NoFrame)


class BoardView(QWidget):
    """A board alone, its reference face to the viewer, its grain left to right."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self._marks: tuple[Mark, ...] = ()
        self._true_letters = False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("The chosen board alone"))

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """In letters."""
        return QSize(200, self.fontMetrics().height() * 9)

    def show_marks(self, marks: tuple[Mark, ...], *, true_letters: bool = False) -> None:
        """Shows a board's lines; none hides the picture.

        Args:
            marks: in the board's plane, mm.
            true_letters: letters are as high on the board as they say, not on paper.
        """
        self._marks = marks
        self._true_letters = true_letters
        self.setVisible(bool(marks))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints the board as large as there is room."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.colours.colour("paper"))
        if self._marks:
            x0, y0, x1, y1 = marks_box(self._marks)
            room = QRectF(self.rect()).adjusted(_ROOM, _ROOM, -_ROOM, -_ROOM)
            zoom = min(room.width() / max(x1 - x0, 1.0), room.height() / max(y1 - y0, 1.0))
            x = room.center().x() - (x0 + x1) / 2 * zoom
            y = room.center().y() + (y0 + y1) / 2 * zoom
            painter.setTransform(QTransform(zoom, 0, 0, -zoom, x, y), True)
            scale = zoom / PIXELS_PER_PAPER_MM
            marks = self._marks
            if self._true_letters:
                marks = tuple(replace(m, height=m.height * scale) if isinstance(m, Text) else m for m in marks)
            paint(
                painter, batch(marks, scale), self.colours, group="small", pixels_per_paper_mm=PIXELS_PER_PAPER_MM
            )  # fmt: skip
        painter.end()
