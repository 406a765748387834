"""How the flanks of a cut stand to the blank: in its wood, on its surface, or outside."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from enum import Enum
from functools import lru_cache
from itertools import pairwise

from shopdraw.shape.chord import chords
from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.inside import depth_inside
from shopdraw.shape.path import Path, Point, arc_of, bounds, flattened
from shopdraw.wood.board import Cut
from shopdraw.wood.prism import ON_BOUNDARY_MM, Prism, cut_prism

_ON_AN_ARC_MM = 5e-3
"""What counts as on the surface where arcs are tried by their chords."""


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
    if _lies_within(outline, thickness, prism, ring):
        return ()
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
    plain = _side_of_box(outline, thickness, prism.frame)
    if plain is not None:
        (across_low, across_high), box = plain
        if min(high, across_high) - max(low, across_low) <= ON_BOUNDARY_MM:
            return Stands.OUTSIDE
        if _lies_well_inside(box, ring, index, out):
            return Stands.IN_WOOD
    run = _run_of(ring, index, out)
    margin = ON_BOUNDARY_MM if len(run) == 2 else _ON_AN_ARC_MM
    if plain is not None:
        return _worst(_stands_in_plane(box, start, end, margin) for start, end in pairwise(run))
    lines = (
        [prism.frame.point((a, b, level)) for a, b in run] for level in _levels(prism, thickness, low, high)
    )
    return _worst(
        _stands(outline, thickness, margin, point)
        for line in lines
        for start, end in pairwise(line)
        for point in _middles(outline, thickness, margin, start, end)
    )


def _lies_within(outline: Path, thickness: float, prism: Prism, ring: Path) -> bool:
    """Whether all flanks run in the wood of a rectangular blank: a quick answer for most mortises and grooves."""
    plain = _side_of_box(outline, thickness, prism.frame)
    if plain is None:
        return False
    (across_low, across_high), box = plain
    u0, v0, u1, v1 = bounds(ring)
    clear = min(u0 - box[0], v0 - box[1], box[2] - u1, box[3] - v1)
    return clear > 2 * _ON_AN_ARC_MM and min(prism.high, across_high) - max(prism.low, across_low) > ON_BOUNDARY_MM


def _lies_well_inside(box: Box, ring: Path, index: int, out: float) -> bool:
    """Whether a segment, moved outwards, keeps off a rectangle's sides by more than any margin: most mortises do."""
    here, there = ring.corners[index], ring.corners[(index + 1) % len(ring.corners)]
    # an arc of up to half a circle keeps within its height over the chord
    size = math.hypot(there.x - here.x, there.y - here.y)
    if abs(here.bulge) > 1.0 or size <= 3 * _ON_AN_ARC_MM:
        return False
    air = out + size / 2 * abs(here.bulge) + 2 * _ON_AN_ARC_MM
    x0, y0, x1, y1 = box[0] + air, box[1] + air, box[2] - air, box[3] - air
    return x0 < here.x < x1 and x0 < there.x < x1 and y0 < here.y < y1 and y0 < there.y < y1


def _worst(found: Iterable[Stands]) -> Stands:
    worst = Stands.OUTSIDE
    for here in found:
        if here is Stands.IN_WOOD:
            return here
        if here is Stands.ON_SURFACE:
            worst = here
    return worst


def _levels(prism: Prism, thickness: float, low: float, high: float) -> tuple[float, ...]:
    """Where along a prism its flanks are looked at: once, if it runs square to the blank's outline."""
    if abs(prism.frame.w[2]) == 1.0:
        low, high = max(low, -thickness), min(high, 0.0)
        return ((low + high) / 2,) if high - low > ON_BOUNDARY_MM else ()
    return tuple(low + (high - low) * part for part in (0.001, 0.25, 0.5, 0.75, 0.999))


Box = tuple[float, float, float, float]


@lru_cache(maxsize=4096)
def _side_of_box(outline: Path, thickness: float, frame: Frame) -> tuple[tuple[float, float], Box] | None:
    """For a rectangular blank and a prism square to its faces: its extent along the prism, and its box across it."""
    slanting = any(here.bulge or (here.x != there.x and here.y != there.y) for here, there in outline.pairs())
    if slanting or len(outline.corners) != 4:
        return None
    if any(abs(value) not in (0.0, 1.0) for axis in (frame.u, frame.v, frame.w) for value in axis):
        return None
    u0, v0, u1, v1 = bounds(outline)
    a, b = frame.local((u0, v0, -thickness)), frame.local((u1, v1, 0.0))
    box = (min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]))
    return (min(a[2], b[2]), max(a[2], b[2])), box


def _stands_in_plane(box: Box, start: Point, end: Point, margin: float) -> Stands:
    """How a line stands to a rectangle, both in a prism's plane."""
    if _length_inside(box, start, end, -margin) > margin:
        return Stands.IN_WOOD
    return Stands.ON_SURFACE if _length_inside(box, start, end, margin) > 2 * margin else Stands.OUTSIDE


def _length_inside(box: Box, start: Point, end: Point, grown: float) -> float:
    """How much of a line lies inside a rectangle grown on all sides, mm."""
    low, high = 0.0, 1.0
    for axis in (0, 1):
        least, most = box[axis] - grown, box[axis + 2] + grown
        way = end[axis] - start[axis]
        if way == 0.0:
            if not least < start[axis] < most:
                return 0.0
            continue
        first, last = (least - start[axis]) / way, (most - start[axis]) / way
        low, high = max(low, min(first, last)), min(high, max(first, last))
    return max(0.0, high - low) * math.dist(start, end)


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
