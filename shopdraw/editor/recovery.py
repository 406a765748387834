"""Recovery copies: what would be lost if the program died, kept apart from the piece's own file. Knows no window.

A copy is locked by the program that writes it. At the next start a copy whose program is gone is offered.
"""

from __future__ import annotations

import contextlib
import json
import uuid
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QLockFile

from shopdraw.editor.tongue import translate
from shopdraw.piece.saving import CannotSave, save_piece

SUFFIX = ".recovery"


@dataclass(frozen=True, slots=True)
class Copy:
    """A recovery copy that was found.

    Attributes:
        file: where it lies.
        path: the piece file that it belongs to, or None for a piece that was never saved.
        text: the piece as it was.
    """

    file: Path
    path: Path | None
    text: str

    @property
    def name(self) -> str:
        """What a person calls it."""
        return self.path.name if self.path else translate("Recovery", "a piece that was not saved yet")


class Recovery:
    """Keeps one copy of the open piece."""

    def __init__(self, folder: Path) -> None:
        """Makes ready.

        Args:
            folder: where copies lie; made where it isn't there.
        """
        self._folder = folder
        self._file = folder / f"{uuid.uuid4().hex}{SUFFIX}"
        self._lock: QLockFile | None = None
        self._kept = ""

    def keep(self, text: str, path: Path | None) -> None:
        """Writes the copy, unless it holds this text already; a full disk is no reason to stop the work.

        Raises:
            CannotSave: it couldn't be written.
        """
        if text == self._kept:
            return
        if self._lock is None:
            with contextlib.suppress(OSError):
                self._folder.mkdir(parents=True, exist_ok=True)
            self._lock = QLockFile(str(self._file) + ".lock")
            # A lock that only its program's end sets free, however long a person is away.
            self._lock.setStaleLockTime(0)
            self._lock.tryLock(0)
        save_piece(self._file, json.dumps({"path": str(path) if path else "", "text": text}, ensure_ascii=False))
        self._kept = text

    def drop(self) -> None:
        """Takes the copy away: the piece is saved, or a person doesn't want it."""
        self._kept = ""
        self._file.unlink(missing_ok=True)
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None

    def found(self) -> tuple[Copy, ...]:
        """Copies whose programs are gone, newest first."""
        files = sorted(self._folder.glob(f"*{SUFFIX}"), key=lambda file: file.stat().st_mtime, reverse=True)
        return tuple(copy for file in files if (copy := self._abandoned(file)) is not None)

    def _abandoned(self, file: Path) -> Copy | None:
        if file == self._file:
            return None
        lock = QLockFile(str(file) + ".lock")
        lock.setStaleLockTime(0)
        if not lock.tryLock(0):
            return None
        lock.unlock()
        try:
            held = json.loads(file.read_text(encoding="utf-8"))
            return Copy(file, Path(held["path"]) if held["path"] else None, str(held["text"]))
        except (OSError, ValueError, KeyError, TypeError):
            return None


def forget(copy: Copy) -> None:
    """Takes a found copy away."""
    copy.file.unlink(missing_ok=True)


__all__ = ["CannotSave", "Copy", "Recovery", "forget"]
