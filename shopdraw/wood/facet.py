"""The flat faces, sharp edges and smooth edges of a shape's solid, for views, sections and pictures."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import manifold3d
import numpy as np
import numpy.typing as npt

from shopdraw.shape.frame import Vec3
from shopdraw.wood.board import Shape
from shopdraw.wood.solid import Floats, Ints, Sources, made

DRAWN_CHORD_MM = 0.01
"""How far a chord may lie from its arc in what is drawn: a twentieth of the thinnest line, and half as many triangles
as wood is measured with. Arcs are drawn as arcs; only where one is cut off may it be out by so much."""
INNER_KINDS = frozenset(
    {"mortise", "v-groove", "bore", "slot", "hinge-barrel", "hinge-leaf", "lock", "escutcheon"}
)
"""Cuts that lie within a joint or take a fitting: out of sight they don't tell where boards lie."""
_SAME_NORMAL = 1e-7
"""Two faces whose unit normals differ by less are one flat face."""
_TANGENT = 0.02
"""Two surfaces whose unit normals differ by less (about 1°) run smoothly into each other."""


@dataclass(frozen=True, eq=False)
class Facets:
    """What bounds a piece of wood, in its board's frame, mm; arcs as chords of DRAWN_CHORD_MM.

    Attributes:
        points: (n, 3).
        triangles: (m, 3) rows of `points`, anticlockwise seen from outside.
        normals: (m, 3) outward, exact: from the cut or the blank, not from the triangle.
        cylinder: (m,) row of `cylinders` that a triangle stands for, or -1.
        capped: (m,) triangles made by a section's plane.
        face: (m,) number of the plane that a triangle lies in.
        edges: (k, 2) rows of `points`, where two faces meet.
        sides: (k, 2) the two triangles beside each edge.
        sharp: (k,) whether the faces meet at an angle; the others are drawn only as silhouettes.
        edge_cylinder: (k, 2) cylinders of the two triangles, or -1.
        inner: (k,) whether a face beside an edge is that of a cut within a joint or for a fitting.
        cylinders: rows of seven: axis point, axis direction, radius.
    """

    points: Floats
    triangles: Ints
    normals: Floats
    cylinder: Ints
    capped: npt.NDArray[np.bool_]
    face: Ints
    edges: Ints
    sides: Ints
    sharp: npt.NDArray[np.bool_]
    edge_cylinder: Ints
    inner: npt.NDArray[np.bool_]
    cylinders: Floats


@lru_cache(maxsize=8192)
def facets(shape: Shape) -> Facets:
    """The faces and edges of a shape's solid."""
    whole = made(shape, DRAWN_CHORD_MM)
    return _facets_of(shape, whole.body, whole.sources, None)


@lru_cache(maxsize=8192)
def facets_beyond(shape: Shape, normal: Vec3, offset: float) -> Facets:
    """The faces and edges of what is left of a shape on one side of a plane; the cut face is capped.

    Args:
        normal: unit direction that points to the side kept, in the board's frame.
        offset: the plane's distance from the frame's origin along it, mm.
    """
    whole = made(shape, DRAWN_CHORD_MM)
    return _facets_of(shape, whole.body.trim_by_plane(normal, offset), whole.sources, normal)


def _facets_of(shape: Shape, body: manifold3d.Manifold, sources: Sources, kept: Vec3 | None) -> Facets:
    mesh = body.to_mesh64()
    points = np.asarray(mesh.vert_properties, dtype=np.float64)[:, :3]
    triangles = np.asarray(mesh.tri_verts).astype(np.int64)
    if len(mesh.merge_from_vert):
        onto = np.arange(len(points))
        onto[np.asarray(mesh.merge_from_vert).astype(np.int64)] = np.asarray(mesh.merge_to_vert).astype(np.int64)
        triangles = onto[triangles]
    normals, cylinder, cut = _origins(mesh, len(triangles), sources, kept)
    within = np.array([kind in INNER_KINDS for kind in (*(c.kind for c in shape.cuts), "", "")], dtype=np.bool_)
    edges, sides = _meetings(triangles, len(points))
    beside = normals[sides]
    apart = np.linalg.norm(beside[:, 0] - beside[:, 1], axis=1)
    kept_edges = apart > _SAME_NORMAL
    edges, sides, apart = edges[kept_edges], sides[kept_edges], apart[kept_edges]
    edge_cylinder = cylinder[sides]
    sharp = apart > _TANGENT
    curved = (edge_cylinder >= 0).any(axis=1)
    if curved.any():
        rows = np.flatnonzero(curved)
        middle = points[edges[rows]].mean(axis=1)
        true = [_true_normals(normals[sides[rows, k]], edge_cylinder[rows, k], middle, sources) for k in (0, 1)]
        sharp[rows] = np.linalg.norm(true[0] - true[1], axis=1) > _TANGENT
    return Facets(
        points=points,
        triangles=triangles,
        normals=normals,
        cylinder=cylinder,
        capped=cut == _CAP,
        face=planes(points, triangles, normals),
        edges=edges,
        sides=sides,
        sharp=sharp,
        edge_cylinder=edge_cylinder,
        inner=within[cut[sides]].any(axis=1),
        cylinders=sources.cylinders,
    )


def planes(points: Floats, triangles: Ints, normals: Floats) -> Ints:
    """The triangles numbered by the plane they lie in."""
    offsets = (points[triangles[:, 0]] * normals).sum(axis=1)
    keys = np.column_stack((np.round(normals, 6), np.round(offsets, 4))) + 0.0
    order = np.lexsort(keys.T)
    new = np.any(keys[order][1:] != keys[order][:-1], axis=1)
    face = np.empty(len(triangles), dtype=np.int64)
    face[order] = np.concatenate(([0], np.cumsum(new))) if len(order) else 0
    return face


_CAP = -2
"""In place of a cut's number: made by a section's plane. The blank is -1."""


def _origins(mesh: manifold3d.Mesh64, count: int, sources: Sources, kept: Vec3 | None) -> tuple[Floats, Ints, Ints]:
    """Of each triangle its normal, its cylinder or -1, and the number of the cut that made it."""
    normals = np.empty((count, 3))
    cylinder = np.full(count, -1, dtype=np.int64)
    cut = np.full(count, _CAP, dtype=np.int64)
    face_ids = np.asarray(mesh.face_id).astype(np.int64)
    starts = np.asarray(mesh.run_index).astype(np.int64) // 3
    for run, original in enumerate(np.asarray(mesh.run_original_id).astype(np.int64)):
        here = slice(starts[run], starts[run + 1])
        source = int(original) - sources.first
        if 0 <= source < len(sources.normals):
            normals[here] = sources.normals[source][face_ids[here]]
            cylinder[here] = sources.arcs[source][face_ids[here]]
            cut[here] = sources.cuts[source]
        else:
            normals[here] = -np.array(kept if kept is not None else (0.0, 0.0, 0.0))
    return normals, cylinder, cut


def _meetings(triangles: Ints, count: int) -> tuple[Ints, Ints]:
    """Each edge once, from its lower-numbered triangle's side, with the two triangles beside it."""
    total = len(triangles)
    start = triangles.T.ravel()
    end = triangles[:, (1, 2, 0)].T.ravel()
    owner = np.tile(np.arange(total), 3)
    key = np.minimum(start, end) * count + np.maximum(start, end)
    order = np.lexsort((start > end, key))
    # a sound solid has each edge exactly twice (or an even number of times where edges touch): forward, backward
    forward = order[start[order] < end[order]]
    backward = order[start[order] > end[order]]
    return np.stack((start[forward], end[forward]), 1), np.stack((owner[forward], owner[backward]), 1)


def _true_normals(flat: Floats, cylinder: Ints, at: Floats, sources: Sources) -> Floats:
    """Normals of the true surface at a point: of the cylinder that a chord stands for, else the flat face's."""
    found = flat.copy()
    rows = np.flatnonzero(cylinder >= 0)
    if len(rows):
        rod = sources.cylinders[cylinder[rows]]
        out = at[rows] - rod[:, :3]
        out -= (out * rod[:, 3:6]).sum(axis=1, keepdims=True) * rod[:, 3:6]
        out /= np.maximum(np.linalg.norm(out, axis=1, keepdims=True), 1e-12)
        outward = np.sign((out * flat[rows]).sum(axis=1, keepdims=True))
        found[rows] = out * outward
    return found
