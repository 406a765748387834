"""Pairs of an edge and a triangle that may cover some of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from shopdraw.view.scene import Scene
from shopdraw.view.shade import Shade, parted, shade, spread
from shopdraw.view.standing import Bools, Floats, Ints
from shopdraw.view.wide_face import behind_a_rectangle, wide_faces

NEARER_MM = 1e-5
"""How much nearer a face must be to cover; less is touching."""
BESIDE_MM = 1e-6
"""How far outside a triangle an edge still counts as inside it."""


AT_ONCE = 100_000
"""Pairs looked at together: they stay in the processor's own store, and a large piece takes no more memory."""


@dataclass(frozen=True, eq=False)
class Nearby:
    """What may cover some edges.

    Attributes:
        shaded: (edge, from, to): stretches that lie wholly behind large flat faces, as parts of an edge's length.
        pairs: (edge, triangle): what is left to look at.
    """

    shaded: tuple[Ints, Floats, Floats]
    pairs: tuple[Ints, Ints]


def nearby(scene: Scene, rows: Ints) -> Nearby:
    """What may cover some of the scene's edges.

    Args:
        rows: the edges.
    """
    # whatever lies behind a triangle that is itself behind a face lies behind the face
    faces, in_front = wide_faces(scene)
    behind = behind_a_rectangle((scene.edges.start.take(rows, axis=0), scene.edges.end.take(rows, axis=0)), faces)
    away, rows = rows[behind], rows[~behind]
    edges = scene.edges.only(rows)
    grid = shade(scene, faces, edges)
    parts = parted(edges.start, edges.end, grid.size)
    hidden = grid.hides(parts.low, parts.high)
    open_ = np.flatnonzero(~hidden)
    wholly = np.bincount(parts.line[open_], minlength=len(rows)) == 0
    some = np.flatnonzero(hidden & ~wholly[parts.line])
    many = parts.many[parts.line[some]]
    away = np.concatenate((away, rows[wholly]))
    shaded = (
        np.concatenate((away, rows[parts.line[some]])),
        np.concatenate((np.zeros(len(away)), parts.step[some] / many)),
        np.concatenate((np.ones(len(away)), (parts.step[some] + 1) / many)),
    )
    low, high = parts.low.take(open_, axis=0), parts.high.take(open_, axis=0)
    piece, triangle = _meeting(scene, in_front, grid, low, high)
    pairs = _each_once(parts.line[open_][piece] * len(scene.face) + triangle)
    count = max(len(scene.face), 1)
    return Nearby(shaded, (rows[pairs // count], pairs % count))


def _each_once(numbers: Ints) -> Ints:
    """The numbers in ascending order, each once. Sorting is far quicker here than the hashing of numpy's own."""
    ordered = np.sort(numbers)
    return ordered[np.flatnonzero(np.diff(ordered, prepend=-1))]


def _meeting(
    scene: Scene, triangles: Bools, grid: Shade, low: Floats, high: Floats
) -> tuple[Ints, Ints]:
    """Boxes no larger than a cell, and the triangles that overlap them on paper and are somewhere nearer."""
    x0, x1 = grid.column_of(low[:, 0] - BESIDE_MM), grid.column_of(high[:, 0] + BESIDE_MM)
    y0, y1 = grid.row_of(low[:, 1] - BESIDE_MM), grid.row_of(high[:, 1] + BESIDE_MM)
    wide, tall = x1 > x0, y1 > y0
    parts = [(y0, x0, np.ones(len(low), dtype=np.bool_)), (y0, x1, wide), (y1, x0, tall), (y1, x1, wide & tall)]
    box = np.concatenate([np.flatnonzero(where) for _, _, where in parts])
    at = np.concatenate([(row * grid.columns + column)[where] for row, column, where in parts])
    deepest = np.full(grid.depth.size, np.inf)
    np.minimum.at(deepest, at, low[box, 2])
    triangle, cell = _cells_of(scene, triangles, grid, deepest.reshape(grid.depth.shape))
    starts = np.concatenate(([0], np.cumsum(np.bincount(cell, minlength=grid.depth.size))))
    ordered = triangle[np.argsort(cell, kind="stable")]
    lows, highs = np.ascontiguousarray(low.T), np.ascontiguousarray(high.T)
    tri_lows, tri_highs = (np.ascontiguousarray(column.T) for column in scene.box)
    found_boxes, found_triangles = [], []
    first, many = starts[at], starts[at + 1] - starts[at]
    for share in _shares(many):
        which, entry = spread(first[share], many[share])
        boxes, triangle = box[share][which], ordered[entry]
        for axis, margin in ((2, -NEARER_MM), (1, BESIDE_MM), (0, BESIDE_MM)):
            kept = np.flatnonzero(lows[axis][boxes] <= tri_highs[axis][triangle] + margin)
            boxes, triangle = boxes[kept], triangle[kept]
        for axis in (1, 0):
            kept = np.flatnonzero(highs[axis][boxes] >= tri_lows[axis][triangle] - BESIDE_MM)
            boxes, triangle = boxes[kept], triangle[kept]
        found_boxes.append(boxes)
        found_triangles.append(triangle)
    return np.concatenate(found_boxes), np.concatenate(found_triangles)


def _shares(many: Ints) -> Iterator[slice]:
    """Slices of a list whose entries stand for so many pairs each, so that no slice has many more than `AT_ONCE`."""
    ends = np.searchsorted(np.cumsum(many), np.arange(AT_ONCE, many.sum() + AT_ONCE, AT_ONCE)) + 1
    start = 0
    for end in (*ends.tolist(), len(many)):
        if end > start or not start:
            yield slice(start, end)
            start = end


def _cells_of(scene: Scene, triangles: Bools, grid: Shade, deepest: Floats) -> tuple[Ints, Ints]:
    """Each triangle and the cells where it may cover something.

    Args:
        triangles: which of them count.
        deepest: (rows, columns) the depth of the deepest thing to be covered in each cell.
    """
    low, high = scene.box
    y0, y1 = grid.row_of(low[:, 1]), grid.row_of(high[:, 1])
    which, row = spread(y0, np.where(triangles & grid.holds(low, high), y1 - y0 + 1, 0))
    x0, x1 = low[which, 0], high[which, 0]
    tall = np.flatnonzero((y1 > y0)[which])
    foot = (grid.foot + row[tall] * grid.size).astype(np.float64)
    x0[tall], x1[tall] = _span(scene.corners.take(which[tall], axis=0)[:, :, :2], foot, grid.size)
    first = grid.column_of(x0)
    band, column = spread(first, np.maximum(grid.column_of(x1) - first + 1, 0))
    which, row = which[band], row[band]
    # all of a triangle lies in the shade, or behind what there is to be covered
    limit = np.maximum(grid.depth, deepest)[row, column]
    kept = np.flatnonzero(high[which, 2] >= limit - NEARER_MM)
    which, row, column, limit = which[kept], row[kept], column[kept], limit[kept]
    corner, slope = scene.corners[:, 0].take(which, axis=0), scene.slope.take(which, axis=0)
    x, y = grid.left + (column + 0.5) * grid.size, grid.foot + (row + 0.5) * grid.size
    level = corner[:, 2] + (x - corner[:, 0]) * slope[:, 0] + (y - corner[:, 1]) * slope[:, 1]
    kept = np.flatnonzero(level + (np.abs(slope[:, 0]) + np.abs(slope[:, 1])) * grid.size / 2 >= limit - NEARER_MM)
    return which[kept], row[kept] * grid.columns + column[kept]


def _span(corners: Floats, foot: Floats, height: float) -> tuple[Floats, Floats]:
    """From where to where triangles reach in the bands of paper that start at `foot`."""
    low, high = np.full(len(corners), np.inf), np.full(len(corners), -np.inf)
    for first, second in ((0, 1), (1, 2), (2, 0)):
        start, run = corners[:, first], corners[:, second] - corners[:, first]
        with np.errstate(divide="ignore", invalid="ignore"):
            below = (foot - BESIDE_MM - start[:, 1]) / run[:, 1]
            above = (foot + (height + BESIDE_MM) - start[:, 1]) / run[:, 1]
        level = np.abs(run[:, 1]) < BESIDE_MM
        enter = np.where(level, 0.0, np.minimum(below, above))
        leave = np.where(level, 1.0, np.maximum(below, above))
        meets = (leave >= 0.0) & (enter <= 1.0)
        enter, leave = np.maximum(enter, 0.0), np.minimum(leave, 1.0)
        for part in (enter, leave):
            x = start[:, 0] + part * run[:, 0]
            low, high = np.where(meets, np.minimum(low, x), low), np.where(meets, np.maximum(high, x), high)
    return low, high
