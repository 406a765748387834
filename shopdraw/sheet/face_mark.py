"""What stands inside a board's face on paper: grain arrow, face and edge marks, words. Marks in true-size mm."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning, Text
from shopdraw.shape.path import Path, Point, bounds
from shopdraw.sheet.board_view import inside
from shopdraw.sheet.box import Box, words_size
from shopdraw.sheet.ground import Ground, What, strokes_of
from shopdraw.sheet.look import Look

GRAIN_LENGTH = 26.0
GRAIN_WORD = "grain"
LOOP = 1.5
_TAIL, _LONGER = 5.0, (8.0, 11.0, 14.0)
_ALONG = (0.3, 0.32, 0.35, 0.25, 0.4, 0.2, 0.45, 0.55, 0.6, 0.65, 0.7, 0.75, 0.9, 0.94, 0.15, 0.1, 0.06)
"""Where along the reference edge the face mark may stand, shares of the length, the best first."""
_OFF_HEAD = 0.9
"""From the grain's line to the ink over it, clear of the arrows' heads."""
_CLEAR = 1.2
_ON_EDGE = 1e-3
_COLUMNS, _ROWS = 25, 15


@dataclass(frozen=True, slots=True)
class Wanted:
    """Words for a face: lines one under the other, and where they would rather stand (shares of the outline's box)."""

    lines: tuple[tuple[str, float], ...]
    near: Point


class FacePaper:
    """A face on paper, with what already stands on it."""

    def __init__(self, outline: Path, marks: Sequence[Mark], scale: float, look: Look) -> None:
        self._outline, self._scale, self._look = outline, scale, look
        self._ground = Ground()
        for stroke in strokes_of(marks, What.VIEW, "", scale):
            self._ground.add_stroke(stroke)
        self._box = bounds(outline)

    def spot(self, width: float, height: float, near: Point) -> Point | None:
        """The middle of a free place of that size on paper, as near as may be to a share of the box; true-size mm."""
        x0, y0, x1, y1 = self._box
        wanted = (x0 + near[0] * (x1 - x0), y0 + near[1] * (y1 - y0))
        places = [
            (x0 + (x1 - x0) * (i + 0.5) / _COLUMNS, y0 + (y1 - y0) * (j + 0.5) / _ROWS)
            for i in range(_COLUMNS)
            for j in range(_ROWS)
        ]
        for place in sorted([wanted, *places], key=lambda p: (round(math.dist(p, wanted), 3), p)):
            if self._free(place, width, height):
                return place
        return None

    def _free(self, at: Point, width: float, height: float) -> bool:
        s = self._scale
        box = Box(at[0] * s, at[1] * s, width / 2, height / 2)
        grown = box.grown(_CLEAR)
        if not all(inside(self._outline, (x / s, y / s)) for x, y in grown.corners()):
            return False
        return self._ground.free_for_words(box, "own", _CLEAR)

    def clear_of_lines(self, at: Point, width: float, height: float) -> bool:
        """Whether nothing stands in a box that may reach to the outline."""
        s = self._scale
        box = Box(at[0] * s, at[1] * s, width / 2, height / 2)
        return self._ground.free_for_words(box, "own", 0.4)

    def off_words(self, start: Point, end: Point) -> bool:
        """Whether a line runs into none of the words that stand there."""
        s = self._scale
        return not self._ground.line_meets_words(((start[0] * s, start[1] * s), (end[0] * s, end[1] * s)))

    def taken(self, at: Point, width: float, height: float) -> None:
        """Notes that something stands there."""
        s = self._scale
        self._ground.add_box(Box(at[0] * s, at[1] * s, width / 2, height / 2), "face")


def face_marks(
    outline: Path, marks: Sequence[Mark], far: bool, wanted: Sequence[Wanted], scale: float, look: Look, board: str
) -> tuple[Mark, ...]:
    """Words, grain arrow and face mark of a face, each where there is room; what has no room is left out.

    Args:
        outline: of the board, in the view's plane.
        marks: the view's lines.
        far: the reference edge is the upper one.
        wanted: words.
        scale, look: of the sheet.
        board: id that the marks carry.
    """
    paper = FacePaper(outline, marks, scale, look)
    made: list[Mark] = []
    for words in wanted:
        made += _words(paper, words, scale, look, board)
    made += _face_mark(paper, outline, far, scale, board, marks)
    made += _grain(paper, scale, look, board)
    return tuple(made)


def _words(paper: FacePaper, words: Wanted, scale: float, look: Look, board: str) -> Iterator[Mark]:
    for most in (look.section, look.balloon, look.figure):
        sized = [(line, min(height, most)) for line, height in words.lines]
        pitch = [height * 1.6 for _, height in sized]
        width = max(words_size(line, height)[0] for line, height in sized)
        tall = sum(pitch)
        spot = paper.spot(width, tall, words.near)
        if spot is None:
            continue
        paper.taken(spot, width, tall)
        y = spot[1] * scale + tall / 2
        for (line, height), step in zip(sized, pitch, strict=True):
            y -= step
            yield Text((spot[0], (y + 0.3 * height) / scale), line, height, "middle", 0.0, Meaning.WORD, board)
        return


def _grain(paper: FacePaper, scale: float, look: Look, board: str) -> Iterator[Mark]:
    """A double arrow along the grain with its word."""
    word, below, above = words_size(GRAIN_WORD, look.figure)
    rise = below + _OFF_HEAD
    for length in (GRAIN_LENGTH, word + 4.0):
        tall = above + rise + 1.6
        spot = paper.spot(length, tall, (0.5, 0.5))
        if spot is None:
            continue
        paper.taken(spot, length, tall)
        x, y = spot[0], spot[1] - (tall / 2 - 0.8) / scale
        a, b = (x - length / 2 / scale, y), (x + length / 2 / scale, y)
        yield Line(a, b, Meaning.WORD, board)
        yield Arrow(a, 180.0, 3.0, 1.0, Meaning.WORD, board)
        yield Arrow(b, 0.0, 3.0, 1.0, Meaning.WORD, board)
        yield Text((x, y + rise / scale), GRAIN_WORD, look.figure, "middle", 0.0, Meaning.WORD, board)
        return


def has_edge(marks: Sequence[Mark], x: float, edge: float, half: float) -> bool:
    """Whether wood ends at the level of an edge round a place, so that a tail can run to it: no cut took it there.

    Args:
        marks: lines of the view, true-size mm.
        x: place along the edge.
        edge: its level.
        half: how far to both sides of the place.
    """
    return any(
        isinstance(mark, Line)
        and abs(mark.start[1] - edge) < _ON_EDGE
        and abs(mark.end[1] - edge) < _ON_EDGE
        and min(mark.start[0], mark.end[0]) <= x - half
        and max(mark.start[0], mark.end[0]) >= x + half
        for mark in marks
    )


def _face_mark(
    paper: FacePaper, outline: Path, far: bool, scale: float, board: str, marks: Sequence[Mark]
) -> Iterator[Mark]:
    """The face mark: a loop whose tail runs to the reference edge (common practice)."""
    x0, y0, x1, y1 = bounds(outline)
    edge, sign = (y1, -1.0) if far else (y0, 1.0)
    most = (y1 - y0) * scale * 0.8
    # Over grooves and rabbets along the edge the tail is longer, so that the loop stands clear of their lines.
    for tall in dict.fromkeys(min(tail + 2 * LOOP, most) for tail in (_TAIL, *_LONGER)):
        loop = min(LOOP, tall / 5)
        for share in _ALONG:
            x = x0 + share * (x1 - x0)
            centre = (x, edge + sign * (tall - loop) / scale)
            tail = (x - loop / scale, centre[1]), (x + loop / 2 / scale, edge)
            clear = paper.clear_of_lines(centre, 2 * loop + 1.0, 2 * loop + 0.6) and paper.off_words(*tail)
            if clear and has_edge(marks, x, edge, loop / scale):
                paper.taken((x, edge + sign * tall / 2 / scale), 2 * loop + 1.0, tall)
                yield ArcMark(centre, loop / scale, 0.0, 360.0, Meaning.WORD, board)
                yield Line(*tail, Meaning.WORD, board)
                return


def edge_mark(outline_box: tuple[float, float, float, float], scale: float, board: str) -> tuple[Mark, ...]:
    """The edge mark, a V on the reference edge as an edge view shows it (common practice)."""
    x0, y0, x1, y1 = outline_box
    tall = min(3.0, 0.8 * (y1 - y0) * scale) / scale
    x, y = x0 + 0.3 * (x1 - x0), (y0 + y1) / 2
    tip = (x, y - tall / 2)
    return tuple(Line((x + side * tall / 2, y + tall / 2), tip, Meaning.WORD, board) for side in (-1.0, 1.0))
