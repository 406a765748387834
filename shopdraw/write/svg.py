"""A sheet, or one view of it, as SVG: a picture for a book or a class, true to size, letters as outlines.

Source of the format: SVG 1.1 (W3C), 8.3 path data, 11.4 stroke properties.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path as FilePath
from xml.sax.saxutils import escape, quoteattr

from shopdraw.drawing.glyph_outline import Contour
from shopdraw.drawing.line_style import LineStyle
from shopdraw.drawing.sheet import Sheet
from shopdraw.shape.path import Point
from shopdraw.write.ink import Fill, Stroke, sheet_ink


def write_svg(sheet: Sheet, style: str, to: FilePath | str) -> None:
    """Writes a sheet. The same sheet gives the same bytes.

    Args:
        sheet: frame and title block or a bare view, see `shopdraw.sheet.picture`.
        style: "iso" or "asme".
        to: a path.
    Raises:
        NotFinite: a mark holds a number that isn't finite.
    """
    FilePath(to).write_text(svg_of(sheet, style), encoding="utf-8", newline="\n")


def svg_of(sheet: Sheet, style: str) -> str:
    """A sheet as SVG: 1 user unit is 1 mm on paper."""
    wide, high = _number(sheet.paper.width), _number(sheet.paper.height)
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        (
            f'<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="{wide}mm" height="{high}mm" '
            f'viewBox="0 0 {wide} {high}">'
        ),
        f"<title>{escape(sheet.title)}</title>",
        f'<rect width="{wide}" height="{high}" fill="#fff"/>',
        *_parts(sheet, style),
        "</svg>",
    ]
    return "\n".join(lines) + "\n"


def _parts(sheet: Sheet, style: str) -> Iterator[str]:
    height = sheet.paper.height
    pens: dict[LineStyle, list[str]] = {}
    fills = []
    for ink in sheet_ink(sheet, style):
        match ink:
            case Stroke():
                pens.setdefault(ink.style, []).append(_line(ink.points, height))
            case Fill():
                fills.append(ink)
    yield from (_filled(fill, height) for fill in fills if fill.grey > 0.0)
    for pen in sorted(pens):
        dashes = f' stroke-dasharray="{" ".join(map(_number, pen.dashes_mm))}"' if pen.dashes_mm else ""
        # round ends close wide lines at their corners
        cap = "butt" if pen.dashes_mm else "round"
        yield (
            f'<path fill="none" stroke="#000" stroke-width="{_number(pen.width_mm)}" stroke-linecap="{cap}" '
            f'stroke-linejoin="round"{dashes} d="{" ".join(pens[pen])}"/>'
        )
    yield from (_filled(fill, height) for fill in fills if fill.grey == 0.0)


def _filled(fill: Fill, height: float) -> str:
    level = round(255 * fill.grey)
    said = f" aria-label={quoteattr(fill.words)}" if fill.words else ""
    paths = " ".join(_contour(contour, height) for contour in fill.contours)
    return f'<path fill="#{level:02x}{level:02x}{level:02x}" fill-rule="evenodd"{said} d="{paths}"/>'


def _line(points: tuple[Point, ...], height: float) -> str:
    first, *rest = (_point(point, height) for point in points)
    return f"M{first}" + "".join(f"L{point}" for point in rest)


def _contour(contour: Contour, height: float) -> str:
    start, *rest = contour
    commands = [f"M{_point(start[0], height)}"]
    for command in rest:
        points = " ".join(_point(point, height) for point in command)
        commands.append(f"L{points}" if len(command) == 1 else f"Q{points}")
    return "".join(commands) + "Z"


def _point(point: Point, height: float) -> str:
    return f"{_number(point[0])} {_number(height - point[1])}"


def _number(value: float) -> str:
    """A length to 0.001 mm, no needless zeros."""
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
