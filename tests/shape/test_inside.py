"""Depth inside a path: distances by hand, arcs as they are."""

import math

import pytest

from shopdraw.shape.inside import depth_inside
from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle


@pytest.mark.parametrize(
    ("point", "deep"),
    [((5, 5), 5.0), ((1, 5), 1.0), ((-2, 5), -2.0), ((13, 14), -5.0), ((0, 5), 0.0), ((10, 10), 0.0)],
)
def test_depth_in_a_square(point, deep):
    assert depth_inside(rectangle(0, 0, 10, 10), point) == pytest.approx(deep)


@pytest.mark.parametrize("degrees", [0, 13, 90, 200, 359])
def test_depth_in_a_circle_is_measured_to_the_true_arc(degrees):
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    path = circle((3.0, 4.0), 10.0)
    assert depth_inside(path, (3 + 9.9995 * c, 4 + 9.9995 * s)) == pytest.approx(0.0005, abs=1e-9)
    assert depth_inside(path, (3 + 12 * c, 4 + 12 * s)) == pytest.approx(-2.0)


def test_depth_beside_a_hollow_corner():
    l_shaped = polygon(((0, 0), (10, 0), (10, 4), (4, 4), (4, 10), (0, 10)))
    assert depth_inside(l_shaped, (5, 5)) == pytest.approx(-1.0)
    assert depth_inside(l_shaped, (3, 3)) == pytest.approx(math.sqrt(2))


def test_a_point_past_an_arcs_end_is_measured_to_its_end():
    quarter = Path((Corner(0, 0), Corner(10, 0, math.tan(math.pi / 8)), Corner(0, 10)))
    assert depth_inside(quarter, (13, -4)) == pytest.approx(-5.0)
