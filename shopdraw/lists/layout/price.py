"""The pricing problem of column generation: the fillings worth most at the present prices."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from shopdraw.lists.layout.lengths import Fill, Lengths

_WORTH = 1e-9
MOST_AT_ONCE = 24
"""Fillings handed back for one kind of space: several at once save rounds."""

_Steps = list[tuple[int, int, np.ndarray]]


def dear_fills(
    lengths: Lengths, prices: np.ndarray, wanted: Sequence[int], costs: Sequence[float]
) -> list[tuple[int, Fill]]:
    """Fillings that are worth more than their space costs; the one worth most is among them, if there is any.

    A bounded knapsack by dynamic programming over the capacity, several of one size taken by powers of two. From the
    one table are read the best filling of each space and, for variety, the best ones that hold a certain size.

    Args:
        lengths: the problem.
        prices: of each size.
        wanted: most of each size that a filling may hold.
        costs: of each kind of space, at the present prices.
    """
    worth, steps = _table(lengths, prices, wanted)
    found: list[tuple[int, Fill]] = []
    for kind, space in enumerate(lengths.spaces):
        if worth[space.capacity] <= costs[kind]:
            continue
        found.append((kind, _traced(lengths, space.capacity, steps)))
        held = set(_sizes_in(found[-1][1]))
        for i in _by_worth(lengths, prices, worth, space.capacity):
            rest = space.capacity - lengths.sizes[i]
            if len(found) >= MOST_AT_ONCE or prices[i] + worth[rest] <= costs[kind]:
                break
            if i in held or not wanted[i]:
                continue
            fill = _traced(lengths, rest, steps)
            if fill[i] < wanted[i]:
                found.append((kind, tuple(count + (j == i) for j, count in enumerate(fill))))
                held.update(_sizes_in(found[-1][1]))
    return found


def _table(lengths: Lengths, prices: np.ndarray, wanted: Sequence[int]) -> tuple[np.ndarray, _Steps]:
    """What each capacity can be worth, and the steps that made it so."""
    capacity = max(space.capacity for space in lengths.spaces)
    worth = np.zeros(capacity + 1)
    steps: _Steps = []
    for i, size in enumerate(lengths.sizes):
        copies = min(wanted[i], capacity // size) if prices[i] > _WORTH else 0
        block = 1
        while copies > 0:
            count = min(block, copies)
            weight = size * count
            with_it = worth[:-weight] + prices[i] * count
            better = with_it > worth[weight:] + _WORTH
            np.copyto(worth[weight:], with_it, where=better)
            steps.append((i, count, better))
            copies -= count
            block *= 2
    return worth, steps


def _by_worth(lengths: Lengths, prices: np.ndarray, worth: np.ndarray, capacity: int) -> list[int]:
    """The sizes that fit, those first whose best filling is worth most."""
    fitting = [i for i, size in enumerate(lengths.sizes) if size <= capacity and prices[i] > _WORTH]
    return sorted(fitting, key=lambda i: (-float(prices[i] + worth[capacity - lengths.sizes[i]]), i))


def _traced(lengths: Lengths, capacity: int, steps: _Steps) -> Fill:
    """Which steps made the worth at this capacity."""
    fill = [0] * len(lengths.sizes)
    at = capacity
    for i, count, better in reversed(steps):
        weight = lengths.sizes[i] * count
        if at >= weight and better[at - weight]:
            fill[i] += count
            at -= weight
    return tuple(fill)


def _sizes_in(fill: Fill) -> list[int]:
    return [i for i, count in enumerate(fill) if count]
