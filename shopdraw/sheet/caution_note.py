"""Cautions of a sheet: above its title block or beside it, and the room that this leaves. Paper mm."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from shopdraw.drawing.mark import Mark, Text
from shopdraw.sheet.arrange import OFF_FRAME, FreeArea, free_area
from shopdraw.sheet.look import Look
from shopdraw.sheet.title_block import WIDTH
from shopdraw.sheet.wrap import PITCH, wrapped
from shopdraw.trade.cautions import cautions_for
from shopdraw.trade.paper import PaperSize

ABOVE_BLOCK = 4.0
INSET = 3.0
WIDE_SHARE, LEAST_BESIDE = 0.45, 120.0
"""On a sheet that the title block takes nearly half of, cautions stand beside it where so much room is left there."""


def with_cautions(given: Collection[str], size: PaperSize, look: Look) -> tuple[FreeArea, tuple[Mark, ...]]:
    """The free area of a sheet that carries cautions, and the cautions as marks.

    Args:
        given: what the sheet gives: "tilt", "lift", ... as `shopdraw.trade.cautions` has it.
        size: the paper.
        look: heights.
    """
    area = free_area(size, look)
    words = [caution.words for caution in cautions_for(given)]
    if not words:
        return area, ()
    x0, y0, x1, y1 = area.box
    bx0, by0, bx1, by1 = area.block
    beside = bx0 - x0
    if (x1 - x0) * WIDE_SHARE < WIDTH and beside >= LEAST_BESIDE:
        marks, height = _marks(words, x0, y0, beside - INSET, look)
        return FreeArea((x0, y0 + height + ABOVE_BLOCK, x1, y1), area.block), marks
    foot = by1 - OFF_FRAME + ABOVE_BLOCK
    marks, height = _marks(words, bx0 + OFF_FRAME, foot, WIDTH - INSET, look)
    return FreeArea(area.box, (bx0, by0, bx1, foot + height + OFF_FRAME)), marks


def _marks(words: Sequence[str], x: float, foot: float, width: float, look: Look) -> tuple[tuple[Mark, ...], float]:
    """Sentences on lines from a foot up, and their height."""
    lines = [line for sentence in words for line in wrapped(sentence, look.figure, width)]
    drop = 0.4 * look.figure
    height = look.figure * (1.0 + PITCH * (len(lines) - 1)) + drop
    top = foot + height
    marks = tuple(Text((x, top - look.figure * (1.0 + PITCH * n)), line, look.figure) for n, line in enumerate(lines))
    return marks, height
