"""Rounding to a step, free of the noise in floats."""

from __future__ import annotations

from fractions import Fraction

from shopdraw.measure.length import Length

GRAIN = 10**8
"""Floats count by the nearest 1e-8 mm.

Far above the noise of doubles at furniture's sizes, and fine enough for the half steps of 1/128 in (1/256 in is
0.09921875 mm): so two sizes that differ by noise only never fall on both sides of a half step.
"""

Size = Length | Fraction | float
"""A size in mm: exact, or a float."""


def exact_mm(size: Size) -> Fraction:
    """The size in mm as a fraction; a float without its noise, see `GRAIN`."""
    if isinstance(size, Length):
        return size.exact
    if isinstance(size, float):
        return Fraction(round(Fraction(size) * GRAIN), GRAIN)
    return Fraction(size)


def steps_in(size: Size, step: Fraction) -> int:
    """How many steps the size comes to; half a step goes away from zero.

    Args:
        size: mm.
        step: mm, above zero.
    """
    count = exact_mm(size) / step
    nearest = (2 * abs(count) + 1) // 2
    return int(nearest if count >= 0 else -nearest)


def round_to_step(size: Size, step: Fraction) -> Fraction:
    """The nearest whole number of steps in mm, exactly; half a step goes away from zero."""
    return steps_in(size, step) * step
