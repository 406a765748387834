"""What is checked: what a person decided, the plan worked out from it, and the boards that came of it."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.build.build import plan_of
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.plan import Plan
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.interference import box_of


@dataclass(frozen=True, slots=True)
class Subject:
    """A piece under the rules.

    Attributes:
        design: the inputs.
        plan: sizes that several members share, worked out from the inputs.
        assembly: boards, joints and motions; the rules look at these wherever they can, so that a board that came
            out wrong is seen even where the inputs are right.
    """

    design: Design
    plan: CasePlan
    assembly: Assembly

    @property
    def slanted(self) -> SlantPlan | None:
        """The plan of a piece whose lid is hinged below, at its writing surface; None for others."""
        return self.plan if isinstance(self.plan, SlantPlan) else None

    @property
    def desk(self) -> Plan | None:
        """The plan of a slant-front desk, with its bank and lid supports; None for other kinds."""
        return self.plan if isinstance(self.plan, Plan) else None


def subject_of(design: Design, assembly: Assembly) -> Subject:
    """The piece, ready for the rules."""
    return Subject(design, plan_of(design), assembly)


def back_front(assembly: Assembly) -> float:
    """World y of the back's front face, whatever the back is made of, mm."""
    return min(box_of(board)[1] for board in assembly.boards if board.member.partition(".")[0] == "back")
