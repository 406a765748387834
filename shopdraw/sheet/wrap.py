"""Words in a cell: on as many lines as it takes, in letters as large as fit. Paper mm."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.drawing.letters import text_width
from shopdraw.drawing.mark import Meaning, Text
from shopdraw.sheet.look import INCH_HEIGHTS, ISO_HEIGHTS, Look

PITCH = 1.7
"""From line to line in a cell, in heights."""
_ELLIPSIS = "…"
_FRACTION = re.compile(r"[1-9]\d*/[1-9]\d*(?!\d)")
_UNITS = frozenset(("mm", "in", "ft", "kg", "lb", "%", "m³", "dm³"))


@dataclass(frozen=True, slots=True)
class Fitted:
    """Words as they fit a cell: lines, and the height of their letters."""

    lines: tuple[str, ...]
    height: float

    @property
    def tall(self) -> float:
        """From the first line's capitals to the last line's baseline."""
        return self.height * (1.0 + PITCH * (len(self.lines) - 1))


@lru_cache(maxsize=16384)
def wrapped(words: str, height: float, width: float) -> tuple[str, ...]:
    """Words on lines no wider than `width`; a word that is wider by itself is parted.

    A whole number keeps its fraction, and a figure its unit, where the two have room on one line.
    """
    lines: list[str] = []
    line = ""
    for word in _kept_together(words, height, width):
        longer = f"{line} {word}" if line else word
        if text_width(longer, height) <= width:
            line = longer
            continue
        if line:
            lines.append(line)
        line = word
        while text_width(line, height) > width and len(line) > 1:
            part = _longest_part(line, height, width)
            lines.append(line[:part])
            line = line[part:]
    return (*lines, line) if line else tuple(lines)


def _kept_together(words: str, height: float, width: float) -> Iterator[str]:
    """The words, those that are read as one figure as one."""
    held = ""
    for word in words.split():
        pair = f"{held} {word}"
        if held and _is_one_figure(held, word) and text_width(pair, height) <= width:
            held = pair
            continue
        if held:
            yield held
        held = word
    if held:
        yield held


def _is_one_figure(before: str, word: str) -> bool:
    figure = before.rsplit(" ", 1)[-1].lstrip("(")
    if _FRACTION.match(word):
        return figure.isdigit()
    return figure[-1:].isdigit() and word.rstrip(".,;:)") in _UNITS


def fitted(
    words: str, width: float, room: float, wanted: float, least: float, look: Look, *, single: bool = False
) -> Fitted:
    """Words in a cell: first smaller letters of the series, at each height wrapped; cut short only as a last resort.

    Args:
        words: what to fit.
        width, room: of the cell's inside.
        wanted, least: heights of the series to start from and to end with.
        look: for its series.
        single: smaller letters on one line are better than larger ones on two.
    """
    series = INCH_HEIGHTS if look.inch else ISO_HEIGHTS
    heights = sorted({wanted, least, *(h for h in series if least <= h <= wanted)}, reverse=True)
    if single:
        line = next((h for h in heights if h <= room and text_width(words, h) <= width), None)
        if line is not None:
            return Fitted((words,), line)
    for height in heights:
        found = Fitted(wrapped(words, height, width), height)
        whole = all(text_width(word, height) <= width for word in words.split())
        if found.tall <= room and (whole or height == heights[-1]):
            return found
    return _cut(words, width, room, heights[-1])


def cell_texts(cell: Fitted, x: float, top: float, anchor: str = "left") -> Iterable[Text]:
    """A cell's lines as texts, the first one's capitals reaching up to `top`."""
    for i, line in enumerate(cell.lines):
        yield Text((x, top - cell.height * (1.0 + PITCH * i)), line, cell.height, anchor, 0.0, Meaning.WORD)


def _longest_part(word: str, height: float, width: float) -> int:
    """How many of a word's letters fit, at least one."""
    low, high = 1, len(word)
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if text_width(word[:middle], height) <= width else (low, middle - 1)
    return low


def _cut(words: str, width: float, room: float, height: float) -> Fitted:
    """As many lines as fit, the last one ending in an ellipsis."""
    count = max(1, int((room / height - 1.0) / PITCH + 1.0 + 1e-9))
    lines = wrapped(words, height, width)[:count]
    last = lines[-1]
    while last and text_width(last + _ELLIPSIS, height) > width:
        last = last[:-1]
    return Fitted((*lines[:-1], last + _ELLIPSIS), height)
