"""Which boards lie whole behind others: nothing of them is in sight, and they hide nothing that isn't hidden anyhow.

Told from blanks and cuts, without solids, so that a view need not ask for the solids of boards that it doesn't show.
Never wrong about a board that it names; it needn't name all.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import numpy as np

from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import Point, bounds
from shopdraw.view.direction import Direction
from shopdraw.view.filled import Box, filled, is_upright
from shopdraw.view.standing import Bools, Floats, Ints
from shopdraw.wood.board import Shape
from shopdraw.wood.prism import cut_prism

_MOST = 80
"""So many of the largest faces do nearly all of the hiding."""
_FACING = 0.1
"""A face turned less than this to the viewer hides little (cosine)."""
_UPRIGHT = 1e-9
_TOUCHING_MM = 1e-6
_BEHIND_MM = 1e-4
"""What is hidden lies at least so far behind."""

Stands = Sequence[tuple[Shape, Frame]]
"""Shapes and where they stand."""


def unseen(stands: Stands, direction: Direction) -> Bools:
    """Of each board whether all of it lies behind other boards.

    Args:
        stands: the boards.
        direction: which way one looks.
    """
    blanks = _blanks(tuple(stands))
    ways = np.array((direction.right, direction.up, direction.toward))
    turned, base = blanks.axes @ ways.T, blanks.at @ ways.T
    low, high = _reach(blanks.low, blanks.high, turned, base)
    skins = _skins(blanks, turned, base)
    found = np.zeros(len(low), dtype=np.bool_)
    if not len(skins.depth):
        return found
    xs, ys, depth = _painted(skins)
    inside = (low[:, 0] >= xs[0]) & (high[:, 0] <= xs[-1]) & (low[:, 1] >= ys[0]) & (high[:, 1] <= ys[-1])
    (x0, x1), (y0, y1) = (
        (
            np.searchsorted(lines, low[:, axis] + _TOUCHING_MM, "right") - 1,
            np.searchsorted(lines, high[:, axis] - _TOUCHING_MM),
        )
        for axis, lines in enumerate((xs, ys))
    )
    for row in np.flatnonzero(inside).tolist():
        over = depth[x0[row] : x1[row], y0[row] : y1[row]]
        found[row] = bool(over.size and over.min() > high[row, 2] + _BEHIND_MM)
    return found


@dataclass(frozen=True, eq=False)
class _Blanks:
    """Boards before any cut, and the boxes round their cuts.

    Attributes:
        axes: (n, 3, 3) their frames' axes in the world.
        at: (n, 3) where these start, mm.
        low, high: (n, 3) least and greatest (u, v, w).
        patch_of, patch_low, patch_high: boards, and rectangles of them that no slant cuts off: (u, v, w).
        cut_of, cut_low, cut_high: boards and the boxes round their cuts, (u, v, w).
    """

    axes: Floats
    at: Floats
    low: Floats
    high: Floats
    patch_of: Ints
    patch_low: Floats
    patch_high: Floats
    cut_of: Ints
    cut_low: Floats
    cut_high: Floats


@dataclass(frozen=True, eq=False)
class _Skins:
    """Faces that nothing is seen through but where cuts reach them.

    Attributes:
        depth: (n,) of each one's furthest point, towards the viewer, mm.
        box: (n, 4) the upright rectangle on paper.
        board: (n,) whose it is.
        hole_of, hole: boards, and upright rectangles on paper round the cuts that reach their faces.
    """

    depth: Floats
    box: Floats
    board: Ints
    hole_of: Ints
    hole: Floats


def _reach(low: Floats, high: Floats, turned: Floats, base: Floats) -> tuple[Floats, Floats]:
    """From where to where boxes reach to the right, upwards and towards the viewer.

    Args:
        low, high: (n, 3) in their boards' frames.
        turned: (n, 3, 3) the frames' axes along the three ways.
        base: (n, 3) where the frames start.
    """
    one, other = low[:, :, None] * turned, high[:, :, None] * turned
    return base + np.minimum(one, other).sum(axis=1), base + np.maximum(one, other).sum(axis=1)


def _skins(blanks: _Blanks, turned: Floats, base: Floats) -> _Skins:
    """Of each board the face that is turned most to the viewer, where it is upright on paper; the largest of them."""
    rows = np.arange(len(base))
    facing = np.abs(turned[:, :, 2]).argmax(axis=1)
    upright = np.abs(turned[:, :, :2]).min(axis=2) < _UPRIGHT
    upright[rows, facing] = True
    toward = turned[rows, facing, 2]
    shown = upright.all(axis=1) & (np.abs(toward) > _FACING)
    level = np.where(toward > 0.0, blanks.high[rows, facing], blanks.low[rows, facing])

    def on_paper(of: Ints, low: Floats, high: Floats) -> tuple[Floats, Floats]:
        """Boxes pressed flat on their boards' faces."""
        low, high, rows = low.copy(), high.copy(), np.arange(len(of))
        low[rows, facing[of]] = high[rows, facing[of]] = level[of]
        least, greatest = _reach(low, high, turned[of], base[of])
        return np.concatenate((least[:, :2], greatest[:, :2]), axis=1), least[:, 2]

    def at_face(of: Ints, low: Floats, high: Floats) -> Bools:
        """Which boxes reach their boards' faces."""
        rows = np.arange(len(of))
        near = np.where(toward[of] > 0.0, high[rows, facing[of]] - level[of], level[of] - low[rows, facing[of]])
        found: Bools = shown[of] & (near >= -_TOUCHING_MM)
        return found

    patches = np.flatnonzero(at_face(blanks.patch_of, blanks.patch_low, blanks.patch_high))
    box, depth = on_paper(blanks.patch_of[patches], blanks.patch_low[patches], blanks.patch_high[patches])
    largest = np.argsort(-(box[:, 2] - box[:, 0]) * (box[:, 3] - box[:, 1]), kind="stable")[:_MOST]
    cuts = np.flatnonzero(at_face(blanks.cut_of, blanks.cut_low, blanks.cut_high))
    hole, _ = on_paper(blanks.cut_of[cuts], blanks.cut_low[cuts], blanks.cut_high[cuts])
    return _Skins(depth[largest], box[largest], blanks.patch_of[patches[largest]], blanks.cut_of[cuts], hole)


def _painted(skins: _Skins) -> tuple[Floats, Floats, Floats]:
    """A grid of the skins' own lines on paper: its lines across, its lines up, how near each of its cells is filled."""
    used = np.isin(skins.hole_of, skins.board)
    hole_of, hole = skins.hole_of[used], skins.hole[used]
    boxes = np.concatenate((skins.box, hole))
    xs, ys = _lines(boxes[:, (0, 2)]), _lines(boxes[:, (1, 3)])
    depth = np.full((len(xs) - 1, len(ys) - 1), -np.inf)
    cells = np.column_stack((np.searchsorted(xs, boxes[:, (0, 2)]), np.searchsorted(ys, boxes[:, (1, 3)]))).tolist()
    count = len(skins.depth)
    holes: dict[int, list[list[int]]] = {}
    for board, cell in zip(hole_of.tolist(), cells[count:], strict=True):
        holes.setdefault(board, []).append(cell)
    for board, near, (x0, x1, y0, y1) in zip(skins.board.tolist(), skins.depth.tolist(), cells[:count], strict=True):
        here = depth[x0:x1, y0:y1]
        nearer = np.maximum(here, near)
        for a0, a1, b0, b1 in holes.get(board, ()):
            part = slice(max(a0 - x0, 0), max(a1 - x0, 0)), slice(max(b0 - y0, 0), max(b1 - y0, 0))
            nearer[part] = here[part]
        here[:] = nearer
    return xs, ys, depth


def _lines(places: Floats) -> Floats:
    """Places in their order, each once."""
    ordered = np.sort(places, axis=None)
    found: Floats = ordered[np.concatenate(([True], np.diff(ordered) > 0.0))]
    return found


@lru_cache(maxsize=4)
def _blanks(stands: tuple[tuple[Shape, Frame], ...]) -> _Blanks:
    patches = [(row, *patch) for row, (shape, _) in enumerate(stands) for patch in _patches(shape)]
    cuts = [(row, *box) for row, (shape, _) in enumerate(stands) for box in _cut_boxes(shape)]
    low, high = (np.array([_blank(shape)[end] for shape, _ in stands]).reshape(-1, 3) for end in (0, 1))
    return _Blanks(
        np.array([(frame.u, frame.v, frame.w) for _, frame in stands]).reshape(-1, 3, 3),
        np.array([frame.at for _, frame in stands]).reshape(-1, 3),
        low,
        high,
        *_columns(patches),
        *_columns(cuts),
    )


def _columns(boxes: list[tuple[int, Vec3, Vec3]]) -> tuple[Ints, Floats, Floats]:
    owner = np.array([row for row, _, _ in boxes], dtype=np.int64)
    low, high = (np.array([box[end] for box in boxes], dtype=np.float64).reshape(-1, 3) for end in (1, 2))
    return owner, low, high


def _blank(shape: Shape) -> tuple[Vec3, Vec3]:
    u0, v0, u1, v1 = shape.box
    return (u0, v0, -shape.thickness), (u1, v1, 0.0)


@lru_cache(maxsize=1024)
def _patches(shape: Shape) -> tuple[tuple[Vec3, Vec3], ...]:
    """Upright boxes (u, v, w) that a blank fills: all of it, or beside a slant what reaches whole sides of it."""
    if any(bulge for _, _, bulge in shape.outline.corners):
        return ()
    corners: list[Point] = [(x, y) for x, y, _ in shape.outline.corners]
    if is_upright(corners, shape.box):
        return (_blank(shape),)
    edges = [
        (min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]))
        for a, b in pairwise((*corners, corners[0]))
        if a[0] == b[0] or a[1] == b[1]
    ]
    return tuple(_thick(box, shape.thickness) for box in (*filled(corners, shape.box), *edges))


def _thick(box: Box, thickness: float) -> tuple[Vec3, Vec3]:
    return (box[0], box[1], -thickness), (box[2], box[3], 0.0)


@lru_cache(maxsize=1024)
def _cut_boxes(shape: Shape) -> tuple[tuple[Vec3, Vec3], ...]:
    """The boxes round a shape's cuts in the board's frame: least and greatest (u, v, w)."""
    found = []
    for cut in shape.cuts:
        prism = cut_prism(shape.outline, shape.thickness, cut)
        x0, y0, x1, y1 = bounds(prism.outline)
        corners = ((x, y, level) for x in (x0, x1) for y in (y0, y1) for level in (prism.low, prism.high))
        columns = zip(*map(prism.frame.point, corners), strict=True)
        (u0, u1), (v0, v1), (w0, w1) = ((min(column), max(column)) for column in columns)
        found.append(((u0, v0, w0), (u1, v1, w1)))
    return tuple(found)
