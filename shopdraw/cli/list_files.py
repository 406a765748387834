"""The lists of a package: cut list and materials as CSV, both in one workbook."""

from __future__ import annotations

from pathlib import Path

from shopdraw.cli.work import Work
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.wood.finding import Finding
from shopdraw.write.tables import write_csv, write_xlsx


def write_lists(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes the lists; they have no layout that could fail."""
    design, assembly = work.piece.design, work.assembly
    cut, buy = cut_list(assembly, design, exact=True), materials(assembly, design)
    write_csv(cut, folder / "cut-list.csv")
    write_csv(buy, folder / "materials.csv")
    write_xlsx((cut_list(assembly, design), buy), folder / "lists.xlsx")
    return ()
