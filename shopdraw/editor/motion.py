"""What swings and what slides, and where dados lie, as marks for the canvas. Knows no Qt."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import replace

from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning
from shopdraw.shape.frame import Frame, Vec3, dot
from shopdraw.shape.path import Point, flattened
from shopdraw.view.direction import Direction
from shopdraw.wood.assembly import Assembly, Body, Motion
from shopdraw.wood.board import Board

_CHORD_MM = 0.5
_SQUARE = 1e-6


def dado_marks(assembly: Assembly, direction: Direction) -> tuple[Mark, ...]:
    """The outlines of all dados, grooves and housings in a view."""
    marks: dict[tuple[Point, Point], Line] = {}
    for joint in assembly.joints:
        if joint.body is None or joint.kind not in ("dado", "groove", "rabbet"):
            continue
        for start, end in _prism_edges(joint.body):
            a, b = _rounded(direction.on_paper(start)), _rounded(direction.on_paper(end))
            if a != b:
                marks.setdefault((min(a, b), max(a, b)), Line(a, b, Meaning.CENTRE, joint.host))
    return tuple(marks.values())


def motion_marks(assembly: Assembly, direction: Direction, kind: str) -> tuple[Mark, ...]:
    """Boards in their moved places, and the way there.

    Args:
        assembly: the piece.
        direction: which way one looks.
        kind: "turn" (lids) or "slide" (drawers, supports).
    """
    marks: list[Mark] = []
    for motion in assembly.motions:
        if motion.kind != kind:
            continue
        boards = [assembly.board(name) for name in motion.boards if assembly.has(name)]
        moved = [replace(board, frame=_moved(board.frame, motion, motion.reach)) for board in boards]
        marks += _outlines(moved, direction)
        if kind == "turn":
            marks += _swing(boards, motion, direction)
    return tuple(marks)


def _moved(frame: Frame, motion: Motion, position: float) -> Frame:
    """Where a motion brings a frame."""
    # Sweeps work with solids: the window opens without loading them.
    from shopdraw.wood.sweep import moved_frame

    return moved_frame(frame, motion, position)


def moved_boards(assembly: Assembly, parts: Mapping[str, float]) -> tuple[Board, ...]:
    """All boards, those of some motions moved.

    Args:
        assembly: the piece, closed and at rest.
        parts: how far each motion has gone, by its id, 0 to 1.
    """
    frames: dict[str, Frame] = {}
    for motion in assembly.motions:
        part = parts.get(motion.id, 0.0)
        for name in motion.boards if part else ():
            if assembly.has(name):
                frames[name] = _moved(frames.get(name, assembly.board(name).frame), motion, part * motion.reach)
    return tuple(replace(board, frame=frames.get(board.id, board.frame)) for board in assembly.boards)


def _outlines(boards: Iterable[Board], direction: Direction) -> list[Mark]:
    marks: dict[tuple[Point, Point], Line] = {}
    for board in boards:
        outline = flattened(board.shape.outline, _CHORD_MM)
        for start, end in zip(outline, (*outline[1:], outline[0]), strict=True):
            for level in (0.0, -board.thickness):
                _add(marks, board, direction, (*start, level), (*end, level))
            _add(marks, board, direction, (*start, 0.0), (*start, -board.thickness))
    return list(marks.values())


def _add(marks: dict[tuple[Point, Point], Line], board: Board, direction: Direction, start: Vec3, end: Vec3) -> None:
    a = _rounded(direction.on_paper(board.frame.point(start)))
    b = _rounded(direction.on_paper(board.frame.point(end)))
    if a != b:
        marks.setdefault((min(a, b), max(a, b)), Line(a, b, Meaning.MOVING, board.id))


def _swing(boards: Iterable[Board], motion: Motion, direction: Direction) -> list[Mark]:
    """The arc that the furthest corner runs through, where one looks along the axis."""
    along = dot(motion.direction, direction.toward)
    if abs(abs(along) - 1.0) > _SQUARE:
        return []
    centre = direction.on_paper(motion.point)
    corners = [
        direction.on_paper(board.frame.point((u, v, w)))
        for board in boards
        for u, v in flattened(board.shape.outline, _CHORD_MM)
        for w in (0.0, -board.thickness)
    ]
    if not corners:
        return []
    far = max(corners, key=lambda point: math.dist(point, centre))
    start = math.degrees(math.atan2(far[1] - centre[1], far[0] - centre[0]))
    turn = motion.reach * along
    low, high = (start, start + turn) if turn > 0 else (start + turn, start)
    return [ArcMark(centre, math.dist(far, centre), low, high, Meaning.MOVING)]


def _prism_edges(body: Body) -> list[tuple[Vec3, Vec3]]:
    outline = flattened(body.outline, _CHORD_MM)
    upper = [body.frame.point((a, b, 0.0)) for a, b in outline]
    lower = [body.frame.point((a, b, -body.depth)) for a, b in outline]
    rings = [*zip(upper, (*upper[1:], upper[0]), strict=True), *zip(lower, (*lower[1:], lower[0]), strict=True)]
    return [*rings, *zip(upper, lower, strict=True)]


def _rounded(point: Point) -> Point:
    return (round(point[0], 4) + 0.0, round(point[1], 4) + 0.0)
