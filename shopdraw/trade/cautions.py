"""Cautions: what outputs say where the work can hurt someone."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.trade.table import Source, sources, table


@dataclass(frozen=True, slots=True)
class Caution:
    """A caution.

    Attributes:
        key: short name.
        hazard: what can hurt.
        words: as printed; the machine's manual, local codes or licensed practice have the last word.
        basis: why it is said.
        on: what a sheet gives that calls for it: "tilt", "cutter", "router-file", "drawers", "lid", "tall", "lift",
            "sanding", "finish", "old-piece".
        source: of the basis.
    """

    key: str
    hazard: str
    words: str
    basis: str
    on: tuple[str, ...]
    source: Source


@lru_cache
def all_cautions() -> tuple[Caution, ...]:
    """Every caution, in the table's order."""
    known = sources("cautions")
    return tuple(
        Caution(row["key"], row["hazard"], row["words"], row["basis"], tuple(row["on"]), known[row["source"]])
        for row in table("cautions")["caution"]
    )


def cautions_for(given: Collection[str]) -> tuple[Caution, ...]:
    """The cautions that a sheet carries, in the table's order, each once.

    Args:
        given: what the sheet gives, see `Caution.on`.
    """
    return tuple(caution for caution in all_cautions() if any(what in given for what in caution.on))
