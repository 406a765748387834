"""Heights of letters by paper, and what a smaller print asks for."""

import pytest

from shopdraw.sheet import look_for
from shopdraw.sheet.look import BadLook

INCH = 25.4


@pytest.mark.parametrize(
    ("group", "heights"),
    [("large", (3.5, 5.0, 7.0, 7.0)), ("medium", (2.5, 3.5, 5.0, 5.0)), ("small", (2.5, 3.5, 5.0, 5.0))],
)
def test_heights_are_those_of_the_paper(group, heights):
    """ISO 3098-1's series; which height serves what is common practice."""
    look = look_for("iso", group)
    assert (look.figure, look.balloon, look.section, look.title) == heights


def test_a1_printed_on_a3_keeps_its_figures():
    """3.5 halved is the 1.8 of ISO 3098-1's series, exactly 1.75."""
    assert look_for("iso", "large", reduction=0.5).figure == 3.5


def test_case_65_24_by_36_on_11_by_17_needs_5_32():
    """17 / 36: 1.75 mm on the print needs 3.71 mm; the next step of 1/32 in is 5/32 in."""
    assert look_for("asme", "large", inch=True, reduction=17 / 36).figure == pytest.approx(5 * INCH / 32)


def test_rows_stand_as_far_off_as_the_standards_ask():
    """ASME Y14.5: first row 10, next rows 6 at least; textbook ISO practice 10 and 8."""
    for style in ("iso", "asme"):
        assert (look_for(style, "large").first_row, look_for(style, "large").next_row) == (10.0, 8.0)


def test_a_print_too_small_for_any_letters_is_refused():
    with pytest.raises(BadLook, match=r"no letters are readable at 0\.050"):
        look_for("iso", "large", reduction=0.05)


def test_a_style_that_there_is_not_is_refused():
    with pytest.raises(BadLook, match="must be iso or asme"):
        look_for("din", "large")


def test_a_group_that_there_is_not_is_refused():
    with pytest.raises(BadLook, match="must be large, medium or small"):
        look_for("iso", "huge")


def test_case_65_letters_of_a1_read_on_a3_stay_at_3_5() -> None:
    """3.5 halved is what ISO 3098-1's series calls 1.8; A3 trimmed to whole millimetres is 420 / 841 of A1."""
    look = look_for("iso", "large", reduction=420 / 841)
    assert (look.figure, look.label) == (3.5, 3.5)
