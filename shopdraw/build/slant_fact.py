"""Facts about a slant and its lid that follow from the plan."""

from __future__ import annotations

import math

from shopdraw.build.lid_size import lid_size
from shopdraw.build.slant_case import top_flat_of
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.build.top_edge import bevel_kept
from shopdraw.wood.assembly import SlantFact


def slant_fact(plan: SlantPlan) -> SlantFact:
    """Facts about the slant and a lid hinged below; a desk adds those about its supports."""
    s, size = plan.slant, lid_size(plan)
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
        support_extension_mm=None,
        support_top_mm=None,
        support_droop_mm=None,
    )
