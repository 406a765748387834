"""Balloons on pictures: at a board's face, or at its edge where all that is seen of it is narrow."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from shopdraw.drawing.mark import Line
from shopdraw.shape.path import Point
from shopdraw.sheet.view import Balloon
from shopdraw.view.direction import Direction
from shopdraw.wood.board import Board

_WHOLE = 0.8
"""A narrow board is seen well where one of its edges shows so much of its longest side."""
_SPARE = 5


def picture_balloon(board: Board, points: Sequence[Point], lines: Iterable[object]) -> Balloon | None:
    """A board's balloon; None where nothing of it is drawn.

    Args:
        board: that is labelled.
        points: inside its faces as they are seen, the best first.
        lines: of the picture.
    """
    if points:
        return Balloon(board.label, points[0], "dot", (), board.id, tuple(points[1:]))
    edges = [mark for mark in lines if isinstance(mark, Line) and mark.board == board.id]
    if not edges:
        return None
    edges.sort(key=lambda mark: (-_long(mark), mark.start))
    middles = [((m.start[0] + m.end[0]) / 2, (m.start[1] + m.end[1]) / 2) for m in edges[:_SPARE]]
    return Balloon(board.label, middles[0], "arrow", (), board.id, tuple(middles[1:]))


def seen_well(board: Board, lines: Iterable[object], direction: Direction) -> bool:
    """Whether a board that is too narrow to end a leader in shows most of its longest side: a strip, not a sliver."""
    u0, v0, u1, v1 = board.shape.box
    ends = [direction.on_paper(board.frame.point(end)) for end in ((u0, v0, 0.0), (u1, v0, 0.0), (u0, v1, 0.0))]
    longest = max(math.dist(ends[0], end) for end in ends[1:])
    drawn = (math.dist(mark.start, mark.end) for mark in lines if isinstance(mark, Line) and mark.board == board.id)
    return max(drawn, default=0.0) >= _WHOLE * longest


def _long(mark: Line) -> float:
    return round(abs(mark.end[0] - mark.start[0]) + abs(mark.end[1] - mark.start[1]), 3)
