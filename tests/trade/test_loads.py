"""Loads, sags and the tip-over rule against published figures."""

import pytest

from shopdraw.trade.loads import figure, in_scope_of_tip_over_rule, sag_mm

INCH, POUND, PSI_MPA = 25.4, 0.45359237, 0.006894757
OAK_MPA = 1.82e6 * PSI_MPA
"""Red oak, Wood Handbook FPL-GTR-282, Table 5-3b."""


def test_sag_of_a_red_oak_shelf_under_a_published_load():
    """A magazine's load chart, 3/4 × 11 in red oak, 24 in span: 49 lb/ft sag 0.025 in (figures as quoted)."""
    sag = sag_mm(24 * INCH, 11 * INCH, 0.75 * INCH, 49 * POUND / 0.3048, OAK_MPA)
    assert sag == pytest.approx(0.025 * INCH, rel=0.01)


def test_sag_of_a_cherry_shelf_by_the_beam_formula():
    # I = 280 × 19³ / 12 = 160,043 mm⁴; 5 × 0.3 × 900⁴ / (384 × 10,300 × 160,043) = 1.555 mm
    assert sag_mm(900.0, 280.0, 19.0, 0.3 * 1000 / 9.80665, 10300.0) == pytest.approx(1.555, abs=0.001)


def test_loads_in_the_units_they_are_published_in():
    assert figure("load", "shelf").value == pytest.approx(20 * POUND / 0.3048, abs=1e-3)
    assert figure("load", "drawer").value == pytest.approx(8.5 * POUND / 0.3048**3, abs=1e-2)
    assert figure("load", "child").value == pytest.approx(60 * POUND, abs=1e-3)
    assert figure("limit", "sag").value == pytest.approx(0.02 / 12)


@pytest.mark.parametrize(
    ("inches", "pounds", "cubic_feet", "covered"),
    [(27, 30, 3.2, True), (26.9, 40, 4, False), (40, 29, 4, False), (40, 40, 3.1, False)],
)
def test_case_01_which_storage_the_rule_covers(inches, pounds, cubic_feet, covered):
    """16 CFR 1261, ASTM F2057-23, scope: 27 in, 30 lb, 3.2 ft³."""
    litres = cubic_feet * 30.48**3 / 1000
    assert in_scope_of_tip_over_rule(inches * INCH + 1e-6, pounds * POUND + 1e-3, litres + 1e-2) is covered


def test_stays_bring_a_lid_level_from_60_degrees_up():
    """Whitechapel Ltd, fitting notes on folding lid stays: on slant-front desks of 60° or steeper."""
    assert figure("lid", "stay_angle").value == 60.0
    assert "from memory" not in figure("lid", "stay_angle").source.publication
