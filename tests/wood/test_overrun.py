"""Outlines carried past the blank: where corners go, worked out by hand."""

import math

import pytest

from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle
from shopdraw.wood.overrun import carried_past


def _points(ring, leaving, amount=1.0):
    return [point for point, _ in carried_past(ring, leaving, amount)]


def test_nothing_open_nothing_moves():
    assert _points(rectangle(0, 0, 10, 5), ()) == [(0, 0), (10, 0), (10, 5), (0, 5)]


def test_an_open_side_moves_out_along_its_neighbours():
    assert _points(rectangle(0, 0, 10, 5), (1,)) == [(0, 0), (11, 0), (11, 5), (0, 5)]


def test_two_open_sides_meet_at_their_corner_again():
    assert _points(rectangle(0, 0, 10, 5), (1, 2)) == [(0, 0), (11, 0), (11, 6), (0, 6)]


def test_a_slanted_end_moves_out_while_the_flanks_run_on_in_their_own_planes():
    dado = polygon(((0, 0), (20, 0), (20, 30), (0, 50)))
    moved = _points(dado, (2,))
    # the end runs at 45°: 1 mm square to it is √2 along the flanks
    assert moved[2] == pytest.approx((20, 30 + math.sqrt(2)))
    assert moved[3] == pytest.approx((0, 50 + math.sqrt(2)))


def test_a_sharp_corner_is_not_drawn_out_to_a_spike():
    wedge = polygon(((0, 0), (100, 0), (100, 5)))
    for open_sides in ((0, 2), (0,), (2,)):
        assert min(x for x, _ in _points(wedge, open_sides)) > -1.1


def test_chords_keep_the_segment_they_stand_for():
    carried = carried_past(rectangle(0, 0, 10, 5), (0, 2))
    assert [segment for _, segment in carried] == [0, 1, 2, 3]


def test_an_open_arc_moves_out_from_its_centre():
    half = Path((Corner(0, -5, 1.0), Corner(0, 5)))
    moved = [point for point, segment in carried_past(half, (0,)) if segment == 0][2:-2]
    assert all(math.hypot(*point) == pytest.approx(6.0, abs=0.01) for point in moved)


def test_a_hollow_arc_moves_by_less_than_its_radius():
    notch = Path((Corner(0, 0), Corner(20, 0), Corner(20, 10), Corner(11, 10, -1.0), Corner(9, 10), Corner(0, 10)))
    inner = [point for point, segment in carried_past(notch, (3,), 3.0) if segment == 3]
    assert all(math.hypot(x - 10, y - 10) > 0.5 for x, y in inner)


def test_a_circle_with_nothing_open_keeps_its_chords_on_it():
    assert all(math.hypot(x, y) == pytest.approx(4.0) for x, y in _points(circle((0, 0), 4.0), ()))
