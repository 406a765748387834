"""The process that prints: it takes a job from the window, and tells on stderr how far it has come.

Run by `printing.Printing`, never by a person: python -m shopdraw.editor.print_apart JOB
"""

from __future__ import annotations

import pickle
import sys
from dataclasses import replace
from pathlib import Path

from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrinter

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.printing import PROGRESS_MARK, WRONG_MARK, Chosen, print_steps


def main(job: Path) -> int:
    """Prints a job.

    Args:
        job: a file that the window wrote: what was chosen, the set without its pages, the pages.
    Returns:
        0, or 1 where it can't be printed.
    """
    # The job lies in a folder that this person's own window has made for itself alone.
    chosen, sheets = _read(job)
    _application = QGuiApplication(sys.argv[:1])  # fonts and printers need it
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(sheets.title)
    printer.setFullPage(True)
    chosen.set(printer)
    try:
        for begun in print_steps(printer, sheets, range(len(sheets.sheets))):
            _tell(PROGRESS_MARK, str(begun))
    except OSError as error:
        _tell(WRONG_MARK, str(error))
        return 1
    return 0


def _read(job: Path) -> tuple[Chosen, SheetSet]:
    """What was chosen, and a set of the pages that are wanted: the window wrote one after the other."""
    with job.open("rb") as file:
        chosen: Chosen = pickle.load(file)
        empty: SheetSet = pickle.load(file)
        pages = []
        while file.peek(1):
            pages.append(pickle.load(file))
    return chosen, replace(empty, sheets=tuple(pages))


def _tell(mark: str, words: str) -> None:
    sys.stderr.write(f"{mark}{words}\n")
    sys.stderr.flush()


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
