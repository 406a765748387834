"""The shop: cutters, saw, stock and habits in a form made from the typed shop file; the piece laid out on its stock."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from shopdraw.editor.apart import Apart
from shopdraw.editor.ask import Ask, Kind, Question
from shopdraw.editor.faults_page import FaultsPage
from shopdraw.editor.field import FormField, form_of_file, table_words
from shopdraw.editor.form_panel import FormPanel
from shopdraw.editor.keyed import beginnings, keyed_tables
from shopdraw.editor.layouts_panel import LayoutsPanel
from shopdraw.editor.look import Colours
from shopdraw.editor.open_shop import OpenShop, ShopState
from shopdraw.editor.said import said
from shopdraw.editor.shown_size import Shown, shown_in
from shopdraw.editor.state import Setting, State
from shopdraw.editor.typed import NotTyped
from shopdraw.editor.wish import setting_of
from shopdraw.piece.saving import CannotSave
from shopdraw.piece.shop import Shop

OPEN_AT_FIRST = ("shop", "saw", "router")
FINEST_FRACTION = 64


class ShopWindow(QWidget):
    """The shop file at the left, layouts at the right."""

    def __init__(
        self,
        path: Path,
        piece: Callable[[], State],
        asks: Callable[[], Ask],
        colours: Colours,
        decimal_sign: str,
        *,
        apart: bool = True,
    ) -> None:
        """Opens a shop file.

        Args:
            path: of the file, whether it is there yet or not.
            piece: gives the piece that is laid out, as it is then.
            asks: gives the function that questions go through.
            colours: the look.
            decimal_sign: the reader's.
            apart: layouts are worked out in a process of their own; else at once.
        """
        super().__init__()
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._piece, self._asks, self._sign = piece, asks, decimal_sign
        self.shop = OpenShop(path, self)
        self.laying_out = Apart(self, apart=apart)
        self.form = FormPanel(self, keyed_tables(Shop), OPEN_AT_FIRST)
        self.form.sketch.colours = colours
        self.faults = FaultsPage(self)
        self.faults.text.setAccessibleName(self.tr("Text of the shop file"))
        self.layouts = LayoutsPanel(colours, decimal_sign, self)
        self.pages = QStackedWidget(self)
        self.pages.addWidget(self.form)
        self.pages.addWidget(self.faults)
        self.place = QLabel(self)
        self.place.setWordWrap(True)
        self.place.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.save_it = self._button(self.tr("Save"), self.tr("Save the shop file; comments in it stay"), self.save)
        self.undo = self._button(self.tr("Undo"), self.tr("Take the last change of the shop back"), self.shop.undo.undo)
        self.redo = self._button(self.tr("Redo"), self.tr("Do the change of the shop again"), self.shop.undo.redo)
        self._lay_out()
        self._join()
        self._show(self.shop.state)
        self.resize(1280, 820)

    def save(self) -> bool:
        """Saves the shop file; whether it is saved."""
        self._take_typed()
        try:
            self.shop.save()
        except (CannotSave, OSError) as error:
            self._asks()(self, Question(Kind.TELL, self.tr("Not saved"), said(str(error))))
            return False
        return True

    def lay_out(self) -> None:
        """Lays the piece out on the shop as it stands here, saved or not."""
        state, shop = self._piece(), self.shop.state.shop
        if state.assembly is None or state.design is None:
            self.layouts.show_words(self.tr("Open a piece first; it is laid out on the stock of this shop."))
            return
        if shop is None:
            self.layouts.show_words(self.tr("The shop file has faults; put them right first."))
            return
        # Lists and sheets are loaded when they are first asked for: the window opens without them.
        from shopdraw.editor.layout_job import layouts_job

        self.layouts.show_busy(True)
        self.laying_out.begin(layouts_job, state.assembly, state.design, shop)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802  # Qt's name
        """Asks for what isn't saved, then ends the process that lays out."""
        self._take_typed()
        if self.shop.unsaved:
            question = Question(
                Kind.CHOOSE,
                self.tr("Not saved yet"),
                self.tr("{name} has changes that are not saved.").format(name=self.shop.path.name),
                (("save", self.tr("Save")), ("leave", self.tr("Leave without saving")), ("", self.tr("Go back"))),
            )
            answer = self._asks()(self, question)
            if answer == "" or (answer == "save" and not self.save()):
                event.ignore()
                return
        self.laying_out.close()
        super().closeEvent(event)

    # Inside

    def _take_typed(self) -> None:
        """What is typed and not set yet is meant, too."""
        if self.pages.currentWidget() is self.form:
            self.form.take_typed()
        else:
            self.faults.take_typed()

    def _button(self, words: str, tells: str, does: Callable[[], object]) -> QPushButton:
        button = QPushButton(words, self)
        button.setAccessibleName(tells)
        button.setToolTip(tells)
        button.clicked.connect(lambda _checked=False: does())
        return button

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        top.addWidget(self.place, 1)
        for button in (self.undo, self.redo, self.save_it):
            top.addWidget(button)
        parts = QSplitter(Qt.Orientation.Horizontal, self)
        parts.addWidget(self.pages)
        parts.addWidget(self.layouts)
        parts.setStretchFactor(1, 1)
        parts.setChildrenCollapsible(False)
        letters = self.fontMetrics().averageCharWidth()
        parts.setSizes([letters * 62, letters * 100])
        whole = QVBoxLayout(self)
        whole.addLayout(top)
        whole.addWidget(parts, 1)

    def _join(self) -> None:
        self.shop.changed.connect(self._show)
        self.shop.filed.connect(self._mark)
        self.shop.undo.cleanChanged.connect(self._mark)
        self.shop.undo.canUndoChanged.connect(self.undo.setEnabled)
        self.shop.undo.canRedoChanged.connect(self.redo.setEnabled)
        for button in (self.undo, self.redo):
            button.setEnabled(False)
        for keys, does in (
            (QKeySequence.StandardKey.Save, self.save),
            (QKeySequence.StandardKey.Undo, self.shop.undo.undo),
            (QKeySequence.StandardKey.Redo, self.shop.undo.redo),
            (QKeySequence.StandardKey.Close, self.close),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(does)
        self.form.wished.connect(self._wished)
        self.form.add_wished.connect(self._add)
        self.form.take_out_wished.connect(self._take_out)
        self.faults.mended.connect(lambda text: self.shop.set_text(text, self.tr("Mend the text")))
        self.layouts.wished.connect(self.lay_out)
        self.layouts.given_up.connect(self.laying_out.give_up)
        self.laying_out.done.connect(self._laid_out)
        self.laying_out.failed.connect(self._failed)
        self.laying_out.given_up.connect(lambda: self._failed(self.tr("Given up.")))

    def _shown(self) -> Shown:
        shop = self.shop.state.shop
        return shown_in(shop.shop.units if shop else "mm", FINEST_FRACTION, self._sign)

    def _show(self, state: ShopState) -> None:
        if state.shop is None:
            self.faults.show_faults(state.text, state.faults, self.shop.path.name)
            self.pages.setCurrentWidget(self.faults)
        else:
            shown = self._shown()
            self.form.show_form(form_of_file(Shop, state.shop, shown), state.text, shown)
            self.pages.setCurrentWidget(self.form)
        self._mark()

    def _mark(self, _clean: bool = False) -> None:  # a signal's argument
        self.setWindowTitle(self.tr("Shop: {name}").format(name=self.shop.path.name) + "[*]")
        self.setWindowModified(self.shop.unsaved)
        told = str(self.shop.path)
        if not self.shop.path.is_file():
            told = self.tr("{path} (not there yet: stated defaults hold until it is saved)").format(path=told)
        self.place.setText(told)

    def _wished(self, field: FormField, text: str) -> None:
        refused: list[str] = []
        self.shop.refused.connect(refused.append)
        try:
            done = self.shop.set_values((setting_of(field, text, self._shown().unit, {}),), field.label)
        except NotTyped as error:
            done = False
            refused.append(str(error))
        self.shop.refused.disconnect(refused.append)
        if not done and refused:
            self._show(self.shop.state)
            self.form.complain(field.address, refused[0])

    def _add(self, table: str) -> None:
        name = table_words(table)
        key = self._asks()(
            self, Question(Kind.WORDS, self.tr("Add"), self.tr("{name}: what is the new one called?").format(name=name))
        )
        if not key or self.shop.state.shop is None:
            return
        settings = beginnings(table, key, self._shown(), Shop)
        if self.shop.set_values(settings, self.tr("Add {name}").format(name=key)):
            self.form.go_to(settings[0].address)

    def _take_out(self, address: str, name: str) -> None:
        refused: list[str] = []
        self.shop.refused.connect(refused.append)
        self.shop.set_values((Setting(address, None),), self.tr("Take out {name}").format(name=name))
        self.shop.refused.disconnect(refused.append)
        if refused:
            self.form.complain(address, refused[0])

    def _laid_out(self, made: object) -> None:
        self.layouts.show_busy(False)
        self.layouts.show_layouts(made)  # type: ignore[arg-type]  # a signal's argument

    def _failed(self, sentence: str) -> None:
        self.layouts.show_busy(False)
        self.layouts.show_words(sentence)
