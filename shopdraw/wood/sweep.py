"""Motions swept: doors that turn, drawers and supports that slide, against every board that stays.

Nothing is jumped over: each stretch of a path is first tried with a body that holds everything the board passes
through on it. Only where that body meets wood is the stretch halved, down to steps of a millimetre, and there the
board itself is tried.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import manifold3d
import numpy as np

from shopdraw.shape.frame import Frame, dot, scale, subtract, unit
from shopdraw.wood.assembly import Motion
from shopdraw.wood.board import Board
from shopdraw.wood.interference import SHARED_MM3, Box, box_of, box_volume, hull_corners
from shopdraw.wood.solid import Floats, placed_solid, solid

STEP_MM = 1.0
"""The longest way that any point goes between two positions tried."""
_WIDEST_TURN_DEG = 30.0


@dataclass(frozen=True, slots=True)
class Hit:
    """A moving board that runs into one that stays.

    Attributes:
        motion: id of the motion.
        board: id of the moving board.
        other: id of the board that stays.
        position: how far the motion has gone when they first share wood, degrees or mm.
        volume: the most that they share at the positions tried, mm³.
    """

    motion: str
    board: str
    other: str
    position: float
    volume: float


def swept(boards: Sequence[Board], motions: Sequence[Motion], limit_mm3: float = SHARED_MM3) -> tuple[Hit, ...]:
    """Every pair of a moving and a resting board that share more than the limit somewhere on the way."""
    return tuple(hit for motion in motions for hit in swept_motion(boards, motion, limit_mm3))


def swept_motion(boards: Sequence[Board], motion: Motion, limit_mm3: float = SHARED_MM3) -> tuple[Hit, ...]:
    """The hits of one motion, by moving board, then by the other, in the order of the boards."""
    moving = [board for board in boards if board.id in motion.boards]
    resting = [(board, box_of(board)) for board in boards if board.id not in motion.boards]
    return tuple(
        hit
        for board in moving
        for path in [_Path(board, motion)]
        for other, box in resting
        if box_volume(path.box(), box) > limit_mm3
        for hit in [_first_hit(path, other, box, limit_mm3)]
        if hit is not None
    )


def moved_frame(frame: Frame, motion: Motion, position: float) -> Frame:
    """Where a motion brings a frame.

    Args:
        position: how far it has gone, degrees of a turn or mm of a slide.
    """
    if motion.kind == "turn":
        return frame.turned(motion.point, unit(motion.direction), position)
    return frame.moved(scale(unit(motion.direction), position))


class _Path:
    """One board on its way: bodies that hold all it passes through between two positions."""

    def __init__(self, board: Board, motion: Motion) -> None:
        self.board, self.motion = board, motion
        corners = np.array([board.frame.point(corner) for corner in hull_corners(board.shape)])
        self._corners: Floats = corners
        axis = unit(motion.direction)
        self._way = np.array(axis)
        self._foot = np.array([_foot(tuple(map(float, c)), motion, axis) for c in corners])
        self._out: Floats = corners - self._foot
        self._across: Floats = np.cross(self._way, self._out)
        self.radius = float(np.linalg.norm(self._out, axis=1).max()) if len(corners) else 0.0
        self._bodies: dict[tuple[float, float], tuple[manifold3d.Manifold, Box]] = {}
        self._box: Box | None = None

    def stretches(self) -> list[tuple[float, float]]:
        """The whole way in stretches short enough to be held by a convex body."""
        reach = self.motion.reach
        count = max(1, math.ceil(abs(reach) / _WIDEST_TURN_DEG)) if self.motion.kind == "turn" else 1
        return [(reach * i / count, reach * (i + 1) / count) for i in range(count)]

    def box(self) -> Box:
        """The upright box round the whole way."""
        if self._box is None:
            boxes = np.array([self.body(*stretch)[1] for stretch in self.stretches()])
            low, high = boxes[:, :3].min(axis=0), boxes[:, 3:].max(axis=0)
            self._box = (*map(float, low), *map(float, high))  # type: ignore[assignment]
        return self._box  # type: ignore[return-value]

    def body(self, start: float, end: float) -> tuple[manifold3d.Manifold, Box]:
        """A convex body that holds the board at every position from start to end, and its box."""
        key = (start, end)
        if key not in self._bodies:
            body = manifold3d.Manifold.hull_points(np.concatenate(self._held(start, end)))
            self._bodies[key] = (body, body.bounding_box())
        return self._bodies[key]

    def _held(self, start: float, end: float) -> list[Floats]:
        if self.motion.kind != "turn":
            return [self._corners + self._way * start, self._corners + self._way * end]
        # a corner's arc lies in the triangle of its two ends and the point where their tangents meet
        half = math.radians(end - start) / 2
        return [
            self._turned(math.radians(start), 1.0),
            self._turned(math.radians(start) + half, 1 / math.cos(half)),
            self._turned(math.radians(end), 1.0),
        ]

    def _turned(self, angle: float, further: float) -> Floats:
        turned: Floats = self._foot + further * (math.cos(angle) * self._out + math.sin(angle) * self._across)
        return turned

    def step(self, start: float, end: float) -> float:
        """The longest way that a point of the board goes between two positions, mm."""
        return self.radius * math.radians(abs(end - start)) if self.motion.kind == "turn" else abs(end - start)

    def shared(self, position: float, other: Board) -> float:
        """What the board shares with another one when it has gone so far, mm³."""
        frame = moved_frame(self.board.frame, self.motion, position)
        body = solid(self.board.shape).transform(np.array(frame.rows()).reshape(3, 4))
        return float((body ^ placed_solid(other)).volume())


def _foot(corner: tuple[float, ...], motion: Motion, axis: tuple[float, float, float]) -> tuple[float, float, float]:
    """The nearest point of the motion's axis."""
    x, y, z = corner
    along = dot(subtract((x, y, z), motion.point), axis)
    return (
        motion.point[0] + along * axis[0],
        motion.point[1] + along * axis[1],
        motion.point[2] + along * axis[2],
    )


def _first_hit(path: _Path, other: Board, box: Box, limit_mm3: float) -> Hit | None:
    wood = placed_solid(other)
    waiting = path.stretches()[::-1]
    while waiting:
        start, end = waiting.pop()
        body, held = path.body(start, end)
        if box_volume(held, box) <= limit_mm3 or float((body ^ wood).volume()) <= limit_mm3:
            continue
        if path.step(start, end) > STEP_MM:
            middle = (start + end) / 2
            waiting.extend(((middle, end), (start, middle)))
            continue
        for position in (start, end):
            volume = path.shared(position, other)
            if volume > limit_mm3:
                return _worst(path, other, position, volume)
    return None


def _worst(path: _Path, other: Board, position: float, volume: float) -> Hit:
    """The hit with the most that is shared at a few further positions."""
    rest = path.motion.reach - position
    most = max([volume] + [path.shared(position + rest * part / 8, other) for part in range(1, 9)])
    return Hit(path.motion.id, path.board.id, other.id, position, most)
