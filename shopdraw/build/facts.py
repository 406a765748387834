"""Facts about levels and openings of a case that follow from its plan."""

from __future__ import annotations

from shopdraw.build.case_plan import CasePlan
from shopdraw.wood.assembly import LevelFact, OpeningFact


def level_facts(plan: CasePlan) -> tuple[LevelFact, ...]:
    """The levels from the bottom up: their dados from the side's foot; a shelf on pins has none."""
    found = [level_fact(plan, "bottom", "bottom", plan.bottom_top, plan.stocks.of("bottom").thickness)]
    for level in plan.space.levels:
        if level.kind == "pinned-shelf":
            found.append(LevelFact(level.id, level.kind, level.top, level.thickness, None, None, None))
        else:
            found.append(level_fact(plan, level.id, level.kind, level.top, level.thickness))
    return tuple(found)


def level_fact(plan: CasePlan, id: str, kind: str, top: float, thickness: float) -> LevelFact:
    """A level that stands in dados of the sides."""
    width = thickness + plan.design.case.fit
    return LevelFact(id, kind, top, thickness, top - thickness - plan.foot, width, plan.dado)


def opening_facts(plan: CasePlan) -> tuple[OpeningFact, ...]:
    """The clear openings, from the top down."""
    deep = plan.rear - plan.front
    return tuple(
        OpeningFact(
            cell.opening, cell.fill, cell.floor, cell.height, cell.right - cell.left, deep, cell.left, plan.front
        )
        for cell in plan.space.cells
    )
