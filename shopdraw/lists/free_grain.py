"""Which parts may lie turned on a sheet, grain across: only those of which the piece says so."""

from __future__ import annotations

from shopdraw.piece.design import Design
from shopdraw.wood.board import Board


def free_to_turn(board: Board, design: Design) -> bool:
    """Whether a part of a sheet may lie with its grain across the sheet's: its own word first, then its stock's."""
    if board.stock.kind != "sheet":
        return False
    own, stock = design.board.get(board.id), design.stock.get(board.stock.name)
    if own is not None and own.turn is not None:
        return own.turn
    return stock is not None and stock.turn
