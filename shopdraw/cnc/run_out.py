"""Open pockets run past the edge, so that the cutter leaves it square; stopped ends stay where they are."""

from __future__ import annotations

import math
from collections.abc import Sequence

from shopdraw.shape.path import Corner, Path, Point
from shopdraw.shape.region import Region, Side, intersection, on_boundary, region, region_area, sides_of

_SHARP = 0.3
"""Sine of the angle of a corner that would run out to a spike if its sides went on until they meet."""
_LEAN = 0.07
"""Four degrees: a cutter leaves less than a thousandth of its radius in such a corner."""
_NEAR_MM = 1e-4
_SPARED_MM2 = 1e-3


def open_sides(path: Path, outline: Region) -> tuple[bool, ...]:
    """For each side of a pocket, trimmed to the outline, whether it lies on it: the cutter may run out there."""
    return are_open(sides_of(path), outline)


def are_open(sides: Sequence[Side], outline: Region) -> tuple[bool, ...]:
    """For each side, whether it lies on the board's outline."""
    return tuple(all(on_boundary(outline, point, _NEAR_MM) for point in _points_of(side)) for side in sides)


def _points_of(side: Side) -> tuple[Point, ...]:
    return (side.middle(), *((_part(side, t)) for t in (0.1, 0.9)))


def _part(side: Side, part: float) -> Point:
    """A point along a straight side; an arc's middle speaks for it."""
    if side.bulge:
        return side.middle()
    (x0, y0), (x1, y1) = side.start, side.end
    return (x0 + (x1 - x0) * part, y0 + (y1 - y0) * part)


def run_out(path: Path, opens: Sequence[bool], by_mm: float, outline: Region) -> tuple[Path, float]:
    """A pocket's outer edge with its open sides carried out of the board.

    Args:
        path: anticlockwise, trimmed to the outline.
        opens: which of its sides are open.
        by_mm: how far they are to go.
        outline: the board; the pocket never takes more of it than before.
    Returns:
        The path, and how far its open sides really went: less where other wood stands in the way.
    """
    if not any(opens):
        return path, by_mm
    before = region_area(intersection(region(path), outline))
    for share in (1.0, 0.75, 0.5, 0.25, 0.1):
        carried = _carried(path, opens, by_mm * share, outline)
        if abs(region_area(intersection(region(carried), outline)) - before) <= _SPARED_MM2:
            return carried, by_mm * share
    return path, 0.0


def _carried(path: Path, opens: Sequence[bool], by_mm: float, outline: Region) -> Path:
    sides = sides_of(path)
    corners: list[Corner] = []
    for i, side in enumerate(sides):
        before, out_before, out_after = sides[i - 1], opens[i - 1], opens[i]
        points = _corner(before, side, by_mm if out_before else 0.0, by_mm if out_after else 0.0)
        if out_before is not out_after and _lies_on_edge(side.start, points, outline):
            points = _leaning(before, side, points[0 if out_before else -1], by_mm, out_before=out_before)
        # the first of two points still belongs to the side before; between them runs a straight step
        corners.extend(Corner(*point, 0.0) for point in points[:-1])
        corners.append(Corner(*points[-1], side.bulge))
    return Path(_without_doubles(corners))


def _lies_on_edge(point: Point, points: Sequence[Point], outline: Region) -> bool:
    """Whether a wall that runs on past the edge runs along another edge, as a tenon's shoulder does."""
    ways = [_between(point, out, 0.05) for out in points if math.dist(point, out) > _NEAR_MM]
    return any(on_boundary(outline, way, _NEAR_MM) for way in ways)


def _between(start: Point, end: Point, part: float) -> Point:
    return (start[0] + (end[0] - start[0]) * part, start[1] + (end[1] - start[1]) * part)


def _leaning(before: Side, after: Side, out: Point, by_mm: float, *, out_before: bool) -> list[Point]:
    """The wall's way out leaned off that edge, so that no line lies on another; what it spares is waste."""
    heading = before.heading(at_end=True) + math.pi if out_before else after.heading()
    leant = (out[0] + _LEAN * by_mm * math.cos(heading), out[1] + _LEAN * by_mm * math.sin(heading))
    return [leant, after.start] if out_before else [after.start, leant]


def _corner(before: Side, after: Side, first: float, second: float) -> list[Point]:
    """Where a corner goes when the side before it moves outwards by `first` and the one after it by `second`."""
    point = after.start
    if not first and not second:
        return [point]
    a, b = before.heading(at_end=True), after.heading()
    out_first = (point[0] + first * math.sin(a), point[1] - first * math.cos(a))
    out_second = (point[0] + second * math.sin(b), point[1] - second * math.cos(b))
    turn = math.sin(b - a)
    straight = not before.bulge and not after.bulge
    if first and second:
        if abs(turn) < 1e-6 and math.cos(b - a) > 0:
            return [out_first]
        meets = straight and (abs(turn) > _SHARP or math.cos(b - a) > 0)
    else:
        meets = straight and turn > _SHARP
    if meets:
        # both lines moved out: the point has these distances from both
        along_a, along_b = second / turn, -first / turn
        return [
            (
                point[0] + along_a * math.cos(a) + along_b * math.cos(b),
                point[1] + along_a * math.sin(a) + along_b * math.sin(b),
            )
        ]
    if first and second:
        return [out_first, out_second]
    return [out_first, point] if first else [point, out_second]


def _without_doubles(corners: Sequence[Corner]) -> tuple[Corner, ...]:
    kept: list[Corner] = []
    for corner in corners:
        if kept and math.hypot(corner.x - kept[-1].x, corner.y - kept[-1].y) < 1e-9:
            kept[-1] = corner
        else:
            kept.append(corner)
    if len(kept) > 1 and math.hypot(kept[0].x - kept[-1].x, kept[0].y - kept[-1].y) < 1e-9:
        kept.pop()
    return tuple(kept)
