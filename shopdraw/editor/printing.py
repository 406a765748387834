"""Printing: the sheets through the same painting as the screen, each page at its own size, templates never scaled.

A page with thousands of lines takes Qt most of a second: a process of its own prints (`print_apart`).
"""

from __future__ import annotations

import itertools
import pickle
import re
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QMarginsF, QObject, QProcess, QSizeF, QStandardPaths, QTimer, Signal
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QTransform
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QWidget

from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.sheet import Paper, Placed, Sheet, SheetSet
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import batch, paint
from shopdraw.editor.told_lines import ToldLines

MM_PER_INCH = 25.4
PROGRESS_MARK, WRONG_MARK = "progress ", "wrong "
"""Lines of the process that prints: how many pages are begun; what went wrong."""
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


def print_steps(printer: QPrinter, sheets: SheetSet, pages: Sequence[int]) -> Iterator[int]:
    """Prints some pages of a set; before each it tells how many are done.

    Left before its end, the painter is ended and what the printer has is its own affair.

    Raises:
        OSError: the printer, or the file, that takes nothing.
    """
    painter = QPainter()
    try:
        for number, page in enumerate(pages):
            sheet = sheets.sheets[page]
            printer.setPageLayout(layout_of(sheet.paper))
            if not (printer.newPage() if number else painter.begin(printer)):
                raise OSError(printer.outputFileName() or printer.printerName())
            yield number
            for placed in (None, *sheet.placed):
                _paint(painter, printer, sheets, sheet, placed)
    finally:
        if painter.isActive():
            painter.end()


def _paint(painter: QPainter, printer: QPrinter, sheets: SheetSet, sheet: Sheet, placed: Placed | None) -> None:
    """One drawing of a page, or what belongs to the page itself."""
    dots = printer.resolution() / MM_PER_INCH
    foot, group = sheet.paper.height * dots, sheet.paper.group
    if placed is None:
        marks, scale, at = sheet.marks, 1.0, (0.0, 0.0)
    else:
        marks, scale, at = drawing_marks(placed.drawing, placed.scale, sheets.style, group), placed.scale, placed.at
    size = dots * scale
    painter.save()
    painter.setTransform(QTransform(size, 0, 0, -size, at[0] * dots, foot - at[1] * dots), True)
    paint(painter, batch(marks, scale), INK, group=group, pixels_per_paper_mm=dots)
    painter.restore()


@dataclass(frozen=True, slots=True)
class Chosen:
    """What a person chose in the print dialog, in plain values: another process sets its own printer to it.

    Attributes:
        name: the printer's; "" where a file is written.
        file: where to write; "" for a printer.
        resolution: dots per inch.
        copies, collated: how many, and whether whole sets follow each other.
        colours, duplex, order, source: Qt's own numbers.
    """

    name: str
    file: str
    resolution: int
    copies: int
    collated: bool
    colours: int
    duplex: int
    order: int
    source: int

    @classmethod
    def of(cls, printer: QPrinter) -> Chosen:
        """What a printer is set to."""
        return cls(
            printer.printerName(),
            printer.outputFileName(),
            printer.resolution(),
            printer.copyCount(),
            printer.collateCopies(),
            printer.colorMode().value,
            printer.duplex().value,
            printer.pageOrder().value,
            printer.paperSource().value,
        )

    def set(self, printer: QPrinter) -> None:
        """Sets another printer to it."""
        if self.file:
            printer.setOutputFileName(self.file)
        else:
            printer.setPrinterName(self.name)
        printer.setResolution(self.resolution)
        printer.setCopyCount(self.copies)
        printer.setCollateCopies(self.collated)
        printer.setColorMode(QPrinter.ColorMode(self.colours))
        printer.setDuplex(QPrinter.DuplexMode(self.duplex))
        printer.setPageOrder(QPrinter.PageOrder(self.order))
        printer.setPaperSource(QPrinter.PaperSource(self.source))


class Printing(QObject):
    """Prints in a process of its own, while the window stays alive.

    Signals:
        progressed: pages begun, pages in all.
        finished: whether all is printed, and a sentence.
    """

    progressed = Signal(int, int)
    finished = Signal(bool, str)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._process: QProcess | None = None
        self._job: Path | None = None
        self._given_up = False
        self._begun = False
        self._file = ""
        self._lines = ToldLines()
        self._said: list[str] = []
        self._count = 0

    @property
    def busy(self) -> bool:
        """Whether something is being printed."""
        return self._process is not None

    def begin(self, printer: QPrinter, sheets: SheetSet, pages: Sequence[int]) -> None:
        """Begins to print; what is under way goes first."""
        if self.busy:
            return
        self._given_up, self._begun = False, False
        self._lines, self._said = ToldLines(), []
        chosen = Chosen.of(printer)
        self._file, self._count = chosen.file, len(pages)
        self._job = Path(tempfile.mkdtemp(prefix="shopdraw-"))
        process = QProcess(self)
        process.readyReadStandardError.connect(self._read)
        process.finished.connect(lambda code, _status: self._end(code))
        process.errorOccurred.connect(self._failed)
        self._process = process
        self.progressed.emit(0, self._count)
        parts = (chosen, replace(sheets, sheets=()), *(sheets.sheets[page] for page in pages))
        self._hand_over(iter(parts))

    def _hand_over(self, parts: Iterator[object]) -> None:
        """Writes a part of the job, the next one when the window has had its turn; then the process begins."""
        if self._job is None or self._process is None:
            return
        file = self._job / "job"
        for part in parts:
            with file.open("ab") as job:
                pickle.dump(part, job)
            QTimer.singleShot(0, self, lambda: self._hand_over(parts))
            return
        self._process.start(sys.executable, ["-m", "shopdraw.editor.print_apart", str(file)])

    def give_up(self) -> None:
        """Ends the process: the printer gets nothing, and a file that is half written goes."""
        if self._process is None:
            return
        self._given_up = True
        if self._process.state() is QProcess.ProcessState.NotRunning:
            self._end(1)  # not all has been handed over
        else:
            self._process.kill()

    def close(self) -> None:
        """Gives up, and waits until the process is gone."""
        self.give_up()
        if self._process is not None:
            self._process.waitForFinished()

    def _read(self) -> None:
        process = self._process
        if process is None:
            return
        for line in self._lines.read(process):
            if line.startswith(PROGRESS_MARK):
                self._begun = True
                self.progressed.emit(int(line.removeprefix(PROGRESS_MARK)), self._count)
            elif line.startswith(WRONG_MARK):
                self._said.append(line.removeprefix(WRONG_MARK))

    def _end(self, code: int) -> None:
        if self._process is None:
            return
        self._read()
        self._clear()
        done = code == 0 and not self._given_up
        # Where no page was begun, what stands there is still an older file.
        if not done and self._begun and self._file:
            Path(self._file).unlink(missing_ok=True)
        if done:
            words = self.tr("{count} pages are with the printer.").format(count=self._count)
        elif self._given_up:
            words = self.tr("Printing was given up.")
        else:
            words = self.tr("This couldn't be printed: {why}").format(why="; ".join(self._said) or str(code))
        self.finished.emit(done, words)

    def _failed(self, error: QProcess.ProcessError) -> None:
        if error is QProcess.ProcessError.FailedToStart:
            self._said.append(sys.executable)
            self._end(1)

    def _clear(self) -> None:
        if self._job is not None:
            shutil.rmtree(self._job, ignore_errors=True)
        if self._process is not None:
            self._process.deleteLater()
        self._process = self._job = None
