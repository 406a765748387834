"""Part sheets: one cell for each distinct part, from its outline and cuts themselves."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from shopdraw.drawing.mark import Mark, Text
from shopdraw.drawing.sheet import Sheet
from shopdraw.lists.rough_size import Yard, rough_of, yard_of
from shopdraw.piece.design import Design
from shopdraw.sheet.arrange import OFF_FRAME, FreeArea, Standing, free_area
from shopdraw.sheet.caution_note import ABOVE_BLOCK, INSET, LEAST_BESIDE, WIDE_SHARE
from shopdraw.sheet.cell import Cell, cells
from shopdraw.sheet.cell_fact import cell_facts, moved_to, overall_facts
from shopdraw.sheet.cell_heading import stock_words
from shopdraw.sheet.cell_view import ComposedCell, compose_cell, shifted
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.fact import Fact
from shopdraw.sheet.figure import Writing, write_figures
from shopdraw.sheet.look import Look
from shopdraw.sheet.manner import PAPER, larger_papers, manner_of, title_fields
from shopdraw.sheet.part_page import CellAt, Stretch, fits_alone, is_sparse, pages_of, stretches
from shopdraw.sheet.title_block import WIDTH, TitleFields
from shopdraw.sheet.wrap import PITCH, wrapped
from shopdraw.trade.cautions import cautions_for
from shopdraw.trade.paper import PaperSize, paper
from shopdraw.trade.scale import Scale
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

GROUP_NAMES = ("sides", "case", "frames and rails", "drawers", "lid and supports", "compartments", "plinth")
"""What a sheet of each group is called."""
KEY = (
    "Cuts are located by their near side, from the reference end and the reference edge.",
    "Dado, groove, rabbet, tongue: width × depth. All others: along the grain × across it × depth.",
    "A loop marks the reference face, its tail runs to the reference edge; a V marks that edge.",
    "T × W × L: finished thickness, width and length, tenons and long points included.",
)
MOST_STOCKS = 2
"""Stocks that the title block names."""
LARGEST = 1.0
SMALL_ENOUGH = {"large": 0.2, "medium": 0.1, "small": 0.1}
"""Part sheets are drawn between full size and this, by group of paper; smaller only where a part doesn't fit else."""


class NoRoomForPart(ValueError):
    """A part that is too large for the paper at every scale; the message names it."""


@dataclass(frozen=True, slots=True)
class PartPage:
    """What one part sheet holds."""

    scale: Scale
    cells: tuple[CellAt, ...]


def part_sheets(
    design: Design, assembly: Assembly, look: Look, size: PaperSize, fields: TitleFields, first_number: int, count: int,
    yard: Yard | None = None,
) -> list[Sheet]:
    """The part sheets of a piece.

    Args:
        design: for units and projection.
        assembly: the piece.
        look, size: of the sheets.
        fields: what the title block says; scale and material are filled in.
        first_number: number of the first of these sheets.
        count: sheets in the whole set.
        yard: what rough sizes follow from; None for the stated defaults.
    Raises:
        NoRoomForPart: a part is too large for the paper at every scale.
    """
    manner = manner_of(design)
    pages = part_pages(assembly, manner.writing, manner.scales, look, size, manner.third_angle, yard or yard_of(design))
    return [_sheet(page, n, design, look, size, fields, first_number, count) for n, page in enumerate(pages)]


def count_part_sheets(
    design: Design, assembly: Assembly, look: Look, size: PaperSize, yard: Yard | None = None
) -> int:
    """How many part sheets there will be."""
    manner = manner_of(design)
    own = yard or yard_of(design)
    return len(part_pages(assembly, manner.writing, manner.scales, look, size, manner.third_angle, own))


def board_sheets(design: Design, assembly: Assembly, board: Board, yard: Yard | None = None) -> list[Sheet]:
    """The part sheet of one board alone, with its pair or those alike but for one size, on paper that prints anywhere.

    Its figures are those of the whole set: a string never differs from one sheet to the other.

    Args:
        design: for units, style and projection.
        assembly: the piece.
        board: one of its boards.
        yard: what rough sizes follow from; None for the stated defaults.
    Raises:
        NoRoomForPart: it is too large for every paper of the series.
        NotInTable: the piece names a paper that isn't known.
    """
    asked = manner_of(design)
    sizes = larger_papers(paper(PAPER[asked.style, "bench"]))
    for size in sizes:
        manner = asked.on(size)
        try:
            pages = part_pages(
                assembly, manner.writing, manner.scales, manner.look, size, manner.third_angle,
                yard or yard_of(design), only=board.id,
            )
        except NoRoomForPart:
            if size is sizes[-1]:
                raise
            continue
        if pages[0].scale.ratio >= SMALL_ENOUGH[manner.look.group] or size is sizes[-1]:
            break
    fields = title_fields(design, manner)
    made = [_sheet(page, n, design, manner.look, size, fields, 1, len(pages)) for n, page in enumerate(pages)]
    return [replace(sheet, key=f"part-{board.label}-{sheet.number}") for sheet in made]


@lru_cache(maxsize=8)
def part_pages(
    assembly: Assembly,
    writing: Writing,
    scales: tuple[Scale, ...],
    look: Look,
    size: PaperSize,
    third_angle: bool,
    yard: Yard,
    only: str = "",
) -> tuple[PartPage, ...]:
    """Cells on pages, at the scales that take fewest sheets; `only` the one that a board of that id is in."""
    whole = tuple(replace(cell, rough=rough_of(cell.board, yard)) for cell in cells(assembly, writing))
    every = tuple(cell for cell in whole if not only or only in cell.boards)
    allowed = [scale for scale in scales if scale.ratio <= LARGEST]
    area = _area(size, look)
    figures = write_figures(facts_of(whole, assembly), writing)

    def composed_at(held: Sequence[Cell], scale: Scale) -> list[ComposedCell]:
        return [_composed(cell, assembly, figures, scale.ratio, look, area, third_angle=third_angle) for cell in held]

    made: list[PartPage] = []
    waiting = list(stretches(every, allowed, SMALL_ENOUGH[look.group], area, look) or (Stretch(every, allowed[-1]),))
    while waiting:
        stretch = waiting.pop(0)
        for scale in allowed[allowed.index(stretch.scale) :]:
            composed = composed_at(stretch.cells, scale)
            pages = pages_of(composed, area)
            if pages is not None:
                break
        else:
            tall = next((c.cell for c in composed if not fits_alone(c.width, c.height, area)), stretch.cells[0])
            raise NoRoomForPart(
                f"{tall.board.label} {tall.board.name}: {size.name} holds it at no scale down to "
                f"{allowed[-1].name}; a larger paper is needed"
            )
        if waiting and waiting[0].scale.ratio > scale.ratio and is_sparse(pages[-1], area):
            shared = pages_of([*composed, *composed_at(waiting[0].cells, scale)], area)
            if shared is not None and len(shared) <= len(pages):
                pages, waiting = shared, waiting[1:]
        made += [PartPage(scale, page) for page in pages]
    return tuple(made)


def _composed(
    cell: Cell,
    assembly: Assembly,
    figures: Mapping[str, str],
    scale: float,
    look: Look,
    area: FreeArea,
    *,
    third_angle: bool,
) -> ComposedCell:
    """A cell with words at its leaders, or with letters where it is too large for a page else."""
    for keyed, beside in ((False, False), (True, False), (True, True)):
        made = compose_cell(cell, assembly, figures, scale, look, third_angle=third_angle, keyed=keyed, beside=beside)
        if fits_alone(made.width, made.height, area):
            break
    return made


def facts_of(every: tuple[Cell, ...], assembly: Assembly) -> tuple[Fact, ...]:
    """All facts of all cells; a pair's length and width stand on its lower board."""
    facts: list[Fact] = []
    for cell in every:
        facts += [fact for told in cell_facts(cell, assembly).values() for fact in told]
        if cell.mirrored:
            view = f"part.{cell.mirrored[0].first.label}.face"
            facts += [moved_to(fact, view) for fact in overall_facts(cell, view, "right")]
    return tuple(facts)


def _sheet(
    page: PartPage, index: int, design: Design, look: Look, size: PaperSize, fields: TitleFields, first: int, count: int
) -> Sheet:
    standing: list[Standing] = []
    marks: list[Mark] = list(_noted(size, look)[1])
    for held in page.cells:
        x, y = held.at
        standing += [Standing(s.view, (s.at[0] + x, s.at[1] + y)) for s in held.cell.views]
        marks += [shifted(mark, held.at) for mark in held.cell.marks]
    names = [GROUP_NAMES[group] for group in sorted({held.cell.cell.group for held in page.cells})]
    stocks = dict.fromkeys(stock_words(held.cell.cell.board.stock).removeprefix("stock ") for held in page.cells)
    material = "; ".join(stocks) if len(stocks) <= MOST_STOCKS else "as given over each part"
    filled = replace(fields, scale=page.scale.printed, material=material, projection=manner_of(design).projection)
    title = "Parts: " + ", ".join(names)
    return compose_sheet(f"parts-{index + 1}", str(first + index), count, title, size, standing, filled, look, marks)


def _area(size: PaperSize, look: Look) -> FreeArea:
    """The sheet less the title block and the notes over or beside it."""
    return _noted(size, look)[0]


@lru_cache(maxsize=16)
def _noted(size: PaperSize, look: Look) -> tuple[FreeArea, tuple[Mark, ...]]:
    """What is left of a sheet, and its notes: how it is read, and its cautions."""
    area = free_area(size, look)
    x0, y0, x1, y1 = area.box
    bx0, by0, bx1, by1 = area.block
    narrow = (x1 - x0) * WIDE_SHARE < WIDTH and bx0 - x0 >= LEAST_BESIDE
    width = bx0 - x0 - INSET if narrow else WIDTH - INSET
    cautions = tuple(caution.words for caution in cautions_for(("tilt", "cutter")))
    lines = [part for words in (*KEY, *cautions) for part in wrapped(words, look.figure, width)]
    height = look.figure * (1.0 + PITCH * (len(lines) - 1)) + 0.4 * look.figure
    foot = y0 if narrow else by1 - OFF_FRAME + ABOVE_BLOCK
    x = x0 if narrow else bx0 + OFF_FRAME
    marks = tuple(
        Text((x, foot + height - look.figure * (1.0 + PITCH * n)), line, look.figure) for n, line in enumerate(lines)
    )
    if narrow:
        return FreeArea((x0, y0 + height + ABOVE_BLOCK, x1, y1), area.block), marks
    return FreeArea(area.box, (bx0, by0, bx1, foot + height + OFF_FRAME)), marks
