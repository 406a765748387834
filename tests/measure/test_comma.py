"""Figures in a sentence take the decimal comma; labels and ids keep their points."""

from __future__ import annotations

import pytest

from shopdraw.measure import with_comma, with_point


@pytest.mark.parametrize(
    ("point", "comma"),
    [
        ("7.1a: bank.2.3 is 4.25 mm deep", "7.1a: bank.2.3 is 4,25 mm deep"),
        ("0.059 in clearance, 812.5 mm³", "0,059 in clearance, 812,5 mm³"),
        ("19.5 × 20.5 mm, 1.5 to 2.5 mm", "19,5 × 20,5 mm, 1,5 to 2,5 mm"),
        ("at 48.0° and 12.5 %, 3.2 kg, ratio 1.60", "at 48,0° and 12,5 %, 3,2 kg, ratio 1,60"),
        ("drawer.1 and 6.1", "drawer.1 and 6.1"),
        ("1/2 in", "1/2 in"),
        ("expected 1216.5 or 1248.5 mm, 6.1 or 7.2", "expected 1216,5 or 1248,5 mm, 6.1 or 7.2"),
        ("37.5 dm³, 1,2 and 3 mm", "37,5 dm³, 1,2 and 3 mm"),
    ],
)
def test_only_figures_with_a_unit_change(point: str, comma: str) -> None:
    assert with_comma(point) == comma
    assert with_point(comma) == point
    assert with_comma(comma) == comma
