"""Facets of a board that has changed its sizes alone, carried over from those it had before.

While a hand drags, most boards get longer or wider by a little: the same cuts, some of them further along. Where each
place along the board's three axes has one place to go to, and all between two places is stretched evenly, the blank and
every cut become exactly those of the new shape, and so does the wood. That takes a hundredth of the time in which
solids are cut anew.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

import numpy as np
import numpy.typing as npt

from shopdraw.shape.path import Path, Point
from shopdraw.wood.board import Shape
from shopdraw.wood.facet import Facets, planes
from shopdraw.wood.prism import Prism, blank_prism, cut_prism
from shopdraw.wood.solid import Floats, Ints

_ONE_PLACE_MM = 1e-6
"""Two places nearer than this are one."""
_OFF_MM = 1e-8
"""So far a place may be off where even stretching brings it."""
_SAME_MM = 1e-9
"""What lies nearer is the same: the last decimals of a double."""
_PLANES = 2
"""So many planes may part a board, one within what another has parted: a slant's two ends."""
_FLAT_MM2 = 1e-6
"""A triangle of less than half of this has no side."""
_EVEN = 1e-9
"""Wood is stretched evenly where the factors along its axes differ by less."""
_DECIMALS = 9

Bools = npt.NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class _Skeleton:
    """The corners and edges of a shape's prisms, in the board's frame.

    Attributes:
        kind: what must be the same for the one shape to become the other: cuts, faces, corners and bulges in order.
        corners: (n, 3) mm; for an arc two more, which with its ends make the box that it stands in.
        ends: (m, 2) rows of `corners`: the edges.
        bent: (m,) whether an edge stands for an arc: it must keep its size.
    """

    kind: tuple[object, ...]
    corners: Floats
    ends: Ints
    bent: Bools


@dataclass(frozen=True, eq=False)
class _Way:
    """Where the places along one axis go.

    Attributes:
        before, after: places, ascending, mm.
    """

    before: Floats
    after: Floats

    def at(self, places: Floats) -> Floats:
        """Where places go; beyond the last ones by as much as these."""
        moved = np.interp(places, self.before, self.after)
        first, last = self.before[0], self.before[-1]
        moved = np.where(places < first, places + (self.after[0] - first), moved)
        return np.where(places > last, places + (self.after[-1] - last), moved)

    def factor(self, places: Floats) -> Floats:
        """How much the wood is stretched at places."""
        if len(self.before) < 2:
            return np.ones(len(places))
        gap = np.clip(np.searchsorted(self.before, places, side="right"), 1, len(self.before) - 1)
        found: Floats = (np.diff(self.after) / np.diff(self.before))[gap - 1]
        return found

    def keeps_straight(self, low: Floats, high: Floats, *, size: bool) -> bool:
        """Whether nothing between two places comes out bent.

        Args:
            low, high: (n,) from where to where.
            size: whether the length between them must stay as it is too.
        """
        there_low, there_high = np.interp(low, self.before, self.after), np.interp(high, self.before, self.after)
        if size and (np.abs((there_high - there_low) - (high - low)) > _OFF_MM).any():
            return False
        run = high - low
        factor = (there_high - there_low) / np.where(run > 0.0, run, 1.0)
        inside = (self.before > low[:, None]) & (self.before < high[:, None])
        even = there_low[:, None] + factor[:, None] * (self.before - low[:, None])
        return not (inside & (np.abs(even - self.after) > _OFF_MM)).any()


def carried(known: Facets, before: Shape, after: Shape) -> Facets | None:
    """The facets of a shape, from those of one that has the same cuts in other places or sizes.

    Args:
        known: facets of the shape before.
        before: the shape that they are of.
        after: the shape wanted.
    Returns:
        None where the one doesn't become the other by even stretching between places along its axes, neither as a
        whole nor on both sides of a plane across one of them; or where the triangles of a face would lie over each
        other, since what they stand between has moved too far.
    """
    if before == after:
        return known
    one, other = _skeleton(before), _skeleton(after)
    if one.kind != other.kind:
        return None
    if np.abs(one.corners - other.corners).max() < _SAME_MM:
        return known
    move = _moved_wood(_Edges.between(one, other), _slants(before), _PLANES)
    if move is None:
        return None
    points = move.of(known.points)
    normals = _turned(known, move)
    if _turned_over(points, known.triangles, normals):
        return None
    return replace(
        known,
        points=points,
        normals=normals,
        face=planes(points, known.triangles, normals),
        cylinders=_moved_cylinders(known, points),
    )


@dataclass(frozen=True, eq=False)
class _Move:
    """Where the wood of a board goes that lies within some planes.

    Attributes:
        ways: along the three axes.
    """

    ways: tuple[_Way, ...]

    def of(self, points: Floats) -> Floats:
        """Where points go."""
        return np.column_stack([way.at(points[:, axis]) for axis, way in enumerate(self.ways)])

    def factors(self, points: Floats) -> Floats:
        """How much the wood is stretched at points along each axis."""
        return np.column_stack([way.factor(points[:, axis]) for axis, way in enumerate(self.ways)])


@dataclass(frozen=True, eq=False)
class _Parted:
    """Where the wood goes on both sides of a plane across an axis; on the plane both say the same.

    Attributes:
        axis, at: where the plane lies, mm.
        below, beyond: where the wood goes on its two sides.
    """

    axis: int
    at: float
    below: _Move | _Parted
    beyond: _Move | _Parted

    def of(self, points: Floats) -> Floats:
        """Where points go."""
        return self._chosen(points, self.below.of(points), self.beyond.of(points))

    def factors(self, points: Floats) -> Floats:
        """How much the wood is stretched at points along each axis."""
        return self._chosen(points, self.below.factors(points), self.beyond.factors(points))

    def _chosen(self, points: Floats, below: Floats, beyond: Floats) -> Floats:
        return np.where((points[:, self.axis] > self.at)[:, None], beyond, below)


@dataclass(frozen=True, eq=False)
class _Edges:
    """The edges of a shape, and where they go when it becomes another one.

    Attributes:
        ends: (n, 2, 3) mm.
        new_ends: (n, 2, 3) those of the other shape.
        bent: (n,) whether an edge stands for an arc.
        places, new_places: (m, 3) twice: corners that have to go where the edges' own do, those of edges that only
            touch this part of the board included.
    """

    ends: Floats
    new_ends: Floats
    bent: Bools
    places: Floats
    new_places: Floats

    @classmethod
    def between(cls, one: _Skeleton, other: _Skeleton) -> _Edges:
        """Those of two skeletons of one kind."""
        return cls(one.corners[one.ends], other.corners[one.ends], one.bent, one.corners, other.corners)

    @cached_property
    def low(self) -> Floats:
        """(n, 3) the least coordinates of each."""
        found: Floats = self.ends.min(axis=1)
        return found

    @cached_property
    def high(self) -> Floats:
        """(n, 3) the greatest coordinates of each."""
        found: Floats = self.ends.max(axis=1)
        return found

    @cached_property
    def leaning(self) -> Bools:
        """Which of them lie along no axis, those of arcs left out."""
        found: Bools = ((self.high - self.low > _ONE_PLACE_MM).sum(axis=1) > 1) & ~self.bent
        return found

    def part(self, axis: int, at: float, way: int) -> _Edges | None:
        """Those on one side of a plane across an axis, or None where one that leans runs through it.

        Args:
            way: -1 for those below it, 1 for those beyond.
        """
        beyond = way * (self.ends[:, :, axis] - at)
        within = (beyond.max(axis=1) > _ONE_PLACE_MM) | (np.abs(beyond).max(axis=1) <= _ONE_PLACE_MM)
        across = within & (beyond.min(axis=1) < -_ONE_PLACE_MM)
        if (across & (self.leaning | self.bent)).any():
            return None
        near = way * (self.places[:, axis] - at) > -_ONE_PLACE_MM
        # what runs through the plane has its places on both sides of it
        places = np.concatenate((self.places[near], self.ends[across].reshape(-1, 3)))
        new_places = np.concatenate((self.new_places[near], self.new_ends[across].reshape(-1, 3)))
        return _Edges(self.ends[within], self.new_ends[within], self.bent[within], places, new_places)


def _moved_wood(edges: _Edges, slants: Floats, depth: int) -> _Move | _Parted | None:
    """How the wood goes where one lot of ways does for all of it, or one on each side of where a slant ends.

    What crosses a plane there, or ends at it, has its places in both lots: they agree about all that meets in it.

    Args:
        edges: of what lies within the planes drawn so far.
        slants: (n, 2 ends, 3) the slanting sides of the blank.
        depth: so many planes may still be drawn, one within the other.
    """
    ways = _ways(edges)
    if ways is not None:
        return _Move(ways)
    if not depth or not len(edges.ends):
        return None
    floor, top = edges.low.min(axis=0), edges.high.max(axis=0)
    for axis, at in dict.fromkeys((axis, float(end[axis])) for slant in slants for end in slant for axis in (0, 1)):
        if not floor[axis] + _ONE_PLACE_MM < at < top[axis] - _ONE_PLACE_MM:
            continue
        parts = edges.part(axis, at, -1), edges.part(axis, at, 1)
        if parts[0] is None or parts[1] is None:
            continue
        below = _moved_wood(parts[0], slants, depth - 1)
        beyond = _moved_wood(parts[1], slants, depth - 1) if below is not None else None
        if below is not None and beyond is not None:
            return _Parted(axis, at, below, beyond)
    return None


def _ways(edges: _Edges) -> tuple[_Way, ...] | None:
    """How places go along each of the three axes; None where two of one place part, or an edge would be bent."""
    ways = []
    for axis in range(3):
        way = _way(edges.places[:, axis], edges.new_places[:, axis])
        if way is None:
            return None
        for kept, size in ((edges.leaning, False), (edges.bent, True)):
            if kept.any() and not way.keeps_straight(edges.low[kept, axis], edges.high[kept, axis], size=size):
                return None
        ways.append(way)
    return tuple(ways)


def _slants(shape: Shape) -> Floats:
    """The straight sides of a blank that lie along neither of its axes, in the board's frame."""
    found = [
        ((here.x, here.y, 0.0), (there.x, there.y, 0.0))
        for here, there in shape.outline.pairs()
        if not here.bulge and abs(here.x - there.x) > _ONE_PLACE_MM < abs(here.y - there.y)
    ]
    return np.array(found).reshape(-1, 2, 3)


def _way(before: Floats, after: Floats) -> _Way | None:
    order = np.argsort(before, kind="stable")
    before, after = before[order], after[order]
    new = np.concatenate(([True], np.diff(before) > _ONE_PLACE_MM))
    first = np.flatnonzero(new)
    lot = np.cumsum(new) - 1
    if (np.abs(after - after[first][lot]) > _OFF_MM).any() or (np.diff(after[first]) <= _ONE_PLACE_MM).any():
        return None
    return _Way(before[first], after[first])


def _turned(known: Facets, move: _Move | _Parted) -> Floats:
    """The faces' normals: where the wood is stretched in one direction a leaning face turns."""
    leaning = np.flatnonzero((known.normals != 0.0).sum(axis=1) > 1)
    if not len(leaning):
        return known.normals
    middle = known.points[known.triangles[leaning]].mean(axis=1)
    factors = move.factors(middle)
    stretched = np.abs(factors - factors[:, :1]).max(axis=1) > _EVEN
    if not stretched.any():
        return known.normals
    rows = leaning[stretched]
    normals = known.normals.copy()
    normals[rows] /= factors[stretched]
    normals[rows] /= np.linalg.norm(normals[rows], axis=1, keepdims=True)
    return normals


def _turned_over(points: Floats, triangles: Ints, normals: Floats) -> bool:
    """Whether a triangle looks the other way: the others of its face then lie over each other, or over a hole."""
    a, b, c = (points.take(triangles[:, k], axis=0) for k in range(3))
    one, other = b - a, c - a
    across = (
        (one[:, 1] * other[:, 2] - one[:, 2] * other[:, 1]) * normals[:, 0]
        + (one[:, 2] * other[:, 0] - one[:, 0] * other[:, 2]) * normals[:, 1]
        + (one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]) * normals[:, 2]
    )
    return bool((across < -_FLAT_MM2).any())


def _moved_cylinders(known: Facets, points: Floats) -> Floats:
    """Each arc's axis goes where its own faces go; along itself it may stay."""
    if not len(known.cylinders):
        return known.cylinders
    rods, first = np.unique(known.cylinder, return_index=True)
    first, rods = first[rods >= 0], rods[rods >= 0]
    corner = known.triangles[first, 0]
    cylinders = known.cylinders.copy()
    cylinders[rods, :3] += points[corner] - known.points[corner]
    return cylinders


@lru_cache(maxsize=1024)
def _skeleton(shape: Shape) -> _Skeleton:
    kind: list[object] = [cut.kind for cut in shape.cuts]
    corners: list[tuple[float, float, float]] = []
    ends: list[tuple[int, int]] = []
    bent: list[bool] = []
    for prism in _prisms(shape):
        frame = prism.frame
        kind += [frame.u, frame.v, prism.entry, len(prism.islands)]
        (ux, uy, uz), (vx, vy, vz), (wx, wy, wz), (ox, oy, oz) = frame.u, frame.v, frame.w, frame.at
        for path in (prism.outline, *prism.islands):
            kind.append(tuple([round(bulge, _DECIMALS) for _, _, bulge in path.corners]))
            ring, arcs = _ring(path)
            first, count = len(corners), len(ring)
            for level in (prism.low, prism.high):
                x0, y0, z0 = wx * level + ox, wy * level + oy, wz * level + oz
                corners += [(ux * x + vx * y + x0, uy * x + vy * y + y0, uz * x + vz * y + z0) for x, y in ring]
            here = [*range(first, first + count)]
            there = [*here[1:], first]
            ends += [*zip(here, there, strict=True)]
            ends += [(one + count, other + count) for one, other in zip(here, there, strict=True)]
            ends += [(one, one + count) for one in here]
            bent += [*arcs, *arcs, *([False] * count)]
    return _Skeleton(tuple(kind), np.array(corners), np.array(ends), np.array(bent))


def _prisms(shape: Shape) -> Iterator[Prism]:
    yield blank_prism(shape)
    for cut in shape.cuts:
        yield cut_prism(shape.outline, shape.thickness, cut)


def _ring(path: Path) -> tuple[list[Point], list[bool]]:
    """The corners of a path, an arc as the three other sides of the box over its chord; which sides those are."""
    ring: list[Point] = []
    arcs: list[bool] = []
    for (x0, y0, bulge), (x1, y1, _) in path.pairs():
        ring.append((x0, y0))
        arcs.append(bulge != 0.0)
        if bulge:
            # the arc's height over its chord is half the chord times the bulge, to the right of the way
            out_x, out_y = bulge * (y1 - y0) / 2, bulge * (x0 - x1) / 2
            ring += [(x0 + out_x, y0 + out_y), (x1 + out_x, y1 + out_y)]
            arcs += [True, True]
    return ring, arcs
