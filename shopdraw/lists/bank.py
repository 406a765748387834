"""Drawer fronts that stand over each other: cut from one strip, in order, so that their grain runs on."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.wood.board import Board

_FRONT = "drawer.front"


def banks_of(boards: Sequence[Board]) -> dict[str, str]:
    """For each drawer front the bank that it belongs to: fronts that stand over each other, if there are several."""
    found: dict[tuple[int, int], list[str]] = {}
    for board in boards:
        if board.member == _FRONT and not board.layers:
            u, origin = board.frame.u, board.frame.at
            middle = origin[0] + u[0] * board.length / 2
            found.setdefault((round(middle), round(origin[1])), []).append(board.id)
    return {
        board_id: f"bank {number}"
        for number, ids in enumerate((ids for ids in found.values() if len(ids) > 1), 1)
        for board_id in ids
    }


def from_the_top(boards: Sequence[Board]) -> list[Board]:
    """The boards in their own order, but the fronts of each bank among themselves from the top down."""
    banks = banks_of(boards)
    downwards = sorted((board for board in boards if board.id in banks), key=lambda board: -board.frame.at[2])
    waiting = {bank: iter([b for b in downwards if banks[b.id] == bank]) for bank in banks.values()}
    return [next(waiting[banks[board.id]]) if board.id in banks else board for board in boards]
