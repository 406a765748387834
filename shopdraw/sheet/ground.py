"""What already stands on a view, so that the next figure finds free paper: lines and boxes by place. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import IntEnum
from itertools import pairwise

from shopdraw.drawing.bounds import arrow_corners
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, Box, Segment, box_of_text, upright

CELL = 8.0
_STEP = CELL / 2
_ACROSS = 1 << 24
"""A cell's number is its column times this and its row."""
_OFF_ARC = 0.05
"""Chords of small arcs lie this near to them: a screw hole doesn't need two dozen."""
_BESIDE = 0.35
"""Lines that are asked to keep apart at all keep apart by less than this."""
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
        # By kind; a list, since the hash of an enum's member is slow. With each line the upright box round it.
        self._strokes: list[list[tuple[Bounds, Stroke]]] = [[] for _ in What]
        self._stroke_cells: list[dict[int, list[int]]] = [{} for _ in What]
        self._boxes: list[tuple[Bounds, Box, str]] = []
        self._box_cells: dict[int, list[int]] = {}

    def add_stroke(self, stroke: Stroke) -> None:
        """A line that figures must keep off."""
        strokes, held = self._strokes[stroke.what], self._stroke_cells[stroke.what]
        place = len(strokes)
        strokes.append((_bounds(stroke.line, 0.0), stroke))
        for cell in _cells_about(stroke.line):
            known = held.get(cell)
            if known is None:
                held[cell] = [place]
            else:
                known.append(place)

    def add_box(self, box: Box, owner: str) -> None:
        """A figure or other words that lines and figures must keep off."""
        place = len(self._boxes)
        bounds = box.bounds()
        self._boxes.append((bounds, box, owner))
        for cell in _cells_in(bounds):
            self._box_cells.setdefault(cell, []).append(place)

    def lines(self) -> list[Segment]:
        """All lines, of every kind."""
        below = self._under.lines() if self._under is not None else []
        return below + [stroke.line for strokes in self._strokes for _, stroke in strokes]

    def strokes_near(self, bounds: Bounds, kinds: tuple[What, ...] = EVERY) -> list[Stroke]:
        """Lines of the kinds whose upright boxes meet a box, each once, in a fixed order."""
        found: list[Stroke] = []
        self._pick(_cells_in(bounds), bounds, kinds, found)
        return found

    def strokes_along(self, line: Segment, kinds: tuple[What, ...] = EVERY) -> list[Stroke]:
        """Lines of the kinds that may meet a line or run along it within 0.3, each once, in a fixed order."""
        found: list[Stroke] = []
        self._pick(_cells_about(line, _BESIDE), _bounds(line, _BESIDE), kinds, found)
        return found

    def _pick(self, cells: Collection[int], bounds: Bounds, kinds: tuple[What, ...], found: list[Stroke]) -> None:
        if self._under is not None:
            self._under._pick(cells, bounds, kinds, found)
        left, foot, right, head = bounds
        for kind in kinds:
            strokes, where = self._strokes[kind], self._stroke_cells[kind]
            if not strokes:
                continue
            places: set[int] | range = range(len(strokes))
            if len(cells) <= len(where):
                places = set().union(*(where[cell] for cell in cells if cell in where))
            near = []
            for place in places:
                x0, y0, x1, y1 = strokes[place][0]
                if x0 <= right and x1 >= left and y0 <= head and y1 >= foot:
                    near.append(place)
            near.sort()
            found.extend(strokes[place][1] for place in near)

    def free_for_words(self, box: Box, owner: str, clear: float = CLEAR) -> bool:
        """Whether words may stand in a box: grown, it meets no other box and no line but its owner's."""
        apart = Box(box.x, box.y, box.along + max(clear, WORDS_APART), box.across + clear, box.cos, box.sin)
        grown, bounds = box.grown(clear), apart.bounds()
        cells = _cells_in(bounds)
        return not (self._words_in(apart, bounds, cells) or self._line_in(grown, grown.bounds(), cells, owner))

    def line_meets_words(self, line: Segment, owner: str = "", clear: float = CLEAR) -> bool:
        """Whether a line runs into words other than its owner's."""
        bounds = _bounds(line, clear)
        return self._words_on(line, bounds, _cells_in(bounds), owner, clear)

    def _words_in(self, box: Box, bounds: Bounds, cells: Sequence[int]) -> bool:
        """Whether words meet a box. Asked of thousands of places: the boxes round things part most of them at once."""
        if self._under is not None and self._under._words_in(box, bounds, cells):
            return True
        left, foot, right, head = bounds
        for (x0, y0, x1, y1), other, _ in self._boxes_in(cells):
            if x0 < right and x1 > left and y0 < head and y1 > foot and box.meets_box(other):
                return True
        return False

    def _words_on(self, line: Segment, bounds: Bounds, cells: Sequence[int], owner: str, clear: float) -> bool:
        if self._under is not None and self._under._words_on(line, bounds, cells, owner, clear):
            return True
        left, foot, right, head = bounds
        for (x0, y0, x1, y1), box, whose in self._boxes_in(cells):
            # The bounds are grown by `clear`, which a turned box's own may exceed by as much again.
            if x0 - clear > right or x1 + clear < left or y0 - clear > head or y1 + clear < foot:
                continue
            if (not owner or whose != owner) and box.grown(clear).meets_line(*line):
                return True
        return False

    def _boxes_in(self, cells: Sequence[int]) -> Iterable[tuple[Bounds, Box, str]]:
        """Boxes of this ground that may lie in the cells, in no order: all of them where there are fewer than cells."""
        boxes, where = self._boxes, self._box_cells
        if len(boxes) <= len(cells):
            return boxes
        return [boxes[place] for cell in cells if cell in where for place in where[cell]]

    def _line_in(self, box: Box, bounds: Bounds, cells: Sequence[int], owner: str) -> bool:
        """Whether a line of another owner has a point in a box."""
        if self._under is not None and self._under._line_in(box, bounds, cells, owner):
            return True
        left, foot, right, head = bounds
        for strokes, where in zip(self._strokes, self._stroke_cells, strict=True):
            for cell in cells if strokes else ():
                for place in where.get(cell, ()):
                    (x0, y0, x1, y1), stroke = strokes[place]
                    if x0 > right or x1 < left or y0 > head or y1 < foot or stroke.owner == owner:
                        continue
                    if box.meets_line(*stroke.line):
                        return True
        return False


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
    """Points along an arc, chords at most 2 mm on paper, and 15° long or as long as keeps them near to it."""
    sweep, radius = arc.end_deg - arc.start_deg, arc.radius * scale
    widest = math.degrees(2 * math.acos(max(0.5, 1 - _OFF_ARC / radius))) if radius > 0 else 60.0
    count = max(2, math.ceil(sweep / max(15.0, widest)), min(90, math.ceil(math.radians(sweep) * radius / 2.0)))
    angles = (math.radians(arc.start_deg + sweep * i / count) for i in range(count + 1))
    return [(arc.centre[0] + arc.radius * math.cos(a), arc.centre[1] + arc.radius * math.sin(a)) for a in angles]


def _bounds(line: Segment, by: float) -> Bounds:
    (x0, y0), (x1, y1) = line
    if x0 > x1:
        x0, x1 = x1, x0
    if y0 > y1:
        y0, y1 = y1, y0
    return x0 - by, y0 - by, x1 + by, y1 + by


def _points_along(line: Segment) -> list[Point]:
    """Points on a line, none more than 2 mm from the next one's half way."""
    (x0, y0), (x1, y1) = line
    count = max(1, math.ceil(math.hypot(x1 - x0, y1 - y0) / _STEP))
    dx, dy = (x1 - x0) / count, (y1 - y0) / count
    return [(x0 + i * dx, y0 + i * dy) for i in range(count + 1)]


def _cells_about(line: Segment, beside: float = 0.0) -> Collection[int]:
    """Every cell that a line passes, or passes within `beside`, and of one that slants some further ones.

    Args:
        beside: at most 4 mm.
    """
    (x0, y0), (x1, y1) = line
    if abs(x1 - x0) < CELL or abs(y1 - y0) < CELL:
        return _cells_in(_bounds(line, beside))
    cells: dict[int, None] = {}
    for x, y in _points_along(line):
        cells.update(dict.fromkeys(_cells_in((x - _STEP, y - _STEP, x + _STEP, y + _STEP))))
    return cells


def _cells_in(bounds: Bounds) -> Sequence[int]:
    x0, y0 = math.floor(bounds[0] / CELL), math.floor(bounds[1] / CELL)
    x1, y1 = math.floor(bounds[2] / CELL), math.floor(bounds[3] / CELL)
    if x0 == x1:
        return range(x0 * _ACROSS + y0, x0 * _ACROSS + y1 + 1)
    if y0 == y1:
        return range(x0 * _ACROSS + y0, x1 * _ACROSS + y0 + 1, _ACROSS)
    return [i * _ACROSS + j for i in range(x0, x1 + 1) for j in range(y0, y1 + 1)]
