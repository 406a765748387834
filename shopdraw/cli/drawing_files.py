"""The sheets of a package as a PDF, and the same sheets as DXF for those who draw on from them."""

from __future__ import annotations

from pathlib import Path

from shopdraw.cli.beside import Beside, has_cores, may_split
from shopdraw.cli.refused import refused
from shopdraw.cli.work import Work
from shopdraw.drawing.sheet import SheetSet
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.sheet.part_sheet import NoRoomForPart
from shopdraw.sheet.picture import pictures
from shopdraw.sheet.set import Set, sheet_set
from shopdraw.sheet.set_pages import NoRoomForSet
from shopdraw.trade.table import NotInTable
from shopdraw.wood.finding import Finding
from shopdraw.write.dxf import write_dxf
from shopdraw.write.pdf import write_pdf
from shopdraw.write.png import write_png
from shopdraw.write.svg import write_svg

NEWER, OLDER = ("R2010", ""), ("R12", "-r12")
"""A newer version and the old one that every control reads, with what their files' names end in."""
PARTS = "part."
"""Cells of part sheets: these aren't written as pictures."""

_last: list[tuple[Work, Set]] = []
"""The set that was made last: sheets and drawing are often asked for together."""


def write_sheets(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes `<stem>-sheets.pdf`.

    Returns:
        What found no room.
    Raises:
        Refused: no paper holds the piece, or the paper that it names isn't known.
    """
    made = set_of(work)
    write_pdf(made.sheets, folder / f"{work.stem}-sheets.pdf")
    return made.findings


def write_drawing(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes `<stem>-drawing-<unit>.dxf` and the same as R12, and each view as SVG and PNG, from the PDF's own sheets.

    Returns:
        What found no room.
    Raises:
        Refused: as for the sheets.
    """
    made = set_of(work)
    if has_cores() and may_split(wholly=False):
        with Beside(_write_small, made.sheets, work, folder, split=True) as second:
            _write_dxf(made.sheets, work, folder, NEWER)
            second.outcome()
    else:
        _write_dxf(made.sheets, work, folder, NEWER)
        _write_small(None, made.sheets, work, folder)
    return made.findings


def _write_dxf(sheets: SheetSet, work: Work, folder: Path, version: tuple[str, str]) -> None:
    unit = "in" if work.piece.design.piece.units == "inch" else "mm"
    name, ending = version
    write_dxf(sheets, folder / f"{work.stem}-drawing-{unit}{ending}.dxf", unit, name)


def _write_small(_hear: object, sheets: SheetSet, work: Work, folder: Path) -> None:
    """What a second process writes while the first one writes the newer DXF."""
    _write_dxf(sheets, work, folder, OLDER)
    for view in pictures(sheets):
        if not view.key.startswith(PARTS):
            name = f"{work.stem}-{view.key.replace('.', '-')}"
            write_svg(view, sheets.style, folder / f"{name}.svg")
            write_png(view, sheets.style, folder / f"{name}.png")


def set_of(work: Work) -> Set:
    """The set of sheets of a piece.

    Raises:
        Refused: no paper holds the piece, or the paper that it names isn't known.
    """
    if not _last or _last[0][0] is not work:
        design, assembly = work.piece.design, work.assembly
        buy = materials(assembly, design)
        try:
            made = sheet_set(design, assembly, work.findings, cut_list(assembly, design), (buy,), work.shop.shop)
        except (NotInTable, NoRoomForSet, NoRoomForPart) as error:
            raise refused(f"drawing.paper: {error}") from error
        _last[:] = [(work, made)]
    return _last[0][1]
