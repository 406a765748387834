"""Free places on full-size paper for words and check lines. True-size mm, which are paper mm here.

What stands on the paper is marked on squares of 1 mm; sums over all squares below and left of each one tell at once
whether any rectangle is free. They are made for the part of the paper that is asked about.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable

import numpy as np
import numpy.typing as npt

from shopdraw.drawing.mark import Mark
from shopdraw.shape.path import Path, Point, flattened
from shopdraw.sheet.box import Bounds
from shopdraw.sheet.ground import What, boxes_of, strokes_of

SQUARE = 1.0
"""Side of a square, mm."""
_AROUND = 6.0
"""Squares are kept that far round the region, so that words keep off what stands just outside."""
_STEP = 2.0
_REACHES = (40.0, 120.0, 360.0, math.inf)
"""How far round the wanted place free ones are looked for, one after the other, mm."""

Counts = npt.NDArray[np.int32]


class Spots:
    """A region of paper with what stands on it."""

    def __init__(self, region: Bounds) -> None:
        x0, y0, x1, y1 = region
        self._region = region
        self._at = (x0 - _AROUND, y0 - _AROUND)
        columns = math.ceil((x1 - x0 + 2 * _AROUND) / SQUARE) + 2
        rows = math.ceil((y1 - y0 + 2 * _AROUND) / SQUARE) + 2
        self._taken: npt.NDArray[np.bool_] = np.zeros((rows, columns), dtype=bool)
        self._outside: dict[Path, npt.NDArray[np.bool_]] = {}

    def add(self, marks: Iterable[Mark]) -> None:
        """What words must keep off from now on."""
        marks = tuple(marks)
        for stroke in strokes_of(marks, What.VIEW, ""):
            (ax, ay), (bx, by) = stroke.line
            if ax == bx or ay == by:
                self._fill(min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))
                continue
            count = max(2, math.ceil(2 * math.hypot(bx - ax, by - ay) / SQUARE) + 1)
            self._mark(np.linspace(ax, bx, count), np.linspace(ay, by, count))
        self.add_words(marks)

    def add_words(self, marks: Iterable[Mark]) -> None:
        """Words alone, where lines may be crossed."""
        self.add_boxes(box.bounds() for box in boxes_of(tuple(marks)))

    def add_boxes(self, boxes: Iterable[Bounds]) -> None:
        """Areas that words must keep off."""
        for box in boxes:
            self._fill(*box)

    def _fill(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """Marks the squares that a box, or a level or plumb line, has a part of."""
        rows, columns = self._taken.shape
        left, right = max(0, self._column(x0)), min(columns, self._column(x1) + 1)
        low, high = max(0, self._row(y0)), min(rows, self._row(y1) + 1)
        if left < right and low < high:
            self._taken[low:high, left:right] = True

    def find(
        self,
        width: float,
        height: float,
        near: Point,
        clear: float = 1.5,
        within: Path | None = None,
        also: Callable[[Point], bool] | None = None,
    ) -> Point | None:
        """The middle of a free place of that size, as near as may be to a point; None where there is none.

        Args:
            width, height: of what is to stand there.
            near: where it would stand best.
            clear: of lines and words, at most 6.
            within: an outline that it must not leave.
            also: a further condition on the middle.
        """
        x0, y0, x1, y1 = self._region
        if width > x1 - x0 or height > y1 - y0:
            return None
        xs = _between(x0 + width / 2, x1 - width / 2)
        ys = _between(y0 + height / 2, y1 - height / 2)
        half_x, half_y = width / 2 + clear, height / 2 + clear
        farthest = -1.0
        for reach in _REACHES:
            # What is nearest lies mostly within the first reach: the rest of the paper needn't be summed for it.
            i, j = _within(xs, near[0], reach), _within(ys, near[1], reach)
            free = self._taken_round(xs[i], ys[j], half_x, half_y, within) == 0
            away = np.hypot(xs[None, i] - near[0], ys[j, None] - near[1]).round(3)
            rows, columns = np.nonzero(free & (away > farthest) & (away <= reach))
            for index in np.argsort(away[rows, columns], kind="stable"):
                place = (float(xs[i][columns[index]]), float(ys[j][rows[index]]))
                if also is None or also(place):
                    return place
            farthest = reach
        return None

    def free(self, at: Point, width: float, height: float, clear: float = 1.5, within: Path | None = None) -> bool:
        """Whether a box round a point is free and lies in the region."""
        x0, y0, x1, y1 = self._region
        if at[0] - width / 2 < x0 - 1e-9 or at[1] - height / 2 < y0 - 1e-9:
            return False
        if at[0] + width / 2 > x1 + 1e-9 or at[1] + height / 2 > y1 + 1e-9:
            return False
        xs, ys = np.array([at[0]]), np.array([at[1]])
        return bool(self._taken_round(xs, ys, width / 2 + clear, height / 2 + clear, within)[0, 0] == 0)

    def _taken_round(
        self,
        xs: npt.NDArray[np.float64],
        ys: npt.NDArray[np.float64],
        half_x: float,
        half_y: float,
        within: Path | None,
    ) -> Counts:
        """How many squares are taken round each middle."""
        if not len(xs) or not len(ys):
            return np.zeros((len(ys), len(xs)), dtype=np.int32)
        rows, columns = self._taken.shape
        left = _kept(np.floor((xs - half_x - self._at[0]) / SQUARE).astype(int), columns)
        right = _kept(np.floor((xs + half_x - self._at[0]) / SQUARE).astype(int) + 1, columns)
        low = _kept(np.floor((ys - half_y - self._at[1]) / SQUARE).astype(int), rows)
        high = _kept(np.floor((ys + half_y - self._at[1]) / SQUARE).astype(int) + 1, rows)
        here = (slice(low[0], high[-1]), slice(left[0], right[-1]))
        taken = self._taken[here] if within is None else self._taken[here] | self._out_of(within)[here]
        sums = np.zeros((taken.shape[0] + 1, taken.shape[1] + 1), dtype=np.int32)
        sums[1:, 1:] = taken.cumsum(axis=0, dtype=np.int32).cumsum(axis=1, dtype=np.int32)
        low, high, left, right = low - low[0], high - low[0], left - left[0], right - left[0]
        counts: Counts = (
            sums[np.ix_(high, right)] - sums[np.ix_(low, right)] - sums[np.ix_(high, left)] + sums[np.ix_(low, left)]
        )
        return counts

    def _out_of(self, outline: Path) -> npt.NDArray[np.bool_]:
        """Squares whose middle lies outside an outline, by the even-odd rule."""
        known = self._outside.get(outline)
        if known is not None:
            return known
        rows, columns = self._taken.shape
        xs = self._at[0] + (np.arange(columns) + 0.5) * SQUARE
        ys = self._at[1] + (np.arange(rows) + 0.5) * SQUARE
        inside = np.zeros((rows, columns), dtype=bool)
        points = flattened(outline, 0.2)
        for (ax, ay), (bx, by) in zip(points, (*points[1:], points[0]), strict=True):
            crossed = (ay > ys) != (by > ys)
            if crossed.any():
                at = ax + (ys[crossed] - ay) * (bx - ax) / (by - ay)
                inside[crossed] ^= xs[None, :] < at[:, None]
        self._outside[outline] = ~inside
        return self._outside[outline]

    def _mark(self, xs: npt.NDArray[np.float64], ys: npt.NDArray[np.float64]) -> None:
        rows, columns = self._taken.shape
        i = np.floor((xs - self._at[0]) / SQUARE).astype(int)
        j = np.floor((ys - self._at[1]) / SQUARE).astype(int)
        held = (i >= 0) & (j >= 0) & (i < columns) & (j < rows)
        self._taken[j[held], i[held]] = True

    def _column(self, x: float) -> int:
        return math.floor((x - self._at[0]) / SQUARE)

    def _row(self, y: float) -> int:
        return math.floor((y - self._at[1]) / SQUARE)


def _within(places: npt.NDArray[np.float64], middle: float, reach: float) -> slice:
    """Those of the rising places that lie within reach of a middle; a step more, so that rounding leaves none out."""
    low, high = np.searchsorted(places, (middle - reach - _STEP, middle + reach + _STEP))
    return slice(int(low), int(high))


def _kept(squares: npt.NDArray[np.int_], count: int) -> npt.NDArray[np.int_]:
    """Numbers of squares kept within the paper."""
    kept: npt.NDArray[np.int_] = np.clip(squares, 0, count)
    return kept


def _between(low: float, high: float) -> npt.NDArray[np.float64]:
    """Middles to try between two ends, both included."""
    return np.linspace(low, high, max(1, math.ceil((high - low) / _STEP)) + 1)
