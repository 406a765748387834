"""Words at the end of a leader: notes of cuts, radii and diameters, on a shelf where there is free paper. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import ARROW_LENGTH_MM, ARROW_WIDTH_MM, TAIL_MM
from shopdraw.drawing.mark import Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Box, Segment, box_of_text, crossing, overlap, words_size
from shopdraw.sheet.fact import Fact
from shopdraw.sheet.ground import PLACED, Ground, Stroke, What
from shopdraw.sheet.look import Look
from shopdraw.sheet.trial import Tried, fits, stand, tried, words_free

ANGLES = (45.0, 135.0, 315.0, 225.0, 60.0, 120.0, 300.0, 240.0, 30.0, 150.0, 330.0, 210.0)
"""Directions of leaders, 15° or more off level and plumb."""
LENGTHS = (7.0, 10.0, 13.0, 17.0, 22.0, 28.0, 35.0, 44.0, 55.0, 66.0, 78.0)
DOT_RADIUS = 0.75
_COST_OF_VIEW_LINE = 3.0
_COST_OF_EXTENSION = 10.0
_COST_OF_SHELF_ON_LINE = 15.0


@dataclass(frozen=True, slots=True)
class Shelf:
    """The words' place at the end of a leader.

    Attributes:
        knee: where the slanting part ends.
        end: end of the level part, under the words.
        at: middle of the words' baseline.
    """

    knee: Point
    end: Point
    at: Point


def shelf_at(knee: Point, words: str, look: Look, way: float) -> Shelf:
    """A shelf from its knee, to the right (way 1) or to the left (-1)."""
    return _shelf_of(knee, words_size(words, look.figure)[0], look, way)


def _shelf_of(knee: Point, width: float, look: Look, way: float) -> Shelf:
    end = (knee[0] + way * width, knee[1])
    return Shelf(knee, end, ((knee[0] + end[0]) / 2, knee[1] + look.text_gap))


def place_note(fact: Fact, target: Point, words: str, ground: Ground, look: Look) -> tuple[Mark, ...] | None:
    """Words at the end of a leader from a point: arrow on an edge, dot inside a face; None where there is no room.

    Args:
        fact: whose words they are.
        target: paper mm.
        words: one line.
        ground: what stands there; the note is added to it.
        look: heights and distances.
    """
    best: tuple[float, Shelf] | None = None
    for length, shelf in _shelves(target, words, look):
        if best is not None and length >= best[0]:
            break
        if not _note_fits(fact.id, target, shelf, words, ground, look):
            continue
        price = length + _price_of_crossings((target, shelf.knee), ground)
        price += price_of_shelf((shelf.knee, shelf.end), ground)
        if best is None or price < best[0]:
            best = (price, shelf)
    if best is None:
        return None
    shelf = best[1]
    for line in ((target, shelf.knee), (shelf.knee, shelf.end)):
        ground.add_stroke(Stroke(line, What.LEADER, fact.id))
    box = _note_box(shelf, words, look)
    ground.add_box(box, fact.id)
    return (
        Line(target, shelf.knee, Meaning.SIZE, fact.board),
        Line(shelf.knee, shelf.end, Meaning.SIZE, fact.board),
        _leader_end(target, shelf.knee, fact.board, ground),
        Text(shelf.at, words, look.figure, "middle", 0.0, Meaning.SIZE, fact.board),
    )


def place_round(fact: Fact, centre: Point, on: Point, words: str, ground: Ground, look: Look) -> Dimension | None:
    """A radius or a diameter with its figure on a shelf; None where there is no room. Points in paper mm."""
    best: tuple[float, Tried] | None = None
    for price, dimension in _round_spots(fact, centre, on, words, look):
        if (best is not None and price >= best[0]) or not words_free(dimension, ground):
            continue
        attempt = tried(dimension, look)
        if fits(attempt, ground):
            lines = [stroke.line for stroke in attempt.strokes if stroke.what is What.LEADER]
            full = price + sum(_price_of_crossings(line, ground) for line in lines)
            full += price_of_shelf((dimension.leader[-2], dimension.leader[-1]), ground)
            if best is None or full < best[0]:
                best = (full, attempt)
    if best is None:
        return None
    stand(best[1], ground)
    return best[1].dimension


def _shelves(target: Point, words: str, look: Look) -> Iterator[tuple[float, Shelf]]:
    """Shelves all round a point with the lengths of their leaders, the shortest first."""
    width = words_size(words, look.figure)[0]
    for length in LENGTHS:
        for angle in ANGLES:
            radians = math.radians(angle)
            knee = (target[0] + length * math.cos(radians), target[1] + length * math.sin(radians))
            yield length, _shelf_of(knee, width, look, math.copysign(1.0, math.cos(radians)))


def _note_fits(owner: str, target: Point, shelf: Shelf, words: str, ground: Ground, look: Look) -> bool:
    if not ground.free_for_words(_note_box(shelf, words, look), owner):
        return False
    return not any(leader_clashes(line, ground) for line in ((target, shelf.knee), (shelf.knee, shelf.end)))


def leader_clashes(line: Segment, ground: Ground, owner: str = "") -> bool:
    """Whether a leader meets words, another leader or a dimension line."""
    if ground.line_meets_words(line, owner, 0.4):
        return True
    return any(
        stroke.owner != owner and crossing(line, stroke.line) is not None
        for stroke in ground.strokes_along(line, PLACED)
    )


def _note_box(shelf: Shelf, words: str, look: Look) -> Box:
    return box_of_text(Text(shelf.at, words, look.figure, "middle"))


def _price_of_crossings(line: Segment, ground: Ground) -> float:
    price = 0.0
    for stroke in ground.strokes_along(line):
        if crossing(line, stroke.line) is not None:
            price += _COST_OF_EXTENSION if stroke.what is What.EXTENSION else _COST_OF_VIEW_LINE
    return price


def price_of_shelf(shelf: Segment, ground: Ground) -> float:
    """What it costs that a shelf lies beside a line of the view, where the two would be read as one."""
    x0, x1 = sorted((shelf[0][0], shelf[1][0]))
    y = shelf[0][1]
    beside = (
        overlap(shelf, stroke.line, 2.0) > 1.0
        for stroke in ground.strokes_near((x0, y - 2.0, x1, y + 2.0), (What.VIEW,))
    )
    return _COST_OF_SHELF_ON_LINE if any(beside) else 0.0


def _leader_end(target: Point, knee: Point, board: str, ground: Ground) -> Mark:
    """An arrow where the leader ends on an edge, a dot where it ends inside a face (ISO 128-2)."""
    if on_an_edge(target, ground):
        angle = math.degrees(math.atan2(target[1] - knee[1], target[0] - knee[0])) % 360.0
        return Arrow(target, angle, ARROW_LENGTH_MM, ARROW_WIDTH_MM, Meaning.SIZE, board)
    return Dot(target, DOT_RADIUS, Meaning.SIZE, board)


def on_an_edge(target: Point, ground: Ground) -> bool:
    """Whether a point lies on one of the view's lines, within 0.3 mm on paper."""
    x, y = target
    return any(
        _distance(target, stroke.line) < 0.3
        for stroke in ground.strokes_near((x - 0.5, y - 0.5, x + 0.5, y + 0.5), (What.VIEW,))
    )


def _distance(point: Point, line: Segment) -> float:
    (ax, ay), (bx, by) = line
    long2 = (bx - ax) ** 2 + (by - ay) ** 2
    share = 0.0 if long2 < 1e-18 else ((point[0] - ax) * (bx - ax) + (point[1] - ay) * (by - ay)) / long2
    share = min(1.0, max(0.0, share))
    return math.hypot(point[0] - ax - share * (bx - ax), point[1] - ay - share * (by - ay))


def _round_spots(fact: Fact, centre: Point, on: Point, words: str, look: Look) -> Iterator[tuple[float, Dimension]]:
    radius = math.dist(centre, on)
    angles: tuple[float, ...]
    starts: tuple[float, ...]
    if fact.kind == "radius":
        angles = (math.degrees(math.atan2(on[1] - centre[1], on[0] - centre[0])),)
        starts = LENGTHS
    else:
        angles = ANGLES
        starts = tuple(ARROW_LENGTH_MM + TAIL_MM + more for more in LENGTHS)
    for angle in angles:
        c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
        edge = (centre[0] + radius * c, centre[1] + radius * s)
        for start in starts:
            for sign in (1.0, -1.0):
                if sign < 0 and (fact.kind == "diameter" or start > 0.9 * radius):
                    continue
                knee = (edge[0] + sign * start * c, edge[1] + sign * start * s)
                way = math.copysign(1.0, sign * c) if abs(c) > 1e-9 else 1.0
                shelf = shelf_at(knee, words, look, way)
                yield start + (5.0 if sign < 0 else 0.0), _round_dimension(fact, centre, edge, words, shelf, look)


def _round_dimension(fact: Fact, centre: Point, edge: Point, words: str, shelf: Shelf, look: Look) -> Dimension:
    if fact.kind == "radius":
        line, terminator = shelf.knee, "arrow"
        leader: tuple[Point, ...] = (shelf.knee, shelf.end)
    else:
        radius = math.dist(centre, edge)
        tail = (radius + ARROW_LENGTH_MM + TAIL_MM) / radius
        outer = (centre[0] + (edge[0] - centre[0]) * tail, centre[1] + (edge[1] - centre[1]) * tail)
        line, leader, terminator = edge, (outer, shelf.knee, shelf.end), "arrow-outside"
    return Dimension(
        fact.id, fact.kind, centre, edge, 0.0, line, words, shelf.at, 0.0, look.figure, fact.size(), terminator,
        leader, None, fact.board,
    )
