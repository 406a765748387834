"""Tenons' proportions: a third of the thickness, long enough, and wood left behind their mortises; worked by hand."""

import pytest

from shopdraw.build import build
from shopdraw.check.subject import subject_of
from shopdraw.check.tenon import tenon_findings
from shopdraw.piece.design import Design
from tests.check.desks import checked, design

STOCK = {"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}}


def _found(piece):
    return {one.code: one for one in tenon_findings(subject_of(piece, build(piece)))}


def _bookcase(**tables):
    case = {"width": 900.0, "height": 1500.0, "depth": 330.0}
    return Design.model_validate({"piece": {"kind": "bookcase"}, "case": case, "stock": STOCK, **tables})


@pytest.mark.parametrize("fixing", ["front", "front-and-rear"])
def test_frames_of_usual_sizes_have_tenons_in_proportion(fixing):
    assert _found(design(stock=STOCK, frame={"fixing": fixing})) == {}
    assert _found(_bookcase(face={})) == {}
    assert _found(_bookcase(back={"kind": "frame"})) == {}


@pytest.mark.parametrize(
    ("panel", "code", "limit"), [(4.5, "tenon-thin", 5.0), (6.0, None, None), (10.5, "tenon-thick", 10.0)]
)
def test_a_tenon_beside_a_dust_panel_is_as_thick_as_that(panel, code, limit):
    # frames of 20: a quarter is 5, a half 10
    sheet = {"species": "plywood_birch", "kind": "sheet", "thickness": panel}
    second = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
    piece = design(
        stock={**STOCK, "secondary": second, "dust": sheet}, use={"frame.panel": "dust"}, frame={"dust_panels": True}
    )
    found = _found(piece)
    shares = {name: one for name, one in found.items() if name in ("tenon-thin", "tenon-thick")}
    assert set(shares) == ({code} if code else set())
    if code:
        assert (shares[code].value, shares[code].limit) == (pytest.approx(panel), pytest.approx(limit))
        assert shares[code].severity.value == "caution"


@pytest.mark.parametrize(("length", "told"), [(9.0, True), (10.0, False), (25.0, False)])
def test_a_stubby_tenon_is_told(length, told):
    # a face frame of 20: tenons 20 / 3 thick, one and a half times as long: 10
    found = _found(_bookcase(face={"tenon": length}))
    assert ("tenon-stubby" in found) is told
    if told:
        assert found["tenon-stubby"].limit == pytest.approx(10.0)


@pytest.mark.parametrize(("length", "left"), [(32.0, None), (33.0, 5.0), (36.0, 2.0)])
def test_a_mortise_leaves_wood_behind_it(length, left):
    # front rails 40 wide, a mortise 2 deeper than its tenon: of 34 6 stay, of 35 5, of 38 2
    found = _found(design(stock=STOCK, frame={"fixing": "front", "rail": 40.0, "tenon": length}))
    assert ("mortise-deep" in found) is (left is not None)
    if left is not None:
        assert (found["mortise-deep"].value, found["mortise-deep"].limit) == (pytest.approx(left), 6.0)
        assert found["mortise-deep"].severity.value == "caution"


def test_the_rule_is_one_of_all_rules():
    assert "tenon-stubby" in {one.code for one in checked(_bookcase(face={"tenon": 8.0}))}
