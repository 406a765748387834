"""How a sheet looks: heights of letters, widths of lines, distances between rows, for a style and a size of paper.

Everything here is paper mm. Sources: ISO 3098-1 (heights), ISO 128-2 (line widths), ISO 129-1 and ASME Y14.5
(dimensions); what they leave open is common practice and stands here once.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

INCH = 25.4
ISO_HEIGHTS = (1.8, 2.5, 3.5, 5.0, 7.0, 10.0, 14.0, 20.0)
"""Nominal heights, ISO 3098-1."""
INCH_HEIGHTS = tuple(n * INCH / 32 for n in (3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24))
"""Heights of lettering on inch sheets: steps of 1/32 in from 3/32 in."""
ISO_WIDTHS = (0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0)
"""Line widths, ISO 128-2."""
LEAST_PRINT = 1.75
"""A letter that is printed smaller can't be read; 3.5 halved."""

_GROUPS = {
    "large": (3.5, 5.0, 7.0, 7.0, 0.35),
    "medium": (2.5, 3.5, 5.0, 5.0, 0.25),
    "small": (2.5, 3.5, 5.0, 5.0, 0.25),
}


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
        narrow, wide: line widths.
        first_row, next_row: least distance from the view to row 1 and from row to row.
        extension_gap, extension_past: where an extension line starts off its feature and ends past the line.
        arrow, arrow_width: size of an arrowhead.
        strokes: oblique strokes instead of arrows everywhere.
    """

    style: str
    group: str
    figure: float
    balloon: float
    section: float
    title: float
    narrow: float
    wide: float
    first_row: float = 10.0
    next_row: float = 8.0
    extension_gap: float = 0.0
    extension_past: float = 2.0
    arrow: float = 3.0
    arrow_width: float = 1.0
    strokes: bool = False

    @property
    def text_gap(self) -> float:
        """From a dimension line to the baseline of the figure above it."""
        return max(0.8, 0.3 * self.figure)

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
        if candidate >= height - 1e-9 and candidate * reduction >= LEAST_PRINT - 1e-9:
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
    if group not in _GROUPS:
        raise BadLook(f"group of paper is {group!r}; it must be large, medium or small")
    heights = INCH_HEIGHTS if inch else ISO_HEIGHTS
    figure, balloon, section, title, narrow = _GROUPS[group]
    asme = style == "asme"
    return Look(
        style,
        group,
        *(step_up(height, reduction, heights) for height in (figure, balloon, section, title)),
        narrow,
        {0.25: 0.5, 0.35: 0.7}[narrow],
        extension_gap=1.5 if asme else 0.0,
        extension_past=3.0 if asme else 8 * narrow,
        strokes=strokes,
    )
