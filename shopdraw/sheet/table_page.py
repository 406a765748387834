"""Tables on paper: column widths from their words, wrapped cells, heads again on each page. Paper mm."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.letters import text_width
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import with_comma
from shopdraw.sheet.arrange import FreeArea
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.look import Look
from shopdraw.sheet.wrap import PITCH, Fitted, cell_texts, fitted

CLEAR_OF_LINE = 0.6
"""Least between a table's line and the letters under it."""
PAD = 1.5
"""From a cell's line to its words."""
LEAST_COLUMN = 14.0
_AFTER_TABLE, _BESIDE_TABLE = 10.0, 10.0
_NARROWED = 0.3
"""A table stands beside others at no less than so much of the width that its words take."""
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

    A table narrow enough stands beside the title block; a wider one ends above it, or is made narrower where it then
    needs no further page. One that doesn't fit under the others stands beside them where the page has room for the
    whole of it. What is full goes on in a new column where the page is wide enough, else on a new page, and has its
    title and its head again.

    Args:
        tables: in order.
        area: free area of each page.
        look: heights and widths.
        decimal_sign: of numbers.
    Returns:
        Marks by page; one page at least.
    """
    pages = _Pages(area, look)
    for table in tables:
        _lay(table, pages, look, decimal_sign)
    return pages.finished()


def column_widths(table: Table, most: float, look: Look, decimal_sign: str = ".") -> tuple[float, ...]:
    """Widths of a table's columns: what their words take; heads are wrapped first, then the widest columns are made
    narrower until all fit.

    Args:
        table: whose columns.
        most: width of the whole table at most.
        look: height of the words.
        decimal_sign: of numbers.
    """
    heads = [_width(column.title, look) for column in table.columns]
    bodies = [
        max((_width(cell_words(row[i], column, decimal_sign), look) for row in table.rows), default=LEAST_COLUMN)
        for i, column in enumerate(table.columns)
    ]
    widths = [max(pair) for pair in zip(heads, bodies, strict=True)]
    if sum(widths) > most:
        longest = [max(_width(word, look) for word in column.title.split()) for column in table.columns]
        widths = [max(pair) for pair in zip(longest, bodies, strict=True)]
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


def _width(words: str, look: Look) -> float:
    return max(LEAST_COLUMN, 2 * PAD + 0.2 + text_width(words, look.figure))


class _Pages:
    """Pages being filled from the top down, in one column or in several where tables are narrow."""

    def __init__(self, area: FreeArea, look: Look) -> None:
        self.area = area
        self.look = look
        self.x, self.y = area.box[0], area.box[3]
        self._pages: list[list[Mark]] = [[]]
        self._held: list[Bounds] = []

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

    def took(self, top: float, width: float) -> None:
        """Notes what stands from `top` down to where the column now is."""
        self._held.append((self.x, self.y, self.x + width, top))

    def lowered(self, width: float) -> None:
        """Goes below what stands beside the column and would be in the way of something that wide."""
        for x0, y0, _, _ in self._held:
            if x0 > self.x + 1e-6 and x0 < self.x + width + _BESIDE_TABLE and y0 - _AFTER_TABLE < self.y:
                self.y = y0 - _AFTER_TABLE

    def beside(self) -> Iterator[Bounds]:
        """Boxes of this page that are free to the right of what stands: over the title block, then left of it."""
        x0, y0, x1, y1 = self.area.box
        for top in sorted({y1, *(box[3] for box in self._held)}, reverse=True):
            right = max((box[2] for box in self._held if box[1] < top - 1e-6), default=x0)
            yield right + _BESIDE_TABLE, self.area.block[3], x1, top
            yield right + _BESIDE_TABLE, y0, self.area.block[0], top

    def turn(self, width: float) -> None:
        """Begins a new column, or a new page where there is no room for one that wide."""
        beside = max((box[2] for box in self._held), default=self.x) + _BESIDE_TABLE
        self.y = self.area.box[3]
        if beside + width <= self.area.box[2]:
            self.x = beside
        else:
            self._pages.append([])
            self._held = []
            self.x = self.area.box[0]

    def finished(self) -> tuple[tuple[Mark, ...], ...]:
        return tuple(tuple(page) for page in self._pages)


@dataclass(frozen=True, slots=True)
class _Made:
    """A table with its words fitted into its columns."""

    grid: _Grid
    heads: tuple[Fitted, ...]
    body: tuple[tuple[Fitted, ...], ...]
    title: float

    @property
    def first(self) -> float:
        """Height of title, heads and the first row."""
        return self.title + _row_height(self.heads) + (_row_height(self.body[0]) if self.body else 0.0)

    @property
    def height(self) -> float:
        """Of the whole table."""
        return self.title + _row_height(self.heads) + sum(map(_row_height, self.body))


def _made(table: Table, most: float, pages: _Pages, look: Look, decimal_sign: str) -> _Made:
    tallest = pages.area.box[3] - pages.area.block[3] - 2 * look.balloon - 3 * PAD
    grid = _Grid(table, column_widths(table, most, look, decimal_sign))
    heads = _cells([column.title for column in table.columns], grid, tallest / 2, look)
    body = []
    for row in table.rows:
        said = [cell_words(cell, column, decimal_sign) for cell, column in zip(row, table.columns, strict=True)]
        body.append(_cells(said, grid, tallest / 2, look))
    return _Made(grid, heads, tuple(body), 2 * look.balloon)


def _lay(table: Table, pages: _Pages, look: Look, decimal_sign: str) -> None:
    """One table from where the page stands, over as many pages as it takes."""

    def made_for(most: float) -> _Made:
        return _made(table, most, pages, look, decimal_sign)

    made = made_for(pages.area.box[2] - pages.area.box[0])
    pages.lowered(made.grid.width)
    if not _fits(made, pages):
        slim = made_for(pages.area.block[0] - pages.x) if made.grid.width > pages.area.block[0] - pages.x else made
        spot = _beside(made, made_for, pages) if not pages.fresh else None
        if slim is not made and _fits(slim, pages):
            made = slim
        elif spot is not None:
            _lay_at(*spot, pages, look)
            return
    _lay_down(made, pages, look)


def _fits(made: _Made, pages: _Pages) -> bool:
    """Whether the whole table fits where the page stands."""
    return pages.holds(made.grid.width) and pages.y - made.height >= pages.floor(made.grid.width)


def _beside(made: _Made, made_for: Callable[[float], _Made], pages: _Pages) -> tuple[_Made, float, float] | None:
    """The whole table beside others, as wide as it can be there, and its upper left corner; None without room."""
    spots = sorted(pages.beside(), key=lambda box: (-min(box[2] - box[0], made.grid.width), box[3]))
    for x0, y0, x1, y1 in spots:
        if x1 - x0 < _NARROWED * made.grid.width:
            break
        held = made if made.grid.width <= x1 - x0 else made_for(x1 - x0)
        if held.height <= y1 - y0:
            return held, x0, y1
    return None


def _lay_at(made: _Made, x: float, y: float, pages: _Pages, look: Look) -> None:
    """A whole table elsewhere on the page; the column goes on where it was."""
    back = pages.x, pages.y
    pages.x, pages.y = x, y
    _head(made, made.grid.table.title, pages, look)
    for cells, row in zip(made.body, made.grid.table.rows, strict=True):
        _row(made.grid, cells, [not isinstance(cell, str) for cell in row], pages, look)
    pages.took(y, made.grid.width)
    pages.x, pages.y = back


def _lay_down(made: _Made, pages: _Pages, look: Look) -> None:
    grid, table = made.grid, made.grid.table
    too_low = pages.y - made.first < pages.floor(grid.width) and not pages.fresh
    if too_low or not pages.holds(grid.width):
        pages.turn(grid.width)
    top = pages.y
    _head(made, table.title, pages, look)
    for cells, row in zip(made.body, table.rows, strict=True):
        if pages.y - _row_height(cells) < pages.floor(grid.width):
            pages.took(top, grid.width)
            pages.turn(grid.width)
            top = pages.y
            _head(made, f"{table.title} ({CONTINUED})", pages, look)
        _row(grid, cells, [not isinstance(cell, str) for cell in row], pages, look)
    pages.took(top, grid.width)
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


def _head(made: _Made, title: str, pages: _Pages, look: Look) -> None:
    """The table's title and the row of heads, a wide line under it."""
    grid = made.grid
    said = fitted(title, grid.width, look.balloon, look.balloon, look.label, look, single=True)
    pages.add([Text((pages.x, pages.y - 1.2 * look.balloon), line, said.height) for line in said.lines])
    pages.y -= made.title
    _rule(grid, pages, look)
    _row(grid, made.heads, [False] * len(made.heads), pages, look, wide=True)


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
