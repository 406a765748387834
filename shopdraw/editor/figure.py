"""A dimension of the canvas: what it measures, what it sets when typed into, what drives it if it is derived.

Knows no Qt. Where a dimension's line stands is worked out in paper mm from the views, so that figures keep their size
at any zoom.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import ARROW_LENGTH_MM, TAIL_MM
from shopdraw.drawing.letters import text_width
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import Typed
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly

HEIGHT_MM = 2.9
"""Of a figure's capitals, paper mm."""
FIRST_ROW_MM, NEXT_ROW_MM = 9.0, 8.5
"""From the view to the first row of dimensions, and from row to row, paper mm."""
LEVEL_ROW_MM = 12.5
"""From row to row where level figures stand in upright lines (their width counts), paper mm."""
_CLEAR_MM = 1.0
"""Between a figure and what stands beside it, paper mm."""
_LIFT_MM = 0.9
"""From a dimension line to the figure standing on it, paper mm."""


@dataclass(frozen=True)
class Figure:
    """A dimension on the canvas.

    Attributes:
        id: `feature/feature@view`.
        name: what a person reads: "Width", "Top depth".
        view: the view it stands in.
        a, b: what it measures between, in the view's plane, mm.
        side: "below", "above", "left", "right", or "slant" for an angle.
        row: 1 is nearest to the view.
        value: mm or degrees.
        angle: whether the value is degrees.
        sets: the settings for a typed value; None where it can't be typed.
        drives: addresses that drive it when it is derived; empty when it is an input itself.
        says: for a derived one: a sentence that says what drives it and what typing does.
        handle: id of the handle that moves it, or "".
        vertex: for an angle: where the legs meet.
        line: where its line stands in the view's plane, mm, instead of in a row beside the view; None for a row.
    """

    id: str
    name: str
    view: str
    a: Point
    b: Point
    side: str
    row: int
    value: float
    sets: Callable[[Typed], tuple[Setting, ...]] | None
    angle: bool = False
    drives: tuple[str, ...] = ()
    says: str = ""
    handle: str = ""
    vertex: Point | None = None
    line: float | None = None


def named_sizes(assembly: Assembly) -> dict[str, float]:
    """Sizes that can be named when typing ("1/2 of depth"), mm."""
    # By English names too, in any language: what was once typed into a note or learnt from the help can be typed again.
    found = _english_sizes(assembly)
    return {**{translate("Size", name[:1].upper() + name[1:]).lower(): mm for name, mm in found.items()}, **found}


def _english_sizes(assembly: Assembly) -> dict[str, float]:
    sizes = {"width": assembly.width, "height": assembly.height, "depth": assembly.depth}
    if assembly.slant is not None:
        sizes["writing height"] = assembly.slant.writing_height_mm
        sizes["top depth"] = assembly.slant.top_depth_mm
        sizes["lid length"] = assembly.slant.lid_length_mm
    return sizes


def placed(figure: Figure, box: tuple[float, float, float, float], shown: Shown, scale: float, style: str) -> Dimension:
    """A figure as a dimension with its line and its words in place.

    Args:
        figure: what is measured.
        box: of the case in the view's plane, mm: rows are counted from it.
        shown: how sizes are shown.
        scale: of the canvas on paper: paper mm per mm.
        style: "iso" or "asme": turned figures on the line, or level ones in a broken line.
    """
    if figure.vertex is not None:
        return _placed_angle(figure, shown, scale)
    words = shown.length(figure.value)
    upright = figure.side in ("left", "right")
    next_row = LEVEL_ROW_MM if upright and style == "asme" else NEXT_ROW_MM
    off = (FIRST_ROW_MM + (figure.row - 1) * next_row) / scale
    (ax, ay), (bx, by) = figure.a, figure.b
    if upright:
        x = box[0] - off if figure.side == "left" else box[2] + off
        x = x if figure.line is None else figure.line
        line, middle = (x, (ay + by) / 2), (x, (ay + by) / 2)
    else:
        y = box[1] - off if figure.side == "below" else box[3] + off
        y = y if figure.line is None else figure.line
        line, middle = ((ax + bx) / 2, y), ((ax + bx) / 2, y)
    broken = style == "asme"
    length = abs(by - ay) if upright else abs(bx - ax)
    lift = -HEIGHT_MM / 2 if broken else _LIFT_MM
    room = text_width(words, HEIGHT_MM) + (9.0 if not broken or not upright else 0.0)
    tight = length * scale < (HEIGHT_MM + 8.0 if broken and upright else room)
    turned = upright and not broken
    own = HEIGHT_MM if upright and broken else text_width(words, HEIGHT_MM)
    if length * scale < own + 2 * _CLEAR_MM:
        # Where the figure has no room between the two ends it stands past the second arrow.
        past = length / 2 + (ARROW_LENGTH_MM + TAIL_MM + _CLEAR_MM + own / 2) / scale
        middle = (middle[0], middle[1] + past) if upright else (middle[0] + past, middle[1])
    at = (middle[0] - lift / scale, middle[1]) if turned else (middle[0], middle[1] + lift / scale)
    return Dimension(
        id=figure.id,
        kind="linear",
        a=figure.a,
        b=figure.b,
        direction_deg=90.0 if upright else 0.0,
        line=line,
        words=words,
        words_at=at,
        words_angle_deg=90.0 if turned else 0.0,
        height=HEIGHT_MM,
        measured=figure.value,
        terminator="arrow-outside" if tight else "arrow",
        broken=broken,
    )


def _placed_angle(figure: Figure, shown: Shown, scale: float) -> Dimension:
    vertex = figure.vertex
    assert vertex is not None
    radius = 30.0 / scale
    radius = min(radius, 0.75 * math.dist(vertex, figure.b))
    half = math.radians(figure.value / 2)
    line = (vertex[0] + radius * math.cos(half), vertex[1] + radius * math.sin(half))
    half_words = text_width(shown.angle(figure.value), HEIGHT_MM) / 2
    at = (line[0] + (half_words + 1.5) / scale, line[1] - HEIGHT_MM / 2 / scale)
    return Dimension(
        id=figure.id,
        kind="angular",
        a=figure.a,
        b=figure.b,
        direction_deg=0.0,
        line=line,
        words=shown.angle(figure.value),
        words_at=at,
        words_angle_deg=0.0,
        height=HEIGHT_MM,
        measured=figure.value,
        vertex=vertex,
        extension=(True, False),
    )
