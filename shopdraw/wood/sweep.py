"""Motions swept: doors that turn, drawers and supports that slide, against every board that stays.

Nothing is jumped over. A slide passes through the prisms that its leading faces draw behind them: only where these
meet wood is it looked at more closely. A stretch of a path is tried with a body that holds everything the board
passes through on it; where that body meets wood the stretch is halved, down to steps of a millimetre, and there the
board itself is tried.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import manifold3d
import numpy as np

from shopdraw.shape.frame import Frame, scale, unit
from shopdraw.wood.assembly import Motion
from shopdraw.wood.board import Board, Face
from shopdraw.wood.interference import SHARED_MM3, Box, Wood, box_volume
from shopdraw.wood.solid import Floats, Ints, placed_solid

STEP_MM = 1.0
"""The longest way that any point goes between two positions tried."""
_WIDEST_TURN_DEG = 30.0
_LEADING = 1e-7
"""A face whose normal runs with the way by less than this lies along it and draws no prism."""

_HAIR_MM = 1e-6


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


def swept(
    boards: Sequence[Board], motions: Sequence[Motion], limit_mm3: float = SHARED_MM3, wood: Wood = placed_solid
) -> tuple[Hit, ...]:
    """Every pair of a moving and a resting board that share more than the limit somewhere on the way.

    What a motion comes after is open by then and looked at in its own motion only.

    Args:
        wood: a board's wood in the world, where it isn't to be made from the board's shape.
    """
    hits: list[Hit] = []
    for motion in motions:
        open_by_then = {name for first in motions if first.id in motion.after for name in first.boards}
        there = [board for board in boards if board.id not in open_by_then] if open_by_then else boards
        hits += swept_motion(there, motion, limit_mm3, wood)
    return tuple(hits)


def swept_motion(
    boards: Sequence[Board], motion: Motion, limit_mm3: float = SHARED_MM3, wood: Wood = placed_solid
) -> tuple[Hit, ...]:
    """The hits of one motion, by moving board, then by the other, in the order of the boards."""
    moving = [board for board in boards if board.id in motion.boards]
    resting = [board for board in boards if board.id not in motion.boards]
    bodies = [wood(board) for board in resting]
    table = np.array([body.bounding_box() for body in bodies]).reshape(-1, 6)
    hits = []
    for board in moving:
        path = _Path(board, motion, wood(board))
        for i in np.flatnonzero(_box_volumes(np.array(path.box()), table) > limit_mm3):
            box: Box = tuple(map(float, table[i]))  # type: ignore[assignment]
            if path.clears(bodies[i], box, limit_mm3):
                continue
            hit = _first_hit(path, resting[i], bodies[i], box, limit_mm3)
            if hit is not None:
                hits.append(hit)
    return tuple(hits)


def _box_volumes(one: Floats, table: Floats) -> Floats:
    """What an upright box shares with each of several, mm³."""
    both = np.minimum(one[3:], table[:, 3:]) - np.maximum(one[:3], table[:, :3])
    volumes: Floats = np.where((both > 0).all(axis=1), both.prod(axis=1), 0.0)
    return volumes


def moved_frame(frame: Frame, motion: Motion, position: float) -> Frame:
    """Where a motion brings a frame.

    Args:
        position: how far it has gone, degrees of a turn or mm of a slide.
    """
    if motion.kind == "turn":
        return frame.turned(motion.point, unit(motion.direction), position)
    return frame.moved(scale(unit(motion.direction), position))


_WORLD = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))


@dataclass(frozen=True, eq=False)
class _Corners:
    """Corners of a convex body on its way: feet on the motion's axis, from there outwards, and square to both."""

    foot: Floats
    out: Floats
    across: Floats

    def turned(self, angle: float, further: float) -> Floats:
        """The corners turned by an angle in radians and carried further from the axis by a factor."""
        turned: Floats = self.foot + further * (math.cos(angle) * self.out + math.sin(angle) * self.across)
        return turned


def _layers(board: Board, wood: manifold3d.Manifold) -> list[Floats]:
    """Corners of the board's wood between the floors of the cuts in its faces, so that hulls keep to its rabbets.

    Returns:
        For each layer that has wood the points, mm in the world, whose hull is the layer's: the wood's own corners,
        and where its edges pass a floor.
    """
    mesh = wood.to_mesh64()
    corners = mesh.vert_properties[:, :3]
    heights = (corners - np.array(board.frame.at)) @ np.array(board.frame.w)
    one, other = mesh.tri_verts.astype(np.int64).ravel(), np.roll(mesh.tri_verts.astype(np.int64), -1, axis=1).ravel()
    rising = heights[one] < heights[other]  # each edge belongs to two triangles that run it in opposite ways
    one, other = one[rising], other[rising]
    levels = [math.inf, *sorted(_floors(board), reverse=True), -math.inf]
    passed = [_passing(corners, heights, one, other, level) for level in levels]
    layers = [
        np.concatenate((corners[(heights <= high) & (heights >= low)], above, below))
        for high, low, above, below in zip(levels, levels[1:], passed, passed[1:], strict=False)
    ]
    return [layer for layer in layers if len(layer)]


def _floors(board: Board) -> list[float]:
    """Heights of the floors of the cuts in a board's faces, from its reference face, mm, inside the wood.

    A hair on the cut's side of each floor, so that no skin of the floor widens the layer beside it.
    """
    thickness = board.shape.thickness
    floors = {_HAIR_MM - cut.start - cut.depth for cut in board.shape.cuts if cut.face is Face.FACE}
    floors |= {cut.start + cut.depth - thickness - _HAIR_MM for cut in board.shape.cuts if cut.face is Face.BACK}
    return [floor for floor in floors if -thickness < floor < 0.0]


def _passing(corners: Floats, heights: Floats, low: Ints, high: Ints, level: float) -> Floats:
    """Where edges, each given by its lower and its higher corner, pass a height."""
    if not math.isfinite(level):
        return corners[:0]
    passing = (heights[low] < level) & (heights[high] > level)
    low, high = low[passing], high[passing]
    share = (level - heights[low]) / (heights[high] - heights[low])
    points: Floats = corners[low] + share[:, None] * (corners[high] - corners[low])
    return points


class _Path:
    """One board on its way: bodies that hold all it passes through between two positions."""

    def __init__(self, board: Board, motion: Motion, wood: manifold3d.Manifold) -> None:
        self.board, self.motion, self.wood = board, motion, wood
        self._bodies: dict[tuple[float, float], tuple[tuple[manifold3d.Manifold, Box], ...]] = {}
        self._axis = unit(motion.direction)
        self._way = np.array(self._axis)
        self._hulls: list[_Corners] | None = None
        self._leading: Floats | None = None

    @property
    def _layers(self) -> list[_Corners]:
        """Corners of the hulls of the board's layers, between the floors of the cuts in its faces."""
        if self._hulls is None:
            hulls = [self._corners(layer) for layer in _layers(self.board, self.wood)]
            self._hulls = [corners for corners in hulls if len(corners.out)]  # none round what has no thickness
        return self._hulls

    def _corners(self, layer: Floats) -> _Corners:
        corners = manifold3d.Manifold.hull_points(layer).to_mesh64().vert_properties[:, :3]
        along = (corners - np.array(self.motion.point)) @ self._way
        foot = np.array(self.motion.point) + along[:, None] * self._way
        out: Floats = corners - foot
        return _Corners(foot, out, np.cross(self._way, out))

    @property
    def radius(self) -> float:
        """The farthest that a corner lies from the axis, mm."""
        return max((float(np.linalg.norm(layer.out, axis=1).max()) for layer in self._layers), default=0.0)

    def stretches(self) -> list[tuple[float, float]]:
        """The whole way in stretches short enough to be held by a convex body."""
        reach = self.motion.reach
        count = max(1, math.ceil(abs(reach) / _WIDEST_TURN_DEG)) if self.motion.kind == "turn" else 1
        return [(reach * i / count, reach * (i + 1) / count) for i in range(count)]

    def box(self) -> Box:
        """The upright box round the whole way."""
        if self.motion.kind == "turn":
            boxes = np.array([box for stretch in self.stretches() for _, box in self.bodies(*stretch)])
        else:
            here = np.array(self.wood.bounding_box())
            boxes = np.array([here, here + self.motion.reach * np.concatenate((self._way, self._way))])
        low, high = boxes[:, :3].min(axis=0), boxes[:, 3:].max(axis=0)
        return (*map(float, low), *map(float, high))  # type: ignore[return-value]

    def clears(self, other: manifold3d.Manifold, box: Box, limit_mm3: float) -> bool:
        """Whether a slide surely passes another board: the prisms behind its leading faces share too little with it."""
        if self.motion.kind == "turn":
            return False
        prisms = self._prisms()
        low, high = prisms.min(axis=1), prisms.max(axis=1)
        near = np.flatnonzero(_box_volumes(np.array(box), np.concatenate((low, high), axis=1)) > 1e-3 * limit_mm3)
        shared = box_volume(self.wood.bounding_box(), box)
        if shared > limit_mm3:
            shared = float((self.wood ^ other).volume())
        for index in near:
            shared += float((manifold3d.Manifold.hull_points(prisms[index]) ^ other).volume())
            if shared > limit_mm3:
                return False
        return True

    def _prisms(self) -> Floats:
        """Six corners for each triangle that faces the way: where it is and where it ends."""
        if self._leading is None:
            mesh = self.wood.to_mesh64()
            corners = mesh.vert_properties[:, :3][mesh.tri_verts.astype(np.int64)]
            way = self._way * math.copysign(1.0, self.motion.reach)
            normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
            leading = normals @ way > _LEADING * np.maximum(np.linalg.norm(normals, axis=1), 1e-30)
            ahead = corners[leading]
            self._leading = np.concatenate((ahead, ahead + way * abs(self.motion.reach)), axis=1)
        return self._leading

    def bodies(self, start: float, end: float) -> tuple[tuple[manifold3d.Manifold, Box], ...]:
        """Convex bodies that together hold the board at every position from start to end, and their boxes."""
        key = (start, end)
        if key not in self._bodies:
            bodies = [manifold3d.Manifold.hull_points(self._held(layer, start, end)) for layer in self._layers]
            self._bodies[key] = tuple((body, body.bounding_box()) for body in bodies)
        return self._bodies[key]

    def _held(self, layer: _Corners, start: float, end: float) -> Floats:
        if self.motion.kind != "turn":
            here = layer.foot + layer.out
            return np.concatenate([here + self._way * start, here + self._way * end])
        # a corner's arc lies in the triangle of its two ends and the point where their tangents meet
        half = math.radians(end - start) / 2
        return np.concatenate(
            [
                layer.turned(math.radians(start), 1.0),
                layer.turned(math.radians(start) + half, 1 / math.cos(half)),
                layer.turned(math.radians(end), 1.0),
            ]
        )

    def step(self, start: float, end: float) -> float:
        """The longest way that a point of the board goes between two positions, mm."""
        return self.radius * math.radians(abs(end - start)) if self.motion.kind == "turn" else abs(end - start)

    def shared(self, position: float, other: manifold3d.Manifold) -> float:
        """What the board shares with another one when it has gone so far, mm³."""
        rows = moved_frame(_WORLD, self.motion, position).rows()
        return float((self.wood.transform(np.array(rows).reshape(3, 4)) ^ other).volume())


def _first_hit(path: _Path, other: Board, wood: manifold3d.Manifold, box: Box, limit_mm3: float) -> Hit | None:
    waiting = path.stretches()[::-1]
    while waiting:
        start, end = waiting.pop()
        if not any(
            box_volume(held, box) > limit_mm3 and float((body ^ wood).volume()) > limit_mm3
            for body, held in path.bodies(start, end)
        ):
            continue
        if path.step(start, end) > STEP_MM:
            middle = (start + end) / 2
            waiting.extend(((middle, end), (start, middle)))
            continue
        for position in (start, end):
            volume = path.shared(position, wood)
            if volume > limit_mm3:
                return _worst(path, other, wood, position, volume)
    return None


def _worst(path: _Path, other: Board, wood: manifold3d.Manifold, position: float, volume: float) -> Hit:
    """The hit with the most that is shared at a few further positions."""
    rest = path.motion.reach - position
    most = max([volume] + [path.shared(position + rest * part / 8, wood) for part in range(1, 9)])
    return Hit(path.motion.id, path.board.id, other.id, position, most)
