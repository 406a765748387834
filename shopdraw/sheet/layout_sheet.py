"""Cutting layouts as sheets of their own: boards and sheets drawn to scale, then the tables that go with them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.sheet import Drawing, SheetSet
from shopdraw.lists.layout.buying_list import buying_tables
from shopdraw.lists.layout.headline import headline
from shopdraw.lists.layout.layout_table import layout_tables
from shopdraw.lists.layout.picture import headline_drawing, layout_drawings
from shopdraw.lists.layout.plan import StockPlan
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.sheet.arrange import Standing, free_area, stand_on_pages
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.manner import PAPER, Manner, larger_papers, manner_of, title_fields
from shopdraw.sheet.table_sheet import count_table_sheets, table_sheets
from shopdraw.sheet.view import ComposedView
from shopdraw.trade.paper import paper
from shopdraw.trade.scale import Scale
from shopdraw.wood.assembly import Assembly

TITLE = "Cutting layouts"
LARGEST = 0.2
"""No layout is drawn larger than 1:5: it is read beside the saw, not measured."""


class NoRoomForLayouts(Exception):
    """No paper of the series holds the longest board at any scale."""


def layout_sheets(plans: Sequence[StockPlan], assembly: Assembly, design: Design, shop: Shop) -> SheetSet:
    """The layouts of a piece on the shop's paper or the small one of its style, or the next larger that holds them all.

    What is to be bought of each stock and the least that it could be stands first.

    Raises:
        NoRoomForLayouts: none holds it.
        NotInTable: the piece names a paper that isn't known.
    """
    asked = manner_of(design)
    first = asked.on(paper(shop.habit.paper or PAPER[asked.style, "bench"]))
    manner, scale, pages = _pages(plans, design, shop, first)
    fields = replace(title_fields(design, manner), document_type=TITLE, projection="")
    made = (*buying_tables(plans, assembly, design, shop), *layout_tables(plans, design, shop))
    tables = tuple(table for table in made if table.rows)
    sign = manner.writing.decimal_sign
    count = len(pages) + count_table_sheets(tables, manner.size, manner.look, sign)
    drawn = [
        compose_sheet(
            f"layouts-{number}", str(number), count, TITLE, manner.size, page,
            replace(fields, scale=scale.printed), manner.look,
        )
        for number, page in enumerate(pages, 1)
    ]  # fmt: skip
    listed = table_sheets(
        "cuts", "What to buy, cuts in order", tables, manner.size, fields, manner.look, len(pages) + 1, count, sign
    )
    piece = design.piece
    return SheetSet(piece.title, piece.drawn_by, TITLE, manner.style, (*drawn, *listed))


def _pages(
    plans: Sequence[StockPlan], design: Design, shop: Shop, manner: Manner
) -> tuple[Manner, Scale, tuple[tuple[Standing, ...], ...]]:
    """The largest scale at which every board stands on a page, on the first paper that has one."""
    for size in larger_papers(manner.size):
        held = manner.on(size)
        look = held.look
        heights = (look.balloon, look.figure, look.label)
        for scale in held.scales:
            if scale.ratio > LARGEST:
                continue
            headlines = headline_drawing([headline(plan, design, shop) for plan in plans], scale.ratio, heights)
            drawings = [headlines, *layout_drawings(plans, design, shop, scale.ratio, heights)]
            pages = stand_on_pages([_composed(each, scale.ratio) for each in drawings], free_area(size, look))
            if pages is not None:
                return held, scale, pages
    raise NoRoomForLayouts("no paper of the series holds the longest board")


def _composed(drawing: Drawing, scale: float) -> ComposedView:
    x0, y0, x1, y1 = marks_box(drawing.marks, scale)
    room = (x0 * scale, y0 * scale, x1 * scale, y1 * scale)
    return ComposedView(drawing, scale, room, room, (), ())
