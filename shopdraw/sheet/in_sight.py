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
        for corners, slope in zip(triangles, slopes, strict=True):
            first = np.maximum(np.floor((corners[:, :2].min(axis=0) - low) / step - 0.5).astype(int), 0)
            last = np.minimum(np.ceil((corners[:, :2].max(axis=0) - low) / step - 0.5).astype(int) + 1, count)
            if (last <= first).any():
                continue
            x = low[0] + (np.arange(first[0], last[0])[:, None] + 0.5) * step
            y = low[1] + (np.arange(first[1], last[1])[None, :] + 0.5) * step
            inside = np.ones((last[0] - first[0], last[1] - first[1]), dtype=bool)
            for i in range(3):
                (ax, ay), (bx, by) = corners[i, :2], corners[(i + 1) % 3, :2]
                inside &= (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= -1e-9
            z = corners[0, 2] + slope[0] * (x - corners[0, 0]) + slope[1] * (y - corners[0, 1])
            held = depth[first[0] : last[0], first[1] : last[1]]
            nearer = inside & (z > held + 1e-6)
            held[nearer] = z[nearer]
            owner[first[0] : last[0], first[1] : last[1]][nearer] = board
    return owner, low, step


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
    here = np.pad(mask, 1)
    for _ in range(SLIVER):
        here = _eaten(here)
    for _ in range(EATEN):
        smaller = _eaten(here)
        if not smaller.any():
            break
        here = smaller
    return np.argwhere(here) - 1


def _eaten(here: npt.NDArray[np.bool_]) -> npt.NDArray[np.bool_]:
    smaller: npt.NDArray[np.bool_] = (
        here & np.roll(here, 1, 0) & np.roll(here, -1, 0) & np.roll(here, 1, 1) & np.roll(here, -1, 1)
    )
    return smaller
