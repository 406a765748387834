"""Stays of a lid hinged below: an arm on each side from the case to the lid, stretched when the lid lies level.

Each is fixed to a side's inner face, behind the shut lid, and to the lid's writing face. The distance between the two
grows as the lid opens, so a stay that folds or slides is as long as it is with the lid level:
L = hypot(y_s - (y_p - d), u), with u the side fixing's height over the pin, y_s its place from the front, d the lid
fixing's distance from the pin.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.lid_size import lid_size
from shopdraw.build.screw import wood_screws
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import circle
from shopdraw.wood.assembly import Hardware
from shopdraw.wood.board import Face

OUT_SHARE, UP_SHARE = 0.5, 0.4
"""Where a stay is fixed when nobody says: on the lid, of its length; on the side, of the rise (common practice)."""
BEHIND_FACE_MM = 20.0
"""From the shut lid's writing face to the fixing on the side (common practice)."""
INSIDE_EDGE_MM = 12.0
"""From the core's end to the fixing on the lid (common practice)."""
PLATE_MM, HALF_PITCH_MM = 1.5, 8.0
"""A stay's plates, thick, and half of what lies between their two screws (common practice)."""
SPOT_MM, SPOT_DEEP_MM = 4.0, 3.0
"""Spots that their screws are started in: as wide as other screw holes, shallow; the pilot holes are drilled in
them with the stay at hand (common practice)."""
LEAST_MM = 40.0


@dataclass(frozen=True, slots=True)
class StaySize:
    """A stay's places, mm.

    Attributes:
        out: from the pin to its fixing on the lid.
        up: from the pin up to its fixing on the side.
        behind: world y of that fixing.
        length: from fixing to fixing with the lid level.
        folded: the same with the lid shut.
    """

    out: float
    up: float
    behind: float
    length: float
    folded: float


def stay_size(plan: SlantPlan) -> StaySize:
    """Where stays are fixed and how long they are.

    Raises:
        CannotBuild: a fixing off the lid, or over the slant.
    """
    choice, s = plan.design.lid, plan.slant
    alpha, long = math.radians(s.alpha), lid_size(plan).core_length
    tall = plan.height - plan.stocks.of("top").thickness - s.pin[1]
    out = choice.stay_out if choice.stay_out is not None else round(OUT_SHARE * long)
    up = choice.stay_up if choice.stay_up is not None else round(UP_SHARE * tall)
    for name, given, most in (("stay_out", out, long - LEAST_MM), ("stay_up", up, tall - LEAST_MM)):
        if not LEAST_MM <= given <= most:
            right = f"expected {LEAST_MM:g} to {most:.0f} mm, for its fixing"
            raise CannotBuild([fault(f"lid.{name}", f"{given:g} mm", right)])
    behind = s.pin[0] + up / math.tan(alpha) + BEHIND_FACE_MM / math.sin(alpha)
    if behind > plan.rear - LEAST_MM:
        right = f"expected at most {(plan.rear - LEAST_MM - behind) * math.tan(alpha) + up:.0f} mm, to stay in the case"
        raise CannotBuild([fault("lid.stay_up", f"{up:g} mm", right)])
    shut = (s.pin[0] + out * math.cos(alpha), s.pin[1] + out * math.sin(alpha))
    length = math.hypot(behind - (s.pin[0] - out), up)
    return StaySize(out, up, behind, length, math.dist(shut, (behind, s.pin[1] + up)))


def lay_stays(bench: Bench, plan: SlantPlan) -> None:
    """Spot the fixings of both stays and list them with their screws."""
    size, s, lid = stay_size(plan), plan.slant, bench["lid"]
    alpha = math.radians(s.alpha)
    # inside the sides, though the lid may lie over them
    inside = max((plan.width - lid_size(plan).core_width) / 2, plan.left) + INSIDE_EDGE_MM
    for hand, x, edge in (("left", plan.left, inside), ("right", plan.right, plan.width - inside)):
        side, fitting = bench[f"side.{hand}"], f"stay.{hand}"
        board = bench.blanks.get(f"lid.cap-{hand}", lid)
        at: list[tuple[Blank, Vec3]] = [
            (side, (x, size.behind, s.pin[1] + size.up + step)) for step in (-HALF_PITCH_MM, HALF_PITCH_MM)
        ]
        for step in (-HALF_PITCH_MM, HALF_PITCH_MM):
            along = size.out + step
            at.append((board, (edge, s.pin[0] + along * math.cos(alpha), s.pin[1] + along * math.sin(alpha))))
        for number, (host, point) in enumerate(at, 1):
            u, v, _ = host.frame.local(point)
            host.sink(
                "bore", Face.FACE, circle((u, v), SPOT_MM / 2), floor=-SPOT_DEEP_MM,
                id=f"screw:{host.id}:{fitting}.{number}", purpose=f"spot for a screw of the lid stay, {hand}",
            )  # fmt: skip
        on = (lid.id, side.id)
        sizes = (("length", size.length), ("folded", size.folded))
        bench.hardware.append(Hardware(fitting, "lid stay with stop", 1, on, sizes))
        room = min(side.stock.thickness, lid.stock.thickness)
        bench.hardware.append(wood_screws(plan, f"screw:{fitting}", len(at), on, PLATE_MM, room))
