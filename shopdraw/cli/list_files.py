"""The lists of a package: cut list, materials and layouts as CSV, all in one workbook, and the layouts drawn."""

from __future__ import annotations

from pathlib import Path

from shopdraw.cli.built import Work
from shopdraw.cli.layout_files import write_layouts
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import EXACT, allowances, cut_list
from shopdraw.lists.notes import notes_of
from shopdraw.lists.table import Table
from shopdraw.sheet.sticker import sticker_sheets
from shopdraw.wood.finding import Finding
from shopdraw.write.pdf import write_pdf
from shopdraw.write.tables import write_csv, write_xlsx


def write_lists(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes the lists, and labels to stick on the boards.

    Returns:
        What fits no board or sheet that the shop can get.
    """
    design, assembly, shop = work.piece.design, work.assembly, work.shop.shop
    layouts, findings = write_layouts(work, folder)
    others = (allowances(design, shop), materials(assembly, design, shop), *notes_of(design, assembly), *layouts)
    full = cut_list(assembly, design, shop, exact=True)
    plain = Table(full.title, full.columns[:-EXACT], tuple(row[:-EXACT] for row in full.rows))
    for table in (full, *others):
        write_csv(table, folder / f"{table.title.lower().replace(' ', '-')}.csv", shop.habit)
    write_pdf(sticker_sheets(design, assembly), folder / "labels.pdf")
    write_xlsx((plain, *others), folder / "lists.xlsx")
    return findings
