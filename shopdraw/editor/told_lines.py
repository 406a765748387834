"""What another process tells on its stderr, line by line as it comes."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QProcess


class ToldLines:
    """Keeps the half of a line that has come until its other half is there."""

    def __init__(self) -> None:
        self._half = ""

    def read(self, process: QProcess) -> Iterator[str]:
        """The whole lines that have come since the last time; none of a process that was never started."""
        if not process.isOpen():
            return
        self._half += bytes(process.readAllStandardError().data()).decode("utf-8", "replace")
        *lines, self._half = self._half.split("\n")
        yield from lines
