"""Words in columns: headed blocks that flow from column to column and from sheet to sheet. Paper mm."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import Mark, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.look import Look
from shopdraw.sheet.wrap import PITCH, wrapped

SAMPLE = 16.0
"""Width that a sample beside its words takes."""
BETWEEN_BLOCKS = 1.6
"""In heights of figures."""

Sample = Callable[[Point, Look], tuple[Mark, ...]]
"""Draws a sample, SAMPLE less 3 wide, its lower left corner at a point."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A sentence, with a sample before it or an indent."""

    words: str
    sample: Sample | None = None


@dataclass(frozen=True, slots=True)
class Block:
    """A heading and its entries."""

    heading: str
    entries: tuple[Entry, ...]


@dataclass(frozen=True, slots=True)
class Column:
    """Where words may stand: left edge, width, top and foot."""

    x: float
    width: float
    top: float
    foot: float


def flowed(blocks: Sequence[Block], pages: Iterator[Sequence[Column]], look: Look) -> tuple[tuple[Mark, ...], ...]:
    """The blocks as marks by page.

    A heading never stands without its first entry; an entry that is taller than a whole column can't be.

    Args:
        blocks: in order; one without entries is left out.
        pages: columns of each page, as many pages as it takes.
        look: heights.
    """
    made: list[list[Mark]] = [[]]
    columns = list(next(pages))
    y = columns[0].top
    for block in blocks:
        for number, entry in enumerate(block.entries):
            head = 2.2 * look.balloon if number == 0 else 0.0
            column = columns[0]
            while y - head - _height(entry, column, look) < column.foot:
                columns.pop(0)
                if not columns:
                    columns = list(next(pages))
                    made.append([])
                column = columns[0]
                if y == column.top and made[-1] == []:
                    break
                y = column.top
            if number == 0:
                made[-1].append(Text((column.x, y - look.balloon), block.heading, look.balloon))
                y -= head
            made[-1].extend(_entry_marks(entry, column, y, look))
            y -= _height(entry, column, look)
        y -= BETWEEN_BLOCKS * look.figure
    return tuple(tuple(page) for page in made)


def _lines(entry: Entry, column: Column, look: Look) -> tuple[str, ...]:
    return wrapped(entry.words, look.figure, column.width - (SAMPLE if entry.sample else 0.0))


def _height(entry: Entry, column: Column, look: Look) -> float:
    return look.figure * PITCH * len(_lines(entry, column, look)) + 0.5 * look.figure


def _entry_marks(entry: Entry, column: Column, top: float, look: Look) -> Iterator[Mark]:
    x = column.x
    if entry.sample is not None:
        yield from entry.sample((x, top - look.figure), look)
        x += SAMPLE
    for n, line in enumerate(_lines(entry, column, look)):
        yield Text((x, top - look.figure * (1.0 + PITCH * n)), line, look.figure)
