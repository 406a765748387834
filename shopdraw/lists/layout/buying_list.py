"""The buying list: what the piece needs of each stock, and the boards and sheets of the yard that give it.

It starts from the materials' own figures and ends with the layouts' own boards, so that the two can't disagree: what a
layout buys of solid wood is filled up to the amount that the materials state with their waste.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.lists.buying import Material, wood_of
from shopdraw.lists.layout.answer import CutUp
from shopdraw.lists.layout.job import Piece
from shopdraw.lists.layout.layout_table import kept_offcuts, numbered
from shopdraw.lists.layout.plan import StockPlan, as_bought
from shopdraw.lists.size import Sizes, sizes_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.trade.lumber import board_feet
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Stock

TITLE, YIELD, OFFCUTS = "Buying list", "Yield and waste", "Offcuts kept"
_INCH = float(MM_PER_INCH)
_M3 = 1e9
_NEAR = 1e-9


@dataclass(frozen=True, slots=True)
class Purchase:
    """Boards or sheets of one kind.

    Attributes:
        why: "buy", "use" (from the rack) or "spare": more of the yard's boards, for the waste that no layout shows.
        piece: the kind.
        count: how many.
        amount: of one, in the stock's unit.
    """

    why: str
    piece: Piece
    count: int
    amount: float


@dataclass(frozen=True, slots=True)
class Bought:
    """What is bought for one stock.

    Attributes:
        plan: its layouts.
        needs: the materials that it covers.
        purchases: boards and sheets.
    """

    plan: StockPlan
    needs: tuple[Material, ...]
    purchases: tuple[Purchase, ...]

    @property
    def unit(self) -> str:
        """Of all amounts."""
        return self.needs[0].unit

    @property
    def net(self) -> float:
        """What the piece needs without waste."""
        return sum(need.net for need in self.needs)

    @property
    def needed(self) -> float:
        """What the materials state, waste included."""
        return sum(need.net * (1.0 + need.waste_percent / 100.0) for need in self.needs)

    @property
    def amount(self) -> float:
        """What is bought and taken from the rack."""
        return sum(one.count * one.amount for one in self.purchases)

    @property
    def cost(self) -> float:
        """Of what is bought, in the plan's unit of cost."""
        return sum(one.count * one.piece.cost for one in self.purchases)


def bought(plans: Sequence[StockPlan], assembly: Assembly, design: Design, shop: Shop) -> tuple[Bought, ...]:
    """What is to be bought for each stock, in the order of the plans."""
    needs: dict[Stock, list[Material]] = {}
    for stock, material in wood_of(assembly, design, shop).items():
        needs.setdefault(as_bought(stock, shop), []).append(material)
    return tuple(_bought(plan, tuple(needs[plan.stock])) for plan in plans)


def _bought(plan: StockPlan, needs: tuple[Material, ...]) -> Bought:
    unit = needs[0].unit
    counts: dict[Piece, int] = {}
    for _, _, cut in numbered(plan):
        counts[cut.piece] = counts.get(cut.piece, 0) + 1
    laid = [
        Purchase("use" if piece.on_hand else "buy", piece, count, _amount(piece, unit))
        for piece, count in counts.items()
    ]
    found = Bought(plan, needs, tuple(laid))
    short = found.needed - found.amount
    if plan.stock.kind == "sheet" or short <= _NEAR:
        return found
    return Bought(plan, needs, (*laid, *_spare(plan, short, unit)))


def _spare(plan: StockPlan, short: float, unit: str) -> Iterator[Purchase]:
    """More boards, of the kind that fills up what is short at the least cost, then with the fewest boards."""
    offered = {piece: _amount(piece, unit) for layout in plan.layouts for piece in layout.job.stock}
    choices = [
        (math.ceil(short / amount - _NEAR), piece, amount)
        for piece, amount in offered.items()
        if not piece.on_hand and amount > 0
    ]
    if choices:
        count, piece, amount = min(choices, key=lambda one: (one[0] * one[1].cost, one[0], one[1].id))
        yield Purchase("spare", piece, count, amount)


def _amount(piece: Piece, unit: str) -> float:
    """One board or sheet as the yard counts it."""
    thickness, width = piece.sold
    match unit:
        case "board feet":
            return board_feet(max(_INCH, thickness), width, piece.length)
        case "m³":
            return thickness * width * piece.length / _M3
        case _:
            return 1.0


def buying_tables(
    plans: Sequence[StockPlan], assembly: Assembly, design: Design, shop: Shop
) -> tuple[Table, Table, Table]:
    """The buying list; by stock what was needed, allowed and bought; and the offcuts that are kept."""
    found = bought(plans, assembly, design, shop)
    sizes = sizes_of(design)
    return _list(found, sizes, shop), _yields(found, design, shop), _offcuts(plans, sizes, shop)


def _list(found: Sequence[Bought], sizes: Sizes, shop: Shop) -> Table:
    digits = 1 if sizes.unit == "in" else 4
    currency = shop.shop.currency or "money"
    columns: tuple[Column, ...] = (
        Column("stock"), Column("what to do"), Column("count", "", 0), Column("board or sheet"),
        sizes.column("thickness"), sizes.column("width"), sizes.column("length"), Column("amount", "", digits),
        Column("unit"), Column("note"),
    )  # fmt: skip
    rows: list[tuple[Cell, ...]] = []
    for one in found:
        for line in one.purchases:
            piece, priced = line.piece, one.plan.supply.priced and not line.piece.on_hand
            thickness, width = piece.sold
            rows.append((
                one.plan.name, line.why, line.count, piece.called, sizes.cell(thickness, sizes.thickness),
                sizes.cell(width, sizes.rough), sizes.cell(piece.length, sizes.rough), line.count * line.amount,
                one.unit, "for the waste that no layout shows" if line.why == "spare" else "",
                piece.cost if priced else None, piece.cost * line.count if priced else None,
            ))  # fmt: skip
    priced_ones = [one for one in found if one.plan.supply.priced]
    if priced_ones:
        total = sum(one.cost for one in priced_ones)
        rest = len(found) - len(priced_ones)
        note = f"without {rest} stock{'s' if rest > 1 else ''} that have no price" if rest else ""
        rows.append(("total", "", None, "", None, None, None, None, "", note, None, total))
        columns += (Column("price", currency, 2), Column("cost", currency, 2))
    return Table(TITLE, columns, tuple(row[: len(columns)] for row in rows))


def _yields(found: Sequence[Bought], design: Design, shop: Shop) -> Table:
    digits = 1 if design.piece.units == "inch" else 4
    columns = (
        Column("stock"), Column("net", "", digits), Column("waste allowed", "%", 0),
        Column("needed, waste included", "", digits), Column("bought and used", "", digits), Column("unit"),
        Column("yield", "%", 0), Column("offcuts kept", "", 0), Column("reason for the waste"),
    )  # fmt: skip
    rows: list[tuple[Cell, ...]] = []
    for one in found:
        kept = len(list(_kept(one.plan, shop)))
        waste = 100.0 * (one.needed / one.net - 1.0) if one.net else 0.0
        rows.append((
            one.plan.name, one.net, waste, one.needed, one.amount, one.unit,
            100.0 * one.net / one.amount if one.amount else None, kept,
            "; ".join(dict.fromkeys(need.reason for need in one.needs)),
        ))  # fmt: skip
    return Table(YIELD, columns, tuple(rows))


def _offcuts(plans: Sequence[StockPlan], sizes: Sizes, shop: Shop) -> Table:
    columns = (
        Column("stock"), Column("number", "", 0), Column("from"), sizes.column("width"), sizes.column("length"),
    )  # fmt: skip
    rows: list[tuple[Cell, ...]] = []
    for plan in plans:
        for number, cut, (width, length) in _kept(plan, shop):
            rows.append((
                plan.name, number, cut.piece.called, sizes.cell(width, sizes.rough), sizes.cell(length, sizes.rough)
            ))  # fmt: skip
    return Table(OFFCUTS, columns, tuple(rows))


def _kept(plan: StockPlan, shop: Shop) -> Iterator[tuple[int, CutUp, tuple[float, float]]]:
    """Which board or sheet each offcut that is kept comes from, with its width and length, mm."""
    for number, _, cut in numbered(plan):
        for offcut in kept_offcuts(cut, shop):
            yield number, cut, (offcut.width, offcut.length)
