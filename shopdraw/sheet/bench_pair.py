"""A mirrored pair as it lies on the bench: reference edges together, one set of distances between them. Paper mm."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import box_of_text, united
from shopdraw.sheet.look import Look
from shopdraw.sheet.view import ComposedView

BETWEEN = 9.0
"""From the lower board's reference edge to what stands between the two."""
CLEAR = 3.0
"""From what stands over the lower board to what stands under the upper one."""
_LEAST_LINE = 1.5


def join_pair(upper: ComposedView, lower: ComposedView, lower_width: float, look: Look) -> ComposedView:
    """One drawing of both boards, the lower one's reference edge next to the rows below the upper one.

    Args:
        upper: its reference edge is the lower one, with the distances that serve both below it.
        lower: the mirror image.
        lower_width: of the lower board, mm; its reference edge lies that far over its (0, 0).
        look: heights and distances.
    """
    scale = upper.scale
    over = max(0.0, lower.room[3] - lower_width * scale)
    edge = upper.room[1] - max(BETWEEN, over + CLEAR)
    by = edge - lower_width * scale
    shift = (0.0, by / scale)
    marks = [*upper.drawing.marks, *(moved(mark, shift) for mark in lower.drawing.marks)]
    marks += _serving_lines(upper, edge, look)
    dimensions = (*upper.drawing.dimensions, *(_dimension_moved(d, shift) for d in lower.drawing.dimensions))
    room = united([upper.room, (lower.room[0], lower.room[1] + by, lower.room[2], lower.room[3] + by)])
    outline = united(
        [upper.outline, (lower.outline[0], lower.outline[1] + by, lower.outline[2], lower.outline[3] + by)]
    )
    drawing = replace(upper.drawing, marks=tuple(marks), dimensions=dimensions)
    placed = (*upper.placed, *lower.placed)
    return ComposedView(drawing, scale, outline, room, placed, (*upper.unplaced, *lower.unplaced))


def _serving_lines(upper: ComposedView, edge: float, look: Look) -> Iterator[Mark]:
    """Lines from the lower board's edge up to the figures of the distances that it shares."""
    scale = upper.scale
    boxes = [
        box_of_text(mark, scale).bounds()
        for dimension in upper.drawing.dimensions
        for mark in dimension_marks(dimension, scale, look.style, look.group)
        if isinstance(mark, Text)
    ]
    lines = [
        (p[0] * scale, p[1] * scale, q[0] * scale, q[1] * scale)
        for d in upper.drawing.dimensions
        if d.kind == "linear"
        for mark in dimension_marks(d, scale, look.style, look.group)
        if isinstance(mark, Line)
        for p, q in ((mark.start, mark.end),)
    ]
    for dimension in upper.drawing.dimensions:
        if (
            dimension.kind != "running"
            or dimension.direction_deg != 0.0
            or dimension.line[1] * scale > upper.outline[1]
        ):
            continue
        x = dimension.b[0] * scale
        bent = [(p, q) for d in upper.drawing.dimensions if d is not dimension for p, q in pairwise(d.leader)]
        tops = [box[1] - 1.0 for box in boxes if box[0] - 0.6 < x < box[2] + 0.6 and box[3] < upper.outline[1]]
        tops += [
            min(y0, y1) - 1.0
            for x0, y0, x1, y1 in lines
            if min(x0, x1) - 0.6 < x < max(x0, x1) + 0.6 and max(y0, y1) < upper.outline[1]
        ]
        tops += [
            min(p[1], q[1]) * scale - 1.0
            for p, q in bent
            if min(p[0], q[0]) * scale - 0.3 < x < max(p[0], q[0]) * scale + 0.3
            and max(p[1], q[1]) * scale < upper.outline[1]
        ]
        top = min([dimension.line[1] * scale - 2.0, *tops])
        if top - edge > _LEAST_LINE:
            yield Line((x / scale, edge / scale), (x / scale, top / scale), Meaning.SIZE, dimension.board)


def moved(mark: Mark, by: Point) -> Mark:
    """A mark shifted."""
    match mark:
        case Line():
            return replace(mark, start=_plus(mark.start, by), end=_plus(mark.end, by))
        case ArcMark() | Dot():
            return replace(mark, centre=_plus(mark.centre, by))
        case Arrow():
            return replace(mark, tip=_plus(mark.tip, by))
        case Text():
            return replace(mark, at=_plus(mark.at, by))
        case Area():
            islands = tuple(island.moved(*by) for island in mark.islands)
            clear = tuple((x0 + by[0], y0 + by[1], x1 + by[0], y1 + by[1]) for x0, y0, x1, y1 in mark.clear)
            return replace(mark, outline=mark.outline.moved(*by), islands=islands, clear=clear)


def _dimension_moved(dimension: Dimension, by: Point) -> Dimension:
    return replace(
        dimension,
        a=_plus(dimension.a, by),
        b=_plus(dimension.b, by),
        line=_plus(dimension.line, by),
        words_at=_plus(dimension.words_at, by),
        leader=tuple(_plus(p, by) for p in dimension.leader),
        vertex=_plus(dimension.vertex, by) if dimension.vertex is not None else None,
    )


def _plus(p: Point, by: Point) -> Point:
    return p[0] + by[0], p[1] + by[1]
