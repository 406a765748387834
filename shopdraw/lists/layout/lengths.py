"""The one-way problem in whole numbers: sizes into spaces at the least cost."""

from __future__ import annotations

from dataclasses import dataclass

Fill = tuple[int, ...]
"""How many of each size go into one space."""


@dataclass(frozen=True, slots=True)
class Space:
    """A kind of space: its capacity, what opening one costs, how many there are (None: any number)."""

    capacity: int
    cost: float
    count: int | None = None


@dataclass(frozen=True, slots=True)
class Lengths:
    """Sizes, largest first, how many of each are wanted, and what they go into."""

    sizes: tuple[int, ...]
    demand: tuple[int, ...]
    spaces: tuple[Space, ...]

    @property
    def whole_costs(self) -> bool:
        """Every space's cost is a whole number, so that a bound may be rounded up."""
        return all(space.cost == int(space.cost) for space in self.spaces)

    def used(self, fill: Fill) -> int:
        """How much of a space a filling takes."""
        return sum(size * count for size, count in zip(self.sizes, fill, strict=True))


@dataclass(frozen=True, slots=True)
class Filling:
    """An answer: opened spaces (index of their kind, what is in them) and a bound on any answer's cost.

    Attributes:
        hurried: the clock stopped the search, so that another run may find another answer.
    """

    opened: tuple[tuple[int, Fill], ...]
    bound: float
    hurried: bool = False

    def cost(self, lengths: Lengths) -> float:
        """What the opened spaces cost."""
        return sum(lengths.spaces[kind].cost for kind, _ in self.opened)
