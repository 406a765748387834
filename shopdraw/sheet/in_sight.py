"""Where in a view a board's faces are in sight: a point well inside them, for a balloon's leader to end at."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
import numpy.typing as npt

from shopdraw.shape.path import Point
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board
from shopdraw.wood.facet import facets

LEAST_STEPS = 320
"""The view is looked at on a grid of that many steps along its shorter side."""

SLIVER = 3
"""A patch that is gone after being eaten away by that many steps is too narrow to end a leader in."""
EATEN = 12
"""A patch is eaten away from its edges by at most that many steps."""
_HAIR = 1e-6
"""What rounding may add to a length, mm."""
Ints = npt.NDArray[np.int64]
Floats = npt.NDArray[np.float64]


def points_in_sight(boards: Sequence[Board], direction: Direction, spare: int = 4) -> Mapping[str, tuple[Point, ...]]:
    """For each board that is seen, points inside what is seen of it, the innermost first.

    Args:
        boards: what is shown.
        direction: which way one looks.
        spare: how many further points, towards its left, right, lower and upper ends.
    Returns:
        Points in the view's plane, true-size mm, by board id; boards that aren't seen are left out.
    """
    owner, low, step = _owners(boards, direction)
    found: dict[str, tuple[Point, ...]] = {}
    for index, board in enumerate(boards):
        cells = _inner_cells(owner == index)
        if len(cells):
            middle = cells.mean(axis=0)
            nearest = int(np.argmin(((cells - middle) ** 2).sum(axis=1)))
            picks = [nearest, *_ends(cells)[:spare]]
            unique = dict.fromkeys((int(cells[i][0]), int(cells[i][1])) for i in picks)
            found[board.id] = tuple(
                (float(low[0] + (i + 0.5) * step), float(low[1] + (j + 0.5) * step)) for i, j in unique
            )
    return found


def _ends(cells: Ints) -> list[int]:
    return [
        int(np.argmin(cells[:, 0])),
        int(np.argmax(cells[:, 0])),
        int(np.argmin(cells[:, 1])),
        int(np.argmax(cells[:, 1])),
    ]


def _owners(boards: Sequence[Board], direction: Direction) -> tuple[Ints, Floats, float]:
    """A grid of what is nearest to the viewer: board numbers, -1 where there is nothing; its corner and its step."""
    faces = [_facing(board, direction) for board in boards]
    low = np.min([corners[:, :, :2].min(axis=(0, 1)) for corners, _ in faces if len(corners)], axis=0)
    high = np.max([corners[:, :, :2].max(axis=(0, 1)) for corners, _ in faces if len(corners)], axis=0)
    step = float((high - low).min()) / LEAST_STEPS
    count = np.ceil((high - low) / step).astype(int) + 1
    owner = np.full((count[0], count[1]), -1, dtype=np.int64)
    depth = np.full((count[0], count[1]), -np.inf)
    for board, (triangles, slopes) in enumerate(faces):
        # Cells whose middles lie in the box round each triangle: most of the thousands round a hole hold none.
        first = np.maximum(np.ceil((triangles[:, :, :2].min(axis=1) - _HAIR - low) / step - 0.5).astype(int), 0)
        last = np.floor((triangles[:, :, :2].max(axis=1) + _HAIR - low) / step - 0.5).astype(int) + 1
        last = np.minimum(last, count)
        for i in np.flatnonzero((last > first).all(axis=1)):
            (i0, j0), (i1, j1) = first[i], last[i]
            here = (slice(i0, i1), slice(j0, j1))
            x, y = low[0] + (np.arange(i0, i1) + 0.5) * step, low[1] + (np.arange(j0, j1) + 0.5) * step
            _cover(triangles[i], slopes[i], x[:, None], y[None, :], owner[here], depth[here], board)
    return owner, low, step


def _cover(corners: Floats, slope: Floats, x: Floats, y: Floats, owner: Ints, depth: Floats, board: int) -> None:
    """Notes a board in the cells where one of its triangles is nearer than what was found there before."""
    (ax, ay, z0), (bx, by, z1), (cx, cy, z2) = corners.tolist()
    if max(z0, z1, z2) + _HAIR / 2 < depth.min() + _HAIR:
        return
    inside = _left(ax, ay, bx, by, x, y) & _left(bx, by, cx, cy, x, y) & _left(cx, cy, ax, ay, x, y)
    z = z0 + slope[0] * (x - ax) + slope[1] * (y - ay) if slope.any() else z0
    nearer = inside & (z > depth + _HAIR)
    np.copyto(depth, z, where=nearer)
    np.copyto(owner, board, where=nearer)


def _left(ax: float, ay: float, bx: float, by: float, x: Floats, y: Floats) -> npt.NDArray[np.bool_]:
    """Which cells lie left of an edge; beside one that is plumb or level a whole row of them is asked at once."""
    if ax == bx:
        return -(by - ay) * (x - ax) >= -1e-9
    if ay == by:
        return (bx - ax) * (y - ay) >= -1e-9
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= -1e-9


def _facing(board: Board, direction: Direction) -> tuple[Floats, Floats]:
    """A board's triangles that are turned to the viewer, x right, y up, z nearer; and how their depth changes."""
    axes = np.array((direction.right, direction.up, direction.toward))
    f = board.frame
    turn = axes @ np.array((f.u, f.v, f.w)).T
    found = facets(board.shape)
    points = found.points @ turn.T + axes @ np.array(f.at)
    normals = found.normals @ turn.T
    front = normals[:, 2] > 1e-9
    return points[found.triangles[front]], -normals[front, :2] / normals[front, 2:]


def _inner_cells(mask: npt.NDArray[np.bool_]) -> Ints:
    """The cells of a patch that stay longest when it is eaten away from its edges; none of a mere sliver."""
    rows, columns = np.flatnonzero(mask.any(axis=1)), np.flatnonzero(mask.any(axis=0))
    if not len(rows):
        return np.zeros((0, 2), dtype=np.int64)
    here = np.pad(mask[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1], 1)
    for _ in range(SLIVER):
        here = _eaten(here)
    for _ in range(EATEN):
        smaller = _eaten(here)
        if not smaller.any():
            break
        here = smaller
    cells: Ints = np.argwhere(here) - 1 + (rows[0], columns[0])
    return cells


def _eaten(here: npt.NDArray[np.bool_]) -> npt.NDArray[np.bool_]:
    smaller: npt.NDArray[np.bool_] = (
        here & np.roll(here, 1, 0) & np.roll(here, -1, 0) & np.roll(here, 1, 1) & np.roll(here, -1, 1)
    )
    return smaller
