"""Widths and dashes of lines on paper, by what a line stands for and how large the sheet is."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

from shopdraw.drawing.mark import Meaning


class LineStyle(NamedTuple):
    """A line on paper.

    Attributes:
        width_mm: paper mm; 0 is never used, since a hairline can vanish on a fine printer.
        dashes_mm: drawn and empty lengths in turn, paper mm; empty for a continuous line.
    """

    width_mm: float
    dashes_mm: tuple[float, ...]


FRAME_MM = 0.7
"""Width of the sheet's frame (ISO 5457)."""
TEMPLATE_MM = 0.25
"""Width of a full-size template's outline, on any sheet: cut to its middle (own choice)."""

_WIDE_NARROW = {"large": (0.7, 0.35), "medium": (0.5, 0.25), "small": (0.5, 0.25)}
"""ISO 128-2, line groups 0.7 and 0.5."""
_WIDE = {Meaning.VISIBLE, Meaning.CUT, Meaning.PLANE}

# Elements in line widths: dash 12, gap 3, long dash 24, dot 0.5. Source: ISO 128-2 (from memory, to be confirmed).
_DASHED = (12.0, 3.0)
_LONG_DASH_DOT = (24.0, 3.0, 0.5, 3.0)
_LONG_DASH_DOUBLE_DOT = (24.0, 3.0, 0.5, 3.0, 0.5, 3.0)
_ELEMENTS: dict[Meaning, tuple[float, ...]] = {
    Meaning.HIDDEN: _DASHED,
    Meaning.CENTRE: _LONG_DASH_DOT,
    Meaning.PLANE: _LONG_DASH_DOT,
    Meaning.MOVING: _LONG_DASH_DOUBLE_DOT,
}


@cache
def line_style(meaning: Meaning, group: str) -> LineStyle:
    """How a line is drawn.

    Args:
        meaning: what it stands for.
        group: the paper's: "large", "medium" or "small".
    Source: ISO 128-2: wide and narrow 2 : 1; types 01.1, 01.2, 02.1, 04.1, 04.2, 05.1.
    """
    wide, narrow = _WIDE_NARROW[group]
    if meaning is Meaning.FRAME:
        width = FRAME_MM
    elif meaning is Meaning.TEMPLATE:
        width = TEMPLATE_MM
    else:
        width = wide if meaning in _WIDE else narrow
    return LineStyle(width, tuple(round(n * width, 6) for n in _ELEMENTS.get(meaning, ())))
