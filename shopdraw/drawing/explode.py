"""A dimension as marks: extension lines, dimension line, arrows or strokes, leader and figure.

The one place that decides how a dimension looks; screen, PDF and DXF all draw these marks.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.letters import text_box, text_width
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import Point

ARROW_LENGTH_MM = 3.0
ARROW_WIDTH_MM = 1.0
"""Filled arrowhead, 3 to 1. Source: ASME Y14.2."""
STROKE_MM = 3.0
"""Length of an oblique stroke at 45° (common practice)."""
RING_MM = 3.0
"""Diameter of the origin ring of running dimensions (ISO 129-1; the size is common practice)."""
TAIL_MM = 3.0
"""How far the line reaches past an arrow that stands outside (common practice)."""
CLEAR_MM = 1.0
"""Gap between a broken dimension line and its figure (common practice)."""

_ON_LINE = 1.25
"""A figure whose baseline is nearer to its line than this, in its own heights, stands on that line."""

ASME_GAP_MM, ASME_PAST_MM = 1.5, 3.0
"""Extension lines, ASME Y14.5 practice: gap at the feature, length past the dimension line."""
ISO_PAST_WIDTHS = 8.0
"""Extension lines, ISO practice: no gap; past the line 8 × line width (from memory, to be confirmed)."""


@dataclass(frozen=True, slots=True)
class _Look:
    """Paper sizes turned into the drawing's own mm."""

    scale: float
    gap: float
    past: float

    def own(self, paper_mm: float) -> float:
        return paper_mm / self.scale


def dimension_marks(dimension: Dimension, scale: float, style: str, group: str = "medium") -> tuple[Mark, ...]:
    """The marks of one dimension, in the coordinates of its drawing (true-size mm).

    Args:
        dimension: placed already; nothing is moved here.
        scale: of the drawing on paper, 0.2 for 1:5.
        style: "iso" or "asme".
        group: the paper's, for the line width that ISO's overshoot follows.
    """
    if style == "asme":
        look = _Look(scale, ASME_GAP_MM / scale, ASME_PAST_MM / scale)
    else:
        past = ISO_PAST_WIDTHS * line_style(Meaning.SIZE, group).width_mm
        look = _Look(scale, 0.0, past / scale)
    text = Text(
        dimension.words_at,
        dimension.words,
        dimension.height,
        "middle",
        dimension.words_angle_deg,
        Meaning.SIZE,
        dimension.board,
    )
    draw = {
        "linear": _linear,
        "running": _running,
        "angular": _angular,
        "radius": _radius,
        "diameter": _diameter,
    }[dimension.kind]
    marks = [*draw(dimension, look, text), *_leader(dimension)]
    return (*marks, text) if dimension.words else tuple(marks)


def drawing_marks(drawing: Drawing, scale: float, style: str, group: str = "medium") -> tuple[Mark, ...]:
    """All marks of a drawing, its dimensions' included; what two dimensions share (rings, extension lines) is
    there once.
    """
    marks: dict[Mark, None] = dict.fromkeys(drawing.marks)
    for dimension in drawing.dimensions:
        marks.update(dict.fromkeys(dimension_marks(dimension, scale, style, group)))
    return tuple(marks)


def _linear(dimension: Dimension, look: _Look, text: Text) -> list[Mark]:
    along = _direction(dimension.direction_deg)
    a = _on_line(dimension.a, dimension.line, along)
    b = _on_line(dimension.b, dimension.line, along)
    if (b[0] - a[0]) * along[0] + (b[1] - a[1]) * along[1] < 0:
        along = (-along[0], -along[1])
    marks = _extensions(dimension, (a, b), look)
    start, end = a, b
    if dimension.terminator == "arrow-outside":
        tail = look.own(ARROW_LENGTH_MM + TAIL_MM)
        start, end = _shifted(a, along, -tail), _shifted(b, along, tail)
    start, end = _reaching_figure(dimension, start, end, along, look)
    marks += _broken(dimension, start, end, text, look)
    return marks + _ends(dimension, (a, b), along, look)


def _running(dimension: Dimension, look: _Look, text: Text) -> list[Mark]:
    along = _direction(dimension.direction_deg)
    a = _on_line(dimension.a, dimension.line, along)
    b = _on_line(dimension.b, dimension.line, along)
    if (b[0] - a[0]) * along[0] + (b[1] - a[1]) * along[1] < 0:
        along = (-along[0], -along[1])
    marks = _extensions(dimension, (a, b), look)
    marks += _broken(dimension, a, b, text, look)
    marks.append(ArcMark(a, look.own(RING_MM / 2), 0.0, 360.0, Meaning.SIZE, dimension.board))
    return [*marks, *_terminator(dimension, b, math.degrees(math.atan2(along[1], along[0])), look)]


def _angular(dimension: Dimension, look: _Look, text: Text) -> list[Mark]:
    centre = dimension.vertex
    if centre is None:
        raise ValueError(f"dimension {dimension.id}: an angular dimension needs the point where its legs meet")
    radius = math.dist(centre, dimension.line)
    first, last = _angle(centre, dimension.a), _angle(centre, dimension.b)
    if (_angle(centre, dimension.line) - first) % 360.0 > (last - first) % 360.0:
        first, last = last, first
    last = first + (last - first) % 360.0
    marks: list[Mark] = []
    for point, wanted in zip((dimension.a, dimension.b), dimension.extension, strict=True):
        leg = _direction(_angle(centre, point))
        reach = radius + look.past - math.dist(centre, point) - look.gap
        if wanted and reach > look.past:
            near = _shifted(point, leg, look.gap)
            marks.append(Line(near, _shifted(centre, leg, radius + look.past), Meaning.SIZE, dimension.board))
    outside = dimension.terminator == "arrow-outside"
    turn = math.degrees(look.own(ARROW_LENGTH_MM) / radius)
    reach_deg = math.degrees(look.own(ARROW_LENGTH_MM + TAIL_MM) / radius) if outside else 0.0
    for low, high in _arcs_outside_box(dimension, text, radius, (first - reach_deg, last + reach_deg), look):
        marks.append(ArcMark(centre, radius, low, high, Meaning.SIZE, dimension.board))
    # An arrowhead on an arc lies along the chord that it covers.
    half = turn / 2 if not outside else -turn / 2
    flip = 180.0 if outside else 0.0
    marks += _terminator(dimension, _polar(centre, radius, first), first - 90.0 + half + flip, look)
    marks += _terminator(dimension, _polar(centre, radius, last), last + 90.0 - half + flip, look)
    return marks


def _radius(dimension: Dimension, look: _Look, text: Text) -> list[Mark]:
    start = dimension.line if math.dist(dimension.line, dimension.b) > 1e-9 else dimension.a
    marks = _broken(dimension, start, dimension.b, text, look)
    return [*marks, *_terminator(dimension, dimension.b, _angle(start, dimension.b), look)]


def _diameter(dimension: Dimension, look: _Look, text: Text) -> list[Mark]:
    (x, y), b = dimension.a, dimension.b
    a = (2 * x - b[0], 2 * y - b[1])
    along = _direction(_angle(a, b))
    start, end = a, b
    if dimension.terminator == "arrow-outside":
        tail = look.own(ARROW_LENGTH_MM + TAIL_MM)
        start, end = _shifted(a, along, -tail), _shifted(b, along, tail)
    start, end = _reaching_figure(dimension, start, end, along, look)
    return _broken(dimension, start, end, text, look) + _ends(dimension, (a, b), along, look)


def _extensions(dimension: Dimension, feet: tuple[Point, Point], look: _Look) -> list[Mark]:
    marks: list[Mark] = []
    for point, foot, wanted in zip((dimension.a, dimension.b), feet, dimension.extension, strict=True):
        reach = math.dist(point, foot)
        if not wanted or reach <= look.gap + 1e-9:
            continue
        out = ((foot[0] - point[0]) / reach, (foot[1] - point[1]) / reach)
        marks.append(
            Line(_shifted(point, out, look.gap), _shifted(foot, out, look.past), Meaning.SIZE, dimension.board)
        )
    return marks


def _ends(dimension: Dimension, feet: tuple[Point, Point], along: Point, look: _Look) -> list[Mark]:
    angle = math.degrees(math.atan2(along[1], along[0]))
    flip = 180.0 if dimension.terminator == "arrow-outside" else 0.0
    return [
        *_terminator(dimension, feet[0], angle + 180.0 + flip, look),
        *_terminator(dimension, feet[1], angle + flip, look),
    ]


def _terminator(dimension: Dimension, tip: Point, angle_deg: float, look: _Look) -> list[Mark]:
    if dimension.terminator == "stroke":
        half = _direction(angle_deg + 45.0)
        reach = look.own(STROKE_MM / 2)
        return [Line(_shifted(tip, half, -reach), _shifted(tip, half, reach), Meaning.SIZE, dimension.board)]
    return [Arrow(tip, angle_deg % 360.0, ARROW_LENGTH_MM, ARROW_WIDTH_MM, Meaning.SIZE, dimension.board)]


def _leader(dimension: Dimension) -> list[Mark]:
    points = dimension.leader
    return [Line(p, q, Meaning.SIZE, dimension.board) for p, q in pairwise(points)]


def _reaching_figure(dimension: Dimension, start: Point, end: Point, along: Point, look: _Look) -> tuple[Point, Point]:
    """The dimension line's ends, drawn out to a figure that stands past one of them on the line's own side."""
    if dimension.leader:
        return start, end
    at = dimension.words_at
    off = abs((at[0] - start[0]) * along[1] - (at[1] - start[1]) * along[0])
    if off > look.own(_ON_LINE * dimension.height):
        return start, end
    # A broken line is drawn to the figure's middle, then left out where the figure stands.
    reach = 0.0 if dimension.broken else look.own(text_width(dimension.words, dimension.height) / 2)
    place = (at[0] - start[0]) * along[0] + (at[1] - start[1]) * along[1]
    span = math.dist(start, end)
    if place < 0:
        return _shifted(start, along, min(0.0, place - reach)), end
    if place > span:
        return start, _shifted(start, along, max(span, place + reach))
    return start, end


def _broken(dimension: Dimension, start: Point, end: Point, text: Text, look: _Look) -> list[Mark]:
    """The dimension line, left out where its figure stands if it is to be broken."""
    pieces = [(0.0, 1.0)]
    if dimension.broken and dimension.words:
        low, high = _inside_share(start, end, _grown_box(text, look))
        if low < high:
            pieces = [(0.0, low), (high, 1.0)]
    marks: list[Mark] = []
    for low, high in pieces:
        if high - low > 1e-9:
            p = (start[0] + (end[0] - start[0]) * low, start[1] + (end[1] - start[1]) * low)
            q = (start[0] + (end[0] - start[0]) * high, start[1] + (end[1] - start[1]) * high)
            marks.append(Line(p, q, Meaning.SIZE, dimension.board))
    return marks


def _grown_box(text: Text, look: _Look) -> tuple[Point, ...]:
    """The figure's box with the gap round it, in the drawing's mm, anticlockwise."""
    box = text_box(text, look.scale)
    by = look.own(CLEAR_MM)
    u = _direction(text.angle_deg)
    v = (-u[1], u[0])
    signs = ((-1, -1), (1, -1), (1, 1), (-1, 1))
    return tuple(
        (x + by * (s * u[0] + t * v[0]), y + by * (s * u[1] + t * v[1]))
        for (x, y), (s, t) in zip(box, signs, strict=True)
    )


def _inside_share(start: Point, end: Point, box: tuple[Point, ...]) -> tuple[float, float]:
    """Between which shares of the way from start to end the line lies in a convex box; low ≥ high if nowhere."""
    low, high = 0.0, 1.0
    dx, dy = end[0] - start[0], end[1] - start[1]
    for (x0, y0), (x1, y1) in zip(box, box[1:] + box[:1], strict=True):
        nx, ny = y0 - y1, x1 - x0
        here = (start[0] - x0) * nx + (start[1] - y0) * ny
        slope = dx * nx + dy * ny
        if abs(slope) < 1e-12:
            if here < 0:
                return 1.0, 0.0
        elif slope > 0:
            low = max(low, -here / slope)
        else:
            high = min(high, -here / slope)
    return low, high


def _arcs_outside_box(
    dimension: Dimension, text: Text, radius: float, span: tuple[float, float], look: _Look
) -> list[tuple[float, float]]:
    """The parts of an angular dimension's arc that the figure leaves free, degrees."""
    centre = dimension.vertex
    if centre is None or not (dimension.broken and dimension.words):
        return [span]
    box = _grown_box(text, look)
    cuts = [span[0], span[1]]
    for (x0, y0), (x1, y1) in zip(box, box[1:] + box[:1], strict=True):
        px, py, dx, dy = x0 - centre[0], y0 - centre[1], x1 - x0, y1 - y0
        a, b, c = dx * dx + dy * dy, 2 * (px * dx + py * dy), px * px + py * py - radius * radius
        root = b * b - 4 * a * c
        if root <= 0:
            continue
        for t in ((-b - math.sqrt(root)) / (2 * a), (-b + math.sqrt(root)) / (2 * a)):
            angle = math.degrees(math.atan2(py + t * dy, px + t * dx))
            place = span[0] + (angle - span[0]) % 360.0
            if 0 <= t <= 1 and place < span[1]:
                cuts.append(place)
    cuts.sort()
    free = []
    for low, high in pairwise(cuts):
        middle = _polar(centre, radius, (low + high) / 2)
        inside = _inside_share(middle, (middle[0] + 1e-6, middle[1]), box)
        if high - low > 1e-9 and inside[0] >= inside[1]:
            free.append((low, high))
    return free


def _direction(angle_deg: float) -> Point:
    """A unit vector, exact on the axes."""
    quarter = angle_deg % 360.0
    exact = {0.0: (1.0, 0.0), 90.0: (0.0, 1.0), 180.0: (-1.0, 0.0), 270.0: (0.0, -1.0)}.get(quarter)
    return exact or (math.cos(math.radians(quarter)), math.sin(math.radians(quarter)))


def _angle(start: Point, end: Point) -> float:
    return math.degrees(math.atan2(end[1] - start[1], end[0] - start[0]))


def _polar(centre: Point, radius: float, angle_deg: float) -> Point:
    return _shifted(centre, _direction(angle_deg), radius)


def _shifted(point: Point, along: Point, by: float) -> Point:
    return (point[0] + along[0] * by, point[1] + along[1] * by)


def _on_line(point: Point, line: Point, along: Point) -> Point:
    """Where the square from a point meets the dimension line."""
    by = (point[0] - line[0]) * along[0] + (point[1] - line[1]) * along[1]
    return _shifted(line, along, by)
