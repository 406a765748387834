"""The contenders for boards: largest first; all fillings at once where they are few; fillings as they are needed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.lists.layout.answer import CutUp, SawCut
from shopdraw.lists.layout.bundle import Bundle, by_size, spaces_of
from shopdraw.lists.layout.clock import worked
from shopdraw.lists.layout.columns import ColumnSearch
from shopdraw.lists.layout.contender import Entry
from shopdraw.lists.layout.greedy import best_fit
from shopdraw.lists.layout.job import BoardJob, Piece
from shopdraw.lists.layout.lengths import Fill, Filling, Lengths, Space
from shopdraw.lists.layout.master import choose, trimmed
from shopdraw.lists.layout.pattern import all_fills
from shopdraw.lists.layout.tree import Cutting
from shopdraw.lists.layout.whole import BOARD_UNIT, cost_unit, down, up

DIVES = 12
FEW = 3_000
"""Fillings that are all handed to the exact search at once; with more they are made as they are needed."""
_SHARE = 0.6
_EXACT_NODES = 100_000
NODES = 300
"""The searches' own ends, the same on every machine; the clock's stop lies well behind them on furniture-size jobs."""


@dataclass(frozen=True, slots=True)
class BoardTask:
    """A job for boards in whole numbers.

    Attributes:
        groups: bundles of each size.
        stretches: for each kind of space the board it is on and from where to where, mm.
        unit: what a cost of 1 in `lengths` is worth.
    """

    job: BoardJob
    groups: tuple[tuple[Bundle, ...], ...]
    stretches: tuple[tuple[Piece, float, float], ...]
    lengths: Lengths
    unit: float


def board_task(job: BoardJob, bundles: Sequence[Bundle]) -> BoardTask:
    """The job in whole numbers, the largest units that all sizes are made of; a kerf to each part and each stretch."""
    ordered: dict[float, list[Bundle]] = {}
    for group in by_size(bundles):
        ordered.setdefault(round(group[0].length, 6), []).extend(group)
    groups = list(ordered.values())
    stretches = [(piece, *span) for piece in job.stock if piece.count != 0 for span in spaces_of(piece, job)]
    unit = cost_unit([piece.cost for piece, _, _ in stretches])
    fine = [up(group[0].length + job.kerf, BOARD_UNIT) for group in groups]
    common = math.gcd(*fine)
    sizes = [size // common for size in fine]
    spaces = [
        Space(down(end - start + job.kerf, BOARD_UNIT) // common, _whole(piece.cost / unit), piece.count)
        for piece, start, end in stretches
    ]
    lengths = Lengths(tuple(sizes), tuple(len(group) for group in groups), tuple(spaces))
    return BoardTask(job, tuple(map(tuple, groups)), tuple(stretches), lengths, unit)


def _whole(cost: float) -> float:
    return float(round(cost)) if abs(cost - round(cost)) < 1e-6 else cost


def largest_first(task: BoardTask) -> Entry:
    """The plain heuristic: always there, at once."""
    first = _first(task)
    return Entry("largest first", None if first is None else boards_of(task, first))


def fillings(task: BoardTask, stop: float) -> Entry:
    """The exact search where the fillings are few, else fillings as they are needed and dives.

    Args:
        task: the job.
        stop: the hard stop, by `worked`.
    """
    lengths = task.lengths
    fills = all_fills(lengths, FEW)
    if fills is not None:
        chosen, bound, hurried = choose(lengths, fills, (stop - worked()) * _SHARE, _EXACT_NODES)
        if chosen is not None and not hurried:
            opened = trimmed(lengths, chosen)
            return Entry("all fillings", boards_of(task, opened), task.unit * _rounded(lengths, bound))
    found: Filling = ColumnSearch(lengths, _first(task), stop).run(DIVES, NODES)
    return Entry(
        "fillings as needed",
        boards_of(task, found.opened) if found.opened else None,
        task.unit * found.bound,
        found.hurried,
    )


def _rounded(lengths: Lengths, bound: float) -> float:
    return float(-(-(bound - 1e-6) // 1)) if lengths.whole_costs else bound


def _first(task: BoardTask) -> tuple[tuple[int, Fill], ...] | None:
    spaces = task.lengths.spaces
    dear = [space.cost / max(1, space.capacity) for space in spaces]
    by_cost = sorted(range(len(spaces)), key=lambda i: (dear[i], spaces[i].capacity))
    longest = sorted(range(len(spaces)), key=lambda i: (spaces[i].cost > 0, -spaces[i].capacity))
    found = [one for one in (best_fit(task.lengths, tuple(order)) for order in (by_cost, longest)) if one is not None]
    return min(found, key=lambda one: sum(spaces[kind].cost for kind, _ in one), default=None)


def boards_of(task: BoardTask, opened: Sequence[tuple[int, Fill]]) -> tuple[CutUp, ...]:
    """Filled spaces as boards cut up: stretches of one board come together again."""
    waiting = [list(group) for group in task.groups]
    boards: dict[tuple[str, int], list[tuple[float, float, list[Bundle]]]] = {}
    opened_of: dict[int, int] = {}
    for kind, fill in sorted(opened, key=lambda one: (one[0], tuple(-count for count in one[1]))):
        piece, start, end = task.stretches[kind]
        number = opened_of[kind] = opened_of.get(kind, 0) + 1
        bundles = [waiting[i].pop(0) for i, count in enumerate(fill) for _ in range(count)]
        boards.setdefault((piece.id, number), []).append((start, end, bundles))
    by_id = {piece.id: piece for piece in task.job.stock}
    return tuple(_board(task.job, by_id[piece_id], filled) for (piece_id, _), filled in boards.items())


def _board(job: BoardJob, piece: Piece, filled: Sequence[tuple[float, float, Sequence[Bundle]]]) -> CutUp:
    """A board crosscut from its reference end on, then each piece ripped to width."""
    cutting = Cutting(job.kerf)
    rips: list[tuple[Bundle, tuple[float, float, float, float]]] = []
    bench = 0.0
    for start, end, bundles in sorted(filled, key=lambda one: one[0]):
        if start > bench:
            cutting.cuts.append(SawCut("crosscut", start - job.kerf, 0.0, piece.width))
        at = start
        for bundle in bundles:
            rips.append((bundle, (at, 0.0, at + bundle.length, piece.width)))
            at += bundle.length
            if at < piece.length - 1e-6:
                cutting.cuts.append(SawCut("crosscut", at, 0.0, piece.width))
            at += job.kerf
        bench = at
        cutting.left((at, 0.0, end, piece.width))
    trim_from = piece.length - job.end_trim
    if job.end_trim and bench < trim_from - 1e-6:
        cutting.cuts.append(SawCut("crosscut", trim_from, 0.0, piece.width))
    for bundle, region in rips:
        cutting.walk(bundle.node(turned=False), region)
    return CutUp(piece, tuple(cutting.laid), tuple(cutting.cuts), tuple(cutting.offcuts))
