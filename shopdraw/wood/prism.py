"""The blank and its cuts as prisms in the board's frame, and which of a cut's segments leave the wood."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from itertools import pairwise

from shopdraw.shape.chord import chords
from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import Path, Point, arc_of, bounds, flattened
from shopdraw.wood.board import Cut, Face, Shape

ON_BOUNDARY_MM = 1e-6
"""Two things nearer than this are at one place."""
_ON_AN_ARC_MM = 5e-3
"""The same where arcs are tried by their chords."""

_ALONG_W = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
_AGAINST_V = Frame((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0), (0.0, 0.0, 0.0))
_ALONG_U = Frame((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), (0.0, 0.0, 0.0))


@dataclass(frozen=True, slots=True)
class Prism:
    """A prism in the board's frame.

    Attributes:
        frame: its first two axes carry the outline, the third is its run.
        outline: in the first two axes, mm.
        islands: closed paths inside the outline that don't belong to it.
        low, high: where it starts and ends along the third axis, mm.
        entry: +1 or -1, the way along the third axis that leads out of the face a cut is entered from.
    """

    frame: Frame
    outline: Path
    islands: tuple[Path, ...]
    low: float
    high: float
    entry: int


def blank_prism(shape: Shape) -> Prism:
    """The blank before any cut."""
    return Prism(_ALONG_W, shape.outline, (), -shape.thickness, 0.0, 1)


def cut_prism(outline: Path, thickness: float, cut: Cut) -> Prism:
    """The wood that a cut takes away, neither longer nor wider than it says.

    Args:
        outline: the blank's.
        thickness: the blank's, mm.
    Raises:
        ValueError: a tilted cut without a frame of its own.
    """
    u0, v0, u1, v1 = bounds(outline)
    near, far = cut.start, cut.start + cut.depth
    if cut.face is Face.TILTED:
        if cut.frame is None:
            raise ValueError(f"the {cut.kind} is tilted but has no frame: it needs the cut's frame in the board's")
        frame, low, high, entry = cut.frame, -far, -near, 1
    else:
        frame, low, high, entry = {
            Face.FACE: (_ALONG_W, -far, -near, 1),
            Face.BACK: (_ALONG_W, near - thickness, far - thickness, -1),
            Face.NEAR: (_AGAINST_V, -v0 - far, -v0 - near, 1),
            Face.FAR: (_AGAINST_V, near - v1, far - v1, -1),
            Face.FOOT: (_ALONG_U, u0 + near, u0 + far, -1),
            Face.HEAD: (_ALONG_U, u1 - far, u1 - near, 1),
        }[cut.face]
    return Prism(frame, cut.outline, cut.islands, low, high, entry)


def exit_distance(shape: Shape, prism: Prism) -> float:
    """How far a tilted cut's face must be moved outwards to leave the blank's box everywhere, mm.

    A bit enters a tilted cut through whatever wood stands over its plane.
    """
    u0, v0, u1, v1 = bounds(shape.outline)
    low, high = (u0, v0, -shape.thickness), (u1, v1, 0.0)
    out = prism.frame.w if prism.entry > 0 else (-prism.frame.w[0], -prism.frame.w[1], -prism.frame.w[2])
    level = prism.high if prism.entry > 0 else prism.low
    furthest = 0.0
    for a, b in flattened(prism.outline, 0.1):
        point = prism.frame.point((a, b, level))
        way = math.inf
        for axis in range(3):
            if out[axis] > 1e-12:
                way = min(way, (high[axis] - point[axis]) / out[axis])
            elif out[axis] < -1e-12:
                way = min(way, (low[axis] - point[axis]) / out[axis])
        furthest = max(furthest, way)
    return furthest


@lru_cache(maxsize=16384)
def open_segments(outline: Path, thickness: float, cut: Cut) -> tuple[int, ...]:
    """Which segments of a cut's outline lie on the blank's surface or outside it, so that a cutter may run out there.

    Args:
        outline: the blank's.
        thickness: the blank's, mm.
    """
    prism, ring = cut_prism(outline, thickness, cut), cut.outline
    found = [_flank_stands(outline, thickness, prism, ring, i, 0.0) for i in range(len(ring.corners))]
    return tuple(index for index, stands in enumerate(found) if stands is not Stands.IN_WOOD)


@lru_cache(maxsize=16384)
def surface_segments(outline: Path, thickness: float, prism: Prism, ring: Path, beyond_mm: float) -> tuple[int, ...]:
    """Which flanks of a prism lie on the blank's surface, so that a skin might stay there unless they are moved out.

    Args:
        outline, thickness: the blank's.
        ring: anticlockwise: the prism's outline or one of its islands.
        beyond_mm: a flank is left out if it would meet wood when it is moved outwards by so much.
    """
    return tuple(
        index
        for index in range(len(ring.corners))
        if _flank_stands(outline, thickness, prism, ring, index, 0.0) is Stands.ON_SURFACE
        and _flank_stands(outline, thickness, prism, ring, index, beyond_mm) is not Stands.IN_WOOD
    )


class Stands(Enum):
    """Where something stands to the blank; the worst of several parts counts."""

    IN_WOOD = 2
    ON_SURFACE = 1
    OUTSIDE = 0


def _flank_stands(outline: Path, thickness: float, prism: Prism, ring: Path, index: int, out: float) -> Stands:
    """How the flank over one of a ring's segments, moved outwards, stands to the blank."""
    low, high = max(prism.low, -1e5), min(prism.high, 1e5)
    run = _run_of(ring, index, out)
    margin = ON_BOUNDARY_MM if len(run) == 2 else _ON_AN_ARC_MM
    worst = Stands.OUTSIDE
    for part in (0.001, 0.25, 0.5, 0.75, 0.999):
        line = [prism.frame.point((a, b, low + (high - low) * part)) for a, b in run]
        for start, end in pairwise(line):
            for point in _middles(outline, thickness, margin, start, end):
                here = _stands(outline, thickness, margin, point)
                if here is Stands.IN_WOOD:
                    return here
                worst = max(worst, here, key=lambda stands: stands.value)
    return worst


def _run_of(ring: Path, index: int, out: float) -> list[Point]:
    """Points along one segment moved outwards: both ends, and the points between on an arc."""
    here, there = ring.corners[index], ring.corners[(index + 1) % len(ring.corners)]
    if not here.bulge:
        size = math.hypot(there.x - here.x, there.y - here.y)
        dx, dy = out * (there.y - here.y) / size, -out * (there.x - here.x) / size
        return [(here.x + dx, here.y + dy), (there.x + dx, there.y + dy)]
    points = [(c.x, c.y) for c in chords(ring, 0.001) if c.segment == index] + [(there.x, there.y)]
    arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
    grown = 1 + out / arc.radius if here.bulge > 0 else max(0.6, 1 - out / arc.radius)
    x, y = arc.centre
    return [(x + grown * (a - x), y + grown * (b - y)) for a, b in points]


def _middles(outline: Path, thickness: float, margin: float, start: Vec3, end: Vec3) -> Iterator[Vec3]:
    """Middles of the stretches that the blank's surface parts a line into."""
    if min(start[2], end[2]) > margin or max(start[2], end[2]) < -margin - thickness:
        return
    stops = _crossings(outline, (start[0], start[1]), (end[0], end[1]))
    if start[2] != end[2]:
        parts = [(level - start[2]) / (end[2] - start[2]) for level in (-margin, margin - thickness)]
        stops = sorted(stops + [part for part in parts if 0.0 < part < 1.0])
    for before, after in pairwise(stops):
        if after - before > 1e-9:
            yield _part_way(start, end, (before + after) / 2)


def _part_way(start: Vec3, end: Vec3, part: float) -> Vec3:
    return (
        start[0] + (end[0] - start[0]) * part,
        start[1] + (end[1] - start[1]) * part,
        start[2] + (end[2] - start[2]) * part,
    )


def _stands(outline: Path, thickness: float, margin: float, point: Vec3) -> Stands:
    above = max(point[2], -thickness - point[2])
    if above > margin:
        return Stands.OUTSIDE
    deep = min(-above, depth_inside(outline, (point[0], point[1])))
    if deep > margin:
        return Stands.IN_WOOD
    return Stands.ON_SURFACE if deep >= -margin else Stands.OUTSIDE


def _crossings(outline: Path, start: Point, end: Point) -> list[float]:
    """Where the line from start to end meets the outline's chords, as parts of its length, with 0 and 1."""
    points = flattened(outline, 0.05)
    dx, dy = end[0] - start[0], end[1] - start[1]
    found = [0.0, 1.0]
    for i, a in enumerate(points):
        b = points[(i + 1) % len(points)]
        ex, ey = b[0] - a[0], b[1] - a[1]
        cross = dx * ey - dy * ex
        if abs(cross) < 1e-12:
            continue
        part = ((a[0] - start[0]) * ey - (a[1] - start[1]) * ex) / cross
        along = ((a[0] - start[0]) * dy - (a[1] - start[1]) * dx) / cross
        if 0.0 < part < 1.0 and -1e-9 <= along <= 1 + 1e-9:
            found.append(part)
    return sorted(found)


def depth_inside(outline: Path, point: Point) -> float:
    """How deep a point lies inside an outline, mm; below 0 outside. Arcs are true."""
    nearest, inside = math.inf, False
    for here, there in outline.pairs():
        nearest = min(nearest, _distance((here.x, here.y), (there.x, there.y), here.bulge, point))
    points = flattened(outline)
    for i, a in enumerate(points):
        b = points[i - 1]
        crosses = (a[1] > point[1]) != (b[1] > point[1])
        if crosses and point[0] < a[0] + (b[0] - a[0]) * (point[1] - a[1]) / (b[1] - a[1]):
            inside = not inside
    return nearest if inside else -nearest


def _distance(start: Point, end: Point, bulge: float, point: Point) -> float:
    if bulge:
        arc = arc_of(start, end, bulge)
        dx, dy = point[0] - arc.centre[0], point[1] - arc.centre[1]
        if (math.degrees(math.atan2(dy, dx)) - arc.start_deg) % 360.0 <= arc.end_deg - arc.start_deg:
            return abs(math.hypot(dx, dy) - arc.radius)
        return min(math.dist(point, start), math.dist(point, end))
    dx, dy = end[0] - start[0], end[1] - start[1]
    part = ((point[0] - start[0]) * dx + (point[1] - start[1]) * dy) / (dx * dx + dy * dy)
    part = min(1.0, max(0.0, part))
    return math.hypot(point[0] - start[0] - part * dx, point[1] - start[1] - part * dy)
