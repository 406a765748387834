"""What every case has, whatever kind it is: sizes that more than one member needs, worked out once from the Design.

Heights are world z, depths world y, mm. Members ask the plan; nothing is measured off another member's board.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.stocks import Stocks
from shopdraw.piece.design import Design, DrawerTable
from shopdraw.wood.assembly import Moisture
from shopdraw.wood.board import Stock

BEHIND_BACK_MM = 2.0
"""Bars and drawers end this far in front of the back in the driest season (common practice)."""
WEB_TO_FOOT_MM = 15.0
"""Wood of a side below the bottom's dado (common practice)."""
LEAST_DOVETAIL_LAP_MM = 4.0
"""Wood before half-blind dovetails that nobody gave: a quarter of the board, and this at least (common practice)."""
BACK_MEMBER = {"panel": "back", "boards": "back.board", "frame": "back.frame"}
"""What a kind of back is made of."""
LEAST_DEPTH_MM = 120.0
"""No case shallower than this is built (common practice)."""


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
    """A clear space: its key, floor and clear height, the level that is its floor, what it spans and what fills it.

    Attributes:
        key: "2" in the bank, "2.1" for a cell of its second row, else the opening's path.
        floor: world z of its lower edge, mm.
        height: clear, mm.
        level: id of the board or frame that is its floor.
        left, right: world x of its two sides, mm.
        fill: what stands in it: drawer, pigeonhole, none.
        opening: the whole path of the opening, "bank.2".
    """

    key: str
    floor: float
    height: float
    level: str
    left: float
    right: float
    fill: str = "drawer"
    opening: str = ""


@dataclass(frozen=True, slots=True)
class Level:
    """A horizontal member: its id, kind ("bottom", "web-frame", "shelf", "pinned-shelf"), upper face and thickness."""

    id: str
    kind: str
    top: float
    thickness: float

    @property
    def under(self) -> float:
        """World z of its lower face, mm."""
        return self.top - self.thickness


@dataclass(frozen=True, slots=True)
class Upright:
    """A divider between two cells that lie beside each other.

    Attributes:
        id: of its board.
        name: in words.
        left: world x of its left face, mm.
        floor, ceiling: world z between which it stands, mm.
        below, above: ids of the levels that it stands on and under.
    """

    id: str
    name: str
    left: float
    floor: float
    ceiling: float
    below: str
    above: str


@dataclass(frozen=True, slots=True)
class Space:
    """How a case is divided: levels from the bottom up, cells from the top down, dividers between cells."""

    levels: tuple[Level, ...] = ()
    cells: tuple[Row, ...] = ()
    uprights: tuple[Upright, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class CasePlan:
    """Sizes shared by the members of a case, mm; names as in the trade."""

    design: Design
    stocks: Stocks
    season: Season
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
    rows: tuple[Row, ...] = ()
    """Openings with a drawer, from the top down."""
    lipped: bool = False
    space: Space = Space()
    front: float = 0.0
    """World y of the case boards' front edges: behind a face frame, else the front plane."""
    strip: float = 0.0
    """Width of the strips down the sides' front edges; 0 for none."""
    strip_depth: float = 0.0
    """Their thickness: the sides' own front edges lie so far behind the front plane."""
    strip_cut: float = math.inf
    """World z over which the strips are no wider than the sides."""
    face_rail: float = 0.0
    """Depth of the face rails before the web frames; 0 for none."""

    @property
    def side_front(self) -> float:
        """World y of the sides' front edges."""
        return max(self.front, self.strip_depth)

    @property
    def guide(self) -> float:
        """Thickness of the guides beside drawers and supports: what a strip is wider than its side."""
        return max(0.0, self.strip - self.side.thickness)

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
    def closed_at(self) -> float:
        """World z of what closes the case's space above: the top's underside, or the frame's under it."""
        if self.design.case.top_joint == "overhanging":
            return self.side_top - self.stocks.of("frame").thickness
        return self.height - self.stocks.of("top").thickness

    @property
    def top_front(self) -> float:
        """World y where the top's upper face begins between the sides."""
        return self.front

    @property
    def side_top(self) -> float:
        """World z of the sides' upper ends: the top's upper face, its underside where it lies over them, or the lap."""
        if self.design.case.top_joint == "overhanging":
            return self.height - self.stocks.of("top").thickness
        return self.height - (self.lap if self.clean_top else 0.0)

    @property
    def clean_top(self) -> bool:
        """Whether half-blind dovetails leave the top's upper face clean: their tails stand on the sides."""
        return self.design.case.top_joint == "dovetail" and self.design.case.dovetails == "clean-top"

    @property
    def lap(self) -> float:
        """Wood left before half-blind dovetails of the top, mm; 0 where they go through, or where there are none."""
        case = self.design.case
        if case.top_joint != "dovetail" or case.dovetails == "through":
            return 0.0
        thick = self.stocks.of("top").thickness if self.clean_top else self.side.thickness
        return case.dovetail_lap if case.dovetail_lap is not None else max(LEAST_DOVETAIL_LAP_MM, thick / 4)

    def drawer_bay(self, row: Row) -> tuple[float, float]:
        """World x of a row's opening."""
        return row.left, row.right

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


def plan_case(design: Design, *, lipped: bool) -> CasePlan:
    """The sizes that every case has; what stands in it is added by its kind.

    Args:
        lipped: whether a drawer in it has a lipped front.
    Raises:
        CannotBuild: a case too narrow for its sides or too shallow, with what would be right.
    """
    stocks = Stocks(design)
    side, case = stocks.of("side"), design.case
    address, given, beyond = given_width(design, stocks)
    width, least = given - 2 * beyond, 4 * side.thickness + 100
    if width < least:
        over = f" and {beyond:g} mm beyond each" if beyond else ""
        right = f"expected at least {least + 2 * beyond:g} mm for sides of {side.thickness:g} mm{over}"
        raise CannotBuild([fault(address, f"{given:g} mm", right)])
    if case.depth < LEAST_DEPTH_MM:
        raise CannotBuild([fault("case.depth", f"{case.depth:g} mm", f"expected at least {LEAST_DEPTH_MM:g} mm")])
    bottom_top = (
        design.level["bottom"].top
        if "bottom" in design.level and design.level["bottom"].top
        else _bottom_top(design, lipped)
    )
    foot = bottom_top - stocks.of("bottom").thickness - WEB_TO_FOOT_MM
    if foot <= 0.0:
        least = stocks.of("bottom").thickness + WEB_TO_FOOT_MM + 1.0
        address = "level.bottom.top" if "bottom" in design.level and design.level["bottom"].top else "base.height"
        right = f"expected at least {least:g} mm: the sides end {WEB_TO_FOOT_MM:g} mm below the bottom"
        raise CannotBuild([fault(address, f"{bottom_top:g} mm", right)])
    return CasePlan(
        design=design,
        stocks=stocks,
        season=Season(stocks.moisture),
        width=width,
        depth=case.depth,
        height=case.height,
        foot=foot,
        side=side,
        dado=case.dado_depth or side.thickness / 3,
        radius=case.cutter_radius or (3.175 if design.piece.units == "inch" else 3.0),
        rabbet_depth=design.back.rabbet_depth or stocks.of(BACK_MEMBER[design.back.kind]).thickness + 1.0,
        rabbet_width=design.back.rabbet_width or side.thickness / 2,
        bottom_top=bottom_top,
        lipped=lipped,
    )


def given_width(design: Design, stocks: Stocks) -> tuple[str, float, float]:
    """The width that a piece gives: its address, the width, and what it lies beyond each side, mm."""
    case = design.case
    if case.top_width is not None:
        return "case.top_width", case.top_width, case.overhang if case.top_joint == "overhanging" else 0.0
    if case.foot_width is not None:
        return "case.foot_width", case.foot_width, stocks.of("plinth").thickness
    assert case.width is not None
    return "case.width", case.width, 0.0


def _bottom_top(design: Design, lipped: bool) -> float:
    """The bottom's upper face: at the plinth's upper edge, or higher by what a lip below needs."""
    if not lipped:
        return design.base.height
    keys = ("", *design.drawer.each)
    return design.base.height + max(lip_of(design, key, "bottom") for key in keys if laps(design, key)) + 2.0


def front_of(design: Design, key: str) -> str:
    """How a drawer's front sits: its own choice, else the one for all."""
    own = design.drawer.each.get(key)
    return (own.front if own else None) or design.drawer.front


def laps(design: Design, key: str) -> bool:
    """Whether a drawer's front lies before the case round its opening: by lips, or as a whole."""
    return front_of(design, key) != "inset"


def lip_of(design: Design, key: str, edge: str) -> float:
    """How far a lipped or overlay front laps over one edge of its opening, mm; 0 where it has no lip.

    Args:
        key: the drawer's.
        edge: "left", "right", "top" or "bottom".
    """
    own, common = design.drawer.each.get(key, DrawerTable()), design.drawer
    given = (getattr(own, f"lip_{edge}"), own.lip, getattr(common, f"lip_{edge}"), common.lip)
    return float(next(length for length in given if length is not None))


def sizes_of(plan: CasePlan) -> dict[str, object]:
    """A plan's own values by name, for a plan that has more of them."""
    return {name: getattr(plan, name) for name in CasePlan.__dataclass_fields__}
