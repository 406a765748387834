"""Corners rounded by arcs that are tangent to both of their lines."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from shopdraw.shape.path import Corner

_STRAIGHT = 1e-9
_ROOM_MM = 1e-9


class NoRoom(ValueError):
    """An arc that doesn't fit between its neighbours; the message says which and what would."""


def filleted(points: Sequence[tuple[float, float, float]]) -> tuple[Corner, ...]:
    """An open run of lines whose inner corners are rounded.

    Args:
        points: (x, y, radius) in order, mm; a radius of 0 leaves the corner sharp, those of both ends don't count.
    Returns:
        Corners with bulges; the last one's bulge is 0.
    Raises:
        NoRoom: an arc longer than its lines.
    Source: geometry: an arc of radius r that turns a run by θ touches both lines r·tan(θ/2) from the corner.
    """
    taken = [0.0] + [_tangent(*points[i - 1 : i + 2]) for i in range(1, len(points) - 1)] + [0.0]
    rooms = [math.dist(here[:2], there[:2]) for here, there in pairwise(points)]
    for i, room in enumerate(rooms):
        if taken[i] + taken[i + 1] > room + _ROOM_MM:
            worst = i if taken[i] > taken[i + 1] else i + 1
            x, y, r = points[worst]
            left = min(rooms[worst - 1] - taken[worst - 1], rooms[worst] - taken[worst + 1])
            most = r * max(0.0, left) / taken[worst]
            raise NoRoom(f"an arc of {r:g} mm at {x:g}, {y:g} has no room: there it can be {most:.1f} mm at most")
    found: list[Corner] = []
    for i, (x, y, _) in enumerate(points):
        if not taken[i]:
            found.append(Corner(x, y))
            continue
        start = _towards((x, y), points[i - 1][:2], taken[i])
        end = _towards((x, y), points[i + 1][:2], taken[i])
        found += [Corner(*start, math.tan(_turn(*points[i - 1 : i + 2]) / 4)), Corner(*end)]
    kept = [one for one, after in pairwise(found) if math.dist(one[:2], after[:2]) > _ROOM_MM]
    return (*kept, found[-1])


def _turn(before: Sequence[float], here: Sequence[float], after: Sequence[float]) -> float:
    """How far a run turns left at a corner, radians."""
    a = math.atan2(here[1] - before[1], here[0] - before[0])
    b = math.atan2(after[1] - here[1], after[0] - here[0])
    return math.remainder(b - a, 2 * math.pi)


def _tangent(before: Sequence[float], here: Sequence[float], after: Sequence[float]) -> float:
    turn = abs(_turn(before, here, after))
    if here[2] <= 0.0 or turn < _STRAIGHT:
        return 0.0
    return here[2] * math.tan(turn / 2)


def _towards(here: tuple[float, float], there: Sequence[float], by: float) -> tuple[float, float]:
    share = by / math.dist(here, there[:2])
    return here[0] + (there[0] - here[0]) * share, here[1] + (there[1] - here[1]) * share
