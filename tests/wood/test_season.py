"""Seasonal change against closed sums: size × coefficient × change of moisture."""

import math
from dataclasses import replace

import pytest

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import bounds, circle, rectangle
from shopdraw.wood.assembly import Assembly, Body, Joint, Moisture, Motion
from shopdraw.wood.board import Cut, Face, Fixing, Lean, Stock
from shopdraw.wood.interference import box_of
from shopdraw.wood.season import in_season, stretched
from tests.wood.pieces import LYING, PINE, PLY, board, dado, plain

C = PINE.coefficient


def _piece(*boards, **more):
    return Assembly("", "free", 1, 1, 1, boards, moisture=Moisture(8.0, 6.0, 12.0), **more)


def _held(item, to="", at=(0.0, 0.0, 0.0), lean=None):
    return replace(item, fixing=Fixing(to, at, lean))


def test_at_build_nothing_changes():
    piece = _piece(board("panel", plain(400, 300, 20), LYING))
    assert in_season(piece, 8.0) is piece


def test_a_panel_held_at_its_front_edge_grows_at_the_back_only():
    panel = _held(board("panel", plain(400, 300, 20), LYING.moved((0, 50, 0))), at=(200.0, 50.0, 0.0))
    box = box_of(in_season(_piece(panel), 12.0).board("panel"))
    assert box[1] == pytest.approx(50.0)
    assert box[4] == pytest.approx(350.0 + 300 * C * 4)
    assert (box[0], box[3], box[2], box[5]) == pytest.approx((0.0, 400.0, -20.0, 0.0))


def test_a_panel_held_in_the_middle_shrinks_from_both_sides():
    panel = _held(board("panel", plain(400, 300, 20), LYING), at=(200.0, 150.0, 0.0))
    box = box_of(in_season(_piece(panel), 6.0).board("panel"))
    assert (box[1], box[4]) == pytest.approx((150 * C * 2, 300 - 150 * C * 2))


def test_sheets_stay_as_they_are():
    sheet = board("back", plain(400, 300, 6), LYING, PLY)
    assert in_season(_piece(sheet), 12.0).board("back").shape == sheet.shape


def test_what_is_held_at_the_back_of_a_panel_moves_with_it():
    panel = _held(board("panel", plain(400, 300, 20), LYING), at=(0.0, 0.0, 0.0))
    rail = _held(board("rail", plain(400, 40, 20), LYING.moved((0, 260, 20))), "panel", (0.0, 300.0, 0.0))
    box = box_of(in_season(_piece(panel, rail), 12.0).board("rail"))
    assert box[4] == pytest.approx(300 + 300 * C * 4)
    assert box[1] == pytest.approx(300 + 300 * C * 4 - 40 * (1 + C * 4))


def test_a_chain_of_carriers_adds_up():
    one = _held(board("a", plain(400, 100, 20), LYING))
    two = _held(board("b", plain(400, 100, 20), LYING.moved((0, 100, 0))), "a", (0.0, 100.0, 0.0))
    three = _held(board("c", plain(400, 100, 20), LYING.moved((0, 200, 0))), "b", (0.0, 200.0, 0.0))
    assert box_of(in_season(_piece(three, two, one), 12.0).board("c"))[4] == pytest.approx(300 * (1 + C * 4))


def test_a_board_along_the_change_of_its_carrier_keeps_its_length():
    panel = _held(board("panel", plain(400, 300, 20), LYING))
    moulding = Frame((0, 1, 0), (-1, 0, 0), (0, 0, 1), (20.0, 0.0, 20.0))
    strip = _held(board("strip", plain(300, 20, 20), moulding), "panel", (10.0, 0.0, 0.0))
    box = box_of(in_season(_piece(panel, strip), 12.0).board("strip"))
    assert (box[1], box[4]) == pytest.approx((0.0, 300.0))


def test_cuts_move_and_stretch_with_the_wood():
    factor = 1.01
    shape = plain(
        400, 300, 20,
        dado(100, 20, 6, (50, 150)),
        Cut("groove", Face.FAR, 0.0, 10.0, rectangle(0, -12, 400, -8)),
        Cut("tenon", Face.FOOT, 0.0, 30.0, rectangle(0, -20, 300, 0), (rectangle(100, -14, 200, -6),)),
    )  # fmt: skip
    cuts = stretched(shape, factor).cuts
    assert bounds(cuts[0].outline) == pytest.approx((100, 50.5, 120, 151.5))
    assert cuts[1].depth == pytest.approx(10.1)
    assert bounds(cuts[1].outline) == (0, -12, 400, -8)
    assert bounds(cuts[2].islands[0]) == pytest.approx((101, -14, 202, -6))
    assert cuts[2].depth == 30.0


def test_a_bore_keeps_its_size_and_moves():
    shape = plain(400, 300, 20, Cut("bore", Face.FACE, 0, 20, circle((100, 200), 5)))
    assert bounds(stretched(shape, 1.01).cuts[0].outline) == pytest.approx((95, 197, 105, 207))


def test_an_arc_keeps_its_ends_and_its_middle_on_the_stretched_curve():
    outline = plain(400, 300, 20).outline
    bowed = outline.corners[1]._replace(bulge=0.3)
    rounded = replace(outline, corners=(outline.corners[0], bowed, *outline.corners[2:]))
    shape = replace(plain(400, 300, 20), outline=rounded)
    # the bow stands 300 / 2 × 0.3 over the end, along the grain: it stays, while the end grows to 303
    assert bounds(stretched(shape, 1.01).outline) == pytest.approx((0, 0, 400 + 45, 303))


def test_joints_and_motions_move_with_their_boards():
    panel = _held(board("panel", plain(400, 300, 20), LYING))
    body = Body(Frame((1, 0, 0), (0, 0, 1), (0, -1, 0), (0.0, 300.0, 0.0)), rectangle(0, -15, 400, -5), 10.0)
    joint = Joint("groove:panel:x", "groove", "panel", "x", body=body)
    motion = Motion("m", ("panel",), "slide", (0.0, 300.0, 0.0), (0, -1, 0), 100.0)
    now = in_season(_piece(panel, joints=(joint,), motions=(motion,)), 12.0)
    assert now.joints[0].body.frame.at == pytest.approx((0, 303, 0))
    assert now.motions[0].point == pytest.approx((0, 303, 0))


def _leaning(offset=0.0):
    """A lid at 45° from its pin at the origin, resting on the upper edge of an upright at (y, z) = (200, 200)."""
    slope = math.sqrt(0.5)
    # u to the right, v up the slope, w out of the lid, up and to the front; the side it leans on grows in height
    frame = Frame((1, 0, 0), (0, slope, slope), (0, -slope, slope), (0.0, offset * slope, -offset * slope))
    stays = Stock("lid", "lid", "sheet", 20, "", 0.0, 500)
    contact = (0.0, 200.0 + offset * slope, 200.0 - offset * slope)
    lean = Lean((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), "post", contact, offset)
    lid = _held(board("lid", plain(400, 400, 20), frame, stays), lean=lean)
    post = board("post", plain(20, 200, 20), Frame((0, 1, 0), (0, 0, 1), (1, 0, 0), (0.0, contact[1], 0.0)))
    return lid, _held(post)


@pytest.mark.parametrize("offset", [0.0, 15.0])
def test_a_lid_whose_pin_turns_it_up_opens_by_what_its_support_swells(offset):
    lid, post = _leaning(offset)
    y, z = lid.fixing.lean.at[1:]
    now = in_season(_piece(lid, post), 12.0).board("lid")
    higher = z * (1 + C * 4)
    # the plane of contact stands off the pin by the offset: its angle is that of the contact, plus asin(offset / way)
    angles = [math.atan2(h, y) + math.asin(offset / math.hypot(h, y)) for h in (z, higher)]
    turned = math.degrees(math.atan2(now.frame.v[2], now.frame.v[1]))
    assert turned - 45.0 == pytest.approx(math.degrees(angles[1] - angles[0]), abs=1e-9)
    assert turned > 45.0


def test_a_lid_never_falls_closer_when_its_support_shrinks():
    lid, post = _leaning()
    assert in_season(_piece(lid, post), 6.0).board("lid").frame.v == pytest.approx(lid.frame.v)


def test_what_the_lid_carries_turns_with_it():
    lid, post = _leaning()
    slope = math.sqrt(0.5)
    cap = _held(board("cap", plain(400, 40, 20), lid.frame, PLY), "lid", (0.0, 200 * slope, 200 * slope))
    now = in_season(_piece(lid, post, cap), 12.0)
    assert now.board("cap").frame.v == pytest.approx(now.board("lid").frame.v)
    assert now.board("cap").frame.at == pytest.approx(now.board("lid").frame.at, abs=1e-9)


def test_boards_that_hold_each_other_are_refused():
    one = _held(board("a", plain(400, 100, 20), LYING), "b")
    two = _held(board("b", plain(400, 100, 20), LYING), "a")
    with pytest.raises(ValueError, match="a → b → a"):
        in_season(_piece(one, two), 12.0)


def test_a_carrier_that_is_not_there_is_named():
    with pytest.raises(ValueError, match="'nobody'"):
        in_season(_piece(_held(board("a", plain(400, 100, 20), LYING), "nobody")), 12.0)


def _with_groove(guest):
    """A drawer front with a groove for its bottom, 6 wide, from 10 to 16 above its lower edge."""
    groove = Cut("groove", Face.FACE, 0.0, 8.0, rectangle(0, 10, 400, 16))
    upright = Frame((1, 0, 0), (0, 0, 1), (0, -1, 0), (0.0, 0.0, 0.0))
    front = replace(board("front", plain(400, 150, 20, groove), upright), cut_ids=("groove:front:bottom",))
    joint = Joint("groove:front:bottom", "groove", "front", "bottom")
    return in_season(_piece(_held(front), _held(guest), joints=(joint,)), 12.0).board("front").shape.cuts[0].outline


def test_a_groove_keeps_the_width_that_another_boards_thickness_needs():
    _, y0, _, y1 = bounds(_with_groove(board("bottom", plain(400, 300, 6), LYING, PLY)))
    assert y1 - y0 == pytest.approx(6.0)
    assert (y0 + y1) / 2 == pytest.approx(13 * (1 + C * 4))


def test_a_socket_grows_with_the_width_of_what_stands_in_it():
    upright = Frame((0, 1, 0), (0, 0, 1), (1, 0, 0), (0.0, 0.0, 0.0))
    _, y0, _, y1 = bounds(_with_groove(board("bottom", plain(300, 6, 20), upright)))
    assert y1 - y0 == pytest.approx(6.0 * (1 + C * 4))


def test_a_mortise_in_an_edge_keeps_the_depth_that_a_tenon_needs():
    shape = plain(400, 65, 20, Cut("mortise", Face.NEAR, 0.0, 17.0, rectangle(30, -14, 80, -6)))
    assert stretched(shape, 1.01, (True,)).cuts[0].depth == 17.0
    assert stretched(shape, 1.01).cuts[0].depth == pytest.approx(17.17)
