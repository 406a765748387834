"""A moulded edge as a part sheet tells it: the profile's name, how far it reaches, its radii and steps."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.shape.path import Path, Point, arc_of, bounds
from shopdraw.sheet.cut_at import SAME, At, CutNote
from shopdraw.wood.board import Face

KIND = "moulding"
QUIRK = "quirk"


def moulding_note(at: At) -> Iterator[CutNote]:
    """One note at the curve: name, reach over the face × down the edge, radius, steps, and where it stops."""
    cut = at.cut
    x0, y0, x1, y1 = bounds(cut.outline)
    name, radius, step = _read(cut.outline)
    words = f"{name} {at.sizes.cut(x1 - x0)} × {at.sizes.cut(y1 - y0)}"
    if name == QUIRK:
        words = f"{name} {at.sizes.cut(max(x1 - x0, y1 - y0) - radius)} wide × {at.sizes.cut(radius)} deep, bead"
        words += f" R {at.sizes.cut(radius)}"
    elif radius > SAME:
        words += f", R {at.sizes.cut(radius)}"
    if step > SAME:
        words += f", steps {at.sizes.cut(step)}"
    if cut.start > SAME:
        words += f", from {at.sizes.cut(cut.start)} in, {at.sizes.cut(cut.depth)} long"
    yield at.note(words, (_target(at, cut.outline),), ())


def _read(path: Path) -> tuple[str, float, float]:
    """A profile's name, the radius of its curve and the width of its steps, mm, from its outline."""
    x0, y0, x1, y1 = bounds(path)
    arcs = [(arc_of(a[:2], b[:2], a.bulge).radius, a.bulge) for a, b in path.pairs() if a.bulge]
    straight = len(path.corners) - len(arcs)
    if not arcs:
        return "moulding", 0.0, 0.0
    radius = arcs[0][0]
    if len(arcs) > 1:
        return "ogee", radius, min(x1 - x0, y1 - y0) - 2 * radius
    if straight == 3:
        return QUIRK, radius, 0.0
    step = min(x1 - x0, y1 - y0) - radius
    if arcs[0][1] > 0:
        return "cove", radius, step
    return ("round" if straight == 2 else "ovolo"), radius, step


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
