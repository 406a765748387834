"""Solids of another season, stretched from those at build: far quicker than making each board's solid anew."""

from __future__ import annotations

from collections.abc import Callable

import manifold3d
import numpy as np

from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.solid import solid


def seasoned_wood(built: Assembly) -> Callable[[Board], manifold3d.Manifold]:
    """A board's wood in the world, for boards of the same piece in another season.

    A round hole is stretched with its board here; a hole's radius changes by less than a hundredth of a millimetre.

    Args:
        built: the piece at build.
    """

    def wood(board: Board) -> manifold3d.Manifold:
        shape = built.board(board.id).shape
        across = board.shape.width / shape.width if shape.width else 1.0
        rows = np.array(board.frame.rows(), dtype=np.float64).reshape(3, 4)
        rows[:, 1] *= across
        return solid(shape).transform(rows)

    return wood
