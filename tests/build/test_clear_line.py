"""How far forward compartments may stand behind a shut lid, against closed trigonometry written out here."""

import math

import pytest

from shopdraw.build.clear_line import Proud, clear_of_lid
from shopdraw.build.slant import slant_from_angle, slant_from_top_depth

# depth 508, top 254, slant 711.2 to 1016: rise 304.8 over a run of 254, pin on the front edge at writing level
GALLERY = slant_from_top_depth(508.0, 1016.0, 711.2, 0.0, 254.0, joint_gap=0.0, pin_behind=0.0)
TAN = 304.8 / 254.0
SIN = 304.8 / math.hypot(304.8, 254.0)


@pytest.mark.parametrize(("height", "front"), [(0.0, 7.8), (150.0, 132.8), (250.0, 216.1)])
def test_case_16_a_gallery_clears_the_shut_lid_at_each_height(height, front):
    found = clear_of_lid(GALLERY, height, Proud(6.0))
    assert found == pytest.approx(height / TAN + 6.0 / SIN)
    assert found == pytest.approx(front, abs=0.05)


def test_case_16_a_plumb_gallery_is_as_deep_as_its_upper_corner_allows():
    # back 19 in front of the rear edge: 508 - 19 - 216.1 = 272.9, so a sheet of 280 doesn't fit flat
    deep = 508.0 - 19.0 - clear_of_lid(GALLERY, 250.0, Proud(6.0))
    assert deep == pytest.approx(272.9, abs=0.05)
    assert deep < 280.0


def test_case_16_a_knob_pushes_the_front_back_by_what_stands_proud_over_the_sine():
    # 10 mm proud at 50.194°: 10 / 0.76822 = 13.017
    with_knob = clear_of_lid(GALLERY, 30.0, Proud(6.0, 10.0))
    assert with_knob - clear_of_lid(GALLERY, 30.0, Proud(6.0)) == pytest.approx(13.017, abs=0.001)


def test_a_raised_pin_lifts_the_lids_inner_face_by_as_much():
    # The face runs k outside the pin and starts k higher: square to the slope it is k·cos α + k off the surface's pin.
    k, alpha = 3.0, math.radians(48.3)
    slant = slant_from_angle(480.0, 1040.0, 740.0, 0.0, 48.3, joint_gap=0.0, pin_above=k, pin_behind=0.0)
    y = clear_of_lid(slant, 200.0, Proud(0.0))
    # a point of the face: from the pin (0, 743) up the slope by s, out by k
    s = (200.0 - k - k * math.cos(alpha)) / math.sin(alpha)
    assert y == pytest.approx(s * math.cos(alpha) - k * math.sin(alpha))
