"""Cutting planes on the views that they are seen from the edge of: wide ends, arrows of the way of looking, letters."""

from __future__ import annotations

import math

from shopdraw.drawing.mark import Arrow, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds
from shopdraw.sheet.look import Look

INSIDE, OUTSIDE = 3.0, 8.0
"""How far a plane's end reaches into the view's outline and out of it, paper mm (common practice)."""
SHAFT, HEAD = 7.0, 3.5
"""Length of an arrow's shaft and of its head, paper mm."""


def plane_marks(letter: str, at: Point, along: Point, sight: Point, outline: Bounds, scale: float, look: Look) -> tuple[Mark, ...]:
    """A plane's two ends.

    Args:
        letter: "A" for section A–A.
        at: a point of the plane in the view, true-size mm.
        along: unit direction of the plane's trace, upright or level.
        sight: unit direction in which the section is looked at, in the view.
        outline: box round the view's edges, true-size mm.
        scale: of the view.
        look: heights of letters.
    """
    marks: list[Mark] = []
    axis = 1 if abs(along[1]) > abs(along[0]) else 0
    for edge, sign in ((outline[axis], -1.0), (outline[axis + 2], 1.0)):
        def place(out: float, aside: float, edge: float = edge, sign: float = sign) -> Point:
            point = [at[0], at[1]]
            point[axis] = edge + sign * out / scale
            return point[0] + sight[0] * aside / scale, point[1] + sight[1] * aside / scale

        marks.append(Line(place(-INSIDE, 0.0), place(OUTSIDE, 0.0), Meaning.PLANE))
        marks.append(Line(place(OUTSIDE, 0.0), place(OUTSIDE, SHAFT), Meaning.SIZE))
        way = math.degrees(math.atan2(sight[1], sight[0])) % 360.0
        marks.append(Arrow(place(OUTSIDE, SHAFT), way, HEAD, HEAD / 3))
        words = place(OUTSIDE, -1.5 - look.section / 2) if axis == 1 else place(OUTSIDE, -1.5 - look.section / 2)
        marks.append(Text((words[0], words[1] - look.section / 2 / scale), letter, look.section, "middle"))
    return tuple(marks)
