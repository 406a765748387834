"""All pages at once, small: each is painted when it comes into sight, and a chosen one is shown in the panel."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QObject, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QListView, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.editor.look import Colours
from shopdraw.editor.painted_sheet import PaintedSheet
from shopdraw.editor.said import said

ACROSS, UP = 240, 182
"""Pixels that a page has: those that lie are the most."""
_ROOM = 6.0


class ContactSheet(QWidget):
    """Every page of some sets.

    Signals:
        chosen: a page, counted through all sets from 0.
    """

    chosen = Signal(int)

    def __init__(self, sets: tuple[SheetSet, ...], colours: Colours) -> None:
        super().__init__()
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("All pages"))
        self._colours = colours
        self._waiting: dict[int, tuple[Sheet, str]] = {}
        self.pages = QListWidget(self)
        self.pages.setViewMode(QListView.ViewMode.IconMode)
        self.pages.setResizeMode(QListView.ResizeMode.Adjust)
        self.pages.setMovement(QListView.Movement.Static)
        self.pages.setIconSize(QSize(ACROSS, UP))
        self.pages.setSpacing(8)
        self.pages.setWordWrap(True)
        self.pages.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.pages.setUniformItemSizes(True)
        self.pages.setAccessibleName(self.tr("All pages"))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.pages)
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._paint_next)
        self.pages.verticalScrollBar().valueChanged.connect(lambda _at: self._timer.start())
        self.pages.viewport().installEventFilter(self)
        self.pages.itemActivated.connect(lambda item: self.chosen.emit(self.pages.row(item)))
        self.pages.itemClicked.connect(lambda item: self.chosen.emit(self.pages.row(item)))
        self.resize(1120, 780)
        self.show_sets(sets)

    def show_sets(self, sets: tuple[SheetSet, ...]) -> None:
        """Shows the pages as they are drawn now, from where one was looking."""
        at, row = self.pages.verticalScrollBar().value(), self.pages.currentRow()
        self.pages.clear()
        self._waiting.clear()
        words = [
            said(sheet.title) if made.true_size else f"{sheet.number}  {said(sheet.title)}"
            for made in sets
            for sheet in made.sheets
        ]
        room = QSize(ACROSS + 16, UP + self._highest(words) + self.fontMetrics().height())
        empty = QPixmap(ACROSS, UP)
        empty.fill(Qt.GlobalColor.transparent)
        for made in sets:
            for sheet in made.sheets:
                told = words[self.pages.count()]
                item = QListWidgetItem(QIcon(empty), told)
                item.setSizeHint(room)
                item.setToolTip(told)
                self._waiting[self.pages.count()] = (sheet, made.style)
                self.pages.addItem(item)
        self.pages.setCurrentRow(min(row, self.pages.count() - 1))
        self.pages.verticalScrollBar().setValue(at)
        self._timer.start()

    def _highest(self, words: list[str]) -> int:
        """How high the longest title is in the width of a page, pixels."""
        wrap = Qt.TextFlag.TextWordWrap.value
        letters = self.fontMetrics()
        return max((letters.boundingRect(0, 0, ACROSS, 9999, wrap, one).height() for one in words), default=0)

    @property
    def left(self) -> int:
        """How many pages aren't painted yet."""
        return len(self._waiting)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  # Qt's name
        """Paints what a larger window brings into sight."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Show):
            self._timer.start()
        return super().eventFilter(watched, event)

    def _paint_next(self) -> None:
        """Paints one page that is in sight; between two pages the window answers."""
        shown = self.pages.viewport().rect()
        model = self.pages.model()
        for row in self._waiting:
            index: QModelIndex = model.index(row, 0)
            if self.pages.visualRect(index).intersects(shown):
                self.pages.item(row).setIcon(QIcon(self._page(*self._waiting.pop(row))))
                return
        self._timer.stop()

    def _page(self, sheet: Sheet, style: str) -> QPixmap:
        ratio = self.devicePixelRatioF()
        picture = QPixmap(round(ACROSS * ratio), round(UP * ratio))
        picture.setDevicePixelRatio(ratio)
        picture.fill(Qt.GlobalColor.transparent)
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(0, 0, ACROSS, UP).adjusted(_ROOM, _ROOM, -_ROOM, -_ROOM)
        PaintedSheet(sheet, style).paint(painter, room, self._colours)
        painter.end()
        return picture
