"""How deep a point lies inside a path, arcs taken as they are."""

from __future__ import annotations

import math

from shopdraw.shape.path import Path, Point, arc_of, flattened


def depth_inside(outline: Path, point: Point) -> float:
    """How deep a point lies inside an outline, mm; below 0 outside. Arcs are true."""
    nearest, inside = math.inf, False
    for here, there in outline.pairs():
        nearest = min(nearest, _distance((here.x, here.y), (there.x, there.y), here.bulge, point))
    points = flattened(outline)
    for i, a in enumerate(points):
        b = points[i - 1]
        crosses = (a[1] > point[1]) != (b[1] > point[1])
        if crosses and point[0] < a[0] + (b[0] - a[0]) * (point[1] - a[1]) / (b[1] - a[1]):
            inside = not inside
    return nearest if inside else -nearest


def _distance(start: Point, end: Point, bulge: float, point: Point) -> float:
    if bulge:
        arc = arc_of(start, end, bulge)
        dx, dy = point[0] - arc.centre[0], point[1] - arc.centre[1]
        if (math.degrees(math.atan2(dy, dx)) - arc.start_deg) % 360.0 <= arc.end_deg - arc.start_deg:
            return abs(math.hypot(dx, dy) - arc.radius)
        return min(math.dist(point, start), math.dist(point, end))
    dx, dy = end[0] - start[0], end[1] - start[1]
    part = ((point[0] - start[0]) * dx + (point[1] - start[1]) * dy) / (dx * dx + dy * dy)
    part = min(1.0, max(0.0, part))
    return math.hypot(point[0] - start[0] - part * dx, point[1] - start[1] - part * dy)
