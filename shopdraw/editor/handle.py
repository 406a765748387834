"""Handles: what can be taken hold of on the drawing, which way it moves and what it sets. Knows no Qt.

A handle reads a point of its view as a wanted value, and turns a value into settings of the piece file; how a piece
follows from these is `build`'s affair.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from shopdraw.build.slant import SlantDisagrees, slant_from_start, slant_from_top_depth
from shopdraw.editor.division import BANK, Division, divisions_of, level_id, unit_of
from shopdraw.editor.holding import Magnet, ratio_magnets
from shopdraw.editor.state import Setting, State
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import kept
from shopdraw.measure import Unit
from shopdraw.piece.address import address_text
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
    found += _base_handles(design)
    found += _level_handles(design, assembly)
    return tuple(found)


def _setter(address: str, unit: Unit, *drops: str) -> Callable[[float], tuple[Setting, ...]]:
    def sets(value: float) -> tuple[Setting, ...]:
        return (Setting(address, kept(value, unit)), *(Setting(drop, None) for drop in drops))

    return sets


def _case_handles(design: Design, assembly: Assembly) -> list[Handle]:
    unit = unit_of(design)
    w, h, d = assembly.width, assembly.height, assembly.depth
    width_ratios = ratio_magnets(h, translate("Ratio", "width : height"))
    height_ratios = ratio_magnets(w, translate("Ratio", "height : width"))
    depth_ratios = ratio_magnets(w, translate("Ratio", "depth : width"))
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
    writing = _setter("slant.writing_height", unit)
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
        _setter("slant.top_depth", unit, *(["slant.angle"] if both else [])),
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


def _division_handles(design: Design, assembly: Assembly) -> list[Handle]:
    """Between each cell of a divided opening and the next one; and the rail over a desk's topmost drawer."""
    unit = unit_of(design)
    divisions = divisions_of(design, assembly)
    found = [
        _division_handle(division, index, unit) for division in divisions for index in range(len(division.cells) - 1)
    ]
    bank = next((division for division in divisions if division.opening == BANK), None)
    return [*found, *(_rail_handle(design, assembly, bank.cells[0].top) if bank is not None else [])]


def _division_handle(division: Division, index: int, unit: Unit) -> Handle:
    cells, sizes = division.cells, division.sizes
    here, there = cells[index], cells[index + 1]
    between = here.bottom - there.top if division.rows else there.left - here.right
    if division.rows:
        at = ((here.left + here.right) / 2, here.bottom - between / 2)
    else:
        at = (here.right + between / 2, (here.bottom + here.top) / 2)

    def reads(point: Point) -> float:
        drawn = here.top - point[1] if division.rows else point[0] - here.left
        return drawn - between / 2

    def sets(value: float) -> tuple[Setting, ...]:
        moved = list(sizes)
        moved[index + 1] += moved[index] - value
        moved[index] = value
        return division.settings(tuple(moved), unit)

    alike = translate("Handle", "{name} and {next} alike").format(name=division.name(here), next=there.key)
    like = translate("Handle", "like {name}")
    before = [Magnet(sizes[index - 1], like.format(name=division.name(cells[index - 1])))] if index else []
    return Handle(
        f"{division.address}/{here.key}@front",
        division.name(here),
        "front",
        at,
        (0.0, -1.0) if division.rows else (1.0, 0.0),
        sizes[index],
        reads,
        sets,
        magnets=(Magnet((sizes[index] + sizes[index + 1]) / 2, alike), *before),
        warns=""
        if division.given
        else translate("Handle", "The sizes are now given one by one; the rule no longer sets them."),
    )


def _rail_handle(design: Design, assembly: Assembly, ceiling: float) -> list[Handle]:
    if assembly.slant is None:
        return []
    writing = assembly.slant.writing_height_mm
    given = design.case.top_rail is not None
    return [
        Handle(
            "case.top_rail@front",
            translate("Size", "Rail over the top drawer"),
            "front",
            (assembly.width * 0.5, ceiling),
            (0.0, -1.0),
            writing - ceiling,
            lambda point: writing - point[1],
            _setter("case.top_rail", unit_of(design)),
            warns=""
            if given
            else translate("Handle", "The rail's height is now given; it no longer follows from lid and front."),
        )
    ]


def _base_handles(design: Design) -> list[Handle]:
    return [
        Handle(
            "base.height@front",
            translate("Size", "Plinth height"),
            "front",
            (design.case.width * 0.8, design.base.height),
            (0.0, 1.0),
            design.base.height,
            lambda point: point[1],
            _setter("base.height", unit_of(design)),
        )
    ]


def _level_handles(design: Design, assembly: Assembly) -> list[Handle]:
    """Shelves and other levels of the file; one whose height followed from others is given by the first drag."""
    unit = unit_of(design)
    facts = {fact.id: fact for fact in assembly.levels}
    heights = sorted(fact.top for fact in assembly.levels)
    found = []
    for key, table in design.level.items():
        fact = facts.get(level_id(key, table))
        if fact is None:
            continue
        below = max((z for z in heights if z < fact.top), default=0.0)
        above = min((z for z in heights if z > fact.top), default=assembly.height)
        found.append(
            Handle(
                f"{address_text(('level', key, 'top'))}@front",
                translate("Size", "Level {key}").format(key=key),
                "front",
                (assembly.width * 0.35, fact.top),
                (0.0, 1.0),
                fact.top,
                lambda point: point[1],
                _setter(address_text(("level", key, "top")), unit),
                magnets=(Magnet((below + above) / 2, translate("Handle", "halfway")),),
                warns=""
                if table.top is not None
                else translate("Handle", "The level's height is now given; it no longer follows from its neighbours."),
            )
        )
    return found
