"""Check lines: lines of a known length that a print is measured by before anything is cut from it. Paper mm."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.drawing.line_style import TEMPLATE_MM
from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import words_size
from shopdraw.sheet.look import INCH

LINE_TOLERANCE = "off by more than 0.5 mm in 200 (1/64 in 6) is no good."
_TICK = 2.5
_WORDS = 2.5


@dataclass(frozen=True, slots=True)
class CheckLine:
    """A check line of 100 mm or 4 in, lying or upright."""

    inch: bool
    upright: bool

    @property
    def length(self) -> float:
        """Of the line, mm."""
        return 4 * INCH if self.inch else 100.0

    @property
    def words(self) -> str:
        """What stands beside it."""
        return "check 4 in" if self.inch else "check 100 mm"

    @property
    def room(self) -> tuple[float, float]:
        """Width and height that it takes."""
        along, across = self.length + 1.0, 2 * _TICK + 1.6 * _WORDS
        return (across, along) if self.upright else (along, across)

    def words_box(self, middle: Point) -> tuple[Point, float, float]:
        """Middle, width and height of its words when it stands there."""
        width, below, above = words_size(self.words, _WORDS)
        off = 1.0 - 0.8 * _WORDS + (above - below) / 2
        if self.upright:
            return (middle[0] - off, middle[1]), below + above, width
        return (middle[0], middle[1] + off), width, below + above


def check_line_marks(line: CheckLine, middle: Point) -> Iterator[Mark]:
    """A check line with ticks at its ends and its length in words.

    Args:
        line: which.
        middle: of the room that it takes.
    """
    half = line.length / 2
    off = -0.8 * _WORDS

    def at(along: float, across: float) -> Point:
        return (middle[0] - across, middle[1] + along) if line.upright else (middle[0] + along, middle[1] + across)

    yield Line(at(-half, off), at(half, off), Meaning.SIZE, "", TEMPLATE_MM)
    for end in (-half, half):
        yield Line(at(end, off - _TICK), at(end, off + _TICK), Meaning.SIZE, "", TEMPLATE_MM)
    yield Text(at(0.0, off + 1.0), line.words, _WORDS, "middle", 90.0 if line.upright else 0.0)
