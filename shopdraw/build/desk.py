"""The slant-front desk: its members laid one after the other, then frozen with the facts that follow from them."""

from __future__ import annotations

import math

from shopdraw.build.bay import lay_bay, support_size
from shopdraw.build.bench import Bench
from shopdraw.build.drawer import lay_drawers
from shopdraw.build.label import order_of
from shopdraw.build.lid import lay_lid
from shopdraw.build.lid_size import lid_size
from shopdraw.build.plan import Plan, plan_desk
from shopdraw.build.plinth import lay_plinth
from shopdraw.build.slant_case import lay_slant_case, top_flat_of
from shopdraw.build.top_edge import bevel_kept
from shopdraw.build.web_frame import FramePlace, lay_frame
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly, LevelFact, OpeningFact, SlantFact


def desk(design: Design) -> Assembly:
    """A slant-front desk.

    Raises:
        CannotBuild: inputs that can't all hold.
    """
    plan = plan_desk(design)
    bench = Bench()
    lay_slant_case(bench, plan)
    for row in plan.rows:
        if row.level.startswith("frame."):
            words = f"web frame under drawer {row.key}"
            lay_frame(bench, plan, FramePlace(row.key, row.floor, words, plan.beside(row)))
    lay_bay(bench, plan)
    lay_lid(bench, plan)
    lay_drawers(bench, plan)
    lay_plinth(bench, plan)
    return Assembly(
        title=design.piece.title,
        kind=design.piece.kind,
        width=plan.width,
        depth=plan.depth,
        height=plan.height,
        boards=bench.boards(order_of),
        joints=tuple(bench.joints),
        hardware=tuple(bench.hardware),
        motions=tuple(bench.motions),
        levels=_levels(plan),
        openings=_openings(plan),
        slant=_slant_fact(plan),
        moisture=plan.season.moisture,
    )


def _levels(plan: Plan) -> tuple[LevelFact, ...]:
    fit = plan.design.case.fit

    def level(id: str, kind: str, top: float, member: str) -> LevelFact:
        thickness = plan.stocks.of(member).thickness
        return LevelFact(id, kind, top, thickness, top - thickness - plan.foot, thickness + fit, plan.dado)

    frames = [level(row.level, "web-frame", row.floor, "frame") for row in reversed(plan.rows) if row.level != "bottom"]
    return (
        level("bottom", "bottom", plan.bottom_top, "bottom"),
        *frames,
        level("writing", "shelf", plan.writing, "shelf"),
    )


def _openings(plan: Plan) -> tuple[OpeningFact, ...]:
    facts = []
    for row in plan.rows:
        x0, x1 = plan.drawer_bay(row)
        facts.append(OpeningFact(f"bank.{row.key}", "drawer", row.floor, row.height, x1 - x0, plan.rear, x0, 0.0))
    top = plan.rows[0]
    for hand, x in (("left", plan.left), ("right", plan.right - plan.bay)):
        facts.append(
            OpeningFact(
                f"supports.{hand}", "lid-supports", top.floor, plan.support_top - top.floor, plan.bay, plan.rear, x, 0.0
            )
        )
    return tuple(facts)


def _slant_fact(plan: Plan) -> SlantFact:
    s, size, support = plan.slant, lid_size(plan), support_size(plan)
    table = plan.design.slant
    assert table is not None
    flat = top_flat_of(plan)
    blank_depth = plan.depth - s.run + plan.stocks.of("top").thickness / math.tan(math.radians(s.alpha))
    return SlantFact(
        seat=table.seat,
        hinge_edge=table.hinge_edge,
        angle_from_level_deg=s.alpha,
        saw_tilt_deg=s.tilt,
        run_mm=s.run,
        rise_mm=s.rise,
        slope_length_mm=s.slope_length,
        slant_start_mm=s.z0,
        top_depth_mm=plan.depth - s.run,
        hinge_pin_mm=s.pin,
        hinge_gap_mm=s.joint_gap,
        pin_above_writing_mm=s.pin_above,
        writing_height_mm=s.writing,
        lid_inset_mm=size.inset,
        lid_thickness_mm=plan.stocks.of("lid").thickness,
        lid_length_mm=size.length,
        lid_width_mm=size.width,
        core_length_mm=size.core_length,
        core_width_mm=size.core_width,
        lip_mm=size.lip,
        top_bevel_mm=bevel_kept(plan),
        top_flat_mm=flat,
        top_blank_depth_mm=blank_depth,
        open_projection_mm=size.length - s.pin[0],
        support_extension_mm=support.reach,
        support_top_mm=plan.support_top,
        support_droop_mm=support.droop,
    )
