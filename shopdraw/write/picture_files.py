"""Each view, detail and picture of a set of sheets as SVG and PNG, for a book or a class."""

from __future__ import annotations

from pathlib import Path

from shopdraw.drawing.sheet import SheetSet
from shopdraw.sheet.picture import pictures
from shopdraw.write.png import write_png
from shopdraw.write.svg import write_svg

PARTS = "part."
"""Cells of part sheets: these aren't written as pictures."""


def write_pictures(sheets: SheetSet, stem: str, folder: Path) -> tuple[str, ...]:
    """Writes `<stem>-<view>.svg` and `<stem>-<view>.png` for each view.

    Args:
        sheets: the set as it prints.
        stem: what the files are called after.
        folder: where; it is there.

    Returns:
        The names of the files.
    """
    written: list[str] = []
    for view in pictures(sheets):
        if view.key.startswith(PARTS):
            continue
        name = f"{stem}-{view.key.replace('.', '-')}"
        write_svg(view, sheets.style, folder / f"{name}.svg")
        write_png(view, sheets.style, folder / f"{name}.png")
        written += [f"{name}.svg", f"{name}.png"]
    return tuple(written)
