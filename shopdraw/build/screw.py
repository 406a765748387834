"""Wood screws: as long as what they go through needs, and no longer than it bears."""

from __future__ import annotations

from shopdraw.build.bench import Bench
from shopdraw.build.case_plan import CasePlan
from shopdraw.trade.hardware import butt_hinges, screw_gauge, screw_lengths, wood_screw
from shopdraw.wood.assembly import Hardware

KIND = "wood screw"
POINT_LEFT_MM = 2.0
"""Wood left before a screw's point (common practice)."""
EDGE_ROOM_MM = 60.0
"""Wood before a screw that goes into a panel's edge: more than any such screw needs."""
LEAST_BITE_MM, USUAL_BITE_MM = 12.0, 20.0
"""A screw goes at least so far into the board that it holds to, and as far as it passes through up to the second
(common practice)."""


def wood_screws(plan: CasePlan, id: str, quantity: int, on: tuple[str, ...], through: float, room: float) -> Hardware:
    """Screws of one kind: the shortest usual ones that bite well, or those that the piece says are at hand.

    Args:
        on: ids of the board whose face the heads lie in, and of the one that is held.
        through: what they pass before they bite, from the heads' seats, mm.
        room: wood before them there, mm.
    """
    own = plan.design.fitting.get(id)
    length = own.length if own is not None else None
    if length is None:
        length = usual_length(through, room, inch=plan.design.piece.units == "inch")
    shank = wood_screw(screw_gauge(through)).shank_mm
    return Hardware(id, KIND, quantity, on, (("diameter", round(shank, 1)), ("length", length)), through, room)


def usual_length(through: float, room: float, *, inch: bool) -> float:
    """The shortest usual length that bites well; where that would come out, the longest that doesn't, mm."""
    usual = screw_lengths(inch)
    wanted = through + max(LEAST_BITE_MM, min(through, USUAL_BITE_MM))
    fits = [length for length in usual if length <= through + room - POINT_LEFT_MM]
    return next((length for length in fits if length >= wanted), fits[-1] if fits else usual[0])


def hinge_screws(bench: Bench, plan: CasePlan, on: tuple[str, str], thick: float) -> None:
    """The screws of all hinges, as many in each leaf as in a usual hinge of that length.

    Args:
        on: ids of the boards that the leaves are let into.
        thick: of the thinner one, towards which they go, mm.
    """
    choice = plan.design.lid
    usual = min(butt_hinges(), key=lambda one: abs(one.length_mm - choice.hinge_length))
    count, through = 2 * usual.screws_per_leaf * choice.hinges, choice.hinge_thickness
    bench.hardware.append(wood_screws(plan, "screw:hinges", count, on, through, thick - through))
