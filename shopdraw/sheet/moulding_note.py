"""A moulded edge as a part sheet tells it: the profile's name, how far it reaches, its radii and steps."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.profile import QUIRK, told_of
from shopdraw.shape.path import Path, Point
from shopdraw.sheet.cut_at import SAME, At, CutNote
from shopdraw.wood.board import Face

KIND = "moulding"


def moulding_note(at: At) -> Iterator[CutNote]:
    """One note at the curve: name, reach over the face × down the edge, radius, steps, and where it stops."""
    cut, told = at.cut, told_of(at.cut.outline)
    words = f"{told.name} {at.sizes.cut(told.across)} × {at.sizes.cut(told.deep)}"
    if told.name == QUIRK:
        radius = at.sizes.cut(told.radius)
        words = f"quirk {at.sizes.cut(told.step)} wide × {radius} deep, bead R {radius}"
    elif told.radius > SAME:
        words += f", R {at.sizes.cut(told.radius)}"
        words += f", steps {at.sizes.cut(told.step)}" if told.step > SAME else ""
    if cut.start > SAME:
        words += f", from {at.sizes.cut(cut.start)} in, {at.sizes.cut(cut.depth)} long"
    yield at.note(words, (_target(at, cut.outline),), ())


def _target(at: At, path: Path) -> Point:
    """The middle of the profile's first curve in the note's view; of an edge without one, its outline's middle."""
    start, end = next(((a, b) for a, b in path.pairs() if a.bulge), (path.corners[0], path.corners[-1]))
    x, w = (start.x + end.x) / 2, (start.y + end.y) / 2
    if start.bulge:
        # the arc's middle lies off the chord's by half the chord times the bulge, to its right
        x += start.bulge * (end.y - start.y) / 2
        w -= start.bulge * (end.x - start.x) / 2
    if at.view is Face.FOOT:
        return w, x
    if at.view is Face.HEAD:
        return -w, x
    return (x, w) if at.view is Face.NEAR else (x, -w)
