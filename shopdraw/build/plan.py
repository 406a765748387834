"""The plan of a slant-front desk: what its case has, its slant, its bank of drawers and its lid supports."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any

from shopdraw.build.bank import BankDisagrees, bank_heights
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import Row, laps, lip_of, plan_case, sizes_of
from shopdraw.build.face_rail import faced
from shopdraw.build.slant_plan import SlantPlan, slant_of, slant_table_of
from shopdraw.build.stocks import Stocks
from shopdraw.piece.design import Design
from shopdraw.wood.board import Stock

LEAST_RAIL_MM = 6.0
"""A rail lower than this under the shelf is left out (common practice)."""
BESIDE_BAR_MM, FILM_MM = 0.5, 0.2
"""Each side of a support's bar, and what is kept there in the wettest season, for its finish (common practice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan(SlantPlan):
    """Sizes shared by the members of a slant-front desk, mm; names as in the trade."""

    rail_drop: float
    """From the writing surface down to the topmost drawer's opening."""

    @property
    def support(self) -> Stock:
        """Stock of the lid supports."""
        return self.stocks.of("support")

    @property
    def bar(self) -> float:
        """Thickness of a support's bar, all its layers."""
        return self.design.supports.layers * self.support.thickness

    @property
    def bay(self) -> float:
        """Width of a support's bay: bar and a clearance on each side."""
        return self.bar + 2 * self.beside_bar

    @property
    def beside_bar(self) -> float:
        """Clearance on each side of a support's bar; a strip beside it grows towards it."""
        given = self.design.supports.clearance
        if given is not None:
            return given
        strip = self.season.gain(self.strip, self.stocks.of("strip")) if self.strip else 0.0
        return max(BESIDE_BAR_MM, math.ceil(10 * (strip + FILM_MM) - 1e-9) / 10 if strip else 0.0)

    @property
    def divider(self) -> Stock:
        """Stock of the dividers between drawer and supports."""
        return self.stocks.of("divider")

    @property
    def support_top(self) -> float:
        """Upper edge of the supports: the open lid's show face."""
        return self.writing - self.stocks.of("lid").thickness

    @property
    def stayed(self) -> bool:
        """Whether metal stays hold the open lid, and no bars."""
        return self.design.supports.kind == "stays"

    def beside(self, row: Row) -> float:
        """What stands between the side and a row's drawer: beside the topmost one a support and the divider."""
        return self.bay + self.divider.thickness if row == self.rows[0] and not self.stayed else 0.0

    def drawer_bay(self, row: Row) -> tuple[float, float]:
        """World x of a row's opening: the topmost one lies between the dividers."""
        beside = self.beside(row)
        return row.left + beside, row.right - beside


def plan_desk(design: Design) -> Plan:
    """Work out a desk's shared sizes.

    Raises:
        CannotBuild: inputs that can't all hold, with their addresses and what would be right.
    """
    slant_table_of(design)
    if design.case.top_joint == "overhanging":
        right = 'expected "dovetail" or "housed": the lid lies on the top\'s front edge'
        raise CannotBuild([fault("case.top_joint", '"overhanging"', right)])
    lipped = any(laps(design, key) for key in _keys(design))
    case = plan_case(design, lipped=lipped)
    stocks, season = case.stocks, case.season
    slant = slant_of(design, stocks)
    case = faced(case, slant.writing - stocks.of("shelf").thickness)
    span = (case.left + case.guide, case.right - case.guide)
    drop = design.case.top_rail or _rail_drop(design, stocks, lipped)
    rows = _rows(design, case.stocks, case.bottom_top, slant.writing - drop, span)
    if lipped and not design.case.top_rail:
        # The lip below the open lid grows with its front, which gets no higher by a higher rail.
        lips = [lip_of(design, rows[0].key, edge) for edge in ("top", "bottom")]
        tall = rows[0].height + sum(lips)
        drop += math.ceil(10 * season.gain(tall, stocks.of("drawer.front"))) / 10
        rows = _rows(design, stocks, case.bottom_top, slant.writing - drop, span)
    sizes: dict[str, Any] = sizes_of(replace(case, rows=rows))
    return Plan(**sizes, slant=slant, writing=slant.writing, rail_drop=drop)


def _keys(design: Design) -> tuple[str, ...]:
    bank = design.opening.get("bank")
    return bank.divide.keys if bank else ("1", "2", "3", "4")


def _rail_drop(design: Design, stocks: Stocks, lipped: bool) -> float:
    """From the writing surface to the topmost opening: shelf and rail, and over a lip the open lid."""
    shelf, lid = stocks.of("shelf").thickness, stocks.of("lid").thickness
    under_shelf = shelf + (15.0 if not lipped else LEAST_RAIL_MM)
    over = lip_of(design, _keys(design)[0], "top")
    return max(under_shelf, lid + over + 1.0) if lipped else max(under_shelf, lid + 1.0)


def _rows(design: Design, stocks: Stocks, floor: float, ceiling: float, span: tuple[float, float]) -> tuple[Row, ...]:
    divide = design.opening["bank"].divide if "bank" in design.opening else None
    keys = _keys(design)
    between = design.face.rail if design.face is not None else stocks.of("frame").thickness
    inch = design.piece.units == "inch"
    try:
        heights = bank_heights(
            ceiling - floor,
            between,
            len(keys),
            divide.rule if divide else "step",
            step=divide.step if divide and divide.step is not None else (19.05 if inch else 20.0),
            ratio=divide.ratio if divide and divide.ratio is not None else 1.15,
            sizes=divide.sizes if divide else None,
        )
    except BankDisagrees as error:
        raise CannotBuild([fault("opening.bank.divide", "", str(error))]) from error
    rows = []
    top = ceiling
    for key, height in zip(keys, heights, strict=True):
        level = "bottom" if key == keys[-1] else f"frame.{key}"
        rows.append(Row(key, top - height, height, level, *span, opening=f"bank.{key}"))
        top -= height + between
    return tuple(rows)
