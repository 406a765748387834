"""Free places on full-size paper for words and check lines. True-size mm, which are paper mm here."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable

from shopdraw.drawing.mark import Mark
from shopdraw.shape.path import Path, Point
from shopdraw.sheet.board_view import inside
from shopdraw.sheet.box import Bounds, Box, upright
from shopdraw.sheet.ground import Ground, What, boxes_of, strokes_of

_STEP = 6.0


class Spots:
    """A region of paper with what stands on it."""

    def __init__(self, region: Bounds) -> None:
        self._region = region
        self._ground = Ground()

    def add(self, marks: Iterable[Mark]) -> None:
        """What words must keep off from now on."""
        marks = tuple(marks)
        for stroke in strokes_of(marks, What.VIEW, ""):
            self._ground.add_stroke(stroke)
        for box in boxes_of(marks):
            self._ground.add_box(box, "")

    def add_words(self, marks: Iterable[Mark]) -> None:
        """Words alone, where lines may be crossed."""
        for box in boxes_of(tuple(marks)):
            self._ground.add_box(box, "")

    def add_boxes(self, boxes: Iterable[Bounds]) -> None:
        """Areas that words must keep off."""
        for box in boxes:
            self._ground.add_box(upright(box), "")

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
            clear: of lines and words.
            within: an outline that it must not leave.
            also: a further condition on the middle.
        """
        x0, y0, x1, y1 = self._region
        columns = max(1, math.ceil((x1 - x0 - width) / _STEP))
        rows = max(1, math.ceil((y1 - y0 - height) / _STEP))
        if width > x1 - x0 or height > y1 - y0:
            return None
        places = [
            (x0 + width / 2 + (x1 - x0 - width) * i / columns, y0 + height / 2 + (y1 - y0 - height) * j / rows)
            for i in range(columns + 1)
            for j in range(rows + 1)
        ]
        for place in sorted(places, key=lambda p: (round(math.dist(p, near), 3), p)):
            if self.free(place, width, height, clear, within) and (also is None or also(place)):
                return place
        return None

    def free(self, at: Point, width: float, height: float, clear: float = 1.5, within: Path | None = None) -> bool:
        """Whether a box round a point is free and lies in the region."""
        box = Box(at[0], at[1], width / 2, height / 2)
        x0, y0, x1, y1 = box.bounds()
        rx0, ry0, rx1, ry1 = self._region
        if x0 < rx0 - 1e-9 or y0 < ry0 - 1e-9 or x1 > rx1 + 1e-9 or y1 > ry1 + 1e-9:
            return False
        if within is not None and not all(inside(within, corner) for corner in box.grown(clear).corners()):
            return False
        return self._ground.free_for_words(box, "own", clear)
