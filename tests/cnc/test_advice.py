"""Findings about cutters name the pocket, both numbers and what would do."""

import pytest

from shopdraw.cnc.cutter import Cutter, default_cutters, largest_for
from shopdraw.cnc.part import router_part
from shopdraw.piece.design import CaseTable, Design
from shopdraw.shape.path import rectangle
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.finding import Severity
from shopdraw.wood.part import Part
from tests.wood.pieces import LYING, board, plain

DESIGN = Design(case=CaseTable(width=900, height=1000, depth=480))
SIX = (Cutter("6 mm", "straight", 6.0, 22.0),)
QUARTER = (Cutter("1/4 in", "straight", 6.35),)


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
