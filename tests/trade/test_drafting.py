"""Letters, lines and title blocks."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from shopdraw.trade import NotInTable, lettering, letterings, line_groups, title_block_fields

# NF EN ISO 3098-0, type B: heights, lower case, stroke, gap, line pitch with accents, with capitals only.
ISO_3098 = [
    (1.8, 1.26, 0.18, 0.36, 3.42, 2.34), (2.5, 1.75, 0.25, 0.5, 4.75, 3.25), (3.5, 2.5, 0.35, 0.7, 6.65, 4.55),
    (5, 3.5, 0.5, 1, 9.5, 6.5), (7, 5, 0.7, 1.4, 13.3, 9.1), (10, 7, 1, 2, 19, 13), (14, 10, 1.4, 2.8, 26.6, 18.2),
    (20, 14, 2, 4, 38, 26),
]  # fmt: skip


@pytest.mark.parametrize("row", ISO_3098)
def test_lettering_is_as_the_standard_says(row: tuple[float, ...]) -> None:
    one = lettering(row[0])
    assert (one.height, one.lower_case, one.stroke, one.gap, one.pitch, one.pitch_capitals) == row


def test_letters_grow_by_the_root_of_two() -> None:
    # ISO 3098: each height is sqrt 2 times the one before; stroke h/10, gap h/5, pitches 1.9 h and 1.3 h for type B.
    heights = [one.height for one in letterings()]
    assert all(b / a == pytest.approx(math.sqrt(2), rel=0.03) for a, b in pairwise(heights))
    for one in letterings():
        figures = (one.stroke, one.gap, one.pitch, one.pitch_capitals)
        assert figures == pytest.approx([share * one.height for share in (0.1, 0.2, 1.9, 1.3)])


def test_a_height_off_the_series_is_refused() -> None:
    with pytest.raises(NotInTable, match=r"2\.5"):
        lettering(2.4)


def test_line_groups() -> None:
    # Drawing office guide to line weights after ISO 128: series and groups; wide is twice narrow.
    series = (0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0)
    for group in line_groups():
        assert {group.narrow, group.symbols, group.wide, group.extra_wide} <= set(series)
        assert group.wide == pytest.approx(2 * group.narrow, rel=0.05)
    assert [(g.narrow, g.symbols, g.wide, g.extra_wide) for g in line_groups()][3] == (0.35, 0.5, 0.7, 1.4)


def test_title_block_fields() -> None:
    # ISO 7200:2004, list of data fields: eight are mandatory.
    mandatory = {field.name for field in title_block_fields() if field.mandatory}
    assert mandatory == {
        "legal owner", "identification number", "date of issue", "sheet number", "title", "approval person", "creator",
        "document type",
    }  # fmt: skip
    longest = {field.key: field.longest for field in title_block_fields()}
    assert (longest["number"], longest["title"], longest["revision"], longest["owner"]) == (16, 25, 2, None)
