"""The sets of sheets of a piece as they print: made in the worker process. Knows no Qt."""

from __future__ import annotations

from shopdraw.drawing.sheet import SheetSet
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.design import Design
from shopdraw.sheet.set import sheet_set
from shopdraw.sheet.template_set import template_sheets
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding


def sheet_sets(design: Design, assembly: Assembly, found: tuple[Finding, ...]) -> tuple[SheetSet, ...]:
    """The sheets on paper, then the templates: in tiles of the paper in hand, or whole for a roll."""
    made = sheet_set(design, assembly, found, cut_list(assembly, design), (materials(assembly, design),))
    pages = tuple(sheet for one in template_sheets(design, assembly) for sheet in (one.tiles or one.whole))
    if not pages:
        return (made.sheets,)
    title, style = f"{design.piece.title}: templates", made.sheets.style
    return (made.sheets, SheetSet(title, design.piece.drawn_by, "Full-size templates", style, pages, true_size=True))
