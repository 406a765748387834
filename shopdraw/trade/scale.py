"""Scales of drawings: the recommended series, and how each is written."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.measure import Unit
from shopdraw.trade.table import NotInTable, Source, sources, table


@dataclass(frozen=True, slots=True)
class Scale:
    """A scale.

    Attributes:
        name: "1:5", "2:1".
        ratio: paper size over true size: 0.2 for 1:5.
        words: as an inch drawing says it: "3 in = 1 ft", "full size"; "" where there is none.
        preferred: one that sheets choose from by themselves.
        source: of the series.
    """

    name: str
    ratio: float
    words: str
    preferred: bool
    source: Source

    @property
    def factor(self) -> float:
        """True size over paper size: 5 for 1:5."""
        return 1 / self.ratio

    @property
    def printed(self) -> str:
        """As on the sheet: "1:4 (3 in = 1 ft)", "1:5"."""
        return f"{self.name} ({self.words})" if self.words else self.name


@lru_cache
def scales(unit: Unit) -> tuple[Scale, ...]:
    """All recommended scales for pieces in that unit, largest first.

    Source:
        ISO 5455 for mm; the architect's scale for inches.
    """
    return _metric() if unit is Unit.MM else _architectural()


def preferred_scales(unit: Unit) -> tuple[Scale, ...]:
    """The scales that sheets choose from, largest first."""
    return tuple(scale for scale in scales(unit) if scale.preferred)


def scale(name: str, unit: Unit) -> Scale:
    """The scale of that name.

    Raises:
        NotInTable: it isn't in the series of that unit.
    """
    for one in scales(unit):
        if one.name == name.replace(" ", ""):
            return one
    raise NotInTable("scale", name, [one.name for one in scales(unit)])


def _metric() -> tuple[Scale, ...]:
    rows, known = table("paper")["scales"]["mm"], sources("paper")
    larger, smaller = [(f"{n}:1", float(n)) for n in rows["enlarged"]], [(f"1:{n}", 1 / n) for n in rows["reduced"]]
    ratios = [*larger, ("1:1", 1.0), *smaller]
    return tuple(Scale(name, ratio, "", name in rows["preferred"], known[rows["source"]]) for name, ratio in ratios)


def _architectural() -> tuple[Scale, ...]:
    rows, known = table("paper")["scales"]["inch"], sources("paper")
    larger = [Scale(f"{n}:1", float(n), "", True, known[rows["enlarged_source"]]) for n in rows["enlarged"]]
    factors = sorted((int(factor), words) for factor, words in rows["words"].items())
    smaller = [
        Scale(f"1:{n}", 1 / n, words, f"1:{n}" in rows["preferred"], known[rows["source"]]) for n, words in factors
    ]
    return (*larger, *smaller)
