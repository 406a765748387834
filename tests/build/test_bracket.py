"""Brackets' lower edges: drawn once for the left half and mirrored, arcs that meet level or in a drop."""

import math

import pytest

from shopdraw.build.bracket import bracket_half, bracket_outline
from shopdraw.build.cannot import CannotBuild
from shopdraw.shape.path import arc_of, bounds, signed_area


def _arcs(outline):
    return [
        arc_of((here.x, here.y), (there.x, there.y), here.bulge) for here, there in outline.pairs() if here.bulge
    ]


@pytest.mark.parametrize("shape", ["arch", "scallop"])
@pytest.mark.parametrize(("length", "height"), [(208.5, 40.0), (90.0, 30.0), (400.0, 55.0)])
def test_an_outline_is_whole_and_mirrored(shape, length, height):
    outline = bracket_outline(bracket_half(shape, length, height, None), length, height)
    assert bounds(outline) == pytest.approx((0.0, 0.0, length, height))
    assert signed_area(outline) > 0
    corners = {(round(c.x, 9), round(c.y, 9)) for c in outline.corners}
    assert {(round(length - x, 9), y) for x, y in corners} == corners
    one, other = _arcs(outline)
    assert one.radius == pytest.approx(other.radius)


def test_an_arch_is_one_arc_level_in_the_middle():
    # 228 long, 40 high: feet of 14, half span 100, rise 20: radius (100² + 20²) / (2 × 20) = 260, its centre
    # 260 below the crown at 40 × 0.12 + 20 = 24.8
    outline = bracket_outline(bracket_half("arch", 228.0, 40.0, None), 228.0, 40.0)
    for arc in _arcs(outline):
        assert arc.radius == pytest.approx(260.0)
        assert arc.centre == pytest.approx((114.0, 24.8 - 260.0))


def test_a_scallop_has_two_arcs_that_meet_in_a_drop():
    # half span 100, each arc 100 wide and 20 high: radius (50² + 20²) / 40 = 72.5
    outline = bracket_outline(bracket_half("scallop", 228.0, 40.0, None), 228.0, 40.0)
    left, right = _arcs(outline)
    assert left.radius == pytest.approx(72.5)
    assert (left.centre[0], right.centre[0]) == pytest.approx((64.0, 164.0))


def test_an_own_path_is_drawn_in_shares_and_mirrored():
    # half of 200 across, 40 up: from the end up 0.5 at 0.5, a half circle's bulge of -1 is kept
    path = (0.0, 0.0, 0.0, 0.5, 0.25, -0.3, 1.0, 0.5, 0.0)
    outline = bracket_outline(bracket_half("own", 200.0, 40.0, path), 200.0, 40.0)
    there = [(c.x, c.y, c.bulge) for c in outline.corners]
    assert there == [
        (0.0, 0.0, 0.0),
        (50.0, 10.0, -0.3),
        (100.0, 20.0, -0.3),
        (150.0, 10.0, 0.0),
        (200.0, 0.0, 0.0),
        (200.0, 40.0, 0.0),
        (0.0, 40.0, 0.0),
    ]
    assert math.isclose(signed_area(outline), signed_area(outline.anticlockwise()))


@pytest.mark.parametrize("path", [(0.0, 0.0), (0.1, 0.0, 0.0, 1.0, 0.0, 0.0), (0.0, 0.0, 0.0, 1.0, 0.9, 0.0)])
def test_an_own_path_that_is_none_is_refused(path):
    with pytest.raises(CannotBuild, match="expected threes of across, up, bulge"):
        bracket_half("own", 200.0, 40.0, path)
