"""Widths and dashes by ISO 128-2's groups."""

import pytest

from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import Meaning

SERIES = {0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0}
"""ISO 128-2, line widths."""


@pytest.mark.parametrize("group", ["large", "medium", "small"])
@pytest.mark.parametrize("meaning", list(Meaning))
def test_every_width_is_one_of_the_series(meaning: Meaning, group: str) -> None:
    assert line_style(meaning, group).width_mm in SERIES


@pytest.mark.parametrize(
    ("group", "wide", "narrow"), [("large", 0.7, 0.35), ("medium", 0.5, 0.25), ("small", 0.5, 0.25)]
)
def test_wide_and_narrow_are_two_to_one(group: str, wide: float, narrow: float) -> None:
    assert line_style(Meaning.VISIBLE, group).width_mm == line_style(Meaning.CUT, group).width_mm == wide
    assert line_style(Meaning.HIDDEN, group).width_mm == line_style(Meaning.SIZE, group).width_mm == narrow


def test_template_outline_is_a_quarter_mm_on_any_sheet() -> None:
    assert {line_style(Meaning.TEMPLATE, g).width_mm for g in ("large", "medium", "small")} == {0.25}


def test_dashes_are_counted_in_line_widths() -> None:
    # ISO 128-2 as taught: dash 12 d, gap 3 d, long dash 24 d, dot half a d (from memory, to be confirmed).
    assert line_style(Meaning.HIDDEN, "medium").dashes_mm == (3.0, 0.75)
    assert line_style(Meaning.CENTRE, "medium").dashes_mm == (6.0, 0.75, 0.125, 0.75)
    assert line_style(Meaning.PLANE, "medium").dashes_mm == (12.0, 1.5, 0.25, 1.5)
    assert len(line_style(Meaning.MOVING, "large").dashes_mm) == 6
    assert line_style(Meaning.VISIBLE, "large").dashes_mm == ()
