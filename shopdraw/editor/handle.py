"""Handles: what can be taken hold of on the drawing, which way it moves and what it sets. Knows no Qt.

A handle reads a point of its view as a wanted value, and turns a value into settings of the piece file; how a piece
follows from these is `build`'s affair.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from shopdraw.build.slant import SlantDisagrees, slant_from_start, slant_from_top_depth
from shopdraw.editor.holding import Magnet, ratio_magnets
from shopdraw.editor.state import Setting, State
from shopdraw.editor.typed import kept
from shopdraw.measure import Unit
from shopdraw.piece.design import Design
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly, SlantFact


@dataclass(frozen=True)
class Handle:
    """Something to take hold of.

    Attributes:
        id: `address@view`, for a division `opening.bank.divide/KEY@view`.
        name: what a person reads: "Width".
        view: the view it stands in.
        at: where, in the view's plane, mm.
        along: unit direction in the view's plane in which it moves.
        value: what it stands at, mm or degrees.
        angle: whether the value is degrees.
        reads: the value that a point of the view's plane asks for.
        sets: the settings of the piece file for a value.
        magnets: values worth holding to.
        warns: what else a drag changes, in a sentence, or "".
    """

    id: str
    name: str
    view: str
    at: Point
    along: Point
    value: float
    reads: Callable[[Point], float]
    sets: Callable[[float], tuple[Setting, ...]]
    angle: bool = False
    magnets: tuple[Magnet, ...] = ()
    warns: str = ""


def handles_of(state: State) -> tuple[Handle, ...]:
    """Every handle of a piece, in the order in which the keyboard goes through them; none where it can't be built."""
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        return ()
    found = [*_case_handles(design, assembly)]
    if assembly.slant is not None and design.slant is not None:
        found += _slant_handles(design, assembly, assembly.slant)
    found += _division_handles(design, assembly)
    found += _base_handles(design, assembly)
    return tuple(found)


def unit_of(design: Design) -> Unit:
    """The unit of the piece's bare numbers."""
    return Unit.INCH if design.piece.units == "inch" else Unit.MM


def _setter(address: str, unit: Unit, *drops: str) -> Callable[[float], tuple[Setting, ...]]:
    def sets(value: float) -> tuple[Setting, ...]:
        return (Setting(address, kept(value, unit)), *(Setting(drop, None) for drop in drops))

    return sets


def _case_handles(design: Design, assembly: Assembly) -> list[Handle]:
    unit = unit_of(design)
    w, h, d = assembly.width, assembly.height, assembly.depth
    width_ratios = ratio_magnets(h, "width : height")
    height_ratios = ratio_magnets(w, "height : width")
    depth_ratios = ratio_magnets(w, "depth : width")
    right, up = (1.0, 0.0), (0.0, 1.0)

    def handle(
        key: str, name: str, view: str, at: Point, along: Point, value: float, magnets: tuple[Magnet, ...]
    ) -> Handle:
        axis = 0 if along[0] else 1
        address = f"case.{key}"
        return Handle(
            f"{address}@{view}",
            name,
            view,
            at,
            along,
            value,
            lambda point: point[axis],
            _setter(address, unit),
            magnets=magnets,
        )

    top_middle = (d + (assembly.slant.run_mm if assembly.slant else 0.0)) / 2
    return [
        handle("width", "Width", "front", (w, h * 0.3), right, w, width_ratios),
        handle("height", "Height", "front", (w * 0.5, h), up, h, height_ratios),
        handle("depth", "Depth", "side", (d, h * 0.3), right, d, depth_ratios),
        handle("height", "Height", "side", (top_middle, h), up, h, height_ratios),
        handle("width", "Width", "plan", (w, d * 0.5), right, w, width_ratios),
        handle("depth", "Depth", "plan", (w * 0.5, d), up, d, depth_ratios),
    ]


def _slant_handles(design: Design, assembly: Assembly, fact: SlantFact) -> list[Handle]:
    table = design.slant
    assert table is not None
    unit = unit_of(design)
    found = [_slant_top(design, assembly, fact)]
    writing = _setter("slant.writing_height", unit)
    for view, x in (("side", 0.0), ("front", 0.0)):
        found.append(
            Handle(
                f"slant.writing_height@{view}",
                "Writing height",
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
            "Slant",
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
        "Top depth",
        "side",
        at,
        (1.0, 0.0),
        fact.top_depth_mm,
        lambda point: depth - point[0],
        _setter("slant.top_depth", unit, *(["slant.angle"] if both else [])),
        magnets=(Magnet(depth / 2, "half the depth"), Magnet(depth / 3, "a third of the depth")),
        warns="The angle now follows from the top depth; it is no longer given." if both else "",
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


def _division_handles(design: Design, assembly: Assembly) -> list[Handle]:
    """Between each drawer and the one below it; and the rail over the topmost one."""
    unit = unit_of(design)
    rows = [opening for opening in assembly.openings if opening.use == "drawer"]
    if not rows:
        return []
    bank = design.opening.get("bank")
    keys = [opening.id.rpartition(".")[2] for opening in rows]
    heights = tuple(opening.height for opening in rows)
    given = bank is not None and bank.divide.rule == "given"
    found = []
    for index in range(len(rows) - 1):
        upper, lower = rows[index], rows[index + 1]
        rail = upper.bottom - (lower.bottom + lower.height)
        both = upper.height + lower.height
        top = upper.bottom + upper.height
        found.append(
            Handle(
                f"opening.bank.divide/{keys[index]}@front",
                f"Drawer {keys[index]}",
                "front",
                (assembly.width * 0.5, upper.bottom - rail / 2),
                (0.0, -1.0),
                upper.height,
                lambda point, top=top, rail=rail: top - point[1] - rail / 2,  # type: ignore[misc]
                _division_setter(heights, index, unit, given),
                magnets=(Magnet(both / 2, f"drawers {keys[index]} and {keys[index + 1]} alike"),)
                + ((Magnet(heights[index - 1], f"as high as drawer {keys[index - 1]}"),) if index else ()),
                warns="" if given else "The drawers' heights are now given one by one; the rule no longer sets them.",
            )
        )
    return [*found, *_rail_handle(design, assembly, rows[0].bottom + rows[0].height)]


def division_settings(heights: tuple[float, ...], unit: Unit, *, given: bool) -> tuple[Setting, ...]:
    """Settings that give a bank's clear heights, the lowest one taking what is left.

    Args:
        heights: all clear heights from the top down, mm.
        unit: the piece's.
        given: whether the heights are given already.
    """
    sizes = [kept(_fine(height, unit), unit) for height in heights[:-1]]
    settings = [Setting("opening.bank.divide.sizes", sizes)]
    if not given:
        settings.append(Setting("opening.bank.divide.rule", "given"))
        settings += [Setting(f"opening.bank.divide.{key}", None) for key in ("step", "ratio")]
    return tuple(settings)


def _fine(mm: float, unit: Unit) -> float:
    """A size that a rule worked out, as a person would give it: to 0.1 mm or 1/64 in."""
    step = 0.1 if unit is Unit.MM else float(unit.in_mm) / 64
    return round(mm / step) * step


def _division_setter(
    heights: tuple[float, ...], index: int, unit: Unit, given: bool
) -> Callable[[float], tuple[Setting, ...]]:
    def sets(value: float) -> tuple[Setting, ...]:
        moved = list(heights)
        moved[index + 1] += moved[index] - value
        moved[index] = value
        return division_settings(tuple(moved), unit, given=given)

    return sets


def _rail_handle(design: Design, assembly: Assembly, ceiling: float) -> list[Handle]:
    if assembly.slant is None:
        return []
    writing = assembly.slant.writing_height_mm
    given = design.case.top_rail is not None
    return [
        Handle(
            "case.top_rail@front",
            "Rail over the top drawer",
            "front",
            (assembly.width * 0.5, ceiling),
            (0.0, -1.0),
            writing - ceiling,
            lambda point: writing - point[1],
            _setter("case.top_rail", unit_of(design)),
            warns="" if given else "The rail's height is now given; it no longer follows from lid and front.",
        )
    ]


def _base_handles(design: Design, assembly: Assembly) -> list[Handle]:
    return [
        Handle(
            "base.height@front",
            "Plinth height",
            "front",
            (assembly.width * 0.8, design.base.height),
            (0.0, 1.0),
            design.base.height,
            lambda point: point[1],
            _setter("base.height", unit_of(design)),
        )
    ]
