"""Exploded pictures: sets stand clear of each other along their ways, and nothing is lost or turned."""

from itertools import combinations

import pytest

from shopdraw.view.exploded import Slide, exploded
from shopdraw.wood.interference import box_of, box_volume
from tests.wood.pieces import cupboard

SLIDES = (
    Slide(("side.left",), None),
    Slide(("bottom",), (1.0, 0.0, 0.0)),
    Slide(("shelf",), (1.0, 0.0, 0.0)),
    Slide(("side.right",), (1.0, 0.0, 0.0)),
    Slide(("back",), (0.0, 1.0, 0.0)),
)


def test_no_two_boards_of_an_exploded_cupboard_overlap():
    boxes = {board.id: box_of(board) for board in exploded(cupboard(), SLIDES)}
    assert set(boxes) == {board.id for board in cupboard()}
    for (one, a), (other, b) in combinations(boxes.items(), 2):
        assert box_volume(a, b) == 0.0, (one, other)


def test_boards_only_slide():
    for before, after in zip(cupboard(), exploded(cupboard(), SLIDES), strict=True):
        assert after.shape == before.shape
        assert (after.frame.u, after.frame.v, after.frame.w) == (before.frame.u, before.frame.v, before.frame.w)


def test_the_first_board_stays_where_it_is():
    first = exploded(cupboard(), SLIDES)[0]
    assert first.frame == cupboard()[0].frame


def test_each_board_goes_its_own_way_and_along_with_what_carries_it():
    moved = {b.id: b.frame.at for b in exploded(cupboard(), SLIDES)}
    home = {b.id: b.frame.at for b in cupboard()}
    went = {name: tuple(a - b for a, b in zip(moved[name], home[name], strict=True)) for name in home}
    assert went["side.right"][0] > went["bottom"][0] > 0.0
    assert went["back"][1] > 0.0
    assert went["bottom"][1] == went["bottom"][2] == 0.0


def test_what_no_slide_names_is_not_shown():
    assert [b.id for b in exploded(cupboard(), SLIDES[:2])] == ["side.left", "bottom"]


@pytest.mark.parametrize("way", [(0.0, 0.0, 1.0), (0.0, -0.6, 0.8)])
def test_a_way_may_lean(way):
    boards = cupboard()[2:4]
    apart = exploded(boards, (Slide(("bottom",), None), Slide(("shelf",), way)))
    shift = [b - a for a, b in zip(boards[1].frame.at, apart[1].frame.at, strict=True)]
    size = sum(part * part for part in shift) ** 0.5
    assert shift == pytest.approx([size * part for part in way])
