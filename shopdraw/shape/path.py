"""Closed paths of straight lines and true arcs in a plane, compared by value.

Knows corners and bulges; knows nothing of wood or paper. Arcs are never chords here: `flattened` makes
chords for those who need them.
"""

from __future__ import annotations

import math
import sys
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

Point = tuple[float, float]

CHORD_TOLERANCE_MM = 0.002
"""How far a chord may lie from its arc; both ends lie on the arc."""


class Corner(NamedTuple):
    """A corner of a path and the bulge of the segment that leaves it.

    The bulge is the tangent of a quarter of the arc's angle, positive when it turns left, 0 for a line.
    Source: DXF reference, LWPOLYLINE, group code 42.
    """

    x: float
    y: float
    bulge: float = 0.0


class Arc(NamedTuple):
    """An arc as centre, radius and the two angles, given anticlockwise, degrees from +x."""

    centre: Point
    radius: float
    start_deg: float
    end_deg: float


_new = tuple.__new__
"""Makes a corner of three numbers at hand; `Corner(...)` costs twice as much, and a drag makes ten thousand a step."""

_LARGEST = sys.float_info.max
_SIZED = 1e-6


class NotAPath(ValueError):
    """Corners that don't make a closed outline; the message says which and why."""


@dataclass(frozen=True)
class Path:
    """A closed path: corners in order, the first not repeated; anticlockwise unless said otherwise.

    Raises:
        NotAPath: fewer than two corners, two of them at one place, or a number that isn't finite.
    """

    corners: tuple[Corner, ...]

    def __post_init__(self) -> None:
        corners = self.corners
        if len(corners) < 2 or (len(corners) == 2 and not any(c.bulge for c in corners)):
            raise NotAPath(f"an outline needs three corners (two with arcs), found {len(corners)}")
        # Thousands of outlines are made at every step of a drag: one plain loop, the place asked only for faults.
        x0, y0, _ = corners[-1]
        for x, y, bulge in corners:
            # A sum that isn't finite differs from itself, or lies beyond every number.
            if not -_LARGEST <= x + y + bulge <= _LARGEST:
                self._refuse_endless()
            if -1e-9 < x - x0 < 1e-9 and -1e-9 < y - y0 < 1e-9 and math.hypot(x - x0, y - y0) < 1e-9:
                raise NotAPath(f"an outline's corner stands twice at ({x0:g}, {y0:g})")
            x0, y0 = x, y

    def __hash__(self) -> int:
        # Kept: most outlines of a drag are never asked for it, the rest again and again.
        try:
            return self._hash  # type: ignore[attr-defined, no-any-return]
        except AttributeError:
            object.__setattr__(self, "_hash", hash(self.corners))
            return self._hash  # type: ignore[attr-defined, no-any-return]

    def __reduce__(self) -> tuple[Callable[[tuple[Corner, ...]], Path], tuple[tuple[Corner, ...]]]:
        # Without the hash: another process has others for the same words.
        return Path._known, (self.corners,)

    @classmethod
    def _known(cls, corners: tuple[Corner, ...]) -> Path:
        """A path whose corners are known to make one: those of another one, moved."""
        made = object.__new__(cls)
        object.__setattr__(made, "corners", corners)
        return made

    def _refuse_endless(self) -> None:
        for corner in self.corners:
            if not all(map(math.isfinite, corner)):
                raise NotAPath(f"an outline's corner must be finite numbers, found {tuple(corner)}")

    def pairs(self) -> Iterator[tuple[Corner, Corner]]:
        """Each segment as its two corners; the first one's bulge is the segment's."""
        corners = self.corners
        return zip(corners, (*corners[1:], corners[0]), strict=True)

    def moved(self, dx: float, dy: float) -> Path:
        """The path shifted, mm."""
        return Path._known(tuple([_new(Corner, (x + dx, y + dy, b)) for x, y, b in self.corners]))

    def mapped(self, to: Callable[[Point], Point], *, mirrored: bool = False) -> Path:
        """The path under a rigid map of the plane.

        Args:
            to: where a point goes; distances must be kept.
            mirrored: the map turns the plane over; corners are then reversed so that the path keeps its hand.
        """
        there = [Corner(*to((x, y)), b) for x, y, b in self.corners]
        return Path(tuple(there)).with_bulges_negated().reversed() if mirrored else Path(tuple(there))

    def with_bulges_negated(self) -> Path:
        """The same corners with every arc bulging the other way (half of a mirroring)."""
        return Path(tuple(Corner(x, y, -b if b else 0.0) for x, y, b in self.corners))

    def reversed(self) -> Path:
        """The same curve run the other way round."""
        corners = self.corners
        n = len(corners)
        back = []
        for i in range(n - 1, -1, -1):
            before = corners[(i - 1) % n]
            back.append(Corner(corners[i].x, corners[i].y, -before.bulge if before.bulge else 0.0))
        return Path(tuple(back))

    def anticlockwise(self) -> Path:
        """The same curve, run anticlockwise."""
        return self if signed_area(self) >= 0 else self.reversed()


def rectangle(x0: float, y0: float, x1: float, y1: float) -> Path:
    """An upright rectangle between two opposite corners, mm, anticlockwise from its lower left."""
    if x0 > x1:
        x0, x1 = x1, x0
    if y0 > y1:
        y0, y1 = y1, y0
    corners = (
        _new(Corner, (x0, y0, 0.0)),
        _new(Corner, (x1, y0, 0.0)),
        _new(Corner, (x1, y1, 0.0)),
        _new(Corner, (x0, y1, 0.0)),
    )
    # Four corners that lie well apart need no closer look.
    plain = x1 - x0 > _SIZED and y1 - y0 > _SIZED and -_LARGEST <= x0 + x1 + y0 + y1 <= _LARGEST
    return Path._known(corners) if plain else Path(corners)


def polygon(points: Iterable[Point]) -> Path:
    """A path of straight lines through the points, made anticlockwise."""
    return Path(tuple(Corner(x, y) for x, y in points)).anticlockwise()


def circle(centre: Point, radius: float) -> Path:
    """A full circle as two half circles, anticlockwise, mm."""
    x, y = centre
    return Path((Corner(x - radius, y, 1.0), Corner(x + radius, y, 1.0)))


@lru_cache(maxsize=16384)
def arc_of(start: Point, end: Point, bulge: float) -> Arc:
    """The arc that a bulge stands for.

    Args:
        start, end: the two ends, mm.
        bulge: tangent of a quarter of the arc's angle; positive turns left on the way from start to end.
    Returns:
        Centre and radius in mm; angles in degrees from +x, always given anticlockwise.
    Raises:
        NotAPath: the bulge is 0, or both ends are the same point.
    Source: DXF reference, LWPOLYLINE, group code 42.
    """
    chord = math.hypot(end[0] - start[0], end[1] - start[1])
    if bulge == 0.0 or chord == 0.0:
        raise NotAPath("a line has no arc")
    radius = chord * (1 + bulge * bulge) / (4 * abs(bulge))
    apothem = chord * (1 - bulge * bulge) / (4 * bulge)
    mx, my = (start[0] + end[0]) / 2, (start[1] + end[1]) / 2
    nx, ny = -(end[1] - start[1]) / chord, (end[0] - start[0]) / chord
    centre = (mx + nx * apothem, my + ny * apothem)
    a = math.degrees(math.atan2(start[1] - centre[1], start[0] - centre[0]))
    b = math.degrees(math.atan2(end[1] - centre[1], end[0] - centre[0]))
    if bulge < 0:
        a, b = b, a
    return Arc(centre, radius, a % 360.0, a % 360.0 + ((b - a) % 360.0 or 360.0))


def signed_area(path: Path) -> float:
    """Area inside, mm², exact for arcs; positive when the path runs anticlockwise."""
    total = 0.0
    for (x0, y0, bulge), (x1, y1, _) in path.pairs():
        total += (x0 * y1 - x1 * y0) / 2
        if bulge:
            total += _segment_area(math.hypot(x1 - x0, y1 - y0), bulge)
    return total


def area(path: Path) -> float:
    """Area inside the path, mm², exact for arcs."""
    return abs(signed_area(path))


def perimeter(path: Path) -> float:
    """Length once round, mm, exact for arcs."""
    total = 0.0
    for (x0, y0, bulge), (x1, y1, _) in path.pairs():
        chord = math.hypot(x1 - x0, y1 - y0)
        if bulge:
            total += chord * (1 + bulge * bulge) / (4 * abs(bulge)) * 4 * math.atan(abs(bulge))
        else:
            total += chord
    return total


@lru_cache(maxsize=2048)
def bounds(path: Path) -> tuple[float, float, float, float]:
    """Least and greatest x and y as (x0, y0, x1, y1), mm, arcs' quadrants included."""
    xs = [c.x for c in path.corners]
    ys = [c.y for c in path.corners]
    for (x0, y0, bulge), (x1, y1, _) in path.pairs() if any(c.bulge for c in path.corners) else ():
        if bulge:
            arc = arc_of((x0, y0), (x1, y1), bulge)
            for quadrant in (0.0, 90.0, 180.0, 270.0):
                if (quadrant - arc.start_deg) % 360.0 < arc.end_deg - arc.start_deg:
                    xs.append(arc.centre[0] + arc.radius * _COS[quadrant])
                    ys.append(arc.centre[1] + arc.radius * _SIN[quadrant])
    return min(xs), min(ys), max(xs), max(ys)


def flattened(path: Path, tolerance_mm: float = CHORD_TOLERANCE_MM) -> tuple[Point, ...]:
    """The path's corners with each arc replaced by chords, both ends of each on the arc.

    Args:
        tolerance_mm: how far a chord may lie from its arc.
    Returns:
        Points in order, the first not repeated.
    """
    if not any(bulge for _, _, bulge in path.corners):
        return tuple([(x, y) for x, y, _ in path.corners])
    points: list[Point] = []
    for (x0, y0, bulge), (x1, y1, _) in path.pairs():
        points.append((x0, y0))
        if bulge:
            points.extend(_arc_points((x0, y0), (x1, y1), bulge, tolerance_mm))
    return tuple(points)


def _arc_points(start: Point, end: Point, bulge: float, tolerance_mm: float) -> list[Point]:
    arc = arc_of(start, end, bulge)
    sweep = 4 * math.atan(bulge)
    widest = 2 * math.acos(max(0.0, 1 - min(tolerance_mm / arc.radius, 1.0)))
    count = max(2, math.ceil(abs(sweep) / widest)) if widest > 0 else 2
    first = math.atan2(start[1] - arc.centre[1], start[0] - arc.centre[0])
    return [
        (
            arc.centre[0] + arc.radius * math.cos(first + sweep * i / count),
            arc.centre[1] + arc.radius * math.sin(first + sweep * i / count),
        )
        for i in range(1, count)
    ]


def _segment_area(chord: float, bulge: float) -> float:
    """Area between an arc and its chord, positive when it lies right of the way from start to end."""
    angle = 4 * math.atan(abs(bulge))
    radius = chord * (1 + bulge * bulge) / (4 * abs(bulge))
    return math.copysign(radius * radius * (angle - math.sin(angle)) / 2, bulge)


_COS = {0.0: 1.0, 90.0: 0.0, 180.0: -1.0, 270.0: 0.0}
_SIN = {0.0: 0.0, 90.0: 1.0, 180.0: 0.0, 270.0: -1.0}
