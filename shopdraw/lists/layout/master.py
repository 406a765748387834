"""The master problem: which fillings, how often, at the least cost. Solved by HiGHS, one thread, a fixed seed."""

from __future__ import annotations

import math
import os
import sys
from collections.abc import Iterable, Sequence
from functools import lru_cache

import highspy
import numpy as np

from shopdraw.lists.layout.clock import WALL_TIMES
from shopdraw.lists.layout.lengths import Fill, Lengths

_SEED = 7
_NEAR = 1e-6


def quiet_solver() -> highspy.Highs:
    """HiGHS as used here: silent, one thread, always the same."""
    _swallow_greeting()
    solver = highspy.Highs()  # type: ignore[no-untyped-call]  # its constructor states no types
    for option, value in (("output_flag", False), ("threads", 1), ("random_seed", _SEED)):
        solver.setOptionValue(option, value)
    return solver


@lru_cache(maxsize=1)
def _swallow_greeting() -> None:
    """Makes one solver with the process's output shut.

    The first one of a process prints a greeting before it can be told to be silent, and what we print must be ours
    alone (`shopdraw facts` prints JSON).
    """
    try:
        sys.stdout.flush()
        kept = os.dup(1)
    except (OSError, ValueError, AttributeError):  # a process without an output: nothing can be printed there
        return
    nowhere = os.open(os.devnull, os.O_WRONLY)
    try:
        os.dup2(nowhere, 1)
        highspy.Highs()  # type: ignore[no-untyped-call]  # its constructor states no types
    finally:
        os.dup2(kept, 1)
        os.close(kept)
        os.close(nowhere)


class Master:
    """Fillings as columns over two blocks of rows: demand of each size, count of each kind of space.

    A stand-in column of high cost for each size keeps it solvable while there are few fillings.
    """

    def __init__(self, lengths: Lengths) -> None:
        self.lengths = lengths
        self.fills: list[tuple[int, Fill]] = []
        self._known: set[tuple[int, Fill]] = set()
        self._solver = quiet_solver()
        for count in lengths.demand:
            self._solver.addRow(float(count), highspy.kHighsInf, 0, [], [])
        for space in lengths.spaces:
            most = highspy.kHighsInf if space.count is None else float(space.count)
            self._solver.addRow(-highspy.kHighsInf, most, 0, [], [])
        dear = 1e3 * max(1.0, *(space.cost for space in lengths.spaces))
        for row in range(len(lengths.sizes)):
            self._solver.addCol(dear, 0.0, highspy.kHighsInf, 1, [row], [1.0])
        self._stand_ins = len(lengths.sizes)
        self.short = False
        """The last answer had to use stand-ins: the fillings so far don't reach."""

    def add(self, fills: Iterable[tuple[int, Fill]]) -> int:
        """Adds the fillings that aren't there yet; how many these were."""
        added = 0
        rows = len(self.lengths.sizes)
        for kind, fill in fills:
            if (kind, fill) in self._known:
                continue
            self._known.add((kind, fill))
            self.fills.append((kind, fill))
            index = [i for i, count in enumerate(fill) if count]
            values = [float(fill[i]) for i in index]
            self._solver.addCol(
                self.lengths.spaces[kind].cost, 0.0, highspy.kHighsInf,
                len(index) + 1, [*index, rows + kind], [*values, 1.0],
            )
            added += 1
        return added

    def demand(self, wanted: Sequence[int], spaces_used: Sequence[int]) -> None:
        """Sets what is still wanted and how many spaces of each kind have gone."""
        rows = len(self.lengths.sizes)
        for row, count in enumerate(wanted):
            self._solver.changeRowBounds(row, float(count), highspy.kHighsInf)
        for kind, space in enumerate(self.lengths.spaces):
            if space.count is not None:
                self._solver.changeRowBounds(rows + kind, -highspy.kHighsInf, float(space.count - spaces_used[kind]))

    def solve(self) -> tuple[float, np.ndarray, np.ndarray]:
        """The relaxed problem: cost, how much of each filling, prices of the rows."""
        self._solver.run()
        answer = self._solver.getSolution()
        amounts = np.asarray(answer.col_value[self._stand_ins :])
        self.short = sum(answer.col_value[: self._stand_ins]) > _NEAR
        return self._solver.getObjectiveValue(), amounts, np.asarray(answer.row_dual)


def choose(
    lengths: Lengths, fills: Sequence[tuple[int, Fill]], seconds: float, nodes: int, above: float = math.inf
) -> tuple[tuple[tuple[int, Fill], ...] | None, float, bool]:
    """The cheapest whole-number choice of fillings that covers the demand.

    Args:
        lengths: the problem.
        fills: what may be chosen.
        seconds: of work; the hard stop.
        nodes: the search's own stop, the same on every machine.
        above: an answer must cost less than this.
    Returns:
        What was chosen (None where nothing was), a bound for this choice of fillings, whether the clock stopped it.
    """
    solver = quiet_solver()
    solver.setOptionValue("time_limit", max(seconds * WALL_TIMES, 0.01))
    solver.setOptionValue("mip_max_nodes", nodes)
    solver.setOptionValue("mip_rel_gap", 0.0)
    if above < math.inf:
        solver.setOptionValue("objective_bound", above)
    rows = len(lengths.sizes)
    for count in lengths.demand:
        solver.addRow(float(count), highspy.kHighsInf, 0, [], [])
    for space in lengths.spaces:
        solver.addRow(-highspy.kHighsInf, highspy.kHighsInf if space.count is None else float(space.count), 0, [], [])
    for column, (kind, fill) in enumerate(fills):
        index = [i for i, count in enumerate(fill) if count]
        values = [float(fill[i]) for i in index]
        solver.addCol(
            lengths.spaces[kind].cost, 0.0, highspy.kHighsInf,
            len(index) + 1, [*index, rows + kind], [*values, 1.0],
        )
        solver.changeColIntegrality(column, highspy.HighsVarType.kInteger)
    solver.run()
    status = solver.getModelStatus()
    hurried = status == highspy.HighsModelStatus.kTimeLimit
    info = solver.getInfo()
    if info.primal_solution_status != highspy.SolutionStatus.kSolutionStatusFeasible:
        return None, info.mip_dual_bound, hurried
    chosen: list[tuple[int, Fill]] = []
    for (kind, fill), value in zip(fills, solver.getSolution().col_value, strict=True):
        chosen += [(kind, fill)] * round(value)
    return tuple(chosen), info.mip_dual_bound, hurried


def trimmed(lengths: Lengths, chosen: Sequence[tuple[int, Fill]]) -> tuple[tuple[int, Fill], ...]:
    """The choice without what it has too much of; spaces left empty aren't opened."""
    left = list(lengths.demand)
    result: list[tuple[int, Fill]] = []
    for kind, fill in chosen:
        kept = tuple(min(count, left[i]) for i, count in enumerate(fill))
        if any(kept):
            result.append((kind, kept))
        for i, count in enumerate(kept):
            left[i] -= count
    return tuple(result)
