"""Sizes of a lid's breadboard caps: where each is glued to the panel, how short it is at the hinge edge, its pegs."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.wood.board import Stock

GLUE_MM = 40.0
"""Square caps are glued over so much (common practice)."""
STOP_MM = 12.0
"""The tongue is stopped this far short of the hinge edge, where it would show, at least."""
FROM_END_MM = 30.0
"""The outermost peg stands this far from a cap's end (common practice)."""
SLOT_ROOM_MM = 0.5
"""Added to a slot at each of its ends."""
BEFORE_MITRE_MM = 2.0
"""The tongue ends this far before a mitre's heel."""
LEAST_WALL_MM = 4.0
"""Wood over and under a cap's groove (common practice)."""


@dataclass(frozen=True, slots=True)
class CapSize:
    """Sizes of caps, mm, along the cap from the hinge edge unless said otherwise.

    Attributes:
        width: of a cap, across its grain.
        high: of the panel, from the hinge edge to the free one.
        mitred: at the free edge.
        both: at the hinge edge, too, which lets nothing move.
        glue: from where to where it is glued.
        short: how much a cap is cut short at the hinge edge.
        tongue: how far it reaches into the cap.
        below: from the writing face down to the tongue.
        thick: of the tongue.
        tongue_span: from where to where the tongue runs.
        groove_start: where the cap's groove begins.
    """

    width: float
    high: float
    mitred: bool
    both: bool
    glue: tuple[float, float]
    short: float
    tongue: float
    below: float
    thick: float
    tongue_span: tuple[float, float]
    groove_start: float

    @property
    def heel(self) -> float:
        """Where the mitre begins, or the free edge of a square cap."""
        return self.high - self.width if self.mitred else self.high

    def away(self, place: float) -> float:
        """How far a place lies from the glue, mm; 0 in it."""
        return max(0.0, self.glue[0] - place, place - self.glue[1])


def cap_size(plan: SlantPlan, high: float, stock: Stock) -> CapSize:
    """Sizes of the caps of a panel.

    Args:
        high: of the panel, hinge edge to free edge, mm.
        stock: the panel's.
    Raises:
        CannotBuild: a tongue nearer than 4 mm to a face, or longer than the cap is wide.
    """
    choice, season = plan.design.lid, plan.season
    cap, ends = choice.cap, choice.ends
    tongue = choice.tongue if choice.tongue is not None else cap / 2
    if tongue + choice.groove_room > cap - LEAST_WALL_MM:
        right = f"expected at most {cap - LEAST_WALL_MM - choice.groove_room:g} mm in a cap of {cap:g} mm"
        raise CannotBuild([fault("lid.tongue", f"{tongue:g} mm", right)])
    thick = stock.thickness / 3
    below = choice.tongue_below if choice.tongue_below is not None else thick
    if choice.tongue_below is not None and not LEAST_WALL_MM <= below <= stock.thickness - thick - LEAST_WALL_MM:
        right = f"expected {LEAST_WALL_MM:g} to {stock.thickness - thick - LEAST_WALL_MM:.1f} mm"
        raise CannotBuild([fault("lid.tongue_below", f"{below:g} mm", f"{right} in a lid of {stock.thickness:g} mm")])
    mitred = ends in ("mitred", "mitred-both")
    if mitred and high < 3 * cap:
        right = f"expected at most {high / 3:.1f} mm in a lid {high:.1f} mm high"
        raise CannotBuild([fault("lid.cap", f"{cap:g} mm", right)])
    if mitred:
        glue, held = (high - cap, high), high - cap / 2
    elif choice.glue == "middle":
        glue, held = ((high - GLUE_MM) / 2, (high + GLUE_MM) / 2), high / 2
    else:
        glue, held = (0.0, GLUE_MM), GLUE_MM
    short = 0.0 if ends == "mitred-both" else season.loss(held, stock) + plan.slant.joint_gap
    grows = season.gain(held, stock) if held > GLUE_MM else 0.0
    stop = max(STOP_MM, math.ceil(short + grows + LEAST_WALL_MM) if held > GLUE_MM else STOP_MM)
    if ends == "mitred-both":
        stop = cap + BEFORE_MITRE_MM
    end = high - cap - BEFORE_MITRE_MM if mitred else high
    return CapSize(
        cap, high, mitred, ends == "mitred-both", glue, short, tongue, below, thick, (stop, end), stop - 0.5 - grows
    )


def peg_places(count: int, size: CapSize) -> tuple[float, ...]:
    """Distances of the pegs from the hinge edge, along the cap; mitred at that edge too, behind that mitre."""
    first = size.tongue_span[0] + FROM_END_MM if size.both else FROM_END_MM
    last = size.heel - FROM_END_MM
    return tuple(first + (last - first) * i / (count - 1) for i in range(count))
