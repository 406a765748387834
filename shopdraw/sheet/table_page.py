"""Tables on paper: column widths from their words, wrapped cells, heads again on each page. Paper mm."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.letters import text_width
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import with_comma
from shopdraw.sheet.arrange import FreeArea
from shopdraw.sheet.box import words_size
from shopdraw.sheet.look import Look
from shopdraw.sheet.wrap import PITCH, Fitted, cell_texts, fitted

CLEAR_OF_LINE = 0.6
"""Least between a table's line and the letters under it."""
PAD = 1.5
"""From a cell's line to its words."""
LEAST_COLUMN = 14.0
_AFTER_TABLE, _BESIDE_TABLE = 10.0, 10.0
CONTINUED = "continued"


@dataclass(frozen=True, slots=True)
class _Grid:
    """A table's columns as they stand: left edges and widths."""

    table: Table
    widths: tuple[float, ...]

    @property
    def width(self) -> float:
        return sum(self.widths)

    def edges(self, x: float) -> tuple[float, ...]:
        places = [x]
        for width in self.widths:
            places.append(places[-1] + width)
        return tuple(places)


def cell_words(cell: Cell, column: Column, decimal_sign: str = ".") -> str:
    """A cell as printed: numbers with their column's decimals and their sign, also within words; nothing as nothing."""
    if cell is None:
        return ""
    if isinstance(cell, str):
        return with_comma(cell) if decimal_sign == "," else cell
    if isinstance(cell, int):
        return str(cell)
    return f"{cell:.{column.digits}f}".replace(".", decimal_sign)


def table_pages(
    tables: Sequence[Table], area: FreeArea, look: Look, decimal_sign: str = "."
) -> tuple[tuple[Mark, ...], ...]:
    """Tables one under the other, on as many pages as they need.

    A table narrow enough stands beside the title block; a wider one ends above it. What is full goes on in a new column
    where the page is wide enough, else on a new page, and has its title and its head again.

    Args:
        tables: in order.
        area: free area of each page.
        look: heights and widths.
        decimal_sign: of numbers.
    Returns:
        Marks by page; one page at least.
    """
    sheet = _Pages(area, look)
    for table in tables:
        widest = area.box[2] - area.box[0]
        grid = _Grid(table, column_widths(table, widest, look, decimal_sign))
        _lay(grid, sheet, look, decimal_sign)
    return sheet.finished()


def column_widths(table: Table, most: float, look: Look, decimal_sign: str = ".") -> tuple[float, ...]:
    """Widths of a table's columns: what their words take, the widest ones made narrower until all fit.

    Args:
        table: whose columns.
        most: width of the whole table at most.
        look: height of the words.
        decimal_sign: of numbers.
    """
    wanted = []
    for i, column in enumerate(table.columns):
        words = [column.title, *(cell_words(row[i], column, decimal_sign) for row in table.rows)]
        wanted.append(max(LEAST_COLUMN, 2 * PAD + 0.2 + max(text_width(w, look.figure) for w in words)))
    widths = list(wanted)
    while sum(widths) > most + 1e-6:
        wide = max(widths)
        if wide <= LEAST_COLUMN:
            return tuple(most / len(widths) for _ in widths)
        next_wide = max((w for w in widths if w < wide - 1e-9), default=LEAST_COLUMN)
        many = [i for i, w in enumerate(widths) if w >= wide - 1e-9]
        less = min(wide - max(next_wide, LEAST_COLUMN), (sum(widths) - most) / len(many))
        for i in many:
            widths[i] -= max(less, 0.01)
    return tuple(widths)


class _Pages:
    """Pages being filled from the top down, in one column or in several where tables are narrow."""

    def __init__(self, area: FreeArea, look: Look) -> None:
        self.area = area
        self.look = look
        self.x, self.y = area.box[0], area.box[3]
        self._pages: list[list[Mark]] = [[]]
        self._right = self.x

    @property
    def fresh(self) -> bool:
        """Whether nothing stands in the column yet."""
        return self.y >= self.area.box[3]

    def floor(self, width: float) -> float:
        """How far down something that wide may reach."""
        beside = self.x + width <= self.area.block[0]
        return self.area.box[1] if beside else self.area.block[3]

    def holds(self, width: float) -> bool:
        """Whether the column has paper for something that wide; the first one is as wide as the page."""
        return self.x <= self.area.box[0] or self.x + width <= self.area.box[2] + 1e-6

    def add(self, marks: Iterator[Mark] | Sequence[Mark]) -> None:
        self._pages[-1].extend(marks)

    def took(self, width: float) -> None:
        """Notes how far to the right the column reaches."""
        self._right = max(self._right, self.x + width)

    def turn(self, width: float) -> None:
        """Begins a new column, or a new page where there is no room for one that wide."""
        beside = self._right + _BESIDE_TABLE
        self.y = self.area.box[3]
        if beside + width <= self.area.box[2]:
            self.x = beside
        else:
            self._pages.append([])
            self.x = self._right = self.area.box[0]

    def finished(self) -> tuple[tuple[Mark, ...], ...]:
        return tuple(tuple(page) for page in self._pages)


def _lay(grid: _Grid, pages: _Pages, look: Look, decimal_sign: str) -> None:
    """One table from where the page stands, over as many pages as it takes."""
    table = grid.table
    tallest = pages.area.box[3] - pages.area.block[3] - 2 * look.balloon - 3 * PAD
    heads = _cells([column.title for column in table.columns], grid, tallest / 2, look)
    body = []
    for row in table.rows:
        said = [cell_words(cell, column, decimal_sign) for cell, column in zip(row, table.columns, strict=True)]
        body.append(_cells(said, grid, tallest / 2, look))
    head_height = 2 * look.balloon + _row_height(heads)
    first = head_height + (_row_height(body[0]) if body else 0.0)
    too_low = pages.y - first < pages.floor(grid.width) and not pages.fresh
    if too_low or not pages.holds(grid.width):
        pages.turn(grid.width)
    _head(grid, heads, table.title, pages, look)
    for cells, row in zip(body, table.rows, strict=True):
        if pages.y - _row_height(cells) < pages.floor(grid.width):
            pages.turn(grid.width)
            _head(grid, heads, f"{table.title} ({CONTINUED})", pages, look)
        _row(grid, cells, [not isinstance(cell, str) for cell in row], pages, look)
    pages.y -= _AFTER_TABLE


def _cells(words: Sequence[str], grid: _Grid, room: float, look: Look) -> tuple[Fitted, ...]:
    return tuple(
        fitted(text, width - 2 * PAD, room, look.figure, look.figure, look) if text else Fitted((), look.figure)
        for text, width in zip(words, grid.widths, strict=True)
    )


def _row_height(cells: Sequence[Fitted]) -> float:
    """Of a row: its tallest cell, the ink below the last baseline, and the pads."""
    lines = max(1, *(len(cell.lines) for cell in cells))
    height = cells[0].height
    return _lift(cells) + height * (1.0 + PITCH * (lines - 1)) + 0.35 * height + 2 * PAD


def _lift(cells: Sequence[Fitted]) -> float:
    """What a row needs over its capitals, since some letters stand higher (a raised 3)."""
    over = [words_size(cell.lines[0], cell.height)[2] - cell.height for cell in cells if cell.lines]
    return max(0.0, max(over, default=0.0) + CLEAR_OF_LINE - PAD)


def _head(grid: _Grid, heads: Sequence[Fitted], title: str, pages: _Pages, look: Look) -> None:
    """The table's title and the row of heads, a wide line under it."""
    said = fitted(title, grid.width, look.balloon, look.balloon, look.label, look, single=True)
    pages.add([Text((pages.x, pages.y - 1.2 * look.balloon), line, said.height) for line in said.lines])
    pages.took(grid.width)
    pages.y -= 2 * look.balloon
    _rule(grid, pages, look)
    _row(grid, heads, [False] * len(heads), pages, look, wide=True)


def _row(
    grid: _Grid, cells: Sequence[Fitted], right: Sequence[bool], pages: _Pages, look: Look, *, wide: bool = False
) -> None:
    """A row's words and the lines beside and under it; numbers stand at the right of their cells."""
    edges = grid.edges(pages.x)
    line = pages.y
    top = line - _lift(cells)
    pages.y -= _row_height(cells)
    narrow = line_style(Meaning.SIZE, look.group).width_mm
    for i, cell in enumerate(cells):
        if right[i]:
            pages.add(tuple(cell_texts(cell, edges[i + 1] - PAD, top - PAD, "right")))
        else:
            pages.add(tuple(cell_texts(cell, edges[i] + PAD, top - PAD)))
    pages.add([Line((x, line), (x, pages.y), Meaning.FRAME, "", narrow) for x in edges])
    _rule(grid, pages, look, wide=wide)


def _rule(grid: _Grid, pages: _Pages, look: Look, *, wide: bool = False) -> None:
    x = pages.x
    width = line_style(Meaning.VISIBLE if wide else Meaning.SIZE, look.group).width_mm
    pages.add([Line((x, pages.y), (x + grid.width, pages.y), Meaning.FRAME, "", width)])
