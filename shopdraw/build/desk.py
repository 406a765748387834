"""The slant-front desk: its members laid one after the other, then frozen with the facts that follow from them."""

from __future__ import annotations

from dataclasses import replace

from shopdraw.build.bay import lay_bay
from shopdraw.build.bench import Bench
from shopdraw.build.compartment import compartment_facts, lay_compartments
from shopdraw.build.compartment_plan import front_behind_slant
from shopdraw.build.drawer import lay_drawers
from shopdraw.build.drawer_size import drawer_size
from shopdraw.build.drawer_stop import lay_stops
from shopdraw.build.face_rail import lay_guides, lay_kickers, lay_strips
from shopdraw.build.label import order_of
from shopdraw.build.lid import lay_lid
from shopdraw.build.own_cut import lay_own_cuts
from shopdraw.build.plan import Plan, plan_desk
from shopdraw.build.plinth import lay_plinth
from shopdraw.build.slant_case import lay_slant_case
from shopdraw.build.slant_fact import slant_fact
from shopdraw.build.stay import lay_stays
from shopdraw.build.support import support_size
from shopdraw.build.web_frame import FramePlace, lay_frame, under_wide
from shopdraw.build.writing import step_of
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly, LevelFact, OpeningFact, SlantFact


def desk(design: Design, *, rough: bool = False) -> Assembly:
    """A slant-front desk.

    Args:
        design: what a person decided.
        rough: where cutters may run out of cuts isn't worked out.
    Raises:
        CannotBuild: inputs that can't all hold.
    """
    plan = plan_desk(design)
    bench = Bench()
    lay_slant_case(bench, plan, front_behind_slant(plan))
    _lay_levels(bench, plan)
    lay_strips(bench, plan, plan.slant)
    lay_bay(bench, plan)
    lay_lid(bench, plan)
    if plan.stayed:
        lay_stays(bench, plan)
    lay_drawers(bench, plan)
    lay_stops(bench, plan, ((row, drawer_size(plan, row).shoulder) for row in plan.rows))
    lay_plinth(bench, plan)
    lay_compartments(bench, plan)
    lay_own_cuts(bench, plan)
    return Assembly(
        title=design.piece.title,
        kind=design.piece.kind,
        width=plan.width,
        depth=plan.depth,
        height=plan.height,
        boards=bench.boards(order_of, rough=rough),
        joints=tuple(bench.joints),
        hardware=tuple(bench.hardware),
        motions=tuple(bench.motions),
        levels=_levels(plan),
        openings=_openings(plan),
        slant=slant_fact(plan) if plan.stayed else _supported(plan, slant_fact(plan)),
        moisture=plan.season.moisture,
    )


def _supported(plan: Plan, slant: SlantFact) -> SlantFact:
    size = support_size(plan)
    return replace(
        slant, support_extension_mm=size.reach, support_top_mm=plan.support_top, support_droop_mm=size.droop
    )


def _lay_levels(bench: Bench, plan: Plan) -> None:
    """The web frames from the top down, with the rails before them, the guides on them and the kickers below."""
    above = ""
    for row in plan.rows:
        if row.level.startswith("frame."):
            words = f"web frame under drawer {row.key}"
            middles = under_wide(plan, row.key, *plan.drawer_bay(row))
            face = f"face rail under drawer {row.key}" if plan.face_rail else ""
            lay_frame(bench, plan, FramePlace(row.key, row.floor, words, plan.beside(row), middles, face))
        lay_guides(bench, plan, row)
        if above:
            lay_kickers(bench, plan, row, above)
        above = row.level


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
        *([level("writing.rear", "shelf", plan.writing + step_of(plan), "shelf.rear")] if step_of(plan) else []),
    )


def _openings(plan: Plan) -> tuple[OpeningFact, ...]:
    facts = []
    for row in plan.rows:
        x0, x1 = plan.drawer_bay(row)
        facts.append(OpeningFact(f"bank.{row.key}", "drawer", row.floor, row.height, x1 - x0, plan.rear, x0, 0.0))
    top = plan.rows[0]
    for hand, x in () if plan.stayed else (("left", top.left), ("right", top.right - plan.bay)):
        facts.append(
            OpeningFact(
                f"supports.{hand}", "lid-supports", top.floor, plan.support_top - top.floor, plan.bay, plan.rear, x, 0.0
            )
        )
    return (*facts, *compartment_facts(plan))
