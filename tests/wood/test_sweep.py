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


def test_case_51_a_gallery_door_stops_at_a_moulding_beside_its_pin_and_stands_in_the_opening():
    # a door of 140 × 12.7, pin on its front face; a moulding 9.5 proud begins 4 beside the pin
    door = board("door", plain(140.0, 12.7, 200.0), LYING.moved((0.0, 0.0, 200.0)))
    moulding = board("moulding", plain(30.0, 9.5, 200.0), LYING.moved((-34.0, -9.5, 200.0)))
    way = Motion("door", ("door",), "turn", (0.0, 0.0, 0.0), (0.0, 0.0, -1.0), 170.0)
    (hit,) = swept((door, moulding), (way,))
    # its front face reaches the moulding's nearer corner: 180° less atan(9.5 / 4)
    stops = 180.0 - math.degrees(math.atan2(9.5, 4.0))
    assert stops == pytest.approx(112.8, abs=0.05)
    assert hit.position == pytest.approx(stops, abs=0.5)
    # there its thickness still stands 12.7 sin 112.8° in the opening
    assert 12.7 * math.sin(math.radians(stops)) == pytest.approx(11.7, abs=0.05)
    opened = door.frame.turned(way.point, (0.0, 0.0, -1.0), stops)
    corners = [opened.point((u, v, 0.0)) for u in (0.0, 140.0) for v in (0.0, 12.7)]
    assert max(x for x, _, _ in corners) == pytest.approx(11.7, abs=0.05)
    # so an inner drawer narrower by that on the hinge's side comes out, and one as wide as the opening doesn't
    open_door = board("door", plain(140.0, 12.7, 200.0), opened)
    for left, free in ((11.8, True), (0.5, False)):
        drawer = board("drawer", plain(139.0 - left, 150.0, 60.0), LYING.moved((left, 20.0, 100.0)))
        out = Motion("drawer", ("drawer",), "slide", (0.0, 0.0, 0.0), (0.0, -1.0, 0.0), 140.0)
        assert (swept((open_door, moulding, drawer), (out,)) == ()) == free
    # moved out by the moulding's projection and a little more, the pin lets the door by
    further = Motion("door", ("door",), "turn", (0.0, -9.6, 0.0), (0.0, 0.0, -1.0), 170.0)
    proud = board("door", plain(140.0, 12.7, 200.0), LYING.moved((0.0, -9.6, 200.0)))
    assert swept((proud, moulding), (further,)) == ()
