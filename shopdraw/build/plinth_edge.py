"""The plinth's lower edge: lines and tangent arcs from a foot to the middle, drawn once and mirrored."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.shape.fillet import NoRoom, filleted
from shopdraw.shape.path import Corner, NotAPath, Path

RISE_SHARE = 0.45
"""Of a plinth's height, where nobody gave the rise (common practice)."""
FOOT_OVER_BLOCK_MM = 35.0
"""A foot is longer than its block and the plinth's thickness by this (common practice)."""
LEAST_RISE_MM = 12.0
"""A shaped edge rises by this at least (common practice)."""
LEAST_WHOLE_MM = 25.0
"""Of a plinth's height stays over its shaped edge everywhere (common practice)."""
LEAST_BETWEEN_MM = 20.0
"""Of a straight or shaped edge between two feet, at least (common practice)."""


def foot_length(plan: CasePlan) -> float:
    """Length of a shaped foot on the floor, from the plinth's outer corner, mm.

    Raises:
        CannotBuild: a foot that its block would stand out from.
    """
    base, thick = plan.design.base, plan.stocks.of("plinth").thickness
    if base.foot is None:
        # on a short return a foot that just covers its block leaves the edge its room
        free = _shortest_half(plan) - _reach(plan)
        return max(base.block + thick, min(base.block + thick + FOOT_OVER_BLOCK_MM, free))
    if base.foot < base.block + thick:
        right = f"expected at least {base.block + thick:g} mm: the foot block stands behind it; or a smaller base.block"
        raise CannotBuild([fault("base.foot", f"{base.foot:g} mm", right)])
    return base.foot


def _shortest_half(plan: CasePlan) -> float:
    """From the end of the plinth's shortest board to where its shaped edge must have ended, mm."""
    thick = plan.stocks.of("plinth").thickness
    return (min(plan.depth + thick, plan.width + 2 * thick) - LEAST_BETWEEN_MM) / 2


def rise_of(plan: CasePlan) -> float:
    """Rise of the edge between the feet, mm; on a short return no more than there is room for beside the foot."""
    base = plan.design.base
    if base.rise is not None:
        return base.rise
    beside = _shortest_half(plan) - base.block - plan.stocks.of("plinth").thickness
    return max(LEAST_RISE_MM, min(round(RISE_SHARE * base.height), int(beside)))


def _reach(plan: CasePlan) -> float:
    """How far the shaped edge runs from a foot's inner end before it is level, mm."""
    base = plan.design.base
    if base.feet != "own":
        return rise_of(plan)
    return max((x for x, _, _ in _own(base.foot_path, 0.0)), default=0.0)


def shaped_edge(plan: CasePlan, length: float) -> Path | None:
    """A plinth board's outline from its lower corner, up and to the right, mm; None where its edge is straight.

    Raises:
        CannotBuild: feet and edge that have no room on the board.
    """
    if plan.design.base.feet == "plain":
        return None
    high = plan.design.base.height - plan.design.base.foot_gap
    half = _half(plan, length / 2, high)
    return mirrored(half, length, high)


def mirrored(half: Sequence[Corner], length: float, high: float) -> Path:
    """An outline whose lower edge is a half and its mirror image.

    Args:
        half: corners from the foot's inner end on; the last stands on the line of symmetry.
        length, high: of the board, mm.
    """
    back = [Corner(length - here.x, here.y, before.bulge) for before, here in pairwise(half)][::-1]
    run = [*half[:-1], *back, Corner(length - half[0].x, half[0].y)]
    middle = len(half) - 1
    if not run[middle - 1].bulge and half[-2].y == half[-1].y:
        del run[middle]  # a straight line runs on over the middle
    try:
        return Path((Corner(0.0, 0.0), *run, Corner(length, 0.0), Corner(length, high), Corner(0.0, high)))
    except NotAPath as error:
        raise CannotBuild([fault("base.foot_path", "", str(error))]) from error


def _half(plan: CasePlan, middle: float, high: float) -> tuple[Corner, ...]:
    base, foot = plan.design.base, foot_length(plan)
    points = _own(base.foot_path, foot) if base.feet == "own" else _drawn(base.feet, foot, rise_of(plan))
    top = max(y for _, y, _ in points)
    if top > high - LEAST_WHOLE_MM:
        address = "base.foot_path" if base.feet == "own" else "base.rise"
        right = f"expected at most {high - LEAST_WHOLE_MM:g} mm in a plinth of {base.height:g} mm"
        raise CannotBuild([fault(address, f"{top:g} mm", right)])
    if points[-1][0] > middle - LEAST_BETWEEN_MM / 2:
        short = 2 * (points[-1][0] - middle) + LEAST_BETWEEN_MM
        right = f"expected shorter feet: {short:.1f} mm more are needed on a board of {2 * middle:g} mm"
        raise CannotBuild([fault("base.foot", f"{foot:g} mm", right)])
    try:
        return filleted([*points, (middle, points[-1][1], 0.0)])
    except NoRoom as error:
        raise CannotBuild([fault("base.foot_path", "", f"expected smaller radii: {error}")]) from error


def _drawn(feet: str, foot: float, rise: float) -> list[tuple[float, float, float]]:
    """A quarter hollow from the foot up to the edge; or an ogee: hollow, round and hollow again."""
    if feet == "hollow":
        return [(foot, 0.0, 0.0), (foot, rise, rise), (foot + rise, rise, 0.0)]
    r = rise / 3
    return [(foot, 0.0, 0.0), (foot, r, r), (foot + 2 * r, r, r), (foot + 2 * r, rise, r), (foot + 3 * r, rise, 0.0)]


def _own(given: Sequence[float] | None, foot: float) -> list[tuple[float, float, float]]:
    numbers = given or ()
    threes = [(numbers[i], numbers[i + 1], numbers[i + 2]) for i in range(0, len(numbers) - len(numbers) % 3, 3)]
    sound = len(numbers) % 3 == 0 and threes and all(y >= 0.0 and r >= 0.0 for _, y, r in threes)
    if not sound or any(there[:2] == here[:2] for here, there in pairwise(((0.0, 0.0, 0.0), *threes))):
        right = (
            "expected threes of across, up, radius: from the foot's inner end to the edge between the feet, "
            "as [0, 30, 12, 40, 40, 0]"
        )
        raise CannotBuild([fault("base.foot_path", ", ".join(f"{v:g}" for v in numbers), right)])
    return [(foot, 0.0, 0.0), *((foot + x, y, r) for x, y, r in threes)]
