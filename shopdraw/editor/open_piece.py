"""The piece that is open: its state, its undo steps, its file. The window hears of every change from here."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from shopdraw.editor.beside import moved_with
from shopdraw.editor.change import Change
from shopdraw.editor.said import said
from shopdraw.editor.state import CannotSet, Setting, State, as_variant, changed_text, in_its_place, state_of
from shopdraw.editor.tongue import translate
from shopdraw.piece.address import address_text
from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import piece_text
from shopdraw.piece.saving import CannotSave, save_piece
from shopdraw.piece.source_text import BYTE_ORDER_MARK
from shopdraw.piece.variant import VARIANT, variant_names

EMPTY = State("", None, None)


class OpenPiece(QObject):
    """One open piece.

    Attributes:
        unread: its file is there but couldn't be read at all, so that nothing of it stands in the text.

    Signals:
        changed: the state is another one.
        drafted: a drag is under way; the state given is shown meanwhile and is no step of its own.
        filed: it was opened, saved or named.
        refused: a change can't be; the sentence says why.
    """

    changed = Signal(object)
    drafted = Signal(object)
    filed = Signal()
    refused = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.state = EMPTY
        self.path: Path | None = None
        self.variant: str | None = None
        self.seen: bytes | None = None
        self.unread = False
        self.undo = QUndoStack(self)
        self._saved_text = ""

    @property
    def source(self) -> str:
        """What faults call the piece: its file's name."""
        return self.path.name if self.path else translate("OpenPiece", "new piece")

    @property
    def unsaved(self) -> bool:
        """Whether something would be lost without saving."""
        return not self.undo.isClean()

    def open_file(self, path: Path) -> None:
        """Opens a file; what is wrong with it becomes the state's faults."""
        self.path = path
        self.variant = None
        self.unread = False
        try:
            text = piece_text(path)
            self.seen = path.read_bytes()
        except PieceError as error:
            self.seen = None
            self.unread = True
            self._begin(State("", None, None, error.faults))
            return
        self._begin(state_of(text, self.source))

    def begin(self, text: str, *, path: Path | None = None, unsaved: bool = False) -> None:
        """Begins with a text: a new piece, or one recovered.

        Args:
            text: a piece file's text.
            path: the file that it belongs to, if any.
            unsaved: whether it differs from what its file holds.
        """
        self.path = path
        self.variant = None
        self.unread = False
        self.seen = path.read_bytes() if path is not None and path.is_file() else None
        self._begin(state_of(text, self.source))
        if unsaved:
            self.undo.resetClean()

    def save(self, path: Path | None = None) -> None:
        """Writes the text to its file, or to another one that it then belongs to.

        Raises:
            CannotSave: nothing was written; the piece stays unsaved.
        """
        target = path or self.path
        if target is None:
            raise ValueError("a piece without a file is saved under a name")
        before, self.path = self.path, target
        moved = self._take_paths_along(before, target)
        try:
            save_piece(target, self._file_text())
        except CannotSave:
            self.path = before
            if moved:
                self.undo.undo()
            raise
        self.unread = False
        self.seen = target.read_bytes()
        self._saved_text = self.state.text
        self.undo.setClean()
        self.filed.emit()

    def set_values(self, settings: Iterable[Setting], words: str) -> bool:
        """Changes values as one undo step; False where it can't be, after saying why."""
        settings = in_its_place(self.state.design, tuple(settings))
        try:
            text = changed_text(self.state.text, settings, self.variant)
        except CannotSet as error:
            self.refused.emit(said(str(error)))
            return False
        after = state_of(text, self.source, self.variant)
        if not after.sound:
            why = said(after.faults[0].right) if after.faults else translate("Drag", "It can't be built so.")
            self.refused.emit(why)
            return False
        self.take(after, words)
        return True

    def set_text(self, text: str, words: str) -> None:
        """Takes another text as one undo step, sound or not."""
        self.take(state_of(text, self.source, self.variant), words)

    def take(self, after: State, words: str, *, series: int = -1) -> None:
        """Goes to a state as one undo step; nothing happens where it is the same text.

        Args:
            after: the state.
            words: what the step is called.
            series: steps with the same number that follow each other are one step; -1 for a step of its own.
        """
        if after.text != self.state.text:
            self.undo.push(Change(self._show, self.state, after, words, series=series))
        else:
            self.draft(self.state)

    def draft(self, state: State) -> None:
        """Shows a state while a hand is dragging."""
        self.drafted.emit(state)

    def variants(self) -> tuple[str, ...]:
        """Names of the variants in the file."""
        return self._variants_of(self.state)

    def keep_variant(self, name: str) -> bool:
        """Keeps what differs from the file as last saved as a variant, as one undo step; whether something differs."""
        base = self.saved_text()
        try:
            text = as_variant(base, self.state.text, name)
        except CannotSet as error:
            self.refused.emit(said(str(error)))
            return False
        if text == base:
            return False
        self.take(state_of(text, self.source), name)
        self.choose_variant(name)
        return True

    def drop_variant(self, words: str) -> bool:
        """Takes the variant that is shown out of the file as one undo step; False where none is shown.

        Args:
            words: what the step is called.
        """
        if self.variant is None:
            return False
        gone = address_text((VARIANT, self.variant))
        self.choose_variant(None)
        text = changed_text(self.state.text, (Setting(gone, None),))
        self.take(state_of(text, self.source), words)
        return True

    def saved_text(self) -> str:
        """The text as it was last opened or saved."""
        return self._saved_text

    def choose_variant(self, name: str | None) -> None:
        """Lays a variant over the file, or shows the file as it is."""
        self.variant = name
        self._show(state_of(self.state.text, self.source, name))

    def _show(self, state: State) -> None:
        """Shows a state; one of undo's may have been made while another variant was in sight."""
        if self.variant is not None and self.variant not in self._variants_of(state):
            self.variant = None
        self.state = state
        self.changed.emit(state)

    @staticmethod
    def _variants_of(state: State) -> tuple[str, ...]:
        try:
            return variant_names(tomllib.loads(state.text))
        except (ValueError, RecursionError):
            return ()

    def _take_paths_along(self, before: Path | None, target: Path) -> bool:
        """Photos and the shop file are found from another folder, too; whether that took a step."""
        design = self.state.design
        settings = moved_with(design, before.parent if before else None, target.parent) if design else ()
        if settings:
            text = changed_text(self.state.text, settings)
            self.take(state_of(text, self.source, self.variant), translate("Step", "Paths from another folder"))
        return bool(settings)

    def _begin(self, state: State) -> None:
        self.undo.clear()
        self.undo.setClean()
        self._saved_text = state.text
        self._show(state)
        self.filed.emit()

    def _file_text(self) -> str:
        marked = self.seen is not None and self.seen.startswith(BYTE_ORDER_MARK.encode())
        return (BYTE_ORDER_MARK if marked and not self.state.text.startswith(BYTE_ORDER_MARK) else "") + self.state.text
