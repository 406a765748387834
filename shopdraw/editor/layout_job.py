"""Layouts of a piece from a shop's stock: made in a worker process, with a headline for each stock. Knows no Qt."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.drawing.sheet import SheetSet
from shopdraw.lists.layout.layout_table import money, notes, numbered
from shopdraw.lists.layout.plan import StockPlan, plans
from shopdraw.lists.size import sizes_of
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.sheet.layout_sheet import NoRoomForLayouts, layout_sheets
from shopdraw.trade.table import NotInTable
from shopdraw.wood.assembly import Assembly


@dataclass(frozen=True, slots=True)
class Headline:
    """What a stock comes to.

    Attributes:
        stock: as a yard knows it.
        sheets: whether it is sold in sheets; else in boards.
        buy: how many are to be bought.
        use: how many of those on hand are used.
        least: no layout needs fewer to be bought; None where they differ in price, so that only money tells.
        cost, bound: what they cost, and no layout costs less; in `unit`.
        unit: of cost and bound.
        used: share of the wood that goes into parts, 0 to 1.
        notes: what a person should know.
    """

    stock: str
    sheets: bool
    buy: int
    use: int
    least: int | None
    cost: float
    bound: float
    unit: str
    used: float
    notes: tuple[str, ...]


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
    headlines = tuple(_headline(plan, design, shop) for plan in made)
    try:
        return LaidOut(headlines, layout_sheets(made, design, shop))
    except (NotInTable, NoRoomForLayouts) as error:
        return LaidOut(headlines, None, str(error))


def _headline(plan: StockPlan, design: Design, shop: Shop) -> Headline:
    pieces = [cut.piece for _, _, cut in numbered(plan)]
    bought = [piece for piece in pieces if not piece.on_hand]
    prices = {piece.cost for layout in plan.layouts for piece in layout.job.stock if not piece.on_hand}
    only = prices.pop() if len(prices) == 1 else 0.0
    least = math.ceil(plan.bound / only - 1e-6) if only > 0 else None
    whole = sum(piece.length * piece.width for piece in pieces)
    laid = sum(part.length * part.width for _, _, cut in numbered(plan) for part in cut.laid)
    return Headline(
        plan.name, plan.stock.kind == "sheet", len(bought), len(pieces) - len(bought), least, plan.cost, plan.bound,
        money(plan, shop), laid / whole if whole else 0.0, tuple(notes(plan, sizes_of(design))),
    )  # fmt: skip
