"""Printing: the sheets through the same painting as the screen, each page at its own size, templates never scaled."""

from __future__ import annotations

import itertools
import re
import time
from collections.abc import Callable, Generator, Iterator, Sequence
from pathlib import Path

from PySide6.QtCore import QMarginsF, QObject, QSizeF, QStandardPaths, QTimer, Signal
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QTransform
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QWidget

from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.sheet import Paper, Placed, Sheet, SheetSet
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import batch, paint

MM_PER_INCH = 25.4
MARKS_AT_ONCE = 40
MOST_AT_ONCE_S = 0.03
"""How long printing goes on before the window has its turn."""
INK = Colours(
    **{
        **{name: getattr(LIGHT, name) for name in LIGHT.__slots__},
        "ink": "#000000",
        "faint": "#303030",
        "figure": "#000000",
    }
)
"""On paper everything is black or nearly so: light lines would vanish."""

Choose = Callable[[QPrinter, QWidget | None], bool]
"""Lets a person choose the printer; whether to print."""


def printer_for(sheets: SheetSet) -> QPrinter:
    """A printer set to a set's first page, without margins and without scaling: a mm is a mm."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(sheets.title)
    printer.setFullPage(True)
    printer.setPageLayout(layout_of(sheets.sheets[0].paper))
    return printer


def layout_of(paper: Paper) -> QPageLayout:
    """The page of a sheet: its own size, upright or lying as it is, no margins."""
    lying = paper.width > paper.height
    short, long = sorted((paper.width, paper.height))
    size = QPageSize(QSizeF(short, long), QPageSize.Unit.Millimeter, paper.name, QPageSize.SizeMatchPolicy.FuzzyMatch)
    way = QPageLayout.Orientation.Landscape if lying else QPageLayout.Orientation.Portrait
    return QPageLayout(size, way, QMarginsF(0, 0, 0, 0))


def choose_printer(printer: QPrinter, parent: QWidget | None) -> bool:
    """Asks with the system's own dialog; where there is no printer, a file is written and its name is offered."""
    if not QPrinterInfo.availablePrinterNames():
        printer.setOutputFileName(str(_free_name(printer.docName())))
    return bool(QPrintDialog(printer, parent).exec())


def _free_name(title: str) -> Path:
    """A name for a PDF among a person's documents that no file has yet."""
    documents = Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation))
    folder = documents if documents.is_dir() else Path.home()
    stem = re.sub(r"[^\w-]+", "-", title).strip("-") or "print"
    names = (folder / f"{stem}{f'-{number}' if number > 1 else ''}.pdf" for number in itertools.count(1))
    return next(name for name in names if not name.exists())


def print_pages(printer: QPrinter, sheets: SheetSet, pages: Sequence[int]) -> None:
    """Prints some pages of a set at once.

    Args:
        printer: chosen.
        sheets: the set.
        pages: positions in it, in the order of printing.
    """
    for _ in print_steps(printer, sheets, pages):
        pass


def print_steps(printer: QPrinter, sheets: SheetSet, pages: Sequence[int]) -> Generator[int, None, None]:
    """Prints some pages of a set drawing by drawing; after each it tells how many pages are begun.

    Left before its end, the painter is ended and what the printer has is its own affair.
    """
    painter = QPainter()
    try:
        for number, page in enumerate(pages):
            sheet = sheets.sheets[page]
            printer.setPageLayout(layout_of(sheet.paper))
            if number == 0:
                painter.begin(printer)
            else:
                printer.newPage()
            for placed in (None, *sheet.placed):
                for _ in _paint(painter, printer, sheets, sheet, placed):
                    yield number
    finally:
        if painter.isActive():
            painter.end()


def _paint(
    painter: QPainter, printer: QPrinter, sheets: SheetSet, sheet: Sheet, placed: Placed | None
) -> Iterator[None]:  # fmt: skip
    """One drawing of a page, or what belongs to the page itself, a part of its marks at a time."""
    dots = printer.resolution() / MM_PER_INCH
    foot, group = sheet.paper.height * dots, sheet.paper.group
    if placed is None:
        marks, scale, at = sheet.marks, 1.0, (0.0, 0.0)
    else:
        marks, scale, at = drawing_marks(placed.drawing, placed.scale, sheets.style, group), placed.scale, placed.at
    size = dots * scale
    for first in range(0, len(marks), MARKS_AT_ONCE):
        painter.save()
        painter.setTransform(QTransform(size, 0, 0, -size, at[0] * dots, foot - at[1] * dots), True)
        some = marks[first : first + MARKS_AT_ONCE]
        paint(painter, batch(some, scale), INK, group=group, pixels_per_paper_mm=dots)
        painter.restore()
        yield
    yield


class Printing(QObject):
    """Prints while the window stays alive: drawing by drawing, the window's events between them.

    Signals:
        progressed: pages begun, pages in all.
        finished: whether all is printed, and a sentence.
    """

    progressed = Signal(int, int)
    finished = Signal(bool, str)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._printer: QPrinter | None = None
        self._steps: Generator[int, None, None] | None = None
        self._count = 0
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._go_on)

    @property
    def busy(self) -> bool:
        """Whether something is being printed."""
        return self._steps is not None

    def begin(self, printer: QPrinter, sheets: SheetSet, pages: Sequence[int]) -> None:
        """Begins to print; what is under way goes first."""
        if not self.busy:
            self._printer, self._count = printer, len(pages)
            self._steps = print_steps(printer, sheets, pages)
            self.progressed.emit(0, self._count)
            self._timer.start()

    def give_up(self) -> None:
        """Takes the job back from the printer; a file that is half written goes."""
        printer, steps = self._printer, self._steps
        if printer is None or steps is None:
            return
        self._end()
        printer.abort()
        steps.close()
        if printer.outputFileName():
            Path(printer.outputFileName()).unlink(missing_ok=True)
        self.finished.emit(False, self.tr("Printing was given up."))

    def _go_on(self) -> None:
        steps, until = self._steps, time.monotonic() + MOST_AT_ONCE_S
        if steps is None:
            return
        for begun in steps:
            if time.monotonic() >= until:
                self.progressed.emit(begun, self._count)
                return
        self._end()
        self.finished.emit(True, self.tr("{count} pages are with the printer.").format(count=self._count))

    def _end(self) -> None:
        self._timer.stop()
        self._steps = None
