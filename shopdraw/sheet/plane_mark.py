"""Cutting planes on the views that they are seen from the edge of: wide ends, arrows of the way of looking, letters."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from shopdraw.drawing.mark import Arrow, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.ground import Ground, What, strokes_of
from shopdraw.sheet.look import Look
from shopdraw.sheet.mark_words import words_in_free_spot
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.sheet.view import Name

INSIDE, OUTSIDE = 3.0, 8.0
"""How far a plane's end reaches into the view's outline and out of it, paper mm (common practice)."""
SHAFT, HEAD = 7.0, 3.5
"""Length of an arrow's shaft and of its head, paper mm."""
LETTER_GAP = 1.5


def plane_marks(planes: Sequence[CuttingPlane], scale: float, look: Look, ground: Ground) -> tuple[Mark, ...]:
    """The two ends of each plane; letters keep off the lines of all of them.

    Args:
        planes: those drawn on one view.
        scale: of the view.
        look: heights of letters.
        ground: what stands on the view: letters keep off it, and it gains what is drawn.
    """
    lines, letters = plane_ends(planes, scale, look)
    for stroke in strokes_of(lines, What.VIEW, "", scale):
        ground.add_stroke(stroke)
    return (*lines, *(words_in_free_spot(letter.text, letter.spots, ground, scale) for letter in letters))


def plane_ends(
    planes: Sequence[CuttingPlane], scale: float, look: Look
) -> tuple[tuple[Mark, ...], tuple[Name, ...]]:
    """The lines of the planes' ends, and their letters before they have their places."""
    ends = [(plane, *_end(plane, way, scale)) for plane in planes for way in (1, -1)]
    letters = tuple(
        Name(
            Text((0.0, 0.0), plane.letter, look.section, "middle"),
            tuple(_letter_spots(outer, out, plane.sight, scale, look)),
        )
        for plane, outer, out, _ in ends
    )
    return tuple(line for *_, drawn in ends for line in drawn), letters


def _end(plane: CuttingPlane, way: int, scale: float) -> tuple[Point, Point, tuple[Mark, ...]]:
    """One end of a plane: its outermost point, which way that lies, its lines."""
    here, there = plane.ends[::way]
    long = math.dist(here, there)
    out = (here[0] - there[0]) / long, (here[1] - there[1]) / long
    inner, outer = _off(here, out, -INSIDE, scale), _off(here, out, OUTSIDE, scale)
    tip = _off(outer, plane.sight, SHAFT, scale)
    turn = math.degrees(math.atan2(plane.sight[1], plane.sight[0])) % 360.0
    lines: tuple[Mark, ...] = (
        Line(inner, outer, Meaning.PLANE),
        Line(outer, tip, Meaning.PLANE),
        Arrow(tip, turn, HEAD, HEAD / 3, Meaning.PLANE),
    )
    return outer, out, lines


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
    ring = [
        (reach * math.cos(math.radians(turn)), reach * math.sin(math.radians(turn)))
        for reach in (10.0, 14.0, 19.0, 25.0, 32.0, 40.0)
        for turn in range(-150, 180, 30)
    ]
    for along, beyond in (*near, *further, *ring):
        middle = _off(_off(outer, sight, along, scale), out, beyond, scale)
        yield middle[0], middle[1] - half / scale


def _off(point: Point, way: Point, paper: float, scale: float) -> Point:
    return point[0] + way[0] * paper / scale, point[1] + way[1] * paper / scale
