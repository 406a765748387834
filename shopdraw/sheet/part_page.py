"""Cells on pages: one scale a sheet, filled from the upper left, off the title block and the notes. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.shape.path import Point
from shopdraw.sheet.arrange import BETWEEN_VIEWS, FreeArea
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.cell import Cell, needed_views
from shopdraw.sheet.cell_view import ComposedCell
from shopdraw.sheet.look import Look
from shopdraw.trade.scale import Scale
from shopdraw.wood.board import Face

MOST_CELLS = 12
"""Cells on a sheet, at most."""
BETWEEN_CELLS = 22.0
KEYED_BELOW = 1.3
"""Letters stand at leaders only at scales below the smallest usual one times this; words come first."""
SLACK = 1.04
"""An estimate of a cell's room is taken that much larger, so that a page rarely holds less than was counted on."""
SPARSE = 0.35
"""A page whose cells take less of it than this may take what follows, at its own scale (own choice)."""
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
    """Cells on as many pages as they need, near to their order; None where one is too large for a page.

    Filled by rows or by columns, whichever takes fewer pages. Cells that would have the last page to themselves stand
    in what earlier pages leave free, where all of them find room there.
    """
    made = [pages for by_columns in (False, True) if (pages := _pages_by(cells, area, by_columns=by_columns))]
    return min((*made, *(_without_last(pages, area) for pages in made)), key=len, default=None)


def is_sparse(page: Sequence[CellAt], area: FreeArea) -> bool:
    """Whether most of a page is left open."""
    x0, y0, x1, y1 = area.box
    taken = sum(held.cell.width * held.cell.height for held in page)
    return taken < SPARSE * (x1 - x0) * (y1 - y0)


def _without_last(pages: tuple[tuple[CellAt, ...], ...], area: FreeArea) -> tuple[tuple[CellAt, ...], ...]:
    """The pages without their last ones, as long as others have room for what these hold."""
    while len(pages) > 1:
        held = [list(page) for page in pages[:-1]]
        for one in sorted(pages[-1], key=lambda cell_at: -cell_at.cell.width * cell_at.cell.height):
            found = next(((page, at) for page in held if (at := _spot_for(one.cell, page, area)) is not None), None)
            if found is None:
                return pages
            found[0].append(CellAt(one.cell, found[1]))
        pages = tuple(tuple(page) for page in held)
    return pages


def _spot_for(cell: ComposedCell, page: Sequence[CellAt], area: FreeArea) -> Point | None:
    """Where a page has room for one more cell: as high as it goes, then as far left; None where it has none."""
    if len(page) >= MOST_CELLS:
        return None
    held = [(c.at[0], c.at[1] - c.cell.height, c.at[0] + c.cell.width, c.at[1]) for c in page]
    for left, top in _corners(held, area):
        box = (left, top - cell.height, left + cell.width, top)
        if area.holds(box) and not _meets(box, held):
            return left, top
    return None


def _pages_by(
    cells: Sequence[ComposedCell], area: FreeArea, *, by_columns: bool
) -> tuple[tuple[CellAt, ...], ...] | None:
    pages: list[tuple[CellAt, ...]] = []
    rest = list(cells)
    while rest:
        rooms, groups = [(c.width, c.height) for c in rest], [c.cell.group for c in rest]
        places = _fill(rooms, groups, area, by_columns=by_columns)
        if not places:
            return None
        pages.append(tuple(CellAt(rest[index], at) for index, at in places))
        taken = {index for index, _ in places}
        rest = [cell for index, cell in enumerate(rest) if index not in taken]
    return tuple(pages)


def stretches(
    cells: Sequence[Cell], scales: Sequence[Scale], small_enough: float, area: FreeArea, look: Look
) -> tuple[Stretch, ...]:
    """Which cells share a scale: groups together or apart, whatever takes fewest sheets, larger scales first.

    Args:
        cells: in order.
        scales: that may be used, largest first.
        small_enough: ratio below which a scale is used only for cells that fit at no larger one.
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
    rooms = {
        (cell.id, scale.name): _least_room(cell, scale.ratio, small_enough, look, area)
        for cell in cells
        for scale in scales
    }
    fits_usual = [
        any(
            _count([rooms[cell.id, scale.name] for cell in group], [cell.group for cell in group], area) is not None
            for scale in scales
            if scale.ratio >= small_enough
        )
        for group in groups
    ]
    best: list[tuple[float, tuple[Stretch, ...]] | None] = [(0.0, ())]
    for end in range(1, len(groups) + 1):
        found: tuple[float, tuple[Stretch, ...]] | None = None
        for start in range(end):
            before = best[start]
            if before is None:
                continue
            held = tuple(cell for group in groups[start:end] for cell in group)
            usual = any(fits_usual[start:end])
            for scale in scales:
                if usual and scale.ratio < small_enough:
                    break
                count = _count([rooms[cell.id, scale.name] for cell in held], [cell.group for cell in held], area)
                if count is None:
                    continue
                price = before[0] + count - WORTH * len(held) * math.log2(scale.ratio) / len(cells)
                if found is None or price < found[0] - 1e-9:
                    found = (price, (*before[1], Stretch(held, scale)))
        best.append(found)
    last = best[-1]
    return last[1] if last is not None else ()


def _count(rooms: Sequence[tuple[float, float]], groups: Sequence[int], area: FreeArea) -> int | None:
    pages, rest = 0, list(range(len(rooms)))
    while rest:
        places = _fill([rooms[i] for i in rest], [groups[i] for i in rest], area)
        if not places:
            return None
        taken = {index for index, _ in places}
        rest = [cell for index, cell in enumerate(rest) if index not in taken]
        pages += 1
    return pages


def fits_alone(width: float, height: float, area: FreeArea) -> bool:
    """Whether a cell finds a place on an empty page."""
    return bool(_fill([(width, height)], [0], area))


def _least_room(cell: Cell, scale: float, small_enough: float, look: Look, area: FreeArea) -> tuple[float, float]:
    """About how much paper a cell takes; with letters at its leaders where it wouldn't fit at a small scale else."""
    room = _room(cell, scale, look)
    worded = scale > KEYED_BELOW * small_enough or fits_alone(*room, area)
    return room if worded else _room(cell, scale, look, keyed=True)


def _room(cell: Cell, scale: float, look: Look, *, keyed: bool = False) -> tuple[float, float]:
    """About how much paper a cell takes: its views and the rows round them."""
    board = cell.board
    views = needed_views(cell)
    band = look.first_row + look.next_row + 3 * look.figure
    width = board.length * scale + 2 * band + (0.0 if keyed else _beside(cell, look))
    tall = board.width * scale * (2 if cell.mirrored else 1) + 1.8 * band + (band if cell.mirrored else 0.0)
    for face in views:
        if face in (Face.FOOT, Face.HEAD):
            said = max(words_size(note.words, look.figure)[0] for note in cell.notes if note.view is face)
            width += board.thickness * scale + 1.5 * band + (0.0 if keyed else said)
        elif face in (Face.NEAR, Face.FAR):
            tall += board.thickness * scale + 1.6 * band + BETWEEN_VIEWS
        elif face is Face.BACK:
            tall += board.width * scale + 1.6 * band + BETWEEN_VIEWS
    lines = 4 + len(cell.parts) * bool(cell.varies) + len(cell.sizes.fit_lines())
    lines += len({line for note in cell.notes for line in note.more})
    lines += len({note.words for note in cell.notes}) if keyed else 0
    return SLACK * max(width, 120.0), SLACK * (tall + 1.7 * look.figure * lines + look.balloon)


def _beside(cell: Cell, look: Look) -> float:
    """About how far words of cuts at the ends reach past the two ends."""
    ends = {False: 0.0, True: 0.0}
    length = cell.board.length
    for note in cell.notes:
        x = note.targets[0][0]
        if note.view in (Face.FACE, Face.NEAR, Face.FAR) and (x < 0.12 * length or x > 0.88 * length):
            right = x > length / 2
            ends[right] = max(ends[right], words_size(note.words, look.figure)[0] - look.first_row)
    return ends[False] + ends[True]


def _fill(
    rooms: Sequence[tuple[float, float]], groups: Sequence[int], area: FreeArea, *, by_columns: bool = False
) -> list[tuple[int, Point]]:
    """Which cells stand on a page, and their upper left corners: each as high as it goes, then as far left;
    by columns the other way round.

    Where the next cell finds no place, later ones fill what is left, from its own group alone. The first cell always
    comes first.
    """
    held: list[Bounds] = []
    found: list[tuple[int, Point]] = []
    last: int | None = None
    for index, (width, height) in enumerate(rooms):
        if len(found) == MOST_CELLS or (last is not None and groups[index] > last):
            break
        corners = _corners(held, area, by_columns=by_columns)
        spots = ((left, top - height, left + width, top) for left, top in corners)
        place = next((box for box in spots if area.holds(box) and not _meets(box, held)), None)
        if place is not None:
            held.append(place)
            found.append((index, (place[0], place[3])))
        elif index == 0:
            break
        elif last is None:
            last = groups[index]
    return found


def _corners(held: Sequence[Bounds], area: FreeArea, *, by_columns: bool = False) -> list[Point]:
    """Upper left corners that a further cell may have: each as high as it goes, then as far left; or the other way."""
    x0, _, _, y1 = area.box
    lefts = sorted({x0, *(box[2] + BETWEEN_CELLS for box in held)})
    tops = sorted({y1, *(box[1] - BETWEEN_CELLS for box in held)}, reverse=True)
    if by_columns:
        return [(left, top) for left in lefts for top in tops]
    return [(left, top) for top in tops for left in lefts]


def _meets(box: Bounds, held: Sequence[Bounds]) -> bool:
    """Whether a cell comes nearer to another one than cells may stand."""
    by = BETWEEN_CELLS - 1e-6
    x0, y0, x1, y1 = box[0] - by, box[1] - by, box[2] + by, box[3] + by
    return any(x0 < other[2] and x1 > other[0] and y0 < other[3] and y1 > other[1] for other in held)
