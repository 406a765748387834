"""What a stock's layouts come to in a line: how many boards or sheets to buy, and the least that it could be."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.lists.layout.layout_table import money, notes, numbered
from shopdraw.lists.layout.plan import StockPlan
from shopdraw.lists.size import sizes_of
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop


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

    @property
    def words(self) -> str:
        """The first line in English, as it is printed."""
        return f"{self.stock}: {'sheets' if self.sheets else 'boards'} to buy: {self.buy}"

    @property
    def more(self) -> str:
        """The bound and what else there is to say, as it is printed."""
        least = (
            f"{self.cost:.2f} {self.unit}; no layout costs less than {self.bound:.2f}"
            if self.least is None
            else f"least possible: {self.least}"
        )
        rack = f", used from the rack: {self.use}" if self.use else ""
        return f"{least}{rack}, {100 * self.used:.0f} % of the wood used"


def headline(plan: StockPlan, design: Design, shop: Shop) -> Headline:
    """The headline of one stock."""
    pieces = [cut.piece for _, _, cut in numbered(plan)]
    bought = [piece for piece in pieces if not piece.on_hand]
    prices = {piece.cost for layout in plan.layouts for piece in layout.job.stock if not piece.on_hand}
    only = prices.pop() if len(prices) == 1 else 0.0
    least = math.ceil(plan.bound / only - 1e-6) if only > 0 else None
    whole = sum(piece.length * piece.width for piece in pieces)
    laid = sum(part.length * part.width for _, _, cut in numbered(plan) for part in cut.laid)
    factor, unit = money(plan, design, shop)
    return Headline(
        plan.name, plan.stock.kind == "sheet", len(bought), len(pieces) - len(bought), least, plan.cost * factor,
        plan.bound * factor, unit, laid / whole if whole else 0.0, tuple(notes(plan, sizes_of(design))),
    )  # fmt: skip
