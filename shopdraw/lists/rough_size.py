"""Rough sizes: what to cut first, from the boards that the yard has. Cut list, layouts and part sheets share them."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from enum import Enum

from shopdraw.lists.rough import EDGE_LOSS_MM, rough_thickness
from shopdraw.lists.yard_boards import boards_of, usual_boards, width_of
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.design import Design
from shopdraw.piece.shop import AllowanceTable, Shop, YardTable
from shopdraw.wood.board import Board, Stock
from shopdraw.wood.glue_up import GlueUp, Width, glue_up

_NEAR = 1e-6
STEP_MM, STEP_INCH = 1.0, float(MM_PER_INCH) / 4
"""Rough sizes are rounded up to these, in millimetre and in inch pieces (common practice)."""


class Kind(Enum):
    """How a board's rough size follows from its finished one; the value is what people read."""

    BOARD = "single board"
    PANEL = "glued-up panel"
    SHEET = "part of a sheet"


@dataclass(frozen=True, slots=True)
class Yard:
    """What rough sizes follow from besides the board.

    Attributes:
        boards: of the shop's yard, by key; empty for the usual ones.
        allowance: what is added to finished sizes.
        edge_loss: lost on each edge of a rough board that is jointed, mm.
        step: rough widths and lengths are rounded up to it, mm.
    """

    boards: tuple[tuple[str, YardTable], ...] = ()
    allowance: AllowanceTable = field(default_factory=AllowanceTable)
    edge_loss: float = EDGE_LOSS_MM
    step: float = STEP_MM


def yard_of(design: Design, shop: Shop | None = None) -> Yard:
    """The yard of a shop, for a piece: its unit chooses the step where the shop has no habit.

    Args:
        design: the piece's inputs.
        shop: None for the stated defaults.
    """
    shop = shop or Shop()
    usual = STEP_INCH if design.piece.units == "inch" else STEP_MM
    return Yard(tuple(shop.yard.items()), shop.allowance, shop.saw.edge_loss, shop.habit.rough_step or usual)


@dataclass(frozen=True, slots=True)
class Rough:
    """A rough size, mm.

    Attributes:
        kind: how it follows from the finished one.
        thickness: as sold.
        width, length: finished size and allowance, rounded up; no wider than what it is cut from.
        glue_up: the boards that a panel is glued up from.
    """

    kind: Kind
    thickness: float
    width: float
    length: float
    glue_up: GlueUp | None = None

    @property
    def boards(self) -> int:
        """How many boards it is made of."""
        return 1 if self.glue_up is None else len(self.glue_up.widths)


def rough_of(board: Board, yard: Yard) -> Rough:
    """A board's rough size: never less than the finished one."""
    add = yard.allowance
    if board.stock.kind == "sheet":
        width, length = _up(board.width + add.sheet_width, yard), _up(board.length + add.sheet_length, yard)
        return Rough(Kind.SHEET, board.thickness, width, length)
    thickness = max(rough_thickness(board.stock), board.thickness)
    widths = widths_of(board.stock, yard)
    holding = [width.clear for width in widths if width.clear >= board.width - _NEAR]
    if holding:
        width = max(board.width, min(_up(board.width + add.board_width, yard), *holding))
        return Rough(Kind.BOARD, thickness, width, _up(board.length + add.board_length, yard))
    length = _up(board.length + add.panel_length, yard)
    # the piece has laid out its own boards at hand already, to the finished width
    made = glue_up(board.width if board.staves else board.width + add.panel_width, length, widths)
    clear = board.width if made is None else made.clear
    width = max(board.width, min(_up(board.width + add.panel_width, yard), clear))
    return Rough(Kind.PANEL, thickness, width, length, made)


def widths_of(stock: Stock, yard: Yard) -> tuple[Width, ...]:
    """Widths that a stock's boards come in: those at hand, else the yard's, else the usual one."""
    if stock.at_hand:
        return stock.at_hand
    tables = boards_of(stock, yard.boards) or {"": usual_boards(stock)}
    return tuple(width_of(table, sold, stock, yard.edge_loss) for table in tables.values() for sold in table.widths)


def _up(size: float, yard: Yard) -> float:
    return math.ceil(size / yard.step - _NEAR) * yard.step
