"""Column generation with diving: for one-way problems with too many fillings to list."""

from __future__ import annotations

import math
import random

import numpy as np

from shopdraw.lists.layout.clock import worked
from shopdraw.lists.layout.lengths import Fill, Filling, Lengths, Space
from shopdraw.lists.layout.master import Master, choose, trimmed
from shopdraw.lists.layout.price import dear_fills

_NEAR = 1e-6
_SEED = 11
COARSE = 10_000
"""Units of capacity of the coarse problem."""
Opened = tuple[tuple[int, Fill], ...]


class _OutOfTime(Exception):
    """The clock's hard stop."""


def coarse(lengths: Lengths) -> Lengths:
    """The problem in larger units, sizes up and spaces down: whatever fits there fits here, and is found sooner."""
    largest = max(space.capacity for space in lengths.spaces)
    unit = max(1, largest // COARSE)
    if unit == 1:
        return lengths
    spaces = tuple(Space(space.capacity // unit, space.cost, space.count) for space in lengths.spaces)
    return Lengths(tuple(-(-size // unit) for size in lengths.sizes), lengths.demand, spaces)


class ColumnSearch:
    """One search: relaxed problem to its end, dives from it, then the best choice among all fillings seen."""

    def __init__(self, lengths: Lengths, first: Opened | None, stop: float) -> None:
        self._lengths = lengths
        self._stop = stop
        self._master = Master(lengths)
        self.best = first
        if first:
            self._master.add(first)
        self.bound = 0.0
        self._coarse = coarse(lengths)
        self._exact = True

    def run(self, dives: int, nodes: int) -> Filling:
        """The search, within its numbers of dives and nodes and within the clock's stop."""
        hurried = False
        try:
            cost, _ = self._converged(self._lengths.demand, [0] * len(self._lengths.spaces))
            if self._master.short:
                return Filling(self.best or (), 0.0)
            self.bound = self._up(cost)
            self._exact = False
            for number in range(dives):
                if self._reached:
                    break
                self._dive(random.Random(_SEED + number), number)
        except _OutOfTime:
            hurried = True
        if not self._reached and worked() < self._stop - 0.1:
            chosen, _, late = choose(
                self._lengths, self._master.fills, self._stop - worked(), nodes, self._best_cost
            )
            hurried = hurried or late
            if chosen is not None:
                self._offer(trimmed(self._lengths, chosen))
        return Filling(self.best or (), self.bound, hurried)

    @property
    def _best_cost(self) -> float:
        return math.inf if self.best is None else self._cost(self.best)

    @property
    def _reached(self) -> bool:
        return self._best_cost <= self.bound + _NEAR

    def _cost(self, opened: Opened) -> float:
        return sum(self._lengths.spaces[kind].cost for kind, _ in opened)

    def _offer(self, opened: Opened) -> None:
        if self._cost(opened) < self._best_cost - _NEAR:
            self.best = opened

    def _up(self, cost: float) -> float:
        return math.ceil(cost - _NEAR) if self._lengths.whole_costs else cost

    def _converged(self, wanted: list[int] | Fill, used: list[int]) -> tuple[float, np.ndarray]:
        """The relaxed problem for what is still wanted, fillings added until none is worth more than it costs.

        Fillings are looked for in the coarse problem first; in the fine one only where the answer is to be a bound.
        """
        lengths = self._lengths
        rows = len(lengths.sizes)
        self._master.demand(wanted, used)
        while True:
            if worked() > self._stop:
                raise _OutOfTime
            cost, amounts, duals = self._master.solve()
            costs = [space.cost - duals[rows + kind] + _NEAR for kind, space in enumerate(lengths.spaces)]
            good = dear_fills(self._coarse, duals[:rows], wanted, costs)
            if not good and self._exact and self._coarse is not lengths:
                good = dear_fills(lengths, duals[:rows], wanted, costs)
            if not good or not self._master.add(good):
                return cost, amounts

    def _dive(self, chance: random.Random, number: int) -> None:
        """Fixes fillings one after the other, with the relaxed problem of what is left solved between."""
        lengths = self._lengths
        wanted = list(lengths.demand)
        used = [0] * len(lengths.spaces)
        fixed: list[tuple[int, Fill]] = []
        spent = 0.0
        while any(wanted):
            cost, amounts = self._converged(wanted, used)
            if spent + self._up(cost) > self._best_cost - 1 + _NEAR and lengths.whole_costs:
                return
            if spent + cost > self._best_cost - _NEAR or self._master.short:
                return
            for column, times in self._fixing(amounts, chance, number):
                kind, fill = self._master.fills[column]
                for _ in range(times):
                    kept = tuple(min(count, wanted[i]) for i, count in enumerate(fill))
                    if not any(kept):
                        break
                    fixed.append((kind, kept))
                    spent += lengths.spaces[kind].cost
                    used[kind] += 1
                    for i, count in enumerate(kept):
                        wanted[i] -= count
        self._offer(tuple(fixed))

    def _fixing(self, amounts: np.ndarray, chance: random.Random, number: int) -> list[tuple[int, int]]:
        """Which fillings to fix and how often: whole parts of all, else the fullest fraction."""
        whole = [(int(i), int(amounts[i] + _NEAR)) for i in np.flatnonzero(amounts > 1 - _NEAR)]
        if whole:
            return whole
        parts = np.flatnonzero(amounts > _NEAR)
        if number == 0:
            best = max(parts, key=lambda i: (round(float(amounts[i]), 6), self._lengths.used(self._master.fills[i][1])))
        else:
            best = max(parts, key=lambda i: amounts[i] + 0.35 * chance.random())
        return [(int(best), 1)]
