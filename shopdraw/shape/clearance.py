"""How far two closed paths stand apart, their arcs taken as arcs."""

from __future__ import annotations

import math

from shopdraw.shape.path import Path, Point, arc_of, bounds
from shopdraw.shape.region import Side, inside, intersection, region, sides_of


def clearance(one: Path, two: Path) -> float:
    """The least distance between two paths, mm; 0 where they meet or one lies in the other."""
    if _box_gap(one, two) <= 0.0 and _meet(one, two):
        return 0.0
    least = math.inf
    for a in sides_of(one):
        for b in sides_of(two):
            if _side_gap(a, b) < least:
                least = min(least, _between(a, b))
    return least


def _meet(one: Path, two: Path) -> bool:
    if intersection(region(one), region(two)):
        return True
    return inside((two,), sides_of(one)[0].middle()) or inside((one,), sides_of(two)[0].middle())


def _box_gap(one: Path, two: Path) -> float:
    a, b = bounds(one), bounds(two)
    return max(b[0] - a[2], a[0] - b[2], b[1] - a[3], a[1] - b[3])


def _side_gap(a: Side, b: Side) -> float:
    """No two points of the sides are nearer than this."""
    (ax0, ay0, ax1, ay1), (bx0, by0, bx1, by1) = _box(a), _box(b)
    return math.hypot(max(0.0, bx0 - ax1, ax0 - bx1), max(0.0, by0 - ay1, ay0 - by1))


def _box(side: Side) -> tuple[float, float, float, float]:
    (x0, y0), (x1, y1) = side.start, side.end
    more = abs(side.bulge) * math.dist(side.start, side.end) / 2
    return min(x0, x1) - more, min(y0, y1) - more, max(x0, x1) + more, max(y0, y1) + more


def _between(a: Side, b: Side) -> float:
    """The least distance of two sides that don't cross: from an end, or square to both."""
    found = [_to_side(point, b) for point in (a.start, a.end)] + [_to_side(point, a) for point in (b.start, b.end)]
    for one, two in ((a, b), (b, a)):
        if not two.bulge:
            continue
        centre = arc_of(two.start, two.end, two.bulge).centre
        found += [_to_side(point, two) for point in _square_to(one, centre)]
    return min(found)


def _square_to(side: Side, point: Point) -> list[Point]:
    """Points of a side at which the way to a point stands square to it."""
    if not side.bulge:
        (x0, y0), (x1, y1) = side.start, side.end
        dx, dy = x1 - x0, y1 - y0
        along = ((point[0] - x0) * dx + (point[1] - y0) * dy) / (dx * dx + dy * dy)
        return [(x0 + along * dx, y0 + along * dy)] if 0.0 <= along <= 1.0 else []
    arc = arc_of(side.start, side.end, side.bulge)
    away = math.atan2(point[1] - arc.centre[1], point[0] - arc.centre[0])
    return [
        (arc.centre[0] + arc.radius * math.cos(angle), arc.centre[1] + arc.radius * math.sin(angle))
        for angle in (away, away + math.pi)
        if _in_arc(math.degrees(angle), arc.start_deg, arc.end_deg)
    ]


def _to_side(point: Point, side: Side) -> float:
    found = [math.dist(point, side.start), math.dist(point, side.end)]
    found += [math.dist(point, foot) for foot in _square_to(side, point)]
    return min(found)


def _in_arc(angle: float, start: float, end: float) -> bool:
    return (angle - start) % 360.0 <= end - start
