"""Every dimension of a piece on the canvas: case, openings and levels, slant. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from shopdraw.editor.arrangement import third_angle
from shopdraw.editor.figure import Figure
from shopdraw.editor.handle import width_given
from shopdraw.editor.opening_figures import opening_figures
from shopdraw.editor.state import Setting, State
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import Typed
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly


def figures_of(state: State) -> tuple[Figure, ...]:
    """The dimensions of a piece on the canvas, in reading order."""
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        return ()
    found = _in_rows((*_case(design, assembly), *opening_figures(design, assembly), *_slant(design, assembly)))
    return found if third_angle(design) else tuple(_turned(figure) for figure in found)


def _in_rows(figures: tuple[Figure, ...]) -> tuple[Figure, ...]:
    """Heights from the floor at the left of the front view, each in a row of its own, the larger the further out."""
    floor = [f for f in figures if f.view == "front" and f.side == "left" and f.row > 1]
    rows = {f.id: number for number, f in enumerate(sorted(floor, key=lambda f: (f.value, f.row)), start=2)}
    return tuple(replace(f, row=rows[f.id]) if f.id in rows else f for f in figures)


def _turned(figure: Figure) -> Figure:
    """The figure on the other side: in first angle the side view stands at the left of the front view."""
    side = {"left": "right", "right": "left"}.get(figure.side, figure.side)
    if side == "left" and figure.view == "side":
        return replace(figure, side=side, a=(0.0, figure.a[1]), b=(0.0, figure.b[1]))
    if side == "right" and figure.view == "front":
        return replace(figure, side=side)
    return figure


def sets_address(address: str, *drops: str) -> Callable[[Typed], tuple[Setting, ...]]:
    """Sets an address to what was typed, and takes out what would contradict it."""
    return lambda typed: (Setting(address, typed.keeps), *(Setting(drop, None) for drop in drops))


def _case(design: Design, assembly: Assembly) -> list[Figure]:
    w, h, d = assembly.width, assembly.height, assembly.depth
    given, beyond = width_given(design, assembly)
    return [
        *_width_over(given, beyond / 2, w),
        Figure(
            "case:left/case:right@front",
            translate("Size", "Width"),
            "front",
            (0, 0),
            (w, 0),
            "below",
            1,
            w,
            sets_address("case.width"),
            drives=() if given == "case.width" else (given,),
            says=""
            if given == "case.width"
            else translate("Figure", "The case's width follows from another one. Type here to give it instead."),
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
            sets_address("case.height"),
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
            sets_address("case.depth"),
            handle="case.depth",
        ),
        Figure(
            "floor/base:top@side",
            translate("Size", "Plinth height"),
            "side",
            (d, 0),
            (d, design.base.height),
            "right",
            1,
            design.base.height,
            sets_address("base.height"),
            handle="base.height",
        ),
    ]


def _width_over(given: str, beyond: float, w: float) -> list[Figure]:
    """The width over the top or over the feet, where the piece gives that one."""
    names = {
        "case.top_width": translate("Size", "Width over the top"),
        "case.foot_width": translate("Size", "Width over the feet"),
    }
    if given not in names:
        return []
    ends, size = ((-beyond, 0.0), (w + beyond, 0.0)), w + 2 * beyond
    return [Figure(f"{given}@front", names[given], "front", *ends, "below", 3, size, sets_address(given))]


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
            sets_address("slant.writing_height"),
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
            sets_address("slant.top_depth", *(["slant.angle"] if angle_given else [])),
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
            sets_address("slant.angle", *(["slant.top_depth"] if depth_given else [])),
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
            2,
            z0,
            None,
            drives=("slant.writing_height", "slant.seat", "slant.angle" if angle_given else "slant.top_depth"),
            says=translate(
                "Figure", "Where the slant starts follows from the writing height, the lid's seat and the slant."
            ),
        ),
    ]
