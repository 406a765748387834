"""Handles inside a case: divisions, a desk's upper rail, the plinth, levels, partitions and small shelves.

Knows no Qt.
"""

from __future__ import annotations

from itertools import pairwise

from shopdraw.editor.bay import BaySpaces, bays_of, divisions_beside, own_table, takes_the_rest
from shopdraw.editor.division import BANK, Division, level_id, unit_of
from shopdraw.editor.handle import Handle, setter
from shopdraw.editor.holding import Magnet
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.measure import Unit
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly


def inner_handles(design: Design, assembly: Assembly) -> list[Handle]:
    """All of them, in the front view."""
    return [
        *_division_handles(design, assembly),
        *_base_handles(design, assembly),
        *_level_handles(design, assembly),
        *_bay_handles(design, assembly),
    ]


def _division_handles(design: Design, assembly: Assembly) -> list[Handle]:
    """Between each cell of a divided opening and the next one; and the rail over a desk's topmost drawer."""
    unit = unit_of(design)
    divisions = divisions_beside(design, assembly, bays_of(design, assembly))
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
            setter("case.top_rail", unit_of(design)),
            warns=""
            if given
            else translate("Handle", "The rail's height is now given; it no longer follows from lid and front."),
        )
    ]


def _base_handles(design: Design, assembly: Assembly) -> list[Handle]:
    return [
        Handle(
            "base.height@front",
            translate("Size", "Plinth height"),
            "front",
            (assembly.width * 0.8, design.base.height),
            (0.0, 1.0),
            design.base.height,
            lambda point: point[1],
            setter("base.height", unit_of(design)),
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
                setter(address_text(("level", key, "top")), unit),
                magnets=(Magnet((below + above) / 2, translate("Handle", "halfway")),),
                warns=""
                if table.top is not None
                else translate("Handle", "The level's height is now given; it no longer follows from its neighbours."),
            )
        )
    return found


def _bay_handles(design: Design, assembly: Assembly) -> list[Handle]:
    """The partition right of each bay but the last one, and the small shelves in each bay."""
    bays = bays_of(design, assembly)
    found: list[Handle] = []
    for bay, following in pairwise(bays):
        if bay.room == following.room:
            found.append(_partition_handle(design, bay, following, bays))
    for bay in bays:
        found += _shelf_handles(design, bay)
    return found


def _partition_handle(design: Design, bay: BaySpaces, following: BaySpaces, bays: tuple[BaySpaces, ...]) -> Handle:
    half = (following.left - bay.right) / 2

    def reads(point: Point) -> float:
        return point[0] - half - bay.left

    given = own_table(design, bay).width is not None
    # Were every bay given, none could take what is left: then the next one does from now on.
    drops = (following.width_address,) if takes_the_rest(design, bay, bays) else ()
    return Handle(
        f"{bay.width_address}@front",
        bay.name,
        "front",
        (bay.right + half, (bay.spaces[0][0] + bay.spaces[-1][1]) / 2),
        (1.0, 0.0),
        bay.right - bay.left,
        reads,
        setter(bay.width_address, unit_of(design), *drops),
        magnets=(Magnet(_shared(design, bay, bays), translate("Handle", "all bays without a width alike")),),
        warns=""
        if given
        else translate("Handle", "The bay's width is now given; the bays without one share what is left."),
    )


def _shared(design: Design, bay: BaySpaces, bays: tuple[BaySpaces, ...]) -> float:
    """The width of a bay at which it is like those that share what is left, mm."""
    alike = [
        one.right - one.left
        for one in bays
        if one.room == bay.room and (one.key == bay.key or own_table(design, one).width is None)
    ]
    return sum(alike) / len(alike)


def _shelf_handles(design: Design, bay: BaySpaces) -> list[Handle]:
    found = []
    for number, ((low, high), (above, _)) in enumerate(pairwise(bay.spaces)):
        half = (above - high) / 2

        def reads(point: Point, low: float = low, half: float = half) -> float:
            return point[1] - half - low

        def sets(value: float, number: int = number) -> tuple[Setting, ...]:
            return bay.with_height(number, value, design)

        found.append(
            Handle(
                f"{bay.shelves_address}/{number + 1}@front",
                translate("Size", "{bay}, space {number}").format(bay=bay.name, number=number + 1),
                "front",
                ((bay.left + bay.right) / 2, high + half),
                (0.0, 1.0),
                high - low,
                reads,
                sets,
            )
        )
    return found
