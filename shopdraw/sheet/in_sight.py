"""Where in a view a board's faces are in sight: a point well inside them, for a balloon's leader to end at."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shopdraw.shape.path import Point
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board
from shopdraw.wood.facet import facets

LEAST_STEPS = 320
"""The view is looked at on a grid of that many steps along its shorter side."""

FEW = 200
"""Triangles that hold at most so many cells are looked at together."""
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
    grid = _Grid(low, step, np.full((count[0], count[1]), -1, dtype=np.int64), np.full((count[0], count[1]), -np.inf))
    small: list[_Some] = []
    large: list[tuple[Floats, Floats, Ints, Ints, int]] = []
    for board, (triangles, slopes) in enumerate(faces):
        # Cells whose middles lie in the box round each triangle: most of the thousands round a hole hold none.
        first = np.maximum(np.ceil((triangles[:, :, :2].min(axis=1) - _HAIR - low) / step - 0.5).astype(int), 0)
        last = np.floor((triangles[:, :, :2].max(axis=1) + _HAIR - low) / step - 0.5).astype(int) + 1
        last = np.minimum(last, count)
        held = np.maximum(last - first, 0).prod(axis=1)
        few = (held > 0) & (held <= FEW)
        small.append(_Some(triangles[few], slopes[few], first[few], last[few], board))
        large += [(triangles[i], slopes[i], first[i], last[i], board) for i in np.flatnonzero(held > FEW)]
    # What stands near hides most of what lies behind it before that is looked at.
    for one in sorted(large, key=lambda one: -float(one[0][:, 2].max())):
        grid.cover(*one)
    grid.cover_small(small)
    return grid.owner, low, step


@dataclass(frozen=True, slots=True)
class _Some:
    """Triangles of a board, how their depth changes, the cells that the box round each holds: from, up to."""

    triangles: Floats
    slopes: Floats
    first: Ints
    last: Ints
    board: int


@dataclass(frozen=True, slots=True)
class _Grid:
    """A corner of the view, the size of a cell, what was found nearest in each cell and how near that is."""

    low: Floats
    step: float
    owner: Ints
    depth: Floats

    def cover(self, triangle: Floats, slope: Floats, first: Ints, last: Ints, board: int) -> None:
        """Notes a board in the cells where one of its triangles is nearer than what was found there before."""
        (i0, j0), (i1, j1) = first, last
        x = self.low[0] + (np.arange(i0, i1) + 0.5) * self.step
        y = self.low[1] + (np.arange(j0, j1) + 0.5) * self.step
        _cover(
            triangle, slope, x[:, None], y[None, :], self.owner[i0:i1, j0:j1], self.depth[i0:i1, j0:j1], board
        )

    def cover_small(self, some: Sequence[_Some]) -> None:
        """The same for triangles that hold few cells each, all at once."""
        triangles = np.concatenate([each.triangles for each in some])
        slopes = np.concatenate([each.slopes for each in some])
        first = np.concatenate([each.first for each in some])
        size = np.concatenate([each.last for each in some]) - first
        boards = np.repeat(np.arange(len(some)), [len(each.triangles) for each in some])
        held = size.prod(axis=1)
        of = np.repeat(np.arange(len(held)), held)
        number = np.arange(len(of)) - np.repeat(np.cumsum(held) - held, held)
        i, j = first[of, 0] + number // size[of, 1], first[of, 1] + number % size[of, 1]
        x, y = self.low[0] + (i + 0.5) * self.step, self.low[1] + (j + 0.5) * self.step
        corners = triangles[:, :, :2]
        edges = np.roll(corners, -1, axis=1) - corners
        inside = np.ones(len(of), dtype=bool)
        for corner in range(3):
            (dx, dy), (ax, ay) = edges[of, corner].T, corners[of, corner].T
            inside &= dx * (y - ay) - dy * (x - ax) >= -1e-9
        start, slope = triangles[of, 0], slopes[of]
        z = start[:, 2] + slope[:, 0] * (x - start[:, 0]) + slope[:, 1] * (y - start[:, 1])
        seen = np.flatnonzero(inside & (z > self.depth[i, j] + _HAIR))
        # The nearest of a cell is written last.
        order = seen[np.lexsort((-seen, z[seen]))]
        self.depth[i[order], j[order]] = z[order]
        self.owner[i[order], j[order]] = boards[of[order]]


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
