"""The outlines of cut wood: edges round a section's face chained to closed paths, with true arcs where they are."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from shopdraw.shape.frame import Frame
from shopdraw.shape.inside import depth_inside
from shopdraw.shape.path import Corner, Path, Point, signed_area
from shopdraw.view.direction import Direction
from shopdraw.view.standing import Floats
from shopdraw.wood.facet import Facets

_STRAIGHT = 1e-9
_SAME_MM = 1e-6
_SLIVER_MM2 = 1e-3

Round = tuple[float, float, float] | None
"""Centre and radius of the arc that a chord stands for."""


@dataclass(frozen=True, slots=True)
class CutEdge:
    """One edge of a cut face on paper, the wood at its left."""

    start: Point
    end: Point
    round: Round


@dataclass(frozen=True, slots=True)
class CutFace:
    """One face of cut wood: outline and islands, anticlockwise, and its edges as they were chained."""

    outline: Path
    islands: tuple[Path, ...]
    edges: tuple[CutEdge, ...]


def cut_faces(facets: Facets, frame: Frame, direction: Direction) -> tuple[CutFace, ...]:
    """The faces that a section's plane made.

    Args:
        facets: what is left of a board beyond the plane, its cut face capped.
        frame: where the board stands.
        direction: which way the section is looked at.
    """
    capped = facets.capped[facets.sides]
    rows = np.flatnonzero(capped[:, 0] ^ capped[:, 1])
    axes = np.array((direction.right, direction.up)) @ np.array((frame.u, frame.v, frame.w)).T
    at = np.array(direction.on_paper(frame.at))
    points = facets.points @ axes.T + at
    rounds = _rounds(facets, frame, direction, axes, at)
    onward: dict[int, list[tuple[int, Round]]] = {}
    for row in rows.tolist():
        start, end = facets.edges[row].tolist()
        first = bool(capped[row, 0])
        rod = int(facets.edge_cylinder[row, 1 if first else 0])
        a, b = (start, end) if first else (end, start)
        onward.setdefault(a, []).append((b, rounds.get(rod)))
    loops = []
    while onward:
        loop = _loop(onward, points)
        path = _path(loop)
        if path is not None and abs(signed_area(path)) > _SLIVER_MM2:
            loops.append((path, loop))
    return _faces(loops)


def _rounds(facets: Facets, frame: Frame, direction: Direction, axes: Floats, at: Floats) -> dict[int, Round]:
    found: dict[int, Round] = {}
    toward = np.array(frame.local_direction(direction.toward))
    for index, rod in enumerate(facets.cylinders):
        if abs(float(rod[3:6] @ toward)) > 1 - 1e-12:
            x, y = (axes @ rod[:3] + at).tolist()
            found[index] = (x, y, float(rod[6]))
    return found


def _loop(onward: dict[int, list[tuple[int, Round]]], points: Floats) -> list[CutEdge]:
    first = here = next(iter(onward))
    loop = []
    while True:
        there, rod = onward[here].pop()
        if not onward[here]:
            del onward[here]
        a, b = points[here].tolist(), points[there].tolist()
        loop.append(CutEdge((a[0], a[1]), (b[0], b[1]), rod))
        here = there
        if here == first or here not in onward:
            return loop


def _path(loop: list[CutEdge]) -> Path | None:
    """The loop with straight runs as one segment and chords of one circle as one arc."""
    edges = [edge for edge in loop if math.dist(edge.start, edge.end) > _SAME_MM]
    if len(edges) < 3:
        return None
    breaks = [i for i in range(len(edges)) if not _runs_on(edges[i - 1], edges[i])]
    if not breaks:  # one full circle
        breaks = [0, len(edges) // 2]
    corners = []
    for k, first in enumerate(breaks):
        last = breaks[(k + 1) % len(breaks)]
        run = edges[first:last] if first < last else edges[first:] + edges[:last]
        corners.append(Corner(*run[0].start, _bulge(run)))
    if len(corners) < 2 or (len(corners) == 2 and not any(c.bulge for c in corners)):
        return None
    return Path(tuple(corners))


def _runs_on(before: CutEdge, after: CutEdge) -> bool:
    if before.round or after.round:
        return before.round == after.round
    ax, ay = before.end[0] - before.start[0], before.end[1] - before.start[1]
    bx, by = after.end[0] - after.start[0], after.end[1] - after.start[1]
    turn = (ax * by - ay * bx) / (math.hypot(ax, ay) * math.hypot(bx, by))
    return abs(turn) < _STRAIGHT and ax * bx + ay * by > 0


def _bulge(run: list[CutEdge]) -> float:
    rod = run[0].round
    if rod is None:
        return 0.0
    sweep = 0.0
    for edge in run:
        a = math.atan2(edge.start[1] - rod[1], edge.start[0] - rod[0])
        b = math.atan2(edge.end[1] - rod[1], edge.end[0] - rod[0])
        sweep += (b - a + math.pi) % (2 * math.pi) - math.pi
    return math.tan(sweep / 4)


def _faces(loops: list[tuple[Path, list[CutEdge]]]) -> tuple[CutFace, ...]:
    outer = [(path, list(loop)) for path, loop in loops if signed_area(path) > 0]
    islands: list[list[Path]] = [[] for _ in outer]
    for path, loop in loops:
        if signed_area(path) > 0:
            continue
        inside = (path.corners[0].x, path.corners[0].y)
        holders = [i for i, (around, _) in enumerate(outer) if depth_inside(around, inside) > -_SAME_MM]
        if holders:
            holder = min(holders, key=lambda i: signed_area(outer[i][0]))
            islands[holder].append(path.reversed())
            outer[holder][1].extend(loop)
    return tuple(
        CutFace(path, tuple(holes), tuple(edges)) for (path, edges), holes in zip(outer, islands, strict=True)
    )
