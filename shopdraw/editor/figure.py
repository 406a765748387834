"""The dimensions of the canvas: what each measures, what it sets when typed into, and what drives it if it is derived.

Knows no Qt. Where a dimension's line stands is worked out in paper mm from the views, so that figures keep their size
at any zoom.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.letters import text_width
from shopdraw.editor.arrangement import third_angle
from shopdraw.editor.division import Division, divisions_of
from shopdraw.editor.handle import unit_of
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import Setting, State
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import Typed
from shopdraw.measure import Unit
from shopdraw.piece.design import Design
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly

HEIGHT_MM = 2.9
"""Of a figure's capitals, paper mm."""
FIRST_ROW_MM, NEXT_ROW_MM = 9.0, 8.5
"""From the view to the first row of dimensions, and from row to row, paper mm."""
LEVEL_ROW_MM = 12.5
"""From row to row where level figures stand in upright lines (their width counts), paper mm."""
MOST_COLUMN_ROWS = 2
"""So many divisions by columns are measured above the front view."""
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


def figures_of(state: State) -> tuple[Figure, ...]:
    """The dimensions of a piece on the canvas, in reading order."""
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        return ()
    found = (*_case(assembly), *_openings(design, assembly), *_slant(design, assembly))
    return found if third_angle(design) else tuple(_turned(figure) for figure in found)


def _turned(figure: Figure) -> Figure:
    """The figure on the other side: in first angle the side view stands at the left of the front view."""
    side = {"left": "right", "right": "left"}.get(figure.side, figure.side)
    if side == "left" and figure.view == "side":
        return replace(figure, side=side, a=(0.0, figure.a[1]), b=(0.0, figure.b[1]))
    if side == "right" and figure.view == "front":
        return replace(figure, side=side)
    return figure


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
        line, middle = (x, (ay + by) / 2), (x, (ay + by) / 2)
    else:
        y = box[1] - off if figure.side == "below" else box[3] + off
        line, middle = ((ax + bx) / 2, y), ((ax + bx) / 2, y)
    broken = style == "asme"
    length = abs(by - ay) if upright else abs(bx - ax)
    lift = -HEIGHT_MM / 2 if broken else _LIFT_MM
    room = text_width(words, HEIGHT_MM) + (9.0 if not broken or not upright else 0.0)
    tight = length * scale < (HEIGHT_MM + 8.0 if broken and upright else room)
    turned = upright and not broken
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
        broken=broken and not tight,
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


def _sets(address: str, *drops: str) -> Callable[[Typed], tuple[Setting, ...]]:
    return lambda typed: (Setting(address, typed.keeps), *(Setting(drop, None) for drop in drops))


def _case(assembly: Assembly) -> list[Figure]:
    w, h, d = assembly.width, assembly.height, assembly.depth
    return [
        Figure(
            "case:left/case:right@front",
            translate("Size", "Width"),
            "front",
            (0, 0),
            (w, 0),
            "below",
            1,
            w,
            _sets("case.width"),
            handle="case.width",
        ),
        Figure(
            "floor/case:top@front",
            translate("Size", "Height"),
            "front",
            (0, 0),
            (0, h),
            "left",
            3,
            h,
            _sets("case.height"),
            handle="case.height",
        ),
        Figure(
            "case:front/case:rear@side",
            translate("Size", "Depth"),
            "side",
            (0, 0),
            (d, 0),
            "below",
            1,
            d,
            _sets("case.depth"),
            handle="case.depth",
        ),
    ]


def _openings(design: Design, assembly: Assembly) -> list[Figure]:
    unit = unit_of(design)
    found: list[Figure] = []
    for division in divisions_of(design, assembly):
        if division.rows:
            found += _cell_figures(division, unit, "left", 1)
    columns = [division for division in divisions_of(design, assembly) if not division.rows]
    for row, division in enumerate(columns[:MOST_COLUMN_ROWS], start=1):
        found += _cell_figures(division, unit, "above", row)
    return found


def _cell_figures(division: Division, unit: Unit, side: str, row: int) -> list[Figure]:
    found = []
    for index, cell in enumerate(division.cells):
        last = index == len(division.cells) - 1

        def sets(typed: Typed, index: int = index) -> tuple[Setting, ...]:
            moved = list(division.sizes)
            moved[index] = typed.mm
            return division.settings(tuple(moved), unit)

        free = division.given and not last
        ends = ((0.0, cell.bottom), (0.0, cell.top)) if division.rows else ((cell.left, 0.0), (cell.right, 0.0))
        found.append(
            Figure(
                f"opening.{division.opening}.{cell.key}@front",
                division.name(cell),
                "front",
                *ends,
                side,
                row,
                division.sizes[index],
                None if last else sets,
                drives=() if free else (f"{division.address}.rule",),
                says="" if free else _what_drives(division, last),
                handle=f"{division.address}/{cell.key}",
            )
        )
    return found


def _what_drives(division: Division, last: bool) -> str:
    if last:
        return translate("Figure", "The last one takes what the others leave: change their sizes, or the case's.")
    rules = {
        "equal": translate("Figure", "all alike"),
        "step": translate("Figure", "each larger by a step"),
        "ratio": translate("Figure", "each larger by a factor"),
    }
    told = translate(
        "Figure", "This size follows from the rule “{rule}”. Type here to give the sizes one by one instead."
    )
    return told.format(rule=rules.get(division.rule, division.rule))


def _slant(design: Design, assembly: Assembly) -> list[Figure]:
    fact, table = assembly.slant, design.slant
    if fact is None or table is None:
        return []
    d, h = assembly.depth, assembly.height
    run, z0, writing = fact.run_mm, fact.slant_start_mm, fact.writing_height_mm
    angle_given, depth_given = table.angle is not None, table.top_depth is not None
    foot = (0.0, z0)
    return [
        Figure(
            "floor/writing@front",
            translate("Size", "Writing height"),
            "front",
            (0, 0),
            (0, writing),
            "left",
            2,
            writing,
            _sets("slant.writing_height"),
            handle="slant.writing_height",
        ),
        Figure(
            "top:front/top:rear@side",
            translate("Size", "Top depth"),
            "side",
            (run, h),
            (d, h),
            "above",
            1,
            fact.top_depth_mm,
            _sets("slant.top_depth", *(["slant.angle"] if angle_given else [])),
            drives=() if depth_given else ("slant.angle",),
            says=""
            if depth_given
            else translate(
                "Figure", "The top's depth follows from the slant's angle. Type here to give it instead of the angle."
            ),
            handle="slant.top_depth",
        ),
        Figure(
            "level/slant@side",
            translate("Size", "Slant from level"),
            "side",
            (run, z0),
            (run, h),
            "slant",
            1,
            fact.angle_from_level_deg,
            _sets("slant.angle", *(["slant.top_depth"] if depth_given else [])),
            angle=True,
            drives=() if angle_given else ("slant.top_depth",),
            says=""
            if angle_given
            else translate(
                "Figure",
                "The angle follows from the top's depth. Type here to give it instead of the top's depth.",
            ),
            handle="slant.angle",
            vertex=foot,
        ),
        Figure(
            "floor/slant:start@side",
            translate("Size", "Start of the slant"),
            "side",
            (d, 0),
            (d, z0),
            "right",
            1,
            z0,
            None,
            drives=("slant.writing_height", "slant.seat", "slant.angle" if angle_given else "slant.top_depth"),
            says=translate(
                "Figure", "Where the slant starts follows from the writing height, the lid's seat and the slant."
            ),
        ),
    ]
