"""The sheets of a package as a PDF, and the same sheets as DXF for those who draw on from them."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from shopdraw.cli.beside import Beside, Turns, has_cores, may_split
from shopdraw.cli.built import Work
from shopdraw.cli.refused import refused
from shopdraw.drawing.sheet import SheetSet
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import allowances, cut_list
from shopdraw.lists.notes import notes_of
from shopdraw.lists.rough_size import yard_of
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.part_sheet import NoRoomForPart, board_sheets
from shopdraw.sheet.schedules import OrderPages, order_pages
from shopdraw.sheet.set import Contents, Set, contents, numbered
from shopdraw.sheet.set_pages import NoRoomForSet
from shopdraw.trade.table import NotInTable
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding
from shopdraw.write.dxf import write_dxf
from shopdraw.write.pdf import write_pdf
from shopdraw.write.picture_files import write_pictures

VERSIONS = (("R2010", ""), ("R12", "-r12"))
"""A newer version and the old one that every control reads, with what their files' names end in."""

BEHIND = 10
"""How far the process that writes views stands behind the others: POSIX niceness."""

_begun: list[tuple[Work, Contents]] = []
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


def write_board_sheets(work: Work, folder: Path, boards: Sequence[Board]) -> tuple[Finding, ...]:
    """Writes `<stem>-part-<label>.pdf` for each of the boards.

    Returns:
        What found no room.
    Raises:
        Refused: no paper holds a board, or the paper that the piece names isn't known.
    """
    design, assembly = work.piece.design, work.assembly
    for board in boards:
        try:
            sheets = tuple(board_sheets(design, assembly, board, yard_of(design, work.shop.shop)))
            style = manner_of(design).style
        except (NotInTable, NoRoomForPart) as error:
            raise refused(f"drawing.paper: {error}") from error
        title = f"{design.piece.title}: {board.label} {board.name}"
        made = SheetSet(title, design.piece.drawn_by, "Part sheet", style, sheets)
        write_pdf(made, folder / f"{work.stem}-part-{board.label}.pdf")
    return ()


@dataclass(frozen=True)
class Views:
    """The views of a set of sheets, written by two processes: whoever is free takes the next.

    Attributes:
        other: the second of them.
        turns: numbers of views, each told to one of them.
    """

    other: Beside
    turns: Turns


def write_drawing(work: Work, folder: Path, shared: Views | None = None) -> tuple[Finding, ...]:
    """Writes `<stem>-drawing-<unit>.dxf` and the same as R12, and each view as SVG and PNG, from the PDF's own sheets.

    Args:
        work: the piece.
        folder: where to write.
        shared: the views, where another process has begun to write them.
    Returns:
        What found no room.
    Raises:
        Refused: as for the sheets.
    """
    made = set_of(work)
    unit = "in" if work.piece.design.piece.units == "inch" else "mm"
    for version, ending in VERSIONS:
        write_dxf(made.sheets, folder / f"{work.stem}-drawing-{unit}{ending}.dxf", unit, version)
    write_pictures(made.sheets, work.stem, folder, shared.turns if shared is not None else None)
    return made.findings


@contextmanager
def views_meanwhile(work: Work, folder: Path) -> Iterator[Views | None]:
    """The views of `write_drawing`, begun by another process that has the sheets already; None where it can't be.

    Raises:
        Refused: as for the sheets.
    """
    made = set_of(work)
    if not has_cores() or not may_split(wholly=False):
        yield None
        return
    turns = Turns()
    with Beside(_write_views, made.sheets, work.stem, folder, turns, split=True) as other:
        yield Views(other, turns)


def _write_views(_other: object, sheets: SheetSet, stem: str, folder: Path, turns: Turns) -> None:
    # It takes what the others leave of two cores, and so is never why they wait.
    os.nice(BEHIND)
    write_pictures(sheets, stem, folder, turns)


def order_of(work: Work) -> OrderPages | None:
    """The pages of the order of assembly on the paper that the piece asks for; None where that isn't known."""
    design = work.piece.design
    try:
        return order_pages(work.assembly, manner_of(design), yard_of(design, work.shop.shop))
    except NotInTable:
        return None


def finish_set(work: Work, pages: OrderPages | None) -> None:
    """Makes the set of sheets, which `begin_set` has begun, from what another process found and made meanwhile.

    Args:
        work: the piece with its findings.
        pages: of the order of assembly.
    """
    _last[:] = [(work, numbered(_begun[0][1], work.findings, pages))]


def begin_set(work: Work) -> None:
    """Makes all of the set that depends neither on the checks nor on the order of assembly.

    Raises:
        Refused: no paper holds the piece, or the paper that it names isn't known.
    """
    design, assembly = work.piece.design, work.assembly
    shop = work.shop.shop
    others = (materials(assembly, design, shop), allowances(design, shop), *notes_of(design, assembly))
    try:
        _begun[:] = [(work, contents(design, assembly, cut_list(assembly, design, shop), others, shop))]
    except (NotInTable, NoRoomForSet, NoRoomForPart) as error:
        raise refused(f"drawing.paper: {error}") from error


def set_of(work: Work) -> Set:
    """The set of sheets of a piece.

    Raises:
        Refused: no paper holds the piece, or the paper that it names isn't known.
    """
    if not _last or _last[0][0] is not work:
        if not _begun or not _same_piece(_begun[0][0], work):
            begin_set(work)
        finish_set(work, None)
    return _last[0][1]


def _same_piece(begun: Work, work: Work) -> bool:
    return begun.piece is work.piece and begun.assembly is work.assembly and begun.shop is work.shop
