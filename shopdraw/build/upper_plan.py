"""The plan of a lectern whose lid is hinged at its upper edge: the pin on the reading face and on the top's surface."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, sizes_of
from shopdraw.build.lid_size import ENDS_CLEAR_MM
from shopdraw.build.slant import Slant, SlantDisagrees, slant_from_start
from shopdraw.build.slant_plan import slant_table_of
from shopdraw.piece.design import Design, SlantTable

FRONT_MM = 60.0
"""From the shelf under the lid up to where the slant begins, where the piece gives no start (common practice)."""
PAST_UPRIGHT_DEG = 8.0
"""How far past upright the lid leans back when it is open: it stays so by itself (common practice)."""
LEAST_TOP_MM = 60.0
"""A strip that carries the hinges is at least so deep (common practice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class UpperPlan(CasePlan):
    """Sizes shared by the members of a case whose lid is hinged above, mm.

    Attributes:
        slant: its pin is the upper one; `s1` is the slope's length from the pin to the front plane.
        writing: world z of the shelf under the lid.
    """

    slant: Slant
    writing: float

    @property
    def top_front(self) -> float:
        """World y where the top's upper face begins between the sides: at the pin."""
        return self.slant.run

    @property
    def lid_length(self) -> float:
        """From the pin to the lid's lower end: y_p·cos α + rise·sin α, and no nosing."""
        alpha = math.radians(self.slant.alpha)
        return self.slant.pin[0] * math.cos(alpha) + self.slant.rise * math.sin(alpha)

    @property
    def lid_width(self) -> float:
        """Between the sides less the clearance at both ends."""
        return self.inside - 2 * (self.design.lid.clearance or ENDS_CLEAR_MM)

    @property
    def swing(self) -> float:
        """How far the lid turns from shut to leaning back, degrees."""
        return 90.0 + self.slant.alpha + PAST_UPRIGHT_DEG


def upper_plan(case: CasePlan) -> UpperPlan:
    """The plan with its slant and pin.

    Raises:
        CannotBuild: inputs that can't all hold, with their addresses and what would be right.
    """
    design = case.design
    table = slant_table_of(design)
    if "seat" in table.model_fields_set and table.seat != "flush":
        right = 'expected "flush": a lid hinged above lies between the sides, its reading face in the slant plane'
        raise CannotBuild([fault("slant.seat", f'"{table.seat}"', right)])
    if design.case.top_joint == "overhanging":
        right = 'expected "dovetail" or "housed": the lid\'s pin lies on the top\'s front edge'
        raise CannotBuild([fault("case.top_joint", '"overhanging"', right)])
    if case.clean_top:
        right = 'expected "through" or "clean-sides": the top\'s front edge is square to the lid, the sides\' aren\'t'
        raise CannotBuild([fault("case.dovetails", '"clean-top"', right)])
    if design.lid.ends != "none":
        right = 'expected "none": breadboard caps are made for a lid hinged below'
        raise CannotBuild([fault("lid.ends", f'"{design.lid.ends}"', right)])
    if design.lid.lock:
        raise CannotBuild([fault("lid.lock", "true", "expected false: a lid hinged above has no edge over it")])
    if design.lid.edge != "square":
        right = 'expected "square": the ledge stands on the face of a lid hinged above'
        raise CannotBuild([fault("lid.edge", f'"{design.lid.edge}"', right)])
    slant = _slant(design, table)
    top_depth = case.depth - slant.run
    least = max(LEAST_TOP_MM, _edge_run(case, slant) + 40.0 + case.rabbet_depth)
    if top_depth < least:
        right = f"expected at least {least:.1f} mm, to carry the hinges: a steeper slant or a deeper case"
        raise CannotBuild([fault("slant", f"a top {top_depth:.1f} mm deep", right)])
    sizes: dict[str, Any] = sizes_of(case)
    return UpperPlan(**sizes, slant=slant, writing=table.writing_height)


def _edge_run(case: CasePlan, slant: Slant) -> float:
    """How much further back the top's front edge, square to the lid, is at the underside, mm."""
    return case.stocks.of("top").thickness * math.tan(math.radians(slant.alpha))


def _slant(design: Design, table: SlantTable) -> Slant:
    """The slant from angle, top depth and start, of which two or, with the usual start, one is given."""
    case = design.case
    angle, depth, start = table.angle, table.top_depth, table.start
    if angle is None and depth is None:
        raise CannotBuild([fault("slant", "neither angle nor top_depth", "expected one of them: the other follows")])
    if start is None and angle is not None and depth is not None:
        start = case.height - (case.depth - depth) * math.tan(math.radians(angle))
        angle = None
    if start is None:
        start = table.writing_height + FRONT_MM
    if not table.writing_height < start < case.height:
        right = f"expected over the shelf at {table.writing_height:g} and under the top at {case.height:g} mm"
        raise CannotBuild([fault("slant.start", f"{start:.1f} mm", right)])
    try:
        made = slant_from_start(
            case.depth, case.height, table.writing_height, 0.0, start, angle=angle, top_depth=depth,
            joint_gap=table.joint_gap,
        )  # fmt: skip
    except SlantDisagrees as error:
        raise CannotBuild([fault("slant", "", str(error))]) from error
    # flush: o = t, so y_p = run - (t - o) / sin α = run
    return replace(made, pin=(made.run, case.height), pin_above=0.0, s1=made.slope_length)
