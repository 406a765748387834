"""How a sheet looks: heights of letters, widths of lines, distances between rows, for a style and a size of paper.

Everything here is paper mm. Sources: ISO 3098-1 (heights), ISO 128-2 (line widths), ISO 129-1 and ASME Y14.5
(dimensions); what they leave open is common practice and stands here once.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.drawing.explode import ASME_PAST_MM, ISO_PAST_WIDTHS
from shopdraw.drawing.line_style import line_style
from shopdraw.drawing.mark import Meaning

INCH = 25.4
ISO_HEIGHTS = (1.8, 2.5, 3.5, 5.0, 7.0, 10.0, 14.0, 20.0)
"""Nominal heights, ISO 3098-1."""
INCH_HEIGHTS = tuple(n * INCH / 32 for n in (3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24))
"""Heights of lettering on inch sheets: steps of 1/32 in from 3/32 in."""
TRIMMED = 0.005
"""Sheets are trimmed to whole millimetres, so that A3 is a little less than half of A1; a halved 3.5 will do, mm."""
LEAST_PRINT = 1.75
"""A letter that is printed smaller can't be read; 3.5 halved."""

_HEIGHTS = {
    "large": (3.5, 5.0, 7.0, 7.0, 2.5),
    "medium": (2.5, 3.5, 5.0, 5.0, 1.8),
    "small": (2.5, 3.5, 5.0, 5.0, 1.8),
}
"""Figures, balloons, section letters, sheet titles, names of fields, by group of paper (common practice)."""


class BadLook(ValueError):
    """A style or a group of paper that there isn't."""


@dataclass(frozen=True, slots=True)
class Look:
    """The measures of a style on a size of paper, paper mm.

    Attributes:
        style: "iso" or "asme".
        group: "large", "medium" or "small", as `Paper.group`.
        figure: height of dimensions, notes and tables.
        balloon: height of balloon labels and view titles.
        section: height of section letters.
        title: height of the sheet's title and number.
        label: height of the smallest words: names of title block fields.
        narrow, wide: line widths.
        first_row, next_row: least distance from the view to row 1 and from row to row.
        extension_past: how far an extension line goes past the dimension line.
        strokes: oblique strokes instead of arrows everywhere.
        inch: letters follow the inch series.
    """

    style: str
    group: str
    figure: float
    balloon: float
    section: float
    title: float
    label: float
    narrow: float
    wide: float
    first_row: float = 10.0
    next_row: float = 8.0
    extension_past: float = 2.0
    strokes: bool = False
    inch: bool = False

    @property
    def text_gap(self) -> float:
        """From a dimension line to the baseline of the figure above it."""
        return 0.4 * self.figure

    @property
    def pitch(self) -> float:
        """From one line of words to the next (1.9 × height, ISO 3098-1)."""
        return 1.9 * self.figure


def step_up(height: float, reduction: float, heights: tuple[float, ...] = ISO_HEIGHTS) -> float:
    """The first height of a series, from `height` up, that stays readable when the sheet is reduced.

    Args:
        height: of the letters on the sheet, paper mm.
        reduction: smallest print over the sheet, at most 1.
    Returns:
        A height of the series, mm.
    Raises:
        BadLook: no height of the series is large enough.
    """
    for candidate in heights:
        if candidate >= height - 1e-9 and candidate * reduction >= LEAST_PRINT - TRIMMED:
            return candidate
    raise BadLook(f"no letters are readable at {reduction:.3f} of the sheet's size; print it larger")


@lru_cache(maxsize=64)
def look_for(style: str, group: str, *, inch: bool = False, reduction: float = 1.0, strokes: bool = False) -> Look:
    """The look of a style on a size of paper.

    Args:
        style: "iso" or "asme".
        group: "large", "medium" or "small".
        inch: letters follow the inch series (steps of 1/32 in) instead of ISO 3098's.
        reduction: width of the smallest intended print over the sheet's, at most 1.
        strokes: oblique strokes at 45° instead of arrows.
    Raises:
        BadLook: the style or group isn't known, or no letters are large enough.
    """
    if style not in ("iso", "asme"):
        raise BadLook(f"style is {style!r}; it must be iso or asme")
    if group not in _HEIGHTS:
        raise BadLook(f"group of paper is {group!r}; it must be large, medium or small")
    figure, balloon, section, title, label = (_height(h, reduction, inch=inch) for h in _HEIGHTS[group])
    narrow, wide = line_style(Meaning.SIZE, group).width_mm, line_style(Meaning.VISIBLE, group).width_mm
    past = ASME_PAST_MM if style == "asme" else ISO_PAST_WIDTHS * narrow
    return Look(
        style, group, figure, balloon, section, title, label, narrow, wide,
        extension_past=past, strokes=strokes, inch=inch,
    )


def _height(nominal: float, reduction: float, *, inch: bool) -> float:
    """A height of the group in its series: the nearest one, or the next that stays readable when reduced."""
    if not inch:
        return step_up(nominal, reduction)
    nearest = min(INCH_HEIGHTS, key=lambda height: abs(height - nominal))
    return step_up(nearest, reduction, INCH_HEIGHTS)
