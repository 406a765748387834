"""Where views show a place of the piece: a dimension goes only to an edge that is in sight or cut there."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
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
_ROUNDED = 2e-4
"""More than what rounding to four decimals may add to the difference of two places, mm."""
Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]
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
        self._lines = {view.id: np.array(list(view.lines()), dtype=float).reshape(-1, 2, 2) for view in views}
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
        return bool(len(self._inside(view, (x - NEAR_MM, y - NEAR_MM, x + NEAR_MM, y + NEAR_MM))[0]))

    def _inside(self, view: str, box: Bounds) -> tuple[Floats, Floats]:
        """Lines of a view that pass through a box, in their order.

        Returns:
            Rows of (start, end), each a point: the lines, and what of them lies inside.
        """
        low_x, low_y, high_x, high_y = self._boxes[view]
        x0, y0, x1, y1 = (box[0] - _HAIR, box[1] - _HAIR, box[2] + _HAIR, box[3] + _HAIR)
        near = (low_x <= x1) & (high_x >= x0) & (low_y <= y1) & (high_y >= y0)
        lines = self._lines[view][np.flatnonzero(near)]
        low, high, passes = _clipped(lines, box)
        lines, low, high = lines[passes], low[passes], high[passes]
        start, run = lines[:, 0], lines[:, 1] - lines[:, 0]
        return lines, np.stack((start + low[:, None] * run, start + high[:, None] * run), axis=1)

    def _sight(self, view: str, a: Point, b: Point, toward: Point) -> Sight:
        x0, x1 = min(a[0], b[0]), max(a[0], b[0])
        y0, y1 = min(a[1], b[1]), max(a[1], b[1])
        lines, inside = self._inside(view, (x0 - NEAR_MM, y0 - NEAR_MM, x1 + NEAR_MM, y1 + NEAR_MM))
        if max(x1 - x0, y1 - y0) > NEAR_MM:
            ends = np.hypot(*np.moveaxis(inside - lines, 2, 0)) < NEAR_MM
            counts = ends.any(axis=1)
            if min(x1 - x0, y1 - y0) <= NEAR_MM:
                counts |= np.hypot(*(inside[:, 1] - inside[:, 0]).T) > 4 * NEAR_MM
            inside = inside[counts]
        if not len(inside):
            return Sight(view, ((x0 + x1) / 2, (y0 + y1) / 2), shown=False)
        best = _farthest(inside.reshape(-1, 2), toward)
        return Sight(view, (_held(best[0], x0, x1), _held(best[1], y0, y1)))


def _farthest(points: Floats, toward: Point) -> Point:
    """The point that lies farthest in a direction; of several the one most to the left, then the lowest."""
    first = points @ np.array(toward) if any(toward) else -points[:, 0]
    # only those that may come first once they are rounded
    points = points[first >= first.max() - _ROUNDED]
    found: Iterable[Point] = map(tuple, points.tolist())
    return max(
        found, key=lambda p: (round(p[0] * toward[0] + p[1] * toward[1], 4), -round(p[0], 4), -round(p[1], 4))
    )


def _boxes_round(lines: Floats) -> Floats:
    """Least x and y, greatest x and y of lines, each in a row of its own."""
    return np.concatenate((lines.min(axis=1), lines.max(axis=1)), axis=1).T


def _held(value: float, low: float, high: float) -> float:
    return min(max(value, low), high)


def _clipped(lines: Floats, box: Bounds) -> tuple[Floats, Floats, Bools]:
    """From where to where lines lie inside an upright box, as parts of their lengths; and which of them do at all."""
    low, high = np.zeros(len(lines)), np.ones(len(lines))
    passes = np.ones(len(lines), dtype=np.bool_)
    for axis in (0, 1):
        start = lines[:, 0, axis]
        run = lines[:, 1, axis] - start
        flat = np.abs(run) < 1e-12
        safe = np.where(flat, 1.0, run)
        for edge, sign in ((box[axis], 1.0), (box[axis + 2], -1.0)):
            passes &= ~(flat & (sign * (edge - start) > 0))
            t = (edge - start) / safe
            enters = sign * run > 0
            low = np.where(enters & ~flat, np.maximum(low, t), low)
            high = np.where(enters | flat, high, np.minimum(high, t))
    return low, high, passes & (low <= high)
