"""Layouts of a piece from a shop's stock: made in a worker process, with a headline for each stock. Knows no Qt."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.drawing.sheet import SheetSet
from shopdraw.lists.layout.headline import Headline, headline
from shopdraw.lists.layout.plan import plans
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.sheet.layout_sheet import NoRoomForLayouts, layout_sheets
from shopdraw.trade.table import NotInTable
from shopdraw.wood.assembly import Assembly


@dataclass(frozen=True, slots=True)
class LaidOut:
    """Layouts of a piece.

    Attributes:
        headlines: by stock.
        sheets: the layouts as they print; None where no paper holds them.
        why_not: in that case why.
    """

    headlines: tuple[Headline, ...]
    sheets: SheetSet | None
    why_not: str = ""


def layouts_job(assembly: Assembly, design: Design, shop: Shop) -> LaidOut:
    """Lays a piece out on the boards and sheets that the shop can get."""
    made = plans(assembly, design, shop)
    headlines = tuple(headline(plan, design, shop) for plan in made)
    try:
        return LaidOut(headlines, layout_sheets(made, assembly, design, shop))
    except (NotInTable, NoRoomForLayouts) as error:
        return LaidOut(headlines, None, str(error))
