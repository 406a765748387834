"""All boards' faces and edges in one table, put in place: made once for all directions one looks from."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import numpy.typing as npt

from shopdraw.shape.frame import Frame
from shopdraw.wood.facet import Facets

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class Shown:
    """A board to be shown: its faces and edges, and where it stands."""

    facets: Facets
    frame: Frame

    @cached_property
    def placed(self) -> tuple[Floats, Floats, Floats]:
        """Its points, normals and cylinders in the world: worked out once for all views that show it."""
        turn, at = np.array((self.frame.u, self.frame.v, self.frame.w)), np.array(self.frame.at)
        axis = self.facets.cylinders
        if len(axis):
            axis = np.concatenate((axis[:, :3] @ turn + at, axis[:, 3:6] @ turn, axis[:, 6:]), axis=1)
        return self.facets.points @ turn + at, self.facets.normals @ turn, axis


@dataclass(frozen=True, eq=False)
class Standing:
    """What `Facets` holds, of all boards, in the world, mm; every number counts through all boards.

    Attributes:
        points: (n, 3).
        triangles: (m, 3) rows of `points`.
        normals: (m, 3) outward.
        face: (m,) number of the plane that a triangle lies in.
        edges: (k, 2) rows of `points`.
        sides: (k, 2) the two triangles beside each edge.
        sharp: (k,) whether an edge is drawn from all sides; the others only as silhouettes.
        capped: (k,) whether an edge lies beside a section's cut face: the cut's outline is drawn, not the edge.
        owner: (k,) index of the board.
        edge_cylinder: (k, 2) cylinders of the two triangles, or -1.
        inner: (k,) whether an edge is that of a cut within a joint or for a fitting.
        cylinders: rows of seven: axis point, axis direction, radius.
    """

    points: Floats
    triangles: Ints
    normals: Floats
    face: Ints
    edges: Ints
    sides: Ints
    sharp: Bools
    capped: Bools
    owner: Ints
    edge_cylinder: Ints
    inner: Bools
    cylinders: Floats


def standing(shown: Sequence[Shown]) -> Standing:
    """The boards' faces and edges in place."""
    columns: list[tuple[npt.NDArray[np.generic], ...]] = [_NOTHING]
    points = triangles = faces = cylinders = 0
    for index, item in enumerate(shown):
        facets = item.facets
        at, normals, axis = item.placed
        rods = facets.edge_cylinder
        if len(axis):
            rods = np.where(rods >= 0, rods + cylinders, -1)
        columns.append(
            (
                at,
                facets.triangles + points,
                normals,
                facets.face + faces,
                facets.edges + points,
                facets.sides + triangles,
                facets.sharp,
                _beside_a_cut(facets),
                np.full(len(facets.edges), index),
                rods,
                facets.inner,
                axis,
            )
        )
        points += len(facets.points)
        triangles += len(facets.triangles)
        faces += len(facets.triangles)
        cylinders += len(axis)
    return Standing(*(np.concatenate(column) for column in zip(*columns, strict=True)))


def _beside_a_cut(facets: Facets) -> Bools:
    """Of each edge whether a face beside it is a section's cut face."""
    if not facets.capped.any():
        return np.zeros(len(facets.edges), dtype=np.bool_)
    found: Bools = facets.capped[facets.sides[:, 0]] | facets.capped[facets.sides[:, 1]]
    return found


_NONE = np.zeros(0, dtype=np.int64)
_NOTHING: tuple[npt.NDArray[np.generic], ...] = (
    np.zeros((0, 3)),
    np.zeros((0, 3), dtype=np.int64),
    np.zeros((0, 3)),
    _NONE,
    np.zeros((0, 2), dtype=np.int64),
    np.zeros((0, 2), dtype=np.int64),
    np.zeros(0, dtype=np.bool_),
    np.zeros(0, dtype=np.bool_),
    _NONE,
    np.zeros((0, 2), dtype=np.int64),
    np.zeros(0, dtype=np.bool_),
    np.zeros((0, 7)),
)
