"""Rough sizes: thickness as the yard sells it, panels from several boards, never less than finished."""

import pytest

from shopdraw.lists.rough import clear_width, rough_of, rough_thickness, staves_for, trade_name
from shopdraw.wood.board import Stock
from tests.cnc.router_reader import SAMPLES, piece


def stock(thickness: float, nominal: str, species: str = "cherry_black", kind: str = "solid") -> Stock:
    return Stock("primary", species, kind, thickness, nominal, 0.0025, 560.0)


@pytest.mark.parametrize(
    ("thickness", "nominal", "rough"),
    [
        # hardwood by quarters; Wood Handbook table 6-2 for what they surface to
        (19.05, "4/4", 25.4), (25.4, "5/4", 31.75), (44.45, "8/4", 50.8),
        (21.0, "26 mm sawn", 26.0), (19.05, "1x8", 25.4), (38.1, "2 × 4", 50.8), (31.75, "1-1/2x6", 38.1),
        # a dressed name, or none: the thinnest that surfaces to it
        (20.0, "20 mm", 25.4), (12.0, "", 25.4), (26.0, "", 31.75),
    ],
)  # fmt: skip
def test_thickness_is_the_one_that_the_yard_counts(thickness: float, nominal: str, rough: float) -> None:
    assert rough_thickness(stock(thickness, nominal)) == pytest.approx(rough)


def test_case_57_a_wide_side_is_glued_up_from_four_boards() -> None:
    # 482.6 wide from 152 rough boards that lose 3 an edge: 146 clear, three give 438
    assert clear_width() == 146.0
    assert 3 * clear_width() == 438.0
    assert staves_for(482.6) == 4
    assert staves_for(438.0) == 3


@pytest.mark.parametrize("sample", SAMPLES)
def test_rough_is_never_less_than_finished(sample: str) -> None:
    for board in piece(sample)[1].boards:
        rough = rough_of(board)
        assert rough.thickness >= board.thickness
        assert rough.width > board.width
        assert rough.length > board.length


def test_case_60_trade_name_stands_beside_the_actual_size() -> None:
    assert trade_name(stock(19.05, "4/4")) == "Cherry, black, 4/4"
    assert trade_name(stock(6.0, "6 mm", "plywood_birch", "sheet")) == "Birch plywood, 6 mm"
    assert trade_name(stock(6.0, "", "=1+1", "sheet")) == "=1+1"
