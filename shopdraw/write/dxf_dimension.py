"""Dimensions as DIMENSION entities: their block holds the marks of the sheet, their style says how to draw them again.

A program that only shows the file shows the block, which looks as the sheet does; one that draws the dimension anew
finds a style that gives the same figure, or the figure itself where the style can't give it.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, field
from fractions import Fraction

from ezdxf.layouts.base import BaseLayout

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import (
    ARROW_LENGTH_MM,
    ASME_GAP_MM,
    ASME_PAST_MM,
    CLEAR_MM,
    ISO_PAST_WIDTHS,
    STROKE_MM,
    dimension_marks,
)
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import Meaning
from shopdraw.shape.path import Point
from shopdraw.write.dxf_page import INCH_MM, LETTERS, Page, Pens, add_marks, clean
from shopdraw.write.finite import NotFinite, finite_marks

# Group 70 of DIMENSION. Source: DXF reference.
_LINEAR, _DIAMETER, _RADIUS, _ANGULAR_3P = 0, 3, 4, 5
_OWN_BLOCK, _TEXT_PLACED = 32, 128
_MIDDLE_CENTRE = 5

MEASURED = "<>"
"""Stands for the measured length in a dimension's text. Source: DXF reference, DIMENSION, group code 1."""

_INCHES = re.compile(r"(?:(\d+)(?:[ -]|$|(?=[\"″ ])))?(?:(\d+)/(\d+))?( ?(?:\"|″|in))?")
_DECIMAL = re.compile(r"(\d*)(?:([.,])(\d+))?( ?mm|\"|″|°)?")


@dataclass(frozen=True, slots=True)
class Figure:
    """How a style formats a measured length so that it reads as printed.

    Attributes:
        text: what the entity's text says: `<>` with what follows it, or the figure itself.
        unit: DIMLUNIT: 2 decimal, 5 inches with fractions.
        digits: DIMDEC: decimals, or the power of two of the denominator.
        step: DIMRND, in the file's unit; 0 for none.
        comma: whether the decimal sign is a comma.
    """

    text: str
    unit: int
    digits: int
    step: float = 0.0
    comma: bool = False


@dataclass(slots=True)
class DimensionStyles:
    """The dimension styles of one file, made when they are first needed."""

    pens: Pens
    style: str
    _names: dict[tuple[object, ...], str] = field(default_factory=dict)

    def name(self, dimension: Dimension, figure: Figure, page: Page) -> str:
        """The name of the style that draws this dimension."""
        factor = 1.0 / (page.scale * page.enlarged)
        key = (
            dimension.height,
            dimension.terminator == "stroke",
            dimension.broken,
            page.group,
            page.enlarged,
            round(factor, 9),
            figure.unit,
            figure.digits,
            figure.step,
            figure.comma,
        )
        name = self._names.get(key)
        if name is None:
            name = self._names[key] = f"SIZE_{len(self._names) + 1}"
            self._make(name, dimension, figure, page, factor)
        return name

    def _make(self, name: str, dimension: Dimension, figure: Figure, page: Page, factor: float) -> None:
        unit = page.unit_mm
        asme = self.style == "asme"
        past = ASME_PAST_MM if asme else ISO_PAST_WIDTHS * line_style(Meaning.SIZE, page.group).width_mm
        self.pens.file.dimstyles.new(
            name,
            {
                "dimscale": page.enlarged,
                "dimtxt": round(dimension.height / unit, 9),
                "dimasz": round(ARROW_LENGTH_MM / unit, 9),
                "dimtsz": round(STROKE_MM / 2 / unit, 9) if dimension.terminator == "stroke" else 0.0,
                "dimexo": round((ASME_GAP_MM if asme else 0.0) / unit, 9),
                "dimexe": round(past / unit, 9),
                "dimgap": round(CLEAR_MM / unit, 9),
                "dimtad": 0 if dimension.broken else 1,
                "dimtih": 1 if asme else 0,
                "dimtoh": 1 if asme else 0,
                "dimtxsty": LETTERS,
                "dimlfac": round(factor, 9),
                "dimlunit": figure.unit,
                "dimdec": figure.digits,
                "dimfrac": 2,
                "dimrnd": figure.step,
                "dimdsep": ord("," if figure.comma else "."),
                "dimzin": 12 if asme and figure.unit == 2 else 8,
                "dimaunit": 0,
                "dimadec": figure.digits if dimension.kind == "angular" else 1,
                "dimazin": 2,
                "dimtix": 1,
                "dimclrd": 0,
                "dimclre": 0,
                "dimclrt": 0,
            },
        )


def add_dimension(
    layout: BaseLayout, dimension: Dimension, page: Page, pens: Pens, styles: DimensionStyles, where: str
) -> None:
    """Add a dimension with its drawn block.

    Args:
        layout: model space.
        dimension: placed already.
        page: where its drawing lies.
        pens, styles: of the file.
        where: words for a message.
    Raises:
        NotFinite: a number isn't finite.
    """
    if not math.isfinite(dimension.measured):
        raise NotFinite(f"{where}, dimension {dimension.id}: measures {dimension.measured}; it must be finite")
    marks = dimension_marks(dimension, page.scale, styles.style, page.group)
    block = pens.file.blocks.new_anonymous_block("D")
    add_marks(block, tuple(finite_marks(marks, f"{where}, dimension {dimension.id}")), page, pens)
    figure = figure_of(dimension, page.unit_mm)
    attributes: dict[str, object] = {
        "layer": "SIZE",
        "geometry": block.name,
        "dimstyle": styles.name(dimension, figure, page),
        "text": figure.text,
        "text_midpoint": page.point(_text_middle(dimension, page.scale)),
        "attachment_point": _MIDDLE_CENTRE,
        "text_rotation": round(dimension.words_angle_deg % 360.0, 6),
    }
    attributes |= _points(dimension, page)
    if pens.file.dxfversion > "AC1009":
        measured = (
            math.radians(dimension.measured) if dimension.kind == "angular" else dimension.measured / page.unit_mm
        )
        attributes["actual_measurement"] = round(measured, 9)
    layout.new_entity("DIMENSION", attributes)


def figure_of(dimension: Dimension, unit_mm: float) -> Figure:
    """How a dimension's figure is said in the file.

    `<>` only where the style's own rounding of what is measured gives the printed figure; a figure that was rounded so
    that its chain adds up, a reference size in brackets, or words stay as they are printed.
    """
    words = clean(dimension.words)
    literal = Figure(words, 5 if unit_mm == INCH_MM else 2, 4 if unit_mm == INCH_MM else 1)
    if dimension.kind == "angular":
        return _decimal_figure(words, dimension.measured, (0.0,)) or Figure(words, literal.unit, 1)
    if dimension.kind in ("radius", "diameter") or abs(dimension.measured - _span(dimension)) > 1e-6:
        return literal
    measured = dimension.measured / unit_mm
    if unit_mm == INCH_MM:
        return _fraction_figure(words, measured) or _decimal_figure(words, measured, (0.0,)) or literal
    return _decimal_figure(words, measured, (0.0, 0.5)) or literal


def _fraction_figure(words: str, measured: float) -> Figure | None:
    match = _INCHES.fullmatch(words)
    if match is None or not (match[1] or match[2]):
        return None
    printed = Fraction(int(match[1] or 0))
    if match[2]:
        printed += Fraction(int(match[2]), int(match[3]))
    mark = match[4] or ""
    for power in (4, 5, 6):
        if 2**power % printed.denominator == 0 and Fraction(math.floor(measured * 2**power + 0.5), 2**power) == printed:
            return Figure(MEASURED + mark, 5, power)
    return None


def _decimal_figure(words: str, measured: float, steps: tuple[float, ...]) -> Figure | None:
    match = _DECIMAL.fullmatch(words)
    if match is None or not (match[1] or match[3]):
        return None
    decimals = match[3] or ""
    printed = float(f"{match[1] or 0}.{decimals or 0}")
    if decimals.endswith("0"):
        return None  # Styles suppress zeros at the end, and so would not print this one.
    mark = "" if match[4] == "°" else match[4] or ""
    for digits in (max(1, len(decimals)), 2, 3):
        for step in steps:
            stepped = math.floor(measured / step + 0.5) * step if step else measured
            if digits >= len(decimals) and abs(math.floor(stepped * 10**digits + 0.5) / 10**digits - printed) < 1e-9:
                return Figure(MEASURED + mark, 2, digits, step, match[2] == ",")
    return None


def _span(dimension: Dimension) -> float:
    """What lies between the two points along the direction measured, mm."""
    angle = math.radians(dimension.direction_deg)
    (ax, ay), (bx, by) = dimension.a, dimension.b
    return abs((bx - ax) * math.cos(angle) + (by - ay) * math.sin(angle))


def _text_middle(dimension: Dimension, scale: float) -> Point:
    """Middle of the figure, half its height above its baseline."""
    angle = math.radians(dimension.words_angle_deg)
    up = dimension.height / scale / 2
    return dimension.words_at[0] - math.sin(angle) * up, dimension.words_at[1] + math.cos(angle) * up


def _points(dimension: Dimension, page: Page) -> dict[str, object]:
    """Kind and definition points. Source: DXF reference, DIMENSION, group codes 10 and 13 to 16."""
    a, b = page.point(dimension.a), page.point(dimension.b)
    kind = _OWN_BLOCK | _TEXT_PLACED
    if dimension.kind in ("linear", "running"):
        angle = math.radians(dimension.direction_deg)
        along = (math.cos(angle), math.sin(angle))
        by = (dimension.b[0] - dimension.line[0]) * along[0] + (dimension.b[1] - dimension.line[1]) * along[1]
        foot = page.point((dimension.line[0] + along[0] * by, dimension.line[1] + along[1] * by))
        return {
            "dimtype": _LINEAR | kind,
            "defpoint": foot,
            "defpoint2": a,
            "defpoint3": b,
            "angle": round(dimension.direction_deg % 360.0, 6),
        }
    if dimension.kind == "angular":
        vertex = page.point(dimension.vertex or dimension.a)
        return {
            "dimtype": _ANGULAR_3P | kind,
            "defpoint": page.point(dimension.line),
            "defpoint2": a,
            "defpoint3": b,
            "defpoint4": vertex,
        }
    if dimension.kind == "radius":
        return {"dimtype": _RADIUS | kind, "defpoint": a, "defpoint4": b}
    across = (2 * dimension.a[0] - dimension.b[0], 2 * dimension.a[1] - dimension.b[1])
    return {"dimtype": _DIAMETER | kind, "defpoint": page.point(across), "defpoint4": b}
