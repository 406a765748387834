"""Breadboard caps: blanks, shoulders, tongues, glue, slots and what is cut short; each number done by hand."""

import math

import pytest

from shopdraw.build import CannotBuild
from shopdraw.build.lid_size import end_clearance
from shopdraw.build.plan import plan_desk
from shopdraw.shape.path import bounds
from tests.build.judging import sound
from tests.check.desks import design

# Wood Handbook (2010), Table 13-5: black cherry, tangential 0.00248; built at 8 %, 6 to 12 % through the year
C = 0.00248
FLAT = {"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}}
CLEAR = {"clearance": 1.2, "cap": 60.0}


def _made(**lid):
    return sound(design(stock=FLAT, lid={**CLEAR, **lid}))


def test_square_caps_the_blank_is_the_lid_less_two_caps_and_two_tongues():
    piece = _made(ends="square", tongue=25.0)
    lid = piece.board("lid")
    assert lid.length == pytest.approx(piece.slant.lid_width_mm - 2 * 60.0 + 2 * 25.0)
    assert lid.between_shoulders == pytest.approx(piece.slant.lid_width_mm - 120.0)


def test_mitred_caps_the_blank_is_the_whole_lid():
    piece = _made(ends="mitred")
    lid, cap = piece.board("lid"), piece.board("lid.cap-left")
    assert lid.length == pytest.approx(piece.slant.lid_width_mm)
    # the shoulder turns out at 45° a cap's width short of the free edge, to the corner
    corners = {(round(c.x, 3), round(c.y, 3)) for c in lid.shape.outline.corners}
    wide, high = lid.length, lid.width
    assert {(0.0, round(high, 3)), (60.0, round(high - 60.0, 3)), (round(wide, 3), round(high, 3))} <= corners
    edges = [math.dist((a.x, a.y), (b.x, b.y)) for a, b in cap.shape.outline.pairs()]
    assert any(length == pytest.approx(60.0 * math.sqrt(2)) for length in edges)


def test_the_tongue_is_a_third_and_its_groove_a_bit_deeper():
    piece = _made(ends="mitred", groove_room=2.0)
    joint = next(j for j in piece.joints if j.id == "groove:lid.cap-left:lid")
    sizes = dict(joint.sizes)
    assert sizes["width"] == pytest.approx(20.0 / 3 + 0.1)
    assert sizes["depth"] == pytest.approx(30.0 + 2.0)
    assert (joint.glued, joint.floats, joint.relief) == (False, True, 2.0)


def test_a_tongue_to_a_stated_face():
    piece = _made(ends="square", tongue_below=5.0)
    cap = piece.board("lid.cap-left")
    groove = next(cut for cut in cap.shape.cuts if cut.kind == "groove")
    _, low, _, high = bounds(groove.outline)
    assert (high, low) == pytest.approx((-5.0 + 0.05, -5.0 - 20.0 / 3 - 0.05))


@pytest.mark.parametrize(
    ("lid", "share"), [({"ends": "mitred"}, "mitre"), ({"ends": "square", "glue": "middle"}, "middle")]
)
def test_a_cap_is_cut_short_at_the_hinge_edge_by_what_the_panel_loses_to_its_glue(lid, share):
    piece = _made(**lid)
    high = piece.board("lid").width
    glue = high - 30.0 if share == "mitre" else high / 2
    short = high - piece.board("lid.cap-left").length
    assert short == pytest.approx(glue * C * 2.0 + 0.5)


def test_a_slot_is_the_peg_and_what_the_panel_moves_and_half_a_millimetre_at_each_end():
    piece = _made(ends="mitred", peg=8.0, pegs=3)
    lid = piece.board("lid")
    slots = [
        bounds(cut.outline)
        for cut, name in zip(lid.shape.cuts, lid.cut_ids, strict=True)
        if name == "peg:lid:peg.left.1"
    ]
    (_, low, _, high) = slots[0]
    away = lid.width - 60.0 - 30.0
    assert high - low == pytest.approx(8.0 + away * C * 2.0 + away * C * 4.0 + 2 * 0.5)
    # the glue lies above: when the panel dries it draws up past its peg, which so stands lower in the slot
    assert 30.0 - low - 4.0 == pytest.approx(away * C * 2.0 + 0.5)


def test_a_cap_wider_than_a_third_of_the_lid_isnt_mitred():
    with pytest.raises(CannotBuild, match=r"lid\.cap"):
        _made(ends="mitred", cap=150.0)


def test_a_tongue_needs_wood_over_it():
    with pytest.raises(CannotBuild, match=r"lid\.tongue_below"):
        _made(ends="square", tongue_below=2.0)


@pytest.mark.parametrize(("cap", "clear"), [(40.0, 1.0), (60.0, 1.1), (100.0, 1.5)])
def test_a_lids_ends_have_what_its_caps_gain_and_half_a_millimetre(cap, clear):
    # cherry flat-sawn, 8 to 12 %: 60 · 0.00248 · 4 = 0.595, and 0.5: 1.1; 100: 0.99 and 0.5: 1.5; never under 1
    piece = design(stock=FLAT, lid={"ends": "square", "cap": cap})
    assert end_clearance(plan_desk(piece)) == pytest.approx(clear)
    assert end_clearance(plan_desk(design(stock=FLAT))) == 1.0
