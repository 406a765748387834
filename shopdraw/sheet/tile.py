"""Templates tiled on small paper: shared strips, crosses at the same places of the piece, a key map, check lines."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.drawing.line_style import TEMPLATE_MM
from shopdraw.drawing.mark import Area, Hatching, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet
from shopdraw.shape.path import Point, rectangle
from shopdraw.sheet.board_view import inside
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.clip import clipped
from shopdraw.sheet.free_spot import Spots
from shopdraw.sheet.look import INCH
from shopdraw.sheet.printer import Correction
from shopdraw.sheet.template import CUT_TO, SMALL, check_words, correction_words, furnished
from shopdraw.sheet.template_word import Template
from shopdraw.trade.paper import PaperSize

MARGIN = 10.0
OVERLAP = 15.0
CROSS = 5.0
"""Half the length of a cross's arms."""
ALSO_CALLED = {"ANSI A": "Letter", "ANSI B": "Tabloid"}
"""What people call the paper in a printer."""
_MAP = 24.0


@dataclass(frozen=True, slots=True)
class Grid:
    """How a board is parted into pages.

    Attributes:
        width, height: of the paper as it lies, mm.
        columns, rows: pages along u and across.
        x0, y0: lower left corner of the whole assembled sheet, in the board's coordinates.
    """

    width: float
    height: float
    columns: int
    rows: int
    x0: float
    y0: float

    @property
    def pages(self) -> int:
        """How many there are."""
        return self.columns * self.rows

    @property
    def step(self) -> Point:
        """From one page to the next."""
        return self.width - 2 * MARGIN - OVERLAP, self.height - 2 * MARGIN - OVERLAP

    @property
    def box(self) -> Bounds:
        """Of the whole assembled sheet."""
        dx, dy = self.step
        return self.x0, self.y0, self.x0 + self.columns * dx + OVERLAP, self.y0 + self.rows * dy + OVERLAP

    def tile(self, column: int, row: int) -> Bounds:
        """What a page shows, in the board's coordinates; row 0 is the uppermost."""
        dx, dy = self.step
        x, y = self.x0 + column * dx, self.y0 + (self.rows - 1 - row) * dy
        return x, y, x + dx + OVERLAP, y + dy + OVERLAP


@dataclass(frozen=True, slots=True)
class Cross:
    """A registration mark: its name and where it stands on the piece, mm."""

    name: str
    at: Point


def grid_for(length: float, width: float, paper: PaperSize, at: Point = (0.0, 0.0)) -> Grid:
    """The grid with fewest pages, the paper upright or on its side; upright when both take as many.

    Args:
        length, width: of the part as it lies, mm.
        paper: any size.
        at: its lower left corner.
    """
    short, long = sorted((paper.width_mm, paper.height_mm))
    grids = [_grid(length, width, w, h, at) for w, h in ((short, long), (long, short))]
    return min(grids, key=lambda grid: grid.pages)


def _grid(length: float, width: float, paper_width: float, paper_height: float, at: Point) -> Grid:
    counts = []
    for size, paper in ((length, paper_width), (width, paper_height)):
        step = paper - 2 * MARGIN - OVERLAP
        counts.append(max(1, math.ceil((size - OVERLAP) / step - 1e-9)))
    columns, rows = counts
    spare_x = columns * (paper_width - 2 * MARGIN - OVERLAP) + OVERLAP - length
    spare_y = rows * (paper_height - 2 * MARGIN - OVERLAP) + OVERLAP - width
    return Grid(paper_width, paper_height, columns, rows, at[0] - spare_x / 2, at[1] - spare_y / 2)


def tiled_sheets(template: Template, paper: PaperSize, correction: Correction | None = None) -> tuple[Sheet, ...]:
    """The template on as many pages as it takes, row by row from the upper left.

    Args:
        template: whose.
        paper: A4, Letter, A3, Tabloid, ...
        correction: for the printer that they go to.
    Raises:
        NoRoomOnTemplate: a page has no room for its words or check lines.
    """
    x0, y0, x1, y1 = template.box
    grid = grid_for(x1 - x0, y1 - y0, paper, (x0, y0))
    crosses = seam_crosses(grid)
    overall, line = overall_check(template, grid)
    return tuple(
        _page(template, grid, paper, row, column, crosses, overall, line, correction)
        for row in range(grid.rows)
        for column in range(grid.columns)
    )


def seam_crosses(grid: Grid) -> tuple[Cross, ...]:
    """Two crosses on each strip that two pages share, numbered from the upper left."""
    dx, dy = grid.step
    places: list[Point] = []
    for row in range(grid.rows):
        bottom = grid.y0 + (grid.rows - 1 - row) * dy
        for column in range(1, grid.columns):
            x = grid.x0 + column * dx + OVERLAP / 2
            places += [(x, bottom + OVERLAP + share * (dy - OVERLAP)) for share in (0.85, 0.15)]
        if row + 1 < grid.rows:
            y = bottom + OVERLAP / 2
            for column in range(grid.columns):
                left = grid.x0 + column * dx
                places += [(left + OVERLAP + share * (dx - OVERLAP), y) for share in (0.15, 0.85)]
    places.sort(key=lambda p: (-round(p[1], 3), round(p[0], 3)))
    return tuple(Cross(str(n), at) for n, at in enumerate(places, 1))


def overall_check(template: Template, grid: Grid) -> tuple[tuple[Cross, Cross], tuple[Mark, ...]]:
    """Two named crosses far apart along the piece, a round length from each other, and the line between them."""
    x0, y0, x1, y1 = template.box
    unit = INCH if template.inch else 100.0
    room = x1 - x0 - 40.0
    length = max(1, math.floor(room / unit)) * unit
    left = (x0 + x1 - length) / 2
    outline = template.board.shape.outline
    shares: tuple[float, ...] = (0.4, 0.35, 0.45, 0.3, 0.5, 0.25, 0.55, 0.2, 0.6, 0.15)
    if template.board.reference_edge == "far":
        shares = tuple(1.0 - share for share in shares)
    dy = grid.step[1]

    def good(y: float) -> bool:
        off_seam = all(abs(y - (grid.y0 + n * dy + OVERLAP / 2)) > OVERLAP / 2 + CROSS for n in range(1, grid.rows))
        return off_seam and inside(outline, (left, y)) and inside(outline, (left + length, y))

    heights = [y0 + share * (y1 - y0) for share in shares]
    y = next((height for height in heights if good(height)), heights[0])
    ends = Cross("A", (left, y)), Cross("B", (left + length, y))
    return ends, (Line(ends[0].at, ends[1].at, Meaning.MOVING, "", TEMPLATE_MM),)


def overall_words(template: Template, ends: tuple[Cross, Cross]) -> str:
    """What the overall check line should measure once the pages are joined."""
    length = math.dist(ends[0].at, ends[1].at)
    figure = f"{length / INCH:.0f} in" if template.inch else f"{length:.1f} mm"
    return f"Joined sheet, A to B: {figure}"


def _page(
    template: Template,
    grid: Grid,
    paper: PaperSize,
    row: int,
    column: int,
    crosses: tuple[Cross, ...],
    overall: tuple[Cross, Cross],
    line: tuple[Mark, ...],
    correction: Correction | None,
) -> Sheet:
    tile = grid.tile(column, row)
    name = ALSO_CALLED.get(paper.name, paper.name)
    where = f"row {row + 1} of {grid.rows}, column {column + 1} of {grid.columns}"
    words = (
        f"{template.title}: {where}",
        f"{template.piece}; paper {name} ({grid.width:.1f} × {grid.height:.1f} mm)",
        "Print at 100 %, do not fit to the paper.",
        *check_words(template.inch),
        overall_words(template, overall),
        f"Join at the crosses; {CUT_TO}.",
        *correction_words(template, correction),
    )
    fixed: list[Mark] = list(clipped(line, tile))
    spots = Spots(tile)
    spots.add([*clipped(template.lines, tile), *fixed])
    for cross in (*crosses, *overall):
        made = tuple(_cross_marks(cross, tile, spots))
        spots.add(made)
        fixed += made
    fixed += _key_map(template, grid, row, column, tile, spots)
    inner = _inner(grid, row, column, tile)
    near = ((inner[0] + inner[2]) / 2, (inner[1] + inner[3]) / 2)
    marks = furnished(template, tile, words, near, fixed=fixed, inner=inner)
    label = template.board.label
    drawing = Drawing(f"template.{label}.{row + 1}.{column + 1}", "", marks)
    at = (MARGIN - tile[0], MARGIN - tile[1])
    sheet = Paper(name, grid.width, grid.height, (MARGIN, MARGIN, grid.width - MARGIN, grid.height - MARGIN), "small")
    number = str(row * grid.columns + column + 1)
    key = f"template-{label}-{row + 1}-{column + 1}"
    stretch = correction.on(grid.width, grid.height) if correction is not None else (1.0, 1.0)
    return Sheet(key, number, f"Template {template.title}: {where}", sheet, (Placed(drawing, 1.0, at),), (), stretch)


def _inner(grid: Grid, row: int, column: int, tile: Bounds) -> Bounds:
    """The page less the strips that it shares, so that words aren't pasted over."""
    x0, y0, x1, y1 = tile
    return (
        x0 + (OVERLAP if column > 0 else 0.5),
        y0 + (OVERLAP if row + 1 < grid.rows else 0.5),
        x1 - (OVERLAP if column + 1 < grid.columns else 0.5),
        y1 - (OVERLAP if row > 0 else 0.5),
    )


def _cross_marks(cross: Cross, tile: Bounds, spots: Spots) -> Iterator[Mark]:
    """A cross with its name beside it, if it stands on the page."""
    (x, y), (x0, y0, x1, y1) = cross.at, tile
    if not (x0 <= x <= x1 and y0 <= y <= y1):
        return
    arms = (
        Line((x - CROSS, y), (x + CROSS, y), Meaning.SIZE, "", TEMPLATE_MM),
        Line((x, y - CROSS), (x, y + CROSS), Meaning.SIZE, "", TEMPLATE_MM),
    )
    yield from clipped(arms, tile)
    width, below, above = words_size(cross.name, SMALL)
    for sx, sy in ((sx, sy) for rise in (1.0, 2.4) for sy in (rise, -rise) for sx in (1.0, -1.0)):
        at = (x + sx * (width / 2 + 1.0), y + sy * ((below + above) / 2 + 1.0))
        if spots.free(at, width, below + above, 0.4):
            yield Text((at[0], at[1] - (above - below) / 2), cross.name, SMALL, "middle")
            return


def _key_map(template: Template, grid: Grid, row: int, column: int, tile: Bounds, spots: Spots) -> tuple[Mark, ...]:
    """A small picture of all pages with this one filled and the outline over them; left out where there is no room."""
    gx0, gy0, gx1, gy1 = grid.box
    scale = _MAP / max(gx1 - gx0, gy1 - gy0)
    width, height = (gx1 - gx0) * scale, (gy1 - gy0) * scale
    inner = _inner(grid, row, column, tile)
    near = (inner[2] - width / 2, inner[1] + height / 2)
    held = spots.find(width + 2.0, height + 2.0, near)
    if held is None:
        return ()
    left, foot = held[0] - width / 2, held[1] - height / 2
    dx, dy = width / grid.columns, height / grid.rows
    y = foot + (grid.rows - 1 - row) * dy
    here = rectangle(left + column * dx, y, left + (column + 1) * dx, y + dy)
    made: list[Mark] = [Area(here, (), Hatching("grey"))]
    uprights = [((left + n * dx, foot), (left + n * dx, foot + height)) for n in range(grid.columns + 1)]
    levels = [((left, foot + n * dy), (left + width, foot + n * dy)) for n in range(grid.rows + 1)]
    made += [Line(p, q, Meaning.WORD, "", 0.18) for p, q in (*uprights, *levels)]
    corners = template.board.shape.outline.corners
    small = [(left + (c.x - gx0) * scale, foot + (c.y - gy0) * scale) for c in corners]
    made += [Line(p, q, Meaning.WORD, "", TEMPLATE_MM) for p, q in zip(small, [*small[1:], small[0]], strict=True)]
    return tuple(made)
