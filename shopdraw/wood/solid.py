"""Solids: a shape's blank minus its cuts, in doubles; every face remembers the cut and segment that made it.

The only home of manifold3d. Solids are memoised by the shape's value and never changed.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import manifold3d
import numpy as np
import numpy.typing as npt

from shopdraw.shape.crossing import refuse_crossing
from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import CHORD_TOLERANCE_MM, Path, Point, arc_of, bounds
from shopdraw.wood.board import Board, Face, Shape
from shopdraw.wood.flank import surface_segments
from shopdraw.wood.overrun import OVERRUN_MM, carried_past
from shopdraw.wood.prism import ON_BOUNDARY_MM, Prism, cut_prism, exit_distance

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

_SNAP = 9
"""Decimals that a corner keeps in its own plane: 0.1 + 10 and 10.1 are one place, so no skin stays between."""


@dataclass(frozen=True, eq=False)
class Sources:
    """What made each face of a solid, looked up by (original id - first, face id).

    Attributes:
        first: original id of the blank; the cutters follow.
        normals: per prism the outward unit normal of the wood on each of its faces: low end, high end, flanks.
        arcs: per prism, for each of its faces a row of `cylinders`, or -1 for a flat one.
        cylinders: rows of seven: axis point, axis direction, radius; board frame, mm.
        cuts: per prism the number of the cut that it belongs to, -1 for the blank.
    """

    first: int
    normals: tuple[Floats, ...]
    arcs: tuple[Ints, ...]
    cylinders: Floats
    cuts: tuple[int, ...]


@dataclass(frozen=True, eq=False)
class Solid:
    """A shape's wood.

    Attributes:
        body: in the board's frame, mm.
        sources: what made its faces.
    """

    body: manifold3d.Manifold
    sources: Sources


@dataclass(frozen=True, slots=True)
class _Ring:
    """A prism of one closed path, ready to be meshed."""

    frame: Frame
    path: Path
    leaving: tuple[int, ...]
    over: float
    low: float
    high: float
    adds: bool
    """Its inside is wood (blank, island)."""
    chord_mm: float


@lru_cache(maxsize=8192)
def made(shape: Shape, chord_mm: float = CHORD_TOLERANCE_MM) -> Solid:
    """The solid of a shape with the memory of its faces.

    Args:
        chord_mm: how far a chord may lie from its arc.
    Raises:
        CrossesItself: the outline, or a cut's, crosses itself.
    """
    refuse_crossing(shape.outline, "the outline")
    for cut in shape.cuts:
        for path in (cut.outline, *cut.islands):
            refuse_crossing(path, f"the {cut.kind}'s outline")
    blank = _Ring(Frame(*_AXES, (0.0, 0.0, 0.0)), shape.outline, (), 0.0, -shape.thickness, 0.0, True, chord_mm)
    rings = [[blank]] + [
        _cutter_rings(shape, cut_prism(shape.outline, shape.thickness, cut), cut.start, cut.face, chord_mm)
        for cut in shape.cuts
    ]
    first = manifold3d.Manifold.reserve_ids(sum(map(len, rings)))
    bodies: list[manifold3d.Manifold] = []
    normals: list[Floats] = []
    arcs: list[Ints] = []
    cylinders: list[tuple[float, ...]] = []
    for group in rings:
        parts = []
        for ring in group:
            body, normal, arc = _prism_body(ring, first + len(normals), cylinders)
            parts.append(body)
            normals.append(normal)
            arcs.append(arc)
        bodies.append(_less(parts))
    table = np.array(cylinders, dtype=np.float64).reshape(-1, 7)
    cuts = tuple(number - 1 for number, group in enumerate(rings) for _ in group)
    return Solid(_less(bodies), Sources(first, tuple(normals), tuple(arcs), table, cuts))


def solid(shape: Shape) -> manifold3d.Manifold:
    """The wood of a shape in its board's frame, mm; one object for equal shapes."""
    return made(shape).body


@lru_cache(maxsize=8192)
def placed(shape: Shape, frame: Frame) -> manifold3d.Manifold:
    """The wood of a shape put in place, mm."""
    return made(shape).body.transform(np.array(frame.rows(), dtype=np.float64).reshape(3, 4))


def placed_solid(board: Board) -> manifold3d.Manifold:
    """A board's wood in the world, mm."""
    return placed(board.shape, board.frame)


def solid_volume(shape: Shape) -> float:
    """Volume of the solid, mm³: arcs count as their chords."""
    return float(made(shape).body.volume())


_AXES = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))


def _less(bodies: list[manifold3d.Manifold]) -> manifold3d.Manifold:
    if len(bodies) == 1:
        return bodies[0]
    return manifold3d.Manifold.batch_boolean(bodies, manifold3d.OpType.Subtract)


def _cutter_rings(shape: Shape, prism: Prism, start: float, face: Face, chord_mm: float) -> list[_Ring]:
    """The cut's outline, carried past the blank wherever it leaves it, and its islands, carried further still."""
    low, high = _carried_ends(shape, prism, start, face)
    rings = []
    for drawn, over, more, adds in [(prism.outline, OVERRUN_MM, 0.0, False)] + [
        (island, 2 * OVERRUN_MM, OVERRUN_MM, True) for island in prism.islands
    ]:
        path = drawn.anticlockwise()
        leaving = surface_segments(shape.outline, shape.thickness, prism, path, over)
        rings.append(_Ring(prism.frame, path, leaving, over, low - more, high + more, adds, chord_mm))
    return rings


def _carried_ends(shape: Shape, prism: Prism, start: float, face: Face) -> tuple[float, float]:
    low, high = prism.low, prism.high
    entry = 0.0
    if start <= ON_BOUNDARY_MM:
        entry = OVERRUN_MM + (exit_distance(shape, prism) if face is Face.TILTED else 0.0)
    if face is Face.TILTED:
        return low, high + entry
    blank_low, blank_high = _extent(shape, prism.frame)
    if prism.entry > 0:
        return (low - OVERRUN_MM if low <= blank_low + ON_BOUNDARY_MM else low), high + entry
    return low - entry, (high + OVERRUN_MM if high >= blank_high - ON_BOUNDARY_MM else high)


def _extent(shape: Shape, frame: Frame) -> tuple[float, float]:
    """Where the blank's box lies along the third axis of one of the six faces' frames."""
    u0, v0, u1, v1 = bounds(shape.outline)
    ends = [
        frame.local(corner)[2] for corner in ((u0, v0, -shape.thickness), (u1, v1, 0.0))
    ]
    return min(ends), max(ends)


def _snapped(run: tuple[tuple[Point, int], ...]) -> list[tuple[Point, int]]:
    snapped = [((round(x, _SNAP), round(y, _SNAP)), segment) for (x, y), segment in run]
    return [item for item, after in zip(snapped, snapped[1:] + snapped[:1], strict=True) if item[0] != after[0]]


def _prism_body(
    ring: _Ring, original: int, cylinders: list[tuple[float, ...]]
) -> tuple[manifold3d.Manifold, Floats, Ints]:
    """The prism's mesh, the wood's outward normal on each face, and for each face its row of cylinders or -1."""
    run = _snapped(carried_past(ring.path, ring.leaving, ring.over, ring.chord_mm))
    flat = np.array([point for point, _ in run], dtype=np.float64)
    count = len(flat)
    axes = np.array((ring.frame.u, ring.frame.v, ring.frame.w))
    at = np.array(ring.frame.at)
    low = flat @ axes[:2] + (at + round(ring.low, _SNAP) * axes[2])
    high = flat @ axes[:2] + (at + round(ring.high, _SNAP) * axes[2])
    cap = np.array(manifold3d.triangulate([flat]), dtype=np.int64).reshape(-1, 3)
    here = np.arange(count)
    there = (here + 1) % count
    walls = np.concatenate(
        (np.stack((here, there, there + count), 1), np.stack((here, there + count, here + count), 1))
    )
    triangles = np.concatenate((cap[:, ::-1], cap + count, walls))
    faces = np.concatenate((np.zeros(len(cap)), np.ones(len(cap)), here + 2, here + 2))
    mesh = manifold3d.Mesh64(
        vert_properties=np.ascontiguousarray(np.concatenate((low, high))),
        tri_verts=np.ascontiguousarray(triangles, dtype=np.uint64),
        run_index=np.array([0, 3 * len(triangles)], dtype=np.uint64),
        run_original_id=np.array([original], dtype=np.uint32),
        face_id=np.ascontiguousarray(faces, dtype=np.uint64),
    )
    body = manifold3d.Manifold(mesh)
    if body.is_empty():
        raise ValueError(f"an outline of {count} corners makes no solid ({body.status()}): it may cross itself")
    side = flat[there] - flat
    side /= np.linalg.norm(side, axis=1, keepdims=True)
    flanks = side[:, 1:2] * axes[0] - side[:, 0:1] * axes[1]
    normals = np.concatenate(((-axes[2])[None], axes[2][None], flanks))
    arcs = np.concatenate((np.array([-1, -1]), _arc_rows(ring, [s for _, s in run], cylinders)))
    return body, normals if ring.adds else -normals, arcs


def _arc_rows(ring: _Ring, segments: list[int], cylinders: list[tuple[float, ...]]) -> Ints:
    """For each chord the row of the cylinder it stands for, or -1; new cylinders are added to the list."""
    rows: dict[int, int] = {}
    pairs = list(ring.path.pairs())
    for segment in sorted(set(segments)):
        here, there = pairs[segment]
        if here.bulge and segment not in ring.leaving:
            arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
            point: Vec3 = ring.frame.point((arc.centre[0], arc.centre[1], 0.0))
            rows[segment] = len(cylinders)
            cylinders.append((*point, *ring.frame.w, arc.radius))
    return np.array([rows.get(segment, -1) for segment in segments], dtype=np.int64)


def is_sound(body: manifold3d.Manifold) -> bool:
    """Whether manifold3d reports no error for a solid."""
    return bool(body.status() == manifold3d.Error.NoError) and math.isfinite(body.volume())
