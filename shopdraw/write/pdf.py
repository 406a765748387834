"""A set of sheets as a PDF: exact page sizes, our own letters embedded, words that can be found and copied.

Knows the Drawing's values and reportlab; decides nothing about where things stand.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from functools import cache
from pathlib import Path as FilePath
from typing import IO

from reportlab import rl_config
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from shopdraw.drawing.bounds import arrow_corners
from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.letters import FONTS, LETTERING, font_file, font_size, lettered, printable, text_start
from shopdraw.drawing.line_style import LineStyle, line_style
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.shape.path import Path, Point, arc_of
from shopdraw.write.finite import finite_marks
from shopdraw.write.hatch import hatch_lines
from shopdraw.write.strokes import Segment, joined, stroke

POINT_MM = 25.4 / 72
"""A PDF point. Source: ISO 32000-1, 8.3.2.3."""
ARC_TOLERANCE_MM = 0.01
"""How far a Bézier curve may lie from its arc on paper."""
JOINED_FROM_MM = 0.5
"""Continuous lines from this width on are joined where they meet; narrower ones show no gap at a corner."""
GREY = 0.5
"""What is drawn too thin for a hatch is filled with this grey."""
CREATOR = "shopdraw"

rl_config.useA85 = 0
"""Streams stay bytes: written as letters they take a quarter more room, and more time than the drawing itself."""


def write_pdf(sheet_set: SheetSet, to: FilePath | str | IO[bytes]) -> None:
    """Write the sheets, one page each, with bookmarks and page labels. The same set gives the same bytes.

    Args:
        sheet_set: at least one sheet.
        to: a path or a binary stream.
    Raises:
        NotFinite: a mark holds a number that isn't finite; the message says on which sheet.
        ValueError: there is no sheet.
    """
    if not sheet_set.sheets:
        raise ValueError("a PDF needs at least one sheet, found none")
    _register_fonts()
    target = str(to) if isinstance(to, (str, FilePath)) else to
    canvas = Canvas(target, invariant=1, pdfVersion=(1, 7), initialFontName=LETTERING, pageCompression=1)
    canvas.setTitle(printable(sheet_set.title))
    canvas.setAuthor(printable(sheet_set.author))
    canvas.setSubject(printable(sheet_set.subject))
    canvas.setCreator(CREATOR)
    canvas.setProducer("reportlab")
    if sheet_set.true_size:
        canvas.setViewerPreference("PrintScaling", "None")
    for number, sheet in enumerate(sheet_set.sheets):
        size = (sheet.paper.width / POINT_MM, sheet.paper.height / POINT_MM)
        # reportlab takes a turned page's size as it is seen and gives its media box the other way round
        canvas.setPageSize(size[::-1] if sheet.turned else size)
        canvas.setPageRotation(90 if sheet.turned else 0)
        canvas.bookmarkPage(f"page-{number}")
        canvas.addOutlineEntry(printable(f"{sheet.number}  {sheet.title}"), f"page-{number}", 0)
        canvas.addPageLabel(number, prefix=printable(sheet.number))
        _Page(canvas, sheet, sheet_set.style).draw()
        canvas.showPage()
    canvas.showOutline()
    canvas.save()


def arc_curves(
    centre: Point, radius: float, start_deg: float, end_deg: float, tolerance: float
) -> tuple[Point, list[tuple[Point, Point, Point]]]:
    """An arc as cubic Bézier curves.

    Args:
        centre, radius, tolerance: in one unit; the curves lie within `tolerance` of the arc.
        start_deg, end_deg: run from the first to the second, either way round.
    Returns:
        The start point, and for each curve its two control points and its end.
    """
    sweep = math.radians(end_deg - start_deg)
    # A quarter circle lies within 2.73e-4 r of its curve, and the error falls with the sixth power of the angle.
    share = (max(tolerance, 1e-12) / (2.8e-4 * radius)) ** (1 / 6) if radius > 0 else 1.0
    count = max(1, math.ceil(abs(sweep) / min(math.pi / 2, math.pi / 2 * share)))
    step = sweep / count
    handle = 4 / 3 * math.tan(step / 4) * radius
    angle = math.radians(start_deg)
    first = (centre[0] + radius * math.cos(angle), centre[1] + radius * math.sin(angle))
    curves = []
    x0, y0, c0, s0 = *first, math.cos(angle), math.sin(angle)
    for n in range(1, count + 1):
        turned = angle + step * n
        c1, s1 = math.cos(turned), math.sin(turned)
        x1, y1 = centre[0] + radius * c1, centre[1] + radius * s1
        curves.append(((x0 - s0 * handle, y0 + c0 * handle), (x1 + s1 * handle, y1 - c1 * handle), (x1, y1)))
        x0, y0, c0, s0 = x1, y1, c1, s1
    return first, curves


class _Page:
    """Gathers a sheet's operators by kind, then writes them: fills, lines by pen, words."""

    def __init__(self, canvas: Canvas, sheet: Sheet, style: str) -> None:
        self._canvas = canvas
        self._sheet = sheet
        self._style = style
        self._group = sheet.paper.group
        self._grey: list[str] = []
        self._pens: dict[LineStyle, list[str]] = {}
        self._wide: dict[LineStyle, list[Segment]] = {}
        self._black: list[str] = []
        self._words: list[str] = []

    def draw(self) -> None:
        for placed in self._sheet.placed:
            marks = drawing_marks(placed.drawing, placed.scale, self._style, self._group)
            at = _ToPoints(placed.scale, placed.at, self._sheet)
            self._add(marks, at, f"sheet {self._sheet.number}, {placed.drawing.id}")
        self._add(self._sheet.marks, _ToPoints(1.0, (0.0, 0.0), self._sheet), f"sheet {self._sheet.number}")
        self._write()

    def _add(self, marks: Iterable[Mark], at: _ToPoints, where: str) -> None:
        for mark in finite_marks(marks, where):
            match mark:
                case Line():
                    self._line(mark, at)
                case Text():
                    self._text(mark, at)
                case ArcMark():
                    self._arc(mark, at)
                case Arrow():
                    self._black.append(_polygon(list(arrow_corners(mark, at.scale)), at))
                case Dot():
                    self._black.append(_circle(mark.centre, mark.radius / at.scale, at))
                case Area():
                    self._area(mark, at)

    def _draw(self, segment: Segment, meaning: Meaning, width: float | None = None) -> None:
        style = line_style(meaning, self._group)
        if width is not None:
            style = LineStyle(width, style.dashes_mm)
        if style.width_mm >= JOINED_FROM_MM and not style.dashes_mm:
            self._wide.setdefault(style, []).append(segment)
        else:
            self._pens.setdefault(style, []).append(stroke([segment]))

    def _line(self, line: Line, at: _ToPoints) -> None:
        self._draw(Segment(at.words(line.start), at.words(line.end)), line.meaning, line.width)

    def _arc(self, arc: ArcMark, at: _ToPoints) -> None:
        tolerance = ARC_TOLERANCE_MM / at.scale
        start, curves = arc_curves(arc.centre, arc.radius, arc.start_deg, arc.end_deg, tolerance)
        placed = tuple((at.words(a), at.words(b), at.words(c)) for a, b, c in curves)
        self._draw(Segment(at.words(start), placed[-1][2], placed), arc.meaning)

    def _area(self, area: Area, at: _ToPoints) -> None:
        if area.hatching.kind == "grey":
            self._grey.append(" ".join(_outline(path, at) for path in (area.outline, *area.islands)))
            return
        for start, end in hatch_lines(area, at.scale):
            self._draw(Segment(at.words(start), at.words(end)), Meaning.HATCH)

    def _text(self, text: Text, at: _ToPoints) -> None:
        words = printable(text.words)
        if not words.strip():
            return
        line = lettered(words, text.height)
        x, y = at(text_start(text, at.scale))
        angle = math.radians(text.angle_deg)
        c, s = math.cos(angle), math.sin(angle)
        turn = "1 0 0 1" if angle == 0.0 else f"{c:.7f} {s:.7f} {-s:.7f} {c:.7f}"
        # A reader takes words set aslant apart, letter by letter, unless it is told what they say.
        whole = len(line.runs) > 1 or line.runs[0].glyphs != words or text.angle_deg % 90.0 != 0.0
        operators = [f"/Span <</ActualText <{_utf16(words)}>>> BDC BT" if whole else "BT"]
        for run in line.runs:
            dx, dy = run.dx / POINT_MM, run.dy / POINT_MM
            size = font_size(run.font, run.height) / POINT_MM
            operators.append(f"{turn} {x + c * dx - s * dy:.4f} {y + s * dx + c * dy:.4f} Tm")
            operators += self._glyphs(run.font, run.glyphs, size)
        operators.append("ET EMC" if whole else "ET")
        self._words.append(" ".join(operators))

    def _glyphs(self, font_name: str, glyphs: str, size: float) -> list[str]:
        font = pdfmetrics.getFont(font_name)
        document = self._canvas._doc
        return [
            f"{font.getSubsetInternalName(subset, document)} {size:.4f} Tf ({self._canvas._escape(part)}) Tj"
            for subset, part in font.splitString(glyphs, document)
        ]

    def _write(self) -> None:
        code = self._canvas._code
        if self._grey:
            code.append(f"{GREY} g")
            code.extend(f"{path} f*" for path in self._grey)
        for style, segments in self._wide.items():
            self._pens.setdefault(style, []).extend(stroke(part) for part in joined(segments))
        # Ends are square and exact, corners round: a mitre would run out far at a sharp one.
        code.append("0 g 0 G 0 J 1 j")
        for style in sorted(self._pens):
            dashes = " ".join(f"{d / POINT_MM:.4f}" for d in style.dashes_mm)
            code.append(f"{style.width_mm / POINT_MM:.4f} w [{dashes}] 0 d")
            code.extend(f"{path} S" for path in self._pens[style])
        code.append("[] 0 d")
        code.extend(f"{path} f" for path in self._black)
        code.extend(self._words)


class _ToPoints:
    """From a drawing's own mm to points on the page; stretched about its middle where the sheet is."""

    def __init__(self, scale: float, at: Point, sheet: Sheet) -> None:
        self.scale = scale
        across, up = sheet.stretch
        self._across, self._up = scale * across / POINT_MM, scale * up / POINT_MM
        self._x = (at[0] * across + sheet.paper.width * (1.0 - across) / 2) / POINT_MM
        self._y = (at[1] * up + sheet.paper.height * (1.0 - up) / 2) / POINT_MM

    def words(self, point: Point) -> str:
        """A point as the page prints it, to 0.0004 mm."""
        return f"{point[0] * self._across + self._x:.3f} {point[1] * self._up + self._y:.3f}"

    def __call__(self, point: Point) -> Point:
        return point[0] * self._across + self._x, point[1] * self._up + self._y


def _polygon(points: list[Point], at: _ToPoints) -> str:
    first, *rest = (at.words(p) for p in points)
    return " ".join([f"{first} m", *(f"{p} l" for p in rest), "h"])


def _circle(centre: Point, radius: float, at: _ToPoints) -> str:
    start, curves = arc_curves(centre, radius, 0.0, 360.0, ARC_TOLERANCE_MM / at.scale)
    return " ".join([f"{at.words(start)} m", *(_curve(curve, at) for curve in curves), "h"])


def _outline(path: Path, at: _ToPoints) -> str:
    first = path.corners[0]
    operators = [f"{at.words((first.x, first.y))} m"]
    for here, there in path.pairs():
        if not here.bulge:
            operators.append(f"{at.words((there.x, there.y))} l")
            continue
        arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
        ends = (arc.start_deg, arc.end_deg) if here.bulge > 0 else (arc.end_deg, arc.start_deg)
        _, curves = arc_curves(arc.centre, arc.radius, *ends, ARC_TOLERANCE_MM / at.scale)
        operators += [_curve(curve, at) for curve in curves]
    return " ".join([*operators, "h"])


def _curve(curve: tuple[Point, Point, Point], at: _ToPoints) -> str:
    return f"{at.words(curve[0])} {at.words(curve[1])} {at.words(curve[2])} c"


def _utf16(words: str) -> str:
    """A PDF text string: UTF-16, big-endian, with its mark, in hexadecimal. Source: ISO 32000-1, 7.9.2.2."""
    return "FEFF" + words.encode("utf-16-be", "replace").hex().upper()


@cache
def _register_fonts() -> None:
    for name in FONTS:
        pdfmetrics.registerFont(TTFont(name, str(font_file(name))))
