"""The router files of a package: a flat file for each setting of each part, nested sheets, and their covering sheet."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from pathlib import Path

from shopdraw.cli.built import Work
from shopdraw.cli.refused import refused
from shopdraw.cnc.covering import covering_tables, files_of
from shopdraw.cnc.cutter import default_cutters
from shopdraw.cnc.flat import FlatPart
from shopdraw.cnc.nest import nests
from shopdraw.cnc.nest_check import nest_faults
from shopdraw.cnc.nested_sheet import Nesting
from shopdraw.cnc.part import router_part
from shopdraw.cnc.shop_cutters import cutters_of
from shopdraw.sheet.router_sheet import router_sheets
from shopdraw.trade.table import NotInTable
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.part import parts
from shopdraw.write.pdf import write_pdf
from shopdraw.write.router import write_router_file
from shopdraw.write.tables import write_csv, write_xlsx

OLD_FOLDER = "r12"
"""Files for controllers that read nothing newer, beside the others: of the side panels.

A shop file that asks for R12 gets every file in it, and no second folder.
"""
OLD = "R12"
_OLD_MEMBER = "side"


def write_router_files(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes the files and the covering sheet.

    Returns:
        What turned up on the way and no check has told yet: findings of single parts, faults of nested sheets.
    Raises:
        Refused: the piece names a paper that isn't known.
    """
    design, shop = work.piece.design, work.shop.shop
    cutters = cutters_of(shop)
    job = cutters if cutters is not None else default_cutters(inch=design.piece.units == "inch")
    marks = shop.router.marks
    made = tuple(router_part(part, design, cutters=job, marks=marks) for part in parts(work.assembly.boards))
    how = Nesting(shop.router.allowance, shop.router.margin, shop.router.keep_out)
    nested = nests(made, design, shop, job, how)
    version = shop.router.dxf
    sums = {}
    for name, part, setting in files_of(made):
        sums[name] = _written(setting.flat, folder / name, version)
        if part.part.first.member == _OLD_MEMBER and version != OLD:
            (folder / OLD_FOLDER).mkdir(exist_ok=True)
            _written(setting.flat, folder / OLD_FOLDER / name, OLD)
    for nest in nested.sheets:
        sums[nest.file] = _written(nest.flat, folder / nest.file, version)
    tables = covering_tables(made, design, sums, work.must_fix, cutters, nested, shop.router)
    for table in tables:
        write_csv(table, folder / f"covering-sheet_{table.title.lower().replace(' ', '-')}.csv", shop.habit)
    write_xlsx(tables, folder / "covering-sheet.xlsx")
    try:
        write_pdf(router_sheets(tables, design, shop), folder / "covering-sheet.pdf")
    except NotInTable as error:
        raise refused(f"drawing.paper: {error}") from error
    told = {(finding.code, finding.message) for finding in work.findings}
    own = tuple(f for part in made for f in part.findings if (f.code, f.message) not in told)
    faults = tuple(
        Finding("nest", Severity.MUST_FIX, (nest.file,), f"{nest.file}: {fault}", basis="the sheet's own arcs")
        for nest in nested.sheets
        for fault in nest_faults(nest)
    )
    misfits = tuple(
        Finding("not-nested", Severity.NOTE, (label,), f"{label} is on no nested sheet: {reason}", basis="the nesting")
        for label, reason in nested.left_out
    )
    return (*own, *faults, *misfits)


def write_board_files(work: Work, folder: Path, boards: Sequence[Board]) -> tuple[Finding, ...]:
    """Writes the files of the chosen boards' parts alone; nested sheets and the covering sheet are of all parts.

    Returns:
        What turned up on the way and no check has told yet.
    """
    design, shop = work.piece.design, work.shop.shop
    cutters = cutters_of(shop)
    job = cutters if cutters is not None else default_cutters(inch=design.piece.units == "inch")
    chosen = {board.id for board in boards}
    held = [part for part in parts(work.assembly.boards) if chosen & {board.id for board in part.boards}]
    made = tuple(router_part(part, design, cutters=job, marks=shop.router.marks) for part in held)
    for name, _, setting in files_of(made):
        _written(setting.flat, folder / name, shop.router.dxf)
    told = {(finding.code, finding.message) for finding in work.findings}
    return tuple(f for part in made for f in part.findings if (f.code, f.message) not in told)


def _written(flat: FlatPart, to: Path, version: str) -> str:
    """Writes one file; its SHA-256."""
    write_router_file(flat, to, version)
    return hashlib.sha256(to.read_bytes()).hexdigest()
