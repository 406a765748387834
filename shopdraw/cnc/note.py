"""What stands on the note layer: label, name, sizes, faces and edges, grain, a line of known length. Never cut."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence

from shopdraw.cnc.flat import Unit
from shopdraw.cnc.free_place import Box, Ground
from shopdraw.cnc.lay import Lay
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.shape.path import Point

WANTED_MM = (10.0, 8.0, 6.0)
"""Heights of letters, the first that fits: 6 mm at least where there is room."""
SMALLER_MM = (5.0, 4.0, 3.0, 2.5, 2.0, 1.5, 1.0)
"""For parts too small for that: as fits."""
_WIDE = 0.95
"""Advance of a letter over its height in the wide fonts that a reader may put in."""
_LEADING = 1.7
_MARGIN = 2.0
_STEPS = 8
_LINE_LENGTHS = (36, 28, 22)
"""Longest rows of words kept apart, in letters; then they flow into rows of the lengths below."""
_FLOWING = (26, 34, 44, 60, 80, 120, 400)


def placed_words(words: Sequence[str], ground: Ground) -> tuple[tuple[Text, ...], Box]:
    """Words in rows inside the outline, off the cuts where there is room.

    Args:
        words: a line each; they are broken, or put into fewer rows, as the part asks for.
        ground: the part.
    Returns:
        The texts and the box that they fill.
    """
    arrangements = _arrangements(words)
    tries = ((WANTED_MM, True), (SMALLER_MM[:2], True), (WANTED_MM, False), (SMALLER_MM, False))
    for heights, off_cuts in tries:
        for height in heights:
            for rows in arrangements:
                box = _place(rows, height, ground, off_cuts=off_cuts)
                if box is not None:
                    return _texts(rows, height, box), box
    # thinner than any of these: a single row along the middle
    x0, y0, x1, y1 = ground.box
    row = "; ".join(words)
    height = min(0.4 * (y1 - y0), 0.96 * (x1 - x0) / (_WIDE * len(row)))
    box = (x0 + 0.02 * (x1 - x0), (y0 + y1 - height) / 2, x1, (y0 + y1 + height) / 2)
    return _texts([row], height, box), box


def _arrangements(words: Sequence[str]) -> list[list[str]]:
    """The words as lines of their own, broken where they are long; then flowing in rows of several lengths."""
    found = [[row for line in words for row in textwrap.wrap(line, length)] for length in _LINE_LENGTHS]
    flowing = "; ".join(words)
    found += [textwrap.wrap(flowing, length) for length in _FLOWING]
    return found


def _place(rows: Sequence[str], height: float, ground: Ground, *, off_cuts: bool) -> Box | None:
    width = max(len(row) for row in rows) * height * _WIDE
    tall = height * (1.0 + _LEADING * (len(rows) - 1))
    x0, y0, x1, y1 = ground.box
    margin = min(_MARGIN, 0.1 * (y1 - y0))
    free_x, free_y = x1 - x0 - width - 2.1 * margin, y1 - y0 - tall - 2.1 * margin
    if free_x < 0 or free_y < 0:
        return None
    # from the middle outwards: notes are looked for there
    order = sorted(range(_STEPS + 1), key=lambda i: (abs(i - _STEPS / 2), i))
    boxes = []
    for j in order:
        for i in order:
            x = x0 + 1.05 * margin + free_x * i / _STEPS
            y = y0 + 1.05 * margin + free_y * j / _STEPS
            boxes.append((x, y, x + width, y + tall))
    return ground.first_free(boxes, margin, off_cuts=off_cuts)


def _texts(rows: Sequence[str], height: float, box: Box) -> tuple[Text, ...]:
    return tuple(
        Text((box[0], box[3] - height - i * height * _LEADING), row, height, meaning=Meaning.WORD)
        for i, row in enumerate(rows)
    )


def known_length(unit: Unit) -> tuple[float, str]:
    """The length of the line to measure first, mm, and its words."""
    return (100.0, "100 mm") if unit is Unit.MM else (101.6, "4 in")


def measures(unit: Unit, ground: Ground) -> tuple[tuple[Line | Text, ...], Box]:
    """The line of known length with its words, on the part where there is room for it, off the cuts if possible.

    A part shorter than the line has it below its edge, where the waste is.
    """
    length, words = known_length(unit)
    height = _small_height(ground)
    box = _row_spot(length, height, ground)
    if box is None:
        x0, y0, _, _ = ground.box
        box = (x0, y0 - 31.0, x0 + length, y0 - 26.0 + height)
    x, y = box[0], box[1] + 3.0
    word = Meaning.WORD
    return (
        Line((x, y), (x + length, y), word),
        Line((x, y - 2.0), (x, y + 2.0), word),
        Line((x + length, y - 2.0), (x + length, y + 2.0), word),
        Text((x + 2.0, y + 1.5), words, height, meaning=word),
    ), box


def grain_arrow(ground: Ground) -> tuple[Line | Text, ...]:
    """An arrow along the grain (along x) with its word; below the part where there is no room on it."""
    x0, y0, x1, _ = ground.box
    length, height = min(60.0, 0.4 * (x1 - x0)), _small_height(ground)
    box = _row_spot(length, height, ground)
    if box is None:
        return _arrow(x0, y0 - 44.0, max(length, 25.0), 6.0)
    return _arrow(box[0], box[1] + 3.0, length, height)


def _small_height(ground: Ground) -> float:
    _, y0, _, y1 = ground.box
    return 6.0 if y1 - y0 > 30.0 else 3.0


def _row_spot(length: float, height: float, ground: Ground) -> Box | None:
    """A free box for a line with words over it, from the lower left; over cuts only where nothing else is free."""
    x0, y0, x1, y1 = ground.box
    if x1 - x0 < length + 4.0:
        return None
    boxes = []
    for j in range(1, 12):
        for i in range(1, 12):
            x, y = x0 + (x1 - x0 - length) * i / 12, y0 + (y1 - y0) * j / 12
            boxes.append((x, y - 3.0, x + length, y + 2.0 + height))
    return ground.first_free(boxes, 1.0, off_cuts=True) or ground.first_free(boxes, 1.0, off_cuts=False)


def _arrow(x: float, y: float, length: float, height: float) -> tuple[Line | Text, ...]:
    word, barb = Meaning.WORD, min(4.0, length / 5)
    lines = [Line((x, y), (x + length, y), word)]
    for end, back in ((x, barb), (x + length, -barb)):
        lines += [Line((end, y), (end + back, y + barb / 2), word), Line((end, y), (end + back, y - barb / 2), word)]
    return (*lines, Text((x + barb + 1.0, y + 1.5), "grain", min(height, length / 6), meaning=word))


def layout_lines(lines: Sequence[tuple[Point, Point]], lay: Lay) -> tuple[Line, ...]:
    """Layout lines of a cut that another setting makes, on the table."""
    return tuple(Line(lay.point(a), lay.point(b), Meaning.WORD) for a, b in lines)


def boxes_of(lines: Sequence[Line]) -> tuple[Box, ...]:
    """The boxes of layout lines, so that words keep off them."""
    return tuple(
        (min(a[0], b[0]) - 1.0, min(a[1], b[1]) - 1.0, max(a[0], b[0]) + 1.0, max(a[1], b[1]) + 1.0)
        for a, b in ((line.start, line.end) for line in lines)
    )
