"""Swept motions against closed trigonometry and plain sums."""

import math

import pytest

from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Motion
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.sweep import swept
from tests.wood.pieces import LYING, board, plain

LID = board("lid", plain(400.0, 300.0, 20.0), LYING.moved((0.0, 0.0, 20.0)))
"""Lies flat from y = 0 to 300; its pin runs along x through y = 0, z = 0."""
TURN = Motion("lid", ("lid",), "turn", (0.0, 0.0, 0.0), (1.0, 0.0, 0.0), 180.0)


def _stop(y: float, z: float, size: float = 30.0):
    return board("stop", plain(100.0, size, size), LYING.moved((100.0, y, z + size)))


def test_a_lid_that_swings_free_hits_nothing():
    assert swept((LID, _stop(0.0, 310.0)), (TURN,)) == ()


def test_a_lid_first_meets_a_stop_at_the_angle_that_trigonometry_gives():
    # the lid's upper outer corner (300, 20) swings at radius √(300² + 20²) = 300.67; a stop above at z = 295 from
    # y = -15 is reached when that corner gets there, before the outer edge stands plumb
    hits = swept((LID, _stop(-15.0, 295.0)), (TURN,))
    radius = math.hypot(300.0, 20.0)
    # the upper face's outer corner crosses z = 295 (rising) at y = √(radius² - 295²) = 58 > 15; the lid's outer end
    # then meets the stop's nearest corner (15, 295): distance from the pin and angle of that corner
    corner = math.hypot(15.0, 295.0)
    reach = math.asin(20.0 / corner)  # where that distance lies on the lid's upper face, as an angle from its lower one
    expected = math.degrees(math.atan2(295.0, 15.0) - reach)
    assert corner < radius
    assert [(h.board, h.other) for h in hits] == [("lid", "stop")]
    assert hits[0].position == pytest.approx(expected, abs=0.5)
    assert hits[0].volume > 100


def test_a_thin_wire_in_the_way_of_a_lid_is_not_jumped_over():
    wire = board("wire", plain(400.0, 1.5, 1.5), LYING.moved((0.0, -100.0, 150.0)))
    hits = swept((LID, wire), (TURN,))
    assert [h.other for h in hits] == ["wire"]
    assert 90.0 < hits[0].position < 180.0


def test_a_drawer_stopped_by_a_rail_is_caught_where_it_stands():
    drawer = board("drawer", plain(300.0, 400.0, 100.0), LYING.moved((0.0, 0.0, 100.0)))
    rail = board("rail", plain(300.0, 20.0, 20.0), LYING.moved((0.0, -60.0, 110.0)))
    slide = Motion("drawer", ("drawer",), "slide", (0, 0, 0), (0.0, -1.0, 0.0), 300.0)
    hits = swept((drawer, rail), (slide,))
    # the rail spans y -60 to -40 and z 90 to 110: met after 40 mm
    assert hits[0].position == pytest.approx(40.0, abs=1.0)


def test_a_drawer_that_clears_the_rail_slides_out():
    drawer = board("drawer", plain(300.0, 400.0, 89.9), LYING.moved((0.0, 0.0, 89.9)))
    rail = board("rail", plain(300.0, 20.0, 20.0), LYING.moved((0.0, -60.0, 110.0)))
    slide = Motion("drawer", ("drawer",), "slide", (0, 0, 0), (0.0, -1.0, 0.0), 300.0)
    assert swept((drawer, rail), (slide,)) == ()


def test_a_grooved_side_runs_freely_on_a_runner_in_its_groove():
    groove = Cut("groove", Face.FACE, 0.0, 8.0, rectangle(0.0, 40.0, 400.0, 60.0))
    side = board("side", plain(400.0, 100.0, 20.0, groove), LYING.moved((0.0, 0.0, 0.0)))
    runner = board("runner", plain(400.0, 20.0, 7.0), LYING.moved((0.0, 40.0, 0.0)))
    slide = Motion("drawer", ("side",), "slide", (0, 0, 0), (1.0, 0.0, 0.0), 100.0)
    assert swept((side, runner), (slide,)) == ()
    across = Motion("drawer", ("side",), "slide", (0, 0, 0), (0.0, 1.0, 0.0), 100.0)
    assert swept((side, runner), (across,))[0].position <= 1.0


def test_what_opens_first_is_out_of_the_way_of_what_opens_after_it():
    # a block before the lid slides to where the shut lid lies; open, the lid is gone
    stop = _stop(-40.0, 95.0)
    shut = board("lid", plain(400.0, 300.0, 20.0), LYING.moved((0.0, 0.0, 120.0)))
    slide = Motion("stop", ("stop",), "slide", (0.0, 0.0, 0.0), (0.0, 1.0, 0.0), 50.0)
    assert [(hit.board, hit.other) for hit in swept((shut, stop), (TURN, slide)) if hit.motion == "stop"]
    after = Motion("stop", ("stop",), "slide", (0.0, 0.0, 0.0), (0.0, 1.0, 0.0), 50.0, after=("lid",))
    assert [hit for hit in swept((shut, stop), (TURN, after)) if hit.motion == "stop"] == []
