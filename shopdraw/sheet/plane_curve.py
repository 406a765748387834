"""Straight lines and arcs in a plane: parted where they meet, and joined again. True-size mm."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from shopdraw.shape.path import Point

_TOUCH = 1e-6
_LEAST = 1e-5


@dataclass(frozen=True, slots=True)
class Straight:
    """A straight line."""

    start: Point
    end: Point

    def middle(self) -> Point:
        """Half way along it."""
        return (self.start[0] + self.end[0]) / 2, (self.start[1] + self.end[1]) / 2

    def normal(self) -> Point:
        """Unit direction square to it, to the left."""
        long = math.dist(self.start, self.end)
        return -(self.end[1] - self.start[1]) / long, (self.end[0] - self.start[0]) / long

    def box(self) -> tuple[float, float, float, float]:
        """Upright box round it."""
        (ax, ay), (bx, by) = self.start, self.end
        return min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)


@dataclass(frozen=True, slots=True)
class Turned:
    """An arc, anticlockwise from `start_deg` to `end_deg`."""

    centre: Point
    radius: float
    start_deg: float
    end_deg: float

    def point(self, degrees: float) -> Point:
        """A point of its circle."""
        a = math.radians(degrees)
        return self.centre[0] + self.radius * math.cos(a), self.centre[1] + self.radius * math.sin(a)

    def middle(self) -> Point:
        """Half way along it."""
        return self.point((self.start_deg + self.end_deg) / 2)

    def normal(self) -> Point:
        """Unit direction square to it at its middle, outwards."""
        a = math.radians((self.start_deg + self.end_deg) / 2)
        return math.cos(a), math.sin(a)

    def box(self) -> tuple[float, float, float, float]:
        """Upright box round its circle."""
        (x, y), r = self.centre, self.radius
        return x - r, y - r, x + r, y + r


Curve = Straight | Turned


def pieces(curves: Sequence[Curve]) -> Iterator[Curve]:
    """The curves parted wherever two of them cross or touch; pieces that lie on each other are there once."""
    curves = tuple(dict.fromkeys(curves))
    boxes = np.array([curve.box() for curve in curves]).reshape(-1, 4)
    told: set[tuple[float, ...]] = set()
    for i, curve in enumerate(curves):
        x0, y0, x1, y1 = boxes[i]
        places: list[float] = [0.0, 1.0]
        near = (boxes[:, :2] <= (x1 + _TOUCH, y1 + _TOUCH)) & (boxes[:, 2:] >= (x0 - _TOUCH, y0 - _TOUCH))
        for j in np.flatnonzero(near.all(axis=1)).tolist():
            if i != j:
                places += _places(curve, curves[j])
        for piece in _parts(curve, sorted(places)):
            x, y = piece.middle()
            nx, ny = piece.normal()
            key = (round(x, 4), round(y, 4), round(abs(nx * ny), 3), isinstance(piece, Straight))
            if key not in told:
                told.add(key)
                yield piece


def joined(curves: Iterable[Curve]) -> Iterator[Curve]:
    """Pieces that run on into each other as one."""
    lines: dict[tuple[float, float, float], _Together] = {}
    arcs: dict[tuple[float, float, float], _Together] = {}
    for curve in curves:
        if isinstance(curve, Straight):
            (ax, ay), (bx, by) = sorted((curve.start, curve.end))
            long = math.hypot(bx - ax, by - ay)
            c, s = (bx - ax) / long, (by - ay) / long
            off = ay * c - ax * s
            key = (round(c, 7) + 0.0, round(s, 7) + 0.0, round(off, 4) + 0.0)
            lines.setdefault(key, _Together((c, s, off), [])).spans.append((ax * c + ay * s, bx * c + by * s))
        else:
            where = (*curve.centre, curve.radius)
            key = (round(where[0], 4), round(where[1], 4), round(where[2], 4))
            arcs.setdefault(key, _Together(where, [])).spans.append((curve.start_deg, curve.end_deg))
    for line in lines.values():
        c, s, off = line.exact
        for low, high in _run_together(line.spans, 1e-4):
            yield Straight((low * c - off * s, low * s + off * c), (high * c - off * s, high * s + off * c))
    for arc in arcs.values():
        x, y, radius = arc.exact
        for low, high in _run_together(arc.spans, 1e-6):
            yield Turned((x, y), radius, low, high)


@dataclass(slots=True)
class _Together:
    """Pieces of one line or circle: its exact numbers as first met, and their spans along it."""

    exact: tuple[float, float, float]
    spans: list[tuple[float, float]]


def _run_together(spans: list[tuple[float, float]], slack: float) -> Iterator[tuple[float, float]]:
    spans = sorted(spans)
    low, high = spans[0]
    for start, end in spans[1:]:
        if start <= high + slack:
            high = max(high, end)
        else:
            yield low, high
            low, high = start, end
    yield low, high


def _parts(curve: Curve, places: list[float]) -> Iterator[Curve]:
    for low, high in pairwise(places):
        if isinstance(curve, Straight):
            if (high - low) * math.dist(curve.start, curve.end) > _LEAST:
                yield Straight(_between(curve, low), _between(curve, high))
        elif (high - low) * math.radians(curve.end_deg - curve.start_deg) * curve.radius > _LEAST:
            sweep = curve.end_deg - curve.start_deg
            yield Turned(curve.centre, curve.radius, curve.start_deg + low * sweep, curve.start_deg + high * sweep)


def _between(line: Straight, share: float) -> Point:
    (ax, ay), (bx, by) = line.start, line.end
    return ax + share * (bx - ax), ay + share * (by - ay)


def _places(curve: Curve, other: Curve) -> Iterator[float]:
    """Shares of the way along a curve at which another one meets it."""
    points = _meeting_points(curve, other)
    ends = (
        (other.start, other.end)
        if isinstance(other, Straight)
        else (other.point(other.start_deg), other.point(other.end_deg))
    )
    for point in (*points, *ends):
        share = _share(curve, point)
        if share is not None:
            yield share


def _share(curve: Curve, point: Point) -> float | None:
    """How far along a curve a point lies, if it lies on it."""
    if isinstance(curve, Straight):
        (ax, ay), (bx, by) = curve.start, curve.end
        long = math.hypot(bx - ax, by - ay)
        off = ((bx - ax) * (point[1] - ay) - (by - ay) * (point[0] - ax)) / long
        share = ((bx - ax) * (point[0] - ax) + (by - ay) * (point[1] - ay)) / long**2
        return share if abs(off) < _TOUCH and 0.0 < share < 1.0 else None
    if abs(math.dist(curve.centre, point) - curve.radius) > _TOUCH:
        return None
    angle = math.degrees(math.atan2(point[1] - curve.centre[1], point[0] - curve.centre[0]))
    share = ((angle - curve.start_deg) % 360.0) / (curve.end_deg - curve.start_deg)
    return share if 0.0 < share < 1.0 else None


def _meeting_points(one: Curve, two: Curve) -> tuple[Point, ...]:
    if isinstance(one, Straight):
        return _line_line(one, two) if isinstance(two, Straight) else _line_circle(one, two)
    return _line_circle(two, one) if isinstance(two, Straight) else _circles(one, two)


def _line_line(one: Straight, two: Straight) -> tuple[Point, ...]:
    (ax, ay), (bx, by) = one.start, one.end
    (cx, cy), (dx, dy) = two.start, two.end
    rx, ry, sx, sy = bx - ax, by - ay, dx - cx, dy - cy
    turn = rx * sy - ry * sx
    if abs(turn) < 1e-12 * math.hypot(rx, ry) * math.hypot(sx, sy):
        return ()
    t = ((cx - ax) * sy - (cy - ay) * sx) / turn
    s = ((cx - ax) * ry - (cy - ay) * rx) / turn
    slack = _TOUCH / math.hypot(sx, sy)
    return ((ax + t * rx, ay + t * ry),) if -slack <= s <= 1 + slack else ()


def _line_circle(line: Straight, arc: Turned) -> tuple[Point, ...]:
    (ax, ay), (bx, by) = line.start, line.end
    dx, dy = bx - ax, by - ay
    fx, fy = ax - arc.centre[0], ay - arc.centre[1]
    a, b, c = dx * dx + dy * dy, 2 * (fx * dx + fy * dy), fx * fx + fy * fy - arc.radius**2
    root = b * b - 4 * a * c
    if root < 0:
        return ()
    return tuple(
        (ax + t * dx, ay + t * dy) for t in ((-b - math.sqrt(root)) / (2 * a), (-b + math.sqrt(root)) / (2 * a))
    )


def _circles(one: Turned, two: Turned) -> tuple[Point, ...]:
    apart = math.dist(one.centre, two.centre)
    if apart < 1e-9 or apart > one.radius + two.radius or apart < abs(one.radius - two.radius):
        return ()
    along = (one.radius**2 - two.radius**2 + apart**2) / (2 * apart)
    across = math.sqrt(max(0.0, one.radius**2 - along**2))
    ux, uy = (two.centre[0] - one.centre[0]) / apart, (two.centre[1] - one.centre[1]) / apart
    x, y = one.centre[0] + along * ux, one.centre[1] + along * uy
    return (x - uy * across, y + ux * across), (x + uy * across, y - ux * across)
