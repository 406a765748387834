"""Cuts that are entered from a face, as a part sheet tells them: dados, grooves, rabbets, pockets, bores, tails."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from shopdraw.build.label import label_of
from shopdraw.shape.path import Point, bounds
from shopdraw.sheet.cut_at import (
    SAME,
    At,
    CutNote,
    Place,
    box_of,
    circle_of,
    corner_by_corner,
    high_edge,
    low_edge,
)

NARROW = frozenset({"dado", "groove", "rabbet", "tongue", "slot", "chamfer"})
"""Cuts that are told as width × depth; their length is where they run out or stop."""


def on_face(at: At) -> Iterator[CutNote]:
    """A cut in the face or in the other face."""
    cut, frame = at.cut, at.frame
    if cut.islands:
        yield from _tails(at)
        return
    round_one = circle_of(cut.outline)
    if round_one is not None:
        (u, v), radius = round_one
        centre = (at.along(u, v, "centre-along"), at.across(u, v, "centre-across"))
        yield at.note(f"{at.kind} Ø {at.sizes.cut(2 * radius)}{at.depth_words}", (at.shown(u, v),), centre)
        return
    box = box_of(cut.outline)
    if box is None:
        yield from corner_by_corner(at)
        return
    u0, v0, u1, v1, radius = box
    ends = (u0 <= frame.u0 + SAME, u1 >= frame.u1 - SAME)
    edges = (v0 <= frame.v0 + SAME, v1 >= frame.v1 - SAME)
    rounded = f", R {at.sizes.cut(radius)}" if radius else ""
    if cut.kind in NARROW:
        yield _narrow(at, (u0, v0, u1, v1), ends, edges, rounded)
        return
    low = low_edge(frame, v0, v1)
    places = [at.along(u0, low, "near")] if not any(ends) else []
    places += [at.across(u0, low, "edge")] if not any(edges) else []
    words = f"{at.kind} {at.sizes.cut(u1 - u0)} × {at.sizes.cut(v1 - v0)}{at.depth_words}{rounded}"
    yield at.note(words, _inside(at, u0, v0, u1, v1), places)


def _narrow(
    at: At, box: tuple[float, float, float, float], ends: tuple[bool, bool], edges: tuple[bool, bool], rounded: str
) -> CutNote:
    """A dado, groove or rabbet: width × depth; its near side, and where it stops."""
    u0, v0, u1, v1 = box
    low, high = low_edge(at.frame, v0, v1), high_edge(at.frame, v0, v1)
    at_low_edge, at_high_edge = edges[::-1] if at.frame.far else edges
    across = all(edges) or (not all(ends) and (u1 - u0) < (v1 - v0))
    places: list[Place] = []
    if across:
        width = u1 - u0
        if not any(ends):
            places.append(at.along(u0, low, "near"))
        if not at_low_edge:
            places.append(at.across(u0, low, "stop-low"))
        if not at_high_edge:
            places.append(at.across(u0, high, "stop-high"))
    else:
        width = v1 - v0
        if not any(edges):
            places.append(at.across(u0, low, "edge"))
        if not ends[0]:
            places.append(at.along(u0, low, "stop-foot"))
        if not ends[1]:
            places.append(at.along(u1, low, "stop-head"))
    written = at.sizes.width(at.index, width)
    words = f"{at.kind} {written}{at.depth_words.removesuffix(' deep')}{rounded}{_for_whom(at)}"
    return at.note(words, _inside(at, u0, v0, u1, v1), places)


def _for_whom(at: At) -> str:
    """Whose dado it is, on a case side: the label of what enters it."""
    guest = at.feature.rsplit(":", 1)[-1]
    return f", for {label_of(guest)}" if at.board.member == "side" and at.cut.kind == "dado" else ""


def _inside(at: At, u0: float, v0: float, u1: float, v1: float) -> tuple[Point, ...]:
    """Points within a pocket for the leader to end at, the middle last when it is long."""
    shares = (0.62, 0.38, 0.8, 0.22, 0.5)
    wide = u1 - u0 > v1 - v0
    return tuple(at.shown(u0 + (s if wide else 0.5) * (u1 - u0), v0 + (0.5 if wide else s) * (v1 - v0)) for s in shares)


def _tails(at: At) -> Iterator[CutNote]:
    """Islands of a strip at an end: tails, each by its width at the end and at the shoulder."""
    u0, _, u1, _ = bounds(at.cut.outline)
    at_foot = u0 <= at.frame.u0 + SAME
    end, shoulder = (u0, u1) if at_foot else (u1, u0)
    for n, island in enumerate(at.cut.islands):
        outer = sorted(c.y for c in island.corners if abs(c.x - end) < SAME)
        inner = sorted(c.y for c in island.corners if abs(c.x - shoulder) < SAME)
        if len(island.corners) != 4 or len(outer) != 2 or len(inner) != 2:
            yield from corner_by_corner(at)
            return
        low = outer[1] if at.frame.far else outer[0]
        words = (
            f"tail {at.sizes.cut(outer[1] - outer[0])} at end, {at.sizes.cut(inner[1] - inner[0])} at shoulder "
            f"× {at.sizes.cut(u1 - u0)} long{_through(at)}"
        )
        middle = at.shown((u0 + u1) / 2, (outer[0] + outer[1]) / 2)
        place = at.across(end, low, f"tail-{n + 1}")
        kind = "tail" if at_foot else "tail "
        yield replace(at.note(words, (middle,), (place,)), kind=kind)


def _through(at: At) -> str:
    return "" if at.depth_words == ", through" else f",{at.depth_words.removeprefix(' ×')}"
