"""Lines that would run together in print: of two that lie nearer than 0.7 on paper one is drawn.

Teaching of ISO 128 (read second-hand). Cut and visible lines win over narrow ones, longer over shorter.
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning
from shopdraw.shape.path import Point
from shopdraw.sheet.look import Look

LEAST_APART = 0.7
LEAST_LEFT = 0.8
"""A stretch shorter than this on paper that is left of a line isn't drawn."""
_ORDER = {Meaning.CUT: 0, Meaning.VISIBLE: 1, Meaning.BEHIND: 2, Meaning.HIDDEN: 3}
_SAME_WAY = math.sin(math.radians(1.0))
_HAIR = 1e-3
"""More than what rounding adds to a distance, mm."""
_TURNED = math.radians(1.5)
"""Lines that are turned to each other by more don't run beside each other."""
_ALIKE = 1e-7
"""Lines that are turned by less, radians, are kept together: over a piece's length they stay within `_HAIR`."""


def without_near(marks: Sequence[Line | ArcMark], scale: float) -> tuple[Line | ArcMark, ...]:
    """The marks, those stretches of straight lines left out that run beside a kept one nearer than 0.7 on paper.

    Args:
        marks: of one view, true-size mm.
        scale: of the view.
    """
    lines = [mark for mark in marks if isinstance(mark, Line)]
    order = sorted(range(len(lines)), key=lambda i: (_ORDER.get(lines[i].meaning, 4), -_length(lines[i]), i))
    kept = _Kept()
    result: dict[int, list[Line]] = {}
    for index in order:
        line = lines[index]
        left = _left_of(line, kept, LEAST_APART / scale, LEAST_LEFT / scale)
        result[index] = left
        kept.add(left)
    arcs = [mark for mark in marks if not isinstance(mark, Line)]
    return (*(piece for index in range(len(lines)) for piece in result[index]), *arcs)


def fine_where_close(marks: Sequence[Mark], scale: float, look: Look) -> tuple[Mark, ...]:
    """The marks, level and plumb lines that leave less than 0.7 on paper to another as narrow lines.

    Wide ones would print as one bar: the sides and the floor of a V-groove, a narrow groove. What bounds the view
    stays wide.

    Args:
        marks: of a board's view, true-size mm.
        scale: of the view.
        look: widths of lines.
    """
    apart = (LEAST_APART + look.wide) / scale
    fine: set[int] = set()
    for axis in (0, 1):
        upright: list[tuple[float, float, float, int]] = sorted(
            (mark.start[axis], *_in_order(mark.start[1 - axis], mark.end[1 - axis]), number)
            for number, mark in enumerate(marks)
            if isinstance(mark, Line) and abs(mark.start[axis] - mark.end[axis]) < _HAIR
        )
        if not upright:
            continue
        first, last = upright[0][0], upright[-1][0]
        for n, (at, low, high, number) in enumerate(upright):
            for other, begun, ended, beside in upright[n + 1 :]:
                if other - at >= apart:
                    break
                if other - at > _HAIR and min(high, ended) - max(low, begun) > _HAIR:
                    fine |= {number} if at > first + _HAIR else set()
                    fine |= {beside} if other < last - _HAIR else set()
    return tuple(
        replace(mark, width=look.narrow) if n in fine and isinstance(mark, Line) else mark
        for n, mark in enumerate(marks)
    )


def _in_order(a: float, b: float) -> tuple[float, float]:
    return (a, b) if a <= b else (b, a)


@dataclass(slots=True)
class _Way:
    """Lines of one direction, by their distance from the origin, to its left."""

    ux: float
    uy: float
    levels: list[float] = field(default_factory=list)
    lines: list[Line] = field(default_factory=list)

    def level(self, point: Point) -> float:
        """How far a point lies to the left of this direction through the origin."""
        return point[1] * self.ux - point[0] * self.uy

    def add(self, line: Line) -> None:
        level = self.level(line.start)
        place = bisect_left(self.levels, level)
        self.levels.insert(place, level)
        self.lines.insert(place, line)

    def beside(self, line: Line, apart: float) -> list[Line]:
        """Those that a line may come near to."""
        low, high = _in_order(self.level(line.start), self.level(line.end))
        return self.lines[bisect_left(self.levels, low - apart) : bisect_right(self.levels, high + apart)]


class _Kept:
    """Lines that are drawn, found by where they lie: the exact question is asked only of those near enough."""

    def __init__(self) -> None:
        self._ways: list[_Way] = []
        self._angles: list[float] = []
        """Of the ways, rising."""

    def add(self, lines: Sequence[Line]) -> None:
        """Lines that are drawn from now on."""
        for line in lines:
            angle = _angle(line)
            place = bisect_left(self._angles, angle - _ALIKE)
            if place == len(self._angles) or self._angles[place] > angle + _ALIKE:
                place = bisect_left(self._angles, angle)
                self._angles.insert(place, angle)
                self._ways.insert(place, _Way(math.cos(angle), math.sin(angle)))
            self._ways[place].add(line)

    def beside(self, line: Line, apart: float) -> Iterator[Line]:
        """Those that may run beside a line within `apart` of it, in a fixed order."""
        angle = _angle(line)
        for turned in (angle - math.pi, angle, angle + math.pi):
            low, high = bisect_left(self._angles, turned - _TURNED), bisect_right(self._angles, turned + _TURNED)
            for way in self._ways[low:high]:
                yield from way.beside(line, apart + _HAIR)


def _angle(line: Line) -> float:
    """Which way a line runs, right or up: from -90° to 90°, radians."""
    angle = math.atan2(line.end[1] - line.start[1], line.end[0] - line.start[0])
    return angle - math.copysign(math.pi, angle) if abs(angle) > math.pi / 2 else angle


def _left_of(line: Line, kept: _Kept, apart: float, least: float) -> list[Line]:
    long = _length(line)
    if long < 1e-9:
        return []
    ux, uy = (line.end[0] - line.start[0]) / long, (line.end[1] - line.start[1]) / long
    covered: list[tuple[float, float]] = []
    for other in kept.beside(line, apart):
        a, b = _in_line(other.start, line.start, ux, uy), _in_line(other.end, line.start, ux, uy)
        run = math.hypot(b[0] - a[0], b[1] - a[1])
        if run < 1e-9 or abs(b[1] - a[1]) > _SAME_WAY * run:
            continue
        if max(abs(a[1]), abs(b[1])) >= apart - 1e-9:
            continue
        low, high = min(a[0], b[0]), max(a[0], b[0])
        if high > 0.0 and low < long:
            covered.append((max(low, 0.0), min(high, long)))
    if not covered:
        return [line]
    pieces: list[Line] = []
    at = 0.0
    for low, high in (*sorted(covered), (long, long)):
        if low - at >= least or (low - at > 1e-6 and low - at >= long - 1e-6):
            pieces.append(_part(line, at, low, ux, uy))
        at = max(at, high)
    return pieces


def _part(line: Line, low: float, high: float, ux: float, uy: float) -> Line:
    x, y = line.start
    return Line((x + low * ux, y + low * uy), (x + high * ux, y + high * uy), line.meaning, line.board, line.width)


def _in_line(p: Point, origin: Point, ux: float, uy: float) -> Point:
    dx, dy = p[0] - origin[0], p[1] - origin[1]
    return dx * ux + dy * uy, dy * ux - dx * uy


def _length(line: Line) -> float:
    return math.dist(line.start, line.end)
