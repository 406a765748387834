"""Boards: layouts whose least cost can be proved by hand."""

import random

import pytest

from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.job import BadJob, BoardJob, Piece, Wanted
from shopdraw.lists.layout.lay_out import NoLayout, lay_out

UNHURRIED = 300.0
"""Seconds that no search needs, however busy the machine: each ends by its own count of work."""


def parts(*lengths: float, strip: str = "") -> tuple[Wanted, ...]:
    return tuple(Wanted(f"p{i}", length, 90, strip=strip) for i, length in enumerate(lengths))


def board(length: float, cost: float, **more: object) -> Piece:
    return Piece(f"{length:g}", length, 100, cost, **more)  # type: ignore[arg-type]


def test_case_11_two_halves_of_a_board_dont_come_from_one() -> None:
    """2 × 609.6 + 3.2 = 1222.4: two boards of 1219.2, and two of 1220; with 608.0 or 608.4 one is enough."""
    for length, half in ((1219.2, 608.0), (1220.0, 608.4)):
        stock = (board(length, 1),)
        assert len(lay_out(BoardJob(parts(609.6, 609.6), stock, 3.2)).cut_up) == 2
        assert len(lay_out(BoardJob(parts(half, half), stock, 3.2)).cut_up) == 1


def test_the_cheapest_mix_of_lengths_is_proved() -> None:
    """1500 + 1500 + 900 + 900 + 600: 5400 and four kerfs need more than one board of 3660 or 4900.

    Costs 10 for 2500, 14 for 3660: two boards hold at most 7320, at least 20 must be paid. With 2500 + 2500 = 5000
    there is too little for 5400; so the least is 24.
    """
    job = BoardJob(parts(1500, 1500, 900, 900, 600), (board(2500, 10), board(3660, 14)), 3)
    layout = lay_out(job)
    assert (layout.cost, layout.bound) == (24, 24)
    assert not faults_of_layout(layout)


def test_trims_and_kerf_take_their_share() -> None:
    """1000 - 2 × 25 = 950: three of 314 and two kerfs of 4 fill it to the millimetre; 314.1 don't."""
    stock = (board(1000, 1),)
    assert len(lay_out(BoardJob(parts(314, 314, 314), stock, 4, 25)).cut_up) == 1
    assert len(lay_out(BoardJob(parts(314.1, 314.1, 314.1), stock, 4, 25)).cut_up) == 2


def test_what_is_on_hand_is_used_before_anything_is_bought() -> None:
    hand = board(700, 0, count=1, on_hand=True)
    layout = lay_out(BoardJob(parts(600, 900), (hand, board(1000, 5)), 3))
    assert layout.cost == 5
    assert {cut.piece.id for cut in layout.cut_up} == {"700", "1000"}


def test_a_defect_is_cut_out() -> None:
    """900 long, bad from 400 to 500: two clear stretches of 400; 450 must come from a new board."""
    hand = board(900, 0, count=1, on_hand=True, defects=((400.0, 500.0),))
    new = board(1000, 5)
    free = lay_out(BoardJob(parts(400, 380), (hand, new), 3))
    assert free.cost == 0
    assert len(free.cut_up) == 1
    assert not faults_of_layout(free)
    assert lay_out(BoardJob(parts(450), (hand, new), 3)).cost == 5


def test_fronts_of_a_bank_lie_behind_each_other_in_order() -> None:
    job = BoardJob((*parts(300, 200, 250, strip="bank"), Wanted("other", 240, 90)), (board(800, 1),), 3)
    layout = lay_out(job)
    assert not faults_of_layout(layout)
    row = sorted((laid.x, laid.part) for cut in layout.cut_up for laid in cut.laid if laid.part != "other")
    assert [part for _, part in row] == ["p0", "p1", "p2"]
    assert len(layout.cut_up) == 2  # 300 + 200 + 250 + 240 and kerfs are more than 800


def test_a_strip_too_long_for_any_board_is_told_and_cut_in_order() -> None:
    layout = lay_out(BoardJob(parts(500, 400, 300, strip="bank"), (board(1000, 1),), 3))
    (misfit,) = layout.misfits
    assert misfit.part == "strip bank"
    assert "p0 + p1, p2" in misfit.reason
    assert not faults_of_layout(layout)


def test_a_part_that_fits_nowhere_is_named_with_what_is_missing() -> None:
    layout = lay_out(BoardJob((Wanted("long", 2500, 90), Wanted("wide", 500, 130), *parts(400)), (board(2440, 1),), 3))
    told = {misfit.part: misfit.reason for misfit in layout.misfits}
    assert "60.0 mm too long for 2440" in told["long"]
    assert "30.0 mm too wide" in told["wide"]
    assert [laid.part for cut in layout.cut_up for laid in cut.laid] == ["p0"]


def test_too_few_boards_is_no_layout() -> None:
    with pytest.raises(NoLayout, match="aren't enough"):
        lay_out(BoardJob(parts(500, 500), (board(600, 0, count=1, on_hand=True),), 3))


def test_many_sizes_take_the_search_by_columns_to_the_bound() -> None:
    """120 sizes in threes that fill a board to the millimetre: 40 boards, and no fewer, since they are full.

    Source:
        Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996): triplets.
    """
    chance = random.Random(3)
    firsts = [(chance.randint(380, 490), chance.randint(250, 310)) for _ in range(40)]
    sizes = [size for one, two in firsts for size in (one, two, 1000 - one - two)]
    layout = lay_out(BoardJob(parts(*sizes), (board(1000, 1),), 0))
    assert layout.contender == "fillings as needed"
    assert (layout.cost, layout.bound) == (40, 40)
    assert not faults_of_layout(layout)


def test_the_same_job_gives_the_same_layout() -> None:
    job = BoardJob(parts(*(300 + 37 * i % 500 for i in range(25))), (board(2440, 21), board(3050, 27)), 3.2, 25)
    assert lay_out.__wrapped__(job, UNHURRIED) == lay_out.__wrapped__(job, UNHURRIED)


@pytest.mark.parametrize(
    ("wanted", "stock", "words"),
    [
        ((Wanted("a", 1, 1), Wanted("a", 2, 1)), (board(10, 1),), "there twice"),
        ((Wanted("a", 0, 1),), (board(10, 1),), "above 0"),
        ((Wanted("a", 1, 1),), (board(10, -1),), "below 0"),
        ((Wanted("a", 1, 1),), (board(10, 1, defects=((1.0, 2.0),)),), "on hand"),
    ],
)
def test_a_job_that_makes_no_sense_is_refused(
    wanted: tuple[Wanted, ...], stock: tuple[Piece, ...], words: str
) -> None:
    with pytest.raises(BadJob, match=words):
        BoardJob(wanted, stock, 3)
