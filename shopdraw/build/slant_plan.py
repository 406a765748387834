"""What a case with a slant has besides: the slant itself, the writing surface, and how far the lid lies in."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.slant import Slant, SlantDisagrees, slant_from_angle, slant_from_start, slant_from_top_depth
from shopdraw.build.stocks import Stocks
from shopdraw.piece.design import Design, SlantTable


@dataclass(frozen=True, slots=True, kw_only=True)
class SlantPlan(CasePlan):
    """Sizes shared by the members of a case with a slant and a lid, mm."""

    slant: Slant
    writing: float
    """World z of the writing surface."""

    @property
    def top_front(self) -> float:
        """World y where the top's upper face begins between the sides: at the slant's upper end."""
        return self.slant.run


def slant_table_of(design: Design) -> SlantTable:
    """The piece's [slant].

    Raises:
        CannotBuild: it has none.
    """
    if design.slant is None:
        raise CannotBuild(
            [fault("slant", "nothing", "expected a [slant] table with writing_height and one of angle and top_depth")]
        )
    return design.slant


def lid_inset(design: Design, stocks: Stocks) -> float:
    """How far the writing face, shut, lies inside the slant plane (o), by the lid's seat."""
    thickness = stocks.of("lid").thickness
    assert design.slant is not None
    if design.slant.seat == "on":
        return 0.0
    if design.slant.seat == "flush":
        return thickness
    return design.lid.rabbet or round(0.4 * thickness * 2) / 2


def slant_of(design: Design, stocks: Stocks) -> Slant:
    """The slant as the piece gives it: by its angle, the top's depth or a measured start; its lid hinged below.

    Raises:
        CannotBuild: inputs that can't all hold, with their addresses and what would be right.
    """
    table, case = design.slant, design.case
    assert table is not None
    inset = lid_inset(design, stocks)
    if table.pin_above_writing < 0:
        raise CannotBuild(
            [
                fault(
                    "slant.pin_above_writing",
                    f"{table.pin_above_writing:g} mm",
                    "expected 0 or more: a pin below the writing surface would need both edges eased",
                )
            ]
        )
    if table.writing_height >= case.height:
        raise CannotBuild(
            [
                fault(
                    "slant.writing_height",
                    f"{table.writing_height:g} mm",
                    f"expected less than the case's height of {case.height:g} mm",
                )
            ]
        )
    both = table.angle is not None and table.top_depth is not None
    try:
        if table.start is not None:
            return slant_from_start(
                case.depth,
                case.height,
                table.writing_height,
                inset,
                table.start,
                angle=table.angle,
                top_depth=table.top_depth,
                joint_gap=table.joint_gap,
                pin_above=table.pin_above_writing,
            )
        if both:
            return _agreeing(design, inset)
        keywords = {"joint_gap": table.joint_gap, "pin_above": table.pin_above_writing}
        if table.angle is not None:
            return slant_from_angle(
                case.depth,
                case.height,
                table.writing_height,
                inset,
                table.angle,
                pin_behind=table.pin_behind_front,
                **keywords,
            )
        if table.top_depth is not None:
            return slant_from_top_depth(
                case.depth,
                case.height,
                table.writing_height,
                inset,
                table.top_depth,
                pin_behind=table.pin_behind_front,
                **keywords,
            )
    except SlantDisagrees as error:
        raise CannotBuild(
            [fault("slant.angle" if table.angle is not None else "slant.top_depth", "", str(error))]
        ) from error
    raise CannotBuild([fault("slant", "neither angle nor top_depth", "expected one of them: the other follows")])


def _agreeing(design: Design, inset: float) -> Slant:
    """Angle and top depth both given: they must say the same to 0.05°, else what fits each is named."""
    table, case = design.slant, design.case
    assert table is not None
    assert table.angle is not None
    assert table.top_depth is not None
    by_depth = slant_from_top_depth(
        case.depth,
        case.height,
        table.writing_height,
        inset,
        table.top_depth,
        joint_gap=table.joint_gap,
        pin_above=table.pin_above_writing,
        pin_behind=table.pin_behind_front,
    )
    if math.isclose(by_depth.alpha, table.angle, abs_tol=0.05):
        return by_depth
    by_angle = slant_from_angle(
        case.depth,
        case.height,
        table.writing_height,
        inset,
        table.angle,
        joint_gap=table.joint_gap,
        pin_above=table.pin_above_writing,
        pin_behind=table.pin_behind_front,
    )
    raise CannotBuild(
        [
            fault(
                "slant.angle",
                f"{table.angle:g}°",
                f"with depth {case.depth:g}, height {case.height:g}, writing height {table.writing_height:g} "
                f"and top depth {table.top_depth:g} mm held, "
                f"the angle is {by_depth.alpha:.2f}°; for {table.angle:g}° the top depth is "
                f"{case.depth - by_angle.run:.1f} mm: keep one of the two",
            )
        ]
    )
