"""Hardware: usual sizes say that they are no facts; pilot holes follow the published rule."""

from __future__ import annotations

import pytest

from shopdraw.trade import NotInTable, butt_hinge, butt_hinges, knob, knobs, pilot_mm, thread_mm, wood_screw
from shopdraw.trade.hardware import biscuits


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


# A wood screw's shank in inches by its gauge, as Albany County Fasteners print it.
@pytest.mark.parametrize(
    ("gauge", "shank"), [(4, 0.112), (6, 0.138), (8, 0.164), (10, 0.190), (12, 0.216), (14, 0.242)]
)
def test_shanks_by_gauge(gauge: int, shank: float) -> None:
    assert wood_screw(gauge).shank_mm == pytest.approx(shank * 25.4)
    # 0.060 in and 0.013 in for each number (as fastener merchants give it)
    assert shank == pytest.approx(0.060 + 0.013 * gauge)


def test_biscuits_0_and_10_are_as_published() -> None:
    """EngineerFix, what size biscuit to use: 47 × 15 and 53 × 19, 4 thick; size 20 is from memory, and says so."""
    sizes = {one.key: (one.length_mm, one.width_mm, one.thickness_mm) for one in biscuits()}
    assert (sizes["0"], sizes["10"]) == ((47.0, 15.0, 4.0), (53.0, 19.0, 4.0))
    assert {one.key: "from memory" in one.source.publication for one in biscuits()} == {
        "0": False, "10": False, "20": True
    }  # fmt: skip


def test_names_that_there_are_not() -> None:
    for look_up in (lambda: butt_hinge("hinge"), lambda: knob("knob_2"), lambda: wood_screw(5)):
        with pytest.raises(NotInTable):
            look_up()
    assert butt_hinge("butt_hinge_50").length_mm == 50
    assert knob("knob_25").diameter_mm == 25
