"""The shop file that is open: its text, what it says or what is wrong with it, its undo steps, its place on disk."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from shopdraw.editor.said import said
from shopdraw.editor.state import CannotSet, Setting, changed_text
from shopdraw.piece.fault import Fault, PieceError
from shopdraw.piece.saving import save_piece
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import SHOP_FORMAT, WHAT, parse_shop
from shopdraw.piece.source_text import BYTE_ORDER_MARK, text_of

NEW_TEXT = f"format = {SHOP_FORMAT}\n"
"""A shop file that says nothing yet: every default holds."""


@dataclass(frozen=True, slots=True)
class ShopState:
    """A shop file's text and what follows from it.

    Attributes:
        text: the file's text.
        shop: as read, or None where it can't be read.
        faults: why it can't be; empty otherwise.
    """

    text: str = NEW_TEXT
    shop: Shop | None = field(default_factory=Shop)
    faults: tuple[Fault, ...] = ()


def shop_state_of(text: str, source: str) -> ShopState:
    """The state that a text leads to."""
    try:
        return ShopState(text, parse_shop(text, source).shop)
    except PieceError as error:
        return ShopState(text, None, error.faults)


class OpenShop(QObject):
    """One open shop file.

    Signals:
        changed: the state is another one.
        filed: it was opened or saved.
        refused: a change can't be; the sentence says why.
    """

    changed = Signal(object)
    filed = Signal()
    refused = Signal(str)

    def __init__(self, path: Path, parent: QObject | None = None) -> None:
        """Reads a shop file; one that isn't there yet is begun with the stated defaults."""
        super().__init__(parent)
        self.path = path
        self.undo = QUndoStack(self)
        self._mark = ""
        self.state = ShopState()
        if path.is_file():
            self._read()

    def _read(self) -> None:
        try:
            text = text_of(self.path, self.path.name, WHAT)
        except PieceError as error:
            self.state = ShopState("", None, error.faults)
            return
        self._mark = BYTE_ORDER_MARK if text.startswith(BYTE_ORDER_MARK) else ""
        self.state = shop_state_of(text.removeprefix(BYTE_ORDER_MARK), self.path.name)

    @property
    def unsaved(self) -> bool:
        """Whether something would be lost without saving."""
        return not self.undo.isClean()

    def set_values(self, settings: Iterable[Setting], words: str) -> bool:
        """Changes values as one undo step, comments and all else kept; False where it can't be, after saying why."""
        try:
            text = changed_text(self.state.text, settings)
        except CannotSet as error:
            self.refused.emit(said(str(error)))
            return False
        after = shop_state_of(text, self.path.name)
        if after.shop is None:
            self.refused.emit(said(after.faults[0].right))
            return False
        self._take(after, words)
        return True

    def set_text(self, text: str, words: str) -> None:
        """Takes another text as one undo step, sound or not."""
        self._take(shop_state_of(text, self.path.name), words)

    def save(self) -> None:
        """Writes the text to its file; its folder is made where it isn't there.

        Raises:
            CannotSave: nothing was written.
            OSError: the folder can't be made.
        """
        self.path.parent.mkdir(parents=True, exist_ok=True)
        save_piece(self.path, self._mark + self.state.text)
        self.undo.setClean()
        self.filed.emit()

    def _take(self, after: ShopState, words: str) -> None:
        if after.text != self.state.text:
            self.undo.push(_Step(self, self.state, after, words))

    def show(self, state: ShopState) -> None:
        """Shows a state: a step's end, or its beginning when it is undone."""
        self.state = state
        self.changed.emit(state)


class _Step(QUndoCommand):
    """One step; there is nothing to invert."""

    def __init__(self, shop: OpenShop, before: ShopState, after: ShopState, words: str) -> None:
        super().__init__(words)
        self._shop, self._before, self._after = shop, before, after

    def redo(self) -> None:
        """Shows the state after it."""
        self._shop.show(self._after)

    def undo(self) -> None:
        """Shows the state before it."""
        self._shop.show(self._before)
