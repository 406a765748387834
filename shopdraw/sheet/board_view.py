"""A board's own views, drawn from its outline and cuts with true arcs: face, other face, edges and ends.

No solid and no mesh: every edge of the blank and of each cut is a candidate line of the view; it is drawn where the
wood at its two sides lies at another depth or at another slope.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning
from shopdraw.shape.frame import Vec3, dot
from shopdraw.shape.path import Arc, Path, Point, arc_of, bounds, flattened
from shopdraw.sheet.plane_curve import Curve, Straight, Turned, joined, pieces
from shopdraw.wood.board import Face, Shape
from shopdraw.wood.prism import Prism, blank_prism, cut_prism

_BESIDE = 0.01
"""How far beside a line the wood is looked at, mm."""
_JUMP = 1e-4
_SLIVER = 1e-6
_FAR = 1e7


@dataclass(frozen=True, slots=True)
class Plane:
    """A view of a board: directions in the board's frame (u, v, w) to the right, up and towards the reader."""

    right: Vec3
    up: Vec3
    toward: Vec3

    def at(self, p: Vec3) -> Point:
        """Where a point of the board stands in the view, mm."""
        return dot(p, self.right), dot(p, self.up)


PLANES = {
    Face.FACE: Plane((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    Face.BACK: Plane((1.0, 0.0, 0.0), (0.0, -1.0, 0.0), (0.0, 0.0, -1.0)),
    Face.NEAR: Plane((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0)),
    Face.FAR: Plane((1.0, 0.0, 0.0), (0.0, 0.0, -1.0), (0.0, 1.0, 0.0)),
    Face.FOOT: Plane((0.0, 0.0, 1.0), (0.0, 1.0, 0.0), (-1.0, 0.0, 0.0)),
    Face.HEAD: Plane((0.0, 0.0, -1.0), (0.0, 1.0, 0.0), (1.0, 0.0, 0.0)),
}
"""The foot's end lies left in all of them; the other face is turned about the long edge."""


@lru_cache(maxsize=1024)
def board_marks(shape: Shape, face: Face, board: str = "") -> tuple[Mark, ...]:
    """The visible edges of a board seen square to one of its faces, in the plane of `PLANES`, true-size mm.

    Args:
        shape: outline and cuts.
        face: which face looks at the reader.
        board: id that the marks carry.
    """
    plane = PLANES[face]
    blank = blank_prism(shape)
    cuts = tuple(cut_prism(shape.outline, shape.thickness, cut) for cut in shape.cuts)
    candidates = [*_projected(blank, plane), *_meetings(shape, cuts, plane)]
    for cut in cuts:
        candidates += _projected(cut, plane)
    wood = _Wood(blank, cuts, plane)
    seen = [piece for piece in pieces(candidates) if wood.edge_at(piece)]
    return tuple(_mark(curve, board) for curve in joined(seen))


def _mark(curve: Curve, board: str) -> Mark:
    if isinstance(curve, Straight):
        return Line(curve.start, curve.end, Meaning.VISIBLE, board)
    return ArcMark(curve.centre, curve.radius, curve.start_deg, curve.end_deg, Meaning.VISIBLE, board)


def _projected(prism: Prism, plane: Plane) -> Iterator[Curve]:
    """Every edge of a prism as it lies in the view."""
    along = dot(prism.frame.w, plane.toward)

    def at(a: float, b: float, c: float) -> Point:
        return plane.at(prism.frame.point((a, b, c)))

    for path in (prism.outline, *prism.islands):
        if abs(along) > 1 - 1e-12:
            turned = _turns_over(prism, plane)
            for (ax, ay, bulge), (bx, by, _) in path.pairs():
                p, q = at(ax, ay, prism.low), at(bx, by, prism.low)
                if bulge:
                    arc = arc_of(p, q, -bulge if turned else bulge)
                    yield Turned(arc.centre, arc.radius, arc.start_deg, arc.end_deg)
                else:
                    yield Straight(p, q)
            continue
        corners = [(c.x, c.y) for c in path.corners]
        x0, y0, x1, y1 = bounds(path)
        rims = list(flattened(path, 0.05)) if len(corners) < 3 or any(c.bulge for c in path.corners) else corners
        edge_on = abs(along) < 1e-12
        for a, b in (*corners, *(_extremes(path) if edge_on and rims is not corners else ())):
            yield from _line(at(a, b, prism.low), at(a, b, prism.high))
        for level in (prism.low, prism.high):
            if edge_on:
                ends = [at(a, b, level) for a, b in ((x0, y0), (x1, y1), (x0, y1), (x1, y0))]
                yield from _line(min(ends), max(ends))
            else:
                points = [at(a, b, level) for a, b in rims]
                for p, q in zip(points, [*points[1:], points[0]], strict=True):
                    yield from _line(p, q)


def _extremes(path: Path) -> tuple[Point, ...]:
    """Points at the least and greatest coordinates of a path with arcs: where a round side stands against the view."""
    x0, y0, x1, y1 = bounds(path)
    return (x0, y0), (x1, y1)


def _turns_over(prism: Prism, plane: Plane) -> bool:
    a, b = plane.at(prism.frame.u), plane.at(prism.frame.v)
    return a[0] * b[1] - a[1] * b[0] < 0


def _line(p: Point, q: Point) -> Iterator[Straight]:
    if math.dist(p, q) > _SLIVER:
        yield Straight(p, q)


def _meetings(shape: Shape, cuts: Sequence[Prism], plane: Plane) -> Iterator[Curve]:
    """Edges where the flanks of cuts that run across the view meet each other and the blank's faces."""
    u0, v0, u1, v1 = bounds(shape.outline)
    faces = (
        ((1.0, 0.0, 0.0), (u0, u1)),
        ((0.0, 1.0, 0.0), (v0, v1)),
        ((0.0, 0.0, 1.0), (-shape.thickness, 0.0)),
    )
    for i, one in enumerate(cuts):
        if abs(dot(one.frame.w, plane.toward)) > 1e-12:
            continue
        sloped = [s for s in _flanks(one) if abs(s[0][0] - s[1][0]) > _SLIVER and abs(s[0][1] - s[1][1]) > _SLIVER]
        others: list[tuple[Point, Point]] = []
        for axis, levels in faces:
            if abs(dot(axis, one.frame.w)) > 1e-12:
                continue
            a, b = dot(axis, one.frame.u), dot(axis, one.frame.v)
            others += [
                ((level / a, -_FAR), (level / a, _FAR)) if abs(a) > 0.5 else ((-_FAR, level / b), (_FAR, level / b))
                for level in levels
            ]
        for two in cuts[i + 1 :]:
            if one.frame == two.frame:
                others += _flanks(two)
        for flank in sloped:
            for other in others:
                point = _crossing(flank, other)
                if point is not None:
                    ends = [plane.at(one.frame.point((*point, level))) for level in (one.low, one.high)]
                    yield from _line(*ends)


def _flanks(prism: Prism) -> list[tuple[Point, Point]]:
    return [
        ((a.x, a.y), (b.x, b.y)) for path in (prism.outline, *prism.islands) for a, b in path.pairs() if not a.bulge
    ]


def _crossing(one: tuple[Point, Point], two: tuple[Point, Point]) -> Point | None:
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = two
    rx, ry, sx, sy = bx - ax, by - ay, dx - cx, dy - cy
    turn = rx * sy - ry * sx
    if abs(turn) < 1e-12 * math.hypot(rx, ry) * math.hypot(sx, sy):
        return None
    t = ((cx - ax) * sy - (cy - ay) * sx) / turn
    s = ((cx - ax) * ry - (cy - ay) * rx) / turn
    return (ax + t * rx, ay + t * ry) if -1e-9 <= t <= 1 + 1e-9 and -1e-9 <= s <= 1 + 1e-9 else None


class _Wood:
    """Where the wood first stands behind a point of the view."""

    def __init__(self, blank: Prism, cuts: Sequence[Prism], plane: Plane) -> None:
        self._plane = plane
        self._blank = _Seen(blank, plane)
        self._cuts = tuple(_Seen(cut, plane) for cut in cuts)

    def edge_at(self, curve: Curve) -> bool:
        """Whether the wood jumps or bends along the middle of a line."""
        (x, y), (nx, ny) = curve.middle(), curve.normal()
        cuts = [cut for cut in self._cuts if cut.near(x, y, 2 * _BESIDE)]
        left, left_far, right, right_far = (
            self._depth(x + nx * by, y + ny * by, cuts) for by in (_BESIDE, 2 * _BESIDE, -_BESIDE, -2 * _BESIDE)
        )
        if math.isinf(left) or math.isinf(right):
            return math.isinf(left) != math.isinf(right)
        left_slope, right_slope = left - left_far, right_far - right
        bend = 0.02 * _BESIDE + 0.02 * (abs(left_slope) + abs(right_slope))
        reach = abs(left_slope) + abs(right_slope) + _JUMP
        if abs(left - right) > 2 * reach + 1e-3:
            return True
        if math.isinf(left_far) or math.isinf(right_far):
            return abs(left - right) > _JUMP
        jump = (2 * left - left_far) - (2 * right - right_far)
        return abs(jump) > _JUMP or abs(left_slope - right_slope) > bend

    def _depth(self, x: float, y: float, cuts: Sequence[_Seen]) -> float:
        """From the plane of the board's origin back to the first wood, mm; infinite where there is none.

        Args:
            cuts: those that the line of sight may meet.
        """
        wood = self._blank.spans(x, y)
        if not wood:
            return math.inf
        gone = sorted(span for cut in cuts for span in cut.spans(x, y))
        for low, high in sorted(wood):
            at = low
            for start, end in gone:
                if start > at + _SLIVER:
                    break
                at = max(at, end)
            if at < high - _SLIVER:
                return at
        return math.inf


class _Seen:
    """A prism as a line of sight passes through it."""

    def __init__(self, prism: Prism, plane: Plane) -> None:
        frame = prism.frame
        self._low, self._high = prism.low, prism.high
        self._paths = (prism.outline, *prism.islands)
        self._sides = tuple(
            (x0, y0, x1, y1, arc_of((x0, y0), (x1, y1), bulge) if bulge else None)
            for path in self._paths
            for (x0, y0, bulge), (x1, y1, _) in path.pairs()
        )
        away = (-plane.toward[0], -plane.toward[1], -plane.toward[2])
        axes = (frame.u, frame.v, frame.w)
        # A place (x, y) of the view's plane along each axis of the prism: x and y by these, and this much more.
        self._onto = tuple((dot(plane.right, axis), dot(plane.up, axis), -dot(frame.at, axis)) for axis in axes)
        self._way = tuple(dot(away, axis) for axis in axes)
        self._box = bounds(prism.outline)
        self._shadow = _shadow(prism, plane)

    def near(self, x: float, y: float, by: float) -> bool:
        """Whether a line of sight so near to a point of the view may pass through it."""
        left, foot, far, top = self._shadow
        return left - by <= x <= far + by and foot - by <= y <= top + by

    def spans(self, x: float, y: float) -> list[tuple[float, float]]:
        """Where the line of sight lies inside: distances behind the view's plane through the board's origin."""
        left, foot, far, top = self._shadow
        if not (left <= x <= far and foot <= y <= top):
            return []
        (ax, ay, a0), (bx, by, b0), (cx, cy, c0) = self._onto
        a, b, c = ax * x + ay * y + a0, bx * x + by * y + b0, cx * x + cy * y + c0
        da, db, dc = self._way
        if abs(dc) > 1 - 1e-12:
            x0, y0, x1, y1 = self._box
            if not (x0 <= a <= x1 and y0 <= b <= y1) or sum(inside(path, (a, b)) for path in self._paths) % 2 == 0:
                return []
            ends = sorted(((self._low - c) / dc, (self._high - c) / dc))
            return [(ends[0], ends[1])]
        if abs(dc) < 1e-12:
            if not self._low <= c <= self._high:
                return []
            near, far = -math.inf, math.inf
        else:
            near, far = sorted(((self._low - c) / dc, (self._high - c) / dc))
        places = sorted(_hits(self._sides, (a, b), (da, db)))
        spans = [(max(s, near), min(e, far)) for s, e in zip(places[::2], places[1::2], strict=False)]
        return [(s, e) for s, e in spans if e > s]


def _shadow(prism: Prism, plane: Plane) -> tuple[float, float, float, float]:
    """A box in the view that holds all of a prism, with a hair of air: beside it no line of sight meets the prism."""
    x0, y0, x1, y1 = bounds(prism.outline)
    points = [
        plane.at(prism.frame.point((a, b, c))) for a in (x0, x1) for b in (y0, y1) for c in (prism.low, prism.high)
    ]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs) - _JUMP, min(ys) - _JUMP, max(xs) + _JUMP, max(ys) + _JUMP


def inside(path: Path, point: Point) -> bool:
    """Whether a point lies inside a closed path; exact for arcs."""
    x, y = point
    found = False
    for (x0, y0, bulge), (x1, y1, _) in path.pairs():
        if (y0 > y) != (y1 > y) and x < x0 + (y - y0) * (x1 - x0) / (y1 - y0):
            found = not found
        if bulge:
            arc = arc_of((x0, y0), (x1, y1), bulge)
            side = (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0)
            if math.dist(arc.centre, point) < arc.radius and side * bulge < 0:
                found = not found
    return found


_Side = tuple[float, float, float, float, Arc | None]
"""A side of an outline: its start, its end, the arc that it is."""


def _hits(sides: Sequence[_Side], start: Point, way: Point) -> list[float]:
    """Where a straight line crosses sides, as multiples of `way` from `start`."""
    (px, py), (dx, dy) = start, way
    square = dx * dx + dy * dy
    found: list[float] = []
    for x0, y0, x1, y1, arc in sides:
        if arc is not None:
            found += _arc_hits(arc, start, way)
            continue
        one = (x0 - px) * dy - (y0 - py) * dx
        two = (x1 - px) * dy - (y1 - py) * dx
        if (one > 0) != (two > 0):
            share = one / (one - two)
            x, y = x0 + share * (x1 - x0), y0 + share * (y1 - y0)
            found.append(((x - px) * dx + (y - py) * dy) / square)
    return found


def _arc_hits(arc: Arc, start: Point, way: Point) -> Iterator[float]:
    (px, py), (dx, dy) = start, way
    fx, fy = px - arc.centre[0], py - arc.centre[1]
    a, b, c = dx * dx + dy * dy, 2 * (fx * dx + fy * dy), fx * fx + fy * fy - arc.radius**2
    root = b * b - 4 * a * c
    if root <= 0:
        return
    for sign in (-1.0, 1.0):
        t = (-b + sign * math.sqrt(root)) / (2 * a)
        angle = math.degrees(math.atan2(fy + t * dy, fx + t * dx))
        if (angle - arc.start_deg) % 360.0 < arc.end_deg - arc.start_deg:
            yield t
