"""Which of the yard's boards a solid stock comes from; usual rough boards where a shop names none."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from shopdraw.lists.rough import YARD_WIDTH_MM, rough_thickness
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.shop import YardTable
from shopdraw.trade.lumber import hardwood_quarter
from shopdraw.trade.table import NotInTable
from shopdraw.wood.board import Stock
from shopdraw.wood.glue_up import Width, rough_width

_FOOT = 12 * float(MM_PER_INCH)
USUAL_LENGTHS_MM = (8 * _FOOT, 10 * _FOOT, 12 * _FOOT)
"""Lengths of rough boards where the shop file names no yard (common practice)."""
SAME_THICKNESS_MM = 0.5


def boards_of(stock: Stock, yard: Iterable[tuple[str, YardTable]]) -> Mapping[str, YardTable]:
    """The yard's boards of this species and of the thickness asked for, else the thinnest that are thicker.

    Args:
        stock: a solid one.
        yard: what the shop file names, by key.
    """
    wanted = rough_thickness(stock)
    found: dict[str, tuple[float, YardTable]] = {}
    for key, table in yard:
        if table.species not in ("", stock.species):
            continue
        thickness = sold_thickness(table)
        if table.thickness is not None and abs(thickness - stock.thickness) <= SAME_THICKNESS_MM:
            found[key] = (0.0, table)
        elif table.thickness is None and thickness >= wanted - SAME_THICKNESS_MM:
            found[key] = (thickness - wanted, table)
    if not found:
        return {}
    least = min(over for over, _ in found.values())
    return {key: table for key, (over, table) in found.items() if over <= least + SAME_THICKNESS_MM}


def usual_boards(stock: Stock) -> YardTable:
    """Rough boards as most yards have them, of the widths at hand where the piece names these."""
    widths = tuple(one.sold for one in stock.at_hand) or (YARD_WIDTH_MM,)
    return YardTable(species=stock.species, quarters="4/4", widths=widths, lengths=USUAL_LENGTHS_MM)


def width_of(table: YardTable, sold: float, stock: Stock, edge_loss: float) -> Width:
    """A board's width as sold and once both edges are jointed.

    Args:
        table: the board's row in the yard.
        sold: its width, mm.
        stock: whose boards at hand say their own clear widths.
        edge_loss: what jointing takes off each edge of a rough board, mm.
    """
    if table.thickness is not None:
        return Width(sold, sold)
    own = next((one for one in stock.at_hand if one.sold == sold), None)
    return own or rough_width(sold, edge_loss)


def sold_thickness(table: YardTable) -> float:
    """The thickness that a board is sold at, mm; 0 where its quarters aren't known."""
    if table.thickness is not None:
        return table.thickness
    try:
        return hardwood_quarter(table.quarters).rough_mm
    except NotInTable:
        return 0.0
