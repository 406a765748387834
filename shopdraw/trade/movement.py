"""How much wood changes its size across the grain when its moisture changes."""

from __future__ import annotations

from typing import Literal

from shopdraw.trade.species import Species

Cut = Literal["flat", "quarter", "unknown"]

VALID_FROM_PERCENT = 6.0
VALID_TO_PERCENT = 14.0
"""Between these moisture contents the straight line holds. Source: Wood Handbook FPL-GTR-190, ch. 13."""


def change_mm(size_mm: float, coefficient: float, from_percent: float, to_percent: float) -> float:
    """The change of a size across the grain, mm; growing is positive.

    Args:
        size_mm: the size at the first moisture content.
        coefficient: per 1 % of moisture content, see `coefficient`.
        from_percent, to_percent: moisture contents, %.
    Source:
        Wood Handbook FPL-GTR-190 (2010), eq. 13-2.
    """
    return size_mm * coefficient * (to_percent - from_percent)


def coefficient(species: Species, cut: Cut) -> float:
    """The change coefficient of a board's width: flatsawn tangential, quartersawn radial, unknown the larger one."""
    if cut == "flat":
        return species.tangential
    if cut == "quarter":
        return species.radial
    return max(species.radial, species.tangential)


def coefficient_from_shrinkage(shrinkage_percent: float, shrinks_from_percent: float = 30.0) -> float:
    """The change coefficient that follows from total shrinkage.

    Args:
        shrinkage_percent: from green to ovendry, in the direction asked for.
        shrinks_from_percent: moisture content at which shrinking starts: 30; 22 for redwood, western redcedar and
            northern white-cedar.
    Source:
        Wood Handbook FPL-GTR-190 (2010): eq. 13-1 taken at 10 % moisture, the basis of Table 13-5.
    """
    shrinkage = shrinkage_percent / 100
    return shrinkage / (shrinks_from_percent - shrinkage * (shrinks_from_percent - 10))


def slope_holds(*moistures_percent: float) -> bool:
    """Whether all moisture contents lie where the straight line holds, 6 to 14 %."""
    return all(VALID_FROM_PERCENT <= moisture <= VALID_TO_PERCENT for moisture in moistures_percent)
