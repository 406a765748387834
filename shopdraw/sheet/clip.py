"""Lines and arcs kept within an upright box."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import pairwise

from shopdraw.drawing.mark import ArcMark, Line, Mark, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, box_of_text

_LEAST = 1e-6


def clipped(marks: Iterable[Mark], box: Bounds) -> Iterator[Mark]:
    """Marks at full size as far as they lie in a box; words only when they lie in it whole.

    Args:
        marks: lines, arcs and words; others are left out.
        box: x0, y0, x1, y1, mm.
    """
    for mark in marks:
        if isinstance(mark, Line):
            ends = _line(mark.start, mark.end, box)
            if ends is not None:
                yield replace(mark, start=ends[0], end=ends[1])
        elif isinstance(mark, ArcMark):
            yield from _arcs(mark, box)
        elif isinstance(mark, Text):
            x0, y0, x1, y1 = box_of_text(mark).bounds()
            if x0 >= box[0] and y0 >= box[1] and x1 <= box[2] and y1 <= box[3]:
                yield mark


def _line(p: Point, q: Point, box: Bounds) -> tuple[Point, Point] | None:
    low, high = 0.0, 1.0
    for axis in (0, 1):
        start, run = p[axis], q[axis] - p[axis]
        near, far = box[axis], box[axis + 2]
        if abs(run) < 1e-12:
            if not near <= start <= far:
                return None
            continue
        t0, t1 = sorted(((near - start) / run, (far - start) / run))
        low, high = max(low, t0), min(high, t1)
    if (high - low) * math.dist(p, q) < _LEAST:
        return None
    ends = [(p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])) for t in (low, high)]
    return (p if low == 0.0 else ends[0]), (q if high == 1.0 else ends[1])


def _arcs(arc: ArcMark, box: Bounds) -> Iterator[ArcMark]:
    (cx, cy), r = arc.centre, arc.radius
    places = [arc.start_deg, arc.end_deg]
    for axis, centre in ((0, cx), (1, cy)):
        for wall in (box[axis], box[axis + 2]):
            share = (wall - centre) / r
            if abs(share) <= 1.0:
                turn = math.degrees(math.acos(share)) if axis == 0 else math.degrees(math.asin(share))
                for angle in (turn, -turn if axis == 0 else 180.0 - turn):
                    place = arc.start_deg + (angle - arc.start_deg) % 360.0
                    if place < arc.end_deg:
                        places.append(place)
    for low, high in pairwise(sorted(places)):
        middle = math.radians((low + high) / 2)
        x, y = cx + r * math.cos(middle), cy + r * math.sin(middle)
        if high - low > 1e-9 and box[0] <= x <= box[2] and box[1] <= y <= box[3]:
            yield replace(arc, start_deg=low, end_deg=high)
