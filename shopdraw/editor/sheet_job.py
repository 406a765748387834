"""The sets of sheets of a piece as they print: made in the worker process. Knows no Qt."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.design import Design
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.set import sheet_set
from shopdraw.sheet.template import NoRoomOnTemplate, TemplateTooLong, template_of
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding

MEMBERS = ("side",)
"""Members that have templates in every package."""


def sheet_sets(design: Design, assembly: Assembly, found: tuple[Finding, ...]) -> tuple[SheetSet, ...]:
    """The sheets on paper, then the templates in tiles of the paper in hand."""
    made = sheet_set(design, assembly, found, cut_list(assembly, design), (materials(assembly, design),))
    style = made.sheets.style
    tiles = tuple(_tiles(design, assembly))
    if not tiles:
        return (made.sheets,)
    title = f"{design.piece.title}: templates"
    return (made.sheets, SheetSet(title, design.piece.drawn_by, "Full-size templates", style, tiles, true_size=True))


def _tiles(design: Design, assembly: Assembly) -> Iterator[Sheet]:
    manner = manner_of(design)
    name = design.drawing.template_paper or ("Letter" if manner.inch else "A4")
    size = paper("A4" if name == "roll" else name)
    for board in assembly.boards:
        if board.member in MEMBERS:
            template = template_of(board, assembly, manner.writing, design.piece.title, inch=manner.inch)
            try:
                yield from tiled_sheets(template, size)
            except (NoRoomOnTemplate, TemplateTooLong):
                continue
