"""Which stretches of each edge are covered by faces nearer to the viewer.

Each edge is clipped against each triangle that is turned to the viewer: three sides and "nearer" are four linear
conditions along the edge, so what the triangle covers is one interval. The depth test is strict (a face doesn't
cover its own edges), the side test closed (no gap where two triangles meet).
"""

from __future__ import annotations

import numpy as np

from shopdraw.view.nearby import AT_ONCE, BESIDE_MM, NEARER_MM, nearby
from shopdraw.view.scene import Scene
from shopdraw.view.standing import Floats, Ints

_PART = 1e-12
_SHORTEST_MM = 1e-5
"""Stretches shorter than this are dropped."""


def stretches(scene: Scene) -> tuple[Ints, Floats, Floats, Ints, Floats, Floats]:
    """Visible and covered stretches of the scene's edges.

    Returns:
        For the visible ones (edge, from, to), then for the covered ones the same; from and to are parts of the
        edge's length, sorted by edge and part.
    """
    edges = scene.edges
    count = len(edges.owner)
    if not count:
        none = np.zeros(0, dtype=np.int64), np.zeros(0), np.zeros(0)
        return (*none, *none)
    away = np.flatnonzero(edges.turned_away)
    near = nearby(scene, np.flatnonzero(~edges.turned_away))
    edge, low, high = (
        np.concatenate(columns)
        for columns in zip(
            (away, np.zeros(len(away)), np.ones(len(away))), near.shaded, _covered(scene, *near.pairs), strict=True
        )
    )
    return _parted(edge, low, high, np.linalg.norm(edges.end[:, :2] - edges.start[:, :2], axis=1), count)


def _parted(
    edge: Ints, low: Floats, high: Floats, length: Floats, count: int
) -> tuple[Ints, Floats, Floats, Ints, Floats, Floats]:
    """The union of the intervals of each edge, and what it leaves."""
    # a mark of no length at both ends of each edge bounds its gaps
    ends = np.arange(count)
    edge = np.concatenate((ends, edge, ends))
    low = np.concatenate((np.zeros(count), low, np.ones(count)))
    high = np.concatenate((np.zeros(count), high, np.ones(count)))
    order = np.lexsort((low, edge))
    edge, low, high = edge[order], low[order], high[order]
    reach = np.maximum.accumulate(edge * 2.0 + high) - edge * 2.0
    same = edge[1:] == edge[:-1]
    shortest = _SHORTEST_MM / np.maximum(length, _SHORTEST_MM)
    gap = same & (low[1:] - reach[:-1] > shortest[edge[1:]])
    rows = np.flatnonzero(gap)
    seen_edge, seen_low, seen_high = edge[rows], reach[rows], low[rows + 1]
    # covered runs lie between the gaps, the edge's ends included
    opens = np.flatnonzero(np.concatenate(([True], gap | ~same)))
    closes = np.flatnonzero(np.concatenate((gap | ~same, [True])))
    run_edge, run_low, run_high = edge[opens], low[opens], reach[closes]
    real = run_high - run_low > shortest[run_edge]
    return seen_edge, seen_low, seen_high, run_edge[real], run_low[real], run_high[real]


def _covered(scene: Scene, rows: Ints, triangles: Ints) -> tuple[Ints, Floats, Floats]:
    """Of each edge the stretch that a triangle covers; some pairs at a time, so that a large piece takes no memory."""
    places = range(0, max(len(rows), 1), AT_ONCE)
    shares = [_covered_by(scene, rows[at : at + AT_ONCE], triangles[at : at + AT_ONCE]) for at in places]
    edge, low, high = (np.concatenate(columns) for columns in zip(*shares, strict=True))
    return edge, low, high


def _covered_by(scene: Scene, rows: Ints, triangles: Ints) -> tuple[Ints, Floats, Floats]:
    start, end = scene.edges.start.take(rows, axis=0), scene.edges.end.take(rows, axis=0)
    corners = scene.corners.take(triangles, axis=0)
    low, high = np.zeros(len(rows)), np.ones(len(rows))
    for first, second in ((0, 1), (1, 2), (2, 0)):
        side = corners[:, second, :2] - corners[:, first, :2]
        size = np.maximum(np.hypot(side[:, 0], side[:, 1]), 1e-12)
        inward = np.stack((-side[:, 1], side[:, 0]), 1) / size[:, None]
        at_start = _along(start[:, :2] - corners[:, first, :2], inward)
        at_end = _along(end[:, :2] - corners[:, first, :2], inward)
        low, high = _clipped(low, high, at_start, at_end, BESIDE_MM)
    slope = scene.slope.take(triangles, axis=0)
    base = corners[:, 0]
    at_start = base[:, 2] + _along(start[:, :2] - base[:, :2], slope) - start[:, 2]
    at_end = base[:, 2] + _along(end[:, :2] - base[:, :2], slope) - end[:, 2]
    low, high = _clipped(low, high, at_start, at_end, -NEARER_MM)
    kept = high - low > _PART
    return rows[kept], low[kept], high[kept]


def _along(vectors: Floats, ways: Floats) -> Floats:
    """The product of each vector on paper with its way."""
    found: Floats = vectors[:, 0] * ways[:, 0] + vectors[:, 1] * ways[:, 1]
    return found


def _clipped(low: Floats, high: Floats, at_start: Floats, at_end: Floats, margin: float) -> tuple[Floats, Floats]:
    """The interval where a condition that is linear along the edge holds (≥ 0), cut out of the one so far.

    Args:
        margin: an edge that runs along the limit, nearer than this at both ends, meets the condition when the margin
            is positive and fails it when it is negative. Where an edge crosses the limit it is cut exactly there.
    """
    with np.errstate(divide="ignore", invalid="ignore"):
        zero = at_start / (at_start - at_end)
    along = (np.abs(at_start) <= abs(margin)) & (np.abs(at_end) <= abs(margin))
    never = along if margin < 0 else (at_start < 0) & (at_end < 0) & ~along
    never = never | ((at_start == at_end) & (at_start < 0) & ~along)
    low = np.where((at_end > at_start) & ~along, np.maximum(low, zero), low)
    high = np.where((at_end < at_start) & ~along, np.minimum(high, zero), high)
    return low, np.where(never, -1.0, high)
