"""The top's front edge: a bevel in the slant plane, and a flat square to it that takes off the sharp lower corner."""

from __future__ import annotations

import math

from shopdraw.build.bench import Blank
from shopdraw.build.lid_size import lid_size
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.shape.path import polygon
from shopdraw.wood.board import Face


def bevel_kept(plan: SlantPlan) -> float:
    """How much of the slanted edge is kept, down the slope from the upper arris, mm; no more than there is."""
    whole = plan.stocks.of("top").thickness / math.sin(math.radians(plan.slant.alpha))
    return min(lid_size(plan).bevel, whole)


def slanted_edge(top: Blank, plan: SlantPlan, bevel: float, *, between_sides: bool = False) -> None:
    """Cut the bevel and the flat along the top's whole front edge.

    Args:
        top: not yet grown into the sides.
        plan: the piece's sizes.
        bevel: how much of the slanted edge is kept, mm.
        between_sides: the flat ends where the top does now; its ends, which will lie over the sides, keep their corner.
    """
    s = plan.slant
    alpha = math.radians(s.alpha)
    t = top.high[2] - top.low[2]
    far = 4 * t + 100.0
    whole = t / math.sin(alpha)

    def at(along: float, inwards: float) -> tuple[float, float]:
        """(v, w) of a point `along` down the slope from the upper arris and `inwards` square to it, into the wood."""
        y = s.run - along * math.cos(alpha) + inwards * math.sin(alpha)
        z = plan.height - along * math.sin(alpha) - inwards * math.cos(alpha)
        local = top.frame.local((0.0, y, z))
        return (local[1], local[2])

    # The slant plane first: all wood on the room's side of it goes.
    top.sink(
        "bevel",
        Face.FOOT,
        polygon([at(-far, 0.0), at(far, 0.0), at(far, -far), at(-far, -far)]),
        id="bevel:top:slant",
        purpose=f"in the slant plane: {s.alpha:.1f}° from level, tilt {s.tilt:.1f}° from square",
    )
    if bevel < whole - 1e-6:
        top.sink(
            "bevel",
            Face.FOOT,
            polygon([at(bevel, -1.0), at(bevel, far), at(far, far), at(far, -1.0)]),
            enter=top.low[0] if between_sides else None,
            floor=top.high[0] if between_sides else None,
            id="bevel:top:flat",
            purpose="flat square to the slant, takes off the sharp corner"
            + (", between the sides only" if between_sides else ""),
        )
