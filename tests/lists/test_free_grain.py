"""Grain: parts of a sheet are turned only where the piece says so, by stock or by board; solid wood never."""

from __future__ import annotations

import pytest

from shopdraw.build import build
from shopdraw.lists.cut_list import cut_list
from shopdraw.lists.free_grain import free_to_turn
from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.plan import plans
from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.shop import SheetTable, Shop
from shopdraw.shipped import sample_path
from shopdraw.wood.part import parts

TEXT = sample_path("pilot-station-desk").read_text(encoding="utf-8")
PAINTED = TEXT + '\n[stock.sheet]\nspecies = "plywood_birch"\nkind = "sheet"\nthickness = 6\nturn = true\n'
SHORT = Shop(sheet={"short": SheetTable(width=1220, length=700)})
"""Too short along the grain for a back, and wide enough for its length."""


def test_nothing_is_free_unless_the_piece_says_so() -> None:
    design = parse_piece(TEXT).design
    assert not any(free_to_turn(board, design) for board in build(design).boards)


def test_a_painted_stock_frees_all_its_parts_and_a_board_may_say_otherwise() -> None:
    design = parse_piece(PAINTED + "[board.back]\nturn = false\n").design
    boards = build(design).boards
    free = {board.id for board in boards if free_to_turn(board, design)}
    assert free == {board.id for board in boards if board.stock.kind == "sheet"} - {"back"}
    noted = {str(row[0]) for row in cut_list(build(design), design).rows if "free to turn" in str(row[15])}
    assert noted == {part.labels for part in parts(boards) if part.first.id in free}


def test_case_58_a_back_too_long_for_the_sheet_is_told_and_cut_only_when_it_may_turn() -> None:
    told: list[tuple[int, bool]] = []
    for text in (TEXT, PAINTED):
        design = parse_piece(text).design
        assembly = build(design)
        back = assembly.board("back")
        assert back.width + 20 < 700 < back.length
        (plan,) = [plan for plan in plans(assembly, design, SHORT) if plan.stock.kind == "sheet"]
        laid = [one for layout in plan.layouts for cut in layout.cut_up for one in cut.laid if one.part == "back"]
        assert all(not faults_of_layout(layout) for layout in plan.layouts)
        told.append((sum(misfit.part == "back" for misfit in plan.misfits), any(one.turned for one in laid)))
    assert told == [(1, False), (0, True)]


def test_solid_wood_that_is_to_be_turned_is_refused() -> None:
    text = TEXT + '\n[stock.own]\nspecies = "cherry_black"\nthickness = 20\nturn = true\n'
    with pytest.raises(PieceError) as error:
        parse_piece(text, "a.piece")
    (line,) = error.value.lines()
    assert "stock.own" in line
    assert "solid wood always keeps its grain" in line
