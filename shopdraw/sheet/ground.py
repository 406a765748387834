"""What already stands on a view, so that the next figure finds free paper: lines and boxes by place. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import IntEnum
from itertools import pairwise

from shopdraw.drawing.bounds import arrow_corners
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, Box, Segment, box_of_text, upright

CELL = 8.0
_STEP = CELL / 2
CLEAR = 0.5
"""A figure's box is grown by this before it is tested."""
WORDS_APART = 1.6
"""Figures beside each other on one line stand that far apart, or two would be read as one."""


class What(IntEnum):
    """What a line on a view is there for."""

    VIEW = 0
    EXTENSION = 1
    DIMENSION = 2
    LEADER = 3
    END = 4
    """An arrowhead or an oblique stroke: words keep off it, other lines may pass."""


EVERY = tuple(What)
PLACED = (What.DIMENSION, What.LEADER)
"""What no leader may cross."""


@dataclass(frozen=True, slots=True)
class Stroke:
    """A straight line that stands on the view, what for, and whose it is."""

    line: Segment
    what: What
    owner: str
    meaning: Meaning = Meaning.SIZE


class Ground:
    """Lines and boxes, found by place.

    A ground may stand on another, which it leaves as it is: the one below holds the view's own lines, the one above
    what has been placed round them.
    """

    def __init__(self, under: Ground | None = None) -> None:
        self._under = under
        # By kind; a list, since the hash of an enum's member is slow.
        self._strokes: list[list[Stroke]] = [[] for _ in What]
        self._stroke_cells: list[dict[tuple[int, int], list[int]]] = [{} for _ in What]
        self._boxes: list[tuple[Box, str]] = []
        self._box_cells: dict[tuple[int, int], list[int]] = {}

    def add_stroke(self, stroke: Stroke) -> None:
        """A line that figures must keep off."""
        strokes, held = self._strokes[stroke.what], self._stroke_cells[stroke.what]
        place = len(strokes)
        strokes.append(stroke)
        for cell in _cells_about(stroke.line):
            held.setdefault(cell, []).append(place)

    def add_box(self, box: Box, owner: str) -> None:
        """A figure or other words that lines and figures must keep off."""
        place = len(self._boxes)
        self._boxes.append((box, owner))
        for cell in _cells_in(box.bounds()):
            self._box_cells.setdefault(cell, []).append(place)

    def strokes_near(self, bounds: Bounds, kinds: tuple[What, ...] = EVERY) -> Iterator[Stroke]:
        """Lines of the kinds that may lie in a box, each once, in a fixed order."""
        if self._under is not None:
            yield from self._under.strokes_near(bounds, kinds)
        if any(self._strokes[kind] for kind in kinds):
            yield from self._picked(_cells_in(bounds), kinds)

    def strokes_along(self, line: Segment, kinds: tuple[What, ...] = EVERY) -> Iterator[Stroke]:
        """Lines of the kinds that may meet a line, each once, in a fixed order."""
        if self._under is not None:
            yield from self._under.strokes_along(line, kinds)
        if any(self._strokes[kind] for kind in kinds):
            cells = [(math.floor(x / CELL), math.floor(y / CELL)) for x, y in _points_along(line)]
            yield from self._picked(cells, kinds)

    def _picked(self, cells: list[tuple[int, int]], kinds: tuple[What, ...]) -> Iterator[Stroke]:
        for kind in kinds:
            strokes, where = self._strokes[kind], self._stroke_cells[kind]
            if not strokes:
                continue
            if len(cells) > len(where):
                yield from strokes
                continue
            found: set[int] = set()
            for cell in cells:
                held = where.get(cell)
                if held:
                    found.update(held)
            for place in sorted(found):
                yield strokes[place]

    def boxes_near(self, bounds: Bounds) -> Iterator[tuple[Box, str]]:
        """Boxes of words that may meet a box; each once, in the order they were added."""
        if self._under is not None:
            yield from self._under.boxes_near(bounds)
        if not self._boxes:
            return
        found: set[int] = set()
        for cell in _cells_in(bounds):
            held = self._box_cells.get(cell)
            if held:
                found.update(held)
        for place in sorted(found):
            yield self._boxes[place]

    def free_for_words(self, box: Box, owner: str, clear: float = CLEAR) -> bool:
        """Whether words may stand in a box: grown, it meets no other box and no line but its owner's."""
        grown = box.grown(clear)
        bounds = grown.bounds()
        apart = Box(box.x, box.y, box.along + max(clear, WORDS_APART), box.across + clear, box.cos, box.sin)
        if any(apart.meets_box(other) for other, _ in self.boxes_near(apart.bounds())):
            return False
        return not any(
            grown.meets_line(*stroke.line) for stroke in self.strokes_near(bounds) if stroke.owner != owner
        )

    def line_meets_words(self, line: Segment, owner: str = "", clear: float = CLEAR) -> bool:
        """Whether a line runs into words other than its owner's."""
        return any(
            box.grown(clear).meets_line(*line)
            for box, whose in self.boxes_near(_bounds(line, clear))
            if not owner or whose != owner
        )


def strokes_of(marks: Iterable[Mark], what: What, owner: str = "", scale: float = 1.0) -> Iterator[Stroke]:
    """Marks as straight strokes on paper; arcs in chords, arrows as their outlines; hatches and words are left out."""
    for mark in marks:
        for p, q in _lines_of(mark, scale):
            line = ((p[0] * scale, p[1] * scale), (q[0] * scale, q[1] * scale))
            yield Stroke(line, what, owner, getattr(mark, "meaning", Meaning.HATCH))


def boxes_of(marks: Iterable[Mark], scale: float = 1.0) -> Iterator[Box]:
    """The boxes of words and dots among marks, on paper."""
    for mark in marks:
        if isinstance(mark, Text):
            yield box_of_text(mark, scale)
        elif isinstance(mark, Dot):
            x, y, r = mark.centre[0] * scale, mark.centre[1] * scale, mark.radius
            yield upright((x - r, y - r, x + r, y + r))


def _lines_of(mark: Mark, scale: float) -> Iterator[Segment]:
    if isinstance(mark, Line):
        yield mark.start, mark.end
    elif isinstance(mark, ArcMark):
        points = arc_points(mark, scale)
        yield from pairwise(points)
    elif isinstance(mark, Arrow):
        tip, left, right = arrow_corners(mark, scale)
        yield from ((tip, left), (tip, right), (left, right))
    else:
        assert isinstance(mark, Area | Text | Dot)


def arc_points(arc: ArcMark, scale: float = 1.0) -> list[Point]:
    """Points along an arc, chords at most 2 mm on paper and 15° long."""
    sweep = arc.end_deg - arc.start_deg
    count = max(2, math.ceil(sweep / 15.0), min(90, math.ceil(math.radians(sweep) * arc.radius * scale / 2.0)))
    angles = (math.radians(arc.start_deg + sweep * i / count) for i in range(count + 1))
    return [(arc.centre[0] + arc.radius * math.cos(a), arc.centre[1] + arc.radius * math.sin(a)) for a in angles]


def _bounds(line: Segment, by: float) -> Bounds:
    (x0, y0), (x1, y1) = line
    return min(x0, x1) - by, min(y0, y1) - by, max(x0, x1) + by, max(y0, y1) + by


def _points_along(line: Segment) -> list[Point]:
    """Points on a line, none more than 2 mm from the next one's half way."""
    (x0, y0), (x1, y1) = line
    count = max(1, math.ceil(math.hypot(x1 - x0, y1 - y0) / _STEP))
    dx, dy = (x1 - x0) / count, (y1 - y0) / count
    return [(x0 + i * dx, y0 + i * dy) for i in range(count + 1)]


def _cells_about(line: Segment) -> Iterable[tuple[int, int]]:
    """Cells within 4 mm of a line; of one that is level or plumb they are those of a box."""
    (x0, y0), (x1, y1) = line
    if abs(x1 - x0) < CELL or abs(y1 - y0) < CELL:
        return _cells_in((min(x0, x1) - _STEP, min(y0, y1) - _STEP, max(x0, x1) + _STEP, max(y0, y1) + _STEP))
    cells: dict[tuple[int, int], None] = {}
    for x, y in _points_along(line):
        cells.update(dict.fromkeys(_cells_in((x - _STEP, y - _STEP, x + _STEP, y + _STEP))))
    return cells


def _cells_in(bounds: Bounds) -> list[tuple[int, int]]:
    x0, y0 = math.floor(bounds[0] / CELL), math.floor(bounds[1] / CELL)
    x1, y1 = math.floor(bounds[2] / CELL), math.floor(bounds[3] / CELL)
    return [(i, j) for i in range(x0, x1 + 1) for j in range(y0, y1 + 1)]
