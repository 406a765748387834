"""A sheet from views that stand, a frame and a title block."""

from __future__ import annotations

from collections.abc import Iterable

from shopdraw.drawing.mark import Mark
from shopdraw.drawing.sheet import Sheet
from shopdraw.sheet.arrange import Standing
from shopdraw.sheet.frame import frame_marks, paper_of
from shopdraw.sheet.look import Look
from shopdraw.sheet.title_block import TitleFields, title_block_marks
from shopdraw.trade.paper import PaperSize


def compose_sheet(
    key: str,
    number: str,
    count: int,
    title: str,
    size: PaperSize,
    standing: Iterable[Standing],
    fields: TitleFields,
    look: Look,
    marks: Iterable[Mark] = (),
) -> Sheet:
    """A framed sheet.

    Args:
        key: stable name for files and bookmarks: "general-arrangement".
        number, count: this sheet and how many the set has.
        title: in the title block and the bookmark.
        size: the paper.
        standing: views and where they stand.
        fields: what the title block says.
        look: heights and widths.
        marks: further marks in paper mm: notes, tables.
    """
    frame = (*frame_marks(size, look), *title_block_marks(size, fields, title, number, count, look))
    return Sheet(key, number, title, paper_of(size), tuple(s.placed() for s in standing), (*frame, *marks))
