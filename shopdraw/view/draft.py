"""Drafts: boards as filled faces from the back to the front, from outlines and cuts alone, without solids.

Quick enough to follow a hand. A face painted later hides what it covers. Faces square to the line of sight are in
exact order; leaning ones are ordered by their nearest point, which full views, with their hidden lines, put right
when the hand stops.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

from shopdraw.shape.frame import Frame, Vec3, dot
from shopdraw.shape.path import Point, flattened
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.prism import cut_prism

_FACING = 1e-9
_SQUARE = 1.0 - 1e-9
_CHORD_MM = 0.5
_ABOVE_MM = 1e-3
"""A cut's outline is painted just after the face that it is cut into."""
_COVERS = 8
"""So many of the largest upright rectangles are tried as what hides other faces."""

Box = tuple[float, float, float, float]


class DraftFace(NamedTuple):
    """A face to be filled and outlined.

    Attributes:
        points: its corners in the view's plane, true-size mm.
        board: id of the board it belongs to.
        cut: the outline of a cut, to be drawn as a line on the face behind it.
        facing: how far it is turned to the viewer: 1 square to the line of sight, near 0 seen almost on edge.
        upward: how far it is turned upwards: 1 level and seen from above, -1 from below.
    """

    points: tuple[Point, ...]
    board: str
    cut: bool
    facing: float = 1.0
    upward: float = 0.0


class _Face(NamedTuple):
    depth: float
    points: tuple[Point, ...]
    box: Box
    square: bool
    cut: bool
    facing: float
    upward: float


def draft(boards: Sequence[Board], direction: Direction) -> tuple[DraftFace, ...]:
    """The faces of boards that are turned to the viewer, from the back to the front.

    Args:
        boards: what is shown.
        direction: which way one looks.
    Returns:
        Faces in the order in which they are painted; what lies whole behind one large face is left out.
    """
    found: list[tuple[float, int, _Face, str]] = []
    for order, board in enumerate(boards):
        found += [(face.depth, order, face, board.id) for face in _faces(board.shape, board.frame, direction)]
    covers = sorted(
        ((face.box, face.depth) for _, _, face, _ in found if face.square and not face.cut and _upright(face)),
        key=lambda cover: -(cover[0][2] - cover[0][0]) * (cover[0][3] - cover[0][1]),
    )[:_COVERS]
    seen = [item for item in found if not _covered(item[2], covers)]
    seen.sort(key=lambda item: (item[0], item[1]))
    return tuple(DraftFace(face.points, board, face.cut, face.facing, face.upward) for _, _, face, board in seen)


@lru_cache(maxsize=8192)
def _faces(shape: Shape, frame: Frame, direction: Direction) -> tuple[_Face, ...]:
    toward = direction.toward
    du, dv, dw = dot(frame.u, toward), dot(frame.v, toward), dot(frame.w, toward)
    outline = flattened(shape.outline, _CHORD_MM)
    found = []
    if abs(dw) > _FACING:
        level = 0.0 if dw > 0 else -shape.thickness
        corners = [(u, v, level) for u, v in outline]
        upward = frame.w[2] if dw > 0 else -frame.w[2]
        found.append(_face(corners, frame, direction, facing=abs(dw), upward=upward))
    for (u0, v0), (u1, v1) in zip(outline, (*outline[1:], outline[0]), strict=True):
        size = ((u1 - u0) ** 2 + (v1 - v0) ** 2) ** 0.5
        facing = ((v1 - v0) * du - (u1 - u0) * dv) / size
        if facing > _FACING:
            t = -shape.thickness
            corners = [(u0, v0, 0.0), (u1, v1, 0.0), (u1, v1, t), (u0, v0, t)]
            upward = ((v1 - v0) * frame.u[2] - (u1 - u0) * frame.v[2]) / size
            found.append(_face(corners, frame, direction, facing=facing, upward=upward))
    return (*found, *_cuts(shape, frame, direction))


def _cuts(shape: Shape, frame: Frame, direction: Direction) -> list[_Face]:
    """Outlines of the cuts that are entered from the viewer's side, on the face that they are entered from."""
    found = []
    for cut in shape.cuts:
        prism = cut_prism(shape.outline, shape.thickness, cut)
        out = dot(frame.direction(prism.frame.w), direction.toward) * prism.entry
        if out < _SQUARE or cut.start > 0:
            continue
        level = prism.high if prism.entry > 0 else prism.low
        corners = [prism.frame.point((a, b, level)) for a, b in flattened(cut.outline, _CHORD_MM)]
        found.append(_face(corners, frame, direction, cut=True))
    return found


def _face(
    corners: Sequence[Vec3],
    frame: Frame,
    direction: Direction,
    *,
    facing: float = 1.0,
    upward: float = 0.0,
    cut: bool = False,
) -> _Face:
    world = [frame.point(corner) for corner in corners]
    points = tuple(direction.on_paper(point) for point in world)
    toward = direction.toward
    depth = max(dot(point, toward) for point in world) + (_ABOVE_MM if cut else 0.0)
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return _Face(depth, points, (min(xs), min(ys), max(xs), max(ys)), facing > _SQUARE, cut, facing, upward)


def _upright(face: _Face) -> bool:
    """Whether the face is a rectangle along the view's axes."""
    x0, y0, x1, y1 = face.box
    return len(face.points) == 4 and all(
        min(abs(x - x0), abs(x - x1)) < 1e-6 and min(abs(y - y0), abs(y - y1)) < 1e-6 for x, y in face.points
    )


def _covered(face: _Face, covers: Sequence[tuple[Box, float]]) -> bool:
    x0, y0, x1, y1 = face.box
    return any(
        face.depth < depth and box[0] <= x0 and box[1] <= y0 and box[2] >= x1 and box[3] >= y1 for box, depth in covers
    )
