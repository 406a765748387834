"""Facts: what a sheet must tell, before it is known where the figure stands.

Knows features, the views that show them and how a figure is to be rounded; knows nothing of paper.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from enum import IntEnum

from shopdraw.shape.path import Point

ROUNDINGS = ("general", "cut", "fit", "angle")
BALLOON = "balloon "
"""What a label without room is told as, before the label."""


class Rank(IntEnum):
    """How much a fact matters, first placed first: the class of a fact."""

    OVERALL = 1
    LEVEL = 2
    OPENING = 3
    LOCATION = 4
    SIZE = 5
    RADIUS = 6
    CLEARANCE = 7


class BadFact(ValueError):
    """A fact that can't be drawn by any view; the message says which and why."""


@dataclass(frozen=True, slots=True)
class Sight:
    """Where a view shows a feature.

    Attributes:
        view: the view's id: "front", "section.A", "part.1L", ...
        point: in the view's own plane, true-size mm.
        shown: it is a visible or a cut edge there; a dimension never goes to a hidden one.
    """

    view: str
    point: Point
    shown: bool = True


@dataclass(frozen=True, slots=True)
class Feature:
    """A place that a dimension can go to: `board:feature`, `level.bank:top`, ... with each view that has it."""

    id: str
    sights: tuple[Sight, ...]

    def sight(self, view: str) -> Sight | None:
        """Where a view shows it, or None."""
        return next((sight for sight in self.sights if sight.view == view), None)


def feature(feature_id: str, **points: Point) -> Feature:
    """A feature that every named view shows; `__` in a keyword stands for the dot of a view's id."""
    return Feature(feature_id, tuple(Sight(view.replace("__", "."), point) for view, point in points.items()))


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing to be told, once, on a sheet.

    Attributes:
        id: `feature/feature`; the dimension's id is `feature/feature@view`.
        a, b: the two features; for `running` a is the origin; for `radius` the centre and a point of the arc; for
            `diameter` likewise; for `angular` a point on each leg; for `note` and `clearance` both the same or
            two sides of the gap.
        rank: its class.
        views: ids of candidate views, best first.
        direction_deg: measured along this direction of the view, degrees from +x; 0 for widths, 90 for heights.
        directions: (view, degrees) where a view needs another direction.
        kind: "linear", "running", "angular", "radius", "diameter", "note" (words at the end of a leader) or
            "clearance" (a linear one that is named, inside a section).
        side: the side it belongs to: "left", "right", "above", "below", "slant" (along its own direction, off the
            outline), "inside", or "" where any will do.
        row: 1 for the row nearest to the view, 2, 3, or 0 where any will do.
        rounding: "general", "cut", "fit" or "angle".
        chain: facts with one chain id share a row and are rounded together.
        measured: the exact size, mm or degrees; None takes it from the first view that has both features.
        prefix, suffix: words round the figure: "Ø", "gap ", " (fit 0,10)".
        words: the whole text, where it isn't one figure: "dado 17.96 × 6.4", "5 × 142 and 4 × 6 = 734".
        reference: printed in ( ): told elsewhere already, or the link that closes a chain.
        board: id of the board it belongs to, or "".
        vertex: for `angular`: where the legs meet.
        pinned: a person put it on its side: it stands on no other.
        offset: how much further out than need be its row stands, paper mm.
    Raises:
        BadFact: a rounding, kind or side that there isn't, no view, or an angle without a vertex.
    """

    id: str
    a: Feature
    b: Feature
    rank: Rank
    views: tuple[str, ...]
    direction_deg: float = 0.0
    kind: str = "linear"
    side: str = ""
    row: int = 0
    rounding: str = "general"
    chain: str = ""
    measured: float | None = None
    prefix: str = ""
    suffix: str = ""
    words: str = ""
    reference: bool = False
    board: str = ""
    vertex: Feature | None = None
    directions: tuple[tuple[str, float], ...] = field(default=())
    pinned: bool = False
    offset: float = 0.0

    def __post_init__(self) -> None:
        for found, allowed, what in (
            (self.rounding, ROUNDINGS, "rounding"),
            (self.kind, KINDS, "kind"),
            (self.side, SIDES, "side"),
        ):
            if found not in allowed:
                raise BadFact(f"fact {self.id}: {what} is {found!r}; it must be one of {', '.join(allowed)}")
        if not self.views:
            raise BadFact(f"fact {self.id}: it names no view; it needs at least one")
        if self.kind == "angular" and self.vertex is None:
            raise BadFact(f"fact {self.id}: an angle needs the point where its legs meet")

    def direction_in(self, view: str) -> float:
        """The direction measured along in a view, degrees from +x, from 0 to under 180."""
        return next((deg for name, deg in self.directions if name == view), self.direction_deg) % 180.0

    def size(self) -> float:
        """The exact size, mm or degrees.

        Raises:
            BadFact: it isn't given and no view has both features.
        """
        if self.measured is not None:
            return self.measured
        for view in self.views:
            size = self.size_in(view)
            if size is not None:
                return size
        raise BadFact(f"fact {self.id}: no view has both {self.a.id} and {self.b.id}, and no size is given")

    def size_in(self, view: str) -> float | None:
        """The size as it lies in a view, mm or degrees; None where the view lacks a feature."""
        a, b = self.a.sight(view), self.b.sight(view)
        if a is None or b is None:
            return None
        (ax, ay), (bx, by) = a.point, b.point
        if self.kind == "angular":
            vertex = self.vertex.sight(view) if self.vertex is not None else None
            if vertex is None:
                return None
            vx, vy = vertex.point
            turn = math.degrees(math.atan2(by - vy, bx - vx) - math.atan2(ay - vy, ax - vx)) % 360.0
            return min(turn, 360.0 - turn)
        if self.kind in ("radius", "diameter"):
            return math.hypot(bx - ax, by - ay) * (2.0 if self.kind == "diameter" else 1.0)
        radians = math.radians(self.direction_in(view))
        return abs((bx - ax) * math.cos(radians) + (by - ay) * math.sin(radians))


KINDS = ("linear", "running", "angular", "radius", "diameter", "note", "clearance")
SIDES = ("", "left", "right", "above", "below", "slant", "inside")


@dataclass(frozen=True, slots=True)
class Unplaced:
    """A fact that a view had no room for, or doesn't show.

    Attributes:
        fact: its id.
        view: the view's id.
        reason: what stood in its way, in words for the finding.
    """

    fact: str
    view: str
    reason: str
