"""Angles told both ways, tilts no saw has, and a measured slant whose lid can't clear the sides."""

import math

import pytest

from tests.check.desks import checked, design, of_code


def test_case_05_a_measured_slant_whose_overlap_cannot_clear_is_told_with_each_remedy():
    piece = design(
        case={"height": 1016.0, "depth": 482.6},
        slant={"writing_height": 736.6, "start": 736.6, "top_depth": 228.6, "seat": "rabbeted"},
        lid={"rabbet": 9.525},
    )
    found = of_code(checked(piece), "pin-behind-overlap")
    assert len(found) == 1
    # slant 279.4 up over 254 back; the pin lies o/sin α behind it at the writing surface's height
    alpha = math.atan2(279.4, 254.0)
    assert math.degrees(alpha) == pytest.approx(47.73, abs=0.005)
    assert found[0].value == pytest.approx(9.525 / math.sin(alpha))
    assert found[0].value == pytest.approx(12.87, abs=0.005)
    said = found[0].message
    lowered = 736.6 - 9.525 / math.cos(alpha)
    assert lowered == pytest.approx(722.44, abs=0.005)
    assert "writing surface lowered to 722.44 mm" in said
    assert "slant start raised by 14.16 mm with the angle held (top depth becomes 241.47 mm)" in said
    assert "raised by 13.78 mm with top depth and height held (the angle becomes 46.28°)" in said


def test_case_05_the_value_that_mends_it_mends_it():
    tables = {
        "case": {"height": 1016.0, "depth": 482.6},
        "slant": {"writing_height": 736.6, "start": 736.6, "top_depth": 228.6, "seat": "rabbeted"},
        "lid": {"rabbet": 9.525},
    }
    found = of_code(checked(design(**tables)), "pin-behind-overlap")
    address, value = found[0].right
    assert address == "slant.writing_height"
    tables["slant"]["writing_height"] = float(value.removesuffix(" mm"))
    again = checked(design(**tables))
    assert of_code(again, "pin-behind-overlap") == []
    assert of_code(again, "motion-blocked") == []


def test_case_21_the_angle_is_told_both_ways_with_run_and_rise():
    # run 254, rise 304.8 for a lid on the slant, its pin half the joint gap before the front plane
    piece = design(
        case={"depth": 508.0, "height": 1040.0},
        slant={"writing_height": 1040.0 - 304.8, "top_depth": 254.0, "seat": "on", "joint_gap": 0.001},
    )
    said = of_code(checked(piece), "slant-angle")[0].message
    assert math.degrees(math.atan2(304.8, 254.0)) == pytest.approx(50.194, abs=0.0005)
    assert "slant 50.2° from level; tilt saw 39.8° from square" in said
    assert "run 254.0 mm, rise 304.8 mm" in said


def test_case_21_a_tilt_over_45_degrees_cannot_be_cut_that_way():
    found = of_code(checked(design(slant={"top_depth": None, "angle": 42.0})), "tilt-over-45")
    assert [finding.where[1] for finding in found] == ["bevel:top:slant"]
    assert found[0].value == pytest.approx(48.0)
    assert "it can't be cut that way" in found[0].message
    assert "on edge against a tall fence" in found[0].message


def test_the_flat_on_the_top_asks_for_more_than_45_degrees_when_the_slant_is_steep():
    found = of_code(checked(design(slant={"top_depth": None, "angle": 50.0})), "tilt-over-45")
    assert [finding.where[1] for finding in found] == ["bevel:top:flat"]
    assert found[0].value == pytest.approx(50.0)


def test_a_slant_of_45_degrees_asks_for_no_tilt_that_a_saw_has_not():
    assert of_code(checked(design(slant={"top_depth": None, "angle": 45.0})), "tilt-over-45") == []
