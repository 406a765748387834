"""Printing: the sheets through the same painting as the screen, each page at its own size, templates never scaled."""

from __future__ import annotations

import itertools
import re
from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QMarginsF, QSizeF, QStandardPaths
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QTransform
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QWidget

from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.sheet import Paper, SheetSet
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import batch, paint

MM_PER_INCH = 25.4
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
    """Prints some pages of a set.

    Args:
        printer: chosen.
        sheets: the set.
        pages: positions in it, in the order of printing.
    """
    painter = QPainter()
    for number, page in enumerate(pages):
        sheet = sheets.sheets[page]
        printer.setPageLayout(layout_of(sheet.paper))
        if number == 0:
            painter.begin(printer)
        else:
            printer.newPage()
        dots = printer.resolution() / MM_PER_INCH
        foot = sheet.paper.height * dots
        for marks, scale, at in (
            (sheet.marks, 1.0, (0.0, 0.0)),
            *(
                (drawing_marks(p.drawing, p.scale, sheets.style, sheet.paper.group), p.scale, p.at)
                for p in sheet.placed
            ),
        ):
            size = dots * scale
            painter.save()
            painter.setTransform(QTransform(size, 0, 0, -size, at[0] * dots, foot - at[1] * dots), True)
            paint(painter, batch(marks, scale), INK, group=sheet.paper.group, pixels_per_paper_mm=dots)
            painter.restore()
    painter.end()
