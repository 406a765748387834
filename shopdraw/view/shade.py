"""Which parts of the paper lie wholly behind large flat faces, and down to which depth: a grid of square cells.

It only spares work: what it calls covered is covered, what it leaves open is looked at triangle by triangle.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from shopdraw.view.scene import Edges, Scene
from shopdraw.view.standing import Bools, Floats, Ints
from shopdraw.view.wide_face import WideFaces

_LEAST_CELLS, _MOST_CELLS, _CELLS_PER_EDGE = 1024, 8192, 1
"""How many cells the paper is parted into."""
_MARGIN_MM = 1e-5


@dataclass(frozen=True, eq=False)
class Shade:
    """Square cells over what is shown.

    Attributes:
        left, foot: where the grid starts, mm.
        size: of a cell, mm.
        depth: (rows, columns) what is further than this anywhere in a cell is covered; -inf where nothing is.
    """

    left: float
    foot: float
    size: float
    depth: Floats

    @property
    def columns(self) -> int:
        """How many cells lie in a row."""
        return int(self.depth.shape[1])

    def column_of(self, x: Floats) -> Ints:
        """The column that holds a place."""
        found: Ints = np.clip(np.floor((x - self.left) / self.size), 0, self.depth.shape[1] - 1).astype(np.int64)
        return found

    def row_of(self, y: Floats) -> Ints:
        """The row that holds a place."""
        found: Ints = np.clip(np.floor((y - self.foot) / self.size), 0, self.depth.shape[0] - 1).astype(np.int64)
        return found

    def holds(self, low: Floats, high: Floats) -> Bools:
        """Whether some of a box lies on the grid."""
        rows, columns = self.depth.shape
        found: Bools = (high[:, 0] >= self.left - _MARGIN_MM) & (high[:, 1] >= self.foot - _MARGIN_MM)
        found &= low[:, 0] <= self.left + columns * self.size + _MARGIN_MM
        found &= low[:, 1] <= self.foot + rows * self.size + _MARGIN_MM
        return found

    def hides(self, low: Floats, high: Floats) -> Bools:
        """Whether boxes (n, 3) no larger than a cell lie wholly in the shade."""
        x0, x1 = self.column_of(low[:, 0]), self.column_of(high[:, 0])
        y0, y1 = self.row_of(low[:, 1]), self.row_of(high[:, 1])
        least = np.minimum(
            np.minimum(self.depth[y0, x0], self.depth[y0, x1]), np.minimum(self.depth[y1, x0], self.depth[y1, x1])
        )
        found: Bools = high[:, 2] < least - _MARGIN_MM
        return found


def shade(scene: Scene, faces: WideFaces, edges: Edges) -> Shade:
    """The shade of flat faces over what may lie behind them: the more edges there are, the finer.

    Args:
        scene: whose faces they are.
        faces: that shade.
        edges: to be looked up.
    """
    flat = np.concatenate((edges.start[:, :2], edges.end[:, :2], np.zeros((0 if len(edges.owner) else 1, 2))))
    (left, foot), (right, top) = flat.min(axis=0).tolist(), flat.max(axis=0).tolist()
    cells = min(max(len(edges.owner) * _CELLS_PER_EDGE, _LEAST_CELLS), _MOST_CELLS)
    size = max(math.sqrt(max((right - left) * (top - foot), 1.0) / cells), (right - left + top - foot) / cells)
    columns, rows = int((right - left) / size) + 1, int((top - foot) / size) + 1
    depth = np.full((rows, columns), -np.inf)
    grid = Shade(left, foot, size, depth)
    face, row, column = _inside(scene, faces, grid)
    least = (
        (faces.level - np.abs(faces.slope).sum(axis=1) * size / 2)[face]
        + faces.slope[face, 0] * (left + (column + 0.5) * size)
        + faces.slope[face, 1] * (foot + (row + 0.5) * size)
    )
    np.maximum.at(depth.reshape(-1), row * columns + column, least)
    return grid


@dataclass(frozen=True, eq=False)
class _Windows:
    """Of each face the cells of the box round it, row by row, one face after the other.

    Attributes:
        row, column: (n,) the box's first cell.
        tall, wide: (n,) how many rows it has, and columns: one more than there are cells, for what lies further right.
        start: (n + 1,) where each face's cells begin.
    """

    row: Ints
    column: Ints
    tall: Ints
    wide: Ints
    start: Ints

    def at(self, face: Ints, row: Ints, column: Ints) -> Ints:
        """Where cells of the grid stand; those outside a face's box at its nearest end."""
        down = np.clip(row - self.row[face], 0, self.tall[face] - 1)
        found: Ints = self.start[face] + down * self.wide[face]
        found += np.clip(column - self.column[face], 0, self.wide[face] - 1)
        return found


def _windows(faces: WideFaces, grid: Shade) -> _Windows:
    row, column = grid.row_of(faces.low[:, 1]), grid.column_of(faces.low[:, 0])
    tall, wide = grid.row_of(faces.high[:, 1]) - row + 1, grid.column_of(faces.high[:, 0]) - column + 2
    return _Windows(row, column, tall, wide, np.concatenate(([0], np.cumsum(tall * wide))))


def _inside(scene: Scene, faces: WideFaces, grid: Shade) -> tuple[Ints, Ints, Ints]:
    """(face, row, column): cells that lie wholly inside a face: no rim touches them, and their middle is inside."""
    chosen = faces.face
    if not len(chosen):
        return chosen, chosen, chosen
    place = np.searchsorted(chosen[:-1], scene.rim_face)
    ours = np.flatnonzero(chosen[place] == scene.rim_face)
    rims, face = scene.rims.take(ours, axis=0)[:, :, :2], place[ours]
    windows = _windows(faces, grid)
    inside = _turns(rims, face, windows, grid) > 0
    parts = parted(rims[:, 0], rims[:, 1], grid.size)
    here = np.flatnonzero(grid.holds(parts.low, parts.high))
    low, high, owner = parts.low[here] - _MARGIN_MM, parts.high[here] + _MARGIN_MM, face[parts.line[here]]
    x0, x1 = grid.column_of(low[:, 0]), grid.column_of(high[:, 0])
    y0, y1 = grid.row_of(low[:, 1]), grid.row_of(high[:, 1])
    for x in (x0, x1):
        for y in (y0, y1):
            inside[windows.at(owner, y, x)] = False
    cell = np.flatnonzero(inside)
    face = np.searchsorted(windows.start, cell, side="right") - 1
    down, across = np.divmod(cell - windows.start[face], windows.wide[face])
    real = across < windows.wide[face] - 1
    return face[real], (windows.row[face] + down)[real], (windows.column[face] + across)[real]


def _turns(rims: Floats, face: Ints, windows: _Windows, grid: Shade) -> Ints:
    """How often the rims of each face run round the middle of each cell of its window, anticlockwise."""
    # a rim crosses the rows' middle lines from the first at or above its lower end to the last below its upper end
    level = (rims[:, :, 1] - grid.foot) / grid.size - 0.5
    lower, upper = np.ceil(level.min(axis=1)).astype(np.int64), np.ceil(level.max(axis=1)).astype(np.int64)
    rim, row = spread(lower, np.maximum(upper - lower, 0))
    start, end = level[rim, 0], level[rim, 1]
    part = (row - start) / (end - start)
    x = rims[rim, 0, 0] + part * (rims[rim, 1, 0] - rims[rim, 0, 0])
    column = np.ceil((x - grid.left) / grid.size - 0.5).astype(np.int64)
    kept = (row >= 0) & (row < grid.depth.shape[0])
    # the wood lies left of a rim: right of one that runs down
    turn = np.where(end < start, 1.0, -1.0)
    at = windows.at(face[rim[kept]], row[kept], column[kept])
    steps = np.bincount(at, weights=turn[kept], minlength=windows.start[-1]).astype(np.int64)
    wide = np.repeat(windows.wide, windows.tall)
    first = np.cumsum(wide) - wide
    so_far = np.cumsum(steps)
    found: Ints = so_far - np.repeat(so_far[first] - steps[first], wide)
    return found


@dataclass(frozen=True, eq=False)
class Parts:
    """Pieces of lines.

    Attributes:
        many: into how many pieces each line is parted.
        line: of each piece its line.
        step: of each piece its place in the line, from 0.
        low, high: (n, axes) its least and greatest coordinates.
    """

    many: Ints
    line: Ints
    step: Ints
    low: Floats
    high: Floats


def parted(start: Floats, end: Floats, size: float) -> Parts:
    """Lines parted so that no piece is longer than a size along any of the paper's axes."""
    run = end - start
    many = np.maximum(np.ceil(np.maximum(np.abs(run[:, 0]), np.abs(run[:, 1])) / size), 1.0).astype(np.int64)
    line, step = spread(np.zeros(len(many), dtype=np.int64), many)
    first, along, parts = start.take(line, axis=0), run.take(line, axis=0), many[line]
    low = first + (step / parts)[:, None] * along
    high = first + ((step + 1) / parts)[:, None] * along
    return Parts(many, line, step, np.minimum(low, high), np.maximum(low, high))


def spread(first: Ints, many: Ints) -> tuple[Ints, Ints]:
    """Runs of whole numbers, one after the other: which run each belongs to, and the number.

    Args:
        first: where each run starts.
        many: how many numbers it has, 0 or more.
    """
    which = np.repeat(np.arange(len(many)), many)
    return which, np.arange(len(which)) + np.repeat(first - (np.cumsum(many) - many), many)
