"""The lectern: a slant lid hinged at its lower edge, as a desk's is, or its upper one; the case may hold shelves."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

from shopdraw.build.back import lay_back
from shopdraw.build.bench import Bench, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import housed_top, lay_across, lay_sides, rabbet_sides, rabbet_top, stand_in_sides
from shopdraw.build.case_plan import plan_case, sizes_of
from shopdraw.build.dovetail import dovetailed_top
from shopdraw.build.drawer import lay_drawers
from shopdraw.build.drawer_size import drawer_size
from shopdraw.build.drawer_stop import lay_stops
from shopdraw.build.facts import level_fact, level_facts, opening_facts
from shopdraw.build.joinery import butt
from shopdraw.build.label import order_of
from shopdraw.build.ledge import lay_ledge
from shopdraw.build.lid import lay_lid
from shopdraw.build.lid_size import lid_size
from shopdraw.build.own_cut import lay_own_cuts
from shopdraw.build.plinth import lay_plinth
from shopdraw.build.slant_case import lay_slant_case, slant_profile
from shopdraw.build.slant_fact import slant_fact
from shopdraw.build.slant_plan import SlantPlan, slant_of, slant_table_of
from shopdraw.build.space import space_of
from shopdraw.build.stack import lay_stack
from shopdraw.build.stay import lay_stays
from shopdraw.build.upper_lid import lay_upper_lid
from shopdraw.build.upper_plan import UpperPlan, upper_plan
from shopdraw.piece.design import Design
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import polygon
from shopdraw.wood.assembly import Assembly, Motion, SlantFact
from shopdraw.wood.board import Face, Fixing

LEAST_FRONT_MM = 15.0
"""A front board under the lid lower than this is left out (common practice)."""
WRITING = "shelf.writing"


def plan_lectern(design: Design) -> SlantPlan | UpperPlan:
    """A lectern's sizes.

    Raises:
        CannotBuild: inputs that can't all hold.
    """
    table = slant_table_of(design)
    if design.case.top_joint == "overhanging":
        right = 'expected "dovetail" or "housed": the lid lies on the top\'s front edge'
        raise CannotBuild([fault("case.top_joint", '"overhanging"', right)])
    if design.face is not None:
        raise CannotBuild([fault("face", "a face frame", "expected none under a slant lid")])
    if design.writing.boards == 2:
        raise CannotBuild([fault("writing.boards", "2", "expected 1: a lectern's shelf is one board")])
    lipped = design.drawer.front == "lipped" and any(t.fill == "drawer" for t in design.opening.values())
    case = plan_case(design, lipped=lipped)
    levels = {key: level for key, level in design.level.items() if key != "bottom"}
    ceiling = table.writing_height - case.stocks.of("shelf").thickness
    if table.writing_height >= design.case.height:
        right = f"expected less than the case's height of {design.case.height:g} mm"
        raise CannotBuild([fault("slant.writing_height", f"{table.writing_height:g} mm", right)])
    space = space_of(case, design.opening, levels, ceiling, WRITING)
    case = replace(case, space=space, rows=tuple(cell for cell in space.cells if cell.fill == "drawer"))
    if table.hinge_edge == "upper":
        return upper_plan(case)
    slant = slant_of(design, case.stocks)
    sizes: dict[str, Any] = sizes_of(case)
    return SlantPlan(**sizes, slant=slant, writing=slant.writing)


def lectern(plan: SlantPlan | UpperPlan, *, rough: bool = False) -> Assembly:
    """A lectern.

    Args:
        plan: its sizes.
        rough: where cutters may run out of cuts isn't worked out.
    """
    bench = Bench()
    if isinstance(plan, UpperPlan):
        _upper_case(bench, plan)
        lay_upper_lid(bench, plan)
        slant = _upper_fact(plan)
    else:
        lay_slant_case(bench, plan)
        lay_lid(bench, plan)
        _lower_ledge(bench, plan)
        slant = slant_fact(plan)
    lay_stack(bench, plan)
    lay_drawers(bench, plan)
    lay_stops(bench, plan, ((row, drawer_size(plan, row).shoulder) for row in plan.rows))
    lay_plinth(bench, plan)
    lay_own_cuts(bench, plan)
    shelf = level_fact(plan, "writing", "shelf", plan.writing, plan.stocks.of("shelf").thickness)
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
        levels=(*level_facts(plan), shelf),
        openings=opening_facts(plan),
        slant=slant,
        moisture=plan.season.moisture,
    )


def _lower_ledge(bench: Bench, plan: SlantPlan) -> None:
    """The ledge on the outer face of a lid hinged below; stays hold it level, since nothing slides out under it."""
    s, size, lid = plan.slant, lid_size(plan), bench["lid"]
    alpha = math.radians(s.alpha)
    up: Vec3 = (0.0, math.cos(alpha), math.sin(alpha))
    out: Vec3 = (0.0, -math.sin(alpha), math.cos(alpha))
    y, z = s.on_slope(s.joint_gap / 2, lid.stock.thickness - s.pin_above)
    corner = ((plan.width - size.width) / 2, y, z)
    ledge = lay_ledge(bench, plan, lid, corner, up, out, size.width)
    bench.motions[:] = [_with(motion, ledge.id) if motion.id == "lid" else motion for motion in bench.motions]
    lay_stays(bench, plan)


def _with(motion: Motion, board: str) -> Motion:
    return replace(motion, boards=(*motion.boards, board))


def _upper_case(bench: Bench, plan: UpperPlan) -> None:
    """The case under a lid hinged above: the top's front edge square to the lid, a board under its lower edge."""
    s = plan.slant
    sides = lay_sides(bench, plan, slant_profile(plan, s))
    bottom = lay_across(bench, plan, "bottom", "bottom", "bottom", plan.bottom_top)
    shelf = lay_across(bench, plan, WRITING, "shelf under the lid", "shelf", plan.writing)
    rabbet_sides(bench, plan)
    for board in (bottom, shelf):
        stand_in_sides(bench, plan, board.id, (board,), board.box(), guest_front=0.0)
    stock = plan.stocks.of("top")
    alpha = math.radians(s.alpha)
    front = s.pin[0] + s.joint_gap / 2 / math.cos(alpha)
    box = Box(plan.left, plan.right, front, plan.depth, plan.height - stock.thickness, plan.height)
    held = Fixing("side.left", (plan.width / 2, s.run, plan.height))
    top = bench.lay("top", "top", "top", stock, box, u="+x", w="+z", fixing=held)
    back = stock.thickness * math.tan(alpha)
    points = [(front - 1.0, plan.height), (front, plan.height), (front + back, box.z0), (front - 1.0, box.z0)]
    local = [top.frame.local((0.0, y, z)) for y, z in points]
    top.sink(
        "bevel", Face.FOOT, polygon((p[1], p[2]) for p in local), id="bevel:top:slant",
        purpose=f"square to the lid: tilt {s.alpha:.1f}° from square",
    )  # fmt: skip
    rabbet_top(top, plan)
    (dovetailed_top if plan.design.case.top_joint == "dovetail" else housed_top)(bench, plan, top, sides)
    lay_back(bench, plan, (bottom, shelf, top))
    _front_board(bench, plan)


def _front_board(bench: Bench, plan: UpperPlan) -> None:
    """The board across between shelf and lid, clear of the lid when it has grown."""
    s, stock, lid = plan.slant, plan.stocks.of("rail"), plan.stocks.of("lid")
    under = s.z0 - lid.thickness / math.cos(math.radians(s.alpha))
    high = under - math.ceil(2 * (plan.season.gain(under - plan.writing, stock) + 0.5)) / 2
    if high - plan.writing < LEAST_FRONT_MM:
        return
    box = Box(plan.left, plan.right, 0.0, stock.thickness, plan.writing, high)
    held = Fixing(WRITING, (plan.width / 2, 0.0, plan.writing))
    rail = bench.lay("rail.front", "front board under the lid", "rail", stock, box, u="+x", w="-y", fixing=held)
    butt(bench, bench[WRITING], rail, glued=True)


def _upper_fact(plan: UpperPlan) -> SlantFact:
    s, lid = plan.slant, plan.stocks.of("lid").thickness
    alpha = math.radians(s.alpha)
    stock = plan.stocks.of("top")
    return SlantFact(
        seat="flush",
        hinge_edge="upper",
        angle_from_level_deg=s.alpha,
        saw_tilt_deg=s.alpha,
        run_mm=s.run,
        rise_mm=s.rise,
        slope_length_mm=s.slope_length,
        slant_start_mm=s.z0,
        top_depth_mm=plan.depth - s.run,
        hinge_pin_mm=s.pin,
        hinge_gap_mm=s.joint_gap,
        pin_above_writing_mm=s.pin[1] - plan.writing,
        writing_height_mm=plan.writing,
        lid_inset_mm=lid,
        lid_thickness_mm=lid,
        lid_length_mm=plan.lid_length,
        lid_width_mm=plan.lid_width,
        core_length_mm=plan.lid_length,
        core_width_mm=plan.lid_width,
        lip_mm=0.0,
        top_bevel_mm=stock.thickness / math.cos(alpha),
        top_flat_mm=0.0,
        top_blank_depth_mm=plan.depth - s.run,
        open_projection_mm=0.0,
        support_extension_mm=None,
        support_top_mm=None,
        support_droop_mm=None,
    )
