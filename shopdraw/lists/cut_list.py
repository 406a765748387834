"""The cut list: one row a part, with the labels of all its boards. Thickness × width × length, along the grain."""

from __future__ import annotations

from shopdraw.lists.rough import Rough, clear_width, rough_of, trade_name
from shopdraw.lists.size import Sizes, sizes_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.part import Part, parts
from shopdraw.wood.volume import mass_kg

TITLE = "Cut list"


def cut_list(assembly: Assembly, design: Design, *, exact: bool = False) -> Table:
    """Every board of the piece, each once.

    Sizes are printed in the piece's style; finished sizes have tenons, tongues and long points in them, and the
    length between shoulders stands beside.

    Args:
        exact: add the finished sizes as numbers in mm, for programs that read the list.
    """
    sizes = sizes_of(design)
    columns: tuple[Column, ...] = (
        Column("label"),
        Column("name"),
        Column("quantity"),
        Column("stock"),
        sizes.column("thickness"),
        sizes.column("width"),
        sizes.column("length"),
        sizes.column("between shoulders"),
        sizes.column("rough thickness"),
        sizes.column("rough width"),
        sizes.column("rough length"),
        Column("grain"),
        Column("weight", "kg", 2),
        Column("note"),
    )
    rows = [_row(part, sizes, design) for part in parts(assembly.boards)]
    if exact:
        columns += tuple(Column(f"exact {head}", "mm", 4) for head in ("thickness", "width", "length"))
        rows = [
            (*row, part.first.thickness, part.first.width, part.first.length)
            for row, part in zip(rows, parts(assembly.boards), strict=True)
        ]
    return Table(TITLE, columns, tuple(rows))


def _row(part: Part, sizes: Sizes, design: Design) -> tuple[Cell, ...]:
    board = part.first
    rough = rough_of(board)
    return (
        part.labels,
        part_name(part),
        part.quantity,
        trade_name(board.stock),
        sizes.cell(board.thickness, sizes.thickness),
        sizes.cell(board.width, sizes.cut),
        sizes.cell(board.length, sizes.cut),
        sizes.cell(board.between_shoulders, sizes.cut),
        sizes.cell(rough.thickness, sizes.thickness),
        sizes.cell(rough.width, sizes.rough),
        sizes.cell(rough.length, sizes.rough),
        grain(board),
        sum(mass_kg(each) for each in part.boards),
        "; ".join(_notes(part, rough, sizes, design)),
    )


def _notes(part: Part, rough: Rough, sizes: Sizes, design: Design) -> list[str]:
    board = part.first
    notes = []
    if board.staves:
        widths = ", ".join(sizes.words(width, sizes.rough) for width in board.staves)
        notes.append(f"glue up from {rough.staves} boards: {widths}")
    elif rough.staves > 1:
        clear = sizes.words(clear_width(), sizes.rough)
        notes.append(f"glue up from {rough.staves} boards of {clear} clear")
    if board.layers:
        notes.append(f"{len(board.layers)} layers")
    if not board.stock.measured:
        notes.append("thickness not measured yet")
    for each in part.boards:
        own = design.board.get(each.id)
        if own is not None and own.note:
            notes.append(f"{each.label}: {own.note}")
    return notes


def part_name(part: Part) -> str:
    """A name for all boards of a part: the words that their names share."""
    names = [board.name.split() for board in part.boards]
    if len({len(words) for words in names}) > 1:
        return part.first.name
    shared = [words[0] for words in zip(*names, strict=True) if len(set(words)) == 1]
    return " ".join(shared).rstrip(",") or part.first.name


def grain(board: Board) -> str:
    """Which way a board's grain runs in the piece; everything is measured along it."""
    x, y, z = (abs(part) for part in board.frame.u)
    if max(x, y, z) < 0.99:
        return "along its length"
    return "left to right" if x >= max(y, z) else "front to back" if y >= z else "upright"
