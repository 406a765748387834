"""Where views show a place of the piece: a dimension goes only to an edge that is in sight or cut there."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shopdraw.drawing.mark import Line, Mark, Meaning
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds
from shopdraw.sheet.fact import Feature, Sight
from shopdraw.view.direction import Direction

NEAR_MM = 0.02
"""Two places nearer than this are one."""
_HAIR = 1e-6
Floats = npt.NDArray[np.float64]
IN_SIGHT = frozenset({Meaning.VISIBLE, Meaning.CUT, Meaning.BEHIND})


@dataclass(frozen=True, slots=True)
class Seen:
    """A view that dimensions may go to.

    Attributes:
        id: "front", "section.A", ...
        direction: which way one looks.
        marks: its lines, true-size mm.
    """

    id: str
    direction: Direction
    marks: tuple[Mark, ...]

    def lines(self) -> Iterator[tuple[Point, Point]]:
        """The straight lines in sight or cut."""
        for mark in self.marks:
            if isinstance(mark, Line) and mark.meaning in IN_SIGHT:
                yield mark.start, mark.end


class Sightings:
    """Finds places of the piece in a set of views."""

    def __init__(self, views: Sequence[Seen]) -> None:
        self._views: Mapping[str, Seen] = {view.id: view for view in views}
        self._lines = {view.id: tuple(view.lines()) for view in views}
        self._boxes = {view: _boxes_round(lines) for view, lines in self._lines.items()}

    def place(self, feature_id: str, low: Vec3, high: Vec3, toward: Point = (0.0, 0.0)) -> Feature:
        """A flat or straight place of the piece as each view has it.

        Args:
            feature_id: `board:feature` or `level.bank:top`.
            low, high: opposite corners of an upright box in the world, flat across what is measured, mm.
            toward: where on paper the dimension will stand, as a direction: the end in sight nearest to it is taken.
        Returns:
            The feature with a sight in every view; one that isn't `shown` where no edge in sight runs there.
        """
        sights = []
        for view_id, view in self._views.items():
            ends = sorted((view.direction.on_paper(low), view.direction.on_paper(high)))
            sights.append(self._sight(view_id, ends[0], ends[1], toward))
        return Feature(feature_id, tuple(sights))

    def shows(self, feature: Feature, view: str) -> bool:
        """Whether a view shows a place."""
        sight = feature.sight(view)
        return sight is not None and sight.shown

    def passes(self, view: str, point: Point) -> bool:
        """Whether an edge in sight passes a point of a view."""
        x, y = point
        box = (x - NEAR_MM, y - NEAR_MM, x + NEAR_MM, y + NEAR_MM)
        return any(_clipped(start, end, box) is not None for start, end in self._near(view, box))

    def _near(self, view: str, box: Bounds) -> Iterator[tuple[Point, Point]]:
        """Lines of a view whose upright boxes meet a box, in their order."""
        low_x, low_y, high_x, high_y = self._boxes[view]
        x0, y0, x1, y1 = (box[0] - _HAIR, box[1] - _HAIR, box[2] + _HAIR, box[3] + _HAIR)
        near = (low_x <= x1) & (high_x >= x0) & (low_y <= y1) & (high_y >= y0)
        lines = self._lines[view]
        return (lines[place] for place in np.flatnonzero(near))

    def _sight(self, view: str, a: Point, b: Point, toward: Point) -> Sight:
        x0, x1 = min(a[0], b[0]), max(a[0], b[0])
        y0, y1 = min(a[1], b[1]), max(a[1], b[1])
        box = (x0 - NEAR_MM, y0 - NEAR_MM, x1 + NEAR_MM, y1 + NEAR_MM)
        found: list[Point] = []
        thin = min(x1 - x0, y1 - y0) <= NEAR_MM
        for start, end in self._near(view, box):
            inside = _clipped(start, end, box)
            if inside is None:
                continue
            along = math.dist(*inside) > 4 * NEAR_MM
            point_like = max(x1 - x0, y1 - y0) <= NEAR_MM
            if (
                point_like
                or (along and thin)
                or math.dist(inside[0], start) < NEAR_MM
                or math.dist(inside[1], end) < NEAR_MM
            ):
                found += inside
        if not found:
            return Sight(view, ((x0 + x1) / 2, (y0 + y1) / 2), shown=False)
        best = max(
            found, key=lambda p: (round(p[0] * toward[0] + p[1] * toward[1], 4), -round(p[0], 4), -round(p[1], 4))
        )
        return Sight(view, (_held(best[0], x0, x1), _held(best[1], y0, y1)))


def _boxes_round(lines: Sequence[tuple[Point, Point]]) -> Floats:
    """Least x and y, greatest x and y of lines, each in a row of its own."""
    ends = np.array(lines, dtype=float).reshape(-1, 2, 2)
    return np.concatenate((ends.min(axis=1), ends.max(axis=1)), axis=1).T


def _held(value: float, low: float, high: float) -> float:
    return min(max(value, low), high)


def _clipped(p: Point, q: Point, box: Bounds) -> tuple[Point, Point] | None:
    """The part of a line inside an upright box; None where it passes by."""
    low, high = 0.0, 1.0
    for axis in (0, 1):
        run = q[axis] - p[axis]
        for edge, sign in ((box[axis], 1.0), (box[axis + 2], -1.0)):
            gap = sign * (edge - p[axis])
            if abs(run) < 1e-12:
                if gap > 0:
                    return None
                continue
            t = (edge - p[axis]) / run
            if sign * run > 0:
                low = max(low, t)
            else:
                high = min(high, t)
    if low > high:
        return None
    dx, dy = q[0] - p[0], q[1] - p[1]
    return (p[0] + low * dx, p[1] + low * dy), (p[0] + high * dx, p[1] + high * dy)
