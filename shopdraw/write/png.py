"""A sheet, or one view of it, as PNG: the same ink as the SVG, in grey levels."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator
from pathlib import Path as FilePath

from PIL import Image, ImageChops, ImageDraw

from shopdraw.drawing.glyph_outline import Contour
from shopdraw.drawing.sheet import Sheet
from shopdraw.shape.path import Point
from shopdraw.write.ink import Fill, Stroke, sheet_ink

DPI = 150
FINER = 2
"""Drawn so many times finer, then made smaller: lines are grey at their edges, not stepped."""
MOST_PIXELS = 60_000_000
"""Of the finer picture: a large sheet gets fewer dots an inch rather than all memory."""
_CURVE_STEPS = 4
_PACKED = 3
"""Of 9: in half the time for a third more bytes."""
_INCH_MM = 25.4


def write_png(sheet: Sheet, style: str, to: FilePath | str, dpi: int = DPI) -> None:
    """Writes a sheet. The same sheet gives the same picture.

    Args:
        sheet: frame and title block or a bare view, see `shopdraw.sheet.picture`.
        style: "iso" or "asme".
        to: a path.
        dpi: dots an inch; fewer where the picture would be too large.
    Raises:
        NotFinite: a mark holds a number that isn't finite.
    """
    area = sheet.paper.width * sheet.paper.height
    dots = min(float(dpi), math.sqrt(MOST_PIXELS / area) * _INCH_MM / FINER)
    size = (_dots(sheet.paper.width, dots), _dots(sheet.paper.height, dots))
    fine = Image.new("L", (size[0] * FINER, size[1] * FINER), 255)
    canvas = _Canvas(fine, dots * FINER / _INCH_MM)
    for ink in sheet_ink(sheet, style):
        match ink:
            case Stroke():
                canvas.stroke(ink)
            case Fill():
                canvas.fill(ink)
    fine.reduce(FINER).save(to, "PNG", dpi=(dots, dots), compress_level=_PACKED)


def _dots(size_mm: float, dpi: float) -> int:
    return max(1, round(size_mm * dpi / _INCH_MM))


class _Canvas:
    """An image with a scale: dots a millimetre, y down."""

    def __init__(self, image: Image.Image, scale: float) -> None:
        self._image, self._scale, self._height = image, scale, image.height
        self._draw = ImageDraw.Draw(image)

    def _at(self, point: Point) -> Point:
        return point[0] * self._scale, self._height - point[1] * self._scale

    def stroke(self, ink: Stroke) -> None:
        width = max(1, round(ink.style.width_mm * self._scale))
        for part in _dashed(ink.points, ink.style.dashes_mm):
            points = [self._at(point) for point in part]
            self._draw.line(points, 0, width, "curve")
            if not ink.style.dashes_mm and width > 2:
                for x, y in (points[0], points[-1]):
                    self._draw.ellipse((x - width / 2, y - width / 2, x + width / 2, y + width / 2), 0)

    def fill(self, ink: Fill) -> None:
        contours = [[self._at(point) for point in _flat(contour)] for contour in ink.contours]
        contours = [contour for contour in contours if len(contour) > 2]
        if not contours:
            return
        xs = [x for contour in contours for x, _ in contour]
        ys = [y for contour in contours for _, y in contour]
        x0, y0 = math.floor(min(xs)), math.floor(min(ys))
        size = (math.ceil(max(xs)) - x0 + 1, math.ceil(max(ys)) - y0 + 1)
        mask = Image.new("1", size, 0)
        for contour in contours:
            one = Image.new("1", size, 0)
            ImageDraw.Draw(one).polygon([(x - x0, y - y0) for x, y in contour], 1)
            mask = ImageChops.logical_xor(mask, one)
        self._image.paste(round(255 * ink.grey), (x0, y0), mask)


def _flat(contour: Contour) -> Iterator[Point]:
    """A contour as a polygon."""
    here = contour[0][0]
    yield here
    for command in contour[1:]:
        if len(command) == 1:
            here = command[0]
            yield here
            continue
        (cx, cy), (ex, ey) = command
        for n in range(1, _CURVE_STEPS + 1):
            t = n / _CURVE_STEPS
            a, b, c = (1 - t) ** 2, 2 * t * (1 - t), t * t
            yield a * here[0] + b * cx + c * ex, a * here[1] + b * cy + c * ey
        here = (ex, ey)


def _dashed(points: tuple[Point, ...], dashes: tuple[float, ...]) -> Iterator[list[Point]]:
    """The drawn pieces of a line: all of it, or dashes that run on round its corners."""
    if not dashes:
        yield list(points)
        return
    index, left = 0, dashes[0]
    piece = [points[0]]
    for start, end in itertools.pairwise(points):
        size, done = math.dist(start, end), 0.0
        while size - done > left:
            done += left
            share = done / size
            at = (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))
            if index % 2 == 0:
                yield [*piece, at]
            index = (index + 1) % len(dashes)
            left, piece = dashes[index], [at]
        left -= size - done
        piece.append(end)
    if index % 2 == 0 and len(piece) > 1:
        yield piece
