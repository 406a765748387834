"""The plan of a desk: every size that more than one member needs, worked out once from the Design.

Heights are world z, depths world y, mm. Members ask the plan; nothing is measured off another member's board.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bank import BankDisagrees, bank_heights
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.slant import Slant, SlantDisagrees, slant_from_angle, slant_from_start, slant_from_top_depth
from shopdraw.build.stocks import Stocks
from shopdraw.piece.design import Design, DrawerTable
from shopdraw.wood.assembly import Moisture
from shopdraw.wood.board import Stock

LEAST_RAIL_MM = 6.0
"""A rail lower than this under the shelf is left out (common practice)."""
BEHIND_BACK_MM = 2.0
"""Bars and drawers end this far in front of the back in the driest season (common practice)."""
WEB_TO_FOOT_MM = 15.0
"""Wood of a side below the bottom's dado (common practice)."""


@dataclass(frozen=True, slots=True)
class Season:
    """What wood loses to the driest and gains to the wettest season, for a coefficient per percent of moisture."""

    moisture: Moisture

    def loss(self, size: float, stock: Stock) -> float:
        """M_d: what `size` mm across the grain loses from build to the driest season, mm."""
        return size * stock.coefficient * max(0.0, self.moisture.build - self.moisture.dry)

    def gain(self, size: float, stock: Stock) -> float:
        """M_w: what `size` mm across the grain gains from build to the wettest season, mm."""
        return size * stock.coefficient * max(0.0, self.moisture.wet - self.moisture.build)


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the bank: its key, floor and clear height, and the level that is its floor."""

    key: str
    floor: float
    height: float
    level: str


@dataclass(frozen=True, slots=True)
class Plan:
    """Sizes shared by the members of a slant-front desk, mm; names as in the trade."""

    design: Design
    stocks: Stocks
    season: Season
    slant: Slant
    width: float
    depth: float
    height: float
    foot: float
    """The case's foot: lower ends of the sides."""
    side: Stock
    dado: float
    """Depth of dados in the sides."""
    radius: float
    """The cutter's, at stopped ends."""
    rabbet_depth: float
    """How far the back's rabbet reaches forward from the rear edge."""
    rabbet_width: float
    """How far it goes into the side."""
    bottom_top: float
    writing: float
    rail_drop: float
    """From the writing surface down to the topmost drawer's opening."""
    rows: tuple[Row, ...]
    """From the top down."""
    lipped: bool

    @property
    def inside(self) -> float:
        """Width between the sides."""
        return self.width - 2 * self.side.thickness

    @property
    def left(self) -> float:
        """World x of the left side's inner face."""
        return self.side.thickness

    @property
    def right(self) -> float:
        """World x of the right side's inner face."""
        return self.width - self.side.thickness

    @property
    def rear(self) -> float:
        """World y of the back's front face: where everything inside ends."""
        return self.depth - self.rabbet_depth

    @property
    def usable(self) -> float:
        """How far back a drawer or a support may reach, in the driest season still clear of the back."""
        return self.rear - self.season.loss(self.depth, self.side) - BEHIND_BACK_MM

    @property
    def support(self) -> Stock:
        """Stock of the lid supports."""
        return self.stocks.of("support")

    @property
    def bay(self) -> float:
        """Width of a support's bay: bar and a clearance on each side."""
        return self.support.thickness + 2 * self.design.supports.clearance

    @property
    def divider(self) -> Stock:
        """Stock of the dividers between drawer and supports."""
        return self.stocks.of("divider")

    @property
    def support_top(self) -> float:
        """Upper edge of the supports: the open lid's show face."""
        return self.writing - self.stocks.of("lid").thickness

    def drawer_bay(self, row: Row) -> tuple[float, float]:
        """World x of a row's opening: the topmost one lies between the dividers."""
        if row is self.rows[0]:
            beside = self.bay + self.divider.thickness
            return self.left + beside, self.right - beside
        return self.left, self.right

    def ceiling(self, row: Row) -> float:
        """World z of a row's upper edge."""
        return row.floor + row.height

    def choice(self, key: str, name: str) -> str | float | None:
        """A choice for one drawer: its own, else the one for all."""
        own: str | float | None = getattr(self.design.drawer.each.get(key, DrawerTable()), name)
        common: str | float | None = getattr(self.design.drawer, name)
        return common if own is None else own

    def length_choice(self, key: str, name: str, default: float = 0.0) -> float:
        """A length chosen for one drawer, else for all, else the default, mm."""
        value = self.choice(key, name)
        return default if value is None else float(value)


def plan_desk(design: Design) -> Plan:
    """Work out a desk's shared sizes.

    Raises:
        CannotBuild: inputs that can't all hold, with their addresses and what would be right.
    """
    slant_table = design.slant
    if slant_table is None:
        raise CannotBuild(
            [fault("slant", "nothing", "expected a [slant] table with writing_height and one of angle and top_depth")]
        )
    stocks = Stocks(design)
    season = Season(stocks.moisture)
    side, case = stocks.of("side"), design.case
    if case.width < 4 * side.thickness + 100:
        raise CannotBuild(
            [
                fault(
                    "case.width",
                    f"{case.width:g} mm",
                    f"expected at least {4 * side.thickness + 100:g} mm for sides of {side.thickness:g} mm",
                )
            ]
        )
    slant = _slant(design, stocks)
    lipped = any(_front_of(design, key) == "lipped" for key in _keys(design))
    rabbet_depth = design.back.rabbet_depth or stocks.of("back").thickness + 1.0
    bottom_top = (
        design.level["bottom"].top
        if "bottom" in design.level and design.level["bottom"].top
        else _bottom_top(design, lipped)
    )
    drop = case.top_rail or _rail_drop(design, stocks, lipped)
    rows = _rows(design, stocks, bottom_top, slant.writing - drop)
    if lipped and not case.top_rail:
        # The lip below the open lid grows with its front, which gets no higher by a higher rail.
        tall = rows[0].height + 2 * design.drawer.lip
        drop += math.ceil(10 * season.gain(tall, stocks.of("drawer.front"))) / 10
        rows = _rows(design, stocks, bottom_top, slant.writing - drop)
    return Plan(
        design=design,
        stocks=stocks,
        season=season,
        slant=slant,
        width=case.width,
        depth=case.depth,
        height=case.height,
        foot=bottom_top - stocks.of("bottom").thickness - WEB_TO_FOOT_MM,
        side=side,
        dado=case.dado_depth or side.thickness / 3,
        radius=case.cutter_radius or (3.175 if design.piece.units == "inch" else 3.0),
        rabbet_depth=rabbet_depth,
        rabbet_width=design.back.rabbet_width or side.thickness / 2,
        bottom_top=bottom_top,
        writing=slant.writing,
        rail_drop=drop,
        rows=rows,
        lipped=lipped,
    )


def _keys(design: Design) -> tuple[str, ...]:
    bank = design.opening.get("bank")
    return bank.divide.keys if bank else ("1", "2", "3", "4")


def _front_of(design: Design, key: str) -> str:
    own = design.drawer.each.get(key)
    return (own.front if own else None) or design.drawer.front


def _bottom_top(design: Design, lipped: bool) -> float:
    """The bottom's upper face: at the plinth's upper edge, or higher by what a lip below needs."""
    return design.base.height + (design.drawer.lip + 2.0 if lipped else 0.0)


def _rail_drop(design: Design, stocks: Stocks, lipped: bool) -> float:
    """From the writing surface to the topmost opening: shelf and rail, and over a lip the open lid."""
    shelf, lid = stocks.of("shelf").thickness, stocks.of("lid").thickness
    under_shelf = shelf + (15.0 if not lipped else LEAST_RAIL_MM)
    return max(under_shelf, lid + design.drawer.lip + 1.0) if lipped else max(under_shelf, lid + 1.0)


def _rows(design: Design, stocks: Stocks, floor: float, ceiling: float) -> tuple[Row, ...]:
    divide = design.opening["bank"].divide if "bank" in design.opening else None
    keys = _keys(design)
    between = stocks.of("frame").thickness
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
        last = key == keys[-1]
        rows.append(Row(key, top - height, height, "bottom" if last else f"frame.{key}"))
        top -= height + between
    return tuple(rows)


def lid_inset(design: Design, stocks: Stocks) -> float:
    """How far the writing face, shut, lies inside the slant plane (o), by the lid's seat."""
    thickness = stocks.of("lid").thickness
    assert design.slant is not None
    if design.slant.seat == "on":
        return 0.0
    if design.slant.seat == "flush":
        return thickness
    return design.lid.rabbet or round(0.4 * thickness * 2) / 2


def _slant(design: Design, stocks: Stocks) -> Slant:
    table, case = design.slant, design.case
    assert table is not None
    inset = lid_inset(design, stocks)
    if table.pin_above_writing < 0:
        raise CannotBuild(
            [
                fault(
                    "slant.pin_above_writing",
                    f"{table.pin_above_writing:g} mm",
                    "expected 0 or more: a pin below the writing surface would need both edges eased",
                )
            ]
        )
    if table.writing_height >= case.height:
        raise CannotBuild(
            [
                fault(
                    "slant.writing_height",
                    f"{table.writing_height:g} mm",
                    f"expected less than the case's height of {case.height:g} mm",
                )
            ]
        )
    both = table.angle is not None and table.top_depth is not None
    try:
        if table.start is not None:
            return slant_from_start(
                case.depth,
                case.height,
                table.writing_height,
                inset,
                table.start,
                angle=table.angle,
                top_depth=table.top_depth,
                joint_gap=table.joint_gap,
                pin_above=table.pin_above_writing,
            )
        if both:
            return _agreeing(design, inset)
        keywords = {"joint_gap": table.joint_gap, "pin_above": table.pin_above_writing}
        if table.angle is not None:
            return slant_from_angle(
                case.depth,
                case.height,
                table.writing_height,
                inset,
                table.angle,
                pin_behind=table.pin_behind_front,
                **keywords,
            )
        if table.top_depth is not None:
            return slant_from_top_depth(
                case.depth,
                case.height,
                table.writing_height,
                inset,
                table.top_depth,
                pin_behind=table.pin_behind_front,
                **keywords,
            )
    except SlantDisagrees as error:
        raise CannotBuild(
            [fault("slant.angle" if table.angle is not None else "slant.top_depth", "", str(error))]
        ) from error
    raise CannotBuild([fault("slant", "neither angle nor top_depth", "expected one of them: the other follows")])


def _agreeing(design: Design, inset: float) -> Slant:
    """Angle and top depth both given: they must say the same to 0.05°, else what fits each is named."""
    table, case = design.slant, design.case
    assert table is not None
    assert table.angle is not None
    assert table.top_depth is not None
    by_depth = slant_from_top_depth(
        case.depth,
        case.height,
        table.writing_height,
        inset,
        table.top_depth,
        joint_gap=table.joint_gap,
        pin_above=table.pin_above_writing,
        pin_behind=table.pin_behind_front,
    )
    if math.isclose(by_depth.alpha, table.angle, abs_tol=0.05):
        return by_depth
    by_angle = slant_from_angle(
        case.depth,
        case.height,
        table.writing_height,
        inset,
        table.angle,
        joint_gap=table.joint_gap,
        pin_above=table.pin_above_writing,
        pin_behind=table.pin_behind_front,
    )
    raise CannotBuild(
        [
            fault(
                "slant.angle",
                f"{table.angle:g}°",
                f"with depth {case.depth:g}, height {case.height:g}, writing height {table.writing_height:g} "
                f"and top depth {table.top_depth:g} mm held, "
                f"the angle is {by_depth.alpha:.2f}°; for {table.angle:g}° the top depth is "
                f"{case.depth - by_angle.run:.1f} mm: keep one of the two",
            )
        ]
    )
