"""The words over a cell: label, name, quantity, stock, finished sizes, fits, the table of a varying size."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.lists.cut_list import part_name
from shopdraw.lists.rough import trade_name
from shopdraw.lists.rough_size import Rough
from shopdraw.sheet.cell import Cell, labels
from shopdraw.sheet.cell_fact import VARYING
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Stock
from shopdraw.wood.part import Part


def heading_lines(cell: Cell, assembly: Assembly, also: Sequence[str]) -> tuple[str, ...]:
    """A cell's heading, the first line in larger letters.

    Args:
        cell: whose.
        assembly: for blank sizes.
        also: what found no room on the views.
    """
    return tuple(_lines(cell, assembly, also))


def _lines(cell: Cell, assembly: Assembly, also: Sequence[str]) -> Iterator[str]:
    board, sizes = cell.board, cell.sizes
    first = cell.parts[0]
    if cell.varies:
        yield f"{labels(cell.parts)}  {_family_name([part.first for part in cell.parts])}"
        if cell.mirrored:
            other_name = _family_name([part.first for part in cell.mirrored])
            yield f"with {labels(cell.mirrored)}  {other_name}, the other hand"
    elif cell.mirrored:
        other = cell.mirrored[0]
        yield f"{first.labels}  {part_name(first)}; {other.labels}  {part_name(other)}"
    else:
        yield f"{first.labels}  {part_name(first)}"
    quantity = f"{first.quantity} of each hand, a mirrored pair" if cell.mirrored else f"quantity {first.quantity}"
    length = VARYING["length"] if cell.varies == "length" else sizes.cut(board.length)
    width = VARYING["width"] if cell.varies == "width" else sizes.cut(board.width)
    if cell.varies:
        yield stock_words(board.stock)
        yield _finished(cell, width, length)
        yield from _table(cell)
    else:
        yield f"{quantity}; {stock_words(board.stock)}"
        yield _finished(cell, width, length)
    if not cell.varies and cell.rough is not None:
        yield _rough(cell, cell.rough)
    blank = _blank(board, assembly)
    if blank > board.width + 1e-3:
        yield f"blank: cut {sizes.cut(blank)} wide before the bevels"
    if board.layers:
        yield "layers " + " + ".join(sizes.cut(layer) for layer in board.layers)
    yield from sizes.fit_lines()
    yield from dict.fromkeys(line for note in cell.notes for line in note.more)
    yield from (f"also: {words}" for words in also)


def _finished(cell: Cell, width: str, length: str) -> str:
    board = cell.board
    words = f"T × W × L {cell.sizes.thickness(board.thickness)} × {width} × {length}"
    if board.between_shoulders is not None:
        if cell.varies == "length":
            return words
        words += f"; between shoulders {cell.sizes.cut(board.between_shoulders)}"
    return words


def _rough(cell: Cell, rough: Rough) -> str:
    """What to cut first, as the cut list has it."""
    sizes = cell.sizes
    glued = f", glued up from {rough.boards} boards" if rough.boards > 1 else ""
    figures = (sizes.thickness(rough.thickness), sizes.rough(rough.width), sizes.rough(rough.length))
    return f"rough T × W × L {' × '.join(figures)}{glued}"


def _table(cell: Cell) -> Iterator[str]:
    """A line for each part of the table: its labels, how many, the size that varies."""
    name = VARYING[cell.varies]
    others: Sequence[Part | None] = cell.mirrored or (None,) * len(cell.parts)
    for part, other in zip(cell.parts, others, strict=True):
        board = part.first
        size = board.length if cell.varies == "length" else board.width
        named = f"{part.labels}; {other.labels}" if other is not None else part.labels
        count = f"{part.quantity} of each hand" if other is not None else f"quantity {part.quantity}"
        extra = ""
        if cell.varies == "length" and board.between_shoulders is not None:
            extra = f"; between shoulders {cell.sizes.cut(board.between_shoulders)}"
        yield f"{named}: {name} {cell.sizes.cut(size)}, {count}{extra}"


def _blank(board: Board, assembly: Assembly) -> float:
    """The width to cut a board first, where bevels come later; 0 where it is the finished one."""
    if board.member == "top" and assembly.slant is not None:
        return assembly.slant.top_blank_depth_mm
    return 0.0


def stock_words(stock: Stock) -> str:
    """A stock as the cut list has it: "stock primary, Cherry, black, 4/4"."""
    return f"stock {stock.name}, {trade_name(stock)}"


def _family_name(boards: Sequence[Board]) -> str:
    """The name that several boards share: the words all of them have."""
    names = [board.name for board in boards]
    if len(set(names)) == 1:
        return names[0]
    pieces = [name.replace(",", " ,").split() for name in names]
    shared = [word for word in pieces[0] if all(word in other for other in pieces[1:])]
    text = " ".join(shared).replace(" ,", ",").strip(" ,")
    while ",," in text:
        text = text.replace(",,", ",")
    return text or names[0]
