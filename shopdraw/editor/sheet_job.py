"""The sets of sheets of a piece as they print: made in the worker process. Knows no Qt."""

from __future__ import annotations

from pathlib import Path

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.shop_of import shop_of
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import allowances, cut_list
from shopdraw.piece.design import Design
from shopdraw.sheet.set import sheet_set
from shopdraw.sheet.template_set import template_sheets
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding


def sheet_sets(
    design: Design, assembly: Assembly, found: tuple[Finding, ...], path: Path | None = None
) -> tuple[SheetSet, ...]:
    """The sheets on paper, then the templates: in tiles of the paper in hand, or whole for a roll.

    Args:
        design, assembly, found: the piece.
        path: of the piece file, if it has one: the shop is found from there.
    """
    shop = shop_of(design, path)
    lists = cut_list(assembly, design, shop), (materials(assembly, design, shop), allowances(design, shop))
    made = sheet_set(design, assembly, found, *lists, shop)
    pages = tuple(sheet for one in template_sheets(design, assembly) for sheet in (one.tiles or one.whole))
    if not pages:
        return (made.sheets,)
    title, style = f"{design.piece.title}: templates", made.sheets.style
    return (made.sheets, SheetSet(title, design.piece.drawn_by, "Full-size templates", style, pages, true_size=True))
