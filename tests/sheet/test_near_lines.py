"""Lines nearer than 0.7 on paper are drawn as one (teaching of ISO 128)."""

import pytest

from shopdraw.drawing.mark import ArcMark, Line, Meaning
from shopdraw.sheet.look import look_for
from shopdraw.sheet.near_lines import fine_where_close, without_near

SCALE = 0.2
"""0.7 on paper is 3.5 at true size."""


def level(y, x0, x1, meaning=Meaning.VISIBLE):
    return Line((x0, y), (x1, y), meaning, "b")


def test_the_weightier_of_two_near_lines_stays():
    cut, behind = level(0.0, 0.0, 100.0, Meaning.CUT), level(3.0, 0.0, 200.0, Meaning.BEHIND)
    kept = without_near([behind, cut], SCALE)
    assert cut in kept
    assert kept[0].start == (100.0, 3.0)
    assert kept[0].end == (200.0, 3.0)


def test_lines_that_are_far_enough_apart_both_stay():
    marks = (level(0.0, 0.0, 100.0), level(3.6, 0.0, 100.0))
    assert without_near(marks, SCALE) == marks


def test_lines_that_only_end_near_each_other_both_stay():
    marks = (level(0.0, 0.0, 100.0), level(1.0, 100.0, 200.0))
    assert without_near(marks, SCALE) == marks


def test_crossing_lines_and_arcs_are_left_alone():
    marks = (level(0.0, 0.0, 100.0), Line((50.0, -50.0), (50.0, 50.0), Meaning.HIDDEN, "b"))
    arc = ArcMark((0.0, 0.0), 1.0, 0.0, 90.0, Meaning.HIDDEN, "b")
    assert without_near((*marks, arc), SCALE) == (*marks, arc)


def test_what_is_left_of_a_line_never_runs_beside_a_kept_one():
    marks = [level(0.1 * i, 7.0 * i, 300.0 - 5.0 * i) for i in range(20)]
    kept = without_near(marks, SCALE)
    for i, one in enumerate(kept):
        for other in kept[i + 1 :]:
            beside = min(one.end[0], other.end[0]) - max(one.start[0], other.start[0])
            assert beside <= 1e-6 or abs(one.start[1] - other.start[1]) * SCALE >= 0.7 - 1e-9
    assert sum(line.end[0] - line.start[0] for line in kept) == pytest.approx(300.0)


@pytest.mark.parametrize(("apart_on_paper", "fine"), [(0.8, True), (1.3, True), (1.5, False)])
def test_lines_that_would_print_as_one_bar_are_narrow(apart_on_paper, fine):
    # ISO 128-2: at least 0.7 mm stay between parallel lines (read second-hand); wide lines on A1 are 0.7 themselves.
    look = look_for("iso", "large")
    assert look.wide == 0.7
    d = apart_on_paper / SCALE
    edge, other = level(0.0, 0.0, 400.0), level(300.0, 0.0, 400.0)
    groove = [level(100.0 + n * d, 0.0, 400.0) for n in range(4)]
    drawn = fine_where_close((edge, *groove, other), SCALE, look)
    assert [mark.width for mark in drawn] == [None, *([look.narrow if fine else None] * 4), None]


def test_a_groove_beside_the_boards_edge_is_narrow_and_the_edge_stays_wide():
    look = look_for("iso", "large")
    drawn = fine_where_close((level(0.0, 0.0, 400.0), level(5.0, 0.0, 400.0), level(99.0, 0.0, 400.0)), SCALE, look)
    assert [mark.width for mark in drawn] == [None, look.narrow, None]


def test_lines_one_after_the_other_stay_wide():
    look = look_for("iso", "large")
    marks = (level(0.0, 0.0, 9.0), level(50.0, 0.0, 100.0), level(51.0, 100.0, 200.0), level(99.0, 0.0, 9.0))
    assert fine_where_close(marks, SCALE, look) == marks
