"""A free piece: an empty case with the levels, openings and fillings that its file names, and no others."""

from __future__ import annotations

from shopdraw.build.case_plan import CasePlan
from shopdraw.build.open_case import plan_open_case
from shopdraw.piece.design import Design


def plan_free_case(design: Design) -> CasePlan:
    """A free piece's sizes.

    Raises:
        CannotBuild: inputs that can't all hold.
    """
    return plan_open_case(design, design.opening, design.level)
