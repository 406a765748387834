"""Panels wider than boards."""

import pytest

from shopdraw.wood.glue_up import Width, glue_up, rough_width, staves


def test_case_57_a_side_takes_four_boards_of_146_clear() -> None:
    """482.6 from boards of 152 that lose 3 on each edge: three give 438, four give 584."""
    made = glue_up(482.6, 1000 + 50, [rough_width(152, 3)])
    assert made is not None
    assert [width.clear for width in made.widths] == [146.0] * 4
    assert made.clear == 584.0
    assert made.length == 1050


def test_widths_are_mixed_so_that_the_least_wood_is_bought() -> None:
    """300 from 100, 150 and 210: 210 + 100 = 310; two of 150 make 300 to the millimetre."""
    widths = [Width(size, size) for size in (100, 150, 210)]
    made = glue_up(300, 500, widths)
    assert made is not None
    assert [width.sold for width in made.widths] == [150, 150]
    wider = glue_up(305, 500, widths)
    assert wider is not None
    assert sorted(width.sold for width in wider.widths) == [100, 210]


@pytest.mark.parametrize(("width", "boards"), [(146.0, 1), (146.1, 2), (292.0, 2), (292.1, 3)])
def test_one_more_board_as_soon_as_the_width_is_passed(width: float, boards: int) -> None:
    made = glue_up(width, 500, [rough_width(152, 3)])
    assert made is not None
    assert len(made.widths) == boards


def test_no_boards_no_panel() -> None:
    assert glue_up(300, 500, [Width(5, -1)]) is None


def test_what_a_panel_has_too_much_is_trimmed_off_its_two_edges_alike() -> None:
    """482.6 from boards of 152, 146 clear: 584 glued, 101.4 too wide, 50.7 off each edge."""
    found = staves(482.6, 1000.0, [rough_width(152, 3)])
    assert found == pytest.approx((146.0 - 50.7, 146.0, 146.0, 146.0 - 50.7))
    assert sum(found) == pytest.approx(482.6)


def test_what_one_board_makes_isnt_glued_up() -> None:
    assert staves(146.0, 1000.0, [rough_width(152, 3)]) == ()
    assert staves(482.6, 1000.0, []) == ()
