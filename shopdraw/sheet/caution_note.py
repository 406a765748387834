"""Cautions of a sheet: above its title block, and the room that this leaves. Paper mm."""

from __future__ import annotations

from collections.abc import Collection

from shopdraw.drawing.mark import Mark, Text
from shopdraw.sheet.arrange import OFF_FRAME, FreeArea, free_area
from shopdraw.sheet.look import Look
from shopdraw.sheet.title_block import WIDTH
from shopdraw.sheet.wrap import PITCH, wrapped
from shopdraw.trade.cautions import cautions_for
from shopdraw.trade.paper import PaperSize

ABOVE_BLOCK = 4.0


def with_cautions(given: Collection[str], size: PaperSize, look: Look) -> tuple[FreeArea, tuple[Mark, ...]]:
    """The free area of a sheet that carries cautions, and the cautions as marks.

    Args:
        given: what the sheet gives: "tilt", "lift", ... as `shopdraw.trade.cautions` has it.
        size: the paper.
        look: heights.
    """
    area = free_area(size, look)
    words = [caution.words for caution in cautions_for(given)]
    lines = [line for sentence in words for line in wrapped(sentence, look.figure, WIDTH)]
    if not lines:
        return area, ()
    x0, y0, x1, y1 = area.block
    height = look.figure * (1.0 + PITCH * (len(lines) - 1)) + 0.4 * look.figure
    foot = y1 - OFF_FRAME + ABOVE_BLOCK
    marks = tuple(
        Text((x0 + OFF_FRAME, foot + height - look.figure * (1.0 + PITCH * n)), line, look.figure)
        for n, line in enumerate(lines)
    )
    return FreeArea(area.box, (x0, y0, x1, foot + height + OFF_FRAME)), marks
