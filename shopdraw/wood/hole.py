"""Round holes and slots with round ends: what bits leave for pins, screws and pegs."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import lru_cache

from shopdraw.shape.path import Arc, Path, arc_of
from shopdraw.wood.board import Board, Shape

_ALIKE = 1e-9
_HALF_ROUND = 0.05
"""How far the bulge of a slot's end may be off that of a half circle; the seasons stretch slots a little."""


def hole_centre(path: Path) -> tuple[float, float] | None:
    """The centre of a path that is one whole circle; None for any other."""
    arcs: list[Arc] = []
    for here, there in path.pairs():
        if not here.bulge:
            return None
        arcs.append(arc_of((here.x, here.y), (there.x, there.y), here.bulge))
    x, y = arcs[0].centre
    alike = all(math.hypot(a.centre[0] - x, a.centre[1] - y) < _ALIKE for a in arcs)
    return (x, y) if alike else None


def filled(board: Board) -> Board:
    """The same board as if its round holes and slots had never been drilled."""
    shape = without_holes(board.shape)
    return board if shape is board.shape else replace(board, shape=shape)


@lru_cache(maxsize=8192)
def without_holes(shape: Shape) -> Shape:
    """The same blank with all cuts but round holes and slots; the very shape where there are none."""
    kept = tuple(cut for cut in shape.cuts if not _is_drilled(cut.outline))
    return shape if len(kept) == len(shape.cuts) else replace(shape, cuts=kept)


def _is_drilled(path: Path) -> bool:
    """Whether a path is a circle, or two straight lines with a half circle at each end."""
    ends = [abs(corner.bulge) for corner in path.corners if corner.bulge]
    straight = len(path.corners) - len(ends)
    return len(ends) == 2 and straight in (0, 2) and all(abs(end - 1.0) < _HALF_ROUND for end in ends)
