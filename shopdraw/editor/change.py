"""Undo: one command for every change, which holds the state before and the state after."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QUndoCommand

from shopdraw.editor.state import State


class Change(QUndoCommand):
    """One step back, whatever was done: there is nothing to invert."""

    def __init__(
        self, show: Callable[[State], None], before: State, after: State, words: str, *, series: int = -1
    ) -> None:
        """Makes the step.

        Args:
            show: shows a state.
            before, after: of the step.
            words: its name.
            series: steps that follow each other with the same number are one: presses of an arrow key; -1 for none.
        """
        super().__init__(words)
        self._series = series
        self._show = show
        self._before = before
        self._after = after

    def id(self) -> int:
        """The number of its series."""
        return self._series

    def mergeWith(self, other: QUndoCommand) -> bool:  # noqa: N802  # Qt's name
        """Takes the next step of its series in; one that came back to where it began is none."""
        if not isinstance(other, Change):
            return False
        self._after = other._after
        self.setObsolete(self._after.text == self._before.text)
        return True

    def redo(self) -> None:
        """Shows the state after the change."""
        self._show(self._after)

    def undo(self) -> None:
        """Shows the state before it."""
        self._show(self._before)
