"""Chords: ends on the arc, near it, and the equal-area polygon."""

import math

import pytest

from shopdraw.shape.chord import chords, equal_area_points
from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle


def _shoelace(points):
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1], strict=True)) / 2


def test_chords_of_a_circle_end_on_it_and_lie_within_the_tolerance():
    run = chords(circle((3.0, 4.0), 10.0), 0.002)
    assert all(math.isclose(math.hypot(c.x - 3, c.y - 4), 10.0, rel_tol=1e-12) for c in run)
    for a, b in zip(run, run[1:] + run[:1], strict=True):
        assert 10.0 - math.hypot((a.x + b.x) / 2 - 3, (a.y + b.y) / 2 - 4) <= 0.002 + 1e-12


def test_straight_segments_stay_one_chord_each():
    assert [c.segment for c in chords(rectangle(0, 0, 5, 3))] == [0, 1, 2, 3]


@pytest.mark.parametrize("tolerance", [0.002, 0.2, 5.0])
def test_the_equal_area_polygon_has_the_area_of_the_circle(tolerance):
    points = list(equal_area_points(circle((1.0, 2.0), 7.0), tolerance))
    assert math.isclose(_shoelace(points), math.pi * 49, rel_tol=1e-12)


def test_the_equal_area_polygon_keeps_the_area_beside_a_quarter_circle():
    quarter = math.tan(math.pi / 8)
    cove = Path((Corner(0, 0), Corner(10, 0), Corner(10, 10, quarter)))
    # triangle of half the square, plus the segment between a quarter circle of radius 10 and its chord
    assert math.isclose(_shoelace(list(equal_area_points(cove))), 50 + (math.pi * 25 - 50), rel_tol=1e-12)


def test_a_polygon_is_its_own_equal_area_polygon():
    triangle = polygon(((0, 0), (4, 0), (0, 3)))
    assert equal_area_points(triangle) == ((0, 0), (4, 0), (0, 3))
