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
from shopdraw.shape.path import Point, flattened
from shopdraw.view.direction import Direction
from shopdraw.view.filled import SLACK_MM, Box, area, filled
from shopdraw.wood.board import Board, Cut, Face, Shape
from shopdraw.wood.prism import cut_prism

_FACING = 1e-9
_SQUARE = 1.0 - 1e-9
_CHORD_MM = 0.5
_ABOVE_MM = 1e-3
"""A cut's outline is painted just after the face that it is cut into."""
_COVERS = 12
"""So many of the largest upright rectangles are tried as what hides other faces."""


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
    if not boards:
        return ()
    blocks = [_block(board, direction) for board in boards]
    largest = sorted(range(len(boards)), key=lambda index: -area(blocks[index][0]))
    faces: dict[int, list[_Face]] = {}
    for index in largest[:_COVERS]:
        faces[index] = _faces(boards[index].shape, boards[index].frame, direction, ())
    before = _covers(faces.values())
    for index in largest[_COVERS:]:
        if not _hidden(*blocks[index], before):
            faces[index] = _faces(boards[index].shape, boards[index].frame, direction, before)
    covers = _covers(faces.values())
    seen = [
        (face.depth, index, face)
        for index, of_board in sorted(faces.items())
        for face in of_board
        if not _hidden(face.box, face.depth, covers)
    ]
    seen.sort(key=lambda item: item[:2])
    return tuple(DraftFace(f.points, boards[index].id, f.cut, f.facing, f.upward) for _, index, f in seen)


def _block(board: Board, direction: Direction) -> tuple[Box, float]:
    """The box round a board's blank in the view's plane, a little less, and the depth of its nearest corner."""
    frame, (u0, v0, u1, v1), t = board.frame, board.shape.box, board.shape.thickness
    x, y, z = frame.point(((u0 + u1) / 2, (v0 + v1) / 2, -t / 2))
    a, b, c = (u1 - u0) / 2, (v1 - v0) / 2, t / 2
    right, up, toward = _shares(frame.u, frame.v, frame.w, direction)
    across, high = right[0] * a + right[1] * b + right[2] * c, up[0] * a + up[1] * b + up[2] * c
    way, lift = direction.right, direction.up
    at_x = x * way[0] + y * way[1] + z * way[2]
    at_y = x * lift[0] + y * lift[1] + z * lift[2]
    near = dot((x, y, z), direction.toward) + toward[0] * a + toward[1] * b + toward[2] * c
    less_x, less_y = across - SLACK_MM, high - SLACK_MM
    return (at_x - less_x, at_y - less_y, at_x + less_x, at_y + less_y), near


@lru_cache(maxsize=512)
def _shares(u: Vec3, v: Vec3, w: Vec3, direction: Direction) -> tuple[Vec3, Vec3, Vec3]:
    """How much of a board's length, width and thickness is seen to the right, upwards and towards the viewer."""
    ways = (direction.right, direction.up, direction.toward)
    right, up, toward = ((abs(dot(u, way)), abs(dot(v, way)), abs(dot(w, way))) for way in ways)
    return right, up, toward


def _covers(faces: Iterable[Sequence[_Face]]) -> list[tuple[Box, float]]:
    """The largest upright rectangles: what lies whole behind one of them isn't seen."""
    found = [
        (box, face.depth)
        for of_board in faces
        for face in of_board
        if face.square and not face.cut
        for box in filled(face.points, face.box)
    ]
    found.sort(key=lambda cover: -area(cover[0]))
    return found[:_COVERS]


def _faces(
    shape: Shape, frame: Frame, direction: Direction, covers: Sequence[tuple[Box, float]]
) -> list[_Face]:  # fmt: skip
    """The faces of a board that are turned to the viewer: those of any board of its shape that lies the same way.

    Args:
        shape, frame: the board.
        direction: which way one looks.
        covers: what lies whole behind one of them is left out.
    """
    dx, dy = direction.on_paper(frame.at)
    dz = dot(frame.at, direction.toward)
    found = []
    made = _turned_faces(shape, frame.u, frame.v, frame.w, direction)
    for depth, points, (x0, y0, x1, y1), square, cut, facing, upward in made:
        box = (x0 + dx, y0 + dy, x1 + dx, y1 + dy)
        if not _hidden(box, depth + dz, covers):
            moved = tuple([(x + dx, y + dy) for x, y in points])
            found.append(_Face(depth + dz, moved, box, square, cut, facing, upward))
    return found


class _Lying(NamedTuple):
    """How a board lies in a view: its three axes along the view's right, up and toward."""

    right: Vec3
    up: Vec3
    toward: Vec3


@lru_cache(maxsize=1024)
def _turned_faces(shape: Shape, u: Vec3, v: Vec3, w: Vec3, direction: Direction) -> tuple[_Face, ...]:
    """The faces of a shape that begins at the world's origin.

    Kept for the last two or three steps of a drag and no more: all that a hand has passed would fill the memory.
    """
    ways = (direction.right, direction.up, direction.toward)
    right, up, toward = ((dot(u, way), dot(v, way), dot(w, way)) for way in ways)
    lying = _Lying(right, up, toward)
    du, dv, dw = toward
    outline, t = flattened(shape.outline, _CHORD_MM), -shape.thickness
    found = []
    if abs(dw) > _FACING:
        level = 0.0 if dw > 0 else t
        found.append(_face([(a, b, level) for a, b in outline], lying, abs(dw), w[2] if dw > 0 else -w[2]))
    for (u0, v0), (u1, v1) in zip(outline, (*outline[1:], outline[0]), strict=True):
        across, along = v1 - v0, u1 - u0
        facing = across * du - along * dv
        if facing > 0.0:
            size = (along * along + across * across) ** 0.5
            if facing / size > _FACING:
                corners = [(u0, v0, 0.0), (u1, v1, 0.0), (u1, v1, t), (u0, v0, t)]
                found.append(_face(corners, lying, facing / size, (across * u[2] - along * v[2]) / size))
    return (*found, *_cuts(shape, lying))


def _cuts(shape: Shape, lying: _Lying) -> list[_Face]:
    """Outlines of the cuts that are entered from the viewer's side, on the face that they are entered from."""
    found = []
    for cut in shape.cuts:
        if cut.start > 0 or _out_of(cut, lying.toward) < _SQUARE:
            continue
        if cut.face is not Face.TILTED:
            corners = _on_face(shape, cut)
        else:
            prism = cut_prism(shape.outline, shape.thickness, cut)
            if dot(prism.frame.w, lying.toward) * prism.entry < _SQUARE:
                continue
            level = prism.high if prism.entry > 0 else prism.low
            corners = [prism.frame.point((a, b, level)) for a, b in flattened(cut.outline, _CHORD_MM)]
        found.append(_face([_on_blank(shape, corner) for corner in corners], lying, cut=True))
    return found


def _on_face(shape: Shape, cut: Cut) -> list[Vec3]:
    """A cut's outline on the face of the blank that it is entered from, in the board's (u, v, w)."""
    outline, (u0, v0, u1, v1) = flattened(cut.outline, _CHORD_MM), shape.box
    if cut.face in (Face.FACE, Face.BACK):
        level = 0.0 if cut.face is Face.FACE else -shape.thickness
        return [(a, b, level) for a, b in outline]
    if cut.face in (Face.NEAR, Face.FAR):
        edge = v0 if cut.face is Face.NEAR else v1
        return [(a, edge, b) for a, b in outline]
    end = u0 if cut.face is Face.FOOT else u1
    return [(end, a, b) for a, b in outline]


def _on_blank(shape: Shape, point: Vec3) -> Vec3:
    """The point of a board's blank nearest to one: a cut may reach out of the wood."""
    u0, v0, u1, v1 = shape.box
    u, v, w = point
    return min(max(u, u0), u1), min(max(v, v0), v1), min(max(w, -shape.thickness), 0.0)


def _out_of(cut: Cut, toward: Vec3) -> float:
    """How far the face that a cut is entered from is turned to the viewer; 1 for a tilted one, which is tried later."""
    du, dv, dw = toward
    match cut.face:
        case Face.FACE:
            return dw
        case Face.BACK:
            return -dw
        case Face.FAR:
            return dv
        case Face.NEAR:
            return -dv
        case Face.HEAD:
            return du
        case Face.FOOT:
            return -du
        case Face.TILTED:
            return 1.0


def _face(
    corners: Sequence[Vec3], lying: _Lying, facing: float = 1.0, upward: float = 0.0, *, cut: bool = False
) -> _Face:
    (ru, rv, rw), (uu, uv, uw), (tu, tv, tw) = lying
    points = tuple([(a * ru + b * rv + c * rw, a * uu + b * uv + c * uw) for a, b, c in corners])
    depth = max([a * tu + b * tv + c * tw for a, b, c in corners]) + (_ABOVE_MM if cut else 0.0)
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return _Face(depth, points, (min(xs), min(ys), max(xs), max(ys)), facing > _SQUARE, cut, facing, upward)


def _hidden(box: Box, depth: float, covers: Sequence[tuple[Box, float]]) -> bool:
    x0, y0, x1, y1 = box
    for (a0, b0, a1, b1), before in covers:
        if depth < before and a0 <= x0 and b0 <= y0 and a1 >= x1 and b1 >= y1:
            return True
    return False
