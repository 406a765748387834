"""Part sheets: one cell for each distinct part, from its outline and cuts themselves."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

from shopdraw.drawing.mark import Mark, Text
from shopdraw.drawing.sheet import Sheet
from shopdraw.piece.design import Design
from shopdraw.sheet.arrange import FreeArea, Standing, free_area
from shopdraw.sheet.cell import GROUPS, Cell, cells
from shopdraw.sheet.cell_fact import cell_facts, moved_to, overall_facts
from shopdraw.sheet.cell_heading import stock_words
from shopdraw.sheet.cell_view import compose_cell, shifted
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.fact import Fact
from shopdraw.sheet.figure import Writing, write_figures
from shopdraw.sheet.look import Look
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.part_page import CellAt, pages_of, stretches
from shopdraw.sheet.title_block import WIDTH, TitleFields
from shopdraw.sheet.wrap import PITCH, wrapped
from shopdraw.trade.cautions import cautions_for
from shopdraw.trade.paper import PaperSize
from shopdraw.trade.scale import Scale
from shopdraw.wood.assembly import Assembly

GROUP_NAMES = ("sides", "case", "frames and rails", "drawers", "lid and supports", "plinth")
"""What a sheet of each group is called."""
KEY = (
    "Cuts are found from the reference end and the reference edge, by their near side.",
    "dado, groove, rabbet, tongue: width × depth. Others: along the grain × across it × deep.",
    "face: the reference face; its mark's tail runs to the reference edge, a V marks that edge itself.",
    "T × W × L: finished thickness, width, length, tenons and long points included.",
)
LARGEST, SMALL_ENOUGH = 1.0, 0.2
"""Part sheets are drawn at these scales and between them; smaller only where a part doesn't fit else."""


class NoRoomForPart(ValueError):
    """A part that is too large for the paper at every scale; the message names it."""


@dataclass(frozen=True, slots=True)
class PartPage:
    """What one part sheet holds."""

    scale: Scale
    cells: tuple[CellAt, ...]


def part_sheets(
    design: Design, assembly: Assembly, look: Look, size: PaperSize, fields: TitleFields, first_number: int, count: int
) -> list[Sheet]:
    """The part sheets of a piece.

    Args:
        design: for units and projection.
        assembly: the piece.
        look, size: of the sheets.
        fields: what the title block says; scale and material are filled in.
        first_number: number of the first of these sheets.
        count: sheets in the whole set.
    Raises:
        NoRoomForPart: a part is too large for the paper at every scale.
    """
    manner = manner_of(design)
    pages = part_pages(assembly, manner.writing, manner.scales, look, size, manner.third_angle)
    return [_sheet(page, n, design, look, size, fields, first_number, count) for n, page in enumerate(pages)]


def count_part_sheets(design: Design, assembly: Assembly, look: Look, size: PaperSize) -> int:
    """How many part sheets there will be."""
    manner = manner_of(design)
    return len(part_pages(assembly, manner.writing, manner.scales, look, size, manner.third_angle))


@lru_cache(maxsize=8)
def part_pages(
    assembly: Assembly, writing: Writing, scales: tuple[Scale, ...], look: Look, size: PaperSize, third_angle: bool
) -> tuple[PartPage, ...]:
    """Cells on pages, at the scales that take fewest sheets."""
    every = cells(assembly, writing)
    allowed = [scale for scale in scales if scale.ratio <= LARGEST]
    usual = [scale for scale in allowed if scale.ratio >= SMALL_ENOUGH]
    area = _area(size, look)
    figures = write_figures(facts_of(every, assembly), writing)
    made: list[PartPage] = []
    for stretch in stretches(every, usual, area, look) or stretches(every, allowed, area, look):
        start = allowed.index(stretch.scale)
        for scale in allowed[start:]:
            composed = [
                compose_cell(cell, assembly, figures, scale.ratio, look, third_angle=third_angle) for cell in stretch.cells
            ]
            pages = pages_of(composed, area)
            if pages is not None:
                made += [PartPage(scale, page) for page in pages]
                break
        else:
            widest = max(stretch.cells, key=lambda cell: cell.board.length)
            raise NoRoomForPart(
                f"{widest.board.label} {widest.board.name}: {size.name} holds it at no scale down to "
                f"{allowed[-1].name}; a larger paper is needed"
            )
    return tuple(made)


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
    marks: list[Mark] = list(_notes(size, look))
    for held in page.cells:
        x, y = held.at
        standing += [Standing(s.view, (s.at[0] + x, s.at[1] + y)) for s in held.cell.views]
        marks += [shifted(mark, held.at) for mark in held.cell.marks]
    names = dict.fromkeys(GROUP_NAMES[held.cell.cell.group] for held in page.cells)
    stocks = dict.fromkeys(stock_words(held.cell.cell.board.stock).removeprefix("stock ") for held in page.cells)
    filled = replace(
        fields, scale=page.scale.printed, material="; ".join(stocks), projection=manner_of(design).projection
    )
    title = "Parts: " + ", ".join(names)
    return compose_sheet(
        f"parts-{index + 1}", str(first + index), count, title, size, standing, filled, look, marks
    )


def _area(size: PaperSize, look: Look) -> FreeArea:
    """The sheet less the title block and the notes over it."""
    area = free_area(size, look)
    return FreeArea(area.box, (*area.block[:3], area.block[3] + _notes_height(look) + 4.0))


def _note_lines(look: Look) -> tuple[str, ...]:
    cautions = tuple(caution.words for caution in cautions_for(("tilt", "cutter")))
    return tuple(part for words in (*KEY, *cautions) for part in wrapped(words, look.figure, WIDTH - 4.0))


def _notes_height(look: Look) -> float:
    return look.figure * (1.0 + PITCH * (len(_note_lines(look)) - 1)) + 1.0


def _notes(size: PaperSize, look: Look) -> tuple[Mark, ...]:
    """How the sheet is read, and its cautions, over the title block."""
    area = free_area(size, look)
    x = area.block[0] + 5.0
    y = area.block[3] + _notes_height(look)
    return tuple(
        Text((x + 2.0, y - look.figure * (1.0 + PITCH * n)), line, look.figure) for n, line in enumerate(_note_lines(look))
    )


