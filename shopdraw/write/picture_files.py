"""Each view, detail and picture of a set of sheets as SVG and PNG, for a book or a class."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import count
from pathlib import Path

from shopdraw.drawing.sheet import SheetSet
from shopdraw.sheet.picture import pictures
from shopdraw.write.png import write_png
from shopdraw.write.svg import write_svg

PARTS = "part."
"""Cells of part sheets: these aren't written as pictures."""


def write_pictures(
    sheets: SheetSet, stem: str, folder: Path, turns: Iterator[int] | None = None
) -> tuple[str, ...]:
    """Writes `<stem>-<view>.svg` and `<stem>-<view>.png` for each view.

    Args:
        sheets: the set as it prints.
        stem: what the files are called after.
        folder: where; it is there.
        turns: numbers of the views that are written here, rising; None for all. Where they come from a counter that
            several processes share, each view is written by the one that comes to it first.

    Returns:
        The names of the files.
    """
    views = [view for view in pictures(sheets) if not view.key.startswith(PARTS)]
    written: list[str] = []
    for number in turns if turns is not None else count():
        if number >= len(views):
            break
        view = views[number]
        name = f"{stem}-{view.key.replace('.', '-')}"
        write_svg(view, sheets.style, folder / f"{name}.svg")
        write_png(view, sheets.style, folder / f"{name}.png")
        written += [f"{name}.svg", f"{name}.png"]
    return tuple(written)
