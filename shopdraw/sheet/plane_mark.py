"""Cutting planes on the views that they are seen from the edge of: wide ends, arrows of the way of looking, letters."""

from __future__ import annotations

import math
from collections.abc import Iterator

from shopdraw.drawing.mark import Arrow, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.ground import Ground, What, strokes_of
from shopdraw.sheet.look import Look
from shopdraw.sheet.mark_words import words_in_free_spot

INSIDE, OUTSIDE = 3.0, 8.0
"""How far a plane's end reaches into the view's outline and out of it, paper mm (common practice)."""
SHAFT, HEAD = 7.0, 3.5
"""Length of an arrow's shaft and of its head, paper mm."""
LETTER_GAP = 1.5


def plane_marks(
    letter: str, ends: tuple[Point, Point], sight: Point, scale: float, look: Look, ground: Ground
) -> tuple[Mark, ...]:
    """A plane's two ends.

    Args:
        letter: "A" for section A–A.
        ends: where the plane leaves what it cuts, true-size mm.
        sight: unit direction in which the section is looked at, in the view.
        scale: of the view.
        look: heights of letters.
        ground: what stands on the view: letters keep off it, and it gains what is drawn.
    """
    marks: list[Mark] = []
    long = math.dist(*ends)
    for here, there in (ends, ends[::-1]):
        out = (here[0] - there[0]) / long, (here[1] - there[1]) / long
        inner, outer = _off(here, out, -INSIDE, scale), _off(here, out, OUTSIDE, scale)
        tip = _off(outer, sight, SHAFT, scale)
        lines: list[Mark] = [
            Line(inner, outer, Meaning.PLANE),
            Line(outer, tip, Meaning.PLANE),
            Arrow(tip, math.degrees(math.atan2(sight[1], sight[0])) % 360.0, HEAD, HEAD / 3, Meaning.PLANE),
        ]
        for stroke in strokes_of(lines, What.VIEW, "", scale):
            ground.add_stroke(stroke)
        text = Text((0.0, 0.0), letter, look.section, "middle")
        spots = list(_letter_spots(outer, out, sight, scale, look))
        marks += [*lines, words_in_free_spot(text, spots, ground, scale)]
    return tuple(marks)


def _letter_spots(outer: Point, out: Point, sight: Point, scale: float, look: Look) -> Iterator[Point]:
    """Behind the arrow, before its tip, outside the end: the letter's baseline."""
    half = look.section / 2
    behind, before = -LETTER_GAP - half, SHAFT + LETTER_GAP + half
    near = [
        (behind, 0.0),
        (before, 0.0),
        (SHAFT / 2, LETTER_GAP + half),
        (behind, 2 * LETTER_GAP + half),
        (before, half),
        (0.0, 2 * LETTER_GAP + half),
    ]
    further = [
        (along + sign * step, beyond + step / 2)
        for step in (3.0, 6.0, 9.0)
        for along, beyond, sign in ((behind, 0.0, -1.0), (before, 0.0, 1.0), (SHAFT / 2, LETTER_GAP + half, 0.0))
    ]
    for along, beyond in (*near, *further):
        middle = _off(_off(outer, sight, along, scale), out, beyond, scale)
        yield middle[0], middle[1] - half / scale


def _off(point: Point, way: Point, paper: float, scale: float) -> Point:
    return point[0] + way[0] * paper / scale, point[1] + way[1] * paper / scale
