"""Movement with the seasons. Coefficients: Wood Handbook FPL-GTR-190, Table 13-5 (cherry, tangential 0.00248)."""

from dataclasses import replace

import pytest

from shopdraw.build import build
from tests.check.desks import checked, design, must_fix, of_code

CHERRY = 0.00248
FLAT = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}


def _with_joint(assembly, joint_id, **changes):
    joints = tuple(replace(one, **changes) if one.id == joint_id else one for one in assembly.joints)
    assert joints != assembly.joints
    return replace(assembly, joints=joints)


def test_case_10_a_runner_glued_along_a_side_must_be_fixed():
    # 457.2 deep, 5 % between the seasons, built at the wet end
    piece = design(
        case={"depth": 457.2},
        stock={"primary": FLAT, "secondary": FLAT},
        climate={"build": 11.0, "dry": 6.0, "wet": 11.0},
    )
    assembly = build(piece)
    runner = next(joint for joint in assembly.joints if joint.id == "dado:side.left:frame.1.runner-left")
    assert of_code(checked(piece, assembly), "cross-grain-fixed") == []
    spoilt = _with_joint(assembly, runner.id, glued=True, floats=False)
    found = of_code(checked(piece, spoilt), "cross-grain-fixed")
    assert [finding.where[0] for finding in found] == [runner.id]
    assert pytest.approx(5.7, abs=0.05) == 457.2 * CHERRY * 5
    assert "moves 5.7 mm over its 457.2 mm" in found[0].message
    # 5.67 + 0.5
    assert "6.17 mm free behind" in found[0].message
    assert "cross-grain-fixed" in must_fix(found)


def test_case_10_seventy_five_millimetres_of_glue_are_allowed():
    assembly = build(design())
    kickers = [joint for joint in assembly.joints if joint.kind == "butt" and joint.guest.startswith("kicker")]
    assert kickers
    assert all(dict(joint.sizes)["glue"] <= 75.0 for joint in kickers)
    assert of_code(checked(design(), assembly), "cross-grain-fixed") == []
    spoilt = _with_joint(assembly, kickers[0].id, sizes=())
    assert len(of_code(checked(design(), spoilt), "cross-grain-fixed")) == 1


@pytest.mark.parametrize("fixing", ["front", "front-and-rear"])
def test_a_frame_fixed_in_either_way_leaves_the_sides_room(fixing):
    assert of_code(checked(design(frame={"fixing": fixing})), "frame-locked") == []


def test_case_10_rear_tenons_glued_as_well_lock_the_frame():
    piece = design(frame={"fixing": "front-and-rear"})
    spoilt = _with_joint(build(piece), "mortise:frame.1.rear:frame.1.runner-left", glued=True, floats=False)
    found = of_code(checked(piece, spoilt), "frame-locked")
    assert [finding.where[1] for finding in found] == ["frame.1.runner-left"]
    assert found[0].value == 0.0


def test_a_gap_at_the_rear_shoulder_too_small_for_the_driest_season_locks_the_frame():
    piece = design(frame={"fixing": "front-and-rear"})
    spoilt = _with_joint(build(piece), "mortise:frame.1.rear:frame.1.runner-left", gap=1.0)
    found = of_code(checked(piece, spoilt), "frame-locked")
    # sides 480 deep, back let in 7, rear glue line 25 before it: 448 between the lines of glue; 8 to 6 %
    assert found[0].limit == pytest.approx(448.0 * CHERRY * 2 + 0.5)


def test_a_lid_tight_at_the_top_is_told_what_it_needs():
    # the worked lid: rabbeted o 8, flat-sawn cherry, 8 % at build, 12 % wettest: net +2.18, so 3.2 are needed
    piece = design(lid={"top_clearance": 2.5, "rabbet": 8.0}, stock={"primary": FLAT})
    found = of_code(checked(piece), "lid-top-tight")
    assert found[0].severity.value == "caution"
    assert found[0].limit == pytest.approx(3.18, abs=0.02)
    tighter = of_code(
        checked(design(lid={"top_clearance": 2.0, "rabbet": 8.0}, stock={"primary": FLAT})), "lid-top-tight"
    )
    assert tighter[0].severity.value == "must-fix"


def test_a_lip_that_covers_too_little_in_the_driest_season_is_told():
    piece = design(lid={"top_clearance": 3.5, "rabbet": 8.0, "lip": 7.0}, stock={"primary": FLAT})
    found = of_code(checked(piece), "lip-cover")
    # 7 - 3.5 - 1.09
    assert found[0].value == pytest.approx(2.41, abs=0.02)


def test_caps_without_room_to_grow_are_told():
    piece = design(
        slant={"seat": "flush"}, lid={"ends": "square", "cap": 60.0, "clearance": 0.5}, stock={"primary": FLAT}
    )
    found = of_code(checked(piece), "lid-ends-tight")
    # each of two caps 60 wide grows 60 × 0.00248 × 4 = 0.595; half of the two to each side
    assert found[0].limit == pytest.approx(60 * CHERRY * 4 + 0.5)
    assert "lid-ends-tight" in must_fix(found)


def test_a_corner_of_two_stocks_that_move_differently_is_a_caution():
    stock = {"primary": FLAT, "beech": {"species": "beech_american", "thickness": 20.0, "cut": "flat"}}
    found = of_code(checked(design(stock=stock, use={"top": "beech"})), "corner-stocks-differ")
    assert {finding.where[1] for finding in found} == {"top"}
    assert of_code(checked(design(stock={"primary": FLAT})), "corner-stocks-differ") == []


def test_moisture_outside_the_coefficients_range_is_a_caution():
    found = of_code(checked(design(climate={"build": 8.0, "dry": 4.0, "wet": 15.0})), "moisture-range")
    assert [(finding.where[0], finding.limit) for finding in found] == [("climate.dry", 6.0), ("climate.wet", 14.0)]
    assert of_code(checked(design()), "moisture-range") == []
