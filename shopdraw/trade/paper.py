"""Paper for drawings: sizes, frames and zones."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.measure import Unit, length_of
from shopdraw.trade.table import NotInTable, Row, Source, sources, table

FIELD_MM = 50.0
"""Length of a zone on ISO sheets, counted from the centre; the one in the corner takes the rest. Source: ISO 5457."""
ZONE_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"
"""Without I and O. Source: ISO 5457."""


@dataclass(frozen=True, slots=True)
class PaperSize:
    """A trimmed sheet as it lies; origin at its lower left corner, mm.

    Attributes:
        name: "A1", "ANSI D", "ARCH D".
        also: other names: "Letter".
        series: "iso", "asme" or "arch".
        width_mm, height_mm: trimmed.
        frame: x0, y0, x1, y1.
        group: "large", "medium" or "small": letters and line widths follow it.
        source: of the size and the margins.
    """

    name: str
    also: tuple[str, ...]
    series: str
    width_mm: float
    height_mm: float
    frame: tuple[float, float, float, float]
    group: str
    source: Source

    @property
    def columns(self) -> int:
        """Zones along the width."""
        return _fields(self.width_mm)

    @property
    def rows(self) -> int:
        """Zones along the height."""
        return _fields(self.height_mm)

    @property
    def column_lines(self) -> tuple[float, ...]:
        """X where one zone ends and the next begins, from frame to frame: one more than `columns`."""
        return self._lines(self.width_mm, self.columns, self.frame[0], self.frame[2])

    @property
    def row_lines(self) -> tuple[float, ...]:
        """Y where one zone ends and the next begins, from frame to frame: one more than `rows`."""
        return self._lines(self.height_mm, self.rows, self.frame[1], self.frame[3])

    @property
    def column_names(self) -> tuple[str, ...]:
        """Numbers of the zones from left to right: from the left on ISO sheets, from the right on the others."""
        numbers = tuple(str(n) for n in range(1, self.columns + 1))
        return numbers if self.series == "iso" else numbers[::-1]

    @property
    def row_names(self) -> tuple[str, ...]:
        """Letters of the zones from the bottom up: from the top on ISO sheets, from the bottom on the others."""
        letters = tuple(ZONE_LETTERS[: self.rows])
        return letters[::-1] if self.series == "iso" else letters

    def zone_at(self, x: float, y: float) -> str:
        """The zone of a point, "C4"; a point outside the frame belongs to the nearest zone."""
        column = bisect_right(self.column_lines[1:-1], x)
        row = bisect_right(self.row_lines[1:-1], y)
        return self.row_names[row] + self.column_names[column]

    def _lines(self, length: float, count: int, first: float, last: float) -> tuple[float, ...]:
        pitch = FIELD_MM if self.series == "iso" else length / count
        inner = [length / 2 + (n - count // 2) * pitch for n in range(1, count)]
        return (first, *inner, last)


def _fields(length: float) -> int:
    """How many zones a side has: an even number, as near to 50 mm each as that allows.

    Source: ISO 5457; ISO 5457:1980 allows 25 to 75 mm, which holds for inch sheets too.
    """
    return 2 * max(1, round(length / (2 * FIELD_MM)))


@lru_cache
def papers() -> tuple[PaperSize, ...]:
    """Every size of paper, by series."""
    return tuple(_paper(row) for row in table("paper")["paper"])


def paper(name: str) -> PaperSize:
    """The paper of that name, by any of its names; capitals and spaces don't matter.

    Raises:
        NotInTable: there is none; says the nearest.
    """
    wanted = _plain(name)
    for size in papers():
        if wanted in (_plain(size.name), *(_plain(other) for other in size.also)):
            return size
    raise NotInTable("paper", name, [size.name for size in papers()])


def papers_of(series: str) -> tuple[PaperSize, ...]:
    """The papers of a series ("iso", "asme", "arch"), smallest first."""
    chosen = [size for size in papers() if size.series == series]
    return tuple(sorted(chosen, key=lambda size: size.width_mm * size.height_mm))


def _plain(name: str) -> str:
    return "".join(name.split()).lower()


def _paper(row: Row) -> PaperSize:
    unit = Unit.INCH if row["unit"] == "in" else Unit.MM
    width, height, left, right, bottom, top = (
        length_of(size, unit).mm for size in (row["width"], row["height"], *row["margins"])
    )
    return PaperSize(
        row["name"],
        tuple(row.get("also", ())),
        row["series"],
        width,
        height,
        (left, bottom, width - right, height - top),
        row["group"],
        sources("paper")[row["source"]],
    )
