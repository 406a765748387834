"""A case without a slant: sides, bottom, top, back, and what the piece's levels and openings put into it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from shopdraw.build.back import lay_back
from shopdraw.build.bench import Bench, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import (
    housed_top,
    lay_across,
    lay_sides,
    rabbet_sides,
    rabbet_top,
    square_profile,
    stand_in_sides,
)
from shopdraw.build.case_plan import CasePlan, laps, plan_case
from shopdraw.build.compartment import compartment_facts, lay_compartments
from shopdraw.build.dovetail import dovetailed_top
from shopdraw.build.drawer import lay_drawers
from shopdraw.build.drawer_size import drawer_size
from shopdraw.build.drawer_stop import lay_stops
from shopdraw.build.face import lay_face
from shopdraw.build.facts import level_facts, opening_facts
from shopdraw.build.label import order_of
from shopdraw.build.over_top import FRAME, lay_over_top
from shopdraw.build.own_cut import lay_own_cuts
from shopdraw.build.plinth import lay_plinth
from shopdraw.build.space import space_of
from shopdraw.build.stack import lay_stack
from shopdraw.piece.design import Design, LevelTable, OpeningTable
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Fixing


def plan_open_case(
    design: Design, openings: Mapping[str, OpeningTable], levels: Mapping[str, LevelTable]
) -> CasePlan:
    """The sizes of a case without a slant.

    Args:
        openings, levels: as the piece gives them, or its kind's own.
    Raises:
        CannotBuild: inputs that can't all hold.
    """
    lipped = any(laps(design, key) for key in ("", *design.drawer.each))
    drawers = any(table.fill == "drawer" for table in openings.values())
    case = plan_case(design, lipped=lipped and drawers)
    if design.face is not None:
        case = replace(case, front=case.stocks.of("face").thickness)
    over = design.case.top_joint == "overhanging"
    between = {key: table for key, table in levels.items() if key != "bottom"}
    space = space_of(case, openings, between, case.closed_at, FRAME if over else "top")
    rows = tuple(cell for cell in space.cells if cell.fill == "drawer")
    if design.face is not None and design.face.kind == "rails":
        right = 'expected "frame": thick rails stand between a slant-desk\'s drawers'
        raise CannotBuild([fault("face.kind", '"rails"', right)])
    if rows and design.face is not None:
        right = "expected no [face]: drawers run between the sides, and a face frame would stand in their way"
        raise CannotBuild([fault("face", "a face frame before drawers", right)])
    return replace(case, space=space, rows=rows)


def open_case(plan: CasePlan, *, rough: bool = False) -> Assembly:
    """The whole piece.

    Args:
        plan: its sizes.
        rough: where cutters may run out of cuts isn't worked out.
    """
    bench = Bench()
    sides = lay_sides(bench, plan, square_profile(plan))
    bottom = lay_across(bench, plan, "bottom", "bottom", "bottom", plan.bottom_top)
    stand_in_sides(bench, plan, bottom.id, (bottom,), bottom.box(), guest_front=plan.front)
    rabbet_sides(bench, plan)
    if plan.design.case.top_joint == "overhanging":
        top = lay_over_top(bench, plan)
    else:
        stock = plan.stocks.of("top")
        box = Box(plan.left, plan.right, plan.front, plan.depth, plan.height - stock.thickness, plan.height)
        held = Fixing("side.left", (plan.width / 2, plan.front, plan.height))
        top = bench.lay("top", "top", "top", stock, box, u="+x", w="+z", fixing=held)
        rabbet_top(top, plan)
        (dovetailed_top if plan.design.case.top_joint == "dovetail" else housed_top)(bench, plan, top, sides)
    lay_stack(bench, plan)
    shelves = [bench[level.id] for level in plan.space.levels if level.kind == "shelf"]
    lay_back(bench, plan, (bottom, *shelves, top))
    lay_drawers(bench, plan)
    lay_stops(bench, plan, ((row, drawer_size(plan, row).shoulder) for row in plan.rows))
    lay_compartments(bench, plan)
    if plan.design.face is not None:
        lay_face(bench, plan, plan.design.face)
    lay_plinth(bench, plan)
    return assembled(bench, plan, rough=rough)


def assembled(bench: Bench, plan: CasePlan, *, rough: bool) -> Assembly:
    """The boards frozen, with the facts that follow from them."""
    lay_own_cuts(bench, plan)
    return Assembly(
        title=plan.design.piece.title,
        kind=plan.design.piece.kind,
        width=plan.width,
        depth=plan.depth,
        height=plan.height,
        boards=bench.boards(order_of, rough=rough),
        joints=tuple(bench.joints),
        hardware=tuple(bench.hardware),
        motions=tuple(bench.motions),
        levels=level_facts(plan),
        openings=(*opening_facts(plan), *compartment_facts(plan)),
        moisture=plan.season.moisture,
    )
