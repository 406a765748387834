"""Where a panel is glued up: a thin chain line along each joint between its boards, on its two faces."""

from __future__ import annotations

from itertools import accumulate, pairwise

from shopdraw.drawing.mark import Line, Mark, Meaning
from shopdraw.shape.path import Path, flattened
from shopdraw.wood.board import Board, Face

_FLAT_MM = 0.05
_LEAST_MM = 1.0
"""A shorter line isn't drawn."""


def glue_lines(board: Board, face: Face) -> tuple[Mark, ...]:
    """The lines between the boards of a panel, as the face's view has them; none on edges and ends.

    Args:
        board: its `staves` are widths from the near edge.
        face: which is looked at.
    """
    if face not in (Face.FACE, Face.BACK):
        return ()
    up = 1.0 if face is Face.FACE else -1.0
    return tuple(
        Line((u0, up * v), (u1, up * v), Meaning.CENTRE, board.id)
        for v in list(accumulate(board.staves))[:-1]
        for u0, u1 in _within(board.shape.outline, v)
        if u1 - u0 > _LEAST_MM
    )


def _within(outline: Path, v: float) -> tuple[tuple[float, float], ...]:
    """The spans of a level line that lie inside an outline."""
    points = list(flattened(outline, _FLAT_MM))
    crossed = sorted(
        a[0] + (v - a[1]) / (b[1] - a[1]) * (b[0] - a[0])
        for a, b in pairwise([*points, points[0]])
        if (a[1] > v) != (b[1] > v)
    )
    return tuple(zip(crossed[::2], crossed[1::2], strict=True))
