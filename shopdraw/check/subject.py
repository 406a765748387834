"""What is checked: what a person decided, the plan worked out from it, and the boards that came of it."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.build.plan import Plan, plan_desk
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly


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
    plan: Plan
    assembly: Assembly


def subject_of(design: Design, assembly: Assembly) -> Subject:
    """The piece, ready for the rules."""
    return Subject(design, plan_desk(design), assembly)


def mm(value: float, decimals: int = 2) -> str:
    """A length as a finding prints it: no needless zeros."""
    text = f"{round(value, 9):.{decimals}f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
