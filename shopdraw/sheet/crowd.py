"""Where a view is so crowded with lines that a box there is sure to meet one: asked of many places at once. Paper mm.

Points along all lines are marked on squares; a box that holds a whole marked square meets a line. It only spares work:
what isn't called crowded is looked at line by line.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from shopdraw.sheet.box import Segment

SQUARE = 1.0
"""Side of a square, mm."""
_HAIR = 1e-9

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]


class Crowd:
    """Lines marked on squares, summed up."""

    def __init__(self, lines: Sequence[Segment]) -> None:
        i, j = np.floor(_points_along(np.array(lines, dtype=np.float64).reshape(-1, 4)) / SQUARE).astype(np.int64).T
        self._left, self._foot = int(i.min(initial=0)), int(j.min(initial=0))
        marked = np.zeros((int(i.max(initial=0)) - self._left + 1, int(j.max(initial=0)) - self._foot + 1), np.int32)
        marked[i - self._left, j - self._foot] = 1
        self._sums = np.zeros((marked.shape[0] + 1, marked.shape[1] + 1), dtype=np.int32)
        self._sums[1:, 1:] = marked.cumsum(axis=0, dtype=np.int32).cumsum(axis=1, dtype=np.int32)

    def meets(self, x: Floats, y: Floats, half: float) -> Bools:
        """Which upright squares round middles are sure to have a line inside.

        Args:
            x, y: their middles.
            half: half their side.
        """
        columns, rows = self._sums.shape
        low = np.clip(np.ceil((x - half) / SQUARE + _HAIR).astype(np.int64) - self._left, 0, columns - 1)
        high = np.clip(np.floor((x + half) / SQUARE - _HAIR).astype(np.int64) - self._left, 0, columns - 1)
        foot = np.clip(np.ceil((y - half) / SQUARE + _HAIR).astype(np.int64) - self._foot, 0, rows - 1)
        head = np.clip(np.floor((y + half) / SQUARE - _HAIR).astype(np.int64) - self._foot, 0, rows - 1)
        sums = self._sums
        found: Bools = sums[high, head] - sums[low, head] - sums[high, foot] + sums[low, foot] > 0
        return found & (high > low) & (head > foot)


def _points_along(lines: Floats) -> Floats:
    """(n, 2): points on lines, their ends among them, none further than a square's side from the next."""
    start, run = lines[:, :2], lines[:, 2:] - lines[:, :2]
    many = np.ceil(np.hypot(run[:, 0], run[:, 1]) / SQUARE).astype(np.int64) + 1
    which = np.repeat(np.arange(len(lines)), many)
    step = np.arange(len(which)) - np.repeat(np.cumsum(many) - many, many)
    share = step / np.maximum(many - 1, 1)[which]
    found: Floats = start.take(which, axis=0) + share[:, None] * run.take(which, axis=0)
    return found
