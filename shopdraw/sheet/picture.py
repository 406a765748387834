"""One view, detail or picture by itself, on paper just as large as it is."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.drawing.bounds import drawing_box
from shopdraw.drawing.sheet import Paper, Placed, Sheet, SheetSet
from shopdraw.sheet.box import Bounds

MARGIN_MM = 5.0


def pictures(sheets: SheetSet) -> Iterator[Sheet]:
    """Every drawing of a set as a sheet of its own without a frame, in the set's order.

    A drawing's key is its id ("front", "section.A", "detail.d1", "part.1L.face", "exploded"); each is there once.
    """
    seen: set[str] = set()
    for sheet in sheets.sheets:
        for placed in sheet.placed:
            if placed.drawing.id not in seen:
                seen.add(placed.drawing.id)
                yield picture_of(placed, sheet, sheets.style)


def picture_of(placed: Placed, sheet: Sheet, style: str) -> Sheet:
    """A placed drawing as a sheet of its own.

    Args:
        placed: the drawing; its scale stays.
        sheet: that it stands on: letters and line widths are those of its paper.
        style: "iso" or "asme".
    """
    box = drawing_box(placed.drawing, placed.scale, style, sheet.paper.group)
    x0, y0, x1, y1 = (edge * placed.scale for edge in box)
    wide, high = x1 - x0 + 2 * MARGIN_MM, y1 - y0 + 2 * MARGIN_MM
    frame: Bounds = (0.0, 0.0, wide, high)
    alone = Placed(placed.drawing, placed.scale, (MARGIN_MM - x0, MARGIN_MM - y0))
    title = placed.drawing.title or placed.drawing.id
    return Sheet(placed.drawing.id, sheet.number, title, Paper("", wide, high, frame, sheet.paper.group), (alone,))
