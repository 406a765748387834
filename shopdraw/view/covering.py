"""Which stretches of each edge are covered by faces nearer to the viewer.

Each edge is clipped against each triangle that is turned to the viewer: three sides and "nearer" are four linear
conditions along the edge, so what the triangle covers is one interval. The depth test is strict (a face doesn't
cover its own edges), the side test closed (no gap where two triangles meet).
"""

from __future__ import annotations

import numpy as np

from shopdraw.view.scene import Edges, Floats, Ints, Scene

_NEARER_MM = 1e-5
"""How much nearer a face must be to cover; less is touching."""
_BESIDE_MM = 1e-6
"""How far outside a triangle an edge still counts as inside it."""
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
    wholly = edges.turned_away | _behind_one_face(scene)[edges.owner]
    open_rows = np.flatnonzero(~wholly)
    edge, low, high = _covered(edges.only(open_rows), scene)
    edge = np.concatenate((open_rows[edge], np.flatnonzero(wholly)))
    low = np.concatenate((low, np.zeros(int(wholly.sum()))))
    high = np.concatenate((high, np.ones(int(wholly.sum()))))
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


def _covered(edges: Edges, scene: Scene) -> tuple[Ints, Floats, Floats]:
    rows, triangles = _near(edges, scene)
    if not len(rows):
        return rows, np.zeros(0), np.zeros(0)
    start, end = edges.start[rows], edges.end[rows]
    corners = scene.corners[triangles]
    low, high = np.zeros(len(rows)), np.ones(len(rows))
    for first, second in ((0, 1), (1, 2), (2, 0)):
        side = corners[:, second, :2] - corners[:, first, :2]
        size = np.maximum(np.hypot(side[:, 0], side[:, 1]), 1e-12)
        inward = np.stack((-side[:, 1], side[:, 0]), 1) / size[:, None]
        at_start = ((start[:, :2] - corners[:, first, :2]) * inward).sum(axis=1)
        at_end = ((end[:, :2] - corners[:, first, :2]) * inward).sum(axis=1)
        low, high = _clipped(low, high, at_start, at_end, _BESIDE_MM)
    slope = scene.slope[triangles]
    base = corners[:, 0]
    at_start = base[:, 2] + ((start[:, :2] - base[:, :2]) * slope).sum(axis=1) - start[:, 2]
    at_end = base[:, 2] + ((end[:, :2] - base[:, :2]) * slope).sum(axis=1) - end[:, 2]
    low, high = _clipped(low, high, at_start, at_end, -_NEARER_MM)
    kept = high - low > _PART
    return rows[kept], low[kept], high[kept]


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


def _near(edges: Edges, scene: Scene) -> tuple[Ints, Ints]:
    """Pairs of an edge and a triangle that may cover some of it: bundles' boxes first, then the triangles' own."""
    none = np.zeros(0, dtype=np.int64)
    if not len(scene.bundle):
        return none, none
    low = np.minimum(edges.start, edges.end)
    high = np.maximum(edges.start, edges.end)
    tri_low, tri_high = scene.corners.min(axis=1), scene.corners.max(axis=1)
    first = np.flatnonzero(np.concatenate(([True], np.diff(scene.bundle) > 0)))
    sizes = np.diff(np.append(first, len(scene.bundle)))
    bundle_low, bundle_high = np.minimum.reduceat(tri_low, first), np.maximum.reduceat(tri_high, first)
    rows, bundles = np.nonzero(_meets(low[:, None], high[:, None], bundle_low[None], bundle_high[None]))
    many = sizes[bundles]
    triangles = np.arange(many.sum()) - np.repeat(np.cumsum(many) - many, many) + np.repeat(first[bundles], many)
    rows = np.repeat(rows, many)
    kept = np.flatnonzero(_meets(low[rows], high[rows], tri_low[triangles], tri_high[triangles]))
    return rows[kept], triangles[kept]


def _meets(low: Floats, high: Floats, other_low: Floats, other_high: Floats) -> np.typing.NDArray[np.bool_]:
    """Boxes that overlap on paper, the other one at least partly nearer."""
    found: np.typing.NDArray[np.bool_] = (
        (low[..., 0] <= other_high[..., 0] + _BESIDE_MM)
        & (high[..., 0] >= other_low[..., 0] - _BESIDE_MM)
        & (low[..., 1] <= other_high[..., 1] + _BESIDE_MM)
        & (high[..., 1] >= other_low[..., 1] - _BESIDE_MM)
        & (low[..., 2] < other_high[..., 2] - _NEARER_MM)
    )
    return found


def _behind_one_face(scene: Scene) -> np.typing.NDArray[np.bool_]:
    """Boards that lie whole behind one flat face: their box is inside the face on paper, and behind its plane."""
    boxes = scene.boxes
    if not len(scene.face):
        return np.zeros(len(boxes), dtype=bool)
    order = np.argsort(scene.face, kind="stable")
    starts = np.flatnonzero(np.concatenate(([True], np.diff(scene.face[order]) > 0)))
    low = np.minimum.reduceat(scene.corners[order].min(axis=1), starts)
    high = np.maximum.reduceat(scene.corners[order].max(axis=1), starts)
    inside = (
        (low[None, :, 0] <= boxes[:, None, 0])
        & (low[None, :, 1] <= boxes[:, None, 1])
        & (high[None, :, 0] >= boxes[:, None, 3])
        & (high[None, :, 1] >= boxes[:, None, 4])
        & (_least_depth(scene, order[starts], boxes) > boxes[:, None, 5] + _NEARER_MM)
    )
    area = np.add.reduceat(_areas(scene.corners[order]), starts)
    box_area = (high[:, 0] - low[:, 0]) * (high[:, 1] - low[:, 1])
    hidden: np.typing.NDArray[np.bool_] = (inside & (area >= box_area * (1 - 1e-9))).any(axis=1)
    ends = np.append(starts[1:], len(order))
    for board, face in zip(*np.nonzero(inside & ~hidden[:, None]), strict=True):
        if not hidden[board]:
            box = boxes[board]
            shares = _shared_areas(scene.corners[order[starts[face] : ends[face]], :, :2], box)
            hidden[board] = shares >= (box[3] - box[0]) * (box[4] - box[1]) * (1 - 1e-9)
    return hidden


def _least_depth(scene: Scene, triangles: Ints, boxes: Floats) -> Floats:
    """(boards, faces): the least depth of each face's plane over each board's box."""
    corner, slope = scene.corners[triangles, 0], scene.slope[triangles]
    middle, half = (boxes[:, :2] + boxes[:, 3:5]) / 2, (boxes[:, 3:5] - boxes[:, :2]) / 2
    level = corner[:, 2] - (corner[:, :2] * slope).sum(axis=1)
    found: Floats = level[None, :] + middle @ slope.T - half @ np.abs(slope).T
    return found


def _areas(corners: Floats) -> Floats:
    a, b = corners[:, 1, :2] - corners[:, 0, :2], corners[:, 2, :2] - corners[:, 0, :2]
    found: Floats = np.abs(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]) / 2
    return found


def _shared_areas(corners: Floats, box: Floats) -> float:
    """Area of an upright rectangle that triangles which don't overlap cover, mm²."""
    total = 0.0
    for triangle in corners.tolist():
        polygon = triangle
        for axis, bound, sign in ((0, box[0], 1.0), (0, box[3], -1.0), (1, box[1], 1.0), (1, box[4], -1.0)):
            polygon = _cut_off(polygon, axis, float(bound), sign)
        total += abs(
            sum(
                polygon[i - 1][0] * polygon[i][1] - polygon[i][0] * polygon[i - 1][1] for i in range(len(polygon))
            )
        ) / 2
    return total


def _cut_off(polygon: list[list[float]], axis: int, bound: float, sign: float) -> list[list[float]]:
    """The part of a convex polygon on one side of an upright line."""
    kept: list[list[float]] = []
    for i, here in enumerate(polygon):
        before = polygon[i - 1]
        inside, was_inside = sign * (here[axis] - bound) >= 0, sign * (before[axis] - bound) >= 0
        if inside != was_inside:
            part = (bound - before[axis]) / (here[axis] - before[axis])
            kept.append([before[k] + part * (here[k] - before[k]) for k in (0, 1)])
        if inside:
            kept.append(here)
    return kept
