"""Rounded corners: tangent to both lines, as far from the corner as geometry says."""

import math

import pytest

from shopdraw.shape.fillet import NoRoom, filleted
from shopdraw.shape.path import arc_of


@pytest.mark.parametrize("turn", [30.0, 90.0, 135.0, -60.0, -90.0])
def test_an_arc_touches_both_lines(turn):
    # geometry: the touching points stand r tan(θ/2) from the corner, the centre r from both lines
    angle = math.radians(turn)
    end = (100.0 + 100.0 * math.cos(angle), 100.0 * math.sin(angle))
    first, start, stop, last = filleted([(0.0, 0.0, 0.0), (100.0, 0.0, 10.0), (*end, 0.0)])
    off = 10.0 * math.tan(abs(angle) / 2)
    assert (first[:2], last[:2]) == ((0.0, 0.0), pytest.approx(end))
    assert start[:2] == pytest.approx((100.0 - off, 0.0))
    assert math.dist(stop[:2], (100.0, 0.0)) == pytest.approx(off)
    arc = arc_of(start[:2], stop[:2], start.bulge)
    assert arc.radius == pytest.approx(10.0)
    assert arc.centre == pytest.approx((100.0 - off, math.copysign(10.0, turn)))


def test_a_corner_without_a_radius_stays_sharp():
    assert [c.bulge for c in filleted([(0.0, 0.0, 0.0), (10.0, 0.0, 0.0), (10.0, 10.0, 0.0)])] == [0.0] * 3


def test_an_arc_without_room_is_told_what_fits():
    with pytest.raises(NoRoom, match=r"at 10, 0 has no room: there it can be 8.0 mm"):
        filleted([(0.0, 0.0, 0.0), (10.0, 0.0, 12.0), (10.0, 8.0, 0.0)])


def test_arcs_that_meet_share_no_point_twice():
    run = filleted([(0.0, 0.0, 0.0), (0.0, 5.0, 5.0), (10.0, 5.0, 5.0), (10.0, 20.0, 0.0)])
    assert [(round(c.x, 9), round(c.y, 9)) for c in run] == [(0, 0), (5, 5), (10, 10), (10, 20)]
