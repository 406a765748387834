"""What stands on the note layer: label, name, sizes, faces and edges, grain, a line of known length. Never cut."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.cnc.flat import Unit
from shopdraw.cnc.lay import Lay
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.shape.path import Point, bounds, rectangle
from shopdraw.shape.region import Region, inside, intersection, region, region_area

WANTED_MM = (10.0, 8.0, 6.0)
"""Heights of letters, the first that fits: 6 mm at least where there is room."""
SMALLER_MM = (5.0, 4.0, 3.0, 2.5, 2.0, 1.5)
"""For parts too small for that: as fits."""
_WIDE = 0.95
"""Width of a letter over its height in the plainest of the fonts that a reader may put in (measured: 0.6 to 0.95)."""
_LEADING = 1.8
_MARGIN = 3.0
_STEPS = 8

Box = tuple[float, float, float, float]


def lines_of_words(
    words: Sequence[str], outline: Region, pockets: Region, obstacles: Sequence[Box] = ()
) -> tuple[tuple[Text, ...], Box]:
    """Words in rows inside the outline, off the cuts where there is room.

    Args:
        words: a line each; they may be put into fewer rows where the part is low.
        outline: of the part, x and y on the table, mm.
        pockets: what is cut.
        obstacles: boxes to keep free.
    Returns:
        The texts and the box that they fill.
    """
    for heights, off_cuts in ((WANTED_MM, True), (SMALLER_MM[:2], True), (WANTED_MM, False), (SMALLER_MM, False)):
        for height in heights:
            for rows in _arrangements(words):
                box = _place(rows, height, outline, pockets if off_cuts else (), obstacles)
                if box is not None:
                    return _texts(rows, height, box), box
    x0, y0, x1, y1 = _bounds(outline)
    box = (x0, y0, x1, y1)
    row = "; ".join(words)
    height = min(0.5 * (y1 - y0), (x1 - x0) / (_WIDE * len(row)))
    return (Text((x0 + 0.02 * (x1 - x0), (y0 + y1) / 2 - height / 2), row, height, meaning=Meaning.WORD),), box


def _arrangements(words: Sequence[str]) -> list[list[str]]:
    """The words in as many rows as there are lines, then in fewer."""
    found = []
    for count in range(len(words), 0, -1):
        size, extra = divmod(len(words), count)
        rows, at = [], 0
        for i in range(count):
            take = size + (1 if i < extra else 0)
            rows.append("; ".join(words[at : at + take]))
            at += take
        found.append(rows)
    return found


def _size(rows: Sequence[str], height: float) -> Point:
    return max(len(row) for row in rows) * height * _WIDE, height * (1.0 + _LEADING * (len(rows) - 1))


def _place(
    rows: Sequence[str], height: float, outline: Region, pockets: Region, obstacles: Sequence[Box]
) -> Box | None:
    width, tall = _size(rows, height)
    x0, y0, x1, y1 = _bounds(outline)
    margin = min(_MARGIN, 0.15 * (y1 - y0))
    free_x, free_y = x1 - x0 - width - 2 * margin, y1 - y0 - tall - 2 * margin
    if free_x < 0 or free_y < 0:
        return None
    # from the middle outwards: notes are looked for there
    order = sorted(range(_STEPS + 1), key=lambda i: (abs(i - _STEPS / 2), i))
    for j in order:
        for i in order:
            x = x0 + margin + free_x * i / _STEPS
            y = y0 + margin + free_y * j / _STEPS
            box = (x, y, x + width, y + tall)
            if _is_free(box, margin, outline, pockets, obstacles):
                return box
    return None


def _is_free(box: Box, margin: float, outline: Region, pockets: Region, obstacles: Sequence[Box]) -> bool:
    x0, y0, x1, y1 = box
    if any(x0 < o[2] and x1 > o[0] and y0 < o[3] and y1 > o[1] for o in obstacles):
        return False
    if any(x0 < b[2] and x1 > b[0] and y0 < b[3] and y1 > b[1] for b in map(bounds, pockets)):
        return False
    grown = region(rectangle(x0 - margin / 2, y0 - margin / 2, x1 + margin / 2, y1 + margin / 2))
    if not inside(outline, ((x0 + x1) / 2, (y0 + y1) / 2)):
        return False
    return abs(region_area(intersection(grown, outline)) - region_area(grown)) < 1e-6


def _texts(rows: Sequence[str], height: float, box: Box) -> tuple[Text, ...]:
    return tuple(
        Text((box[0], box[3] - height - i * height * _LEADING), row, height, meaning=Meaning.WORD)
        for i, row in enumerate(rows)
    )


def _bounds(outline: Region) -> Box:
    boxes = [bounds(path) for path in outline]
    return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)


def known_length(unit: Unit) -> tuple[float, str]:
    """The length of the line to measure first, mm, and its words."""
    return (100.0, "100 mm") if unit is Unit.MM else (101.6, "4 in")


def measures(unit: Unit, outline: Region, taken: Sequence[Box]) -> tuple[tuple[Line | Text, ...], Box]:
    """The line of known length with its words, and an arrow along the grain, where there is room for them.

    A part shorter than the line has it below its edge, where the waste is.
    """
    length, words = known_length(unit)
    x0, y0, x1, y1 = _bounds(outline)
    height = 6.0 if y1 - y0 > 30.0 else 3.0
    for j in (1, 2, 3, 4, 5, 6, 7):
        for i in (1, 4, 7):
            x, y = x0 + (x1 - x0 - length) * i / 8, y0 + (y1 - y0) * j / 8
            box = (x, y - 3.0, x + length, y + 2.0 + height)
            clear = all(not (box[0] < o[2] and box[2] > o[0] and box[1] < o[3] and box[3] > o[1]) for o in taken)
            if x1 - x0 > length + 6.0 and clear and _is_free(box, 1.0, outline, (), ()):
                return _drawn(x, y, length, words, height), box
    y = y0 - 8.0
    return _drawn(x0, y - 8.0, length, words, height), (x0, y - 11.0, x0 + length, y)


def _drawn(x: float, y: float, length: float, words: str, height: float) -> tuple[Line | Text, ...]:
    """The line with ticks at its ends; its right half carries an arrow's barbs: grain runs along it, too."""
    word = Meaning.WORD
    return (
        Line((x, y), (x + length, y), word),
        Line((x, y - 2.0), (x, y + 2.0), word),
        Line((x + length, y - 2.0), (x + length, y + 2.0), word),
        Text((x + 2.0, y + 1.5), words, height, meaning=word),
    )


def grain_arrow(near: Box, outline: Region, taken: Sequence[Box]) -> tuple[Line | Text, ...]:
    """An arrow along the grain (along x) with its word; beside the part where there is no room on it."""
    x0, y0, x1, y1 = _bounds(outline)
    length, others = min(60.0, 0.4 * (x1 - x0)), (*taken, near)
    height = 6.0 if y1 - y0 > 30.0 else 3.0
    for j in (1, 2, 3, 4, 5, 6, 7):
        for i in (7, 4, 1):
            x, y = x0 + (x1 - x0 - length) * i / 8, y0 + (y1 - y0) * j / 8
            box = (x, y - 3.0, x + length, y + 2.0 + height)
            clear = all(not (box[0] < o[2] and box[2] > o[0] and box[1] < o[3] and box[3] > o[1]) for o in others)
            if clear and _is_free(box, 1.0, outline, (), ()):
                return _arrow(x, y, length, height)
    return _arrow(x0, y0 - 34.0, max(length, 25.0), 6.0)


def _arrow(x: float, y: float, length: float, height: float) -> tuple[Line | Text, ...]:
    word, barb = Meaning.WORD, min(4.0, length / 5)
    lines = [Line((x, y), (x + length, y), word)]
    for end, back in ((x, barb), (x + length, -barb)):
        lines += [Line((end, y), (end + back, y + barb / 2), word), Line((end, y), (end + back, y - barb / 2), word)]
    return (*lines, Text((x + barb + 1.0, y + 1.5), "grain", min(height, length / 6), meaning=word))


def outline_on_notes(lines: Sequence[tuple[Point, Point]], lay: Lay) -> tuple[Line, ...]:
    """Layout lines of a cut that another setting makes, on the table."""
    return tuple(Line(lay.point(a), lay.point(b), Meaning.WORD) for a, b in lines)
