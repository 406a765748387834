"""Brackets at the heads of bays: thin, grain left to right, their lower edge a path of lines and arcs."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from shopdraw.build.bench import Bench, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.compartment_plan import Compartments
from shopdraw.build.joinery import butt
from shopdraw.build.pigeonholes import Bay
from shopdraw.shape.path import Corner, NotAPath, Path
from shopdraw.wood.board import Fixing

PLAY_MM = 0.5
"""A bracket is so much shorter than its bay is wide (common practice)."""
Half = Sequence[tuple[float, float, float]]
"""The left half of a lower edge from the end to the middle: (across, up, bulge of what follows)."""
FOOT_SHARE, FOOT_MM = 1 / 8, 14.0
"""A bracket's foot beside a partition: this share of its length, and no more than so much (common practice)."""
STEP_SHARE, RISE_SHARE = 0.12, 0.5
"""Of a bracket's height: the step up behind its foot, and the rise of its arcs (common practice)."""
LEAST_LEFT = 0.25
"""Of a bracket's height stays above its edge everywhere (common practice)."""


def lay_bracket(bench: Bench, plan: CasePlan, one: Compartments, bay: Bay) -> None:
    """A bracket under what lies over a bay, set back from the partitions' front edges; glued above."""
    table, room, stock = plan.design.compartments, one.room, plan.stocks.of("bracket")
    y0 = room.front + table.bracket_setback
    box = Box(
        bay.left + PLAY_MM / 2,
        bay.right - PLAY_MM / 2,
        y0,
        y0 + stock.thickness,
        room.ceiling - table.bracket_height,
        room.ceiling,
    )
    bracket = bench.lay(
        f"bracket.{bay.name}",
        f"bracket, bay {bay.name}",
        "bracket",
        stock,
        box,
        u="+x",
        w="-y",
        fixing=Fixing(room.above, ((box.x0 + box.x1) / 2, y0, room.ceiling)),
    )
    half = bracket_half(bay.bracket, box.x1 - box.x0, table.bracket_height, table.bracket_path)
    bracket.outline = bracket_outline(half, box.x1 - box.x0, table.bracket_height)
    butt(bench, bench[room.above], bracket, glued=True)


def bracket_half(shape: str, length: float, height: float, own: Sequence[float] | None) -> Half:
    """The left half of a lower edge, mm.

    Raises:
        CannotBuild: an own path that doesn't run from the end to the middle, with what would be right.
    """
    if shape == "own" and own is not None:
        return tuple((x * length / 2, y * height, b) for x, y, b in _own_half(own))
    foot, step, rise = min(FOOT_MM, FOOT_SHARE * length), STEP_SHARE * height, RISE_SHARE * height
    start = ((0.0, 0.0, 0.0), (foot, 0.0, 0.0))
    middle = length / 2
    if shape == "scallop":
        # two hollows that meet in a drop at the middle
        return (*start, (foot, step, -2 * rise / (middle - foot)), (middle, step, 0.0))
    # one arc from foot to foot, level in the middle: half of its angle is the half's
    half = middle - foot
    angle = 2 * math.atan2(rise, half)
    return (*start, (foot, step, -math.tan(angle / 4)), (middle, step + rise, 0.0))


def _own_half(own: Sequence[float]) -> Half:
    half = tuple((own[i], own[i + 1], own[i + 2]) for i in range(0, len(own) - len(own) % 3, 3))
    runs = len(own) % 3 == 0 and len(half) >= 2 and half[0][0] == 0.0 and half[-1][0] == 1.0
    if not runs or any(not 0.0 <= x <= 1.0 or not 0.0 <= y <= 1.0 - LEAST_LEFT for x, y, _ in half):
        right = (
            "expected threes of across, up, bulge: across from 0 at the end to 1 in the middle, "
            f"up from 0 to {1.0 - LEAST_LEFT:g}"
        )
        raise CannotBuild([fault("compartments.bracket_path", ", ".join(f"{v:g}" for v in own), right)])
    return half


def bracket_outline(half: Half, length: float, height: float) -> Path:
    """A bracket's outline from its lower left corner, mm: drawn once for the left half and mirrored.

    Raises:
        CannotBuild: two corners at one place.
    """
    left = [Corner(*corner) for corner in half]
    # run back from the middle, each segment has the bulge of the one that it mirrors
    right = [Corner(length - here.x, here.y, before.bulge) for before, here in pairwise(left)][::-1]
    last = Corner(length - left[0].x, left[0].y)
    try:
        return Path((*left[:-1], *right, last, Corner(length, height), Corner(0.0, height)))
    except NotAPath as error:
        raise CannotBuild([fault("compartments.bracket_path", "", str(error))]) from error
