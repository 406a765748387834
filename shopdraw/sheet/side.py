"""The sides of a view on which rows of dimensions stand, and facts as spans along a side. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from shopdraw.drawing.mark import Meaning
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, Segment, crossing
from shopdraw.sheet.fact import Fact, Rank
from shopdraw.sheet.ground import Ground, What
from shopdraw.sheet.look import Look

COST_OF_CROSSING = 50.0
COST_OF_WORDS = 200.0
COST_OF_OTHER_SIDE = 20.0
_BESIDE_SLOPE = (Meaning.VISIBLE, Meaning.CUT, Meaning.BEHIND, Meaning.HIDDEN)
"""Lines that a row along a slope keeps beyond; moved positions and the ends of cutting planes it may cross."""
SAME_PLACE = 0.3
"""An extension line that meets a view's line nearer than this to its own feature doesn't cross it."""


@dataclass(frozen=True, slots=True)
class Side:
    """One side of a view.

    Attributes:
        name: "left", "right", "above", "below", or "slant" with its direction.
        along: unit direction in which positions are counted, the reading direction of ISO figures.
        out: unit direction away from the view.
        base: how far out the view's own outline reaches.
        start: least place of row 1, more than the base where words or cutting planes stand outside the outline.
    """

    name: str
    along: Point
    out: Point
    base: float
    start: float

    def place(self, p: Point) -> Point:
        """A point as its position along the side and its distance out."""
        return p[0] * self.along[0] + p[1] * self.along[1], p[0] * self.out[0] + p[1] * self.out[1]

    def point(self, s: float, t: float) -> Point:
        """The point at a position along the side and a distance out."""
        return s * self.along[0] + t * self.out[0], s * self.along[1] + t * self.out[1]

    @property
    def direction_deg(self) -> float:
        """Of dimensions on this side, degrees from +x."""
        return math.degrees(math.atan2(self.along[1], self.along[0]))


@dataclass(frozen=True, slots=True)
class Span:
    """A fact along a side.

    Attributes:
        a, b: its two features as (position along, distance out); for a running one, a is the origin.
        words: its figure.
    """

    fact: Fact
    a: Point
    b: Point
    words: str

    @property
    def low(self) -> float:
        """Where it begins along the side."""
        return min(self.a[0], self.b[0])

    @property
    def high(self) -> float:
        """Where it ends along the side."""
        return max(self.a[0], self.b[0])


@dataclass(frozen=True, slots=True)
class Run:
    """Spans that share a row: a chain, running dimensions from one origin, or one alone."""

    key: str
    spans: tuple[Span, ...]

    @property
    def low(self) -> float:
        """Where it begins along the side."""
        return min(span.low for span in self.spans)

    @property
    def high(self) -> float:
        """Where it ends along the side."""
        return max(span.high for span in self.spans)

    @property
    def running(self) -> bool:
        """Whether it counts from one origin."""
        return self.spans[0].fact.kind == "running"

    @property
    def overall(self) -> bool:
        """Whether it belongs outside all other rows."""
        return len(self.spans) == 1 and self.spans[0].fact.rank is Rank.OVERALL

    @property
    def pinned(self) -> bool:
        """Whether a person chose its side."""
        return any(span.fact.pinned for span in self.spans)

    @property
    def offset(self) -> float:
        """How much further out than need be a person wants it, paper mm."""
        return max(span.fact.offset for span in self.spans)

    @property
    def row(self) -> int:
        """The row it asks for, 0 for any."""
        return max(span.fact.row for span in self.spans)


def upright_sides(outline: Bounds, everything: Bounds, look: Look) -> dict[str, Side]:
    """The four sides of a view.

    Args:
        outline: box round its edges.
        everything: box round its edges, cutting planes and words.
        look: distances of rows.
    """
    x0, y0, x1, y1 = outline
    ex0, ey0, ex1, ey1 = everything
    across, up = (1.0, 0.0), (0.0, 1.0)
    rows = {
        "left": (up, (-1.0, 0.0), -x0, -ex0),
        "right": (up, (1.0, 0.0), x1, ex1),
        "above": (across, (0.0, 1.0), y1, ey1),
        "below": (across, (0.0, -1.0), -y0, -ey0),
    }
    return {
        name: Side(name, along, out, base, max(base + look.first_row, outer + (3.0 if outer > base + 0.1 else 0.0)))
        for name, (along, out, base, outer) in rows.items()
    }


def slant_side(direction_deg: float, outline: Bounds, features: Iterable[Point], ground: Ground, look: Look) -> Side:
    """A side of its own along a slope: away from the middle of the view, beyond what it shows beside the slope.

    Args:
        direction_deg: of the slope, degrees from +x.
        outline: box round the view.
        features: ends of what is measured.
        ground: the view's lines.
        look: distances of rows.
    """
    radians = math.radians(direction_deg if direction_deg <= 90.0 else direction_deg - 180.0)
    along = (math.cos(radians), math.sin(radians))
    ends = tuple(features)
    middle = ((outline[0] + outline[2]) / 2, (outline[1] + outline[3]) / 2)
    out = (-along[1], along[0])
    lean = sum((p[0] - middle[0]) * out[0] + (p[1] - middle[1]) * out[1] for p in ends)
    if lean < 0:
        out = (-out[0], -out[1])
    side = Side("slant", along, out, 0.0, 0.0)
    places = [side.place(p) for p in ends]
    base = max(t for _, t in places)
    low, high = min(s for s, _ in places), max(s for s, _ in places)
    for stroke in ground.strokes_near(outline):
        if stroke.meaning in _BESIDE_SLOPE:
            base = max(base, _reach_between(side, stroke.line, low + 1.0, high - 1.0))
    return Side(side.name, along, out, base, base + look.first_row)


def _reach_between(side: Side, line: Segment, low: float, high: float) -> float:
    """How far out a line reaches between two positions along a side; minus infinity where it doesn't come there."""
    (s0, t0), (s1, t1) = sorted((side.place(line[0]), side.place(line[1])))
    if s1 < low or s0 > high:
        return -math.inf
    if s1 - s0 < 1e-9:
        return max(t0, t1)
    ends = (min(max(at, s0), s1) for at in (low, high))
    return max(t0 + (at - s0) / (s1 - s0) * (t1 - t0) for at in ends)


def cost(side: Side, span: Span, ground: Ground) -> float:
    """What it costs to dimension a span on a side, without regard to the side that its fact prefers."""
    total = 0.0
    for s, t in (span.a, span.b):
        near, far = side.point(s, t), side.point(s, side.start)
        total += abs(side.start - t) + COST_OF_CROSSING * crossings(near, far, ground)
        total += COST_OF_WORDS * ground.line_meets_words((near, far))
    return total


def crossings(near: Point, far: Point, ground: Ground) -> int:
    """How many of a view's lines an extension line crosses; lines through one point count once."""
    places: list[float] = []
    for stroke in ground.strokes_along((near, far), (What.VIEW,)):
        point = crossing((near, far), stroke.line)
        if point is not None:
            places.append(abs(point[0] - near[0]) + abs(point[1] - near[1]))
    count, last = 0, SAME_PLACE
    for place in sorted(places):
        if place > last:
            count += 1
            last = place + SAME_PLACE
    return count
