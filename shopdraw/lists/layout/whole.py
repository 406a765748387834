"""Whole numbers for the searches: sizes up, spaces down, costs in the largest unit that divides them all."""

from __future__ import annotations

import math
from collections.abc import Sequence
from fractions import Fraction

BOARD_UNIT = 0.01
"""mm: a board's length in this unit is what the one-way search counts in."""
SHEET_UNIT = 0.001
_NOISE = 1e-4
_CENT = 1e-4
_LARGEST = 10_000
_PROPORTION = 60


def up(size: float, unit: float) -> int:
    """A size in whole units, not less than it is."""
    return math.ceil(size / unit - _NOISE)


def down(size: float, unit: float) -> int:
    """A space in whole units, not more than it is."""
    return math.floor(size / unit + _NOISE)


def cost_unit(costs: Sequence[float]) -> float:
    """What to divide costs by, so that they become small whole numbers if that can be, else numbers up to 100."""
    counted = [round(cost / _CENT) for cost in costs if cost]
    if not counted:
        return 1.0
    common = math.gcd(*counted)
    exact = all(abs(cost / _CENT - round(cost / _CENT)) < 1e-3 for cost in costs)
    if exact and max(counted) // common <= _LARGEST:
        return common * _CENT
    return _in_proportion(costs) or max(costs) / 100.0


def _in_proportion(costs: Sequence[float]) -> float:
    """The unit of costs that stand in a small proportion, as boards of one width at so much a length do; else 0."""
    paid = sorted({cost for cost in costs if cost})
    shares = [Fraction(cost / paid[0]).limit_denominator(_PROPORTION) for cost in paid]
    if any(abs(cost / paid[0] - float(share)) > 1e-9 for cost, share in zip(paid, shares, strict=True)):
        return 0.0
    parts = math.lcm(*(share.denominator for share in shares))
    return paid[0] / parts if parts <= _PROPORTION and paid[-1] / paid[0] * parts <= _LARGEST else 0.0
