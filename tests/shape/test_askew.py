"""Rectangles askew: by trigonometry on squares turned about a point."""

import math

from hypothesis import given
from hypothesis import strategies as st

from shopdraw.shape.askew import askew_rectangle
from shopdraw.shape.path import polygon


def turned(wide, long, degrees, middle):
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    corners = ((-long / 2, -wide / 2), (long / 2, -wide / 2), (long / 2, wide / 2), (-long / 2, wide / 2))
    return polygon((middle[0] + c * x - s * y, middle[1] + s * x + c * y) for x, y in corners)


@given(st.floats(1, 9), st.floats(10, 40), st.floats(3, 87), st.floats(-50, 50))
def test_a_turned_rectangle_is_told_by_its_own_sides(wide, long, degrees, x):
    found = askew_rectangle(turned(wide, long, degrees, (x, -7.0)))
    assert found is not None
    assert math.dist(found.middle, (x, -7.0)) < 1e-9
    told = (found.wide - wide, found.long - long, found.degrees - degrees)
    assert max(map(abs, told)) < 1e-6


def test_what_lies_square_or_is_no_rectangle_is_none():
    assert askew_rectangle(turned(4.0, 14.0, 0.0, (0.0, 0.0))) is None
    assert askew_rectangle(turned(4.0, 14.0, 90.0, (0.0, 0.0))) is None
    assert askew_rectangle(polygon(((0, 0), (10, 0), (7, 3), (3, 3)))) is None
    assert askew_rectangle(polygon(((0, 0), (5, 5), (0, 10)))) is None
