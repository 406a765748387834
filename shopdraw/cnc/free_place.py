"""Free places on a flat part: boxes inside the outline that no cut and no other note touches."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from shopdraw.shape.path import Path, bounds, flattened
from shopdraw.shape.region import Region, inside

Box = tuple[float, float, float, float]
"""Least and greatest x and y, mm."""

_FINE_MM = 0.05


@dataclass(frozen=True, slots=True)
class Ground:
    """A part with what is cut into it and what is already noted on it.

    Attributes:
        outline: of the part, x and y on the table, mm.
        cuts: outlines of what is cut.
        taken: boxes of other notes.
    """

    outline: Region
    cuts: Region
    taken: tuple[Box, ...] = ()

    @property
    def box(self) -> Box:
        """The part's extent."""
        boxes = [bounds(path) for path in self.outline]
        return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)

    def with_taken(self, *boxes: Box) -> Ground:
        """The same ground with more notes on it."""
        return Ground(self.outline, self.cuts, (*self.taken, *boxes))

    def is_free(self, box: Box, margin: float, *, off_cuts: bool) -> bool:
        """Whether a box and a margin round it lie on the part, off other notes and, if so wanted, off the cuts."""
        if any(overlap(box, other) for other in self.taken):
            return False
        grown = (box[0] - margin, box[1] - margin, box[2] + margin, box[3] + margin)
        middle = ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
        if _touches(self.outline, grown) or not inside(self.outline, middle):
            return False
        return not off_cuts or not (_touches(self.cuts, grown) or any(inside((cut,), middle) for cut in self.cuts))


def overlap(one: Box, two: Box) -> bool:
    """Whether two boxes share some area."""
    return one[0] < two[2] and one[2] > two[0] and one[1] < two[3] and one[3] > two[1]


@lru_cache(maxsize=256)
def _chords(paths: tuple[Path, ...]) -> npt.NDArray[np.float64]:
    """Rows of x0, y0, x1, y1."""
    rows: list[tuple[float, float, float, float]] = []
    for path in paths:
        points = flattened(path, _FINE_MM)
        rows += [(*points[i - 1], *points[i]) for i in range(len(points))]
    return np.array(rows, dtype=np.float64).reshape(-1, 4)


def _touches(paths: Sequence[Path], box: Box) -> bool:
    """Whether any boundary enters a box: each chord is clipped to it (Liang and Barsky)."""
    chords = _chords(tuple(paths))
    if not len(chords):
        return False
    low, high = np.zeros(len(chords)), np.ones(len(chords))
    for axis in (0, 1):
        start, change = chords[:, axis], chords[:, axis + 2] - chords[:, axis]
        level = np.abs(change) < 1e-12
        safe = np.where(level, 1.0, change)
        first, second = (box[axis] - start) / safe, (box[axis + 2] - start) / safe
        within = (start > box[axis]) & (start < box[axis + 2])
        low = np.maximum(low, np.where(level, np.where(within, 0.0, 2.0), np.minimum(first, second)))
        high = np.minimum(high, np.where(level, 1.0, np.maximum(first, second)))
    return bool(np.any(low < high))
