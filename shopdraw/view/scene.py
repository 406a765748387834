"""What stands before the viewer: edges that may be drawn and triangles that may cover them, in view coordinates.

View coordinates: x right, y up on paper, z towards the viewer, all mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import numpy.typing as npt

from shopdraw.view.direction import Direction
from shopdraw.view.standing import Bools, Floats, Ints, Standing

_FACING = 1e-6
"""A face turned less than this towards the viewer is seen on edge."""
_SHORT_MM = 1e-6
"""An edge shorter than this on paper is a point."""
_SAME_MM = 1e-5
_APART = 2**32
"""Places on paper are whole numbers smaller than half of this."""
_MIX = np.int64(-7046029254386353131)
"""Odd, and its bits follow no order: multiplied by it, different whole numbers stay different and lie far apart."""
_ALONG = 1e-12
"""A cylinder whose axis lies less off the line of sight is seen as a circle (cosine)."""


@dataclass(frozen=True, eq=False)
class Edges:
    """Edges in view coordinates.

    Attributes:
        start, end: (n, 3).
        owner: (n,) index of the board.
        facing: (n,) how squarely the face beside it that is turned most to the viewer faces them: 1 square, 0 not at
            all, and then its own board covers it.
        told: (n,) whether it is wanted where it is out of sight.
        centre, radius: (n, 2), (n,) of the arc it is a chord of, seen along the arc's axis; radius 0 for a line.
    """

    start: Floats
    end: Floats
    owner: Ints
    facing: Floats
    told: Bools
    centre: Floats
    radius: Floats

    @property
    def turned_away(self) -> Bools:
        """Whether no face beside an edge is turned to the viewer."""
        found: Bools = self.facing <= 0.0
        return found

    def only(self, rows: Bools | Ints) -> Edges:
        """Some of the edges."""
        if rows.dtype == np.bool_:
            rows = np.flatnonzero(rows)
        return Edges(
            self.start.take(rows, axis=0),
            self.end.take(rows, axis=0),
            self.owner.take(rows),
            self.facing.take(rows),
            self.told.take(rows),
            self.centre.take(rows, axis=0),
            self.radius.take(rows),
        )


@dataclass(frozen=True, eq=False)
class Scene:
    """Edges and the triangles turned to the viewer.

    Attributes:
        edges: each once; of those that coincide on paper the nearest.
        corners: (m, 3 corners, 3) of the triangles.
        slope: (m, 2) how a triangle's depth changes to the right and upwards.
        face: (m,) rising: the number of the board's plane that a triangle lies in.
        rims: (r, 2 ends, 3) lines round those planes' faces, the face at the left.
        rim_face: (r,) the face of each.
    """

    edges: Edges
    corners: Floats
    slope: Floats
    face: Ints
    rims: Floats
    rim_face: Ints

    @cached_property
    def box(self) -> tuple[Floats, Floats]:
        """(m, 3) twice: the least and greatest coordinates of each triangle."""
        a, b, c = (self.corners[:, k] for k in range(3))
        return np.minimum(np.minimum(a, b), c), np.maximum(np.maximum(a, b), c)


def scene(here: Standing, direction: Direction, told: Bools | None = None) -> Scene:
    """Everything that is shown, turned so that one looks along -z.

    Args:
        told: (boards,) whose lines out of sight are wanted, but for those of cuts within joints and for fittings;
            all lines of all boards where it is None.
    """
    axes = np.array((direction.right, direction.up, direction.toward))
    points = here.points @ axes.T
    toward = here.normals @ axes[2]
    front = toward > _FACING
    beside = np.round(toward * front, 9).take(here.sides)
    turned = np.flatnonzero(front)
    turned = turned[np.argsort(here.face[turned], kind="stable")]
    across = here.normals.take(turned, axis=0) @ axes[:2].T
    rims, rim_face = _rims(here, front, points)
    return Scene(
        _once(_edges_of(here, points, axes, beside, told)),
        points.take(here.triangles.take(turned, axis=0), axis=0),
        -across / toward[turned, None],
        here.face[turned],
        rims,
        rim_face,
    )


def _edges_of(here: Standing, points: Floats, axes: Floats, beside: Floats, told: Bools | None) -> Edges:
    silhouette = (beside[:, 0] > 0.0) ^ (beside[:, 1] > 0.0)
    rows = np.flatnonzero((here.sharp | silhouette) & ~here.capped)
    start, end = (points.take(here.edges[:, side].take(rows), axis=0) for side in (0, 1))
    long = np.maximum(np.abs(end[:, 0] - start[:, 0]), np.abs(end[:, 1] - start[:, 1])) > _SHORT_MM
    rows, start, end = rows[long], start.compress(long, axis=0), end.compress(long, axis=0)
    centre, radius = np.zeros((len(rows), 2)), np.zeros(len(rows))
    along = np.append(np.abs(here.cylinders[:, 3:6] @ axes[2]) > 1 - _ALONG, False)
    if along.any():
        middle = here.cylinders[:, :3] @ axes[:2].T
        for side in (1, 0):
            rod = here.edge_cylinder[:, side].take(rows)
            round_here = np.flatnonzero(along[rod])
            rod = rod[round_here]
            centre[round_here] = middle.take(rod, axis=0)
            radius[round_here] = here.cylinders[:, 6].take(rod)
    owner = here.owner[rows]
    wanted = np.ones(len(rows), dtype=np.bool_) if told is None else told[owner] & ~here.inner[rows]
    return Edges(start, end, owner, np.maximum(beside[:, 0], beside[:, 1]).take(rows), wanted, centre, radius)


def _rims(here: Standing, front: Bools, points: Floats) -> tuple[Floats, Ints]:
    """The lines round the faces turned to the viewer; an edge between two of them belongs to each."""
    one, other = here.sides.T
    apart = here.face[one] != here.face[other]
    left, right = np.flatnonzero(apart & front[one]), np.flatnonzero(apart & front[other])
    ends = np.concatenate((here.edges.take(left, axis=0), here.edges.take(right, axis=0)[:, ::-1]))
    return points.take(ends, axis=0), here.face[np.concatenate((one[left], other[right]))]


def _once(edges: Edges) -> Edges:
    """Of edges that lie on one another on paper the nearest, when it is so at both ends.

    Behind one that isn't told out of sight one that is stays, too: there it may be the one to be drawn.
    At one depth (a mitre) the one beside the face that looks most squarely at the viewer stays: that face is seen.
    """
    swap = _swapped(edges)
    start = np.where(swap[:, None], edges.end, edges.start)
    end = np.where(swap[:, None], edges.start, edges.end)
    edges = Edges(start, end, edges.owner, edges.facing, edges.told, edges.centre, edges.radius)
    places = np.round(np.concatenate((start[:, :2], end[:, :2]), axis=1) / _SAME_MM).astype(np.int64)
    # two whole numbers in one: fewer columns to sort by
    keys = places[:, (0, 2)] * _APART + places[:, (1, 3)]
    depth = np.round((start[:, 2] + end[:, 2]) / _SAME_MM)
    order, starts = _alike(keys)
    many = np.diff(starts, append=len(order))
    rank = (edges.turned_away, -depth, -edges.facing, edges.owner, np.arange(len(order)))
    leader = np.repeat(_first_of_each([column[order] for column in rank], starts, many), many)
    first = leader == np.arange(len(order))
    row, lead = order, order[leader]
    nearer = (start[lead, 2] >= start[row, 2] - _SAME_MM) & (end[lead, 2] >= end[row, 2] - _SAME_MM)
    arc_alike = (edges.radius[lead] > 0) == (edges.radius[row] > 0)
    gone = (nearer | edges.turned_away[row]) & arc_alike
    gone &= ~edges.told[row] | edges.told[lead]
    kept = row[first | ~gone]
    return edges.only(np.sort(kept))


def _alike(keys: Ints) -> tuple[Ints, Ints]:
    """Rows in an order in which those of the same two keys stand together, and where each lot of them starts."""
    # by one number made of both: sorting by one is many times quicker than by two
    mixed = keys[:, 0] * _MIX + keys[:, 1]
    order = np.argsort(mixed)
    if not len(order):
        return order, order
    sorted_keys = keys.take(order, axis=0)
    apart = (np.diff(sorted_keys[:, 0]) != 0) | (np.diff(sorted_keys[:, 1]) != 0)
    new = np.diff(mixed[order]) != 0
    if (apart & ~new).any():  # two keys gave one number
        order = np.lexsort(keys.T)
        sorted_keys = keys.take(order, axis=0)
        apart = (np.diff(sorted_keys[:, 0]) != 0) | (np.diff(sorted_keys[:, 1]) != 0)
    return order, np.flatnonzero(np.concatenate(([True], apart)))


def _first_of_each(rank: Sequence[npt.NDArray[np.generic]], starts: Ints, many: Ints) -> Ints:
    """Of each lot the row that comes first by the columns of a rank, one after the other; the last decides."""
    left = np.ones(len(rank[0]), dtype=np.bool_)
    for column in rank:
        value = np.where(left, column.astype(np.float64), np.inf)
        left &= value == np.repeat(np.minimum.reduceat(value, starts), many) if len(starts) else left
    return np.flatnonzero(left)


def _swapped(edges: Edges) -> Bools:
    """Edges that must be turned round so that each runs to the right, or upwards when it is plumb."""
    across = edges.end[:, 0] - edges.start[:, 0]
    plumb = np.abs(across) <= _SAME_MM
    found: Bools = np.where(plumb, edges.end[:, 1] < edges.start[:, 1], across < 0)
    return found
