"""Sheets: a true preview of each page, painted from the same sheets that are printed."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.look import Colours
from shopdraw.editor.on_sheet import OnSheets
from shopdraw.editor.said import said
from shopdraw.editor.sheet_view import SheetView
from shopdraw.editor.shown_size import Shown


class SheetsPanel(QWidget):
    """A preview of the sheets.

    Signals:
        large_wished: a person wants the sheet in a window of its own: the set and the page.
        all_wished: a person wants all pages at once: the sets.
    """

    large_wished = Signal(object, int)
    all_wished = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pages: list[tuple[SheetSet, int]] = []
        self._sets: tuple[SheetSet, ...] = ()
        self._held: OnSheets = {}
        self._shown: Shown | None = None
        self.pages = QComboBox(self)
        self.pages.setAccessibleName(self.tr("Sheet"))
        self.pages.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.large = QPushButton(self.tr("Large"), self)
        self.large.setAccessibleName(self.tr("Show this sheet in a window of its own"))
        self.large.setToolTip(self.large.accessibleName())
        self.all_pages = QPushButton(self.tr("All"), self)
        self.all_pages.setAccessibleName(self.tr("Show all pages at once"))
        self.all_pages.setToolTip(self.all_pages.accessibleName())
        self.view = SheetView(self)
        self.note = QLabel(self.tr("The sheets are being drawn…"), self)
        self.note.setWordWrap(True)
        top = QHBoxLayout()
        top.addWidget(self.pages, 1)
        top.addWidget(self.large)
        top.addWidget(self.all_pages)
        whole = QVBoxLayout(self)
        whole.addLayout(top)
        whole.addWidget(self.note)
        whole.addWidget(self.view, 1)
        self.pages.currentIndexChanged.connect(self._show_page)
        self.large.clicked.connect(lambda: self.large_wished.emit(*self._pages[self.pages.currentIndex()]))
        self.all_pages.clicked.connect(lambda: self.all_wished.emit(self._sets))
        for button in (self.large, self.all_pages):
            button.setEnabled(False)

    def show_waiting(self) -> None:
        """Says that another set is on its way; the old one stays in sight meanwhile."""
        self.note.setText(self.tr("The sheets are being drawn…"))

    def show_failed(self, sentence: str) -> None:
        """Says why there are no sheets."""
        self.note.setText(sentence)

    def show_sets(
        self, sets: tuple[SheetSet, ...], held: OnSheets | None = None, shown: Shown | None = None
    ) -> None:  # fmt: skip
        """Shows sets of sheets, staying on the page that was in sight.

        Args:
            sets: in order.
            held: what can be taken hold of on them.
            shown: how sizes of the piece are shown.
        """
        page = max(self.pages.currentIndex(), 0)
        self._sets, self._held, self._shown = sets, held or {}, shown
        self._pages = [(made, number) for made in sets for number in range(len(made.sheets))]
        before = self.pages.blockSignals(True)
        self.pages.clear()
        for made, number in self._pages:
            sheet = made.sheets[number]
            self.pages.addItem(said(sheet.title) if made.true_size else f"{sheet.number}  {said(sheet.title)}")
        self.pages.setCurrentIndex(min(page, self.pages.count() - 1))
        self.pages.blockSignals(before)
        paper = sum(len(made.sheets) for made in sets if not made.true_size)
        tiles = len(self._pages) - paper
        self.note.setText(
            self.tr("{sheets} sheets and {tiles} template pages, as they print").format(sheets=paper, tiles=tiles)
        )
        for button in (self.large, self.all_pages):
            button.setEnabled(bool(self._pages))
        self._show_page(self.pages.currentIndex())

    def dress(self, colours: Colours) -> None:
        """Puts on another look; the paper stays as bright as the look allows."""
        self.view.colours = colours
        self.view.update()

    def go_to(self, number: int) -> None:
        """Shows a page, counted through all sets from 0."""
        self.pages.setCurrentIndex(number)

    def _show_page(self, page: int) -> None:
        if 0 <= page < len(self._pages):
            made, number = self._pages[page]
            sheet = made.sheets[number]
            self.view.show_sheet(sheet, made.style, None if made.true_size else self._held.get(sheet.key), self._shown)
