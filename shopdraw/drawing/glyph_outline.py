"""Letters as outlines, for pictures that must look alike wherever they are opened, fonts or not."""

from __future__ import annotations

import math
from functools import cache, lru_cache

from fontTools.pens.basePen import decomposeQuadraticSegment
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.ttLib import TTFont

from shopdraw.drawing.letters import font_file, font_size, lettered, text_start
from shopdraw.drawing.mark import Text
from shopdraw.shape.path import Point

Command = tuple[Point, ...]
"""One point: a line to it, or the start of a contour; two: a quadratic curve by its control point and its end."""
Contour = tuple[Command, ...]
"""A closed outline; its first command is its start."""


def text_outline(text: Text, scale: float = 1.0) -> tuple[Contour, ...]:
    """The ink of a text, in the coordinates that it stands in; holes run the other way round than outlines.

    Args:
        text: the words and their anchor.
        scale: of the drawing that it stands in; 1 on the sheet itself.
    """
    x, y = text_start(text, scale)
    angle = math.radians(text.angle_deg)
    c, s = math.cos(angle) / scale, math.sin(angle) / scale

    def placed(point: Point) -> Point:
        return x + c * point[0] - s * point[1], y + s * point[0] + c * point[1]

    return tuple(
        tuple(tuple(placed(point) for point in command) for command in contour)
        for contour in _words_outline(text.words, text.height)
    )


@lru_cache(maxsize=4096)
def _words_outline(words: str, height: float) -> tuple[Contour, ...]:
    """The ink of words from the start of their baseline, paper mm."""
    found: list[Contour] = []
    for run in lettered(words, height).runs:
        face = _face(run.font)
        size = font_size(run.font, run.height) / face.em
        x = run.dx
        for character in run.glyphs:
            advance, contours = face.glyph(character)
            found += [
                tuple(tuple((x + px * size, run.dy + py * size) for px, py in command) for command in contour)
                for contour in contours
            ]
            x += advance * size
    return tuple(found)


class _Face:
    """One font's glyphs in its own units."""

    def __init__(self, name: str) -> None:
        self._font = TTFont(font_file(name))
        self._names: dict[int, str] = self._font.getBestCmap()
        self._glyphs = self._font.getGlyphSet()
        self.em = float(self._font["head"].unitsPerEm)
        self._known: dict[str, tuple[float, tuple[Contour, ...]]] = {}

    def glyph(self, character: str) -> tuple[float, tuple[Contour, ...]]:
        """A character's advance and contours."""
        if character not in self._known:
            name = self._names[ord(character)]
            pen = DecomposingRecordingPen(self._glyphs)
            self._glyphs[name].draw(pen)
            self._known[character] = (float(self._glyphs[name].width), _contours(pen.value))
        return self._known[character]


def _contours(value: list[tuple[str, tuple[Point | None, ...]]]) -> tuple[Contour, ...]:
    found: list[Contour] = []
    here: list[Command] = []
    for operator, points in value:
        given = [point for point in points if point is not None]
        if operator == "moveTo":
            here = [(given[0],)]
        elif operator == "lineTo":
            here.append((given[0],))
        elif operator == "qCurveTo":
            if len(given) < len(points):
                given, here = _without_start(given, here)
            here += [(control, end) for control, end in decomposeQuadraticSegment(given)]
        elif operator in ("closePath", "endPath") and here:
            found.append(tuple(here))
            here = []
    return tuple(found)


def _without_start(controls: list[Point], here: list[Command]) -> tuple[list[Point], list[Command]]:
    """A contour of control points alone: it begins halfway between the last and the first of them."""
    (ax, ay), (bx, by) = controls[-1], controls[0]
    start = ((ax + bx) / 2, (ay + by) / 2)
    return [*controls, start], [*here, (start,)]


@cache
def _face(name: str) -> _Face:
    return _Face(name)
