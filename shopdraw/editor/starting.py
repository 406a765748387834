"""The first page: starting pieces with pictures, and files that were open lately."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QPainter, QPixmap, QShowEvent, QTransform
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from shopdraw.editor.canvas_paint import paint_faces
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.state import state_of
from shopdraw.shipped import sample_names, sample_path
from shopdraw.view.direction import ISOMETRIC
from shopdraw.view.draft import DraftFace, draft

_PICTURE = QSize(230, 200)
COLUMNS = 4


@dataclass(frozen=True, slots=True)
class StartingPiece:
    """A piece to begin from.

    Attributes:
        name: of the sample.
        title: as its file says.
        size: of the case in words.
        faces: its picture.
    """

    name: str
    title: str
    size: str
    faces: tuple[DraftFace, ...]


@lru_cache(maxsize=1)
def starting_pieces() -> tuple[StartingPiece, ...]:
    """All samples that can be built."""
    found = []
    for name in sample_names():
        state = state_of(sample_path(name).read_text(encoding="utf-8"), name)
        if state.assembly is None or state.design is None:
            continue
        a = state.assembly
        shown = shown_for(state.design)
        size = " × ".join(shown.length(mm) for mm in (a.width, a.height, a.depth)) + f" {shown.unit.short}"
        found.append(StartingPiece(name, a.title, size, draft(a.boards, ISOMETRIC)))
    return tuple(found)


class StartPage(QWidget):
    """Choosing what to work on.

    Signals:
        begun: the name of the starting piece that was chosen.
        open_wished: a person wants to look for a file.
        recent_wished: the path of a file that was open lately.
    """

    begun = Signal(str)
    open_wished = Signal()
    recent_wished = Signal(str)

    def __init__(self, parent: QWidget | None = None, colours: Colours = LIGHT) -> None:
        super().__init__(parent)
        self._colours = colours
        heading = QLabel(self.tr("Begin with a piece and make it yours"), self)
        font = heading.font()
        font.setPointSizeF(font.pointSizeF() * 1.7)
        heading.setFont(font)
        about = QLabel(
            self.tr("Drag its handles, type into its dimensions. What you see is the drawing that prints."), self
        )
        self.pieces = QGridLayout()
        self._buttons: dict[str, QToolButton] = {}
        self.pieces.setColumnStretch(COLUMNS, 1)
        self.open = QPushButton(self.tr("Open a piece file"), self)
        self.open.setAccessibleName(self.tr("Open a piece file"))
        self.open.setToolTip(self.tr("Look for a piece file on this computer"))
        self.open.clicked.connect(self.open_wished)
        self.lately = QLabel(self.tr("Open lately"), self)
        self.recent = QListWidget(self)
        self.recent.setAccessibleName(self.tr("Files that were open lately"))
        self.recent.setMaximumHeight(self.fontMetrics().height() * 9)
        self.recent.itemActivated.connect(lambda item: self.recent_wished.emit(item.data(Qt.ItemDataRole.UserRole)))
        self.recent.itemClicked.connect(lambda item: self.recent_wished.emit(item.data(Qt.ItemDataRole.UserRole)))
        row = QHBoxLayout()
        row.addWidget(self.open)
        row.addStretch(1)
        inner = QWidget(self)
        scroll = QScrollArea(self)
        scroll.setWidget(inner)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(scroll)
        whole = QVBoxLayout(inner)
        whole.setContentsMargins(56, 44, 56, 44)
        whole.setSpacing(14)
        for widget in (heading, about):
            whole.addWidget(widget)
        whole.addLayout(self.pieces)
        whole.addLayout(row)
        whole.addWidget(self.lately)
        whole.addWidget(self.recent)
        whole.addStretch(1)

    @property
    def buttons(self) -> dict[str, QToolButton]:
        """The pieces to begin from, by name."""
        self._lay_pieces()
        return self._buttons

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802  # Qt's name
        """Lays out the pieces the first time: a window that opens on a file doesn't wait for them."""
        self._lay_pieces()
        super().showEvent(event)

    def _lay_pieces(self) -> None:
        if self._buttons:
            return
        before: QWidget | None = None
        for number, piece in enumerate(starting_pieces()):
            button = self._button(piece)
            self.pieces.addWidget(button, number // COLUMNS, number % COLUMNS)
            if before is not None:
                self.setTabOrder(before, button)
            before = button
        if before is not None:
            self.setTabOrder(before, self.open)

    def dress(self, colours: Colours) -> None:
        """Puts on another look."""
        self._colours = colours
        for piece in starting_pieces() if self._buttons else ():
            self._buttons[piece.name].setIcon(picture_of(piece.faces, colours, self.devicePixelRatioF()))

    def show_recent(self, paths: list[str]) -> None:
        """Shows the files that were open lately."""
        self.recent.clear()
        for path in paths:
            item = QListWidgetItem(f"{Path(path).name}   {Path(path).parent}")
            item.setData(Qt.ItemDataRole.UserRole, path)
            self.recent.addItem(item)
        for widget in (self.lately, self.recent):
            widget.setVisible(bool(paths))

    def _button(self, piece: StartingPiece) -> QToolButton:
        button = QToolButton(self)
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
        button.setText(f"{piece.title}\n{piece.size}")
        button.setIcon(picture_of(piece.faces, self._colours, self.devicePixelRatioF()))
        button.setIconSize(_PICTURE)
        words = self.tr("Begin with {title}, {size}").format(title=piece.title, size=piece.size)
        button.setAccessibleName(words)
        button.setToolTip(words)
        button.clicked.connect(lambda: self.begun.emit(piece.name))
        self._buttons[piece.name] = button
        return button


def picture_of(faces: tuple[DraftFace, ...], colours: Colours, ratio: float) -> QIcon:
    """A piece as a small picture."""
    picture = QPixmap(_PICTURE * ratio)
    picture.setDevicePixelRatio(ratio)
    picture.fill(colours.colour("paper"))
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    xs = [x for face in faces for x, _ in face.points]
    ys = [y for face in faces for _, y in face.points]
    room = QRectF(0, 0, _PICTURE.width(), _PICTURE.height()).adjusted(16, 16, -16, -16)
    zoom = min(room.width() / (max(xs) - min(xs)), room.height() / (max(ys) - min(ys)))
    x = room.center().x() - (max(xs) + min(xs)) / 2 * zoom
    y = room.center().y() + (max(ys) + min(ys)) / 2 * zoom
    painter.setTransform(QTransform(zoom, 0, 0, -zoom, x, y), True)
    paint_faces(painter, faces, colours)
    painter.end()
    return QIcon(picture)
