"""How a cut's outline is carried past the blank where it is open, so that no skin of wood is left there."""

from __future__ import annotations

import math
from collections.abc import Collection

from shopdraw.shape.chord import chords
from shopdraw.shape.path import CHORD_TOLERANCE_MM, Path, Point

OVERRUN_MM = 1.0
"""How far a cut runs past the blank where it leaves it."""
_SHARP = 0.3
"""Sine of the angle of a corner that would run out to a spike if its sides were carried on until they meet."""


def carried_past(
    ring: Path, leaving: Collection[int], amount_mm: float = OVERRUN_MM, chord_mm: float = CHORD_TOLERANCE_MM
) -> tuple[tuple[Point, int], ...]:
    """The chords of a ring, those of its open segments moved outwards.

    A flank beside an open segment runs on in its own direction, so that it stays one plane.

    Args:
        ring: an anticlockwise outline, mm.
        leaving: indices of its open segments.
        amount_mm: how far they move.
        chord_mm: how far a chord may lie from its arc.
    Returns:
        For each chord its start and the ring's segment it stands for.
    """
    run = chords(ring, chord_mm)
    count = len(run)
    if not leaving:
        return tuple(((c.x, c.y), c.segment) for c in run)
    ways = [_way((run[i].x, run[i].y), (run[(i + 1) % count].x, run[(i + 1) % count].y)) for i in range(count)]
    amounts = [_amount(ring, run[i].segment, amount_mm) if run[i].segment in leaving else 0.0 for i in range(count)]
    carried: list[tuple[Point, int]] = []
    for i, here in enumerate(run):
        point, before, after = (here.x, here.y), amounts[i - 1], amounts[i]
        carried.extend((moved, here.segment) for moved in _moved(point, ways[i - 1], ways[i], before, after))
        if len(carried) > 1 and before > 0.0 and after == 0.0 and carried[-1][0] == point:
            carried[-2] = (carried[-2][0], run[i - 1].segment)
    return tuple(carried)


def _amount(ring: Path, segment: int, amount_mm: float) -> float:
    """A hollow arc can't be moved outwards by more than its radius."""
    bulge = ring.corners[segment].bulge
    if bulge >= 0:
        return amount_mm
    here, there = ring.corners[segment], ring.corners[(segment + 1) % len(ring.corners)]
    radius = math.hypot(there.x - here.x, there.y - here.y) * (1 + bulge * bulge) / (4 * abs(bulge))
    return min(amount_mm, 0.4 * radius)


def _way(start: Point, end: Point) -> Point:
    size = math.dist(start, end)
    return ((end[0] - start[0]) / size, (end[1] - start[1]) / size)


def _moved(point: Point, before: Point, after: Point, first: float, second: float) -> list[Point]:
    """Where a corner goes when the chord before it moves outwards by `first` and the one after it by `second`."""
    if first == 0.0 and second == 0.0:
        return [point]
    turn = before[0] * after[1] - before[1] * after[0]
    on = before[0] * after[0] + before[1] * after[1]
    both = first > 0.0 and second > 0.0
    if (both and abs(turn) > 1e-6 and (on > 0.0 or abs(turn) > _SHARP)) or (not both and turn > _SHARP):
        # both lines moved, meeting again: point + s·before with the right distances from both
        along_before, along_after = second / turn, -first / turn
        return [
            (
                point[0] + along_before * before[0] + along_after * after[0],
                point[1] + along_before * before[1] + along_after * after[1],
            )
        ]
    out_before = (point[0] + first * before[1], point[1] - first * before[0])
    out_after = (point[0] + second * after[1], point[1] - second * after[0])
    if both:
        return [out_before] if on > 0.0 else [out_before, out_after]
    return [out_before, point] if first > 0.0 else [point, out_after]
