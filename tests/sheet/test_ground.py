"""The ground finds every line and box that is near, whatever the place."""

import math

from hypothesis import given
from hypothesis import strategies as st

from shopdraw.drawing.mark import ArcMark, Dot, Line, Meaning, Text
from shopdraw.sheet.box import Box, crossing
from shopdraw.sheet.ground import EVERY, Ground, Stroke, What, boxes_of, strokes_of

number = st.floats(-60, 60, allow_nan=False)
point = st.tuples(number, number)
line = st.tuples(point, point)


@given(st.lists(line, min_size=1, max_size=12), line)
def test_no_line_that_crosses_is_missed(lines, wanted):
    ground = Ground()
    for i, one in enumerate(lines):
        ground.add_stroke(Stroke(one, EVERY[i % len(EVERY)], str(i)))
    found = {stroke.owner for stroke in ground.strokes_along(wanted)}
    assert {str(i) for i, one in enumerate(lines) if crossing(wanted, one) is not None} <= found


@given(st.lists(line, min_size=1, max_size=12), point)
def test_no_line_through_a_box_is_missed(lines, middle):
    ground, box = Ground(), Box(*middle, 7.0, 2.0)
    for i, one in enumerate(lines):
        ground.add_stroke(Stroke(one, What.VIEW, str(i)))
    found = {stroke.owner for stroke in ground.strokes_near(box.bounds())}
    assert {str(i) for i, one in enumerate(lines) if box.meets_line(*one)} <= found


def test_words_keep_half_a_millimetre_off_lines_of_others_but_not_off_their_own():
    ground = Ground()
    ground.add_stroke(Stroke(((-10, 2.3), (10, 2.3)), What.DIMENSION, "a"))
    box = Box(0.0, 0.0, 5.0, 2.0)
    assert not ground.free_for_words(box, "b")
    assert ground.free_for_words(box, "a")


def test_a_ground_stands_on_another_and_leaves_it_as_it_is():
    under = Ground()
    under.add_box(Box(0.0, 0.0, 5.0, 2.0), "view")
    over = Ground(under)
    over.add_box(Box(20.0, 0.0, 5.0, 2.0), "a")
    assert not over.free_for_words(Box(4.0, 0.0, 2.0, 2.0), "b")
    assert under.free_for_words(Box(20.0, 0.0, 2.0, 2.0), "b")


def test_marks_come_onto_paper_at_their_scale():
    strokes = list(strokes_of([Line((0, 0), (100, 50), Meaning.VISIBLE)], What.VIEW, "", 0.2))
    assert [stroke.line for stroke in strokes] == [((0.0, 0.0), (20.0, 10.0))]


def test_an_arc_becomes_chords_that_stay_near_it():
    strokes = list(strokes_of([ArcMark((0, 0), 50.0, 0.0, 90.0, Meaning.VISIBLE)], What.VIEW, "", 0.2))
    for stroke in strokes:
        (x0, y0), (x1, y1) = stroke.line
        assert 9.9 < ((x0 + x1) ** 2 + (y0 + y1) ** 2) ** 0.5 / 2 <= 10.0


def test_words_and_dots_become_boxes():
    boxes = list(
        boxes_of([Text((0, 0), "A", 5.0), Dot((10, 10), 0.75, Meaning.SIZE), Line((0, 0), (1, 1), Meaning.SIZE)])
    )
    assert len(boxes) == 2
    assert boxes[1].bounds() == (9.25, 9.25, 10.75, 10.75)


@given(st.lists(line, min_size=1, max_size=12), point, st.floats(0.0, 360.0))
def test_words_are_refused_wherever_a_line_or_other_words_stand_and_nowhere_else(lines, middle, angle):
    c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    over, box = Ground(Ground()), Box(*middle, 7.0, 2.0, c, s)
    words = [Box(*p, 5.0, 2.0, s, c) for p, _ in lines]
    for i, one in enumerate(lines):
        over.add_stroke(Stroke(one, EVERY[i % len(EVERY)], str(i)))
    assert over.free_for_words(box, "own") == (not any(box.grown(0.5).meets_line(*one) for one in lines))
    for one in words:
        over.add_box(one, "words")
    apart = Box(*middle, 8.6, 2.5, c, s)
    met = any(box.grown(0.5).meets_line(*one) for one in lines) or any(apart.meets_box(one) for one in words)
    assert over.free_for_words(box, "own") == (not met)
    for one in lines:
        assert over.line_meets_words(one) == any(w.grown(0.5).meets_line(*one) for w in words)
