"""How far an export has come: a bar on a terminal, or plain lines for a program that waits for it."""

from __future__ import annotations

import os
from typing import TextIO

WIDTH = 24
LINES_VARIABLE = "SHOPDRAW_PROGRESS"
"""Set to "lines", each step is told as `progress 2/5 templates`: steps done, steps in all, the one that begins."""


class Progress:
    """Shows one step after another on a terminal, or as lines where they are asked for; elsewhere it stays silent."""

    def __init__(self, steps: int, stream: TextIO) -> None:
        self._steps = max(steps, 1)
        self._stream = stream
        self._done = 0
        self._shown = stream.isatty()
        self._lines = os.environ.get(LINES_VARIABLE) == "lines"

    def begins(self, name: str) -> None:
        """A step begins."""
        if self._lines:
            self._stream.write(f"progress {self._done}/{self._steps} {name}\n")
            self._stream.flush()
        else:
            self._show(name)

    def ends(self) -> None:
        """A step is done; after the last one the bar is wiped."""
        self._done += 1
        if self._done >= self._steps:
            self.wiped()

    def wiped(self) -> None:
        """Takes the bar off the terminal, so that lines can follow."""
        if self._shown:
            self._stream.write("\r\x1b[K")
            self._stream.flush()

    def _show(self, name: str) -> None:
        if self._shown:
            full = WIDTH * self._done // self._steps
            self._stream.write(f"\r\x1b[K[{'=' * full}{' ' * (WIDTH - full)}] {name}")
            self._stream.flush()
