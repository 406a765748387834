"""The box round marks and drawings, letters, arrowheads and dots included."""

from __future__ import annotations

import math
from collections.abc import Iterable
from functools import lru_cache

from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.letters import text_box
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import Point, bounds

Box = tuple[float, float, float, float]
"""Least x and y, greatest x and y."""


class NothingDrawn(ValueError):
    """There is no mark to put a box round."""


def marks_box(marks: Iterable[Mark], scale: float = 1.0) -> Box:
    """The box round marks, in the coordinates that they stand in.

    Args:
        marks: at least one.
        scale: of the drawing that they stand in; what is given in paper mm (letters, arrowheads, dots) is divided
            by it.
    Raises:
        NothingDrawn: there are no marks.
    """
    boxes = [mark_box(mark, scale) for mark in marks]
    if not boxes:
        raise NothingDrawn("no marks, so there is no box round them")
    return (
        min(b[0] for b in boxes),
        min(b[1] for b in boxes),
        max(b[2] for b in boxes),
        max(b[3] for b in boxes),
    )


def mark_box(mark: Mark, scale: float = 1.0) -> Box:
    """The box round one mark; see `marks_box`."""
    match mark:
        case Line():
            return _box((mark.start, mark.end))
        case ArcMark():
            return _box(_arc_points(mark))
        case Dot():
            reach = mark.radius / scale
            return mark.centre[0] - reach, mark.centre[1] - reach, mark.centre[0] + reach, mark.centre[1] + reach
        case Arrow():
            return _box(arrow_corners(mark, scale))
        case Text():
            return _box(text_box(mark, scale))
        case Area():
            return bounds(mark.outline)


@lru_cache(maxsize=1024)
def drawing_box(drawing: Drawing, scale: float, style: str, group: str = "medium") -> Box:
    """The box round a drawing with its dimensions, in its own mm.

    Raises:
        NothingDrawn: it is empty.
    """
    marks = list(drawing.marks)
    for dimension in drawing.dimensions:
        marks.extend(dimension_marks(dimension, scale, style, group))
    return marks_box(marks, scale)


def arrow_corners(arrow: Arrow, scale: float = 1.0) -> tuple[Point, Point, Point]:
    """The three corners of an arrowhead, tip first, in the coordinates that it stands in."""
    angle = math.radians(arrow.angle_deg)
    c, s = math.cos(angle), math.sin(angle)
    back, half = arrow.length / scale, arrow.width / scale / 2
    x, y = arrow.tip
    base = (x - c * back, y - s * back)
    return arrow.tip, (base[0] - s * half, base[1] + c * half), (base[0] + s * half, base[1] - c * half)


def _arc_points(arc: ArcMark) -> list[Point]:
    (x, y), r = arc.centre, arc.radius
    angles = [arc.start_deg, arc.end_deg]
    first = math.ceil(arc.start_deg / 90.0)
    last = math.floor(arc.end_deg / 90.0)
    angles += [90.0 * n for n in range(first, min(last, first + 4) + 1)]
    return [(x + r * math.cos(math.radians(a)), y + r * math.sin(math.radians(a))) for a in angles]


def _box(points: Iterable[Point]) -> Box:
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)
