"""Equilibrium moisture against the handbook's table."""

from __future__ import annotations

import math

import pytest

from shopdraw.trade import NoSuchAir, equilibrium_moisture

# Wood Handbook FPL-GTR-282 (2021), Table 4-2, as quoted by a Swedish fact sheet and copied by a timber merchant:
# air °F, relative humidity %, moisture %.
TABLE_4_2 = [
    (30, 75, 14.9), (30, 95, 24.3), (40, 40, 7.9), (50, 50, 9.5), (60, 65, 12.1), (70, 5, 1.3), (70, 30, 6.2),
    (70, 50, 9.2), (70, 65, 12.0), (70, 75, 14.4), (70, 85, 17.9), (70, 95, 23.9), (80, 40, 7.6), (90, 60, 10.5),
    (100, 50, 8.7), (100, 90, 19.5), (120, 70, 11.7), (130, 20, 3.7),
]  # fmt: skip

TOLERANCE = 0.065
"""The table is rounded to 0.1, and the formula misses its values by up to 0.015 more."""


@pytest.mark.parametrize(("fahrenheit", "humidity", "percent"), TABLE_4_2)
def test_the_formula_gives_the_handbooks_table(fahrenheit: float, humidity: float, percent: float) -> None:
    assert equilibrium_moisture((fahrenheit - 32) / 1.8, humidity) == pytest.approx(percent, abs=TOLERANCE)


# The same fact sheet worked the formula at 20 °C.
@pytest.mark.parametrize(("humidity", "percent"), [(50, 9.27), (65, 12.00), (80, 16.04)])
def test_twenty_degrees(humidity: float, percent: float) -> None:
    assert round(equilibrium_moisture(20, humidity), 2) == percent


@pytest.mark.parametrize("celsius", [-1.1, 20, 54, 132.2])
def test_wetter_air_makes_wetter_wood(celsius: float) -> None:
    moistures = [equilibrium_moisture(celsius, humidity) for humidity in range(0, 101, 5)]
    assert moistures[0] == 0
    assert moistures == sorted(moistures)


NO_AIR = [(-2, 50), (133, 50), (20, -1), (20, 101), (math.nan, 50), (20, math.nan)]


@pytest.mark.parametrize(("celsius", "humidity"), NO_AIR)
def test_air_that_there_is_not_is_refused(celsius: float, humidity: float) -> None:
    with pytest.raises(NoSuchAir):
        equilibrium_moisture(celsius, humidity)
