"""Levels between a case's bottom and what closes it above: fixed shelves, web frames, shelves on pins.

A level's upper face is given, or follows: levels without one share the space between their neighbours evenly.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from itertools import pairwise

from shopdraw.build.bank import LEAST_MM
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Level
from shopdraw.piece.design import LevelTable

LEAST_OVER_PINNED_MM = 40.0
"""Clear height over and under a shelf on pins, so that it can be lifted off them (common practice)."""
PIN_ABOVE_HOLE_MM = 0.5
"""Share of a pin's diameter that lies over its middle: a shelf lies on the pin's upper side."""
FROM_END_MM = 60.0
"""Pin holes keep this from the levels that close their space (common practice)."""
ON_PITCH_MM = 0.01


def levels_between(case: CasePlan, tables: Mapping[str, LevelTable], ceiling: float) -> dict[str, Level]:
    """The levels, by key, from the bottom up; shelves on pins that share a space lie on one row of holes.

    Args:
        tables: by key; in file order from the bottom up where one has no `top`.
        ceiling: world z of the underside of what closes the space above, mm.
    Raises:
        CannotBuild: levels that lie in each other or in no order, with their addresses and what would be right.
    """
    stocks = {key: case.stocks.of("frame" if t.member == "web-frame" else "shelf") for key, t in tables.items()}
    thick = {key: stock.thickness for key, stock in stocks.items()}
    keys = list(tables)
    if all(table.top is not None for table in tables.values()):
        keys.sort(key=lambda key: tables[key].top or 0.0)
    tops = _tops(case, keys, tables, thick, ceiling)
    laid = {key: Level(_id(key, tables[key]), tables[key].member, tops[key], thick[key]) for key in keys}
    _refuse_too_close(case, laid, ceiling)
    return _on_pitch(case, laid, tables)


def _id(key: str, table: LevelTable) -> str:
    return f"frame.{key}" if table.member == "web-frame" else f"shelf.{key}"


def _tops(
    case: CasePlan,
    keys: Sequence[str],
    tables: Mapping[str, LevelTable],
    thick: Mapping[str, float],
    ceiling: float,
) -> dict[str, float]:
    """Upper faces, those not given spread so that the clear heights between two given ones are equal."""
    tops: dict[str, float] = {}
    below, waiting = case.bottom_top, list[str]()
    for key in (*keys, None):
        given = ceiling if key is None else tables[key].top
        if given is None and key is not None:
            waiting.append(key)
            continue
        assert given is not None
        under = given if key is None else given - thick[key]
        clear = (under - below - sum(thick[one] for one in waiting)) / (len(waiting) + 1)
        for one in waiting:
            below += clear + thick[one]
            tops[one] = below
        waiting = []
        if key is not None:
            tops[key] = below = given
    return tops


def _refuse_too_close(case: CasePlan, laid: Mapping[str, Level], ceiling: float) -> None:
    spans = [("", case.bottom_top, case.bottom_top, ""), *((k, v.under, v.top, v.kind) for k, v in laid.items())]
    spans.append(("", ceiling, ceiling, ""))
    for (one, _, below, kind), (other, above, _, over) in pairwise(spans):
        least = LEAST_OVER_PINNED_MM if "pinned-shelf" in (kind, over) else LEAST_MM
        if above - below >= least - 1e-9:
            continue
        key = other or one
        address = f"level.{key}.top" if key else "case.height"
        place = f" {'under' if other else 'over'} level {key}" if key else ""
        found = f"{above - below:.1f} mm clear{place}"
        right = f"expected at least {least:g} mm: fewer levels, another height, or a higher case"
        raise CannotBuild([fault(address, found, right)])


def _on_pitch(case: CasePlan, laid: dict[str, Level], tables: Mapping[str, LevelTable]) -> dict[str, Level]:
    """Shelves on pins brought onto the row of holes that the lowest of their space begins."""
    pitch = case.design.pins.pitch
    anchor: float | None = None
    found: dict[str, Level] = {}
    for key, level in laid.items():
        if level.kind != "pinned-shelf":
            anchor, found[key] = None, level
            continue
        if anchor is None:
            anchor = level.under
        steps = (level.under - anchor) / pitch
        top = anchor + round(steps) * pitch + level.thickness
        if tables[key].top is not None and abs(top - level.top) > ON_PITCH_MM:
            lower = anchor + math.floor(steps) * pitch + level.thickness
            right = (
                f"expected {lower:.2f} or {lower + pitch:.2f} mm: it shares its holes, {pitch:g} mm apart, "
                "with the shelf below it"
            )
            raise CannotBuild([fault(f"level.{key}.top", f"{level.top:g} mm", right)])
        found[key] = Level(level.id, level.kind, top, level.thickness)
    return found


def pin_heights(case: CasePlan, shelves: Sequence[Level], floor: float, ceiling: float) -> tuple[float, ...]:
    """World z of the middles of the pin holes in one space, from the bottom up, mm: each shelf's and its spare ones.

    Args:
        shelves: on pins in that space, the lowest first.
        floor, ceiling: of the space.
    """
    pins = case.design.pins
    first = shelves[0].under - PIN_ABOVE_HOLE_MM * pins.diameter
    low, high = floor + FROM_END_MM, ceiling - FROM_END_MM
    steps: set[int] = set()
    for shelf in shelves:
        own = round((shelf.under - shelves[0].under) / pins.pitch)
        near = range(own - pins.spare, own + pins.spare + 1)
        steps.update(n for n in near if n == own or low <= first + n * pins.pitch <= high)
    return tuple(first + n * pins.pitch for n in sorted(steps))
