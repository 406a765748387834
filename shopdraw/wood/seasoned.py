"""Solids of another season, stretched from those at build: far quicker than making each board's solid anew."""

from __future__ import annotations

from collections.abc import Callable

import manifold3d
import numpy as np

from shopdraw.shape.frame import Frame
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.season import stretched
from shopdraw.wood.solid import placed_solid, solid

_ALIKE_MM = 1e-9


def seasoned_wood(built: Assembly) -> Callable[[Board], manifold3d.Manifold]:
    """A board's wood in the world, for boards of the same piece in another season.

    A round hole is stretched with its board here; it gets a few hundredths of a millimetre wider or narrower.

    Args:
        built: the piece at build.
    """
    known: dict[tuple[str, Frame, float], manifold3d.Manifold] = {}

    def wood(board: Board) -> manifold3d.Manifold:
        key = (board.id, board.frame, board.shape.width)
        if key not in known:
            known[key] = stretched_solid(board)
        return known[key]

    def stretched_solid(board: Board) -> manifold3d.Manifold:
        shape = built.board(board.id).shape
        across = board.shape.width / shape.width
        if abs(across - 1.0) > 1e-15 and not _alike(board.shape, stretched(shape, across)):
            return placed_solid(board)
        rows = np.array(board.frame.rows(), dtype=np.float64).reshape(3, 4)
        rows[:, 1] *= across
        return solid(shape).transform(rows)

    return wood


def _alike(one: Shape, other: Shape) -> bool:
    """Whether the cuts of two shapes stand at the same places; grooves that keep their width don't."""
    return all(
        a.face is b.face
        and abs(a.start - b.start) < _ALIKE_MM
        and abs(a.depth - b.depth) < _ALIKE_MM
        and all(
            abs(p.x - q.x) < _ALIKE_MM and abs(p.y - q.y) < _ALIKE_MM
            for p, q in zip(a.outline.corners, b.outline.corners, strict=True)
        )
        for a, b in zip(one.cuts, other.cuts, strict=True)
    )
