"""Screws against what they go through, and the weakest section of shaped feet: each rule with its planted fault."""

import pytest

from shopdraw.build import build
from shopdraw.build.screw import usual_length
from shopdraw.check.screw import screw_findings
from shopdraw.check.short_grain import short_grain_findings
from shopdraw.check.subject import subject_of
from shopdraw.piece.design import Design
from shopdraw.wood.finding import Severity


def found(rule, design):
    return tuple(rule(subject_of(design, build(design))))


def chest(**tables):
    case = {"width": 900.0, "height": 1000.0, "depth": 480.0}
    return Design.model_validate({"piece": {"kind": "chest"}, "case": case, **tables})


@pytest.mark.parametrize(
    ("through", "room", "length"),
    [
        # 20 through asks for 40, of 20 and 20 less 2 for the point is 38: 35
        (20.0, 20.0, 35.0),
        (20.0, 60.0, 40.0),
        (6.0, 100.0, 20.0),
        (45.0, 20.0, 60.0),
        (2.0, 18.0, 16.0),
    ],
)
def test_a_screw_is_the_shortest_that_bites_well_and_does_not_come_out(through, room, length):
    assert usual_length(through, room, inch=False) == length
    assert usual_length(through, room, inch=True) <= through + room - 2.0


def test_screws_that_the_program_chooses_are_never_found_fault_with():
    assert found(screw_findings, chest()) == ()


@pytest.mark.parametrize(
    ("length", "code", "severity"),
    [(45.0, "screw-long", Severity.MUST_FIX), (39.0, "screw-long", Severity.CAUTION),
     (25.0, "screw-short", Severity.CAUTION), (20.0, "screw-short", Severity.MUST_FIX), (35.0, None, None)],
)  # fmt: skip
def test_a_screw_at_hand_is_told_when_it_comes_out_or_hardly_bites(length, code, severity):
    # a side of 20 into a return of 20: 38 at most, 12 of bite at least
    told = found(screw_findings, chest(fitting={"screw:plinth.left": {"length": length}}))
    assert [(one.code, one.severity) for one in told] == ([(code, severity)] if code else [])
    if code:
        assert told[0].right == ("fitting.screw:plinth.left.length", "35 mm")


def test_a_fitting_that_is_not_there_is_a_caution():
    (told,) = found(screw_findings, chest(fitting={"screw:nothing": {"length": 20.0}}))
    assert told.code == "no-such-fitting"


def test_a_foot_shorter_along_the_grain_than_high_is_short_grain():
    base = {"feet": "own", "foot": 100.0, "foot_path": (-75.0, 30.0, 0.0, 0.0, 45.0, 0.0)}
    told = found(short_grain_findings, chest(base=base))
    assert {one.code for one in told} == {"short-grain"}
    assert {one.where[0] for one in told} == {"plinth.front", "plinth.left", "plinth.right"}
    assert told[0].value == pytest.approx(25.0, abs=0.1)
    assert told[0].limit == pytest.approx(30.0, abs=0.1)


def test_the_weakest_section_of_sound_feet_is_reported():
    (told,) = found(short_grain_findings, chest(base={"feet": "hollow"}))
    assert (told.code, told.severity) == ("weakest-section", Severity.NOTE)
    assert found(short_grain_findings, chest()) == ()
