"""What lies over a lid support and over a lipped drawer, in front of the pin: how high it may be, and what is notched.

Open, the lid fills its thickness below the writing surface before the pin. What stands there ends a millimetre lower.
"""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.plan import Plan
from shopdraw.build.support import over_support, support_size
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.board import Face
from shopdraw.wood.finding import Finding, Severity

UNDER_LID_MM = 1.0
"""What stands before the pin ends so far below the open lid (common practice)."""


def least_over_drawer(plan: Plan, lip: float) -> float:
    """From the writing surface down to a lipped drawer's opening at least, mm: lid, lip and a millimetre."""
    return plan.stocks.of("lid").thickness + lip + UNDER_LID_MM


def most_over_support(plan: Plan) -> float:
    """What may lie over a support at the most, from the writing surface down, mm: the lid's thickness less one."""
    return plan.stocks.of("lid").thickness - UNDER_LID_MM


def pin_side_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about what lies over supports."""
    if subject.desk is not None:
        yield from shelf_notched(subject, subject.desk)


def shelf_notched(subject: Subject, plan: Plan) -> Iterator[Finding]:
    """A shelf thicker than what may lie over a support is notched over it: told, and a caution where little is left."""
    shelf = subject.assembly.board("shelf.writing")
    notches = [
        cut.depth
        for cut, name in zip(shelf.shape.cuts, shelf.cut_ids, strict=True)
        if name.startswith("notch:shelf.writing:support") and cut.face in (Face.FACE, Face.BACK)
    ]
    if not notches or over_support(plan) >= 0:
        return
    deep, most = max(notches), most_over_support(plan)
    yield Finding(
        "shelf-notched",
        Severity.CAUTION if deep > shelf.thickness / 3 else Severity.NOTE,
        ("shelf.writing", "support.left", "support.right"),
        f"the writing shelf is {mm(shelf.thickness)} mm thick; over a support {mm(most)} mm would fit under the open "
        f"lid, with {mm(support_size(plan).above)} mm of clearance: it is notched there by {mm(deep)} mm; a thicker "
        "lid or a thinner shelf needs none",
        deep,
        shelf.thickness / 3,
        basis="common practice",
    )
