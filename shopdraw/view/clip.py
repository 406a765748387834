"""Part of a view: marks cut off at a circle or an upright box. Arcs stay true arcs."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from shopdraw.drawing.mark import ArcMark, Area, Line, Mark
from shopdraw.shape.path import Corner, Path, Point, flattened, signed_area

_NEAR = 1e-7
_CHORD_MM = 0.05
"""How far a clipped area's straight edges may lie from its arcs; its outline is drawn by true arcs."""
_SIDES = 96


@dataclass(frozen=True, slots=True)
class Window:
    """What is kept.

    Attributes:
        centre: of a circle; for a box its middle.
        radius: of a circle, else 0.
        half: half of a box's width and height, else 0.
    """

    centre: Point
    radius: float = 0.0
    half: Point = (0.0, 0.0)

    @staticmethod
    def circle(centre: Point, radius: float) -> Window:
        """A round window, mm."""
        return Window(centre, radius)

    @staticmethod
    def box(x0: float, y0: float, x1: float, y1: float) -> Window:
        """An upright box between two corners, mm."""
        return Window(((x0 + x1) / 2, (y0 + y1) / 2), 0.0, (abs(x1 - x0) / 2, abs(y1 - y0) / 2))

    def holds(self, p: Point) -> bool:
        """Whether a point lies inside."""
        dx, dy = p[0] - self.centre[0], p[1] - self.centre[1]
        if self.radius:
            return math.hypot(dx, dy) <= self.radius + _NEAR
        return abs(dx) <= self.half[0] + _NEAR and abs(dy) <= self.half[1] + _NEAR

    def corners(self) -> tuple[Point, ...]:
        """A convex outline, anticlockwise: the box, or many sides for the circle."""
        x, y = self.centre
        if self.radius:
            angles = [2 * math.pi * i / _SIDES for i in range(_SIDES)]
            return tuple((x + self.radius * math.cos(a), y + self.radius * math.sin(a)) for a in angles)
        w, h = self.half
        return (x - w, y - h), (x + w, y - h), (x + w, y + h), (x - w, y + h)

    def crossings(self, start: Point, end: Point) -> tuple[float, ...]:
        """Where a line meets the edge, as parts of its length, sorted."""
        dx, dy = end[0] - start[0], end[1] - start[1]
        fx, fy = start[0] - self.centre[0], start[1] - self.centre[1]
        if self.radius:
            a, b, c = dx * dx + dy * dy, 2 * (fx * dx + fy * dy), fx * fx + fy * fy - self.radius**2
            root = b * b - 4 * a * c
            found = (
                [] if a < 1e-18 or root <= 0 else [(-b - math.sqrt(root)) / (2 * a), (-b + math.sqrt(root)) / (2 * a)]
            )
        else:
            found = []
            for f, d, w in ((fx, dx, self.half[0]), (fy, dy, self.half[1])):
                if abs(d) > 1e-12:
                    found += [(-w - f) / d, (w - f) / d]
        return tuple(sorted(t for t in found if 0.0 < t < 1.0))


def clipped(marks: Sequence[Mark], window: Window) -> tuple[Mark, ...]:
    """The marks inside a window: lines, arcs and areas cut off at its edge, words and ends whole or not at all."""
    return tuple(piece for mark in marks for piece in _pieces(mark, window))


def _pieces(mark: Mark, window: Window) -> Iterator[Mark]:
    if isinstance(mark, Line):
        yield from _line_pieces(mark, window)
    elif isinstance(mark, ArcMark):
        yield from _arc_pieces(mark, window)
    elif isinstance(mark, Area):
        yield from _area_pieces(mark, window)
    else:
        at = getattr(mark, "centre", None) or getattr(mark, "tip", None) or getattr(mark, "at", None)
        if at is not None and window.holds(at):
            yield mark


def _line_pieces(mark: Line, window: Window) -> Iterator[Line]:
    (ax, ay), (bx, by) = mark.start, mark.end
    places = (0.0, *window.crossings(mark.start, mark.end), 1.0)
    for low, high in pairwise(places):
        middle = (low + high) / 2
        if high - low > 1e-9 and window.holds((ax + middle * (bx - ax), ay + middle * (by - ay))):
            p = (ax + low * (bx - ax), ay + low * (by - ay))
            q = (ax + high * (bx - ax), ay + high * (by - ay))
            if math.dist(p, q) > _NEAR:
                yield replace(mark, start=p, end=q)


def _arc_pieces(mark: ArcMark, window: Window) -> Iterator[ArcMark]:
    start, turn = mark.start_deg, (mark.end_deg - mark.start_deg) or 360.0
    turn = turn % 360.0 or 360.0
    places = sorted({0.0, turn, *(t for a in _edge_angles(mark, window) if 0.0 < (t := (a - start) % 360.0) < turn)})
    for low, high in pairwise(places):
        middle = math.radians(start + (low + high) / 2)
        point = (mark.centre[0] + mark.radius * math.cos(middle), mark.centre[1] + mark.radius * math.sin(middle))
        if high - low > 1e-9 and window.holds(point):
            yield replace(mark, start_deg=start + low, end_deg=start + high)


def _edge_angles(mark: ArcMark, window: Window) -> Iterator[float]:
    """Where the whole circle of an arc meets the window's edge, degrees."""
    cx, cy, r = mark.centre[0], mark.centre[1], mark.radius
    if window.radius:
        dx, dy = window.centre[0] - cx, window.centre[1] - cy
        apart = math.hypot(dx, dy)
        if apart < 1e-12 or apart > r + window.radius or apart < abs(r - window.radius):
            return
        off = math.acos(max(-1.0, min(1.0, (apart**2 + r**2 - window.radius**2) / (2 * apart * r))))
        toward = math.atan2(dy, dx)
        yield math.degrees(toward - off)
        yield math.degrees(toward + off)
        return
    for axis, middle, half in ((0, window.centre[0], window.half[0]), (1, window.centre[1], window.half[1])):
        for edge in (middle - half, middle + half):
            share = (edge - (cx, cy)[axis]) / r
            if abs(share) <= 1.0:
                angle = math.degrees(math.acos(share) if axis == 0 else math.asin(share))
                yield angle
                yield -angle if axis == 0 else 180.0 - angle


def _area_pieces(mark: Area, window: Window) -> Iterator[Area]:
    corners = flattened(mark.outline, _CHORD_MM)
    if all(window.holds(p) for p in corners):
        yield mark
        return
    outline = _held(corners, window)
    if outline is None:
        return
    islands = (_held(flattened(island, _CHORD_MM), window) for island in mark.islands)
    yield replace(mark, outline=outline, islands=tuple(island for island in islands if island is not None))


def _held(corners: Sequence[Point], window: Window) -> Path | None:
    """A straight-sided outline held to a convex window (Sutherland and Hodgman); None where nothing is left of it."""
    kept = list(corners)
    edges = window.corners()
    for a, b in zip(edges, (*edges[1:], edges[0]), strict=True):
        kept = list(_beside(kept, a, b))
        if not kept:
            return None
    clean: list[Point] = []
    for p in kept:
        if not clean or math.dist(clean[-1], p) > 1e-6:
            clean.append(p)
    while len(clean) > 1 and math.dist(clean[0], clean[-1]) <= 1e-6:
        clean.pop()
    if len(clean) < 3:
        return None
    path = Path(tuple(Corner(x, y) for x, y in clean))
    return path if abs(signed_area(path)) > 1e-6 else None


def _beside(corners: Sequence[Point], a: Point, b: Point) -> Iterator[Point]:
    """The part of an outline on the left of a line."""

    def side(p: Point) -> float:
        return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])

    for p, q in zip(corners, (*corners[1:], corners[0]), strict=True):
        here, there = side(p), side(q)
        if here >= 0:
            yield p
        if (here > 0) != (there > 0) and abs(here - there) > 1e-15 and here != 0 and there != 0:
            t = here / (here - there)
            yield p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])
