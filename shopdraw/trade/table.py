"""Reading the shipped tables: rows that name their source."""

from __future__ import annotations

import difflib
import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from shopdraw.measure import Unit, read_length
from shopdraw.shipped import resource_path

Row = Mapping[str, Any]
"""A row of a table as TOML gives it; each module turns its rows into values of its own."""


class NotInTable(LookupError):
    """A name that a table doesn't have.

    Attributes:
        kind: what was looked for: "species", "paper", ...
        name: the name.
        nearest: the nearest names that there are.
    """

    def __init__(self, kind: str, name: str, known: Iterable[str]) -> None:
        self.kind, self.name = kind, name
        spelt = {one.lower(): one for one in known}
        close = difflib.get_close_matches(name.lower(), spelt, n=3)
        self.nearest = tuple(spelt[one] for one in close) or tuple(spelt.values())[:3]
        super().__init__(f'no {kind} "{name}"; the nearest are {", ".join(self.nearest)}')


@dataclass(frozen=True, slots=True)
class Source:
    """Where a figure comes from.

    Attributes:
        publication: its name, or "common practice", or "from memory, to be confirmed".
        mark: "published" (read there), "second-hand" (quoted by others), "derived" (arithmetic on published figures),
            "practice" (common practice, no single source) or "memory" (to be confirmed).
    """

    publication: str
    mark: str


@lru_cache
def table(name: str) -> Row:
    """A shipped table by its file's name without ending. It is shared: read it, don't change it."""
    with resource_path(f"trade/{name}.toml").open("rb") as file:
        return tomllib.load(file)


@lru_cache
def sources(name: str) -> Mapping[str, Source]:
    """The sources that a table's rows name, by their keys."""
    return {key: Source(row["publication"], row["mark"]) for key, row in table(name)["source"].items()}


def inches(text: str) -> float:
    """A size that a table gives in inches, such as "1-1/4", in mm."""
    return read_length(text, Unit.INCH).mm
