"""What moves, drawn where it stands when open: the lid and its swing, supports pulled out."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from shopdraw.drawing.mark import ArcMark, Line, Meaning
from shopdraw.shape.frame import Frame, Vec3, add, scale
from shopdraw.view.direction import Direction
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly, Motion
from shopdraw.wood.board import Board

_ALONG = 0.999


def moved(board: Board, motion: Motion) -> Board:
    """The board at the end of its motion."""
    if motion.kind == "slide":
        return replace(board, frame=replace(board.frame, at=add(board.frame.at, scale(motion.direction, motion.reach))))
    f = board.frame
    turn = math.radians(motion.reach)
    u, v, w = (_turned(axis, motion.direction, turn) for axis in (f.u, f.v, f.w))
    off = tuple(a - b for a, b in zip(f.at, motion.point, strict=True))
    at = add(motion.point, _turned((off[0], off[1], off[2]), motion.direction, turn))
    return replace(board, frame=Frame(u, v, w, at))


def open_boards(assembly: Assembly) -> tuple[Board, ...]:
    """The lid and its supports as they stand when it is open; what the piece has of them."""
    motions = [m for m in assembly.motions if m.boards[0] == "lid" or m.boards[0].startswith("support.")]
    return tuple(moved(assembly.board(board), motion) for motion in motions for board in motion.boards)


def moving_marks(boards: Sequence[Board], direction: Direction) -> tuple[Line | ArcMark, ...]:
    """Boards as lines of the kind for moved positions, each seen by itself."""
    return tuple(
        replace(mark, meaning=Meaning.MOVING) for board in boards for mark in project([board], direction, hidden=False)
    )


def swing_marks(assembly: Assembly, direction: Direction) -> tuple[ArcMark, ...]:
    """The way of the lid's free end about its pin, where one looks along the pin."""
    slant = assembly.slant
    if slant is None or abs(direction.toward[0]) < _ALONG:
        return ()
    pin = direction.on_paper((0.0, *slant.hinge_pin_mm))
    low, high = slant.angle_from_level_deg, 180.0
    if slant.hinge_edge == "upper":
        # from where it lies, below the pin and before it, up and back as far as it turns
        reach = next((motion.reach for motion in assembly.motions if motion.boards[0] == "lid"), high)
        low, high = 180.0 + low - reach, 180.0 + low
    if direction.right[1] < 0:
        low, high = 180.0 - high, 180.0 - low
    return (ArcMark(pin, slant.lid_length_mm, low, high, Meaning.MOVING, "lid"),)


def _turned(v: Vec3, axis: Vec3, angle: float) -> Vec3:
    """A vector turned about a unit axis (Rodrigues)."""
    c, s = math.cos(angle), math.sin(angle)
    along = sum(a * b for a, b in zip(axis, v, strict=True)) * (1 - c)
    x = (
        axis[1] * v[2] - axis[2] * v[1],
        axis[2] * v[0] - axis[0] * v[2],
        axis[0] * v[1] - axis[1] * v[0],
    )
    return tuple(c * v[i] + s * x[i] + along * axis[i] for i in range(3))  # type: ignore[return-value]
