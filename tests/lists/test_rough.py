"""Rough sizes: thickness as the yard sells it, panels from several boards, never less than finished."""

import pytest

from shopdraw.lists.rough import rough_thickness, trade_name
from shopdraw.lists.rough_size import Kind, Yard, rough_of, yard_of
from shopdraw.piece.shop import AllowanceTable, Shop
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.wood.board import Board, Stock
from tests.cnc.router_reader import SAMPLES, piece
from tests.wood.pieces import LYING, board, plain


def stock(thickness: float, nominal: str, species: str = "cherry_black", kind: str = "solid") -> Stock:
    return Stock("primary", species, kind, thickness, nominal, 0.0025, 560.0)


def solid_board(length: float, width: float) -> Board:
    return board("b", plain(length, width, 20.0), LYING, stock(20.0, "4/4"))


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
    # 482.6 wide from 152 rough boards that lose 3 an edge: 146 clear, three give 438; a length of 812.8 and 50;
    # both edges are trimmed by 6, so that 426 is the widest from three
    side = rough_of(solid_board(812.8, 482.6), Yard())
    assert side.kind is Kind.PANEL
    assert side.glue_up is not None
    assert [(one.sold, one.clear) for one in side.glue_up.widths] == [(152.0, 146.0)] * 4
    assert side.glue_up.length == side.length == 863.0, "862.8, rounded up"
    assert rough_of(solid_board(812.8, 426.0), Yard()).boards == 3
    assert rough_of(solid_board(812.8, 427.0), Yard()).boards == 4
    assert rough_of(solid_board(812.8, 438.0), Yard(allowance=AllowanceTable(panel_width=0.0))).boards == 3
    assert rough_of(solid_board(812.8, 146.0), Yard()).kind is Kind.BOARD


def test_panels_are_glued_up_from_the_shops_own_boards() -> None:
    shop = parse_shop(
        '[yard.cherry]\nspecies = "cherry_black"\nquarters = "4/4"\nwidths = [152, 206]\nlengths = [2440]\n'
    ).shop
    design, _ = piece("pilot-station-desk")
    side = rough_of(solid_board(812.8, 482.6), yard_of(design, shop))
    assert side.glue_up is not None
    # 482.6 + 12 from 206 - 6 = 200 and 146 clear: 200 + 146 + 146 = 492 is too little, 200 + 200 + 146 takes 564 mm
    # of wood as sold, four of 152 take 608
    assert sorted(one.clear for one in side.glue_up.widths) == [146.0, 200.0, 200.0]


def test_allowances_and_rounding_are_the_shops() -> None:
    # a board of 100 × 500: 106 × 525 by the defaults; 10 and 40 more rounded up to 25: 125 × 550
    design, _ = piece("pilot-station-desk")
    usual = rough_of(solid_board(500.0, 100.0), yard_of(design))
    assert (usual.width, usual.length) == (106.0, 525.0)
    shop = parse_shop("[allowance]\nboard_width = 10\nboard_length = 40\n[habit]\nrough_step = 25\n").shop
    own = rough_of(solid_board(500.0, 100.0), yard_of(design, shop))
    assert (own.width, own.length) == (125.0, 550.0)


def test_no_rough_width_is_wider_than_the_board_that_it_comes_from() -> None:
    # 143 and 6 is more than the 146 that a board gives, and 143 is not
    assert rough_of(solid_board(500.0, 143.0), Yard()).width == 146.0


@pytest.mark.parametrize("sample", SAMPLES)
def test_rough_is_never_less_than_finished(sample: str) -> None:
    design, assembly = piece(sample)
    for one in assembly.boards:
        rough = rough_of(one, yard_of(design, Shop()))
        assert rough.thickness >= one.thickness
        assert rough.width >= one.width
        assert rough.length > one.length


def test_case_60_trade_name_stands_beside_the_actual_size() -> None:
    assert trade_name(stock(19.05, "4/4")) == "Cherry, black, 4/4"
    assert trade_name(stock(6.0, "6 mm", "plywood_birch", "sheet")) == "Birch plywood, 6 mm"
    assert trade_name(stock(6.0, "", "=1+1", "sheet")) == "=1+1"
