"""Segments that meet follow each other in one stroke; none is lost, none is drawn twice."""

import random
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from shopdraw.write.strokes import Segment, joined, stroke

SQUARE = [Segment("0 0", "9 0"), Segment("9 9", "9 0"), Segment("9 9", "0 9"), Segment("0 0", "0 9")]
ends = st.tuples(st.integers(0, 4), st.integers(0, 4)).map(lambda p: f"{p[0]} {p[1]}")


def test_square_in_any_order_and_direction_is_one_closed_stroke() -> None:
    for seed in range(20):
        shuffled = random.Random(seed).sample(SQUARE, 4)
        (only,) = joined(shuffled)
        assert stroke(only).endswith(" h")
        assert all(a.end == b.start for a, b in pairwise(only))


def test_line_by_itself_is_open() -> None:
    assert stroke(joined([Segment("0 0", "9 0")])[0]) == "0 0 m 9 0 l"


@given(st.lists(st.tuples(ends, ends), max_size=30))
def test_every_segment_is_drawn_once(pairs: list[tuple[str, str]]) -> None:
    drawn = [tuple(sorted((s.start, s.end))) for part in joined([Segment(*p) for p in pairs]) for s in part]
    assert sorted(drawn) == sorted(tuple(sorted(p)) for p in pairs if p[0] != p[1])


@given(st.lists(st.tuples(ends, ends), max_size=30))
def test_strokes_are_unbroken(pairs: list[tuple[str, str]]) -> None:
    for part in joined([Segment(*p) for p in pairs]):
        assert all(a.end == b.start for a, b in pairwise(part))


def test_arc_drawn_from_its_other_end_runs_through_the_same_points() -> None:
    arc = Segment("0 0", "8 0", (("0 1", "1 2", "2 2"), ("3 2", "8 1", "8 0")))
    assert arc.reversed().drawn() == "8 1 3 2 2 2 c 1 2 0 1 0 0 c"
    assert arc.reversed().reversed() == arc


def test_arc_between_two_lines_belongs_to_their_stroke() -> None:
    arc = Segment("9 5", "5 9", (("9 7", "7 9", "5 9"),))
    (only,) = joined([Segment("0 9", "5 9"), Segment("9 0", "9 5"), arc])
    assert stroke(only) in ("0 9 m 5 9 l 7 9 9 7 9 5 c 9 0 l", "9 0 m 9 5 l 9 7 7 9 5 9 c 0 9 l")
