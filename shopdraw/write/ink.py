"""A sheet's marks as ink on paper: strokes and fills in paper mm, for pictures in formats that know no marks."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.drawing.bounds import arrow_corners
from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.glyph_outline import Contour, text_outline
from shopdraw.drawing.line_style import LineStyle, line_style
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Sheet
from shopdraw.shape.path import Path, Point, flattened
from shopdraw.write.finite import finite_marks
from shopdraw.write.hatch import hatch_lines

CHORD_MM = 0.01
"""How far a chord may lie from its arc on paper."""
GREY, BLACK = 0.5, 0.0


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line through points, drawn with a pen."""

    style: LineStyle
    points: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Fill:
    """Outlines filled together, holes left out (even-odd).

    Attributes:
        grey: 0 black to 1 white.
        contours: as `glyph_outline` has them.
        words: what they say, or "".
    """

    grey: float
    contours: tuple[Contour, ...]
    words: str = ""


Ink = Stroke | Fill


@lru_cache(maxsize=1)  # a picture of each kind is written of the same sheet
def sheet_ink(sheet: Sheet, style: str) -> tuple[Ink, ...]:
    """Everything on a sheet, in the order in which it is drawn, paper mm, y up.

    Args:
        sheet: with its drawings.
        style: "iso" or "asme".
    Raises:
        NotFinite: a mark holds a number that isn't finite.
    """
    found: list[Ink] = []
    group = sheet.paper.group
    for placed in sheet.placed:
        marks = drawing_marks(placed.drawing, placed.scale, style, group)
        at = _Onto(placed.scale, placed.at)
        found += _inked(finite_marks(marks, f"sheet {sheet.number}, {placed.drawing.id}"), at, group)
    found += _inked(finite_marks(sheet.marks, f"sheet {sheet.number}"), _Onto(1.0, (0.0, 0.0)), group)
    # fills of grey lie under lines, words over them
    return tuple(sorted(found, key=lambda ink: 1 if isinstance(ink, Stroke) else 0 if ink.grey == GREY else 2))


@dataclass(frozen=True, slots=True)
class _Onto:
    """From a drawing's own mm to paper mm."""

    scale: float
    at: Point

    def __call__(self, point: Point) -> Point:
        return point[0] * self.scale + self.at[0], point[1] * self.scale + self.at[1]

    def all(self, points: Iterable[Point]) -> tuple[Point, ...]:
        return tuple(self(point) for point in points)

    def contour(self, points: Iterable[Point]) -> Contour:
        """A closed polygon."""
        return tuple((self(point),) for point in points)


def _inked(marks: Iterable[Mark], at: _Onto, group: str) -> Iterator[Ink]:
    for mark in marks:
        match mark:
            case Line():
                yield Stroke(_pen(mark.meaning, group, mark.width), at.all((mark.start, mark.end)))
            case ArcMark():
                yield Stroke(_pen(mark.meaning, group), at.all(_arc_points(mark, at.scale)))
            case Arrow():
                yield Fill(BLACK, (at.contour(arrow_corners(mark, at.scale)),))
            case Dot():
                whole = ArcMark(mark.centre, mark.radius / at.scale, 0.0, 360.0, mark.meaning)
                yield Fill(BLACK, (at.contour(_arc_points(whole, at.scale)[:-1]),))
            case Area():
                yield from _area(mark, at, group)
            case Text():
                yield _words(mark, at)


def _pen(meaning: Meaning, group: str, width: float | None = None) -> LineStyle:
    style = line_style(meaning, group)
    return style if width is None else LineStyle(width, style.dashes_mm)


def _arc_points(arc: ArcMark, scale: float) -> list[Point]:
    """Points on an arc, from its start to its end, chords within the tolerance on paper."""
    radius = arc.radius
    sweep = math.radians(arc.end_deg - arc.start_deg)
    most = 2.0 * math.acos(max(0.0, 1.0 - CHORD_MM / scale / radius)) if radius > CHORD_MM / scale else math.pi / 2
    count = max(1, math.ceil(abs(sweep) / most))
    start = math.radians(arc.start_deg)
    angles = [start + sweep * n / count for n in range(count + 1)]
    return [(arc.centre[0] + radius * math.cos(a), arc.centre[1] + radius * math.sin(a)) for a in angles]


def _area(area: Area, at: _Onto, group: str) -> Iterator[Ink]:
    if area.hatching.kind == "grey":
        yield Fill(GREY, tuple(_outline(path, at) for path in (area.outline, *area.islands)))
        return
    for start, end in hatch_lines(area, at.scale):
        yield Stroke(_pen(Meaning.HATCH, group), at.all((start, end)))


def _outline(path: Path, at: _Onto) -> Contour:
    return at.contour(flattened(path, CHORD_MM / at.scale))


def _words(text: Text, at: _Onto) -> Fill:
    contours = tuple(tuple(at.all(command) for command in contour) for contour in text_outline(text, at.scale))
    return Fill(BLACK, contours, text.words)
