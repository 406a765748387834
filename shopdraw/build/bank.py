"""How a bank of drawers shares its height: equal, given, by a step or by a ratio, from the top down."""

from __future__ import annotations

from collections.abc import Sequence


class BankDisagrees(ValueError):
    """A bank that can't be closed; the message says by how much and what would fit."""


CLOSES_MM = 0.01
"""Given heights must add up to the opening within this."""
LEAST_MM = 25.0
"""No drawer opening lower than this is built (common practice)."""


def bank_heights(
    total: float,
    between: float,
    count: int,
    rule: str,
    *,
    step: float = 20.0,
    ratio: float = 1.15,
    sizes: Sequence[float] | None = None,
) -> tuple[float, ...]:
    """Clear heights from the top down, mm; with the rails between them they add up to the whole.

    Args:
        total: from the floor of the lowest opening to the upper edge of the highest.
        between: height of the rail between two openings.
        count: number of openings.
        rule: "equal", "step" (each lower one higher by `step` mm), "ratio" (by a factor), or "given".
        sizes: for "given": all heights, of which one may be 0 and takes what is left; or all but the lowest.
    Raises:
        BankDisagrees: the heights don't add up, or one gets too low.
    Source: arithmetic and geometric series, h1 = (H − (n−1)g − d·n(n−1)/2)/n and h1 = (H − (n−1)g)(q−1)/(qⁿ−1).
    """
    clear = total - (count - 1) * between
    if rule == "equal":
        heights = [clear / count] * count
    elif rule == "step":
        first = (clear - step * count * (count - 1) / 2) / count
        heights = [first + step * i for i in range(count)]
    elif rule == "ratio":
        first = clear / count if abs(ratio - 1) < 1e-9 else clear * (ratio - 1) / (ratio**count - 1)
        heights = [first * ratio**i for i in range(count)]
    else:
        heights = _given(clear, count, sizes)
    lowest = min(heights)
    if lowest < LEAST_MM:
        raise BankDisagrees(
            f"{count} drawers share {clear:.1f} mm of clear height and one would be {lowest:.1f} mm high; "
            f"at least {LEAST_MM:g} mm is needed: fewer drawers, a smaller step, or a higher case"
        )
    return tuple(heights)


def _given(clear: float, count: int, sizes: Sequence[float] | None) -> list[float]:
    if not sizes or len(sizes) not in (count, count - 1):
        raise BankDisagrees(
            f"{count} drawers need {count} sizes, or {count - 1} and the lowest takes what is left; "
            f"found {len(sizes or ())}"
        )
    heights = list(sizes)
    rest = clear - sum(heights)
    if len(heights) == count - 1:
        heights.append(0.0)
    left = [place for place, height in enumerate(heights) if height == 0.0]
    if len(left) > 1:
        raise BankDisagrees(f"{len(left)} sizes are 0 or left out; only one can take the {rest:.2f} mm that are left")
    if left:
        heights[left[0]] = rest
        return heights
    if abs(rest) > CLOSES_MM:
        raise BankDisagrees(
            f"the sizes given add up to {sum(heights):.2f} mm, the clear height is {clear:.2f} mm; "
            f"the lowest would be right with {heights[-1] + rest:.2f} mm"
        )
    return heights
