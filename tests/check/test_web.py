"""What wood is left, and stock that still carries its name."""

from dataclasses import replace

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.shape.path import bounds, rectangle
from shopdraw.wood.board import Cut, Face
from tests.check.desks import checked, design, must_fix, of_code, with_board


@pytest.mark.parametrize(
    ("depth", "severity"),
    [(20.0 / 3, None), (6.7, "caution"), (10.0, "caution"), (10.5, "must-fix"), (12.0, "must-fix")],
)
def test_a_dado_over_a_third_is_a_caution_and_over_a_half_must_be_fixed(depth, severity):
    # the third is a school's rule; half of the stock must stay under a load (common practice)
    found = of_code(checked(design(case={"dado_depth": depth, "top_joint": "dovetail"})), "dado-deep")
    on_sides = [finding for finding in found if finding.where[1] == "side.left"]
    assert {finding.severity.value for finding in on_sides} == ({severity} if severity else set())
    for finding in on_sides:
        assert finding.value == pytest.approx(depth)
        assert finding.right == ("case.dado_depth", "6.67 mm")


def _grooved_behind(outline, depth):
    """Findings of cuts back to back on a desk whose left side is grooved from outside, too."""
    piece = design()
    assembly = build(piece)
    side = assembly.board("side.left")
    spoilt = replace(
        side,
        shape=replace(side.shape, cuts=(*side.shape.cuts, Cut("groove", Face.BACK, 0.0, depth, outline))),
        cut_ids=(*side.cut_ids, "own:groove"),
        cut_for=(*side.cut_for, ""),
    )
    return of_code(checked(piece, with_board(assembly, spoilt)), "cuts-back-to-back")


def _bottoms_dado():
    side = build(design()).board("side.left")
    dado = next(cut for cut, name in zip(side.shape.cuts, side.cut_ids, strict=True) if name.endswith(":bottom"))
    return bounds(dado.outline)


@pytest.mark.parametrize(("depth", "severity"), [(2.0, "caution"), (6.0, "must-fix")])
def test_two_cuts_back_to_back_count_together(depth, severity):
    low, _, high, _ = _bottoms_dado()
    found = _grooved_behind(rectangle(low, 50.0, high, 200.0), depth)
    assert len(found) == 1
    # 6.67 + 2 of 20: over a third; 6.67 + 6: over a half
    assert found[0].value == pytest.approx(20.0 / 3 + depth)
    assert found[0].severity.value == severity


@pytest.mark.parametrize(("depth", "severity"), [(6.6, None), (7.0, "caution"), (9.0, "caution"), (9.5, "must-fix")])
def test_where_two_cuts_cross_back_to_back_a_third_is_left(depth, severity):
    low, _, high, _ = _bottoms_dado()
    # 20 less 6.67: a third, 6.67, is left up to a depth of 6.67, and 4 mm up to 9.33
    found = _grooved_behind(rectangle(low - 20.0, 100.0, high + 40.0, 110.0), depth)
    assert [one.severity.value for one in found] == ([severity] if severity else [])


def test_a_through_dado_right_under_the_slant_leaves_a_feather_edge():
    # on the slant, writing surface and slant start at one height: the dado's upper edge runs into the slanted edge
    piece = design(slant={"seat": "on"}, case={"dado": "through"})
    assert any("slanted edge" in finding.message for finding in of_code(checked(piece), "web-thin"))


def test_a_stopped_dado_keeps_wood_under_a_rabbeted_lid():
    piece = design(slant={"seat": "rabbeted"})
    assert not [finding for finding in of_code(checked(piece), "web-thin") if "slanted edge" in finding.message]


def test_the_rear_half_pin_leaves_wood_behind_the_backs_rabbet():
    dovetail = next(joint for joint in build(design()).joints if joint.kind == "dovetail")
    # back 6 + 1 let in; 3 mm stay at the tail's root
    assert dict(dovetail.sizes)["half-pin"] >= 7.0 + 3.0
    assert of_code(checked(design()), "pin-narrow") == []


def test_more_tails_than_fit_are_refused_with_the_number_that_does():
    with pytest.raises(CannotBuild, match="expected at most"):
        build(design(case={"tails": 20}))


def test_a_rabbet_that_leaves_no_lip_must_be_fixed():
    found = of_code(checked(design(lid={"rabbet": 17.0})), "lip-thin")
    assert found[0].value == pytest.approx(3.0)
    assert "lip-thin" in must_fix(found)


def test_a_shelf_notched_through_for_its_supports_is_found():
    # a lid of 9 over a shelf of 20: 20 - 9 + 1 = 12 are cut away over each bar and 8 stay
    lid = {"lid": {"species": "cherry_black", "thickness": 8.0}}
    found = of_code(checked(design(stock=lid, use={"lid": "lid"})), "notch-deep")
    assert {finding.where[1] for finding in found} == {"shelf.writing"}
    assert found[0].value < 8.0


@pytest.mark.parametrize(
    ("stock", "flagged"),
    [
        ({"thickness": 19.05, "nominal": "3/4"}, True),
        ({"thickness": 17.856, "nominal": "3/4"}, False),
        ({"thickness": 6.0, "nominal": "6 mm"}, True),
        ({"thickness": 6.0, "nominal": "6 mm", "measured": True}, False),
        ({"thickness": 5.9, "nominal": "6 mm", "measured": False}, True),
        ({"thickness": 6.0, "nominal": ""}, False),
    ],
)
def test_case_07_a_stock_that_still_carries_its_nominal_size_is_flagged(stock, flagged):
    sheet = {"species": "plywood_birch", "kind": "sheet", **stock}
    found = of_code(checked(design(stock={"sheet": sheet})), "stock-unmeasured")
    assert bool(found) is flagged
    if found:
        assert "stock.sheet.thickness" in found[0].message
