"""The two-way problem in whole numbers: rectangles into sheets, strips first, at the least cost."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

MOST_SUMS = 20_000
"""Sums of prices above this aren't listed: they lie close to each other."""


@dataclass(frozen=True, slots=True)
class Rectangle:
    """A kind of rectangle, kerf included: along x, along y, how many, whether it may be turned."""

    x: int
    y: int
    count: int
    free: bool = False

    @property
    def ways(self) -> tuple[tuple[int, int, bool], ...]:
        """The ways it may lie: along x, along y, turned."""
        if self.free and self.x != self.y:
            return (self.x, self.y, False), (self.y, self.x, True)
        return ((self.x, self.y, False),)


@dataclass(frozen=True, slots=True)
class Area:
    """A kind of sheet, kerf included: along x, along y, what one costs, how many there are (None: any number)."""

    x: int
    y: int
    cost: float
    count: int | None = None


@dataclass(frozen=True, slots=True)
class Rectangles:
    """What is wanted and what it is cut from."""

    wanted: tuple[Rectangle, ...]
    areas: tuple[Area, ...]

    @property
    def number(self) -> int:
        """How many rectangles there are in all."""
        return sum(rectangle.count for rectangle in self.wanted)

    @property
    def whole_costs(self) -> bool:
        """Every sheet's cost is a whole number, so that a bound may be rounded up."""
        return all(area.cost == int(area.cost) for area in self.areas)

    @property
    def least_ways(self) -> tuple[int, int]:
        """The least that any rectangle still wanted takes along x, and along y."""
        ways = [way for one in self.wanted if one.count for way in one.ways]
        return min((x for x, _, _ in ways), default=0), min((y for _, y, _ in ways), default=0)

    def across(self) -> Rectangles:
        """The same problem with x and y exchanged."""
        return Rectangles(
            tuple(Rectangle(one.y, one.x, one.count, one.free) for one in self.wanted),
            tuple(Area(one.y, one.x, one.cost, one.count) for one in self.areas),
        )


@dataclass(frozen=True, slots=True)
class Placed:
    """A rectangle of a kind, as it lies."""

    kind: int
    x: int
    y: int
    turned: bool


@dataclass(frozen=True, slots=True)
class Column:
    """Rectangles above each other, crosscut together from a strip: its width along x, what is in it."""

    x: int
    placed: tuple[Placed, ...]


@dataclass(frozen=True, slots=True)
class Strip:
    """A strip ripped off the whole sheet: its width along y, its columns."""

    y: int
    columns: tuple[Column, ...]


@dataclass(frozen=True, slots=True)
class CutSheet:
    """A sheet cut up: its kind, its strips, whether x and y are exchanged (strips run across the sheet)."""

    area: int
    strips: tuple[Strip, ...]
    across: bool = False

    def held(self, kinds: int) -> tuple[int, ...]:
        """How many of each kind it holds."""
        counts = [0] * kinds
        for strip in self.strips:
            for column in strip.columns:
                for placed in column.placed:
                    counts[placed.kind] += 1
        return tuple(counts)


def least_cost(problem: Rectangles) -> float:
    """A bound on the cost of any layout, by areas and by what can't lie beside each other.

    With sheets of one kind only: rectangles longer than a share of the sheet count as the whole of it, shorter than
    the rest as nothing (dual feasible functions).

    Source:
        Fekete and Schepers, New classes of fast lower bounds for bin packing problems, Mathematical Programming 91
        (2001): the functions u with a threshold.
    """
    bound = _by_area(problem)
    kinds = {(area.x, area.y) for area in problem.areas}
    prices = [area.cost for area in problem.areas]
    if len(kinds) == 1 and len(set(prices)) == 1:
        bound = max(bound, prices[0] * _by_thresholds(problem))
    return float(next_sum(math.ceil(bound - 1e-6), prices)) if problem.whole_costs else bound


def next_sum(least: int, prices: Sequence[float]) -> int:
    """The least sum of so many whole prices each as may be that isn't below a number."""
    whole = sorted({round(price) for price in prices if price})
    if least <= 0 or not whole or least > MOST_SUMS or whole[0] == 1:
        return least
    reached = [True] + [False] * (least + whole[-1])
    for total in range(1, len(reached)):
        reached[total] = any(total >= price and reached[total - price] for price in whole)
    return next(total for total in range(least, len(reached)) if reached[total])


def _by_area(problem: Rectangles) -> float:
    """The cheapest sheets whose areas together hold all rectangles' areas, a part of a sheet allowed."""
    left = float(sum(one.x * one.y * one.count for one in problem.wanted))
    cost = 0.0
    for area in sorted(problem.areas, key=lambda one: one.cost / (one.x * one.y)):
        most = math.inf if area.count is None else float(area.count)
        taken = min(left / (area.x * area.y), most)
        whole = math.ceil(taken - 1e-9) if len(problem.areas) == 1 else taken
        cost += area.cost * whole
        left -= taken * area.x * area.y
        if left <= 0:
            break
    return cost


def _by_thresholds(problem: Rectangles) -> int:
    """The least number of sheets of one kind."""
    area = problem.areas[0]
    xs = _thresholds([one.x for one in problem.wanted], area.x)
    ys = _thresholds([one.y for one in problem.wanted], area.y)
    best = 0
    for tx in xs:
        for ty in ys:
            total = 0
            for one in problem.wanted:
                total += one.count * min(
                    _counted(x, area.x, tx) * _counted(y, area.y, ty) for x, y, _ in one.ways
                )
            best = max(best, -(-total // (area.x * area.y)))
    return best


def _thresholds(sizes: list[int], whole: int) -> list[int]:
    """Thresholds at which the bound can change: 0 and the sizes up to a half, at most 40 of them."""
    found = sorted({0, *(size for size in sizes if 2 * size <= whole), *(whole - s for s in sizes if 2 * s > whole)})
    step = max(1, len(found) // 40)
    return found[::step]


def _counted(size: int, whole: int, threshold: int) -> int:
    """How long a size counts: whole if what it leaves is below the threshold, nothing if it is below it itself."""
    if size > whole - threshold:
        return whole
    return 0 if size < threshold else size
