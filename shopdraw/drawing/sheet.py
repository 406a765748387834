"""Drawings, and the sheets they are placed on."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.mark import Mark
from shopdraw.shape.path import Point


@dataclass(frozen=True, slots=True)
class Drawing:
    """One view, section, detail, part or template at true size, mm.

    Attributes:
        id: "front", "side", "plan", "section.A", "detail.d1", "part.1L", ...
        title: words below it, or "".
        marks: lines, arcs, areas, words.
        dimensions: placed dimensions.
    """

    id: str
    title: str
    marks: tuple[Mark, ...]
    dimensions: tuple[Dimension, ...] = ()


@dataclass(frozen=True, slots=True)
class Placed:
    """A drawing on paper: its own (0, 0) stands at `at` (paper mm), drawn at `scale` (0.2 for 1:5)."""

    drawing: Drawing
    scale: float
    at: Point


@dataclass(frozen=True, slots=True)
class Paper:
    """A trimmed sheet as it lies, mm: its name, width, height and its frame (x0, y0, x1, y1).

    Attributes:
        group: "large" (A0, A1, D, E and ARCH D and up), "medium" (A2, A3, B, C) or "small" (A4, A): letters
            and line widths follow it.
    """

    name: str
    width: float
    height: float
    frame: tuple[float, float, float, float]
    group: str


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: paper, placed drawings, and marks in paper mm (frame, title block, tables, leaders).

    Attributes:
        key: stable name for file names and bookmarks: "general-arrangement", "parts-1".
        number: "1", "2", ...
        title: what stands in the title block and the bookmark.
        stretch: what a file stretches the page's lines by about its middle, across and up: a printer's correction.
        turned: it is shown and printed a quarter turn clockwise: its long side runs along a roll.
    """

    key: str
    number: str
    title: str
    paper: Paper
    placed: tuple[Placed, ...] = ()
    marks: tuple[Mark, ...] = ()
    stretch: Point = (1.0, 1.0)
    turned: bool = False


@dataclass(frozen=True, slots=True)
class SheetSet:
    """Sheets in order with what a file's metadata says; `style` is "iso" or "asme"."""

    title: str
    author: str
    subject: str
    style: str
    sheets: tuple[Sheet, ...]
    true_size: bool = False
    """Templates: printers must not scale them (PrintScaling None)."""
