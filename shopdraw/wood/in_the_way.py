"""Who stands in whose way when a board is slid out: told pair by pair, by what lies ahead of a board's leading faces.

Seen along the way, a board meets another one just where a face of the other through which the way leaves it lies
ahead of one of its own leading faces. Triangles that overlap in that view are found by their boxes and by their sides;
rays from the largest overlaps settle nearly all pairs, and exact prisms those that are left.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import manifold3d
import numpy as np
import numpy.typing as npt

from shopdraw.shape.frame import Vec3, cross, unit
from shopdraw.wood.board import Board
from shopdraw.wood.interference import SHARED_MM3, Wood
from shopdraw.wood.solid import Floats, placed_solid

Ints = npt.NDArray[np.int64]
_LEADING = 1e-7
"""A face whose normal runs with the way by less than this lies along it and meets nothing."""
_TOUCH_MM = 1e-7
"""Triangles that overlap by less than this only touch."""
_RAYED = 3
"""So many overlaps are tried by rays before prisms are looked at."""
_MET_MM = 0.5
"""Two rays from one overlap that pass through so much wood have met it..."""
_MET_MM2 = 4.0
"""...where the overlap is as large as this."""
_AMID = ((0.53, 0.47), (0.29, 0.31))
"""Where two columns stand in an overlap, as parts of its sides: off its middle lines."""

Point = tuple[float, float]


def blocked_pairs(
    boards: Sequence[Board],
    direction: Vec3,
    reach: float,
    moving: Collection[str] | None = None,
    limit_mm3: float = SHARED_MM3,
    wood: Wood = placed_solid,
) -> frozenset[tuple[str, str]]:
    """Who stands in whose way when one board alone is slid in a direction; boards share nothing at rest.

    Args:
        direction: the way, of any length.
        reach: how far it is slid, mm; far enough to be past every other board.
        moving: ids of the boards that are tried; None for all.
        limit_mm3: what two boards may share on the way.
        wood: a board's wood in the world, where it isn't to be made from the board's shape.
    Returns:
        Pairs (moving board, board in its way).
    """
    axes = _axes(unit(direction))
    ahead = [_Ahead.of(wood(board), axes) for board in boards]
    low, high = np.array([one.low for one in ahead]), np.array([one.high for one in ahead])
    found = set()
    for index, (board, one) in enumerate(zip(boards, ahead, strict=True)):
        if moving is not None and board.id not in moving:
            continue
        sides = np.minimum(high, (*one.high[:2], one.high[2] + reach)) - np.maximum(low, one.low)
        shares = (sides > 0.0).all(axis=1) & (sides.prod(axis=1) > limit_mm3)
        for i in map(int, np.flatnonzero(shares)):
            if i != index and _meets(one, ahead[i], reach, limit_mm3):
                found.add((board.id, boards[i].id))
    return frozenset(found)


def _axes(way: Vec3) -> Floats:
    """Rows: two axes square to the way, then the way; right-handed."""
    least = min(range(3), key=lambda axis: abs(way[axis]))
    first = unit(cross((float(least == 0), float(least == 1), float(least == 2)), way))
    return np.array((first, cross(way, first), way))


@dataclass(frozen=True, eq=False)
class _Ahead:
    """A board seen along the way.

    Attributes:
        wood: in the world.
        axes: rows of the view: across, across, along the way.
        low, high: its box in the view.
        faces: triangles that face the way, in the view, (n, 3, 3), anticlockwise.
        least, most: their boxes, (n, 3).
    """

    wood: manifold3d.Manifold
    axes: Floats
    low: Floats
    high: Floats
    faces: Floats
    least: Floats
    most: Floats

    @classmethod
    def of(cls, wood: manifold3d.Manifold, axes: Floats) -> _Ahead:
        """The faces of a solid that face the way."""
        mesh = wood.to_mesh64()
        points = mesh.vert_properties[:, :3] @ axes.T
        corners = points[mesh.tri_verts.astype(np.int64)]
        one, other = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
        normals = np.cross(one, other)
        faces = corners[normals[:, 2] > _LEADING * np.maximum(np.sqrt((normals * normals).sum(axis=1)), 1e-30)]
        return cls(wood, axes, points.min(axis=0), points.max(axis=0), faces, faces.min(axis=1), faces.max(axis=1))

    def within(self, low: Floats, high: Floats) -> Ints:
        """The faces whose boxes overlap a box in the view, wherever they lie along the way."""
        here = ((self.least[:, :2] < high[:2]) & (self.most[:, :2] > low[:2])).all(axis=1)
        found: Ints = np.flatnonzero(here)
        return found


def _meets(one: _Ahead, other: _Ahead, reach: float, limit_mm3: float) -> bool:
    """Whether a board that slides along the way meets another one."""
    if _columns_meet(one, other, reach):
        return True
    pairs = _near_pairs(one, other)
    if _seen_to_meet(one, other, pairs[:_RAYED], reach):
        return True
    pairs = _overlapping(one, other, pairs[_RAYED:])
    if _seen_to_meet(one, other, pairs[:_RAYED], reach):
        return True
    shared = 0.0
    for i in dict.fromkeys(pairs[:, 0].tolist()):
        face = one.faces[i]
        prism = np.concatenate((face, face + np.array((0.0, 0.0, reach)))) @ one.axes
        shared += float((manifold3d.Manifold.hull_points(prism) ^ other.wood).volume())
        if shared > limit_mm3:
            return True
    return False


def _columns_meet(one: _Ahead, other: _Ahead, reach: float) -> bool:
    """Whether in two columns amid the overlap of the boards' boxes wood of the other lies ahead of the one's."""
    x0, y0 = max(one.low[0], other.low[0]), max(one.low[1], other.low[1])
    wide, deep = min(one.high[0], other.high[0]) - x0, min(one.high[1], other.high[1]) - y0
    return wide * deep > _MET_MM2 and all(
        _column_meets(one, other, (x0 + a * wide, y0 + b * deep), reach) for a, b in _AMID
    )


def _column_meets(one: _Ahead, other: _Ahead, at: Point, reach: float) -> bool:
    bottom = (*at, float(one.low[2]) - 1.0)
    start = np.array(bottom) @ one.axes
    hits = one.wood.ray_cast(tuple(start), tuple(start + reach * one.axes[2]))
    if len(hits) < 2:
        return False
    leaves = (*at, bottom[2] + float(hits[1].distance) * reach)
    return _wood_ahead(leaves, one.axes, other.wood, reach) > _MET_MM


def _seen_to_meet(one: _Ahead, other: _Ahead, pairs: Ints, reach: float) -> bool:
    return any(
        _rays_meet(one.faces[i], _shared(one.faces[i], other.faces[j]), one.axes, other.wood, reach) for i, j in pairs
    )


def _near_pairs(one: _Ahead, other: _Ahead) -> Ints:
    """Rows (leading face of the one, face of the other that may lie ahead of it), widest overlap of boxes first."""
    mine, its = one.within(other.low, other.high), other.within(one.low, one.high)
    least, most = one.least[mine], one.most[mine]
    far, near = other.most[its], other.least[its]
    across = np.minimum.outer(most[:, 0], far[:, 0]) - np.maximum.outer(least[:, 0], near[:, 0])
    along = np.minimum.outer(most[:, 1], far[:, 1]) - np.maximum.outer(least[:, 1], near[:, 1])
    ahead = np.less.outer(least[:, 2] + _TOUCH_MM, far[:, 2])
    rows, columns = np.nonzero(ahead & (across > _TOUCH_MM) & (along > _TOUCH_MM))
    order = np.argsort(-across[rows, columns] * along[rows, columns], kind="stable")
    return np.stack((mine[rows[order]], its[columns[order]]), axis=1)


def _overlapping(one: _Ahead, other: _Ahead, pairs: Ints) -> Ints:
    """Those pairs whose triangles overlap in the view, not their boxes only."""
    first, second = one.faces[pairs[:, 0], :, :2], other.faces[pairs[:, 1], :, :2]
    return pairs[~(_beside(first, second) | _beside(second, first))]


def _beside(one: Floats, other: Floats) -> npt.NDArray[np.bool_]:
    """Whether a side of each triangle, anticlockwise, (n, 3, 2), has all of the other triangle without it."""
    sides = np.roll(one, -1, axis=1) - one
    from_start = other[:, None] - one[:, :, None]
    within = sides[:, :, None, 0] * from_start[..., 1] - sides[:, :, None, 1] * from_start[..., 0]
    length = np.sqrt((sides * sides).sum(axis=2))
    found: npt.NDArray[np.bool_] = (within.max(axis=2) <= _TOUCH_MM * length).any(axis=1)
    return found


def _shared(one: Floats, other: Floats) -> list[Point]:
    """The corners of what two triangles share in the view."""
    kept: list[Point] = [(x, y) for x, y, _ in one.tolist()]
    corners = other.tolist()
    for (x0, y0, _), (x1, y1, _) in zip(corners, (*corners[1:], corners[0]), strict=True):
        within = [(x1 - x0) * (y - y0) - (y1 - y0) * (x - x0) for x, y in kept]
        clipped: list[Point] = []
        for i, (x, y) in enumerate(kept):
            here, before = within[i], within[i - 1]
            if (here >= 0.0) != (before >= 0.0):
                part, (a, b) = before / (before - here), kept[i - 1]
                clipped.append((a + (x - a) * part, b + (y - b) * part))
            if here >= 0.0:
                clipped.append((x, y))
        kept = clipped
    return kept


def _rays_meet(face: Floats, overlap: Sequence[Point], axes: Floats, other: manifold3d.Manifold, reach: float) -> bool:
    """Whether rays along the way from two points of a large enough overlap pass through wood."""
    if len(overlap) < 3 or _area(overlap) < _MET_MM2:
        return False
    x, y = sum(p[0] for p in overlap) / len(overlap), sum(p[1] for p in overlap) / len(overlap)
    a, b = overlap[0]
    return all(
        _wood_ahead(_on(face, *point), axes, other, reach) > _MET_MM for point in ((x, y), ((a + x) / 2, (b + y) / 2))
    )


def _area(ring: Sequence[Point]) -> float:
    return sum(ring[i - 1][0] * y - x * ring[i - 1][1] for i, (x, y) in enumerate(ring)) / 2


def _on(face: Floats, x: float, y: float) -> Vec3:
    """The point of a face that is seen at a place of the view."""
    (x0, y0, z0), (x1, y1, z1), (x2, y2, z2) = face.tolist()
    whole = (x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0)
    second = ((x - x0) * (y2 - y0) - (x2 - x0) * (y - y0)) / whole
    third = ((x1 - x0) * (y - y0) - (x - x0) * (y1 - y0)) / whole
    return x, y, z0 + second * (z1 - z0) + third * (z2 - z0)


def _wood_ahead(start: Vec3, axes: Floats, other: manifold3d.Manifold, reach: float) -> float:
    """How much wood a ray along the way passes through before it first leaves it, mm."""
    here = np.array(start) @ axes
    hits = other.ray_cast(tuple(here), tuple(here + reach * axes[2]))
    if not hits:
        return 0.0
    starts_within = float(np.dot(hits[0].normal, axes[2])) > 0.0
    if starts_within:
        return float(hits[0].distance) * reach
    return (float(hits[1].distance) - float(hits[0].distance)) * reach if len(hits) > 1 else 0.0
