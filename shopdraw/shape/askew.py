"""Rectangles that lie askew to the axes they are drawn in."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.shape.path import Path, Point

_SLIGHT = 1e-6


@dataclass(frozen=True, slots=True)
class Askew:
    """A rectangle with no side along an axis.

    Attributes:
        middle: of it, in the outline's own plane, mm.
        wide, long: its shorter and its longer sides, mm.
        degrees: between its longer sides and the first axis, above 0, below 90.
    """

    middle: Point
    wide: float
    long: float
    degrees: float


def askew_rectangle(path: Path) -> Askew | None:
    """The rectangle that an outline is; None for any other outline, and for a rectangle along the axes."""
    corners = path.corners
    if len(corners) != 4 or any(corner.bulge for corner in corners):
        return None
    (ax, ay, _), (bx, by, _), (cx, cy, _), (dx, dy, _) = corners
    square = abs((bx - ax) * (cx - bx) + (by - ay) * (cy - by)) < _SLIGHT
    even = math.dist((ax + cx, ay + cy), (bx + dx, by + dy)) < _SLIGHT
    if not (square and even) or min(abs(bx - ax), abs(by - ay)) < _SLIGHT:
        return None
    one, other = math.dist((ax, ay), (bx, by)), math.dist((bx, by), (cx, cy))
    run = (bx - ax, by - ay) if one > other else (cx - bx, cy - by)
    degrees = math.degrees(math.atan2(abs(run[1]), abs(run[0])))
    return Askew(((ax + cx) / 2, (ay + cy) / 2), min(one, other), max(one, other), degrees)
