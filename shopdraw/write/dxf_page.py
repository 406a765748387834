"""From marks to entities: where a drawing's own mm lie in a DXF file, on which layer, in which line type.

Entities are those that every version of the format has; only what R12 lacks is written in its older form.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from ezdxf.document import Drawing as DxfFile
from ezdxf.layouts.base import BaseLayout
from ezdxf.math import Vec2
from ezdxf.math.triangulation import mapbox_earcut_2d

from shopdraw.drawing.bounds import arrow_corners
from shopdraw.drawing.letters import FALLBACK, LETTERING, one_font, one_font_width, plain_words, printable, text_width
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point, flattened
from shopdraw.write.dxf_run import R12_NUMBER, add_line, add_solid, add_text
from shopdraw.write.hatch import hatch_lines

INCH_MM = 25.4
R12 = "R12"
LETTERS = "LETTERS"
"""Name of the text style of all words that its font has."""
STYLE_OF = {LETTERING: (LETTERS, "routed-gothic.ttf"), FALLBACK: ("MORE_LETTERS", "DejaVuSans.ttf")}
"""Text styles by font, each with the name under which the font is installed."""
GRID_DIGITS = 6
"""Coordinates are rounded to this many decimals of the file's unit: far below what anyone draws or cuts."""
GREY_COLOUR = 8
_CHORD_PAPER_MM = 0.02

LAYER_OF: dict[Meaning, str] = {
    Meaning.VISIBLE: "EDGE",
    Meaning.BEHIND: "EDGE",
    Meaning.TEMPLATE: "EDGE",
    Meaning.HIDDEN: "HIDDEN",
    Meaning.CENTRE: "CENTRE",
    Meaning.PLANE: "CENTRE",
    Meaning.CUT: "CUT",
    Meaning.HATCH: "HATCH",
    Meaning.SIZE: "SIZE",
    Meaning.WORD: "WORD",
    Meaning.MOVING: "MOVING",
    Meaning.FRAME: "FRAME",
}
LAYER_MEANING: dict[str, Meaning] = {
    "EDGE": Meaning.VISIBLE,
    "HIDDEN": Meaning.HIDDEN,
    "CENTRE": Meaning.CENTRE,
    "CUT": Meaning.CUT,
    "HATCH": Meaning.HATCH,
    "SIZE": Meaning.SIZE,
    "WORD": Meaning.WORD,
    "MOVING": Meaning.MOVING,
    "FRAME": Meaning.FRAME,
}
"""The layers in order, each with the meaning whose line it draws by itself."""


@dataclass(frozen=True, slots=True)
class Page:
    """Where marks lie in the file: their own mm to the file's unit.

    Attributes:
        scale: of the drawing on paper; 1 for marks of the sheet itself.
        at: where the drawing's (0, 0) stands on paper, mm.
        enlarged: the file's length over paper's: 5 where a sheet at 1:5 is drawn at true size; 1 in paper space.
        origin: where the paper's corner lies in the file, in its unit.
        unit_mm: mm of one unit of the file: 1 or 25.4.
        group: the paper's, for line widths.
    """

    scale: float
    at: Point
    enlarged: float
    origin: Point
    unit_mm: float
    group: str

    def point(self, point: Point) -> tuple[float, float]:
        """Where a point of the drawing lies in the file."""
        factor = self.enlarged / self.unit_mm
        return (
            round((point[0] * self.scale + self.at[0]) * factor + self.origin[0], GRID_DIGITS) + 0.0,
            round((point[1] * self.scale + self.at[1]) * factor + self.origin[1], GRID_DIGITS) + 0.0,
        )

    def size(self, paper_mm: float) -> float:
        """A length on paper, in the file's unit as it is drawn there."""
        return round(paper_mm * self.enlarged / self.unit_mm, GRID_DIGITS)

    def length(self, own_mm: float) -> float:
        """A length of the drawing, in the file's unit as it is drawn there."""
        return round(own_mm * self.scale * self.enlarged / self.unit_mm, GRID_DIGITS)


@dataclass(slots=True)
class Pens:
    """Line types and line widths of one file, made when they are first needed.

    Attributes:
        file: the DXF document.
        group: the paper group that the layers' own widths follow.
        enlarged: the enlargement that the layers' own line types follow.
        unit_mm: mm of one unit of the file.
    """

    file: DxfFile
    group: str
    enlarged: float
    unit_mm: float
    _types: dict[tuple[float, ...], str] = field(default_factory=dict)
    _attributes: dict[tuple[Meaning, float | None, str, float], dict[str, object]] = field(default_factory=dict)

    def set_up_layers(self) -> None:
        """The layers, all in ACI 7: no meaning by colour."""
        for name, meaning in LAYER_MEANING.items():
            style = line_style(meaning, self.group)
            layer = self.file.layers.add(name, color=7, linetype=self._line_type(meaning, self.group, self.enlarged))
            layer.dxf.lineweight = round(style.width_mm * 100)

    def attributes(self, meaning: Meaning, page: Page, width: float | None = None) -> dict[str, object]:
        """Layer, and line type and width where they differ from the layer's own."""
        key = (meaning, width, page.group, page.enlarged)
        known = self._attributes.get(key)
        if known is None:
            layer = LAYER_OF[meaning]
            known = {"layer": layer}
            own = LAYER_MEANING[layer]
            line_type = self._line_type(meaning, page.group, page.enlarged)
            if line_type != self._line_type(own, self.group, self.enlarged):
                known["linetype"] = line_type
            width_mm = width or line_style(meaning, page.group).width_mm
            if self.file.dxfversion > R12_NUMBER and width_mm != line_style(own, self.group).width_mm:
                known["lineweight"] = _line_weight(width_mm)
            self._attributes[key] = known
        return known

    def _line_type(self, meaning: Meaning, group: str, enlarged: float) -> str:
        dashes = line_style(meaning, group).dashes_mm
        if not dashes:
            return "CONTINUOUS"
        pattern = tuple(round(d * enlarged / self.unit_mm, 9) for d in dashes)
        name = self._types.get(pattern)
        if name is None:
            name = f"{meaning.name}_{len(self._types) + 1}"
            signed = [length if n % 2 == 0 else -length for n, length in enumerate(pattern)]
            self.file.linetypes.add(name, [sum(pattern), *signed], description=f"{meaning.value} lines")
            self._types[pattern] = name
        return name


def add_marks(layout: BaseLayout, marks: tuple[Mark, ...], page: Page, pens: Pens) -> None:
    """Add marks to a layout or a block."""
    for mark in marks:
        match mark:
            case Line():
                start, end = page.point(mark.start), page.point(mark.end)
                if start != end:
                    add_line(layout, start, end, pens.attributes(mark.meaning, page, mark.width))
            case Text():
                _add_text(layout, mark, page, pens)
            case ArcMark():
                _add_arc(layout, mark, page, pens)
            case Arrow():
                tip, left, right = (page.point(p) for p in arrow_corners(mark, page.scale))
                add_solid(layout, (tip, left, right, right), pens.attributes(mark.meaning, page))
            case Dot():
                _add_dot(layout, mark, page, pens)
            case Area():
                _add_area(layout, mark, page, pens)


def clean(words: str) -> str:
    """Words as a TEXT entity holds them: one line, the format's own control signs written so that they are seen.

    Source: DXF reference, TEXT: `%%` and `^` begin control codes; `%%%` and `^ ` stand for the signs themselves.
    """
    words = printable(words)
    return words.replace("^", "^ ").replace("%%", "%%%%%%") if "^" in words or "%%" in words else words


def old_words(words: str) -> str:
    """Words for readers that know one code page: fractions in figures, typewriter marks for feet and inches."""
    return plain_words(words).replace("″", '"').replace("′", "'")


def _add_text(layout: BaseLayout, text: Text, page: Page, pens: Pens) -> None:
    words = printable(text.words)
    if not words.strip():
        return
    old = pens.file.dxfversion == R12_NUMBER
    attributes = dict(pens.attributes(text.meaning, page))
    attributes.pop("linetype", None)
    if old:
        words = old_words(words)
    style, _ = STYLE_OF[one_font(words)]
    # One height throughout, so that any reader can copy `31 1/2`; drawn as narrow as the sheet's own fraction.
    share = min(1.0, round(text_width(words, text.height) / one_font_width(words, text.height), 4))
    add_text(
        layout,
        clean(words),
        page.point(text.at),
        page.size(text.height),
        style,
        attributes,
        turned_deg=round(text.angle_deg % 360.0, GRID_DIGITS),
        width=share,
        anchor=("left", "middle", "right").index(text.anchor),
    )


def _add_arc(layout: BaseLayout, arc: ArcMark, page: Page, pens: Pens) -> None:
    attributes = dict(pens.attributes(arc.meaning, page))
    attributes["center"], attributes["radius"] = page.point(arc.centre), page.length(arc.radius)
    if arc.end_deg - arc.start_deg >= 360.0 - 1e-9:
        layout.new_entity("CIRCLE", attributes)
        return
    attributes["start_angle"] = round(arc.start_deg % 360.0, GRID_DIGITS)
    attributes["end_angle"] = round(arc.end_deg % 360.0, GRID_DIGITS)
    layout.new_entity("ARC", attributes)


def _add_dot(layout: BaseLayout, dot: Dot, page: Page, pens: Pens) -> None:
    """A filled disc: two half circles half as wide as the disc, drawn with a pen of its radius."""
    x, y = page.point(dot.centre)
    radius = page.size(dot.radius)
    attributes = dict(pens.attributes(dot.meaning, page))
    points = [(x - radius / 2, y, radius, radius, 1.0), (x + radius / 2, y, radius, radius, 1.0)]
    if pens.file.dxfversion == R12_NUMBER:
        layout.add_polyline2d(points, format="xyseb", close=True, dxfattribs=attributes)
    else:
        layout.add_lwpolyline(points, format="xyseb", close=True, dxfattribs=attributes)


def _add_area(layout: BaseLayout, area: Area, page: Page, pens: Pens) -> None:
    attributes = pens.attributes(Meaning.HATCH, page)
    if area.hatching.kind == "grey":
        chord = _CHORD_PAPER_MM / page.scale
        outer, *holes = ([Vec2(p) for p in flattened(path, chord)] for path in (area.outline, *area.islands))
        for triangle in mapbox_earcut_2d(outer, holes):
            corners = [page.point((v.x, v.y)) for v in triangle]
            add_solid(layout, (*corners, corners[-1]), {**attributes, "color": GREY_COLOUR})
        return
    for start, end in hatch_lines(area, page.scale):
        add_line(layout, page.point(start), page.point(end), attributes)


_WEIGHTS = (0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211)
"""Line weights that the format knows, hundredths of a mm. Source: DXF reference, group code 370."""


def _line_weight(width_mm: float) -> int:
    return min(_WEIGHTS, key=lambda weight: abs(weight - width_mm * 100))
