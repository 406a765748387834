"""Words that belong to a mark of a view (a plane's letter, a detail's name) where they meet none of its lines."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace

from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Box, Segment, box_of_text
from shopdraw.sheet.ground import Ground, Stroke, What, boxes_of, strokes_of
from shopdraw.sheet.leader import leader_clashes
from shopdraw.sheet.view import Name

LEADER_OFF = 1.0
"""A leader begins this far off its words, paper mm."""
NAME_NEAR = 5.0
"""A name no further than this off its circle needs no leader, paper mm (own choice)."""


def ground_of(marks: Iterable[Mark], scale: float) -> Ground:
    """What stands on a view: its lines and words, on paper."""
    ground = Ground()
    held = tuple(marks)
    for stroke in strokes_of(held, What.VIEW, "", scale):
        ground.add_stroke(stroke)
    for box in boxes_of(held, scale):
        ground.add_box(box, "view")
    return ground


def words_at_circle(name: Name, ground: Ground, scale: float) -> tuple[Text, Line | None]:
    """A circle's name at the first free spot, with a leader to the circle from one that lies far off.

    Args:
        name: words, spots and circle.
        ground: of the view; it gains the words and the leader.
        scale: of the view.
    """
    assert name.circle is not None
    options = [replace(name.text, at=spot) for spot in name.spots]
    free = [one for one in options if ground.free_for_words(box_of_text(one, scale), "view", 1.0)]
    for one in free:
        leaders = _to_circle(box_of_text(one, scale), name.circle, scale)
        leader = next((line for line in leaders if not leader_clashes(line, ground, name.text.words)), None)
        if leader is not None or not leaders:
            ground.add_box(box_of_text(one, scale), "view")
            if leader is None:
                return one, None
            ground.add_stroke(Stroke(leader, What.LEADER, name.text.words, Meaning.SIZE))
            (x0, y0), (x1, y1) = leader
            return one, Line((x0 / scale, y0 / scale), (x1 / scale, y1 / scale), Meaning.SIZE)
    return words_in_free_spot(name.text, name.spots, ground, scale), None


def _to_circle(box: Box, circle: tuple[Point, float], scale: float) -> tuple[Segment, ...]:
    """From the words' box straight to the circle, on paper, the shortest first; none where it is near enough."""
    (x, y), radius = (circle[0][0] * scale, circle[0][1] * scale), circle[1] * scale
    x0, y0, x1, y1 = box.grown(LEADER_OFF).bounds()
    nearest = min(max(x, x0), x1), min(max(y, y0), y1)
    if math.dist(nearest, (x, y)) - radius < NAME_NEAR:
        return ()
    ends = ((x0, (y0 + y1) / 2), (x1, (y0 + y1) / 2), ((x0 + x1) / 2, y0), ((x0 + x1) / 2, y1))
    found = []
    for start in (nearest, *sorted(ends, key=lambda end: (round(math.dist(end, (x, y)), 6), end))):
        share = radius / math.dist(start, (x, y))
        end = x + (start[0] - x) * share, y + (start[1] - y) * share
        if start == nearest or not box.grown(LEADER_OFF / 2).meets_line(start, end):
            found.append((start, end))
    return tuple(found)


def words_in_free_spot(text: Text, spots: Sequence[Point], ground: Ground, scale: float) -> Text:
    """The words at the first spot where they are free, else at the first one; the ground gains them.

    Args:
        text: the words; their own place is taken over by the spot.
        spots: anchors on the baseline, the best first, true-size mm.
        ground: of the view.
        scale: of the view.
    """
    options = [replace(text, at=spot) for spot in spots]
    chosen = next((o for o in options if ground.free_for_words(box_of_text(o, scale), "view", 1.0)), options[0])
    ground.add_box(box_of_text(chosen, scale), "view")
    return chosen
