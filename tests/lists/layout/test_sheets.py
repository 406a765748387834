"""Sheets: grain, guillotine cuts, several sizes; small layouts whose least number can be proved by hand."""

import pytest

from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.job import Piece, SheetJob, Wanted
from shopdraw.lists.layout.lay_out import lay_out

UNHURRIED = 300.0
"""Seconds that no search needs, however busy the machine: each ends by its own count of work."""


def equal(count: int, length: float, width: float, *, free: bool = False) -> tuple[Wanted, ...]:
    return tuple(Wanted(f"p{i}", length, width, free=free) for i in range(count))


def sheet(length: float, width: float, cost: float = 1, **more: object) -> Piece:
    return Piece(f"{length:g} x {width:g}", length, width, cost, **more)  # type: ignore[arg-type]


def test_case_58_grain_is_never_turned_to_save_a_sheet() -> None:
    """Twelve of 500 × 700 from 2438 × 1219: 4 × 1 a sheet with the grain kept, 3 × 2 turned; kerf 3.2."""
    big = (sheet(2438, 1219),)
    kept = lay_out(SheetJob(equal(12, 500, 700), big, 3.2))
    assert len(kept.cut_up) == 3
    assert not any(laid.turned for cut in kept.cut_up for laid in cut.laid)
    free = lay_out(SheetJob(equal(12, 500, 700, free=True), big, 3.2))
    assert len(free.cut_up) == 2
    assert not faults_of_layout(free)


def test_case_59_a_pinwheel_becomes_three_and_one() -> None:
    """Four of 720 × 480 in a square of 1220: only a pinwheel holds four, and no saw can cut that; three it can."""
    layout = lay_out(SheetJob(equal(4, 720, 480, free=True), (sheet(1220, 1220),), 3.2))
    assert sorted(len(cut.laid) for cut in layout.cut_up) == [1, 3]
    assert not faults_of_layout(layout)
    assert all(cut.cuts for cut in layout.cut_up)


def test_the_cheapest_mix_of_sheets_is_taken() -> None:
    """Area 1.2 + 0.4 of a big sheet: one big and one small (14), not two big (20) or four small (16)."""
    wanted = (Wanted("big", 1000, 1000), Wanted("a", 600, 480), Wanted("b", 480, 600))
    layout = lay_out(SheetJob(wanted, (sheet(1000, 1000, 10), sheet(1000, 600, 4)), 0))
    assert layout.cost in {14, 18}
    assert layout.cost == 18  # 600 + 480 along the grain is 1080, more than 1000: two small ones
    loose = (Wanted("big", 1000, 1000), Wanted("a", 500, 480), Wanted("b", 480, 600))
    assert lay_out(SheetJob(loose, (sheet(1000, 1000, 10), sheet(1000, 600, 4)), 0)).cost == 14


def test_an_offcut_comes_first_and_is_not_used_twice() -> None:
    hand = sheet(500, 300, 0, count=1, on_hand=True)
    layout = lay_out(SheetJob(equal(2, 490, 290), (hand, sheet(1220, 1220, 7)), 3))
    assert layout.cost == 7
    assert [cut.piece.id for cut in layout.cut_up].count("500 x 300") == 1


def test_trims_take_their_share() -> None:
    """1000 - 2 × 5 = 990 each way: four of 493.5 with a kerf of 3 fill it; 493.6 don't."""
    big = (sheet(1000, 1000),)
    full = lay_out(SheetJob(equal(4, 493.5, 493.5), big, 3, 5))
    assert len(full.cut_up) == 1
    assert not faults_of_layout(full)
    assert len(lay_out(SheetJob(equal(4, 493.6, 493.5), big, 3, 5)).cut_up) == 2


def test_fronts_of_a_bank_are_ripped_from_one_strip_in_order() -> None:
    fronts = tuple(Wanted(f"front{i}", 800, width, strip="bank") for i, width in enumerate((120, 140, 160)))
    layout = lay_out(SheetJob((*fronts, Wanted("back", 900, 700)), (sheet(1220, 1220),), 3.2))
    assert not faults_of_layout(layout)
    places = {laid.part: (laid.x, laid.y) for cut in layout.cut_up for laid in cut.laid}
    assert places["front1"][1] - places["front0"][1] == pytest.approx(123.2)
    assert places["front2"][1] - places["front1"][1] == pytest.approx(143.2)
    assert places["front1"][0] == places["front0"][0] == places["front2"][0]


def test_among_equal_costs_the_offcut_stays_large() -> None:
    """Three of 400 × 400 in 1220 square: in one strip what is left over is one offcut of 1220 × 816.8."""
    layout = lay_out(SheetJob(equal(3, 400, 400), (sheet(1220, 1220),), 3.2))
    assert layout.largest_offcut > 1220 * 816


def test_the_same_job_gives_the_same_layout() -> None:
    wanted = tuple(Wanted(f"p{i}", 200 + 61 * i % 500, 150 + 47 * i % 400, free=i % 3 == 0) for i in range(30))
    job = SheetJob(wanted, (sheet(2440, 1220, 30), sheet(1525, 1525, 28)), 3.2, 5)
    first = lay_out.__wrapped__(job, UNHURRIED)
    assert not first.hurried
    assert not faults_of_layout(first)
    assert lay_out.__wrapped__(job, UNHURRIED) == first
