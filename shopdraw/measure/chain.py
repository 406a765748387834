"""Rounding a chain of dimensions so that what is printed adds up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shopdraw.measure.error import ChainError
from shopdraw.measure.rounding import Size, exact_mm, steps_in

CLOSES_WITHIN_MM = Fraction(1, 1000)
"""A chain and an overall that differ by more were not derived from one another."""


@dataclass(frozen=True, slots=True)
class Chain:
    """A rounded chain: links and overall in whole steps.

    Attributes:
        step: mm.
        links: steps of each link, in order; their sum is `overall`.
        overall: steps.
    """

    step: Fraction
    links: tuple[int, ...]
    overall: int

    @property
    def links_mm(self) -> tuple[Fraction, ...]:
        """The rounded links in mm, exactly."""
        return tuple(link * self.step for link in self.links)

    @property
    def overall_mm(self) -> Fraction:
        """The rounded overall in mm, exactly."""
        return self.overall * self.step


@dataclass(frozen=True, slots=True)
class _Group:
    """Links of one size: how many steps the size is, and where they stand in the chain."""

    size: Fraction
    places: tuple[int, ...]

    @property
    def floor(self) -> int:
        return self.size.numerator // self.size.denominator

    def raises(self) -> Iterator[int]:
        """How many steps in all the group may be printed above its floors, each link staying within one step."""
        count = len(self.places)
        lowest = -count if self.size == self.floor and self.floor > 0 else 0
        return iter(range(lowest, count + 1))

    def price(self, raised: int) -> tuple[int, Fraction]:
        """What it costs: 1 if equal links come out unequal; then the sum of squared errors in steps."""
        count, over = len(self.places), self.size - self.floor
        moved, by = abs(raised), 1 if raised > 0 else -1
        return int(raised % count != 0), moved * (by - over) ** 2 + (count - moved) * over**2


def round_chain(links: Sequence[Size], step: Fraction, overall: Size | None = None) -> Chain:
    """The chain in whole steps: its links add up to its overall, the overall being rounded by itself.

    Of all sets in which no link is more than a step from its exact size, the one with the fewest equal links that
    print unequal, and of these the one nearest to the exact sizes. Where equal links can't all print equal, the later
    ones are the larger. The same chain always gives the same set.

    Args:
        links: mm, zero or more, in order.
        step: mm, above zero.
        overall: mm; by default the sum of the links.
    Raises:
        ChainError: a link is below zero, or the links don't make the overall.
    """
    exact = [exact_mm(link) for link in links]
    whole = sum(exact, Fraction(0))
    if any(link < 0 for link in exact):
        raise ChainError(f"a link of {float(min(exact)):.4g} mm; a chain's links are zero or more")
    if overall is not None and abs(exact_mm(overall) - whole) > CLOSES_WITHIN_MM:
        stated, made = float(exact_mm(overall)), float(whole)
        raise ChainError(
            f"the links make {made:.2f} mm, the overall is {stated:.2f} mm: {abs(stated - made):.2f} mm off"
        )
    total = steps_in(whole, step)
    groups = _groups([link / step for link in exact])
    raises = _cheapest(groups, total - sum(g.floor * len(g.places) for g in groups))
    printed = [0] * len(exact)
    for group, raised in zip(groups, raises, strict=True):
        first_moved = len(group.places) - abs(raised)
        for order, place in enumerate(group.places):
            printed[place] = group.floor + ((1 if raised > 0 else -1) if order >= first_moved else 0)
    return Chain(step, tuple(printed), total)


def _groups(sizes: Sequence[Fraction]) -> tuple[_Group, ...]:
    """Links of one size together, in the order in which each size first stands in the chain."""
    places: dict[Fraction, list[int]] = {}
    for place, size in enumerate(sizes):
        places.setdefault(size, []).append(place)
    return tuple(_Group(size, tuple(where)) for size, where in places.items())


def _cheapest(groups: Sequence[_Group], wanted: int) -> tuple[int, ...]:
    """By how many steps to raise each group so that all raises make `wanted`, at the least price.

    Every total is reached group by group at its least price; there are no more totals than twice the links. A set
    always exists: floors make at most the rounded overall, floors plus one a link make at least that, and single links
    may go up one by one.
    """
    reached: dict[int, tuple[int, Fraction, tuple[int, ...]]] = {0: (0, Fraction(0), ())}
    for group in groups:
        onward: dict[int, tuple[int, Fraction, tuple[int, ...]]] = {}
        for total, (unequal, error, raises) in reached.items():
            for raised in group.raises():
                more_unequal, more_error = group.price(raised)
                way = (unequal + more_unequal, error + more_error, (*raises, raised))
                if total + raised not in onward or way < onward[total + raised]:
                    onward[total + raised] = way
        reached = onward
    return reached[wanted][2]
