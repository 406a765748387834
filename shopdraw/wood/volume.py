"""Exact volumes, weights and centres of mass, by slabs.

The blank, less what each cluster of cuts takes from it: cuts whose boxes don't overlap share no wood. Between two
levels the section area of blank and union of cuts is a quadratic of the height, and its moments are cubic, so two Gauss
points in each slab are exact. So are two across each strip of a section.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from shopdraw.shape.frame import Vec3
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.slab import Bar, Cluster, Ring, around, bars, clusters, levels, section_of

_GAUSS = 1 / math.sqrt(3.0)
"""The two Gauss points lie so far from the middle, as a part of half the width (Gauss–Legendre, two points)."""
_THIN = 1e-12
_FEW = 2
"""A cluster of so many bars isn't looked at in parts."""

Moments = tuple[float, float, float, float]
"""Volume, mm³, and its first moments in u, v and w, mm⁴."""


@dataclass(frozen=True, slots=True)
class Bulk:
    """How much wood, and where its middle is.

    Attributes:
        volume: mm³.
        centre: centre of mass of even wood, mm.
    """

    volume: float
    centre: Vec3


@dataclass(frozen=True, slots=True)
class _Edge:
    """An edge of a section that isn't level: from v `low` to `high`, its u at `low`, its u's change for each v."""

    low: float
    high: float
    u: float
    slope: float
    cut: int
    """0 for the blank, n for the n-th cut."""
    ring: int
    """0 for an outline, n for the n-th island."""

    def at(self, v: float) -> float:
        return self.u + (v - self.low) * self.slope


@lru_cache(maxsize=8192)
def bulk(shape: Shape) -> Bulk:
    """Volume and centre of mass of a shape, in its board's frame."""
    blank, *cuts = bars(shape)
    volume, *first = _moments((blank,), -shape.thickness, 0.0, taken=False)
    for cluster in clusters(cuts):
        gone = _gone(blank, cluster)
        volume -= gone[0]
        first = [whole - less for whole, less in zip(first, gone[1:], strict=True)]
    if volume <= 0.0:
        return Bulk(0.0, (0.0, 0.0, 0.0))
    return Bulk(volume, (first[0] / volume, first[1] / volume, first[2] / volume))


def _gone(blank: Bar, cluster: Cluster) -> Moments:
    """What a cluster takes from the blank.

    Where one of its bars joins parts that share nothing with each other, each part is looked at with that bar alone:
    all take together what the bar takes and, for each part, what that part with the bar takes more.
    """
    for bar in cluster.bars if len(cluster.bars) > _FEW else ():
        apart = clusters([other for other in cluster.bars if other is not bar])
        if len(apart) > 1:
            alone = _taken(blank, Cluster((bar,), bar.box))
            each = [_gone(blank, Cluster((bar, *part.bars), around(bar.box, part.box))) for part in apart]
            shared = len(each) - 1
            volume, u, v, w = (sum(all_) - shared * one for one, *all_ in zip(alone, *each, strict=True))
            return volume, u, v, w
    return _taken(blank, cluster)


@lru_cache(maxsize=4096)
def _taken(blank: Bar, cluster: Cluster) -> Moments:
    """What a cluster takes from the blank, in slabs square to an axis along which no flank slopes, if there is one."""
    parts = (blank, *cluster.bars)
    ways = [tuple(bar.turned(turns) for bar in parts) for turns in range(3)]
    turns = next((turns for turns, turned in enumerate(ways) if all(map(_is_still, turned))), 0)
    axis = (turns + 2) % 3
    box = blank.box
    bottom, top = max(box[axis], cluster.box[axis]), min(box[axis + 3], cluster.box[axis + 3])
    if bottom >= top:
        return (0.0, 0.0, 0.0, 0.0)
    volume, *first = _moments(ways[turns], bottom, top, taken=True)
    return (volume, first[-turns], first[1 - turns], first[2 - turns])


def _moments(parts: Sequence[Bar], bottom: float, top: float, *, taken: bool) -> Moments:
    """Volume and its first moments in u, v and w: of the blank, the first part, or of what the others take from it.

    Args:
        bottom, top: the heights between which it lies.
    """
    still = all(_is_still(bar) for bar in parts)
    volume = u = v = w = 0.0
    for low, high in pairwise(levels(parts, bottom, top, still=still)):
        for height, weight in _points(low, high, one=still):
            area, first_u, first_v = _section_moments(parts, height, taken=taken)
            volume += area * weight
            u += first_u * weight
            v += first_v * weight
            w += area * height * weight
    return volume, u, v, w


def volume_mm3(shape: Shape) -> float:
    """Volume of a shape, mm³, exact for arcs that no other cut crosses."""
    return bulk(shape).volume


def mass_kg(board: Board) -> float:
    """Weight of a board at 12 % moisture content, kg."""
    return bulk(board.shape).volume * board.stock.density * 1e-9


def centre_of_mass(boards: Sequence[Board]) -> tuple[float, Vec3]:
    """Weight of boards together, kg, and their centre of mass in the world, mm."""
    total = x = y = z = 0.0
    for board in boards:
        mass = mass_kg(board)
        centre = board.frame.point(bulk(board.shape).centre)
        total, x, y, z = total + mass, x + mass * centre[0], y + mass * centre[1], z + mass * centre[2]
    return (total, (x / total, y / total, z / total)) if total > 0.0 else (0.0, (0.0, 0.0, 0.0))


def _is_still(bar: Bar) -> bool:
    """No flank slopes: the bar's section is the same all through a slab."""
    if abs(abs(bar.frame.w[2]) - 1.0) < _THIN:
        return True
    if abs(bar.frame.w[2]) > _THIN:
        return False
    heights = [[a * bar.frame.u[2] + b * bar.frame.v[2] for a, b in ring] for ring in bar.rings]
    along = [[a * bar.frame.v[2] - b * bar.frame.u[2] for a, b in ring] for ring in bar.rings]
    return all(
        abs(h[i] - h[i - 1]) < _THIN or abs(s[i] - s[i - 1]) < _THIN
        for h, s in zip(heights, along, strict=True)
        for i in range(len(h))
    )


def _points(low: float, high: float, *, one: bool) -> Iterator[tuple[float, float]]:
    """Heights to look at in a slab, with their weights; one is enough where nothing changes."""
    middle, half = (low + high) / 2, (high - low) / 2
    # the height's own moment needs both points only when the area changes: the middle serves it exactly otherwise
    if one:
        yield middle, 2 * half
    else:
        yield middle - _GAUSS * half, half
        yield middle + _GAUSS * half, half


def _section_moments(parts: Sequence[Bar], w: float, *, taken: bool) -> tuple[float, float, float]:
    """Area of the blank at a height, or of what the cuts take from it there, and its first moments in u and v."""
    edges = _edges(parts, w)
    stops = sorted({v for edge in edges for v in (edge.low, edge.high)})
    edges.sort(key=lambda edge: edge.low)
    active: list[_Edge] = []
    following = 0
    area = first_u = first_v = 0.0
    for low, high in pairwise(stops):
        while following < len(edges) and edges[following].low <= low:
            active.append(edges[following])
            following += 1
        active = [edge for edge in active if edge.high >= high]
        if high - low <= _THIN or not _matters(active, taken=taken):
            continue
        for start, end in _without_crossings(active, low, high):
            upright = all(edge.slope == 0.0 for edge in active)
            wood = _wood(active, start, taken=taken) if upright else []
            for v, weight in _points(start, end, one=False):
                for a, b in wood if upright else _wood(active, v, taken=taken):
                    area += (b - a) * weight
                    first_u += (b * b - a * a) / 2 * weight
                    first_v += (b - a) * v * weight
    return area, first_u, first_v


def _matters(active: Sequence[_Edge], *, taken: bool) -> bool:
    """Whether a strip crosses the blank, and, where only what is taken counts, a cut."""
    return any(edge.cut == 0 for edge in active) and (not taken or any(edge.cut for edge in active))


def _edges(parts: Sequence[Bar], w: float) -> list[_Edge]:
    found: list[_Edge] = []
    for cut, bar in enumerate(parts):
        for ring, rings in enumerate(section_of(bar, w)):
            for points in rings:
                found.extend(_upright_edges(points, cut, ring))
    return found


def _upright_edges(points: Ring, cut: int, ring: int) -> Iterator[_Edge]:
    for i, (u1, v1) in enumerate(points):
        u0, v0 = points[i - 1]
        if v0 > v1:
            u0, v0, u2, v2 = u1, v1, u0, v0
        else:
            u2, v2 = u1, v1
        if v2 - v0 > _THIN:
            yield _Edge(v0, v2, u0, (u2 - u0) / (v2 - v0), cut, ring)


def _without_crossings(active: Sequence[_Edge], low: float, high: float) -> list[tuple[float, float]]:
    """The strip split where two of its edges cross."""
    order = sorted((edge.at(low), edge.at(high), place) for place, edge in enumerate(active))
    if all(a[1] <= b[1] + 1e-9 for a, b in pairwise(order)):
        return [(low, high)]
    stops = {low, high}
    for i, (start, end, place) in enumerate(order):
        for other_start, other_end, other in order[i + 1 :]:
            if end > other_end + 1e-9:
                gap, closing = other_start - start, active[place].slope - active[other].slope
                stops.add(min(high, max(low, low + gap / closing)))
    return list(pairwise(sorted(stops)))


def _wood(active: Sequence[_Edge], v: float, *, taken: bool) -> list[tuple[float, float]]:
    """The intervals of u within the blank, or those of them that a cut takes; islands stay standing."""
    stops = sorted((edge.at(v), edge.cut, edge.ring) for edge in active)
    outlines: set[int] = set()
    islands: set[tuple[int, int]] = set()
    found = []
    for (here, cut, ring), (there, _, _) in pairwise(stops):
        if ring:
            islands ^= {(cut, ring)}
        else:
            outlines ^= {cut}
        if there > here and 0 in outlines and (len(outlines) > 1 and not _spared(outlines, islands)) is taken:
            found.append((here, there))
    return found


def _spared(outlines: set[int], islands: set[tuple[int, int]]) -> bool:
    """Whether an island stands in each of the cuts whose outlines one is in; 0 is the blank."""
    standing = {cut for cut, _ in islands}
    return all(cut in standing for cut in outlines if cut)
