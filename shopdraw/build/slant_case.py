"""The case under a slant: sides cut to it, bottom, writing shelf, and a top whose front edge lies in its plane."""

from __future__ import annotations

import math

from shopdraw.build.back import lay_back
from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case import housed_top, lay_across, lay_sides, rabbet_sides, rabbet_top, stand_in_sides
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.dovetail import dovetailed_top
from shopdraw.build.slant import Slant, top_flat
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.build.top_edge import bevel_kept, slanted_edge
from shopdraw.build.writing import lay_writing_shelf, two_boards
from shopdraw.wood.board import Fixing


def lay_slant_case(bench: Bench, plan: SlantPlan, compartments: float | None = None) -> None:
    """Lay and join the boards of a case whose lid is hinged below.

    Args:
        compartments: world y of the plumb front of what stands on the writing shelf, or None.
    """
    sides = lay_sides(bench, plan, slant_profile(plan, plan.slant))
    bottom = lay_across(bench, plan, "bottom", "bottom", "bottom", plan.bottom_top)
    rabbet_sides(bench, plan)
    top = _top(bench, plan)
    stand_in_sides(bench, plan, bottom.id, (bottom,), bottom.box(), guest_front=bottom.box().y0)
    shelves = lay_writing_shelf(bench, plan, two_boards(plan, compartments))
    if plan.design.case.top_joint == "dovetail":
        dovetailed_top(bench, plan, top, sides)
    else:
        housed_top(bench, plan, top, sides)
    lay_back(bench, plan, (bottom, shelves[-1], top))


def slant_profile(plan: CasePlan, s: Slant) -> tuple[tuple[float, float], ...]:
    """The outline of a side with the slant cut at its upper front, (y, z)."""
    y0, top = plan.side_front, plan.side_top
    return (
        (y0, plan.foot),
        (plan.depth, plan.foot),
        (plan.depth, top),
        (s.run - (plan.height - top) / math.tan(math.radians(s.alpha)), top),
        (y0, s.on_line(y0)),
    )


def _top(bench: Bench, plan: SlantPlan) -> Blank:
    """The top, ripped to the slant in front, its sharp lower corner squared off, its rear rabbeted for the back."""
    s, stock = plan.slant, plan.stocks.of("top")
    t = stock.thickness
    alpha = math.radians(s.alpha)
    bevel = bevel_kept(plan)
    # over the sides' tails the sharp corner stays: the flat ends between the sides
    flat = bevel < t / math.sin(alpha) - 1e-9 and not plan.clean_top
    nose = bevel * math.cos(alpha) if flat else t / math.tan(alpha)
    front = s.run - nose
    # Held where its front meets the sides, so that it moves with them.
    box = Box(plan.left, plan.right, front, plan.depth, plan.height - t, plan.height)
    top = bench.lay(
        "top",
        "top",
        "top",
        stock,
        box,
        u="+x",
        w="+z",
        fixing=Fixing("side.left", (plan.width / 2, s.run, plan.height)),
    )
    slanted_edge(top, plan, bevel, between_sides=plan.clean_top)
    rabbet_top(top, plan)
    return top


def top_flat_of(plan: SlantPlan) -> float:
    """The flat that squares off the top's sharp lower corner, mm; 0 when the bevel takes the whole edge."""
    return max(0.0, top_flat(plan.stocks.of("top").thickness, bevel_kept(plan), plan.slant.alpha))
