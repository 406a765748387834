"""Drawers in all seasons. Coefficients: Wood Handbook FPL-GTR-190, Table 13-5 (cherry, tangential 0.00248)."""

import pytest

from shopdraw.build import build
from tests.check.desks import checked, design, lengthened, must_fix, of_code, with_board

CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
THIN = {"species": "cherry_black", "thickness": 12.0, "cut": "flat"}


def test_case_17_a_drawer_tight_in_a_dry_shop_sticks_in_summer():
    # boards 203.2 high, built at 7 %, 11 % in summer: 203.2 × 0.00248 × 4 = 2.0
    piece = design(
        stock={"primary": CHERRY, "drawer": THIN},
        climate={"build": 7.0, "dry": 6.0, "wet": 11.0},
        opening={"bank": {"divide": {"keys": ("1", "2"), "rule": "given", "sizes": (204.2,)}}},
        drawer={"top_clearance": 1.0, "reveal": 1.0},
    )
    found = of_code(checked(piece), "drawer-sticks")
    sides = [finding for finding in found if finding.where == ("drawer.1.side-left", "bank.1")]
    grown = 203.2 * 0.00248 * 4
    assert grown == pytest.approx(2.0, abs=0.02)
    assert sides[0].value == pytest.approx(1.0 - grown)
    assert sides[0].severity.value == "must-fix"
    assert "1 mm at build" in sides[0].message
    assert sides[0].right[0] == "drawer.1.top_clearance"


def test_case_17_the_gap_that_is_given_by_default_holds_in_each_season():
    found = checked(design())
    assert of_code(found, "drawer-sticks") == []
    notes = of_code(found, "drawer-gap")
    assert [finding.where[1] for finding in notes] == ["bank.1", "bank.2", "bank.3", "bank.4"]
    assert all(finding.value >= 0.8 - 1e-9 for finding in notes)


def test_case_17_the_gap_over_a_drawer_grows_with_its_height():
    notes = of_code(checked(design(drawer={"top_clearance": None})), "drawer-gap")
    needs = [float(finding.message.split(" is ")[1].split(" mm at build")[0]) for finding in notes]
    assert needs == sorted(needs)
    assert needs[0] < needs[-1]


def test_case_18_what_the_case_loses_is_kept_behind_drawers_and_supports():
    piece = design(
        case={"depth": 457.2},
        stock={"primary": CHERRY},
        climate={"build": 11.0, "dry": 6.0, "wet": 11.0},
    )
    assembly = build(piece)
    loses = 457.2 * 0.00248 * 5
    assert loses == pytest.approx(5.7, abs=0.05)
    back = 457.2 - 7.0
    for name in ("support.left", "drawer.1.side-left"):
        board = assembly.board(name)
        rear = max(board.frame.point((u, 0.0, 0.0))[1] for u in (0.0, board.length))
        assert rear <= back - loses
    note = of_code(checked(piece, assembly), "behind-drawers")[0]
    assert note.value == pytest.approx(2.0)
    assert "2 mm before the back in the driest season" in note.message


def test_case_18_a_bar_cut_to_the_full_depth_stands_proud_years_later():
    piece = design(
        case={"depth": 457.2},
        stock={"primary": CHERRY},
        climate={"build": 11.0, "dry": 6.0, "wet": 11.0},
    )
    assembly = build(piece)
    spoilt = with_board(assembly, lengthened(assembly.board("support.left"), 457.2 * 0.00248 * 5 + 2.0))
    found = of_code(checked(piece, spoilt), "stands-proud")
    assert [finding.where[0] for finding in found] == ["support.left"]
    assert found[0].value == pytest.approx(-457.2 * 0.00248 * 5)


def test_case_17_behind_an_overlay_front_it_is_the_box_that_must_clear():
    piece = design(
        stock={"primary": CHERRY, "drawer": THIN},
        climate={"build": 7.0, "dry": 6.0, "wet": 11.0},
        opening={"bank": {"divide": {"keys": ("1", "2"), "rule": "given", "sizes": (204.2,)}}},
        drawer={"front": "overlay", "entry": 6.0, "top_clearance": 1.0},
    )
    found = of_code(checked(piece), "drawer-sticks")
    grown = 203.2 * 0.00248 * 4
    assert found[0].where == ("drawer.1.box-front", "bank.1")
    assert found[0].value == pytest.approx(1.0 - grown)
    assert found[0].right[0] == "drawer.1.top_clearance"
    # at build, and at both ends of the range
    dry = 1.0 + 203.2 * 0.00248 * 1
    assert f"1 mm at build, {dry:.1f} mm in the driest and {1.0 - grown:.2f} mm in the wettest" in found[0].message


def test_case_17_sides_dovetailed_to_a_front_clear_what_the_front_grows():
    # poplar sides dovetailed to a cherry front are held to its size: 0.00248, not their own 0.00289
    assert build(design()).board("drawer.2.side-left").stock.coefficient == pytest.approx(0.00289)
    piece = design(
        stock={"primary": CHERRY}, drawer={"front": "lipped", "front_joint": "dovetail", "top_clearance": 3.0}
    )
    note = next(one for one in of_code(checked(piece), "drawer-gap") if one.where[1] == "bank.2")
    height = build(piece).board("drawer.2.side-left").width
    assert note.value == pytest.approx(3.0 - height * 0.00248 * 4)


def test_lips_that_meet_must_be_fixed():
    # frames 20 high between openings, lips of 10 on each side of them: nothing is left
    found = of_code(checked(design(drawer={"front": "lipped", "lip": 10.0})), "lips-meet")
    assert len(found) == 3
    assert "lips-meet" in must_fix(found)
    assert found[0].right[0] == "drawer.lip"


def test_lips_of_eight_over_a_rail_of_twenty_keep_clear():
    assert of_code(checked(design(drawer={"front": "lipped", "lip": 8.0})), "lips-meet") == []


def test_case_52_a_wide_drawer_racks():
    # box 863.6 wide and 400 long: no movement, so the usable depth is 409 less rabbet 7 and 2
    still = {"species": "cherry_black", "thickness": 20.0, "coefficient": 0.0}
    piece = design(case={"width": 863.6 + 2.0 + 40.0, "depth": 409.0}, stock={"primary": still})
    found = of_code(checked(piece), "drawer-wide")
    second = next(finding for finding in found if finding.where[0] == "drawer.2.side-left")
    assert second.value == pytest.approx(863.6 / 400.0)
    assert "ratio 2.16" in second.message
    assert "1 mm clearance a side" in second.message
    assert second.severity.value == "caution"


def test_a_drawer_as_wide_as_long_does_not_rack():
    assert of_code(checked(design(case={"width": 520.0})), "drawer-wide") == []
