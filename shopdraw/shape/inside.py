"""How deep a point lies inside a path, arcs taken as they are."""

from __future__ import annotations

import math

from shopdraw.shape.path import Corner, Path, Point, arc_of

_NUDGE = (3.1e-10, 1.7e-10)
"""A point exactly on a chord or level with a corner is looked at a little beside, where the count is sure, mm."""


def depth_inside(outline: Path, point: Point) -> float:
    """How deep a point lies inside an outline, mm; below 0 outside. Arcs are true."""
    nearest = min(_distance((here.x, here.y), (there.x, there.y), here.bulge, point) for here, there in outline.pairs())
    return nearest if _is_inside(outline, (point[0] + _NUDGE[0], point[1] + _NUDGE[1])) else -nearest


def _is_inside(outline: Path, point: Point) -> bool:
    """Even or odd: how often a ray meets the straight chords, and how many arcs' segments hold the point."""
    x, y = point
    inside = False
    for here, there in outline.pairs():
        if (here.y > y) != (there.y > y) and x < there.x + (here.x - there.x) * (y - there.y) / (here.y - there.y):
            inside = not inside
        if here.bulge and _in_segment(here, there, point):
            inside = not inside
    return inside


def _in_segment(here: Corner, there: Corner, point: Point) -> bool:
    """Whether a point lies between an arc and its chord."""
    left = (there.x - here.x) * (point[1] - here.y) - (there.y - here.y) * (point[0] - here.x)
    if left * here.bulge > 0.0:  # an arc that turns left bows out to the right of its chord
        return False
    arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
    return math.dist(point, arc.centre) < arc.radius


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
