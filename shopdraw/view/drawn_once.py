"""Stretches that lie on one line, or on one circle, drawn without overlaps: the best one wins each place."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from shopdraw.view.standing import Bools, Floats, Ints

Piece = tuple[float, float, int, bool]
"""From, to, owner, covered."""


@dataclass(frozen=True, eq=False)
class Spans:
    """Stretches on many lines or circles, those of one line together, the best first.

    Attributes:
        group: (n,) rising: which line or circle.
        low, high: (n,) from where to where.
        owner: (n,) index of the board.
        covered: (n,) whether it is out of sight.
    """

    group: Ints
    low: Floats
    high: Floats
    owner: Ints
    covered: Bools

    def only(self, rows: Ints) -> Spans:
        """Some of the stretches, in another order."""
        return Spans(self.group[rows], self.low[rows], self.high[rows], self.owner[rows], self.covered[rows])


def groups_drawn_once(spans: Spans, touching: Floats) -> Iterator[tuple[int, list[Piece]]]:
    """For each line or circle the row of its best stretch, and its pieces without overlaps.

    Args:
        touching: (n,) pieces nearer than this touch.
    """
    row, low, high = _joined_runs(spans, touching)
    bounds = np.flatnonzero(np.diff(spans.group[row], prepend=-1, append=-1)).tolist()
    columns = (low, high, spans.owner[row], spans.covered[row])
    pieces: list[Piece] = list(zip(*(column.tolist() for column in columns), strict=True))
    firsts, near = row.tolist(), touching[row].tolist()
    for first, last in pairwise(bounds):
        here = pieces[first:last]
        yield firsts[first], here if last - first == 1 else drawn_once(here, near[first])


def _joined_runs(spans: Spans, touching: Floats) -> tuple[Ints, Floats, Floats]:
    """Stretches of one owner and kind that follow one another in rank, joined where they touch.

    Returns:
        The first row of the run that each belongs to, in order; from; to.
    """
    new = np.ones(len(spans.group), dtype=np.bool_)
    new[1:] = np.diff(spans.group) != 0
    new[1:] |= (np.diff(spans.owner) != 0) | (spans.covered[1:] != spans.covered[:-1])
    run = np.cumsum(new) - 1
    order = np.lexsort((spans.low, run))
    run, low, high, touching = run[order], spans.low[order], spans.high[order], touching[order]
    # each run is set far beyond the one before it, so that one sweep does for all
    beyond = run * (float(high.max(initial=0.0) - low.min(initial=0.0)) + 1.0)
    reach = np.maximum.accumulate(high + beyond)
    starts = np.ones(len(run), dtype=np.bool_)
    starts[1:] = (np.diff(run) != 0) | (low[1:] + beyond[1:] - reach[:-1] > touching[1:])
    at = np.flatnonzero(starts)
    return np.flatnonzero(new)[run[at]], low[at], np.maximum.reduceat(high, at)


def drawn_once(pieces: Sequence[Piece], touching: float) -> list[Piece]:
    """Pieces on one line without overlaps: earlier ones win, and touching ones of one owner and kind are joined.

    Args:
        pieces: best first (visible before covered, near before far).
        touching: pieces nearer than this touch.
    """
    lows: list[float] = []
    highs: list[float] = []
    kept: dict[tuple[int, bool], list[tuple[float, float]]] = {}
    for low, high, owner, covered in pieces:
        # what is drawn already between here and there: apart from each other and in order
        first, last = bisect_left(highs, low), bisect_right(lows, high)
        if first == last:
            if high - low > touching:
                kept.setdefault((owner, covered), []).append((low, high))
                lows.insert(first, low)
                highs.insert(first, high)
            continue
        foot, head = lows[first], highs[last - 1]
        if foot <= low and high <= highs[first]:
            continue
        ends = zip((low, *highs[first:last]), (*lows[first:last], high), strict=True)
        rest = [(a, b) for a, b in ends if b - a > touching]
        if rest:
            kept.setdefault((owner, covered), []).extend(rest)
            lows[first:last] = [min(low, foot)]
            highs[first:last] = [max(high, head)]
    found: list[Piece] = []
    for (owner, covered), parts in kept.items():
        found.extend((low, high, owner, covered) for low, high in _joined(parts, touching))
    return found


def _joined(parts: list[tuple[float, float]], touching: float) -> list[tuple[float, float]]:
    if len(parts) == 1:
        return parts
    parts.sort()
    found = parts[:1]
    for a, b in parts[1:]:
        low, high = found[-1]
        if a - high > touching:
            found.append((a, b))
        else:
            found[-1] = (low, max(high, b))
    return found
