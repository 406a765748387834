"""The cover: a picture, what must be fixed, what each overall is measured over, sheets, notes, cautions, legend."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from shopdraw.drawing.mark import Mark, Text
from shopdraw.drawing.sheet import Drawing, Sheet
from shopdraw.measure import write_length
from shopdraw.sheet.arrange import FreeArea, Standing, free_area
from shopdraw.sheet.column import Block, Column, Entry, flowed
from shopdraw.sheet.compose import compose_view
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.extent import whole
from shopdraw.sheet.legend import legend
from shopdraw.sheet.look import INCH_HEIGHTS, ISO_HEIGHTS
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.title_block import WIDTH, TitleFields
from shopdraw.sheet.view import ComposedView, PlainView
from shopdraw.trade.cautions import cautions_for
from shopdraw.view.direction import ISOMETRIC
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.volume import mass_kg

GIVEN = ("tilt", "cutter", "drawers", "lid", "tall", "lift", "finish")
"""What a set of drawings gives that calls for a caution."""
PICTURE = "Isometric picture, not to scale"
BETWEEN_COLUMNS = 12.0
POUND_KG = 0.45359237
"""Exact by definition."""
_TITLE_STEP = 1.6


def cover_sheets(
    assembly: Assembly,
    findings: Sequence[Finding],
    titles: Sequence[tuple[str, str]],
    drawings: Sequence[Drawing],
    manner: Manner,
    fields: TitleFields,
    count: int,
) -> tuple[Sheet, ...]:
    """The cover, on more than one sheet where its words need it.

    Args:
        assembly: the piece.
        findings: of the checks; those that must be fixed stand on the cover.
        titles: number and title of every sheet.
        drawings: of the set, for the legend.
        manner: paper and figures.
        fields: of the title block.
        count: sheets in the set.
    """
    size, look = manner.size, manner.look
    plain = replace(fields, document_type="Cover", scale="", projection="")
    area = free_area(size, look)
    blocks = cover_blocks(assembly, findings, titles, drawings, manner)
    pages = flowed(blocks, _columns(area), look)
    head = max(h for h in (INCH_HEIGHTS if look.inch else ISO_HEIGHTS) if h <= 2 * look.title + 0.1)
    title = Text((area.box[0], area.box[3] - head), fields.title, head)
    picture = _picture(assembly, manner, _picture_box(area, head))
    sheets = []
    for number, marks in enumerate(pages):
        first = number == 0
        held: tuple[Mark, ...] = (title, *marks) if first else marks
        sheets.append(
            compose_sheet(
                "cover" if first else f"cover-{number + 1}",
                str(number + 1),
                count,
                "Cover",
                size,
                picture if first else (),
                plain,
                look,
                held,
            )
        )
    return tuple(sheets)


def cover_blocks(
    assembly: Assembly,
    findings: Sequence[Finding],
    titles: Sequence[tuple[str, str]],
    drawings: Sequence[Drawing],
    manner: Manner,
) -> tuple[Block, ...]:
    """The cover's words, what must be fixed first."""
    wrong = [f for f in findings if f.severity is Severity.MUST_FIX and f.silenced is None]
    return (
        Block("Must be fixed before work begins", tuple(Entry(f"{f.code}: {f.message}") for f in wrong)),
        Block("Overalls", tuple(Entry(words) for words in overall_words(assembly, manner))),
        Block("Sheets", tuple(Entry(f"{number}  {title}") for number, title in titles)),
        Block("Notes", tuple(Entry(words) for words in _notes(assembly, manner))),
        Block("Cautions", tuple(Entry(caution.words) for caution in cautions_for(GIVEN))),
        *legend(drawings, assembly),
    )


def overall_words(assembly: Assembly, manner: Manner) -> Iterator[str]:
    """What each overall is measured over, and the weight."""
    box, style = whole(assembly), manner.writing.general

    def told(size: float) -> str:
        return write_length(size, style)

    wide, deep, high = box.x1 - box.x0, box.y1 - box.y0, box.z1 - box.z0
    yield f"Width {told(assembly.width)} over the case's sides" + (
        f"; {told(wide)} over all" if wide > assembly.width + 0.1 else ""
    )
    yield f"Height {told(assembly.height)} from the floor to the upper face of the top" + (
        f"; {told(high)} over the shut lid's corner" if high > assembly.height + 0.1 else ""
    )
    yield f"Depth {told(assembly.depth)} from the front plane to the sides' rear edges" + (
        f"; {told(deep)} over all" if deep > assembly.depth + 0.1 else ""
    )
    kilograms = math.fsum(mass_kg(board) for board in assembly.boards)
    yield f"Boards weigh {kilograms:.0f} kg" + (f" ({kilograms / POUND_KG:.0f} lb)" if manner.inch else "") + " in all"
    if assembly.slant is not None:
        yield f"The open lid stands {told(assembly.slant.open_projection_mm)} in front of the front plane"


def _notes(assembly: Assembly, manner: Manner) -> Iterator[str]:
    moisture = assembly.moisture
    unit = "inches" if manner.inch else "millimetres"
    slack = "1/64 in" if manner.inch else f"0{manner.writing.decimal_sign}5 mm"
    sign = manner.writing.decimal_sign

    def percent(value: float) -> str:
        return f"{value:.1f}".rstrip("0").rstrip(".").replace(".", sign) + " %"

    yield f"Sizes in {unit}, ± {slack} unless a fit says otherwise; joints are cut to the stock in hand."
    yield (
        f"They hold at a moisture content of {percent(moisture.build)}; reckoned with: "
        f"{percent(moisture.dry)} in the driest season, {percent(moisture.wet)} in the wettest."
    )
    yield "Finished sizes, before sanding. Thickness × width × length, the length along the grain."
    yield "( ): told elsewhere too, or what is left over. Levels count from the floor, depths from the front plane."
    yield "A label in a circle is the board's in the cut list and on its part sheet."


def _columns(area: FreeArea) -> Iterator[Sequence[Column]]:
    """On the first sheet right of the picture; on further ones over the whole width; off the title block."""
    x0, y0, x1, y1 = area.box
    wide = min(WIDTH, (x1 - x0 - BETWEEN_COLUMNS) / 2)
    block = area.block
    last = Column(x1 - wide, wide, y1, block[3])
    many = max(1, int((x1 - x0 + BETWEEN_COLUMNS) // (wide + BETWEEN_COLUMNS)))
    xs = [x1 - wide - i * (wide + BETWEEN_COLUMNS) for i in range(many)][::-1]
    foot_of = {x: y0 if x + wide <= block[0] else block[3] for x in xs}
    right = [Column(x, wide, y1, foot_of[x]) for x in xs[many // 2 :]] or [last]
    yield right
    while True:
        yield [Column(x, wide, y1, foot_of[x]) for x in xs]


def _picture_box(area: FreeArea, head: float) -> tuple[float, float, float, float]:
    x0, y0, x1, y1 = area.box
    wide = min(WIDTH, (x1 - x0 - BETWEEN_COLUMNS) / 2)
    many = max(1, int((x1 - x0 + BETWEEN_COLUMNS) // (wide + BETWEEN_COLUMNS)))
    right = x1 - (many - many // 2) * (wide + BETWEEN_COLUMNS)
    return x0, y0, right, y1 - _TITLE_STEP * head


def _picture(assembly: Assembly, manner: Manner, box: tuple[float, float, float, float]) -> tuple[Standing, ...]:
    """The isometric picture in the middle of a box, at the largest preferred scale that fits; none where none does."""
    view = PlainView("isometric", PICTURE, project(assembly.boards, ISOMETRIC, hidden=False))
    x0, y0, x1, y1 = box
    for scale in manner.scales:
        composed: ComposedView = compose_view(view, (), scale.ratio, manner.look, {})
        if composed.width <= x1 - x0 and composed.height <= y1 - y0:
            rx0, ry0, rx1, ry1 = composed.room
            return (Standing(composed, ((x0 + x1 - rx0 - rx1) / 2, (y0 + y1 - ry0 - ry1) / 2)),)
    return ()
