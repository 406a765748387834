"""What a stock may be cut from: the yard's boards and sheets, and the offcuts on hand."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.lists.buying import sheet_of
from shopdraw.lists.layout.job import Piece
from shopdraw.lists.rough import rough_thickness
from shopdraw.lists.yard_boards import boards_of, sold_thickness, usual_boards, width_of
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.design import Design
from shopdraw.piece.shop import OffcutTable, Shop, YardTable
from shopdraw.trade.lumber import board_feet
from shopdraw.wood.board import Stock
from shopdraw.wood.glue_up import Width

_INCH = float(MM_PER_INCH)
_FOOT = 12 * _INCH
SHEET_THICKNESS_MM = 0.8
"""A sheet measures this much more or less than its name (US PS 1, sanded: 1/64 in, rounded up to two)."""
_SPARE_MM = 8.0
"""An offcut thicker than this over what is wanted is kept for something else (common practice)."""
_SQUARE_METRE = 1e6


@dataclass(frozen=True, slots=True)
class Supply:
    """What a stock may be cut from.

    Attributes:
        pieces: on hand first, then what the yard sells.
        widths: of the yard's boards; empty for sheets.
        priced: costs are money; else they are square metres of wood bought.
        source: where the sizes come from, for people.
    """

    pieces: tuple[Piece, ...]
    widths: tuple[Width, ...]
    priced: bool
    source: str


def boards_for(stock: Stock, shop: Shop) -> Supply:
    """The boards that a solid stock may be cut from. Their width is the clear one, edges jointed."""
    tables = boards_of(stock, shop.yard.items())
    source = "yard stock of the shop file" if tables else "usual rough boards: no yard stock in the shop file"
    priced = bool(tables) and all(table.price is not None for table in tables.values())
    bought: list[Piece] = []
    widths: list[Width] = []
    for key, table in (tables or {"board": usual_boards(stock)}).items():
        for sold in table.widths:
            width = width_of(table, sold, stock, shop.saw.edge_loss)
            widths.append(width)
            for length in table.lengths:
                cost = _price(table, sold, length) if priced else sold * length / _SQUARE_METRE
                thick = sold_thickness(table) if tables else rough_thickness(stock)
                bought.append(
                    Piece(f"{key} {sold:g} × {length:g}", length, width.clear, cost, name=key, sold=(thick, sold))
                )
    on_hand = [
        Piece(key, one.length, one.width - 2 * shop.saw.edge_loss, 0.0, one.count, one.defects, on_hand=True,
              sold=(one.thickness, one.width))
        for key, one in _offcuts(stock, shop)
        if one.width - 2 * shop.saw.edge_loss > 0
    ]
    return Supply((*on_hand, *bought), tuple(widths), priced, source)


def sheets_for(stock: Stock, shop: Shop, design: Design) -> Supply:
    """The sheets that a stock may be cut from; an offcut with defects counts as its clear stretches."""
    tables = {
        key: table
        for key, table in shop.sheet.items()
        if table.species in ("", stock.species)
        and (table.thickness is None or abs(table.thickness - stock.thickness) <= SHEET_THICKNESS_MM)
    }
    priced = bool(tables) and all(table.price is not None for table in tables.values())
    bought = [
        Piece(
            key, table.length, table.width, _sheet_cost(table.price if priced else None, table.length, table.width),
            sold=(table.thickness or stock.thickness, table.width),
        )
        for key, table in tables.items()
    ]
    source = "sheets of the shop file" if tables else "the usual sheet: none for this stock in the shop file"
    if not tables:
        size = sheet_of(stock, design)
        cost = _sheet_cost(None, size.length_mm, size.width_mm)
        sold = (stock.thickness, size.width_mm)
        bought = [Piece(size.name, size.length_mm, size.width_mm, cost, sold=sold)]
    on_hand = [piece for key, one in _offcuts(stock, shop) for piece in _clear(key, one)]
    return Supply((*on_hand, *bought), (), priced, source)


def _sheet_cost(price: float | None, length: float, width: float) -> float:
    return length * width / _SQUARE_METRE if price is None else price


def _price(table: YardTable, width: float, length: float) -> float:
    """What one board costs."""
    price = table.price or 0.0
    thickness = sold_thickness(table)
    match table.per:
        case "metre":
            return price * length / 1000.0
        case "foot":
            return price * length / _FOOT
        case "board-foot":
            return price * board_feet(max(_INCH, thickness), width, length)
        case "cubic-metre":
            return price * thickness * width * length / 1e9
        case _:
            return price


def _offcuts(stock: Stock, shop: Shop) -> Iterator[tuple[str, OffcutTable]]:
    for key, one in shop.offcut.items():
        over = one.thickness - stock.thickness
        fits = abs(over) <= SHEET_THICKNESS_MM if stock.kind == "sheet" else -0.05 <= over <= _SPARE_MM
        if one.kind == stock.kind and one.species in ("", stock.species) and fits and one.count:
            yield key, one


def _clear(key: str, one: OffcutTable) -> Iterator[Piece]:
    at = 0.0
    for number, (bad, good) in enumerate((*sorted(one.defects), (one.length, one.length)), 1):
        if bad - at > 1.0:
            name = f"{key}, stretch {number}" if one.defects else key
            yield Piece(name, bad - at, one.width, 0.0, one.count, on_hand=True, sold=(one.thickness, one.width))
        at = max(at, good)
