"""Caps of a lid: mitres that open, caps that lock the panel; worked by hand from the handbook's coefficients."""

import math

import pytest

from shopdraw.build import build
from shopdraw.check.lid_cap import lid_cap_findings, mitre_opening
from shopdraw.check.subject import subject_of
from tests.check.desks import design

# Wood Handbook (2010), Table 13-5: black cherry, tangential 0.00248
C = 0.00248


def _found(**tables):
    piece = design(**{"stock": {"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}}, **tables})
    return {one.code: one for one in lid_cap_findings(subject_of(piece, build(piece)))}


def test_a_mitred_cap_60_wide_opens_042_when_dry_and_084_when_wet():
    piece = build(design(stock={"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}},
                         lid={"ends": "mitred", "cap": 60.0}))  # fmt: skip
    cap = piece.board("lid.cap-left")
    # √2 · 60 · 0.00248 · 2 and · 4, moisture 8 % at build, 6 and 12 %
    assert mitre_opening(cap, 2.0) == pytest.approx(math.sqrt(2) * 60 * C * 2)
    assert mitre_opening(cap, 2.0) == pytest.approx(0.42, abs=0.005)
    assert mitre_opening(cap, 4.0) == pytest.approx(0.84, abs=0.005)


def test_over_04_is_a_caution_that_names_the_cap_that_would_do():
    found = _found(lid={"ends": "mitred", "cap": 60.0})["mitre-opens"]
    assert found.severity.value == "caution"
    right = 0.4 / (math.sqrt(2) * C * 4)
    assert found.right == ("lid.cap", f"{right:.1f} mm")
    assert "mitre-opens" not in _found(lid={"ends": "mitred", "cap": math.floor(right)})


def test_caps_mitred_at_both_ends_must_be_fixed():
    found = _found(lid={"ends": "mitred-both"})["caps-lock-panel"]
    assert found.severity.value == "must-fix"
    assert found.right == ("lid.ends", "mitred")
    assert "caps-lock-panel" not in _found(lid={"ends": "mitred"})


def test_case_50_a_cherry_lid_377_across_moves_56_in_all_28_each_way():
    # glued in the middle, built midway through a swing of 6 %: half of 377.6 · 0.00248 · 6 at each end
    piece = design(
        stock={"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}},
        lid={"ends": "square", "glue": "middle", "clearance": 1.5},
        climate={"build": 9.0, "dry": 6.0, "wet": 12.0},
    )
    assembly = build(piece)
    high = assembly.board("lid").width
    found = {one.code: one for one in lid_cap_findings(subject_of(piece, assembly))}["caps-not-flush"]
    assert found.value == pytest.approx(high / 2 * C * 6.0)
    assert found.value * 2 * 377.6 / high == pytest.approx(5.6, abs=0.05)
    assert found.value * 377.6 / high == pytest.approx(2.8, abs=0.05)
    cap = assembly.board("lid.cap-left")
    assert high - cap.length == pytest.approx(high / 2 * C * 3.0 + 0.5)


def test_square_caps_glued_at_the_hinge_edge_say_what_stands_out_at_the_free_edge():
    found = _found(lid={"ends": "square", "clearance": 1.2})["caps-not-flush"]
    assert found.severity.value == "note"
    assert "mitre-opens" not in _found(lid={"ends": "square"})
