"""Undo: one command for every change, which holds the state before and the state after."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QUndoCommand

from shopdraw.editor.state import State


class Change(QUndoCommand):
    """One step back, whatever was done: there is nothing to invert."""

    def __init__(self, show: Callable[[State], None], before: State, after: State, words: str) -> None:
        super().__init__(words)
        self._show = show
        self._before = before
        self._after = after

    def redo(self) -> None:
        """Shows the state after the change."""
        self._show(self._after)

    def undo(self) -> None:
        """Shows the state before it."""
        self._show(self._before)
