"""Movement across the grain: worked examples."""

from __future__ import annotations

import pytest

from shopdraw.trade import (
    change_mm,
    coefficient,
    coefficient_from_shrinkage,
    equilibrium_moisture,
    slope_holds,
    species,
)


def test_white_fir_of_the_handbook() -> None:
    # Wood Handbook ch. 13, worked example: 232 mm, flat grain, 8 to 11 %, gives 233.7 mm.
    change = change_mm(232, 0.00245, 8, 11)
    assert change == pytest.approx(1.705, abs=0.0005)
    assert round(232 + change, 1) == 233.7
    assert change_mm(232, 0.00245, 11, 8) == -change


def test_mesquite_strip() -> None:
    # Flooring trade's chart of change coefficients: 5 in, 6 to 9 %, C 0.00129, gives 0.019 in.
    assert round(change_mm(5 * 25.4, 0.00129, 6, 9) / 25.4, 3) == 0.019


def test_red_alder_panel() -> None:
    # WOOD magazine, September 2021: 8 in flatsawn, 6 points, coefficient rounded to 0.0026, gives 0.1248 in.
    assert change_mm(8 * 25.4, 0.0026, 6, 12) / 25.4 == pytest.approx(0.1248)
    assert round(species("alder_red").tangential, 4) == 0.0026


def test_maple_and_cherry_drawer_fronts() -> None:
    # A cabinetmaker's published notes, August 2012: a 4 in flatsawn maple front moves about 1/8 in when the air goes
    # from 35 to 80 %, a cherry one about 3/32 in.
    dry, wet = (equilibrium_moisture((70 - 32) / 1.8, humidity) for humidity in (35, 80))
    maple = change_mm(4, species("maple_sugar").tangential, dry, wet)
    cherry = change_mm(4, species("cherry_black").tangential, dry, wet)
    assert maple == pytest.approx(1 / 8, abs=1 / 64)
    assert cherry == pytest.approx(3 / 32, abs=1 / 64)


@pytest.mark.parametrize(("key", "cut", "inches"), [("oak_red", "flat", 0.2657), ("oak_red", "quarter", 0.1138)])
def test_red_oak_twelve_inches(key: str, cut: str, inches: float) -> None:
    # Wood Handbook FPL-GTR-190, Table 13-5: red oak 0.00369 and 0.00158; 12 in, 6 to 12 %.
    chosen = coefficient(species(key), "flat" if cut == "flat" else "quarter")
    assert change_mm(12, chosen, 6, 12) == pytest.approx(inches, abs=5e-5)


def test_case_17_cherry_front_grows_two_millimetres() -> None:
    assert change_mm(203.2, coefficient(species("cherry_black"), "flat"), 7, 11) == pytest.approx(2.0, abs=0.05)


def test_an_unknown_cut_takes_the_larger_coefficient() -> None:
    assert coefficient(species("oak_white"), "unknown") == 0.00365


# Wood Handbook FPL-GTR-190: shrinkage of Table 4-3 with coefficients of Table 13-5.
@pytest.mark.parametrize(
    ("shrinkage", "start", "expected"), [(3.7, 30, 0.00126), (7.1, 30, 0.00248), (2.4, 22, 0.00111), (5.0, 22, 0.00234)]
)
def test_coefficient_from_shrinkage(shrinkage: float, start: float, expected: float) -> None:
    assert round(coefficient_from_shrinkage(shrinkage, start), 5) == expected


def test_where_the_straight_line_holds() -> None:
    # Wood Handbook FPL-GTR-190, ch. 13: from 6 to 14 %.
    assert slope_holds(6, 8, 14)
    assert not slope_holds(5.9, 8)
    assert not slope_holds(8, 14.1)
