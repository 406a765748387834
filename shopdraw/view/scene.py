"""What stands before the viewer: edges that may be drawn and triangles that may cover them, in view coordinates.

View coordinates: x right, y up on paper, z towards the viewer, all mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shopdraw.shape.frame import Frame
from shopdraw.view.direction import Direction
from shopdraw.wood.facet import Facets

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]

_FACING = 1e-6
"""A face turned less than this towards the viewer is seen on edge."""
_SHORT_MM = 1e-6
"""An edge shorter than this on paper is a point."""
_SAME_MM = 1e-5


@dataclass(frozen=True, eq=False)
class Shown:
    """A board to be shown: its id, its faces and edges, where it stands."""

    board: str
    facets: Facets
    frame: Frame


@dataclass(frozen=True, eq=False)
class Edges:
    """Edges in view coordinates.

    Attributes:
        start, end: (n, 3).
        owner: (n,) index of the board.
        facing: (n,) how squarely the face beside it that is turned most to the viewer faces them: 1 square, 0 not at
            all, and then its own board covers it.
        centre, radius: (n, 2), (n,) of the arc it is a chord of, seen along the arc's axis; radius 0 for a line.
    """

    start: Floats
    end: Floats
    owner: Ints
    facing: Floats
    centre: Floats
    radius: Floats

    @property
    def turned_away(self) -> Bools:
        """Whether no face beside an edge is turned to the viewer."""
        found: Bools = self.facing <= 0.0
        return found

    def only(self, rows: Bools | Ints) -> Edges:
        """Some of the edges."""
        return Edges(
            self.start[rows],
            self.end[rows],
            self.owner[rows],
            self.facing[rows],
            self.centre[rows],
            self.radius[rows],
        )


@dataclass(frozen=True, eq=False)
class Scene:
    """Edges and the triangles turned to the viewer.

    Attributes:
        edges: each once; of those that coincide on paper the nearest.
        corners: (m, 3 corners, 3) of the triangles.
        slope: (m, 2) how a triangle's depth changes to the right and upwards.
        bundle: (m,) rising: triangles of one plane, or round one bore, of a board.
        face: (m,) a number for each board's plane.
        boxes: (boards, 6) least x, y, z, greatest x, y, z.
    """

    edges: Edges
    corners: Floats
    slope: Floats
    bundle: Ints
    face: Ints
    boxes: Floats


def scene(shown: Sequence[Shown], direction: Direction) -> Scene:
    """Everything that is shown, turned so that one looks along -z."""
    axes = np.array((direction.right, direction.up, direction.toward))
    edges: list[tuple[Floats, Floats, Ints, Floats, Floats, Floats]] = []
    covers: list[tuple[Floats, Floats, Ints, Ints]] = []
    boxes = np.zeros((len(shown), 6))
    faces = 0
    for index, item in enumerate(shown):
        facets, frame = item.facets, item.frame
        if not len(facets.triangles):
            continue
        turn = axes @ np.array((frame.u, frame.v, frame.w)).T
        points = facets.points @ turn.T + axes @ np.array(frame.at)
        normals = facets.normals @ turn.T
        front = normals[:, 2] > _FACING
        facing: Floats = np.round(normals[:, 2] * front, 9)
        edges.append(_edges_of(facets, index, points, turn, axes @ np.array(frame.at), facing))
        turned = np.flatnonzero(front)
        bundle = np.where(facets.cylinder[turned] >= 0, -1 - facets.cylinder[turned], facets.face[turned])
        order = np.argsort(bundle, kind="stable")
        turned, bundle = turned[order], bundle[order]
        covers.append(
            (
                points[facets.triangles[turned]],
                -normals[turned, :2] / normals[turned, 2:],
                bundle + faces + len(facets.cylinders),
                facets.face[turned] + faces,
            )
        )
        boxes[index, :3], boxes[index, 3:] = points.min(axis=0), points.max(axis=0)
        faces += len(facets.triangles) + len(facets.cylinders)
    if not edges:
        return _EMPTY
    all_edges = Edges(*(np.concatenate(column) for column in zip(*edges, strict=True)))
    corners, slope, bundle, face = (np.concatenate(column) for column in zip(*covers, strict=True))
    return Scene(_once(all_edges), corners, slope, bundle, face, boxes)


def _edges_of(
    facets: Facets, index: int, points: Floats, turn: Floats, at: Floats, facing: Floats
) -> tuple[Floats, Floats, Ints, Floats, Floats, Floats]:
    beside = facing[facets.sides]
    silhouette = (beside[:, 0] > 0.0) ^ (beside[:, 1] > 0.0)
    drawn = facets.sharp | silhouette
    if facets.capped.any():
        drawn &= ~facets.capped[facets.sides].any(axis=1)
    rows = np.flatnonzero(drawn)
    start, end = points[facets.edges[rows, 0]], points[facets.edges[rows, 1]]
    centre, radius = np.zeros((len(rows), 2)), np.zeros(len(rows))
    if len(facets.cylinders):
        axis = facets.cylinders[:, 3:6] @ turn.T
        along = np.append(np.abs(axis[:, 2]) > 1 - 1e-12, False)
        middle = np.append(facets.cylinders[:, :3] @ turn.T + at, np.zeros((1, 3)), axis=0)[:, :2]
        size = np.append(facets.cylinders[:, 6], 0.0)
        for side in (1, 0):
            rod = facets.edge_cylinder[rows, side]
            round_here = along[rod]
            centre[round_here], radius[round_here] = middle[rod[round_here]], size[rod[round_here]]
    return start, end, np.full(len(rows), index), beside[rows].max(axis=1), centre, radius


def _once(edges: Edges) -> Edges:
    """Edges that aren't points; of those that lie on one another on paper the nearest, when it is so at both ends.

    At one depth (a mitre) the one beside the face that looks most squarely at the viewer stays: that face is seen.
    """
    across = np.abs(edges.end[:, :2] - edges.start[:, :2]).max(axis=1)
    edges = edges.only(across > _SHORT_MM)
    swap = _swapped(edges)
    start = np.where(swap[:, None], edges.end, edges.start)
    end = np.where(swap[:, None], edges.start, edges.end)
    edges = Edges(start, end, edges.owner, edges.facing, edges.centre, edges.radius)
    keys = np.round(np.concatenate((start[:, :2], end[:, :2]), axis=1) / _SAME_MM).astype(np.int64)
    depth = np.round((start[:, 2] + end[:, 2]) / _SAME_MM)
    order = np.lexsort((edges.owner, -edges.facing, -depth, edges.turned_away, *keys.T))
    sorted_keys = keys[order]
    first = np.ones(len(order), dtype=bool)
    first[1:] = np.any(sorted_keys[1:] != sorted_keys[:-1], axis=1)
    leader = order[np.maximum.accumulate(np.where(first, np.arange(len(order)), 0))]
    nearer = (start[leader, 2] >= start[order, 2] - _SAME_MM) & (end[leader, 2] >= end[order, 2] - _SAME_MM)
    arc_alike = (edges.radius[leader] > 0) == (edges.radius[order] > 0)
    kept = order[first | ~((nearer | edges.turned_away[order]) & arc_alike)]
    return edges.only(np.sort(kept))


def _swapped(edges: Edges) -> Bools:
    """Edges that must be turned round so that each runs to the right, or upwards when it is plumb."""
    across = edges.end[:, 0] - edges.start[:, 0]
    plumb = np.abs(across) <= _SAME_MM
    found: Bools = np.where(plumb, edges.end[:, 1] < edges.start[:, 1], across < 0)
    return found


_EMPTY = Scene(
    Edges(
        np.zeros((0, 3)),
        np.zeros((0, 3)),
        np.zeros(0, dtype=np.int64),
        np.zeros(0),
        np.zeros((0, 2)),
        np.zeros(0),
    ),
    np.zeros((0, 3, 3)),
    np.zeros((0, 2)),
    np.zeros(0, dtype=np.int64),
    np.zeros(0, dtype=np.int64),
    np.zeros((0, 6)),
)
