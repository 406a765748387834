"""The blank and its cuts as prisms in the board's frame."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Path, bounds, flattened
from shopdraw.wood.board import Cut, Face, Shape

ON_BOUNDARY_MM = 1e-6
"""Two things nearer than this are at one place."""

_ALONG_W = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
_AGAINST_V = Frame((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0), (0.0, 0.0, 0.0))
_ALONG_U = Frame((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), (0.0, 0.0, 0.0))


@dataclass(frozen=True, slots=True)
class Prism:
    """A prism in the board's frame.

    Attributes:
        frame: its first two axes carry the outline, the third is its run.
        outline: in the first two axes, mm.
        islands: closed paths inside the outline that don't belong to it.
        low, high: where it starts and ends along the third axis, mm.
        entry: +1 or -1, the way along the third axis that leads out of the face a cut is entered from.
    """

    frame: Frame
    outline: Path
    islands: tuple[Path, ...]
    low: float
    high: float
    entry: int


def blank_prism(shape: Shape) -> Prism:
    """The blank before any cut."""
    return Prism(_ALONG_W, shape.outline, (), -shape.thickness, 0.0, 1)


def cut_prism(outline: Path, thickness: float, cut: Cut) -> Prism:
    """The wood that a cut takes away, neither longer nor wider than it says.

    Args:
        outline: the blank's.
        thickness: the blank's, mm.
    Raises:
        ValueError: a tilted cut without a frame of its own.
    """
    near, far = cut.start, cut.start + cut.depth
    match cut.face:
        case Face.TILTED:
            if cut.frame is None:
                raise ValueError(f"the {cut.kind} is tilted but has no frame: it needs the cut's frame in the board's")
            frame, low, high, entry = cut.frame, -far, -near, 1
        case Face.FACE:
            frame, low, high, entry = _ALONG_W, -far, -near, 1
        case Face.BACK:
            frame, low, high, entry = _ALONG_W, near - thickness, far - thickness, -1
        case _:
            frame, low, high, entry = _from_edge(bounds(outline), cut.face, near, far)
    return Prism(frame, cut.outline, cut.islands, low, high, entry)


def _from_edge(
    box: tuple[float, float, float, float], face: Face, near: float, far: float
) -> tuple[Frame, float, float, int]:
    u0, v0, u1, v1 = box
    if face is Face.NEAR:
        return _AGAINST_V, -v0 - far, -v0 - near, 1
    if face is Face.FAR:
        return _AGAINST_V, near - v1, far - v1, -1
    if face is Face.FOOT:
        return _ALONG_U, u0 + near, u0 + far, -1
    return _ALONG_U, u1 - far, u1 - near, 1


def exit_distance(shape: Shape, prism: Prism) -> float:
    """How far a tilted cut's face must be moved outwards to leave the blank's box everywhere, mm.

    A bit enters a tilted cut through whatever wood stands over its plane.
    """
    u0, v0, u1, v1 = bounds(shape.outline)
    low, high = (u0, v0, -shape.thickness), (u1, v1, 0.0)
    out = prism.frame.w if prism.entry > 0 else (-prism.frame.w[0], -prism.frame.w[1], -prism.frame.w[2])
    level = prism.high if prism.entry > 0 else prism.low
    furthest = 0.0
    for a, b in flattened(prism.outline, 0.1):
        point = prism.frame.point((a, b, level))
        way = math.inf
        for axis in range(3):
            if out[axis] > 1e-12:
                way = min(way, (high[axis] - point[axis]) / out[axis])
            elif out[axis] < -1e-12:
                way = min(way, (low[axis] - point[axis]) / out[axis])
        furthest = max(furthest, way)
    return furthest
