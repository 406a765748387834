"""The moisture content that wood comes to in a given air."""

from __future__ import annotations

COLDEST_C = -1.1
HOTTEST_C = 132.2
"""What the handbook's table spans (30 to 270 °F)."""


class NoSuchAir(ValueError):
    """Air that the formula doesn't know."""


def equilibrium_moisture(temperature_c: float, humidity_percent: float) -> float:
    """Equilibrium moisture content, % of the ovendry mass.

    Args:
        temperature_c: of the air, °C, -1.1 to 132.2.
        humidity_percent: relative humidity, 0 to 100; the handbook's table spans 5 to 95.
    Raises:
        NoSuchAir: outside these.
    Source:
        Wood Handbook FPL-GTR-282 (2021), eq. 4-5, constants for °C (Hailwood-Horrobin, two hydrates).
    """
    t = temperature_c
    if not COLDEST_C - 0.05 <= t <= HOTTEST_C + 0.05:
        raise NoSuchAir(f"air of {t:g} °C; the table of equilibrium moisture spans {COLDEST_C} to {HOTTEST_C} °C")
    if not 0 <= humidity_percent <= 100:
        raise NoSuchAir(f"a relative humidity of {humidity_percent:g} %; it lies between 0 and 100 %")
    w = 349 + 1.29 * t + 0.0135 * t**2
    k = 0.805 + 0.000736 * t - 0.00000273 * t**2
    k1 = 6.27 - 0.00938 * t - 0.000303 * t**2
    k2 = 1.91 + 0.0407 * t - 0.000293 * t**2
    kh = k * humidity_percent / 100
    hydrated = (k1 * kh + 2 * k1 * k2 * kh**2) / (1 + k1 * kh + k1 * k2 * kh**2)
    return 1800 / w * (kh / (1 - kh) + hydrated)
