"""What the sketches of the form are drawn with: lines and dimension lines in a square of 100 by 70. Knows no Qt."""

from __future__ import annotations

import itertools

from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning
from shopdraw.shape.path import Point

WIDTH, HEIGHT = 100.0, 70.0
ROOM_FOR_ARROWS, TAIL = 11.9, 8.0


def lines(*points: Point, meaning: Meaning = Meaning.VISIBLE, closed: bool = False) -> list[Mark]:
    """Lines from point to point."""
    ends = [*points, points[0]] if closed else list(points)
    return [Line(a, b, meaning) for a, b in itertools.pairwise(ends)]


def measure(a: Point, b: Point) -> list[Mark]:
    """A dimension line between two points, an arrow at either end."""
    upright = abs(b[1] - a[1]) > abs(b[0] - a[0])
    slanted = abs(b[1] - a[1]) > 1.0 and abs(b[0] - a[0]) > 1.0
    if slanted:
        return lines(a, b, meaning=Meaning.SIZE)
    first, last = (a, b) if (a[1] < b[1] if upright else a[0] < b[0]) else (b, a)
    low, high = (-90.0, 90.0) if upright else (180.0, 0.0)
    if max(abs(b[0] - a[0]), abs(b[1] - a[1])) >= ROOM_FOR_ARROWS:
        return [Line(a, b, Meaning.SIZE), Arrow(first, low, 6.0, 2.6), Arrow(last, high, 6.0, 2.6)]
    # No room between: the arrows stand outside and point at what is measured.
    out = (0.0, TAIL) if upright else (TAIL, 0.0)
    tails = [
        Line((first[0] - out[0], first[1] - out[1]), first, Meaning.SIZE),
        Line(last, (last[0] + out[0], last[1] + out[1]), Meaning.SIZE),
    ]
    return [*tails, Line(a, b, Meaning.SIZE), Arrow(first, high, 6.0, 2.6), Arrow(last, low, 6.0, 2.6)]


def box(x0: float, y0: float, x1: float, y1: float, meaning: Meaning = Meaning.VISIBLE) -> list[Mark]:
    """A board seen square: a rectangle between two corners."""
    return lines((x0, y0), (x1, y0), (x1, y1), (x0, y1), meaning=meaning, closed=True)


def round_hole(x: float, y: float, radius: float, meaning: Meaning = Meaning.VISIBLE) -> list[Mark]:
    """A circle."""
    return [ArcMark((x, y), radius, 0.0, 360.0, meaning)]
