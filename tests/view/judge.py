"""Judges of views: rays cast through the solids say what is seen at a point of the paper, whatever was drawn."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Line
from shopdraw.shape.frame import add, dot, scale
from shopdraw.shape.path import Point
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board
from shopdraw.wood.solid import placed_solid

_FAR = 5000.0


@dataclass(frozen=True)
class Seen:
    """The first thing a ray meets: its board, how near it is, which way its surface faces."""

    board: str
    depth: float
    normal: tuple[float, float, float]


class Judge:
    """Casts rays through boards along a direction; with a `level`, only what lies behind that depth is there."""

    def __init__(self, boards: Sequence[Board], direction: Direction, level: float | None = None) -> None:
        self.direction = direction
        self._solids = [(board.id, placed_solid(board)) for board in boards]
        if level is not None:
            away = scale(direction.toward, -1.0)
            self._solids = [(name, body.trim_by_plane(away, -level)) for name, body in self._solids]

    def seen(self, at: Point) -> Seen | None:
        """What is seen at a point of the paper."""
        return self._nearest(at, self._solids)

    def _nearest(self, at: Point, solids) -> Seen | None:
        here = add(scale(self.direction.right, at[0]), scale(self.direction.up, at[1]))
        toward = self.direction.toward
        start, end = add(here, scale(toward, _FAR)), add(here, scale(toward, -_FAR))
        found: Seen | None = None
        for name, body in solids:
            hits = body.ray_cast(start, end)
            if hits:
                depth = dot(tuple(hits[0].position), toward)
                if found is None or depth > found.depth + 1e-9:
                    found = Seen(name, depth, tuple(hits[0].normal))
        return found

    def differ(self, a: Point, b: Point) -> bool:
        """Whether two near points of the paper show different things: board, depth or slope of the surface."""
        one, other = self.seen(a), self.seen(b)
        if one is None or other is None:
            return one is not other
        if one.board != other.board:
            return True
        # a surface that runs on smoothly keeps its normal within a chord or two and its depth within its slope
        if dot(one.normal, other.normal) < math.cos(math.radians(12.0)):
            return True
        toward, apart = self.direction.toward, math.dist(a, b)
        facing = min(abs(dot(one.normal, toward)), abs(dot(other.normal, toward)))
        return abs(one.depth - other.depth) > apart * (1.5 / max(facing, 1e-3)) + 1e-6

    def idle_lines(self, marks: Sequence[Line | ArcMark], beside: float = 0.02) -> list[Line | ArcMark]:
        """Visible marks beside which, somewhere, two rays see the same thing, or neither at the depth of its board."""
        idle = []
        for mark in marks:
            for (x, y), (nx, ny) in _along(mark):
                a, b = (x + nx * beside, y + ny * beside), (x - nx * beside, y - ny * beside)
                if not self._at_its_depth(mark.board, (a, b), beside) or not self.differ(a, b):
                    idle.append(mark)
                    break
        return idle

    def _at_its_depth(self, board: str, points: Sequence[Point], beside: float) -> bool:
        """Whether one of the rays sees something as near as the board is there (at a mitre two boards are)."""
        own = [self._nearest(point, [item for item in self._solids if item[0] == board]) for point in points]
        depths = [seen.depth for seen in map(self.seen, points) if seen]
        return any(abs(one.depth - depth) < 10 * beside for one in own if one for depth in depths)

    def gaps(
        self, marks: Sequence[Line | ArcMark], scans: Sequence[tuple[Point, Point]], step: float = 0.7
    ) -> list[Point]:
        """Points on the scan lines where what is seen changes although no mark passes there."""
        missing = []
        for start, end in scans:
            size = math.dist(start, end)
            count = math.ceil(size / step)
            points = [_between(start, end, i / count) for i in range(count + 1)]
            for a, b in itertools.pairwise(points):
                if self.differ(a, b):
                    where = self._change(a, b)
                    if where is not None and all(distance(mark, where) > 0.01 for mark in marks):
                        missing.append(where)
        return missing

    def _change(self, a: Point, b: Point) -> Point | None:
        """Where between two points what is seen changes; None where it changes little by little."""
        while math.dist(a, b) > 1e-3:
            middle = _between(a, b, 0.5)
            if self.differ(a, middle):
                b = middle
            elif self.differ(middle, b):
                a = middle
            else:
                return None
        return _between(a, b, 0.5)


def distance(mark: Line | ArcMark, point: Point) -> float:
    """Distance of a point from a mark, mm."""
    if isinstance(mark, ArcMark):
        dx, dy = point[0] - mark.centre[0], point[1] - mark.centre[1]
        angle = math.degrees(math.atan2(dy, dx))
        if (angle - mark.start_deg) % 360.0 <= mark.end_deg - mark.start_deg + 1e-6:
            return abs(math.hypot(dx, dy) - mark.radius)
        ends = [_on_arc(mark, mark.start_deg), _on_arc(mark, mark.end_deg)]
        return min(math.dist(point, end) for end in ends)
    dx, dy = mark.end[0] - mark.start[0], mark.end[1] - mark.start[1]
    part = ((point[0] - mark.start[0]) * dx + (point[1] - mark.start[1]) * dy) / (dx * dx + dy * dy)
    return math.dist(point, _between(mark.start, mark.end, min(1.0, max(0.0, part))))


def _between(a: Point, b: Point, part: float) -> Point:
    return (a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part)


def _on_arc(mark: ArcMark, degrees: float) -> Point:
    radians = math.radians(degrees)
    return (mark.centre[0] + mark.radius * math.cos(radians), mark.centre[1] + mark.radius * math.sin(radians))


def _along(mark: Line | ArcMark) -> list[tuple[Point, Point]]:
    """Points along a mark with the direction square to it there; none near its ends."""
    parts = (0.07, 0.31, 0.52, 0.71, 0.93)
    if isinstance(mark, ArcMark):
        angles = [mark.start_deg + (mark.end_deg - mark.start_deg) * part for part in parts]
        return [
            (_on_arc(mark, a), (math.cos(math.radians(a)), math.sin(math.radians(a)))) for a in angles
        ]
    dx, dy = mark.end[0] - mark.start[0], mark.end[1] - mark.start[1]
    size = math.hypot(dx, dy)
    return [(_between(mark.start, mark.end, part), (-dy / size, dx / size)) for part in parts if size > 0.2]
