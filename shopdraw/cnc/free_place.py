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

    def first_free(self, boxes: Sequence[Box], margin: float, *, off_cuts: bool) -> Box | None:
        """The first box that lies on the part, off other notes and, if so wanted, off the cuts.

        Args:
            boxes: in the order in which they are liked.
            margin: kept free round each, mm.
            off_cuts: whether cuts are in the way.
        """
        grown = np.array(boxes) + np.array((-margin, -margin, margin, margin))
        met = _met(self.outline, grown)
        if off_cuts and self.cuts:
            met |= _met(self.cuts, grown)
        for box, is_met in zip(boxes, met.tolist(), strict=True):
            if is_met:
                continue
            middle = ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
            apart = not any(overlap(box, other) for other in self.taken)
            in_cut = off_cuts and any(inside((cut,), middle) for cut in self.cuts)
            if apart and not in_cut and inside(self.outline, middle):
                return box
        return None


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


def _met(paths: Sequence[Path], boxes: npt.NDArray[np.float64]) -> npt.NDArray[np.bool_]:
    """For each box whether any boundary enters it: each chord is clipped to it (Liang and Barsky)."""
    chords = _chords(tuple(paths))
    low, high = np.zeros((len(boxes), len(chords))), np.ones((len(boxes), len(chords)))
    for axis in (0, 1):
        start, change = chords[:, axis], chords[:, axis + 2] - chords[:, axis]
        level = np.abs(change) < 1e-12
        safe = np.where(level, 1.0, change)
        least, most = boxes[:, axis, None], boxes[:, axis + 2, None]
        first, second = (least - start) / safe, (most - start) / safe
        within = (start > least) & (start < most)
        low = np.maximum(low, np.where(level, np.where(within, 0.0, 2.0), np.minimum(first, second)))
        high = np.minimum(high, np.where(level, 1.0, np.maximum(first, second)))
    return np.asarray((low < high).any(axis=1))
