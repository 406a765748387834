"""The one routine that paints marks: batched into a few paths by what they stand for, whatever they come from."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPainterPath, QPen, QPolygonF, QTransform

from shopdraw.drawing.bounds import arrow_corners
from shopdraw.drawing.letters import font_size, text_runs, text_start
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.editor.look import Colours, families
from shopdraw.shape.path import Path as Outline
from shopdraw.shape.path import arc_of

_EM = 100.0
"""Glyphs are taken as outlines of this size once and scaled."""
_FAINT = {Meaning.HIDDEN, Meaning.BEHIND, Meaning.HATCH, Meaning.CENTRE, Meaning.MOVING}


@dataclass
class Batch:
    """Marks as Qt paths, in the coordinates that the marks stand in.

    Attributes:
        lines: by meaning (and, for lines with a width of their own, that width).
        fills: what is filled, by meaning.
        greys: areas filled instead of hatched.
    """

    lines: dict[tuple[Meaning, float | None], QPainterPath] = field(default_factory=dict)
    fills: dict[Meaning, QPainterPath] = field(default_factory=dict)
    greys: QPainterPath = field(default_factory=QPainterPath)


def batch(marks: Iterable[Mark], scale: float) -> Batch:
    """Marks gathered into paths.

    Args:
        marks: of one drawing.
        scale: of the drawing on paper; letters, arrowheads and hatch pitches are paper mm.
    """
    made = Batch()
    for mark in marks:
        match mark:
            case Line():
                path = _line_path(made, mark.meaning, mark.width)
                path.moveTo(*mark.start)
                path.lineTo(*mark.end)
            case ArcMark():
                _add_arc(_line_path(made, mark.meaning, None), mark)
            case Dot():
                reach = mark.radius / scale
                _fill_path(made, mark.meaning).addEllipse(QPointF(*mark.centre), reach, reach)
            case Arrow():
                corners = [QPointF(*point) for point in arrow_corners(mark, scale)]
                _fill_path(made, mark.meaning).addPolygon(QPolygonF([*corners, corners[0]]))
            case Text():
                _fill_path(made, mark.meaning).addPath(text_path(mark, scale))
            case Area():
                _add_area(made, mark, scale)
    return made


def paint(
    painter: QPainter, made: Batch, colours: Colours, *, group: str, pixels_per_paper_mm: float, hairline: float = 1.0
) -> None:
    """Paints a batch with the painter's present transform; line widths are kept in pixels of the screen.

    Args:
        painter: standing in the marks' coordinates.
        made: what to paint.
        colours: of the look.
        group: the paper's, for line widths: "large", "medium" or "small".
        pixels_per_paper_mm: how large a paper mm is shown.
        hairline: the least width of a line, pixels.
    """
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if not made.greys.isEmpty():
        painter.fillPath(made.greys, QBrush(QColor(colours.faint)))
    for (meaning, width), path in sorted(made.lines.items(), key=lambda item: _order(item[0][0])):
        painter.strokePath(path, pen(meaning, colours, group, pixels_per_paper_mm, width, hairline))
    for meaning, path in made.fills.items():
        painter.fillPath(path, QBrush(QColor(colour_of(meaning, colours))))


def pen(
    meaning: Meaning,
    colours: Colours,
    group: str,
    pixels_per_paper_mm: float,
    width: float | None = None,
    hairline: float = 1.0,
) -> QPen:
    """The pen for a meaning, its width the same at any zoom."""
    style = line_style(meaning, group)
    pixels = max(hairline, (width or style.width_mm) * pixels_per_paper_mm)
    made = QPen(QColor(colour_of(meaning, colours)), pixels)
    made.setCosmetic(True)
    made.setCapStyle(Qt.PenCapStyle.FlatCap if style.dashes_mm else Qt.PenCapStyle.RoundCap)
    made.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    if style.dashes_mm:
        made.setDashPattern([max(0.5, dash / style.width_mm) for dash in style.dashes_mm])
    return made


def colour_of(meaning: Meaning, colours: Colours) -> str:
    """The colour that lines of a meaning are drawn in."""
    if meaning in _FAINT:
        return colours.faint
    return colours.figure if meaning is Meaning.SIZE else colours.ink


def outline_path(outline: Outline) -> QPainterPath:
    """A closed outline, true arcs included."""
    path = QPainterPath()
    first = outline.corners[0]
    path.moveTo(first.x, first.y)
    for here, there in outline.pairs():
        if here.bulge:
            arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
            x, y, r = *arc.centre, arc.radius
            start = math.degrees(math.atan2(here.y - y, here.x - x))
            sweep = math.copysign(arc.end_deg - arc.start_deg, here.bulge)
            # Qt's angles run the other way: it takes y as pointing down.
            path.arcTo(QRectF(x - r, y - r, 2 * r, 2 * r), -start, -sweep)
        else:
            path.lineTo(there.x, there.y)
    path.closeSubpath()
    return path


def text_path(text: Text, scale: float) -> QPainterPath:
    """A line of words as outlines, in the coordinates that the text stands in."""
    placed = _text_transform(text, scale).map(_words_path(text.words, text.height))
    placed.setFillRule(Qt.FillRule.WindingFill)
    return placed


def text_rect(text: Text, scale: float) -> QRectF:
    """The box round a line of words, in the coordinates that the text stands in."""
    return _text_transform(text, scale).mapRect(_words_path(text.words, text.height).boundingRect())


def _text_transform(text: Text, scale: float) -> QTransform:
    x, y = text_start(text, scale)
    return QTransform().translate(x, y).rotate(text.angle_deg).scale(1.0 / scale, 1.0 / scale)


@lru_cache(maxsize=4096)
def _words_path(words: str, height: float) -> QPainterPath:
    """A line of words from the start of its baseline, paper mm."""
    path = QPainterPath()
    for run in text_runs(words, height):
        size = font_size(run.font, run.height) / _EM
        path.addPath(QTransform(size, 0, 0, -size, run.dx, run.dy).map(_glyphs(run.glyphs, run.font)))
    return path


@lru_cache(maxsize=8192)
def _glyphs(glyphs: str, font_name: str) -> QPainterPath:
    font = QFont(families()[font_name])
    font.setPixelSize(int(_EM))
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    path = QPainterPath()
    path.addText(0.0, 0.0, font, glyphs)
    return path


def _line_path(made: Batch, meaning: Meaning, width: float | None) -> QPainterPath:
    return made.lines.setdefault((meaning, width), QPainterPath())


def _fill_path(made: Batch, meaning: Meaning) -> QPainterPath:
    path = made.fills.setdefault(meaning, QPainterPath())
    path.setFillRule(Qt.FillRule.WindingFill)
    return path


def _add_arc(path: QPainterPath, arc: ArcMark) -> None:
    (x, y), r = arc.centre, arc.radius
    box = QRectF(x - r, y - r, 2 * r, 2 * r)
    path.arcMoveTo(box, -arc.start_deg)
    path.arcTo(box, -arc.start_deg, -(arc.end_deg - arc.start_deg))


def _add_area(made: Batch, area: Area, scale: float) -> None:
    if area.hatching.kind == "grey":
        made.greys.addPath(outline_path(area.outline))
        for island in area.islands:
            made.greys.addPath(outline_path(island))
        return
    # The hatch's lines come with the writers, which the window opens without: loaded at the first hatched area.
    from shopdraw.write.hatch import hatch_lines

    path = _line_path(made, Meaning.HATCH, None)
    for start, end in hatch_lines(area, scale):
        path.moveTo(*start)
        path.lineTo(*end)


def _order(meaning: Meaning) -> int:
    """Faint lines first, so that none lies over a strong one."""
    return 0 if meaning in _FAINT else 1 if meaning is Meaning.SIZE else 2
