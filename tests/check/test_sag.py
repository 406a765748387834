"""Shelves that sag."""

import pytest

from shopdraw.check.sag import sag_of
from shopdraw.piece.design import Design
from tests.check.desks import checked, of_code


def bookcase(width: float, **more) -> Design:
    return Design.model_validate(
        {
            "piece": {"kind": "bookcase"},
            "case": {"width": width, "height": 1200.0, "depth": 300.0},
            "level": {"1": {"member": "shelf", "top": 600.0}},
            **more,
        }
    )


def test_case_54_a_plywood_shelf_sags_2_3_at_once_and_3_5_in_time():
    sag = sag_of(914.4, 280.0, 18.26, 29.8, 8000.0)
    assert sag.at_once == pytest.approx(2.3, abs=0.05)
    assert sag.in_time == pytest.approx(3.5, abs=0.05)
    assert sag.limit == pytest.approx(0.02 * 25.4 * 3, abs=1e-9)  # 0.02 in per ft on 3 ft: Fine Woodworking (2007)
    assert sag.span_that_holds == pytest.approx(790.0, abs=3.0)


def test_the_span_and_the_thickness_that_hold_do_hold():
    sag = sag_of(914.4, 280.0, 18.26, 29.8, 8000.0)
    shorter = sag_of(sag.span_that_holds, 280.0, 18.26, 29.8, 8000.0)
    thicker = sag_of(914.4, 280.0, sag.thickness_that_holds, 29.8, 8000.0)
    assert shorter.at_once == pytest.approx(shorter.limit)
    assert thicker.at_once == pytest.approx(thicker.limit)


def test_case_54_a_wide_bay_is_a_caution_with_the_span_that_would_hold():
    found = of_code(checked(bookcase(1100.0)), "shelf-sags")
    assert {finding.where for finding in found} == {("level.1",)} or found[0].where[0].startswith("shelf")
    assert "Right would be a span of" in found[0].message
    assert of_code(checked(bookcase(600.0)), "shelf-sags") == []


def test_a_stated_load_and_a_stated_stiffness_count():
    light = of_code(checked(bookcase(1100.0, load={"shelf": 2.0})), "shelf-sags")
    assert light == []
    soft = {"primary": {"species": "cherry_black", "thickness": 20.0, "stiffness": 2.0}}
    assert of_code(checked(bookcase(700.0, stock=soft)), "shelf-sags") != []
