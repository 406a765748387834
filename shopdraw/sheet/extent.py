"""How far boards reach in the world, as cut: what dimensions and balloons are measured from."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

import numpy as np

from shopdraw.shape.frame import Frame, Vec3
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.facet import facets

_SQUARE = 1.0 - 1e-9


class Extent(NamedTuple):
    """An upright box in the world, mm."""

    x0: float
    y0: float
    z0: float
    x1: float
    y1: float
    z1: float

    @property
    def low(self) -> Vec3:
        """Its least corner."""
        return self.x0, self.y0, self.z0

    @property
    def high(self) -> Vec3:
        """Its greatest corner."""
        return self.x1, self.y1, self.z1

    def flat(self, axis: str, at: float) -> tuple[Vec3, Vec3]:
        """Two opposite corners of the box pressed flat at a coordinate across "x", "y" or "z"."""
        i = "xyz".index(axis)
        low, high = list(self.low), list(self.high)
        low[i] = high[i] = at
        return (low[0], low[1], low[2]), (high[0], high[1], high[2])


def extent(boards: Iterable[Board]) -> Extent:
    """The box round boards as they are cut.

    Raises:
        ValueError: there is no board.
    """
    boxes = [_box(board.shape, board.frame) for board in boards]
    if not boxes:
        raise ValueError("the box round no board; give at least one")
    low, high = ([pick(box[i] for box in boxes) for i in axes] for pick, axes in ((min, (0, 1, 2)), (max, (3, 4, 5))))
    return Extent(*low, *high)


@lru_cache(maxsize=4096)
def _box(shape: Shape, frame: Frame) -> Extent:
    """The box round one board."""
    points = facets(shape).points @ np.array((frame.u, frame.v, frame.w)) + np.array(frame.at)
    low, high = np.round(points.min(axis=0), 6), np.round(points.max(axis=0), 6)
    return Extent(*(float(value) for value in (*low, *high)))


@lru_cache(maxsize=4096)
def faces_across(shape: Shape, frame: Frame, axis: int) -> tuple[float, ...]:
    """Where a board's flat faces across a world axis lie along it, those of its cuts included, mm."""
    bound, way = facets(shape), (frame.u[axis], frame.v[axis], frame.w[axis])
    across = np.abs(bound.normals @ np.array(way)) > _SQUARE
    first = bound.points[bound.triangles[across, 0]]
    return tuple(sorted({float(at) for at in np.round(first @ np.array(way) + frame.at[axis], 6)}))


def whole(assembly: Assembly) -> Extent:
    """The box round the whole piece, shut."""
    return extent(assembly.boards)
