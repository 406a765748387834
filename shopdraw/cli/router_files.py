"""The router files of a package: a flat file for each setting of each part, and their covering sheet."""

from __future__ import annotations

import hashlib
from pathlib import Path

from shopdraw.cli.work import Work
from shopdraw.cnc.covering import covering_tables, files_of
from shopdraw.cnc.part import router_part
from shopdraw.cnc.shop_cutters import cutters_of
from shopdraw.wood.finding import Finding
from shopdraw.wood.part import parts
from shopdraw.write.router import write_router_file
from shopdraw.write.tables import write_csv, write_xlsx

OLD_FOLDER = "r12"
"""The same files for controllers that read nothing newer: of the side panels, or of all if the shop file says so."""
_OLD_MEMBER = "side"


def write_router_files(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes the files and the covering sheet; returns what turned up on the way and no check has told yet."""
    design, shop = work.piece.design, work.shop.shop
    cutters = cutters_of(shop)
    made = tuple(router_part(part, design, cutters=cutters) for part in parts(work.assembly.boards))
    sums = {}
    (folder / OLD_FOLDER).mkdir()
    for name, part, setting in files_of(made):
        write_router_file(setting.flat, folder / name)
        sums[name] = hashlib.sha256((folder / name).read_bytes()).hexdigest()
        if part.part.first.member == _OLD_MEMBER or shop.router.dxf == "R12":
            write_router_file(setting.flat, folder / OLD_FOLDER / name, "R12")
    tables = covering_tables(made, design, sums, work.must_fix, cutters)
    for table in tables:
        write_csv(table, folder / f"covering-sheet_{table.title.lower().replace(' ', '-')}.csv")
    write_xlsx(tables, folder / "covering-sheet.xlsx")
    told = {(finding.code, finding.message) for finding in work.findings}
    return tuple(f for part in made for f in part.findings if (f.code, f.message) not in told)
