"""A table of words and numbers, as lists are handed on: to a sheet, a CSV file, a workbook."""

from __future__ import annotations

import math
from dataclasses import dataclass

Cell = str | float | int | None
"""Words, a number in its column's unit, or nothing."""


class BadTable(ValueError):
    """Rows that don't fit their columns; the message says which and why."""


@dataclass(frozen=True, slots=True)
class Column:
    """A column.

    Attributes:
        head: what stands at its top: "length".
        unit: of its numbers, or "" for words: "mm"; written behind the head: "length (mm)".
        digits: decimals that its numbers are written with.
    """

    head: str
    unit: str = ""
    digits: int = 1

    @property
    def title(self) -> str:
        """Head and unit as printed."""
        return f"{self.head} ({self.unit})" if self.unit else self.head


@dataclass(frozen=True, slots=True)
class Table:
    """A titled table, rows in order.

    Raises:
        BadTable: a row isn't as long as the columns are many, or holds a number that isn't finite.
    """

    title: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]

    def __post_init__(self) -> None:
        for number, row in enumerate(self.rows, 1):
            if len(row) != len(self.columns):
                raise BadTable(
                    f"{self.title}, row {number}: {len(row)} cells, found beside {len(self.columns)} columns; "
                    "they must be as many"
                )
            for column, cell in zip(self.columns, row, strict=True):
                if isinstance(cell, float) and not math.isfinite(cell):
                    raise BadTable(f"{self.title}, row {number}, {column.head}: found {cell}; it must be finite")
