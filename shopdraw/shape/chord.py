"""Chords that stand in for arcs where a mesh or a section needs straight lines, each knowing its segment.

Knows paths; knows nothing of wood. True arcs stay the drawing's business.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import NamedTuple

from shopdraw.shape.path import CHORD_TOLERANCE_MM, Path, Point, arc_of


class Chord(NamedTuple):
    """A straight piece of a path: where it starts and which of the path's segments it stands for."""

    x: float
    y: float
    segment: int


@lru_cache(maxsize=8192)
def chords(path: Path, tolerance_mm: float = CHORD_TOLERANCE_MM) -> tuple[Chord, ...]:
    """The path as chords, both ends of each on the path.

    Args:
        tolerance_mm: how far a chord may lie from its arc.
    Returns:
        Chords in order; each ends where the next one starts, the last where the first one starts.
    """
    found: list[Chord] = []
    for index, (here, there) in enumerate(path.pairs()):
        found.append(Chord(here.x, here.y, index))
        if here.bulge:
            found.extend(
                Chord(x, y, index) for x, y in _between((here.x, here.y), (there.x, there.y), here.bulge, tolerance_mm)
            )
    return tuple(found)


def equal_area_points(path: Path, tolerance_mm: float = CHORD_TOLERANCE_MM) -> tuple[Point, ...]:
    """A polygon that holds exactly the area of the path, for weights.

    The inner points of each arc stand a little outside it, by as much as makes the area between arc and chord
    the true one; the arc's two ends stay where they are, so that neighbours still meet.
    """
    points: list[Point] = []
    for here, there in path.pairs():
        points.append((here.x, here.y))
        if here.bulge:
            points.extend(_fair_points((here.x, here.y), (there.x, there.y), here.bulge, tolerance_mm))
    return tuple(points)


def _between(start: Point, end: Point, bulge: float, tolerance_mm: float) -> list[Point]:
    """Points on the arc between its ends, evenly spread."""
    return _on_circle(start, end, bulge, _count(start, end, bulge, tolerance_mm), 1.0)


def _fair_points(start: Point, end: Point, bulge: float, tolerance_mm: float) -> list[Point]:
    count = _count(start, end, bulge, tolerance_mm)
    step = 4 * math.atan(abs(bulge)) / count
    # count triangles from the centre, the first and last with one point on the arc and one at the
    # radius k·r, the others with both at k·r: (2k + (count - 2)·k²)·sin(step) = count·step
    square, wanted = count - 2, count * step / math.sin(step)
    factor = wanted / 2 if square == 0 else (math.sqrt(1 + square * wanted) - 1) / square
    return _on_circle(start, end, bulge, count, factor)


def _count(start: Point, end: Point, bulge: float, tolerance_mm: float) -> int:
    radius = arc_of(start, end, bulge).radius
    widest = 2 * math.acos(max(0.0, 1 - min(tolerance_mm / radius, 1.0)))
    return max(2, math.ceil(abs(4 * math.atan(bulge)) / min(widest, 1.0)))


def _on_circle(start: Point, end: Point, bulge: float, count: int, factor: float) -> list[Point]:
    arc = arc_of(start, end, bulge)
    sweep = 4 * math.atan(bulge)
    first = math.atan2(start[1] - arc.centre[1], start[0] - arc.centre[0])
    return [
        (
            arc.centre[0] + factor * arc.radius * math.cos(first + sweep * i / count),
            arc.centre[1] + factor * arc.radius * math.sin(first + sweep * i / count),
        )
        for i in range(1, count)
    ]
