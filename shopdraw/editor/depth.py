"""What of a piece is seen from anywhere: its solids' faces painted into a picture with a depth for every point.

Each point of the picture keeps the face that is nearest to the viewer, so that boards which reach into each other come
out right from any side, whatever stands open. Arrays in bulk; knows no Qt.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from shopdraw.shape.path import Corner, Path, flattened
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board, Cut, Shape
from shopdraw.wood.facet import Facets, facets
from shopdraw.wood.flank import open_segments

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]

_FIRST = 800
"""So many of the largest triangles are painted first; boards and triangles wholly behind them are left out."""
_CHORD_MM = 0.15
"""Arcs become chords: less than half a point of the picture at any zoom, and a quarter of the triangles."""
_EDGE_ON = 1e-4
"""A face turned to the viewer by less is seen on edge: it is thinner than a point of the picture."""
_CELL = 8
"""Side of the smallest square that is asked for its furthest depth, points of the picture."""
_DEPTH_STEPS = 1 << 36
_ROWS = 1 << 26
"""A depth in steps and a triangle's row share one whole number."""


@dataclass(frozen=True, eq=False)
class Wood:
    """The faces of a piece's boards, each in its own board's frame, mm.

    Attributes:
        points: (n, 3).
        triangles: (m, 3) rows of `points`.
        normals: (m, 3) outward.
        face: (m,) number of the flat or round face that a triangle belongs to, through all boards.
        owner, point_owner: (m,), (n,) index of the board.
        names: ids of the boards.
    """

    points: Floats
    triangles: Ints
    normals: Floats
    face: Ints
    owner: Ints
    point_owner: Ints
    names: tuple[str, ...]


@dataclass(frozen=True, eq=False)
class Seen:
    """A picture: for each of its points the triangle that is seen there.

    Attributes:
        triangle: (rows, columns) row of the wood's triangles, or -1 where nothing is seen; row 0 at the top.
        face, owner: the same for its face and its board.
    """

    triangle: Ints
    face: Ints
    owner: Ints


def wood_of(boards: Sequence[Board]) -> Wood:
    """The faces of boards; a shape's solid is made once."""
    return _wood(tuple((board.id, board.shape) for board in boards))


@lru_cache(maxsize=4)
def _wood(stands: tuple[tuple[str, Shape], ...]) -> Wood:
    pieces = [facets(_chorded(shape)) for _, shape in stands]
    counts, sizes = [len(p.points) for p in pieces], [len(p.triangles) for p in pieces]
    firsts = np.concatenate(([0], np.cumsum(counts)))
    numbers, faces = 0, []
    for piece in pieces:
        own, count = _faces(piece)
        faces.append(own + numbers)
        numbers += count
    return Wood(
        points=np.concatenate([p.points for p in pieces]),
        triangles=np.concatenate([p.triangles + first for p, first in zip(pieces, firsts, strict=False)]),
        normals=np.concatenate([p.normals for p in pieces]),
        face=np.concatenate(faces),
        owner=np.repeat(np.arange(len(pieces)), sizes),
        point_owner=np.repeat(np.arange(len(pieces)), counts),
        names=tuple(name for name, _ in stands),
    )


@lru_cache(maxsize=2048)
def _chorded(shape: Shape) -> Shape:
    """The shape with its arcs as chords."""
    outline = _straight(shape.outline)
    return Shape(outline, shape.thickness, tuple(_chorded_cut(cut, outline, shape.thickness) for cut in shape.cuts))


def _chorded_cut(cut: Cut, outline: Path, thickness: float) -> Cut:
    straight = replace(cut, outline=_straight(cut.outline), islands=tuple(map(_straight, cut.islands)), open=())
    return replace(straight, open=open_segments(outline, thickness, straight))


def _straight(path: Path) -> Path:
    if not any(corner.bulge for corner in path.corners):
        return path
    return Path(tuple(Corner(x, y) for x, y in flattened(path, _CHORD_MM)))


def _faces(piece: Facets) -> tuple[Ints, int]:
    """Triangles numbered by the face they belong to (the chords of a round face are one), and how many faces."""
    flat = int(piece.face.max()) + 1 if len(piece.face) else 0
    return np.where(piece.cylinder >= 0, flat + piece.cylinder, piece.face), flat + len(piece.cylinders)


@dataclass(frozen=True, eq=False)
class Placed:
    """Wood put in place.

    Attributes:
        wood: its faces.
        points, normals: in the world.
        largest: rows of the largest triangles.
    """

    wood: Wood
    points: Floats
    normals: Floats
    largest: Ints


def placed(wood: Wood, boards: Sequence[Board]) -> Placed:
    """Puts the faces where the boards stand."""
    axes = np.array([(b.frame.u, b.frame.v, b.frame.w) for b in boards])
    at = np.array([b.frame.at for b in boards])
    points = np.einsum("ni,nij->nj", wood.points, axes[wood.point_owner]) + at[wood.point_owner]
    a, b, c = (points[wood.triangles[:, k]] for k in range(3))
    areas = np.linalg.norm(np.cross(b - a, c - a), axis=1)
    largest = np.argsort(-areas, kind="stable")[:_FIRST]
    return Placed(wood, points, np.einsum("ni,nij->nj", wood.normals, axes[wood.owner]), largest)


@dataclass(frozen=True, slots=True)
class Frame:
    """Where a picture lies on the view's plane.

    Attributes:
        middle: the point of the plane in the middle of the picture, mm.
        zoom: points of the picture per mm.
        width, height: of the picture, points.
    """

    middle: tuple[float, float]
    zoom: float
    width: int
    height: int

    def on_plane(self, column: float, row: float) -> tuple[float, float]:
        """The point of the view's plane at the middle of a point of the picture, mm."""
        x = (column + 0.5 - self.width / 2) / self.zoom + self.middle[0]
        return x, (self.height / 2 - row - 0.5) / self.zoom + self.middle[1]


def seen(here: Placed, direction: Direction, frame: Frame) -> Seen:
    """What is seen of placed wood at each point of a picture."""
    wood = here.wood
    eye = np.array((direction.right, direction.up, direction.toward)).T
    flat = here.points @ eye
    flat[:, 0] = (flat[:, 0] - frame.middle[0]) * frame.zoom + frame.width / 2
    flat[:, 1] = frame.height / 2 - (flat[:, 1] - frame.middle[1]) * frame.zoom
    floor, top = float(flat[:, 2].min()) - 1.0, float(flat[:, 2].max()) + 1.0
    flat[:, 2] = (flat[:, 2] - floor) * (_DEPTH_STEPS / (top - floor))
    slope = here.normals @ eye
    slope[:, 2] *= (top - floor) / _DEPTH_STEPS * frame.zoom
    facing = slope[:, 2] > _EDGE_ON * (top - floor) / _DEPTH_STEPS * frame.zoom
    buffer = np.full(frame.width * frame.height, -1, dtype=np.int64)
    first = here.largest[facing[here.largest]]
    _fill(buffer, frame, first, flat[wood.triangles[first]], slope[first])
    facing[here.largest] = False
    in_sight = ~_boards_behind(buffer, frame, *_boxes_of_boards(flat, wood))
    rest = np.flatnonzero(facing & in_sight[wood.owner])
    corners = flat[wood.triangles[rest]]
    low, high = corners.min(axis=1), corners.max(axis=1)
    kept = ~_behind(buffer, frame, np.column_stack((low[:, :2], high[:, :2])), high[:, 2])
    _fill(buffer, frame, rest[kept], corners[kept], slope[rest[kept]])
    found = np.where(buffer >= 0, buffer & (_ROWS - 1), -1).reshape(frame.height, frame.width)
    none = found < 0
    return Seen(found, np.where(none, -1, wood.face[found]), np.where(none, -1, wood.owner[found]))


def _boxes_of_boards(flat: Floats, wood: Wood) -> tuple[Floats, Floats]:
    """The box of each board on the picture, and its nearest depth."""
    starts = np.searchsorted(wood.point_owner, np.arange(len(wood.names)))
    low, high = np.minimum.reduceat(flat, starts), np.maximum.reduceat(flat, starts)
    return np.column_stack((low[:, :2], high[:, :2])), high[:, 2]


def _fill(buffer: Ints, frame: Frame, rows: Ints, corners: Floats, slope: Floats) -> None:
    """Paints triangles: every point whose middle lies in one keeps the nearest.

    Args:
        buffer: depth in steps and triangle in one number, for each point of the picture.
        frame: of the picture.
        rows: the triangles' numbers.
        corners: (n, 3, 3) theirs: column, row and depth in steps.
        slope: (n, 3) normals on the picture: right, up, and toward the viewer per step of depth.
    """
    low, high = np.ceil(corners[:, :, :2].min(axis=1) - 0.5), np.ceil(corners[:, :, :2].max(axis=1) - 0.5)
    holds = (low < high).all(axis=1) & (high > 0).all(axis=1)
    holds &= (low[:, 0] < frame.width) & (low[:, 1] < frame.height)
    rows, corners, slope, low, high = rows[holds], corners[holds], slope[holds], low[holds], high[holds]
    order = np.argsort(corners[:, :, 1], axis=1)
    xs = np.take_along_axis(corners[:, :, 0], order, axis=1)
    ys = np.take_along_axis(corners[:, :, 1], order, axis=1)
    first, last = (np.clip(ends[:, 1], 0, frame.height).astype(np.int64) for ends in (low, high))
    which, level = _runs(first, last - first)
    middle = level + 0.5
    xs, ys = xs[which], ys[which]
    long = _on_edge(xs[:, 0], ys[:, 0], xs[:, 2], ys[:, 2], middle)
    lower = (middle >= ys[:, 1]).astype(np.int64)
    at = np.arange(len(which))
    short = _on_edge(xs[at, lower], ys[at, lower], xs[at, lower + 1], ys[at, lower + 1], middle)
    left = np.clip(np.ceil(np.minimum(long, short) - 0.5), 0, frame.width).astype(np.int64)
    right = np.clip(np.ceil(np.maximum(long, short) - 0.5), 0, frame.width).astype(np.int64)
    span, column = _runs(left, right - left)
    along, down = -slope[:, 0] / slope[:, 2], slope[:, 1] / slope[:, 2]
    corner = corners[:, 0]
    base = corner[:, 2] + along * (0.5 - corner[:, 0]) - down * corner[:, 1]
    depth = (base[which] + down[which] * middle)[span] + along[which][span] * column
    key = depth.astype(np.int64)
    key *= _ROWS
    key += rows[which][span]
    column += (level * frame.width)[span]
    np.maximum.at(buffer, column, key)


def _on_edge(x0: Floats, y0: Floats, x1: Floats, y1: Floats, y: npt.NDArray[np.floating]) -> Floats:
    run = y1 - y0
    part = np.divide(y - y0, run, out=np.zeros_like(run), where=run != 0.0)
    found: Floats = x0 + part * (x1 - x0)
    return found


def _runs(first: Ints, count: Ints) -> tuple[Ints, Ints]:
    """For runs of whole numbers, all of them one after another: which run each belongs to, and the number."""
    which = np.repeat(np.arange(len(count)), count)
    starts = np.cumsum(count) - count
    return which, np.arange(len(which)) - starts[which] + first[which]


def _boards_behind(buffer: Ints, frame: Frame, boxes: Floats, nearest: Floats) -> Bools:
    """Whether boards' boxes lie wholly behind what is painted so far."""
    cells = _cells(buffer, frame)
    down, across = cells.shape
    ends = np.floor(boxes / _CELL).astype(np.int64)
    ends[:, 0::2] = np.clip(ends[:, 0::2], 0, across - 1)
    ends[:, 1::2] = np.clip(ends[:, 1::2], 0, down - 1)
    least = [cells[y0 : y1 + 1, x0 : x1 + 1].min() for x0, y0, x1, y1 in ends.tolist()]
    found: Bools = nearest < np.array(least) - 2
    return found


def _cells(buffer: Ints, frame: Frame) -> Ints:
    """The furthest depth in each small square of the picture."""
    across, down = -(-frame.width // _CELL), -(-frame.height // _CELL)
    padded = np.full((down * _CELL, across * _CELL), np.iinfo(np.int64).max)
    padded[: frame.height, : frame.width] = buffer.reshape(frame.height, frame.width)
    rows = padded.reshape(down, _CELL, -1).min(axis=1)
    cells: Ints = rows.reshape(down, across, _CELL).min(axis=2) // _ROWS
    return cells


def _behind(buffer: Ints, frame: Frame, boxes: Floats, nearest: Floats) -> Bools:
    """Whether triangles' boxes on the picture lie wholly behind what is painted so far."""
    cells = _cells(buffer, frame)
    found = np.zeros(len(boxes), dtype=bool)
    open_rows = np.arange(len(boxes))
    size = _CELL
    while len(open_rows):
        box = boxes[open_rows]
        fits = np.maximum(box[:, 2] - box[:, 0], box[:, 3] - box[:, 1]) <= size
        here = open_rows[fits]
        own = boxes[here]
        x0, y0, x1, y1 = (np.floor(own[:, k] / size).astype(np.int64) for k in range(4))
        x0, x1 = np.clip(x0, 0, cells.shape[1] - 1), np.clip(x1, 0, cells.shape[1] - 1)
        y0, y1 = np.clip(y0, 0, cells.shape[0] - 1), np.clip(y1, 0, cells.shape[0] - 1)
        least = np.minimum(np.minimum(cells[y0, x0], cells[y0, x1]), np.minimum(cells[y1, x0], cells[y1, x1]))
        found[here] = nearest[here] < least - 2
        open_rows = open_rows[~fits]
        if cells.shape == (1, 1):
            break
        cells = _halved(cells)
        size *= 2
    return found


def _halved(cells: Ints) -> Ints:
    down, across = -(-cells.shape[0] // 2), -(-cells.shape[1] // 2)
    padded = np.full((down * 2, across * 2), np.iinfo(np.int64).max)
    padded[: cells.shape[0], : cells.shape[1]] = cells
    found: Ints = padded.reshape(down, 2, across, 2).min(axis=(1, 3))
    return found
