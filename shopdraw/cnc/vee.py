"""V-grooves in a face: what a vee cutter makes in one run of its middle."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.cnc.flat import OpenLine, Unit
from shopdraw.cnc.layer import depth_figure
from shopdraw.shape.path import Point
from shopdraw.wood.board import Board, Cut, Face

_SLIGHT = 1e-6
_WHOLE_DEG = 0.01
_ENDS = (Face.NEAR, Face.FAR, Face.FOOT, Face.HEAD)


@dataclass(frozen=True, slots=True)
class Vee:
    """A V-groove.

    Attributes:
        cut: index of the cut in the board's shape.
        face: `Face.FACE` or `Face.BACK`.
        depth: mm.
        angle: between its flanks, whole degrees.
        start, end: of its middle in the board's u and v; past the edge where it runs out, half its width short of
            where it stops, since the cutter is round.
    """

    cut: int
    face: Face
    depth: float
    angle: int
    start: Point
    end: Point

    @property
    def width(self) -> float:
        """At the surface, mm."""
        return 2 * self.depth * math.tan(math.radians(self.angle / 2))


def vee_of(board: Board, index: int, run_out_mm: float) -> Vee | None:
    """The V-groove that a cut is; None for any other cut.

    Args:
        board: whose cut.
        index: of the cut.
        run_out_mm: how far past the edge the cutter's flank is to run.
    """
    cut = board.shape.cuts[index]
    if cut.face not in _ENDS or len(cut.outline.corners) != 3 or any(corner.bulge for corner in cut.outline.corners):
        return None
    found = _section(cut, board.thickness)
    if found is None:
        return None
    face, across, depth, half = found
    angle = math.degrees(2 * math.atan2(half, depth))
    if abs(angle - round(angle)) > _WHOLE_DEG:
        return None
    run = board.width if cut.face in (Face.NEAR, Face.FAR) else board.length
    near, far = cut.start, cut.start + cut.depth
    near = near - half - run_out_mm if near <= _SLIGHT else near + half
    far = far + half + run_out_mm if far >= run - _SLIGHT else far - half
    if far - near <= 0.05:
        return None
    start, end = (_on_plan(board, cut.face, across, into) for into in (near, far))
    return Vee(index, face, depth, round(angle), start, end)


def _section(cut: Cut, thickness: float) -> tuple[Face, float, float, float] | None:
    """The face that a triangle is open to, where its point is, its depth and half its width; None where it is none."""
    for face, level, inwards in ((Face.FACE, 0.0, -1.0), (Face.BACK, -thickness, 1.0)):
        upper = sorted(c.x for c in cut.outline.corners if abs(c.y - level) < _SLIGHT)
        points = [c for c in cut.outline.corners if (c.y - level) * inwards > _SLIGHT]
        if len(upper) == 2 and len(points) == 1:
            (point,) = points
            half = (upper[1] - upper[0]) / 2
            if abs(point.x - (upper[0] + upper[1]) / 2) < _SLIGHT:
                return face, point.x, abs(point.y - level), half
    return None


def _on_plan(board: Board, face: Face, across: float, into: float) -> Point:
    match face:
        case Face.NEAR:
            return across, into
        case Face.FAR:
            return across, board.width - into
        case Face.FOOT:
            return into, across
        case _:
            return board.length - into, across


def vee_layer(vee: Vee, unit: Unit) -> str:
    """The layer of a V-groove: depth, then the angle."""
    return f"VEE_{depth_figure(vee.depth, unit)}_{vee.angle}"


def vee_line(start: Point, end: Point) -> OpenLine:
    """What the file holds: the cutter's middle."""
    return OpenLine(start, end)
