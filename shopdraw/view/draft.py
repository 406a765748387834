"""Drafts: boards as filled faces from the back to the front, from outlines and cuts alone, without solids.

Quick enough to follow a hand. A face painted later hides what it covers. Faces square to the line of sight are in
exact order; leaning ones are ordered by their nearest point, which full views, with their hidden lines, put right
when the hand stops.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import NamedTuple

from shopdraw.shape.frame import Frame, Vec3, dot
from shopdraw.shape.path import Point, bounds, flattened
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board, Cut, Face, Shape
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
    boxes = [_board_box(board.shape, board.frame, direction) for board in boards]
    largest = sorted(range(len(boards)), key=lambda index: -_area(boxes[index][0]))
    faces: dict[int, tuple[_Face, ...]] = {}
    for index in largest[:_COVERS]:
        faces[index] = _faces(boards[index].shape, boards[index].frame, direction)
    covers = _covers(faces.values())
    for index in largest[_COVERS:]:
        if not _hidden(*boxes[index], covers):
            faces[index] = _faces(boards[index].shape, boards[index].frame, direction)
    covers = _covers(faces.values())
    seen = [
        (face.depth, index, face)
        for index, of_board in sorted(faces.items())
        for face in of_board
        if not _hidden(face.box, face.depth, covers)
    ]
    seen.sort(key=lambda item: item[:2])
    return tuple(DraftFace(f.points, boards[index].id, f.cut, f.facing, f.upward) for _, index, f in seen)


def _covers(faces: Iterable[tuple[_Face, ...]]) -> list[tuple[Box, float]]:
    """The largest upright rectangles: what lies whole behind one of them isn't seen."""
    found = [
        (face.box, face.depth)
        for of_board in faces
        for face in of_board
        if face.square and not face.cut and _upright(face)
    ]
    found.sort(key=lambda cover: -_area(cover[0]))
    return found[:_COVERS]


def _area(box: Box) -> float:
    return (box[2] - box[0]) * (box[3] - box[1])


@lru_cache(maxsize=8192)
def _board_box(shape: Shape, frame: Frame, direction: Direction) -> tuple[Box, float]:
    """The box round a board in the view's plane, and the depth of its nearest corner."""
    u0, v0, u1, v1 = bounds(shape.outline)
    world = [frame.point((u, v, w)) for u in (u0, u1) for v in (v0, v1) for w in (0.0, -shape.thickness)]
    xs = [dot(point, direction.right) for point in world]
    ys = [dot(point, direction.up) for point in world]
    toward = direction.toward
    return (min(xs), min(ys), max(xs), max(ys)), max(dot(point, toward) for point in world)


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
        if cut.start > 0 or _out_of(cut, frame, direction.toward) < _SQUARE:
            continue
        prism = cut_prism(shape.outline, shape.thickness, cut)
        out = dot(frame.direction(prism.frame.w), direction.toward) * prism.entry
        if out < _SQUARE:
            continue
        level = prism.high if prism.entry > 0 else prism.low
        corners = [prism.frame.point((a, b, level)) for a, b in flattened(cut.outline, _CHORD_MM)]
        found.append(_face(corners, frame, direction, cut=True))
    return found


def _out_of(cut: Cut, frame: Frame, toward: Vec3) -> float:
    """How far the face that a cut is entered from is turned to the viewer; 1 for a tilted one, which is tried later."""
    match cut.face:
        case Face.FACE:
            return dot(frame.w, toward)
        case Face.BACK:
            return -dot(frame.w, toward)
        case Face.FAR:
            return dot(frame.v, toward)
        case Face.NEAR:
            return -dot(frame.v, toward)
        case Face.HEAD:
            return dot(frame.u, toward)
        case Face.FOOT:
            return -dot(frame.u, toward)
        case Face.TILTED:
            return 1.0


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


def _hidden(box: Box, depth: float, covers: Sequence[tuple[Box, float]]) -> bool:
    x0, y0, x1, y1 = box
    return any(depth < before and b[0] <= x0 and b[1] <= y0 and b[2] >= x1 and b[3] >= y1 for b, before in covers)
