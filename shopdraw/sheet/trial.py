"""Whether a dimension may stand where it is tried, and putting it there. Paper mm."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.mark import Arrow, Line, Mark, Text
from shopdraw.sheet.box import Box, box_of_text, crossing, overlap
from shopdraw.sheet.ground import Ground, Stroke, What, strokes_of
from shopdraw.sheet.look import Look

TOUCH = 0.2
"""Lines that run along each other for less than this only touch."""


@dataclass(frozen=True, slots=True)
class Tried:
    """A dimension as it would be drawn: its lines by purpose, and its figure's box."""

    dimension: Dimension
    strokes: tuple[Stroke, ...]
    box: Box | None


def tried(dimension: Dimension, look: Look) -> Tried:
    """A dimension, given in paper mm, as lines and a box."""
    marks = dimension_marks(dimension, 1.0, look.style, look.group)
    strokes = tuple(s for mark in marks for s in strokes_of((mark,), _purpose(mark, dimension), dimension.id))
    box = next((box_of_text(mark) for mark in marks if isinstance(mark, Text)), None)
    return Tried(dimension, strokes, box)


def words_free(dimension: Dimension, ground: Ground) -> bool:
    """Whether its figure alone stands free: the quick question, to be asked before `tried`."""
    if not dimension.words:
        return True
    text = Text(dimension.words_at, dimension.words, dimension.height, "middle", dimension.words_angle_deg)
    return ground.free_for_words(box_of_text(text), dimension.id)


def fits(attempt: Tried, ground: Ground, friends: frozenset[str] = frozenset()) -> bool:
    """Whether its figure stands free and its lines meet no words and cross no dimension line or leader.

    Args:
        attempt: what is tried.
        ground: what stands there already.
        friends: owners whose dimension lines it may lie along (running dimensions of one origin).
    """
    owner = attempt.dimension.id
    if attempt.box is not None and not ground.free_for_words(attempt.box, owner):
        return False
    if attempt.box is not None and any(
        attempt.box.grown(0.15).meets_line(*stroke.line) for stroke in attempt.strokes
    ):
        return False
    return not any(_clashes(stroke, ground, owner, friends) for stroke in attempt.strokes)


def stand(attempt: Tried, ground: Ground) -> None:
    """Puts a dimension on the ground, so that what follows keeps off it."""
    for stroke in attempt.strokes:
        ground.add_stroke(stroke)
    if attempt.box is not None:
        ground.add_box(attempt.box, attempt.dimension.id)


def _clashes(stroke: Stroke, ground: Ground, owner: str, friends: frozenset[str]) -> bool:
    if ground.line_meets_words(stroke.line, owner, 0.3):
        return True
    kinds = _MAY_NOT_CROSS[stroke.what]
    return bool(kinds) and any(
        _across(stroke, other) for other in ground.strokes_along(stroke.line, kinds)
        if other.owner != owner and other.owner not in friends
    )


def _across(stroke: Stroke, other: Stroke) -> bool:
    return crossing(stroke.line, other.line) is not None or overlap(stroke.line, other.line, 0.3) > TOUCH


_MAY_NOT_CROSS: dict[What, tuple[What, ...]] = {
    What.VIEW: (),
    What.END: (),
    What.EXTENSION: (What.LEADER,),
    What.DIMENSION: (What.DIMENSION, What.LEADER),
    What.LEADER: (What.EXTENSION, What.DIMENSION, What.LEADER),
}
"""By a line's purpose, what it crosses nowhere; extension lines may cross each other and dimension lines."""


def _purpose(mark: Mark, dimension: Dimension) -> What:
    if isinstance(mark, Arrow):
        return What.END
    if not isinstance(mark, Line):
        return What.DIMENSION
    points = dimension.leader
    if any((mark.start, mark.end) == pair for pair in pairwise(points)):
        return What.LEADER
    if dimension.kind == "angular":
        return What.EXTENSION
    if dimension.kind in ("radius", "diameter"):
        return What.LEADER
    angle = math.degrees(math.atan2(mark.end[1] - mark.start[1], mark.end[0] - mark.start[0]))
    off = abs((angle - dimension.direction_deg + 90.0) % 180.0 - 90.0)
    return What.EXTENSION if off > 80.0 else What.END if off > 10.0 else What.DIMENSION
