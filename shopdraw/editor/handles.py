"""Every handle of a piece, in the order in which the keyboard goes through them: case, slant, then what is inside.

Knows no Qt.
"""

from __future__ import annotations

from shopdraw.build.slant import SlantDisagrees, slant_from_start, slant_from_top_depth
from shopdraw.editor.division import unit_of
from shopdraw.editor.handle import Handle, setter, width_given
from shopdraw.editor.holding import Magnet, ratio_magnets
from shopdraw.editor.inner_handles import inner_handles
from shopdraw.editor.state import Setting, State
from shopdraw.editor.tongue import translate
from shopdraw.piece.design import Design
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly, SlantFact


def handles_of(state: State) -> tuple[Handle, ...]:
    """Every handle of a piece, in the order in which the keyboard goes through them; none where it can't be built."""
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        return ()
    found = [*_case_handles(design, assembly)]
    if assembly.slant is not None and design.slant is not None:
        found += _slant_handles(design, assembly, assembly.slant)
    return (*found, *inner_handles(design, assembly))


def _case_handles(design: Design, assembly: Assembly) -> list[Handle]:
    unit = unit_of(design)
    w, h, d = assembly.width, assembly.height, assembly.depth
    width_ratios = ratio_magnets(h, translate("Ratio", "width : height"))
    height_ratios = ratio_magnets(w, translate("Ratio", "height : width"))
    depth_ratios = ratio_magnets(w, translate("Ratio", "depth : width"))
    right, up = (1.0, 0.0), (0.0, 1.0)
    across, beyond = width_given(design, assembly)

    def handle(
        key: str, name: str, view: str, at: Point, along: Point, value: float, magnets: tuple[Magnet, ...]
    ) -> Handle:
        axis = 0 if along[0] else 1
        # a hand takes hold of the case's side; where the width is given over top or feet, that is what it sets
        more = beyond if key == "width" else 0.0
        sets = setter(across if key == "width" else f"case.{key}", unit)
        return Handle(
            f"case.{key}@{view}",
            name,
            view,
            at,
            along,
            value,
            lambda point: point[axis],
            lambda value: sets(value + more),
            magnets=magnets,
        )

    top_middle = (d + (assembly.slant.run_mm if assembly.slant else 0.0)) / 2
    return [
        handle("width", translate("Size", "Width"), "front", (w, h * 0.3), right, w, width_ratios),
        handle("height", translate("Size", "Height"), "front", (w * 0.5, h), up, h, height_ratios),
        handle("depth", translate("Size", "Depth"), "side", (d, h * 0.3), right, d, depth_ratios),
        handle("height", translate("Size", "Height"), "side", (top_middle, h), up, h, height_ratios),
        handle("width", translate("Size", "Width"), "plan", (w, d * 0.5), right, w, width_ratios),
        handle("depth", translate("Size", "Depth"), "plan", (w * 0.5, d), up, d, depth_ratios),
    ]


def _slant_handles(design: Design, assembly: Assembly, fact: SlantFact) -> list[Handle]:
    table = design.slant
    assert table is not None
    unit = unit_of(design)
    found = [_slant_top(design, assembly, fact)]
    writing = setter("slant.writing_height", unit)
    for view, x in (("side", 0.0), ("front", 0.0)):
        found.append(
            Handle(
                f"slant.writing_height@{view}",
                translate("Size", "Writing height"),
                view,
                (x, fact.writing_height_mm),
                (0.0, 1.0),
                fact.writing_height_mm,
                lambda point: point[1],
                writing,
            )
        )
    return found


def _slant_top(design: Design, assembly: Assembly, fact: SlantFact) -> Handle:
    """The upper end of the slant: sets the angle or the top's depth, whichever the file gives."""
    table = design.slant
    assert table is not None
    unit, depth = unit_of(design), assembly.depth
    at = (fact.run_mm, assembly.height)
    if table.angle is not None and table.top_depth is None:

        def angle_at(point: Point) -> float:
            return _angle_through(design, assembly, fact, depth - point[0])

        return Handle(
            "slant.angle@side",
            translate("Size", "Slant"),
            "side",
            at,
            (1.0, 0.0),
            fact.angle_from_level_deg,
            angle_at,
            lambda degrees: (Setting("slant.angle", _neat(degrees)),),
            angle=True,
        )
    both = table.angle is not None
    return Handle(
        "slant.top_depth@side",
        translate("Size", "Top depth"),
        "side",
        at,
        (1.0, 0.0),
        fact.top_depth_mm,
        lambda point: depth - point[0],
        setter("slant.top_depth", unit, *(["slant.angle"] if both else [])),
        magnets=(
            Magnet(depth / 2, translate("Handle", "half the depth")),
            Magnet(depth / 3, translate("Handle", "a third of the depth")),
        ),
        warns=translate("Handle", "The angle now follows from the top depth; it is no longer given.") if both else "",
    )


def _angle_through(design: Design, assembly: Assembly, fact: SlantFact, top_depth: float) -> float:
    """The angle at which the top is so deep; outside what can be, the angle as it is."""
    table = design.slant
    assert table is not None
    top_depth = min(assembly.depth - 1.0, max(1.0, top_depth))
    gap, above = table.joint_gap, table.pin_above_writing
    try:
        if table.start is not None:
            made = slant_from_start(
                assembly.depth,
                assembly.height,
                fact.writing_height_mm,
                fact.lid_inset_mm,
                table.start,
                angle=None,
                top_depth=top_depth,
                joint_gap=gap,
                pin_above=above,
            )
        else:
            made = slant_from_top_depth(
                assembly.depth,
                assembly.height,
                fact.writing_height_mm,
                fact.lid_inset_mm,
                top_depth,
                joint_gap=gap,
                pin_above=above,
                pin_behind=table.pin_behind_front,
            )
    except SlantDisagrees:
        # So steep or so flat that there is no slant: the drag finds its limit on the way there.
        return 89.0 if top_depth > fact.top_depth_mm else 1.0
    return made.alpha


def _neat(degrees: float) -> int | float:
    rounded = round(degrees, 2)
    return int(rounded) if rounded.is_integer() else rounded
