"""Figures along a row: in order, apart, off fixed lines, moved as little as it takes."""

import itertools

from hypothesis import given
from hypothesis import strategies as st

from shopdraw.sheet.figure_spot import spread

places = st.lists(st.floats(0, 100), min_size=1, max_size=12).map(sorted)


@given(places, st.floats(0.5, 4))
def test_figures_never_overlap(wanted, half):
    found = spread(wanted, [half] * len(wanted), ())
    assert all(b - a >= 2 * half - 1e-9 for a, b in itertools.pairwise(found))


@given(places, st.floats(0.5, 2))
def test_figures_with_room_stay_where_they_belong(wanted, half):
    apart = [want * 10 + i * 2 * half for i, want in enumerate(wanted)]
    found = spread(apart, [half] * len(apart), ())
    assert all(abs(a - b) < 1e-6 for a, b in zip(apart, found, strict=True))


@given(places, st.floats(0.5, 2), st.lists(st.integers(-100, 200), max_size=3))
def test_figures_keep_off_fixed_lines_that_leave_them_room(wanted, half, walls):
    fixed = tuple(sorted({float(w) for w in walls}))
    found = spread(wanted, [half] * len(wanted), fixed)
    room = 2 * half * len(wanted)
    edges = [-1e9, *fixed, 1e9]
    if all(b - a > room for a, b in itertools.pairwise(edges)):
        assert all(abs(place - wall) >= half - 1e-6 for place in found for wall in fixed)


def test_two_that_would_touch_move_apart_evenly():
    assert spread([10.0, 10.0], [2.0, 2.0], ()) == [8.0, 12.0]
