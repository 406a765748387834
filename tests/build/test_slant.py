"""The slant, the pin and the lid's length against closed trigonometry, written out here once more."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.slant import (
    SlantDisagrees,
    slant_from_angle,
    slant_from_start,
    slant_from_top_depth,
    top_flat,
)
from tests.check.desks import design

DEPTH, Z1, WRITING, TOP_DEPTH = 480.0, 1040.0, 740.0, 230.0
NO_GAP = {"joint_gap": 0.0, "pin_behind": 0.0}


@pytest.mark.parametrize(
    ("inset", "alpha", "tilt", "z0", "s1"),
    [
        (0.0, 50.194, 39.806, 740.00, 390.512),
        (8.0, 49.021, 40.979, 752.20, 390.431),
        (20.0, 47.259, 42.741, 769.47, 390.000),
    ],
)
def test_the_worked_table_when_the_tops_depth_is_given(inset, alpha, tilt, z0, s1):
    s = slant_from_top_depth(DEPTH, Z1, WRITING, inset, TOP_DEPTH, **NO_GAP)
    assert s.alpha == pytest.approx(alpha, abs=0.0005)
    assert s.tilt == pytest.approx(tilt, abs=0.0005)
    assert s.z0 == pytest.approx(z0, abs=0.005)
    assert s.s1 == pytest.approx(s1, abs=0.0005)
    # the tangent from the upper arris (250, 1040) to a circle of radius o round the pin (0, 740), in closed form
    reach = math.hypot(250.0, 300.0)
    assert math.radians(s.alpha) == pytest.approx(math.atan2(300.0, 250.0) - math.asin(inset / reach))
    assert s.s1 == pytest.approx(math.sqrt(reach**2 - inset**2))


@pytest.mark.parametrize(
    ("inset", "run", "top_depth", "z0"),
    [(0.0, 251.73, 228.27, 740.00), (8.0, 241.29, 238.71, 752.45), (20.0, 225.62, 254.38, 771.11)],
)
def test_the_worked_table_when_an_angle_of_50_degrees_is_given(inset, run, top_depth, z0):
    s = slant_from_angle(DEPTH, Z1, WRITING, inset, 50.0, **NO_GAP)
    assert s.run == pytest.approx(run, abs=0.005)
    assert DEPTH - s.run == pytest.approx(top_depth, abs=0.005)
    assert s.z0 == pytest.approx(z0, abs=0.005)
    # the slant line runs o outside the writing face, which passes through the pin
    assert s.z0 == pytest.approx(WRITING + inset / math.cos(math.radians(50.0)))


@pytest.mark.parametrize("inset", [0.0, 8.0, 20.0])
@pytest.mark.parametrize("pin_above", [0.0, 3.0])
def test_angle_and_top_depth_are_two_ways_to_say_one_slant(inset, pin_above):
    by_depth = slant_from_top_depth(DEPTH, Z1, WRITING, inset, TOP_DEPTH, pin_above=pin_above)
    by_angle = slant_from_angle(DEPTH, Z1, WRITING, inset, by_depth.alpha, pin_above=pin_above)
    assert by_angle.run == pytest.approx(by_depth.run)
    assert by_angle.z0 == pytest.approx(by_depth.z0)
    assert by_angle.s1 == pytest.approx(by_depth.s1)


@pytest.mark.parametrize("inset", [0.0, 8.0, 20.0])
@pytest.mark.parametrize("pin_above", [0.0, 3.0])
@pytest.mark.parametrize("angle", [40.0, 50.0, 65.0])
def test_the_pin_lies_the_inset_inside_the_slant_plane(inset, pin_above, angle):
    s = slant_from_angle(DEPTH, Z1, WRITING, inset, angle, pin_above=pin_above)
    alpha = math.radians(angle)
    # distance of the pin from the line through (0, z0) at the angle
    away = (s.pin[0] - 0.0) * math.sin(alpha) - (s.pin[1] - s.z0) * math.cos(alpha)
    assert away == pytest.approx(inset + pin_above)
    assert (s.run, s.rise) == pytest.approx((s.run, s.run * math.tan(alpha)))
    assert s.swing == pytest.approx(180.0 - angle)


def test_a_pin_raised_by_three_moves_back_by_3_over_tan_of_half_the_angle():
    # measured start held; at 48.3° the pin moves back 6.7
    flat = slant_from_start(DEPTH, Z1, WRITING, 8.0, 740.0, angle=48.3, top_depth=None, pin_above=0.0)
    raised = slant_from_start(DEPTH, Z1, WRITING, 8.0, 740.0, angle=48.3, top_depth=None, pin_above=3.0)
    assert raised.pin[0] - flat.pin[0] == pytest.approx(3.0 / math.tan(math.radians(48.3) / 2))
    assert raised.pin[0] - flat.pin[0] == pytest.approx(6.7, abs=0.05)


def test_case_05_the_pin_of_a_measured_slant():
    s = slant_from_start(482.6, 1016.0, 736.6, 9.525, 736.6, angle=None, top_depth=228.6, joint_gap=0.0)
    assert s.alpha == pytest.approx(47.73, abs=0.005)
    assert s.tilt == pytest.approx(42.27, abs=0.005)
    assert s.slope_length == pytest.approx(377.6, abs=0.05)
    assert s.pin[0] == pytest.approx(12.87, abs=0.005)


def test_case_21_run_254_and_rise_304_8():
    s = slant_from_start(508.0, 1040.0, 700.0, 0.0, 1040.0 - 304.8, angle=None, top_depth=254.0)
    assert s.alpha == pytest.approx(50.194, abs=0.0005)
    assert s.tilt == pytest.approx(39.806, abs=0.0005)


def test_case_22_a_fourth_input_that_disagrees_is_told_with_what_would_fit():
    with pytest.raises(SlantDisagrees) as refused:
        slant_from_start(508.0, 1040.0, 735.2, 0.0, 1040.0 - 304.8, angle=52.0, top_depth=254.0)
    said = str(refused.value)
    assert "50.19°" in said
    # 254 × tan 52° = 325.1: the start 20.3 lower
    assert 254.0 * math.tan(math.radians(52.0)) == pytest.approx(325.1, abs=0.05)
    assert "rise is 325.1 mm" in said
    assert f"start at {735.2 - 20.3:.1f}" in said
    assert "top depth is 269.9 mm" in said


def test_case_22_a_piece_with_angle_and_top_depth_that_disagree_is_refused():
    with pytest.raises(CannotBuild, match="keep one of the two"):
        build(design(slant={"angle": 52.0, "top_depth": 230.0}))


def test_case_22_a_piece_whose_angle_agrees_with_its_top_depth_is_built():
    alone = build(design(slant={"joint_gap": 0.5}))
    both = build(design(slant={"joint_gap": 0.5, "angle": round(alone.slant.angle_from_level_deg, 2)}))
    assert both.slant == alone.slant


@pytest.mark.parametrize("angle", [0.0, 4.9, 85.1, 90.0])
def test_an_angle_that_is_no_slope_is_refused(angle):
    with pytest.raises(SlantDisagrees):
        slant_from_angle(DEPTH, Z1, WRITING, 0.0, angle)


def test_a_slant_that_runs_past_the_case_says_what_angle_would_do():
    with pytest.raises(SlantDisagrees, match="it must be over"):
        slant_from_angle(400.0, Z1, WRITING, 0.0, 35.0)


@pytest.mark.parametrize(("bevel", "flat"), [(12.5, 16.11)])
def test_the_flat_on_the_tops_sharp_corner(bevel, flat):
    # top 20 thick, slant 49.021°: (20 / sin α - 12.5) · tan α
    assert top_flat(20.0, bevel, 49.021) == pytest.approx(flat, abs=0.005)
