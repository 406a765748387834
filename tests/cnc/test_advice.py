"""Findings about cutters name the pocket, both numbers and what would do."""

import math

import pytest

from shopdraw.cnc.cutter import Cutter, default_cutters, largest_for
from shopdraw.cnc.part import router_part
from shopdraw.piece.design import CaseTable, Design
from shopdraw.shape.path import Corner, Path, circle, rectangle
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.finding import Severity
from shopdraw.wood.part import Part
from tests.wood.pieces import LYING, board, plain

DESIGN = Design(case=CaseTable(width=900, height=1000, depth=480))
SIX = (Cutter("6 mm", "straight", 6.0, 22.0),)
QUARTER = (Cutter("1/4 in", "straight", 6.35),)

ROUNDED_NOTCH = Path((Corner(0, 0), Corner(40, 0), Corner(40, 17, 0.41421356237), Corner(37, 20), Corner(0, 20)))


def codes(*cuts: Cut, cutters: tuple[Cutter, ...] = SIX, thickness: float = 20.0) -> dict[str, tuple[Severity, object]]:
    one = board("b", plain(400.0, 100.0, thickness, *cuts), LYING)
    made = router_part(Part("b", (one,)), DESIGN, cutters=cutters)
    return {finding.code: (finding.severity, finding.value) for finding in made.findings}


def groove(width: float, depth: float = 6.0, at: float = 40.0) -> Cut:
    return Cut("groove", Face.FACE, 0.0, depth, rectangle(0, at, 400, at + width))


def test_case_25_groove_narrower_than_the_cutter_must_be_fixed() -> None:
    found = codes(groove(5.2))
    assert found["groove-narrower-than-cutter"] == (Severity.MUST_FIX, pytest.approx(5.2))


def test_case_25_groove_of_the_cutters_size_is_one_pass() -> None:
    assert codes(groove(6.35), cutters=QUARTER)["groove-one-pass"][0] is Severity.CAUTION
    assert codes(groove(6.6), cutters=QUARTER) == {}


@pytest.mark.parametrize(
    ("cut", "code"),
    [
        (groove(10.0, depth=23.0), "pocket-deeper-than-cutter"),
        (groove(10.0, depth=24.5), "pocket-deep-for-cutter"),
        (groove(10.0, depth=27.5), "web-thin"),
        (groove(10.0, at=2.0), "sliver"),
    ],
)
def test_what_a_cutter_can_not_do_well_is_a_caution(cut: Cut, code: str) -> None:
    assert code in codes(cut, thickness=30.0)


def test_rabbet_open_to_one_side_takes_any_cutter() -> None:
    rabbet = Cut("rabbet", Face.FACE, 0.0, 6.0, rectangle(0, 0, 400, 4))
    assert codes(rabbet) == {}


@pytest.mark.parametrize(
    ("width", "radius", "inch", "named"),
    [
        (20.0, None, False, "12 mm"), (20.0, 3.0, False, "6 mm"), (5.9, None, False, "3 mm"), (2.9, None, False, None),
        (20.0, 3.175, True, "1/4 in"), (12.7, None, True, "1/2 in"),
    ],
)  # fmt: skip
def test_largest_cutter_that_fits(width: float, radius: float | None, inch: bool, named: str | None) -> None:
    cutter = largest_for(width, default_cutters(inch=inch), radius)
    assert (cutter.id if cutter else None) == named


def test_joints_own_radius_is_checked_against_the_shops_cutters() -> None:
    """A 3 mm corner in an outline, and a shop whose thinnest cutter is 12 mm."""
    corner = Cut("notch", Face.FACE, 0.0, 20.0, ROUNDED_NOTCH)
    wide = (Cutter("12 mm", "straight", 12.0),)
    assert "corner-tighter-than-cutter" in codes(corner, cutters=wide)
    assert "corner-tighter-than-cutter" not in codes(corner, cutters=SIX)


@pytest.mark.parametrize(("length", "told"), [(20.4, True), (20.5, False)])
def test_outline_needs_the_stock_and_half_a_millimetre(length: float, told: bool) -> None:
    assert ("outline-deeper-than-cutter" in codes(cutters=(Cutter("6 mm", "straight", 6.0, length),))) is told


def test_hole_without_a_drill_is_milled_and_told() -> None:
    hole = Cut("bore", Face.FACE, 0.0, 12.0, circle((50, 50), 2.5))
    drills = (*SIX, Cutter("d4", "drill", 4.0), Cutter("thin", "straight", 3.0))
    assert codes(hole, cutters=drills)["drill-missing"][1] == pytest.approx(5.0)
    assert "drill-missing" not in codes(hole, cutters=(*drills, Cutter("d5", "drill", 5.0)))
    one = board("b", plain(400.0, 100.0, 20.0, hole), LYING)
    layers = [o.layer for o in router_part(Part("b", (one,)), DESIGN, cutters=drills).settings[0].flat.operations]
    assert layers == ["SINK_1200H"]


def test_hole_through_goes_into_the_bed() -> None:
    assert codes(Cut("bore", Face.FACE, 0.0, 20.0, circle((50, 50), 4)))["hole-into-bed"][0] is Severity.NOTE


def test_shop_without_a_straight_cutter_can_not_cut_a_part_out() -> None:
    found = codes(cutters=(Cutter("90°", "vee", 12.0),))
    assert found["no-straight-cutter"][0] is Severity.MUST_FIX


def test_closed_pocket_wants_a_cutter_that_may_plunge() -> None:
    pocket = Cut("mortise", Face.FACE, 0.0, 6.0, rectangle(50, 40, 100, 60))
    job = (Cutter("side", "straight", 12.0, plunge=False), Cutter("down", "straight", 6.0))
    one = board("b", plain(400.0, 100.0, 20.0, pocket), LYING)
    layers = router_part(Part("b", (one,)), DESIGN, cutters=job).settings[0].layers
    assert {layer.name: layer.cutter for layer in layers} == {"SINK_600H": "down", "THROUGH_ALL": "side"}


def test_relief_wood_is_named_with_its_volume() -> None:
    relief = Cut("relief", Face.FACE, 0.0, 6.0, circle((50, 50), 3.0))
    severity, value = codes(relief)["corner-relief"]
    assert severity is Severity.NOTE
    assert value == pytest.approx(math.pi * 9 * 6)
