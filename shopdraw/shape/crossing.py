"""Where a path crosses itself: such a path bounds nothing, and whatever is made of it is wrong without a word."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from shopdraw.shape.chord import chords
from shopdraw.shape.path import Path, Point

_TOUCHING = 1e-9
"""Parts of two lines' lengths within which they only touch."""
_TOLERANCE_MM = 0.05


class CrossesItself(ValueError):
    """An outline that crosses itself; the message says where."""


@lru_cache(maxsize=16384)
def crossing_of(path: Path) -> Point | None:
    """The first point at which two segments of a path cross, mm; None for a sound path. Touching isn't crossing."""
    if len(path.corners) == 2 or _is_rectangle(path):
        return None
    points = np.array([(chord.x, chord.y) for chord in chords(path, _TOLERANCE_MM)])
    way = np.roll(points, -1, axis=0) - points
    apart = points[None, :] - points[:, None]
    turn = way[:, None, 0] * way[None, :, 1] - way[:, None, 1] * way[None, :, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        first = (apart[..., 0] * way[None, :, 1] - apart[..., 1] * way[None, :, 0]) / turn
        second = (apart[..., 0] * way[:, None, 1] - apart[..., 1] * way[:, None, 0]) / turn
    low, high = _TOUCHING, 1 - _TOUCHING
    crosses = (first > low) & (first < high) & (second > low) & (second < high) & (turn != 0.0)
    found = np.argwhere(crosses)
    if not len(found):
        return None
    i, j = found[0]
    x, y = (points[i] + first[i, j] * way[i]).tolist()
    return (x, y)


def _is_rectangle(path: Path) -> bool:
    """An upright one: most paths are."""
    if len(path.corners) != 4 or any(corner.bulge for corner in path.corners):
        return False
    (ax, ay, _), (bx, by, _), (cx, cy, _), (dx, dy, _) = path.corners
    return (ax == dx and bx == cx and ay == by and cy == dy) or (ax == bx and cx == dx and by == cy and ay == dy)


def refuse_crossing(path: Path, what: str) -> None:
    """Refuses a path that crosses itself.

    Args:
        what: names the path in the message, such as "the outline".
    Raises:
        CrossesItself: it does; the message says where and what would be right.
    """
    found = crossing_of(path)
    if found is not None:
        raise CrossesItself(
            f"{what} crosses itself at ({found[0]:.3f}, {found[1]:.3f}) mm: its corners must go round it in order"
        )
