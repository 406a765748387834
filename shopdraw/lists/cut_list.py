"""The cut list: one row a part, with the labels of all its boards. Thickness × width × length, along the grain."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.lists.bank import banks_of, from_the_top
from shopdraw.lists.free_grain import free_to_turn
from shopdraw.lists.rough import trade_name
from shopdraw.lists.rough_size import Kind, Rough, Yard, rough_of, yard_of
from shopdraw.lists.show_face import show_faces
from shopdraw.lists.size import Sizes, sizes_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.part import Part, other_hand, parts
from shopdraw.wood.volume import mass_kg

TITLE, ALLOWANCES = "Cut list", "Rough sizes"
_EXACT_HEADS = ("thickness", "width", "length")
EXACT = len(_EXACT_HEADS)
"""Columns of exact sizes, the last ones where they are asked for."""


@dataclass(frozen=True, slots=True)
class _Context:
    """What the rows share."""

    assembly: Assembly
    design: Design
    yard: Yard
    sizes: Sizes
    every: tuple[Part, ...]
    shows: dict[str, str]
    banks: dict[str, tuple[Board, ...]]


def cut_list(assembly: Assembly, design: Design, shop: Shop | None = None, *, exact: bool = False) -> Table:
    """Every board of the piece, each once.

    Sizes are printed in the piece's style; finished sizes have tenons, tongues and long points in them, and the
    length between shoulders stands beside. Rough sizes are those that the layouts cut.

    Args:
        assembly: the piece.
        design: its inputs.
        shop: whose yard and allowances; None for the stated defaults.
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
        Column("shows"),
        Column("joints"),
        Column("weight", "kg", 2),
        Column("note"),
    )
    every = parts(assembly.boards)
    yard = yard_of(design, shop)
    known = _Context(
        assembly, design, yard, sizes, every, dict(show_faces(assembly.boards)), _rows_of_fronts(assembly, yard)
    )
    rows = [_row(part, known) for part in every]
    if exact:
        columns += tuple(Column(f"exact {head}", "mm", 4) for head in _EXACT_HEADS)
        rows = [
            (*row, part.first.thickness, part.first.width, part.first.length)
            for row, part in zip(rows, every, strict=True)
        ]
    return Table(TITLE, columns, tuple(rows))


def allowances(design: Design, shop: Shop | None = None) -> Table:
    """What is added to finished sizes for rough ones, by kind of part."""
    sizes, yard = sizes_of(design), yard_of(design, shop)
    add = yard.allowance
    step = sizes.words(yard.step, sizes.rough)
    rows = (
        (Kind.BOARD, add.board_width, add.board_length, "ripped and jointed once, trimmed at both ends"),
        (Kind.PANEL, add.panel_width, add.panel_length, "trimmed on both edges, uneven ends sawn off"),
        (Kind.SHEET, add.sheet_width, add.sheet_length, "sawn a little large, trimmed clean"),
    )
    columns = (
        Column("kind of part"), sizes.column("added to the width"), sizes.column("added to the length"), Column("why"),
        Column("rounding"),
    )  # fmt: skip
    return Table(ALLOWANCES, columns, tuple(
        (kind.value, sizes.cell(width, sizes.cut), sizes.cell(length, sizes.cut), why, f"up to {step}")
        for kind, width, length, why in rows
    ))  # fmt: skip


def _row(part: Part, known: _Context) -> tuple[Cell, ...]:
    board, sizes = part.first, known.sizes
    rough = rough_of(board, known.yard)
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
        "; ".join(dict.fromkeys(known.shows[one.id] for one in part.boards if one.id in known.shows)),
        _joints(board, known.assembly),
        sum(mass_kg(each) for each in part.boards),
        "; ".join(_notes(part, rough, known)),
    )


def _joints(board: Board, assembly: Assembly) -> str:
    """What a board takes and what it enters, by kind: "takes dado ×3, rabbet; enters groove"."""
    ways: dict[str, Counter[str]] = {"takes": Counter(), "enters": Counter()}
    for joint in assembly.joints:
        way = "takes" if joint.host == board.id else "enters"
        if way == "takes" or board.id in (joint.guest_boards or (joint.guest,)):
            ways[way][joint.kind.replace("-", " ")] += 1
    told = [
        f"{way} " + ", ".join(f"{kind} ×{count}" if count > 1 else kind for kind, count in kinds.items())
        for way, kinds in ways.items()
        if kinds
    ]
    return "; ".join(told)


def _rows_of_fronts(assembly: Assembly, yard: Yard) -> dict[str, tuple[Board, ...]]:
    """For each drawer front that is cut from one strip with others all of them, in order."""
    single = [board for board in assembly.boards if rough_of(board, yard).kind is not Kind.PANEL]
    banks, downwards = banks_of(single), from_the_top(single)
    return {
        board_id: tuple(board for board in downwards if banks.get(board.id) == bank) for board_id, bank in banks.items()
    }


def _notes(part: Part, rough: Rough, known: _Context) -> list[str]:
    board, sizes = part.first, known.sizes
    notes = []
    if board.staves:
        widths = ", ".join(sizes.words(width, sizes.rough) for width in board.staves)
        notes.append(f"glue up from {rough.boards} boards: {widths}")
    elif rough.glue_up is not None:
        counts = Counter(width.clear for width in rough.glue_up.widths)
        clear = " and ".join(f"{count} boards of {sizes.words(width)} clear" for width, count in counts.items())
        notes.append(f"glue up from {clear}")
    pair = other_hand(part, [one for one in known.every if one.id != part.id])
    if pair is not None:
        notes.append(f"matched pair with {pair.labels}")
    row = known.banks.get(board.id)
    if row is not None:
        notes.append(f"from one strip, in order {', '.join(one.label for one in row)}")
    if free_to_turn(board, known.design):
        notes.append("free to turn on the sheet")
    if board.layers:
        notes.append(f"{len(board.layers)} layers")
    if not board.stock.measured:
        notes.append("thickness not measured yet")
    for each in part.boards:
        own = known.design.board.get(each.id)
        if own is not None and own.note:
            notes.append(f"{each.label}: {own.note}")
    return notes


def part_name(part: Part) -> str:
    """A name for all boards of a part: what their names share, or each name where they are of several kinds."""
    kinds: dict[str, list[str]] = {}
    for board in part.boards:
        kinds.setdefault(re.split(r"[ ,]", board.name)[0], []).append(board.name)
    shared = _shared([board.name for board in part.boards])
    if len(kinds) == 1 or shared:
        return shared or part.first.name
    *others, last = dict.fromkeys(_shared(names) or names[0] for names in kinds.values())
    return f"{', '.join(others)} and {last}" if others else last


def _shared(names: Sequence[str]) -> str:
    """The words that stand in the same places of all names; of names of several lengths those that all of them have."""
    words = [name.split() for name in names]
    if len({len(each) for each in words}) == 1:
        return " ".join(each[0] for each in zip(*words, strict=True) if len(set(each)) == 1).rstrip(",")
    if len({each[0] for each in words}) > 1:
        return ""
    return " ".join(word for word in words[0] if all(word in each for each in words)).rstrip(",")


def grain(board: Board) -> str:
    """Which way a board's grain runs in the piece; everything is measured along it."""
    x, y, z = (abs(part) for part in board.frame.u)
    if max(x, y, z) < 0.99:
        return "along its length"
    return "left to right" if x >= max(y, z) else "front to back" if y >= z else "upright"
