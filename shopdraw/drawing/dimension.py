"""Dimensions as values: what is measured, what is printed, and where its line and figure stand."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.shape.path import Point


@dataclass(frozen=True, slots=True)
class Dimension:
    """A placed dimension, in the view's plane, true-size mm.

    Attributes:
        id: `feature/feature@view`.
        kind: "linear" (along `direction_deg`), "running" (from `a`, the origin, to `b`), "angular" (about `vertex`),
            "radius" or "diameter" (`a` the centre, `b` on the arc).
        a, b: the two points measured between.
        direction_deg: the direction measured along, degrees from +x; for linear and running.
        line: a point that the dimension line passes through (for angular: on its arc).
        words: the figure as printed, brackets of a reference dimension and units' marks included.
        words_at: middle of the figure's baseline.
        words_angle_deg: direction of reading.
        height: of the figure, paper mm.
        measured: what is measured, mm or degrees, exact.
        terminator: "arrow" inside, "arrow-outside", or "stroke" (oblique at 45°).
        leader: points from the dimension line to the figure when it stands off the line, or empty.
        vertex: for angular: where the two legs meet.
        board: id of the board it belongs to, or "".
        extension: whether extension lines are drawn from `a` and from `b`.
        broken: the line is broken for its figure (ASME style) instead of passing under it.
    """

    id: str
    kind: str
    a: Point
    b: Point
    direction_deg: float
    line: Point
    words: str
    words_at: Point
    words_angle_deg: float
    height: float
    measured: float
    terminator: str = "arrow"
    leader: tuple[Point, ...] = ()
    vertex: Point | None = None
    board: str = ""
    extension: tuple[bool, bool] = (True, True)
    broken: bool = False
