"""Which kind of piece is planned and built by what."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from shopdraw.build.bookcase import plan_bookcase
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.chest import plan_chest
from shopdraw.build.desk import desk
from shopdraw.build.free_case import plan_free_case
from shopdraw.build.lectern import lectern, plan_lectern
from shopdraw.build.open_case import open_case
from shopdraw.build.plan import plan_desk
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly

_PLANS: Mapping[str, Callable[[Design], CasePlan]] = {
    "slant-desk": plan_desk,
    "chest": plan_chest,
    "bookcase": plan_bookcase,
    "lectern": plan_lectern,
    "free": plan_free_case,
}


def plan_of(design: Design) -> CasePlan:
    """The sizes that the members of a piece share; a plan of a piece with a slant holds that and the lid's, too.

    Raises:
        CannotBuild: inputs that can't all hold.
    """
    return _PLANS[design.piece.kind](design)


def build(design: Design, *, rough: bool = False) -> Assembly:
    """The whole piece, derived from what a person decided.

    Args:
        design: what a person decided.
        rough: where cutters may run out of cuts isn't worked out; enough for a draft on the screen.
    Raises:
        CannotBuild: inputs that can't all hold.
    """
    if design.piece.kind == "slant-desk":
        return desk(design, rough=rough)
    if design.piece.kind == "lectern":
        return lectern(plan_lectern(design), rough=rough)
    return open_case(plan_of(design), rough=rough)
