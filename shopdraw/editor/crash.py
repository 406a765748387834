"""What becomes of an error that nobody foresaw: it is written down, the piece is kept, a person reads one sentence."""

from __future__ import annotations

import contextlib
import logging
import sys
import traceback
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from shopdraw.editor.tongue import translate

LOG_NAME = "errors.log"
_log = logging.getLogger("shopdraw.editor")


def catch(keep: Callable[[], bool], tell: Callable[[str], None], folder: Path) -> Callable[[], None]:
    """Puts the hook in place.

    Args:
        keep: keeps a recovery copy; tells whether it is kept.
        tell: shows a sentence.
        folder: where errors are written down.
    Returns:
        What takes the hook away again.
    """
    before = sys.excepthook
    telling = False

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        nonlocal telling
        if not issubclass(kind, Exception):
            before(kind, error, trace)
            return
        _write_down(folder, "".join(traceback.format_exception(kind, error, trace)))
        kept = False
        with contextlib.suppress(Exception):
            kept = keep()
        if not telling:  # an error while telling of one must not tell for ever
            telling = True
            try:
                tell(sentence(error, kept=kept, folder=folder))
            finally:
                telling = False

    def restore() -> None:
        sys.excepthook = before

    sys.excepthook = hook
    return restore


def sentence(error: BaseException, *, kept: bool, folder: Path) -> str:
    """What a person reads."""
    safe = translate("Crash", "A copy of the piece is kept and offered at the next start")
    if not kept:
        safe = translate("Crash", "Save the piece under another name now")
    told = translate("Crash", "Something went wrong inside the program ({kind}). {safe}; the details are in {file}.")
    return told.format(kind=type(error).__name__, safe=safe, file=folder / LOG_NAME)


def _write_down(folder: Path, words: str) -> None:
    _log.error(words)
    with contextlib.suppress(OSError):
        folder.mkdir(parents=True, exist_ok=True)
        with (folder / LOG_NAME).open("a", encoding="utf-8") as file:
            file.write(words + "\n")
