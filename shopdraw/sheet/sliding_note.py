"""A sliding dovetail as a part sheet tells it: the tongue along an end, and its socket across the other board."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.shape.path import Point, bounds
from shopdraw.sheet.cut_at import ALONG, SAME, At, CutNote, Place, corner_by_corner
from shopdraw.wood.board import Face


def is_sliding(at: At) -> bool:
    """Whether a dovetail runs along an edge or end instead of standing in a row of tails."""
    return at.cut.kind == "dovetail" and at.cut.face in (Face.NEAR, Face.FAR)


def sliding_note(at: At) -> Iterator[CutNote]:
    """One note: widths at both ends of the flanks, depth, and how far it goes from the edge."""
    if at.cut.islands:
        yield from _tongue(at)
    else:
        yield from _socket(at)


def _tongue(at: At) -> Iterator[CutNote]:
    (island, *more), (u0, _, u1, _) = at.cut.islands, bounds(at.cut.outline)
    end, shoulder = (u0, u1) if u0 <= at.frame.u0 + SAME else (u1, u0)
    outer = sorted(c.y for c in island.corners if abs(c.x - end) < SAME)
    inner = sorted(c.y for c in island.corners if abs(c.x - shoulder) < SAME)
    if more or len(outer) != 2 or len(inner) != 2:
        yield from corner_by_corner(at)
        return
    words = (
        f"sliding dovetail {at.sizes.cut(outer[1] - outer[0])} at end, {at.sizes.cut(inner[1] - inner[0])} at shoulder "
        f"× {at.sizes.cut(u1 - u0)} long, {_from_face(at, -outer[1])} at end"
    )
    yield at.note(words, (_shown(at, (u0 + u1) / 2, (outer[0] + outer[1]) / 2),), ())


def _socket(at: At) -> Iterator[CutNote]:
    cut = at.cut
    levels = sorted({round(c.y, 6) for c in cut.outline.corners})
    if len(cut.outline.corners) != 4 or len(levels) != 2:
        yield from corner_by_corner(at)
        return
    (in0, in1), (out0, out1) = (sorted(c.x for c in cut.outline.corners if abs(c.y - level) < SAME) for level in levels)
    words = (
        f"dovetail socket {at.sizes.cut(out1 - out0)} at face, {at.sizes.cut(in1 - in0)} at floor "
        f"× {at.sizes.cut(levels[1] - levels[0])} deep, {at.sizes.cut(cut.depth)} along from this edge"
    )
    sign = -1.0 if at.view is Face.FAR else 1.0
    place = Place(ALONG, out0 - at.frame.u0, (out0, sign * levels[1]), f"{at.feature}:near")
    yield at.note(words, (_shown(at, (in0 + in1) / 2, sum(levels) / 2),), (place,))


def _from_face(at: At, gap: float) -> str:
    return "level with the face" if gap <= SAME else f"{at.sizes.cut(gap)} from face"


def _shown(at: At, u: float, w: float) -> Point:
    return (u, -w) if at.view is Face.FAR else (u, w)
