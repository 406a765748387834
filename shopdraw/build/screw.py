"""Wood screws: as long as what they go through needs, and no longer than it bears."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.slot import along_slot
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import circle
from shopdraw.trade.hardware import butt_hinges, clearance_hole_mm, screw_gauge, screw_lengths, wood_screw
from shopdraw.wood.assembly import Hardware
from shopdraw.wood.board import Face

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


@dataclass(frozen=True, slots=True)
class Passing:
    """Where a screw passes through a board.

    Attributes:
        at: a point of its axis, world mm.
        slot: from where to where it may slide, along world y before and behind that point, mm; None for a round hole.
    """

    at: Vec3
    slot: tuple[float, float] | None = None


def lay_screws(
    bench: Bench, plan: CasePlan, guest: Blank, host: Blank, along: str, places: Sequence[Passing], room: float
) -> None:
    """Bore a board for the screws that hold it to another, and list them.

    Args:
        guest: what they pass through.
        host: what they bite into.
        along: world direction of their axes.
        places: where.
        room: wood before them in the host, mm.
    """
    axis, _ = guest.axis_of(along)
    through = guest.high[axis] - guest.low[axis]
    face = (Face.FOOT, Face.NEAR, Face.FACE)[axis]
    radius = hole_mm(through) / 2
    for number, one in enumerate(places, 1):
        a, b = (x for i, x in enumerate(guest.frame.local(one.at)) if i != axis)
        path, kind, words = circle((a, b), radius), "bore", "fast"
        if one.slot is not None:
            # a slot lies along the board's first way, in the one of its faces that has that
            x, y, z = one.at
            ends = sorted(guest.frame.local((x, y + step, z))[0] for step in one.slot)
            path, kind, words = along_slot(ends[0], ends[1], b, radius), "slot", "may slide"
        id = f"screw:{guest.id}:{host.id}.{number}"
        guest.sink(kind, face, path, id=id, purpose=f"screw into {host.name}, {words}")
    bench.hardware.append(wood_screws(plan, f"screw:{guest.id}", len(places), (guest.id, host.id), through, room))


def hole_mm(through: float) -> float:
    """Diameter of the hole for a screw that passes so much wood before it bites, mm."""
    return clearance_hole_mm(screw_gauge(through))


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
