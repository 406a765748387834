"""Lid, drawers and supports on their way, and what stands before the pin."""

from dataclasses import replace

import pytest

from shopdraw.build import build
from shopdraw.wood.assembly import Motion
from tests.check.desks import checked, design, must_fix, of_code, with_board

PIECE = design()


def _with_motion(assembly, motion: Motion):
    return replace(assembly, motions=tuple(motion if one.id == motion.id else one for one in assembly.motions))


@pytest.mark.parametrize("seat", ["on", "rabbeted"])
def test_a_pin_five_millimetres_back_lets_the_lid_run_into_the_sides(seat):
    piece = design(slant={"seat": seat})
    assembly = build(piece)
    lid = next(motion for motion in assembly.motions if motion.id == "lid")
    back = replace(lid, point=(lid.point[0], lid.point[1] + 5.0, lid.point[2]))
    found = of_code(checked(piece, _with_motion(assembly, back)), "motion-blocked")
    assert {"side.left", "side.right"} <= {finding.where[1] for finding in found}


def test_a_pin_typed_five_millimetres_back_must_be_fixed_and_the_right_place_is_told():
    piece = design(slant={"pin_behind_front": 5.0})
    found = of_code(checked(piece), "pin-behind-overlap")
    assert len(found) == 1
    assert found[0].value == pytest.approx(5.0)
    assert found[0].limit == pytest.approx(-0.25)
    assert found[0].right == ("slant.pin_behind_front", "-0.250 mm")


def test_a_drawer_held_by_a_rail_is_found():
    assembly = build(PIECE)
    rail = assembly.board("rail.top")
    spoilt = with_board(assembly, replace(rail, frame=rail.frame.moved((0.0, -40.0, -30.0))))
    found = of_code(checked(PIECE, spoilt), "motion-blocked")
    assert ("drawer.1.front", "rail.top", "drawer.1") in [finding.where for finding in found]
    assert "drawer 1, front runs into rail under the writing shelf as built when drawn" in found[0].message


def test_a_lip_under_the_open_lid_must_end_a_millimetre_below_it():
    # lid 20, lip 8: the rail over a lipped drawer is 29 and what the front grows; 27 is too little
    piece = design(drawer={"front": "lipped", "lip": 8.0}, case={"top_rail": 27.0})
    found = of_code(checked(piece), "fouls-open-lid")
    assert [finding.where[0] for finding in found] == ["drawer.1.front"]
    assert found[0].limit == pytest.approx(740.0 - 20.0 - 1.0)
    assert found[0].value == pytest.approx(740.0 - 27.0 + 8.0)
    assert found[0].right == ("case.top_rail", "29.00 mm")


def test_the_rail_over_a_lipped_drawer_follows_when_none_is_given():
    assert "fouls-open-lid" not in must_fix(checked(design(drawer={"front": "lipped", "lip": 8.0})))


def test_a_pair_that_blocks_is_told_once_though_it_does_so_in_each_season():
    assembly = build(PIECE)
    lid = next(motion for motion in assembly.motions if motion.id == "lid")
    back = replace(lid, point=(lid.point[0], lid.point[1] + 5.0, lid.point[2]))
    found = of_code(checked(PIECE, _with_motion(assembly, back)), "motion-blocked")
    pairs = [finding.where for finding in found]
    assert len(pairs) == len(set(pairs))
