"""Rough sizes: what to cut first, and at what thickness the yard counts it."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from enum import Enum

from shopdraw.measure import MM_PER_INCH
from shopdraw.trade.lumber import hardwood_quarter, rough_quarter_for
from shopdraw.trade.sheet_goods import panel
from shopdraw.trade.species import species
from shopdraw.trade.table import NotInTable
from shopdraw.wood.board import Board, Stock

_INCH = float(MM_PER_INCH)
YARD_WIDTH_MM = 152.0
"""A usual rough board, 6 in wide (common practice)."""
EDGE_LOSS_MM = 3.0
"""Lost on each edge of a board that is jointed for a glue-up (common practice)."""
PLANING_MM = 6.0
"""Rough over finished thickness where no thickness as sold is thick enough: glued up from layers (common practice)."""


class Kind(Enum):
    """How a board's rough size follows from its finished one."""

    BOARD = "board"
    PANEL = "panel"
    SHEET = "sheet"


@dataclass(frozen=True, slots=True)
class Allowance:
    """What is added to a finished size, mm."""

    width: float
    length: float


ALLOWANCES = {
    Kind.BOARD: Allowance(6.0, 25.0),
    Kind.PANEL: Allowance(12.0, 50.0),
    Kind.SHEET: Allowance(6.0, 6.0),
}
"""Common practice: a board is ripped and jointed once and trimmed at both ends; a glue-up is trimmed on both edges and
its uneven ends sawn off; a sheet's part is sawn a little large and trimmed clean."""


@dataclass(frozen=True, slots=True)
class Rough:
    """A rough size, mm.

    Attributes:
        thickness: as sold.
        width, length: finished size and allowance.
        staves: boards that a panel is glued up from; 1 for what one board gives.
    """

    thickness: float
    width: float
    length: float
    staves: int = 1


def rough_of(board: Board) -> Rough:
    """A board's rough size."""
    kind = kind_of(board)
    more = ALLOWANCES[kind]
    usual = len(board.staves) or staves_for(board.width)
    staves = usual if kind is Kind.PANEL else 1
    thickness = board.thickness if kind is Kind.SHEET else max(rough_thickness(board.stock), board.thickness)
    return Rough(thickness, board.width + more.width, board.length + more.length, staves)


def kind_of(board: Board) -> Kind:
    """Sheet, glued-up panel, or one board."""
    if board.stock.kind == "sheet":
        return Kind.SHEET
    if board.stock.at_hand:
        return Kind.PANEL if board.staves else Kind.BOARD
    return Kind.BOARD if board.width <= clear_width() else Kind.PANEL


def clear_width(yard_mm: float = YARD_WIDTH_MM, edge_loss_mm: float = EDGE_LOSS_MM) -> float:
    """What a rough board of the yard gives once both edges are jointed, mm."""
    return yard_mm - 2 * edge_loss_mm


def staves_for(width_mm: float, yard_mm: float = YARD_WIDTH_MM, edge_loss_mm: float = EDGE_LOSS_MM) -> int:
    """How many boards a panel of this width is glued up from."""
    return max(1, math.ceil(width_mm / clear_width(yard_mm, edge_loss_mm) - 1e-9))


def rough_thickness(stock: Stock) -> float:
    """The thickness that a solid stock is sold and counted at, mm.

    What the piece file calls it has the first word: "4/4", "1x8", "26 mm sawn". Where that names no rough size (a
    dressed "20 mm", or nothing), it is the thinnest hardwood thickness that can be surfaced to the finished one.
    """
    named = _named_thickness(stock.nominal)
    if named is not None and named > stock.thickness + 0.5:
        return named
    quarter = rough_quarter_for(stock.thickness)
    return quarter.rough_mm if quarter is not None else stock.thickness + PLANING_MM


def _named_thickness(nominal: str) -> float | None:
    quarters = re.match(r"\s*(\d+)\s*/\s*4\b", nominal)
    if quarters is not None:
        name = f"{quarters[1]}/4"
        try:
            return hardwood_quarter(name).rough_mm
        except NotInTable:
            return int(quarters[1]) / 4 * _INCH
    softwood = re.match(r"\s*(\d+)(?:[- ](\d)/(\d))?\s*[x×]\s*\d", nominal)
    if softwood is not None:
        more = int(softwood[2]) / int(softwood[3]) if softwood[2] and int(softwood[3]) else 0.0
        return (int(softwood[1]) + more) * _INCH
    metric = re.match(r"\s*(\d+(?:[.,]\d+)?)\s*mm\b", nominal)
    return float(metric[1].replace(",", ".")) if metric is not None else None


def wood_name(stock: Stock) -> str:
    """The species or sheet as people read it: "Cherry, black"."""
    try:
        return panel(stock.species).name if stock.kind == "sheet" else species(stock.species).name
    except NotInTable:
        return stock.species


def trade_name(stock: Stock) -> str:
    """The stock as a yard knows it: "Cherry, black, 4/4"."""
    return f"{wood_name(stock)}, {stock.nominal}" if stock.nominal else wood_name(stock)
