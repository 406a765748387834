"""The chest: a bank of drawers in rows, a row divided into columns where the piece says so."""

from __future__ import annotations

from shopdraw.build.case_plan import CasePlan
from shopdraw.build.open_case import plan_open_case
from shopdraw.build.space import BANK
from shopdraw.piece.design import Design, OpeningTable


def plan_chest(design: Design) -> CasePlan:
    """A chest's sizes; one that names no opening has a bank of four drawers, each higher than the one above.

    Raises:
        CannotBuild: inputs that can't all hold.
    """
    return plan_open_case(design, design.opening or {BANK: OpeningTable()}, design.level)
