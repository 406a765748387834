"""What a hand can take hold of on a sheet: dimensions, cutting planes, places to measure between. Values, without Qt.

Everything is in paper mm of its page, y up. Where a thing is dropped becomes a side and a row, or a place in the piece:
never a place on paper.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from shopdraw.shape.path import Point

SIDES = {"above": (False, True), "below": (False, False), "right": (True, True), "left": (True, False)}
"""Sides of a view: whether a dimension line stands upright there, and whether it lies beyond the view's far edge."""
_NEXT_ROW_MM = 5.0
"""Drawn so far beyond the outermost row a dimension begins a row of its own."""
_ONE_ROW_MM = 0.5
"""Lines nearer to each other than this are one row."""

Box = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class ViewOnSheet:
    """A view on a page.

    Attributes:
        id: "front", "section.A", ...
        box: round its own marks: x0, y0, x1, y1.
        scale: it is drawn at.
        rows: by side, how far out its dimension lines stand, nearest first.
    """

    id: str
    box: Box
    scale: float
    rows: Mapping[str, tuple[float, ...]] = field(default_factory=dict)

    def row_at(self, side: str, out: float) -> int:
        """The row whose line stands nearest, 1 for the nearest to the view; one more beyond all of them."""
        rows = self.rows.get(side, ())
        if not rows or out > rows[-1] + _NEXT_ROW_MM:
            return len(rows) + 1
        return min(range(len(rows)), key=lambda number: abs(rows[number] - out)) + 1

    def line_of(self, side: str, row: int) -> float:
        """Where a row's line lies on the paper: its x on the left and right, its y above and below."""
        rows = self.rows.get(side, ())
        out = rows[row - 1] if 0 < row <= len(rows) else (rows[-1] if rows else 0.0) + 2 * _NEXT_ROW_MM
        upright, far = SIDES[side]
        edge = self.box[(2 if far else 0) + (0 if upright else 1)]
        return edge + out if far else edge - out


class Stand(NamedTuple):
    """Where a dimension is to stand: a side of its view, a row, and how much further out than it does, paper mm."""

    side: str
    row: int
    more: float = 0.0


@dataclass(frozen=True, slots=True)
class DimensionGrip:
    """A dimension that stands on a row beside its view.

    Attributes:
        of: `feature/feature@view`.
        view: where it stands.
        words: its figure.
        box: round the figure.
        ends: the two points that it measures between.
        side, row: where its line stands.
        out: how far out of the view.
    """

    of: str
    view: ViewOnSheet
    words: str
    box: Box
    ends: tuple[Point, Point]
    side: str
    row: int
    out: float

    @property
    def upright(self) -> bool:
        """Whether its line stands upright, left or right of the view."""
        return SIDES[self.side][0]

    @property
    def middle(self) -> Point:
        """Of its figure."""
        return (self.box[0] + self.box[2]) / 2, (self.box[1] + self.box[3]) / 2

    @property
    def stand(self) -> Stand:
        """Where it stands."""
        return Stand(self.side, self.row)

    def dropped(self, point: Point) -> Stand:
        """What a hand means by a point of the page: another side, another row, or its own row further out."""
        axis = 0 if self.upright else 1
        low, high = self.view.box[axis], self.view.box[axis + 2]
        far = point[axis] > (low + high) / 2
        out = max(0.0, point[axis] - high if far else low - point[axis])
        side = next(name for name, kind in SIDES.items() if kind == (self.upright, far))
        row = self.view.row_at(side, out)
        if side != self.side:
            return Stand(side, row)
        if row > self.row == len(self.view.rows.get(side, ())):
            row = self.row  # it is the outermost one already: only further out
        return Stand(side, row, float(round(out - self.out)) if row == self.row else 0.0)

    def nudged(self, dx: int, dy: int) -> Stand:
        """The side and the row one step further; from the nearest row inwards it goes to the other side."""
        _, far = SIDES[self.side]
        step = dx if self.upright else dy
        outward = step if far else -step
        if not outward:
            return self.stand
        if self.row + outward >= 1:
            return Stand(self.side, self.row + outward)
        return Stand(next(name for name, kind in SIDES.items() if kind == (self.upright, not far)), 1)

    def line_at(self, stand: Stand) -> float:
        """Where its line would lie: its x where it stands upright, else its y."""
        if (stand.side, stand.row) != (self.side, self.row):
            return self.view.line_of(stand.side, stand.row)
        _, far = SIDES[self.side]
        edge = self.view.line_of(self.side, self.row)
        return edge + stand.more if far else edge - stand.more


@dataclass(frozen=True, slots=True)
class PlaneGrip:
    """A cutting plane's line on a view.

    Attributes:
        letter: of its section.
        name: "Section A–A".
        ends: of its line.
        upright: it stands upright and moves across; else it lies and moves up and down.
        value: where it cuts: from the case's left side, the front plane or the floor, mm.
        low, high: between these it cuts the piece, mm.
        scale: of the view.
    """

    letter: str
    name: str
    ends: tuple[Point, Point]
    upright: bool
    value: float
    low: float
    high: float
    scale: float

    def value_at(self, point: Point) -> float:
        """Where it would cut if its line passed through a point of the page, mm."""
        axis = 0 if self.upright else 1
        return self.value + (point[axis] - self.ends[0][axis]) / self.scale

    def line_at(self, value: float) -> tuple[Point, Point]:
        """Its line when it cuts at a place."""
        by = (value - self.value) * self.scale
        dx, dy = (by, 0.0) if self.upright else (0.0, by)
        (x0, y0), (x1, y1) = self.ends
        return (x0 + dx, y0 + dy), (x1 + dx, y1 + dy)


@dataclass(frozen=True, slots=True)
class PlaceOnSheet:
    """A place that a dimension can go to.

    Attributes:
        name: "side.left:right", "floor", ...
        view: which shows it.
        at: where.
        across: one measures across the paper from it; else up it.
        says: what a person calls it.
    """

    name: str
    view: ViewOnSheet
    at: Point
    across: bool
    says: str


@dataclass(frozen=True, slots=True)
class OnSheet:
    """All that can be taken hold of on one page."""

    dimensions: tuple[DimensionGrip, ...] = ()
    planes: tuple[PlaneGrip, ...] = ()
    places: tuple[PlaceOnSheet, ...] = ()


NOTHING = OnSheet()
OnSheets = Mapping[str, OnSheet]
"""By the key of the page."""


def rows_of(outs: Mapping[str, list[float]]) -> dict[str, tuple[float, ...]]:
    """Distances of dimension lines by side, each row once, nearest first."""
    made: dict[str, tuple[float, ...]] = {}
    for side, found in outs.items():
        rows: list[float] = []
        for out in sorted(found):
            if not rows or out - rows[-1] > _ONE_ROW_MM:
                rows.append(out)
        made[side] = tuple(rows)
    return made


def joined_side(first: PlaceOnSheet, other: PlaceOnSheet) -> str:
    """The side of their view on which a dimension between two places has the shorter way; "" where there is none."""
    if first.view.id != other.view.id or first.across != other.across or first.name == other.name:
        return ""
    axis = 1 if first.across else 0
    middle = (first.at[axis] + other.at[axis]) / 2
    low, high = first.view.box[axis], first.view.box[axis + 2]
    far = middle > (low + high) / 2
    return ("above" if far else "below") if first.across else ("right" if far else "left")
