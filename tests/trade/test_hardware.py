"""Hardware: usual sizes say that they are no facts; pilot holes follow the published rule."""

from __future__ import annotations

import pytest

from shopdraw.trade import NotInTable, butt_hinge, butt_hinges, knob, knobs, pilot_mm, thread_mm, wood_screw


def test_hinges_and_knobs_are_common_practice_only() -> None:
    assert {one.source.publication for one in (*butt_hinges(), *knobs())} == {"common practice"}


def test_hinges_can_be_screwed_and_let_in() -> None:
    for hinge in butt_hinges():
        assert hinge.barrel_mm / 2 < hinge.leaf_reach_mm
        assert hinge.leaf_thickness_mm < hinge.barrel_mm / 2
        assert wood_screw(hinge.screw_gauge).shank_mm * 2 < hinge.length_mm / hinge.screws_per_leaf


# NDS, wood screws in withdrawal: 90 % of the root from 0.6 up, 70 % from 0.5 to 0.6, none below.
@pytest.mark.parametrize(("gravity", "share"), [(0.63, 0.9), (0.6, 0.9), (0.55, 0.7), (0.5, 0.7)])
def test_pilot_holes(gravity: float, share: float) -> None:
    assert pilot_mm(3.0, gravity) == pytest.approx(3.0 * share)


def test_soft_wood_needs_no_pilot_hole() -> None:
    assert pilot_mm(3.0, 0.42) is None


def test_two_thirds_of_a_screw_are_threaded() -> None:
    # Noyes, Handwork in Wood.
    assert thread_mm(30) == pytest.approx(20)


def test_screws_are_thinner_at_the_root() -> None:
    assert wood_screw(4).root_mm is None
    for gauge in (6, 7, 8, 9, 10, 12, 14):
        screw = wood_screw(gauge)
        assert screw.root_mm is not None
        assert screw.root_mm < screw.shank_mm


def test_names_that_there_are_not() -> None:
    for look_up in (lambda: butt_hinge("hinge"), lambda: knob("knob_2"), lambda: wood_screw(5)):
        with pytest.raises(NotInTable):
            look_up()
    assert butt_hinge("butt_hinge_50").length_mm == 50
    assert knob("knob_25").diameter_mm == 25
