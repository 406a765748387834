"""Which width is meant: over the case, over its top and over its feet each have a dimension of their own."""

import re

import pytest

from shopdraw.piece.design import CaseTable
from shopdraw.write.facts import facts
from tests.sheet.sample_set import made


def printed(name, views):
    whole = made(name)[2]
    drawings = [placed.drawing for sheet in whole.sheets.sheets for placed in sheet.placed]
    return [one.words.strip("()") for drawing in drawings if drawing.id in views for one in drawing.dimensions]


def test_case_47_widths_over_case_top_and_feet_are_told_apart():
    design, piece, _ = made("plan-chest")
    # 780 over the sides; a top that overhangs 24 each side; a plinth of 21 wrapped round them
    assert facts(design, piece, ())["piece"]["width_mm"] == pytest.approx(780.0)
    assert piece.board("top").length == pytest.approx(780.0 + 2 * 24.0)
    assert piece.board("plinth.front").length == pytest.approx(780.0 + 2 * 21.0)
    words = printed("plan-chest", ("front", "plan", "side"))
    for size in ("780", "828", "822"):
        assert words.count(size) == 1, size


def test_case_47_the_width_that_is_entered_says_over_what():
    assert re.search("over finished outsides", CaseTable.__doc__ or "")
