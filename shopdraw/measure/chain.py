"""Rounding a chain of dimensions so that what is printed adds up."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from math import lcm

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
    """Links of one size: where they stand in the chain, and the size as a floor and a rest.

    Attributes:
        floor: whole steps in the size.
        over: the rest, in parts of a step.
        parts: how many parts a step has; the same for all groups, so that errors compare as whole numbers.
        places: where the links stand.
    """

    floor: int
    over: int
    parts: int
    places: tuple[int, ...]

    def raises(self) -> range:
        """How many steps in all the group may be printed above its floors, each link staying within one step."""
        count = len(self.places)
        return range(-count if not self.over and self.floor else 0, count + 1)

    def price(self, raised: int) -> tuple[int, int]:
        """What it costs: 1 if equal links come out unequal; then the sum of squared errors in parts of a step."""
        count, moved = len(self.places), abs(raised)
        step = self.parts if raised > 0 else -self.parts
        return int(raised % count != 0), moved * (step - self.over) ** 2 + (count - moved) * self.over**2


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
    # An overall that differs by a hair still has one printed figure: its own, wherever it stands.
    total = steps_in(whole if overall is None else overall, step)
    return Chain(step, _printed(tuple(link / step for link in exact), total), total)


@lru_cache(maxsize=4096)
def _printed(sizes: tuple[Fraction, ...], total: int) -> tuple[int, ...]:
    """Whole steps for sizes in steps, adding up to `total`; kept, since a chain stands on more than one sheet."""
    groups = _groups(sizes)
    raises = _cheapest(groups, total - sum(group.floor * len(group.places) for group in groups))
    printed = [0] * len(sizes)
    for group, raised in zip(groups, raises, strict=True):
        first_moved = len(group.places) - abs(raised)
        for order, place in enumerate(group.places):
            printed[place] = group.floor + ((1 if raised > 0 else -1) if order >= first_moved else 0)
    return tuple(printed)


def _groups(sizes: Sequence[Fraction]) -> tuple[_Group, ...]:
    """Links of one size together, in the order in which each size first stands in the chain."""
    places: dict[Fraction, list[int]] = {}
    for place, size in enumerate(sizes):
        places.setdefault(size, []).append(place)
    parts = lcm(*(size.denominator for size in sizes))
    return tuple(_Group(*divmod(int(size * parts), parts), parts, tuple(where)) for size, where in places.items())


def _cheapest(groups: Sequence[_Group], wanted: int) -> tuple[int, ...]:
    """By how many steps to raise each group so that all raises make `wanted`, at the least price.

    Every total is reached group by group at its least price; there are no more totals than twice the links. A set
    always exists: floors make at most the rounded overall, floors plus one a link make at least that, and single links
    may go up one by one.
    """
    reached: dict[int, tuple[int, int, tuple[int, ...]]] = {0: (0, 0, ())}
    for group in groups:
        prices = [(raised, group.price(raised)) for raised in group.raises()]
        onward: dict[int, tuple[int, int, tuple[int, ...]]] = {}
        for total, (unequal, error, raises) in reached.items():
            for raised, (more_unequal, more_error) in prices:
                way = (unequal + more_unequal, error + more_error, (*raises, raised))
                if total + raised not in onward or way < onward[total + raised]:
                    onward[total + raised] = way
        reached = onward
    return reached[wanted][2]
