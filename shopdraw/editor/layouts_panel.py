"""Layouts: a button that lays the piece out on the shop's stock, how many are to buy, each board and sheet drawn."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.look import Colours
from shopdraw.editor.said import said
from shopdraw.editor.sheet_view import SheetView

if TYPE_CHECKING:
    from shopdraw.editor.layout_job import LaidOut
    from shopdraw.lists.layout.headline import Headline

MONEY_PLACES = 2


class LayoutsPanel(QWidget):
    """Layouts of the piece.

    Signals:
        wished: a person wants the piece laid out.
        given_up: a person wants no more of it.
    """

    wished = Signal()
    given_up = Signal()

    def __init__(self, colours: Colours, decimal_sign: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sheets: SheetSet | None = None
        self._sign = decimal_sign
        self.lay_out = QPushButton(self.tr("Lay out"), self)
        self.lay_out.setAccessibleName(self.tr("Lay the piece out on this shop's boards and sheets"))
        self.lay_out.setToolTip(self.lay_out.accessibleName())
        self.give_up = QPushButton(self.tr("Give up"), self)
        self.give_up.setAccessibleName(self.tr("Give up laying out"))
        self.give_up.setToolTip(self.tr("Give up laying out; the layouts of before stay"))
        self.give_up.hide()
        self.headline = QLabel(self.tr("Not laid out yet."), self)
        self.headline.setTextFormat(Qt.TextFormat.RichText)
        self.headline.setWordWrap(True)
        self.headline.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.headline.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.pages = QComboBox(self)
        self.pages.setAccessibleName(self.tr("Sheet of layouts"))
        self.pages.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.pages.hide()
        self.view = SheetView(self)
        self.view.colours = colours
        self.view.setAccessibleName(self.tr("The layouts as they print"))
        told = QScrollArea(self)
        told.setWidget(self.headline)
        told.setWidgetResizable(True)
        told.setFrameShape(QScrollArea.Shape.NoFrame)
        told.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        told.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        told.setAccessibleName(self.tr("What is to be bought"))
        row = QHBoxLayout()
        row.addWidget(self.lay_out)
        row.addWidget(self.give_up)
        row.addStretch(1)
        row.addWidget(self.pages)
        whole = QVBoxLayout(self)
        whole.addLayout(row)
        whole.addWidget(told, 1)
        whole.addWidget(self.view, 3)
        self.lay_out.clicked.connect(self.wished)
        self.give_up.clicked.connect(self.given_up)
        self.pages.currentIndexChanged.connect(self._show_page)

    def show_busy(self, busy: bool) -> None:
        """Says that a layout is under way."""
        self.give_up.setVisible(busy)
        self.lay_out.setEnabled(not busy)
        if busy:
            self.headline.setText(self.tr("The piece is being laid out…"))

    def show_words(self, sentence: str) -> None:
        """Says why there is no layout."""
        self.headline.setText(escape(sentence))

    def show_layouts(self, made: LaidOut) -> None:
        """Shows layouts: what is to be bought first."""
        words = "".join(self._headline(one) for one in made.headlines)
        self.headline.setText(words + (f"<p>{escape(said(made.why_not))}</p>" if made.why_not else ""))
        self._sheets = made.sheets
        self.pages.clear()
        for sheet in made.sheets.sheets if made.sheets else ():
            self.pages.addItem(f"{sheet.number}  {said(sheet.title)}")
        self.pages.setVisible(self.pages.count() > 1)
        self._show_page(0)

    def _headline(self, one: Headline) -> str:
        what = (self.tr("sheets to buy: {count}") if one.sheets else self.tr("boards to buy: {count}")).format(
            count=one.buy
        )
        least = self.tr("least possible: {count}").format(count=one.least)
        if one.least is None:
            least = self.tr("{cost} {unit}; no layout costs less than {bound}").format(
                cost=self._number(one.cost), bound=self._number(one.bound), unit=escape(said(one.unit))
            )
        more = [least, self.tr("{share} % of the wood used").format(share=round(100 * one.used))]
        if one.use:
            more.insert(1, self.tr("used from the rack: {count}").format(count=one.use))
        notes = "<br>".join(escape(said(note)) for note in one.notes if note)
        return (
            f"<p><b style='font-size:large'>{escape(said(one.stock))}: {what}</b><br>{', '.join(more)}"
            f"<br><span style='font-size:small'>{notes}</span></p>"
        )

    def _number(self, value: float) -> str:
        return f"{value:.{MONEY_PLACES}f}".replace(".", self._sign)

    def _show_page(self, page: int) -> None:
        if self._sheets is not None and 0 <= page < len(self._sheets.sheets):
            self.view.show_sheet(self._sheets.sheets[page], self._sheets.style)
