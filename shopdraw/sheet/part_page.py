"""Cells on pages: one scale a sheet, rows filled from the left, off the title block and the notes. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.shape.path import Point
from shopdraw.sheet.arrange import BETWEEN_VIEWS, FreeArea
from shopdraw.sheet.cell import Cell, needed_views
from shopdraw.sheet.cell_view import ComposedCell
from shopdraw.sheet.look import Look
from shopdraw.trade.scale import Scale
from shopdraw.wood.board import Face

MOST_CELLS = 12
"""Cells on a sheet, at most."""
BETWEEN_CELLS = 22.0
WORTH = 2.0
"""Sheets that it is worth to draw all parts twice as large (own choice)."""


@dataclass(frozen=True, slots=True)
class CellAt:
    """A cell and its upper left corner on the paper."""

    cell: ComposedCell
    at: Point


@dataclass(frozen=True, slots=True)
class Stretch:
    """Cells that follow each other on sheets of one scale."""

    cells: tuple[Cell, ...]
    scale: Scale


def pages_of(cells: Sequence[ComposedCell], area: FreeArea) -> tuple[tuple[CellAt, ...], ...] | None:
    """Cells in rows on as many pages as they need; None where one is too large for a page."""
    pages: list[tuple[CellAt, ...]] = []
    rest = list(cells)
    while rest:
        places = _fill([(c.width, c.height) for c in rest[:MOST_CELLS]], area)
        if not places:
            return None
        page = [CellAt(cell, at) for cell, at in zip(rest, places, strict=False)]
        pages.append(tuple(_spread(page, area)))
        rest = rest[len(places) :]
    return tuple(pages)


def stretches(cells: Sequence[Cell], scales: Sequence[Scale], area: FreeArea, look: Look) -> tuple[Stretch, ...]:
    """Which cells share a scale: groups together or apart, whatever takes fewest sheets, larger scales first.

    Args:
        cells: in order.
        scales: that may be used, largest first.
        area: free area of each sheet.
        look: heights and distances.
    Returns:
        In order; empty where some part fits at none of the scales.
    """
    groups: list[list[Cell]] = []
    for cell in cells:
        if groups and groups[-1][0].group == cell.group:
            groups[-1].append(cell)
        else:
            groups.append([cell])
    best: list[tuple[float, tuple[Stretch, ...]] | None] = [(0.0, ())]
    for end in range(1, len(groups) + 1):
        found: tuple[float, tuple[Stretch, ...]] | None = None
        for start in range(end):
            before = best[start]
            if before is None:
                continue
            held = tuple(cell for group in groups[start:end] for cell in group)
            for scale in scales:
                count = _count([_room(cell, scale.ratio, look) for cell in held], area)
                if count is None:
                    continue
                price = before[0] + count - WORTH * len(held) * math.log2(scale.ratio) / len(cells)
                if found is None or price < found[0] - 1e-9:
                    found = (price, (*before[1], Stretch(held, scale)))
        best.append(found)
    last = best[-1]
    return last[1] if last is not None else ()


def _count(rooms: Sequence[tuple[float, float]], area: FreeArea) -> int | None:
    pages, done = 0, 0
    while done < len(rooms):
        places = _fill(rooms[done : done + MOST_CELLS], area)
        if not places:
            return None
        done += len(places)
        pages += 1
    return pages


def _room(cell: Cell, scale: float, look: Look) -> tuple[float, float]:
    """About how much paper a cell takes: its views and the rows round them."""
    board = cell.board
    views = needed_views(cell)
    band = look.first_row + look.next_row + 3 * look.figure
    width = board.length * scale + 2 * band
    tall = board.width * scale * (2 if cell.mirrored else 1) + 1.8 * band + (band if cell.mirrored else 0.0)
    for face in views:
        if face in (Face.FOOT, Face.HEAD):
            width += board.thickness * scale + 2 * band
        elif face in (Face.NEAR, Face.FAR):
            tall += board.thickness * scale + 1.6 * band + BETWEEN_VIEWS
        elif face is Face.BACK:
            tall += board.width * scale + 1.6 * band + BETWEEN_VIEWS
    lines = 3 + len(cell.parts) * bool(cell.varies) + len(cell.sizes.fit_lines())
    return max(width, 120.0), tall + 1.7 * look.figure * lines + look.balloon


def _fill(rooms: Sequence[tuple[float, float]], area: FreeArea) -> list[Point]:
    """Upper left corners of the first cells that fit on a page."""
    x0, y0, x1, y1 = area.box
    bx0, _, _, by1 = area.block
    places: list[Point] = []
    top, done = y1, 0
    while done < len(rooms):
        row = _row([*rooms[done:]], top, area)
        if not row:
            break
        x = x0
        for width, _ in rooms[done : done + row]:
            places.append((x, top))
            x += width + BETWEEN_CELLS
        top -= max(height for _, height in rooms[done : done + row]) + BETWEEN_CELLS
        done += row
    return places


def _row(rooms: Sequence[tuple[float, float]], top: float, area: FreeArea) -> int:
    """How many cells make the next row."""
    x0, y0, x1, _ = area.box
    bx0, _, _, by1 = area.block
    count, x = 0, x0
    for width, height in rooms:
        right = bx0 if top - height < by1 - 1e-6 else x1
        if top - height < y0 - 1e-6 or x + width > right + 1e-6:
            break
        x += width + BETWEEN_CELLS
        count += 1
    return count


def _spread(page: Sequence[CellAt], area: FreeArea) -> Sequence[CellAt]:
    """The same cells with what is left of the paper shared out between columns and rows."""
    rows: dict[float, list[CellAt]] = {}
    for held in page:
        rows.setdefault(held.at[1], []).append(held)
    x1, y0 = area.box[2], area.box[1]
    made: list[CellAt] = []
    lowest = min(held.at[1] - held.cell.height for held in page)
    over_block = min(top for top in rows) - max(h.cell.height for h in rows[min(rows)]) >= area.block[3]
    floor = area.block[3] if over_block else y0
    spare_y = max(0.0, lowest - floor) / (len(rows) + 1)
    for n, (top, row) in enumerate(sorted(rows.items(), reverse=True)):
        low = min(held.at[1] - held.cell.height for held in row) - spare_y * (n + 1)
        right = area.block[0] if low < area.block[3] else x1
        spare = max(0.0, right - max(h.at[0] + h.cell.width for h in row)) / (len(row) + 1)
        spare = min(spare, 30.0)
        for column, held in enumerate(row):
            made.append(CellAt(held.cell, (held.at[0] + spare * (column + 1), top - min(spare_y, 25.0) * (n + 1))))
    return made
