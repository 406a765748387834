"""A sheet's frame: border, zones and centring marks. Paper mm. Source of the layout: ISO 5457."""

from __future__ import annotations

from shopdraw.drawing.line_style import FRAME_MM
from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Paper
from shopdraw.shape.path import Point
from shopdraw.sheet.look import Look
from shopdraw.trade.paper import PaperSize

CENTRING_MM = 4.5
"""How far a centring mark reaches into the drawing space: less than the 5 mm that views and tables keep off the frame
(own choice, so that it never meets them)."""
ZONE_LINE_MM = 0.35
_ZONE_BAND = 5.0
WIDEST = 1.4
"""Width of the widest letter over its height, with the air that words need at both sides."""


def paper_of(size: PaperSize) -> Paper:
    """A size of paper as sheets carry it."""
    return Paper(size.name, size.width_mm, size.height_mm, size.frame, size.group)


def frame_marks(size: PaperSize, look: Look) -> tuple[Mark, ...]:
    """Border, zone lines with their letters and numbers, and four centring marks."""
    x0, y0, x1, y1 = size.frame
    corners = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    marks: list[Mark] = [
        Line(p, q, Meaning.FRAME, "", FRAME_MM) for p, q in zip(corners, (*corners[1:], corners[0]), strict=True)
    ]
    band = min(max(_ZONE_BAND, WIDEST * look.label), x0, y0, size.width_mm - x1, size.height_mm - y1)
    marks += _zones(size, band, look)
    middle_x, middle_y = size.width_mm / 2, size.height_mm / 2
    for outer, inner in (
        ((middle_x, y0 - band), (middle_x, y0 + CENTRING_MM)),
        ((middle_x, y1 + band), (middle_x, y1 - CENTRING_MM)),
        ((x0 - band, middle_y), (x0 + CENTRING_MM, middle_y)),
        ((x1 + band, middle_y), (x1 - CENTRING_MM, middle_y)),
    ):
        marks.append(Line(outer, inner, Meaning.FRAME, "", FRAME_MM))
    return tuple(marks)


def _zones(size: PaperSize, band: float, look: Look) -> list[Mark]:
    """Zone lines and names along all four sides, in the band outside the frame."""
    x0, y0, x1, y1 = size.frame
    height = _zone_height(band, look)
    marks: list[Mark] = []
    columns, rows = size.column_lines, size.row_lines
    for low, high in ((y0 - band, y0), (y1, y1 + band)):
        marks += [_tick((x, low), (x, high)) for x in columns[1:-1]]
        for left, right, name in zip(columns, columns[1:], size.column_names, strict=False):
            marks.append(_name((left + right) / 2, (low + high) / 2, name, height))
    for low, high in ((x0 - band, x0), (x1, x1 + band)):
        marks += [_tick((low, y), (high, y)) for y in rows[1:-1]]
        for bottom, top, name in zip(rows, rows[1:], size.row_names, strict=False):
            marks.append(_name((low + high) / 2, (bottom + top) / 2, name, height))
    return marks


def _zone_height(band: float, look: Look) -> float:
    """Letters of zones: 3.5 where the band holds them (ISO 5457), larger where the sheet is to be read reduced; else
    those of figures or of labels.
    """
    return next((h for h in (max(3.5, look.label), look.figure, look.label) if h + 1.0 <= band), look.label)


def _tick(p: Point, q: Point) -> Line:
    return Line(p, q, Meaning.FRAME, "", ZONE_LINE_MM)


def _name(x: float, y: float, name: str, height: float) -> Text:
    return Text((x, y - height / 2), name, height, "middle", 0.0, Meaning.FRAME)
