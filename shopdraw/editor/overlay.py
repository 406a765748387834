"""Proportion overlays: figures of plain ratios laid over a view, and the ratios that the piece really has. No Qt."""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning, Text
from shopdraw.editor.holding import GOLDEN, RATIOS
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.tongue import translate
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly

OVERLAYS: tuple[str, ...] = ("1 : 1", "√2 : 1", "3 : 2", "5 : 3", "golden section", "thirds", "graduated drawers")
"""Names of the overlays, in the order in which they are offered."""
_RATIO = dict(RATIOS)
_WORDS_MM = 2.6


@dataclass(frozen=True, slots=True)
class RealRatio:
    """A ratio that the piece has.

    Attributes:
        name: what stands to what: "height : width".
        ratio: the longer over the shorter.
        nearest: the plain ratio that lies nearest, by name.
        off: how far the real one lies from it, as a part.
    """

    name: str
    ratio: float
    nearest: str
    off: float


def overlay_marks(assembly: Assembly, view: str, name: str, shown: Shown) -> tuple[Mark, ...]:
    """The marks of an overlay in a view's plane, mm; words are given in paper mm."""
    across, up = {
        "front": (assembly.width, assembly.height),
        "side": (assembly.depth, assembly.height),
        "plan": (assembly.width, assembly.depth),
    }[view]
    if name == "thirds":
        return _thirds(across, up)
    if name == "graduated drawers":
        return _bank(assembly, shown) if view == "front" else ()
    ratio = _RATIO[name]
    return (*_rectangle(across, up, ratio), *(_golden_line(across, up) if math.isclose(ratio, GOLDEN) else ()))


def real_ratios(assembly: Assembly) -> tuple[RealRatio, ...]:
    """The ratios of the piece's own sizes, each with the plain ratio nearest to it."""
    pairs = [("height", assembly.height, "width", assembly.width), ("width", assembly.width, "depth", assembly.depth)]
    if assembly.slant is not None:
        writing = assembly.slant.writing_height_mm
        pairs.append(("width", assembly.width, "writing height", writing))
        pairs.append(("height", assembly.height, "writing height", writing))
    found = []
    for one, a, other, b in pairs:
        ratio, name = (a / b, f"{one} : {other}") if a >= b else (b / a, f"{other} : {one}")
        nearest, plain = min(RATIOS, key=lambda item, ratio=ratio: abs(item[1] - ratio))  # type: ignore[misc]
        found.append(RealRatio(translate("Ratio", name), ratio, translate("Ratio", nearest), ratio / plain - 1.0))
    return tuple(found)


def bank_steps(assembly: Assembly) -> tuple[tuple[float, float], ...]:
    """How each drawer opening stands to the one above it: mm more, and times as high."""
    heights = [opening.height for opening in assembly.openings if opening.use == "drawer"]
    return tuple((low - high, low / high) for high, low in itertools.pairwise(heights))


def _rectangle(across: float, up: float, ratio: float) -> list[Mark]:
    """The largest rectangle of the ratio that stands in the view's box, its longer side along the longer side."""
    long_across = across >= up
    want = ratio if long_across else 1.0 / ratio
    width, height = (up * want, up) if up * want <= across else (across, across / want)
    x = (across - width) / 2
    corners = [(x, 0.0), (x + width, 0.0), (x + width, height), (x, height)]
    marks: list[Mark] = [_line(a, b) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)]
    return [*marks, _line(corners[0], corners[2])]


def _golden_line(across: float, up: float) -> list[Mark]:
    return [_line((0.0, up / GOLDEN), (across, up / GOLDEN)), _line((across / GOLDEN, 0.0), (across / GOLDEN, up))]


def _thirds(across: float, up: float) -> tuple[Mark, ...]:
    marks: list[Mark] = []
    for part in (1 / 3, 2 / 3):
        marks += [_line((across * part, 0.0), (across * part, up)), _line((0.0, up * part), (across, up * part))]
    return tuple(marks)


def _bank(assembly: Assembly, shown: Shown) -> tuple[Mark, ...]:
    """In each drawer what it has more than the one above it, clear of the lines between them."""
    rows = [opening for opening in assembly.openings if opening.use == "drawer"]
    marks: list[Mark] = []
    x = assembly.width * 0.62
    for row in rows:
        radius = row.height / 2
        centre = (x, row.bottom + radius)
        marks.append(ArcMark(centre, radius, 0.0, 360.0, Meaning.CENTRE))
    for (_, lower), (more, times) in zip(itertools.pairwise(rows), bank_steps(assembly), strict=True):
        at = (x + lower.height * 0.55 + 10.0, lower.bottom + lower.height * 0.62)
        marks.append(Text(at, f"+{shown.length(more)}, × {shown.number(times)}", _WORDS_MM))
    return tuple(marks)


def _line(start: Point, end: Point) -> Line:
    return Line(start, end, Meaning.CENTRE)
