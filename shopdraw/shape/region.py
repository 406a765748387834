"""Flat regions bounded by lines and true arcs: what is in both, in either, in one but not the other.

A region is a set of closed paths; a point lies in it when an odd number of them go round it. Arcs stay arcs:
boundaries are split where they meet and put together again, nothing becomes chords.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.shape.path import Corner, Path, Point, arc_of, signed_area

Region = tuple[Path, ...]
"""Outer paths run anticlockwise, holes clockwise; the inside lies to the left of every path."""

TOUCH_MM = 1e-5
"""Points nearer than this are one point, and a point as near to a line lies on it."""
_NEAR = 10 * TOUCH_MM


@dataclass(frozen=True, slots=True)
class Side:
    """One line or arc of a boundary, with the region on its left."""

    start: Point
    end: Point
    bulge: float

    def reversed(self) -> Side:
        """The same curve run the other way."""
        return Side(self.end, self.start, -self.bulge if self.bulge else 0.0)

    def middle(self) -> Point:
        """The point half way along it."""
        (x0, y0), (x1, y1) = self.start, self.end
        # the arc's middle stands to the right of its chord for a positive bulge, by half the chord times the bulge
        return ((x0 + x1) / 2 + self.bulge * (y1 - y0) / 2, (y0 + y1) / 2 - self.bulge * (x1 - x0) / 2)

    def heading(self, *, at_end: bool = False) -> float:
        """Its direction where it starts or ends, radians."""
        chord = math.atan2(self.end[1] - self.start[1], self.end[0] - self.start[0])
        half = 2 * math.atan(self.bulge)
        return chord + half if at_end else chord - half


class Unclosed(ValueError):
    """The sides of a result don't close; the message says where, and how wide the gap is."""


def region(*paths: Path) -> Region:
    """The region of an outline and its islands or holes, outer paths first."""
    return _oriented(paths)


def union(one: Region, two: Region) -> Region:
    """What lies in either region."""
    return _combined(one, two, "union")


def intersection(one: Region, two: Region) -> Region:
    """What lies in both regions."""
    return _combined(one, two, "intersection")


def difference(one: Region, two: Region) -> Region:
    """What lies in the first region and not in the second."""
    return _combined(one, two, "difference")


def region_area(paths: Region) -> float:
    """Area of a region, mm², exact for arcs."""
    return sum(signed_area(path) for path in paths)


def inside(paths: Sequence[Path], point: Point) -> bool:
    """Whether a point lies in a region; arcs are true. On a boundary the answer may be either."""
    odd = False
    for path in paths:
        for here, there in path.pairs():
            odd ^= _crosses((here.x, here.y), (there.x, there.y), point)
            if here.bulge:
                odd ^= _between_chord_and_arc(Side((here.x, here.y), (there.x, there.y), here.bulge), point)
    return odd


def sides_of(path: Path) -> list[Side]:
    """A path's lines and arcs."""
    return [Side((a.x, a.y), (b.x, b.y), a.bulge) for a, b in path.pairs()]


def on_boundary(paths: Sequence[Path], point: Point, within_mm: float = TOUCH_MM) -> bool:
    """Whether a point lies on one of the paths."""
    return any(_lies_on(side, point, within_mm) for path in paths for side in sides_of(path))


def _oriented(paths: Iterable[Path]) -> Region:
    """Paths turned so that the region lies on their left: inside an even number of others runs anticlockwise."""
    kept = tuple(paths)
    found = []
    for i, path in enumerate(kept):
        others = [other for j, other in enumerate(kept) if j != i]
        hole = sum(inside((other,), sides_of(path)[0].middle()) for other in others) % 2 == 1
        turned = path.anticlockwise()
        found.append(turned.reversed() if hole else turned)
    return tuple(found)


def _combined(one: Region, two: Region, how: str) -> Region:
    if not one or not two:
        return {"union": one or two, "intersection": (), "difference": one}[how]
    first = [side for path in one for side in sides_of(path)]
    second = [side for path in two for side in sides_of(path)]
    parted, also = _Boundary.of(one, _split(first, second)), _Boundary.of(two, _split(second, first))
    kept = [side for side in parted.sides if _keep(side, also, how, first=True)]
    others = [side for side in also.sides if _keep(side, parted, how, first=False)]
    kept += [side.reversed() for side in others] if how == "difference" else others
    return _oriented(stitched(kept))


@dataclass(frozen=True, slots=True)
class _Boundary:
    """A region with its sides parted, the middle of each, and a box that holds them all."""

    paths: Region
    sides: Sequence[Side]
    middles: Sequence[Point]
    box: tuple[float, float, float, float]

    @classmethod
    def of(cls, paths: Region, sides: Sequence[Side]) -> _Boundary:
        boxes = [_box_of(side) for side in sides]
        box = (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))
        return cls(paths, sides, [side.middle() for side in sides], box)

    def same_as(self, side: Side, middle: Point) -> Side | None:
        """The side that lies on another one, either way round."""
        x, y = middle
        for (other_x, other_y), other in zip(self.middles, self.sides, strict=True):
            if abs(x - other_x) <= _NEAR and abs(y - other_y) <= _NEAR and _same_curve(side, middle, other):
                return other
        return None

    def holds(self, point: Point) -> bool:
        """Whether a point lies inside."""
        x0, y0, x1, y1 = self.box
        return x0 <= point[0] <= x1 and y0 <= point[1] <= y1 and inside(self.paths, point)


def _keep(side: Side, other: _Boundary, how: str, *, first: bool) -> bool:
    middle = side.middle()
    shared = other.same_as(side, middle)
    if shared is not None:
        # one of two boundaries that lie on each other is kept: where both regions lie on the same side of it, or,
        # for a difference, on opposite sides
        same_way = math.dist(shared.start, side.start) < _NEAR
        return first and same_way is (how != "difference")
    within = other.holds(middle)
    if how == "union":
        return not within
    if how == "intersection":
        return within
    return within is not first


def _same_curve(one: Side, middle: Point, two: Side) -> bool:
    if math.dist(middle, two.middle()) > _NEAR:
        return False
    along = math.dist(one.start, two.start) < _NEAR and math.dist(one.end, two.end) < _NEAR
    against = math.dist(one.start, two.end) < _NEAR and math.dist(one.end, two.start) < _NEAR
    return along or against


def _split(sides: Sequence[Side], others: Sequence[Side]) -> list[Side]:
    """Sides split wherever another boundary meets them."""
    pieces: list[Side] = []
    boxes = [(_box_of(other), other) for other in others]
    for side in sides:
        x0, y0, x1, y1 = _box_of(side)
        near = [o for (a0, b0, a1, b1), o in boxes if a0 <= x1 and a1 >= x0 and b0 <= y1 and b1 >= y0]
        stops = [point for other in near for point in _meetings(side, other)]
        pieces.extend(_pieces(side, stops) if stops else (side,))
    return pieces


def _box_of(side: Side) -> tuple[float, float, float, float]:
    """A box that holds a side, a little larger; an arc stands out from its chord by half of it times the bulge."""
    (x0, y0), (x1, y1) = side.start, side.end
    more = TOUCH_MM + (abs(side.bulge) * math.hypot(x1 - x0, y1 - y0) / 2 if side.bulge else 0.0)
    return min(x0, x1) - more, min(y0, y1) - more, max(x0, x1) + more, max(y0, y1) + more


def _pieces(side: Side, stops: Iterable[Point]) -> list[Side]:
    if side.bulge:
        arc = arc_of(side.start, side.end, side.bulge)
        sweep = 4 * math.atan(side.bulge)
        begin = math.atan2(side.start[1] - arc.centre[1], side.start[0] - arc.centre[0])
        sign = math.copysign(1.0, sweep)

        def part_of(point: Point) -> float:
            angle = math.atan2(point[1] - arc.centre[1], point[0] - arc.centre[0])
            return ((sign * (angle - begin)) % (2 * math.pi)) / abs(sweep)
    else:
        dx, dy = side.end[0] - side.start[0], side.end[1] - side.start[1]
        size = dx * dx + dy * dy

        def part_of(point: Point) -> float:
            return ((point[0] - side.start[0]) * dx + (point[1] - side.start[1]) * dy) / size

    ends = (side.start, side.end)
    inner = sorted(
        (part_of(p), p) for p in stops if all(math.dist(p, end) > TOUCH_MM for end in ends) and 0.0 < part_of(p) < 1.0
    )
    run: list[tuple[float, Point]] = [(0.0, side.start)]
    for part, point in inner:
        if math.dist(point, run[-1][1]) > TOUCH_MM:
            run.append((part, point))
    if len(run) == 1:
        return [side]
    run.append((1.0, side.end))
    turn = math.atan(side.bulge)
    return [
        Side(a, b, math.tan(turn * (q - p)) if side.bulge else 0.0)
        for (p, a), (q, b) in pairwise(run)
    ]


def _meetings(one: Side, two: Side) -> list[Point]:
    """Where two sides cross or touch; of sides that lie on each other, their ends."""
    found = [p for p in (two.start, two.end) if _lies_on(one, p)]
    found += [p for p in (one.start, one.end) if _lies_on(two, p)]
    if one.bulge and two.bulge:
        crossings = _arc_arc(one, two)
    elif one.bulge or two.bulge:
        crossings = _line_arc(two, one) if one.bulge else _line_arc(one, two)
    else:
        crossings = _line_line(one, two)
    return found + [p for p in crossings if _lies_on(one, p) and _lies_on(two, p)]


def _line_line(one: Side, two: Side) -> list[Point]:
    ax, ay = one.end[0] - one.start[0], one.end[1] - one.start[1]
    bx, by = two.end[0] - two.start[0], two.end[1] - two.start[1]
    turn = ax * by - ay * bx
    if abs(turn) < 1e-12 * max(1.0, math.hypot(ax, ay) * math.hypot(bx, by)):
        return []
    part = ((two.start[0] - one.start[0]) * by - (two.start[1] - one.start[1]) * bx) / turn
    return [(one.start[0] + part * ax, one.start[1] + part * ay)]


def _line_arc(line: Side, curve: Side) -> list[Point]:
    arc = arc_of(curve.start, curve.end, curve.bulge)
    dx, dy = line.end[0] - line.start[0], line.end[1] - line.start[1]
    size = math.hypot(dx, dy)
    dx, dy = dx / size, dy / size
    along = (arc.centre[0] - line.start[0]) * dx + (arc.centre[1] - line.start[1]) * dy
    foot = (line.start[0] + along * dx, line.start[1] + along * dy)
    off = math.dist(foot, arc.centre)
    if off > arc.radius + TOUCH_MM:
        return []
    half = math.sqrt(max(0.0, arc.radius**2 - off**2))
    return [(foot[0] + s * half * dx, foot[1] + s * half * dy) for s in (-1.0, 1.0)]


def _arc_arc(one: Side, two: Side) -> list[Point]:
    a, b = arc_of(one.start, one.end, one.bulge), arc_of(two.start, two.end, two.bulge)
    apart = math.dist(a.centre, b.centre)
    if apart < TOUCH_MM or apart > a.radius + b.radius + TOUCH_MM or apart < abs(a.radius - b.radius) - TOUCH_MM:
        return []
    along = (apart**2 + a.radius**2 - b.radius**2) / (2 * apart)
    half = math.sqrt(max(0.0, a.radius**2 - along**2))
    dx, dy = (b.centre[0] - a.centre[0]) / apart, (b.centre[1] - a.centre[1]) / apart
    x, y = a.centre[0] + along * dx, a.centre[1] + along * dy
    return [(x - s * half * dy, y + s * half * dx) for s in (-1.0, 1.0)]


def _lies_on(side: Side, point: Point, within_mm: float = TOUCH_MM) -> bool:
    if math.dist(point, side.start) <= within_mm or math.dist(point, side.end) <= within_mm:
        return True
    if side.bulge:
        arc = arc_of(side.start, side.end, side.bulge)
        if abs(math.dist(point, arc.centre) - arc.radius) > within_mm:
            return False
        angle = math.degrees(math.atan2(point[1] - arc.centre[1], point[0] - arc.centre[0]))
        return (angle - arc.start_deg) % 360.0 <= arc.end_deg - arc.start_deg
    dx, dy = side.end[0] - side.start[0], side.end[1] - side.start[1]
    size = math.hypot(dx, dy)
    off = ((point[0] - side.start[0]) * dy - (point[1] - side.start[1]) * dx) / size
    along = ((point[0] - side.start[0]) * dx + (point[1] - side.start[1]) * dy) / size
    return abs(off) <= within_mm and 0.0 <= along <= size


def _crosses(start: Point, end: Point, point: Point) -> bool:
    """Whether the ray from a point to the right crosses a line."""
    if (start[1] > point[1]) == (end[1] > point[1]):
        return False
    return _left_of(start, end, point) is (end[1] > start[1])


def _left_of(start: Point, end: Point, point: Point) -> bool:
    """Whether a point lies to the left of a line; one on it counts as a hair to the right and up, as for the ray."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    off = dx * (point[1] - start[1]) - dy * (point[0] - start[0])
    return off > 0.0 or (off == 0.0 and (dy < 0.0 or (dy == 0.0 and dx > 0.0)))


def _between_chord_and_arc(side: Side, point: Point) -> bool:
    arc = arc_of(side.start, side.end, side.bulge)
    if math.dist(point, arc.centre) >= arc.radius:
        return False
    return _left_of(side.start, side.end, point) is (side.bulge < 0.0)


def stitched(sides: Sequence[Side]) -> list[Path]:
    """Closed paths out of loose sides; where several leave a point the sharpest left turn keeps a region together.

    Raises:
        Unclosed: a side ends where no other begins.
    """
    left = list(sides)
    paths = []
    while left:
        run = [left.pop(0)]
        while math.dist(run[-1].end, run[0].start) > 10 * TOUCH_MM:
            here = run[-1]
            choices = [s for s in left if math.dist(s.start, here.end) <= 10 * TOUCH_MM]
            if not choices:
                gap = min(math.dist(here.end, s.start) for s in (*left, run[0]))
                place = f"({here.end[0]:.3f}, {here.end[1]:.3f})"
                raise Unclosed(f"an outline stays open at {place}: the next side begins {gap:.3g} mm from there")
            back = here.heading(at_end=True) + math.pi
            following = min(choices, key=lambda s: (back - s.heading() - 1e-9) % (2 * math.pi))
            left.remove(following)
            run.append(following)
        path = _without_seams(run)
        if path is not None:
            paths.append(path)
    return paths


def _without_seams(run: Sequence[Side]) -> Path | None:
    """The path of a run, with lines that go on in one direction and arcs of one circle made one; None for a sliver."""
    merged: list[Side] = []
    for side in run:
        joined = _joined(merged[-1], side) if merged else None
        if joined is not None:
            merged[-1] = joined
        else:
            merged.append(side)
    while len(merged) > 2:
        joined = _joined(merged[-1], merged[0])
        if joined is None:
            break
        merged = [joined, *merged[1:-1]]
    if len(merged) < 2 or (len(merged) == 2 and not any(side.bulge for side in merged)):
        return None
    path = Path(tuple(Corner(*side.start, side.bulge) for side in merged))
    return path if abs(signed_area(path)) > TOUCH_MM else None


def _joined(one: Side, two: Side) -> Side | None:
    """Two sides that follow each other as one, or None."""
    turn = (two.heading() - one.heading(at_end=True) + math.pi) % (2 * math.pi) - math.pi
    if abs(turn) > 1e-6 or bool(one.bulge) != bool(two.bulge) or math.dist(one.start, two.end) <= 10 * TOUCH_MM:
        return None
    if not one.bulge:
        return Side(one.start, two.end, 0.0)
    a, b = arc_of(one.start, one.end, one.bulge), arc_of(two.start, two.end, two.bulge)
    bulge = math.tan(math.atan(one.bulge) + math.atan(two.bulge))
    one_circle = math.dist(a.centre, b.centre) <= TOUCH_MM and abs(a.radius - b.radius) <= TOUCH_MM
    return Side(one.start, two.end, bulge) if one_circle and abs(bulge) <= 1.0 and bulge * one.bulge > 0.0 else None
