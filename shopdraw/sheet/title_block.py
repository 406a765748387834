"""The title block: what a sheet is, whose, at what scale, and how to read it. Paper mm.

Fields of ISO 7200, 180 wide, at the lower right of the frame; a field that the piece says nothing about stays empty.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning, Text
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.look import INCH, Look
from shopdraw.sheet.wrap import cell_texts, fitted
from shopdraw.trade.paper import PaperSize

WIDTH = 180.0
PAD = 1.2
WARNING = "Don't measure from this print: work to the figures."
SYMBOL = 3.2
"""Radius of the projection symbol's large circle."""
PROJECTIONS = {"first": "First-angle projection", "third": "Third-angle projection"}


@dataclass(frozen=True, slots=True)
class TitleFields:
    """What a sheet's title block says; "" where the piece says nothing.

    Attributes:
        owner: legal owner.
        number: identification number.
        title, supplementary: of the piece.
        document_type: "Working drawing", "Cut list", ...
        created, approved: persons.
        department, reference, status, language, revision: as ISO 7200.
        date: of issue, as the piece gives it.
        units: "mm" or "inches": stated on each sheet.
        rounding: in words: "general 0,5; cuts 0,1".
        projection: "first", "third" or "" on sheets without views.
        scale: the main scale as printed, or "".
        material: on part sheets.
        inch_bar: the scale bar is 4 in long instead of 100 mm.
    """

    owner: str = ""
    number: str = ""
    title: str = ""
    supplementary: str = ""
    document_type: str = ""
    created: str = ""
    approved: str = ""
    department: str = ""
    reference: str = ""
    status: str = ""
    language: str = ""
    revision: str = ""
    date: str = ""
    units: str = "mm"
    rounding: str = ""
    projection: str = ""
    scale: str = ""
    material: str = ""
    inch_bar: bool = False


@dataclass(frozen=True, slots=True)
class Cell:
    """A field of the block: its box from the block's lower left corner, its name and what stands in it.

    Attributes:
        large: the words begin at the height of titles.
        single: the words would rather be smaller than on two lines.
    """

    x: float
    y: float
    width: float
    height: float
    name: str
    words: str
    large: bool = False
    single: bool = False


def block_height(look: Look) -> float:
    """Of the whole block, mm."""
    return sum(_rows(look))


def block_box(size: PaperSize, look: Look) -> Bounds:
    """Where the block stands: at the lower right of the frame."""
    _, y0, x1, _ = size.frame
    return x1 - WIDTH, y0, x1, y0 + block_height(look)


def title_block_marks(
    size: PaperSize, fields: TitleFields, sheet_title: str, number: str, count: int, look: Look
) -> tuple[Mark, ...]:
    """The block's lines, words, projection symbol and scale bar.

    Args:
        size: the paper.
        fields: what the piece says.
        sheet_title: of this sheet.
        number, count: this sheet and how many there are.
        look: heights and widths.
    """
    left, bottom, _, _ = block_box(size, look)
    marks: list[Mark] = []
    for cell in title_cells(fields, sheet_title, number, count, look):
        marks += _cell_marks(cell, left, bottom, look)
    note = _rows(look)[0]
    marks += _bar(left + 64.0, left + WIDTH, bottom + block_height(look) - note, look, inch=fields.inch_bar)
    if fields.projection:
        symbol_y = bottom + block_height(look) - note + SYMBOL + 1.6
        marks += _symbol(left + 4.0, symbol_y, look, third=fields.projection == "third")
    return tuple(marks)


def title_cells(fields: TitleFields, sheet_title: str, number: str, count: int, look: Look) -> tuple[Cell, ...]:
    """The block's cells from the top down."""
    top, notes, small, people, main = _rows(look)
    y_main, y_people = 0.0, main
    y_small, y_notes, y_top = main + people, main + people + small, main + people + small + notes
    piece = f"{fields.title}: {sheet_title}" if fields.title and sheet_title else fields.title or sheet_title
    return (
        Cell(0, y_top, 60, top, "Projection", PROJECTIONS.get(fields.projection, "")),
        Cell(60, y_top, 120, top, "Scale bar", ""),
        Cell(0, y_notes, 60, notes, "Units and rounding", _units(fields)),
        Cell(60, y_notes, 60, notes, "Note", WARNING),
        Cell(120, y_notes, 60, notes, "Material", fields.material),
        Cell(0, y_small, 45, small, "Created by", fields.created),
        Cell(45, y_small, 45, small, "Approved by", fields.approved),
        Cell(90, y_small, 45, small, "Department", fields.department),
        Cell(135, y_small, 45, small, "Technical reference", fields.reference),
        Cell(0, y_people, 60, people, "Document type", fields.document_type),
        Cell(60, y_people, 40, people, "Status", fields.status),
        Cell(100, y_people, 30, people, "Date of issue", fields.date, single=True),
        Cell(130, y_people, 12, people, "Lang.", fields.language, single=True),
        Cell(142, y_people, 38, people, "Scale", fields.scale, single=True),
        Cell(0, y_main, 45, main, "Legal owner", fields.owner),
        Cell(45, y_main, 75, main, "Title", _joined(piece, fields.supplementary), large=True),
        Cell(120, y_main, 30, main, "Number", fields.number, single=True),
        Cell(150, y_main, 10, main, "Rev.", fields.revision, single=True),
        Cell(160, y_main, 20, main, "Sheet", f"{number} of {count}", large=True, single=True),
    )


def _units(fields: TitleFields) -> str:
    return f"Sizes in {fields.units}" + (f"; rounded: {fields.rounding}" if fields.rounding else "")


def _joined(first: str, second: str) -> str:
    return f"{first}; {second}" if first and second else first or second


def _rows(look: Look) -> tuple[float, float, float, float, float]:
    """Heights of the block's rows from the top: symbol and bar, notes, people, document, title."""
    unit = look.figure
    first = max(5.0 * unit, look.label + 2 * PAD + 2 * (SYMBOL + 1.0) + 1.2)
    return first, 5.4 * unit, 4.2 * unit, 4.2 * unit, 4 * unit + 2.0 * look.title


def _cell_marks(cell: Cell, left: float, bottom: float, look: Look) -> Iterator[Mark]:
    x0, y0 = left + cell.x, bottom + cell.y
    x1, y1 = x0 + cell.width, y0 + cell.height
    width = line_style(Meaning.SIZE, look.group).width_mm
    yield Line((x0, y0), (x0, y1), Meaning.FRAME, "", width)
    yield Line((x0, y1), (x1, y1), Meaning.FRAME, "", width)
    name = fitted(cell.name, cell.width - 2 * PAD, look.label * 1.01, look.label, look.label, look)
    yield from cell_texts(name, x0 + PAD, y1 - PAD)
    if cell.words:
        room = cell.height - look.label - 3.2 * PAD
        wanted = look.title if cell.large else look.figure
        words = fitted(cell.words, _words_width(cell), room, wanted, look.label, look, single=cell.single)
        yield from cell_texts(words, x0 + cell.width - PAD - _words_width(cell), y1 - look.label - 2.4 * PAD)


def _words_width(cell: Cell) -> float:
    """The projection's words stand right of its symbol."""
    return cell.width - 2 * PAD - (24.0 if cell.name == "Projection" else 0.0)


def _bar(x: float, right: float, top: float, look: Look, *, inch: bool) -> Iterator[Mark]:
    """A scale bar of 100 mm or 4 in, its ends and quarters marked, its length written beside it or above its end."""
    length, parts, unit = (4 * INCH, 4, "in") if inch else (100.0, 10, "mm")
    foot = top + 0.24 * _rows(look)[0]
    width = line_style(Meaning.SIZE, look.group).width_mm
    yield Line((x, foot), (x + length, foot), Meaning.FRAME, "", width)
    for i in range(parts + 1):
        at = x + length * i / parts
        tall = 2.4 if i in (0, parts) else 1.2
        yield Line((at, foot), (at, foot + tall), Meaning.FRAME, "", width)
    words = f"{4 if inch else 100} {unit}"
    if x + length + 1.5 + words_size(words, look.label)[0] <= right - PAD:
        yield Text((x + length + 1.5, foot), words, look.label, "left")
    else:
        yield Text((x + length, foot + 3.4), words, look.label, "right")


def _symbol(x: float, y: float, look: Look, *, third: bool) -> Iterator[Mark]:
    """The projection symbol: a frustum and two circles, small end to the left. Source: ISO 5456-2."""
    small, large, long = SYMBOL / 2, SYMBOL, 7.0
    frustum = x + (12.0 if third else 0.0)
    circles = x + (large if third else 12.0 + large)
    narrow = line_style(Meaning.SIZE, look.group).width_mm
    corners = (
        (frustum, y - small), (frustum, y + small), (frustum + long, y + large), (frustum + long, y - large),
    )
    for p, q in zip(corners, (*corners[1:], corners[0]), strict=True):
        yield Line(p, q, Meaning.FRAME, "", 2 * narrow)
    yield ArcMark((circles, y), small, 0.0, 360.0, Meaning.VISIBLE)
    yield ArcMark((circles, y), large, 0.0, 360.0, Meaning.VISIBLE)
    yield Line((frustum - 1.0, y), (frustum + long + 1.0, y), Meaning.CENTRE)
    yield Line((circles - large - 1.0, y), (circles + large + 1.0, y), Meaning.CENTRE)
    yield Line((circles, y - large - 1.0), (circles, y + large + 1.0), Meaning.CENTRE)
