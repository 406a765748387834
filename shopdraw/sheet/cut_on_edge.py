"""Cuts that are entered from an edge or an end: mortises, tenons, sockets, mitres, bevels, channels along the grain."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from shopdraw.shape.path import Point, bounds
from shopdraw.sheet.cut_at import ACROSS, ALONG, SAME, At, CutNote, Place, box_of, circle_of, corner_by_corner, low_edge
from shopdraw.sheet.moulding_note import KIND as MOULDING
from shopdraw.sheet.moulding_note import moulding_note
from shopdraw.sheet.sliding_note import is_sliding, sliding_note
from shopdraw.wood.board import Face

MOST_TILT = 45.05
"""A saw's blade tilts to 45°, degrees; a flank further over is cut some other way (common practice)."""


def on_edge(at: At) -> Iterator[CutNote]:
    """A pocket in an edge: located along, its distance from the reference face in words."""
    cut, frame = at.cut, at.frame
    if cut.kind == MOULDING:
        yield from moulding_note(at)
        return
    if is_sliding(at):
        yield from sliding_note(at)
        return
    round_one = circle_of(cut.outline)
    if round_one is not None and not cut.islands:
        yield _bore(at, *round_one)
        return
    box = box_of(cut.outline)
    if box is None or cut.islands:
        yield from profile(at)
        return
    u0, w0, u1, w1, radius = box
    ends = (u0 <= frame.u0 + SAME, u1 >= frame.u1 - SAME)
    sign = -1.0 if at.view is Face.FAR else 1.0
    whole = w1 >= -SAME and w0 <= -frame.thickness + SAME
    below = "" if whole else below_face(at, -w1, w0 <= -frame.thickness + SAME)
    thick = " × full thickness" if whole else f" × {at.sizes.width(at.index, w1 - w0)}"
    rounded = f", R {at.sizes.cut(radius)}" if radius else ""
    places: list[Place] = []
    if all(ends):
        words = f"{at.kind} {at.sizes.width(at.index, w1 - w0)}{at.depth_words.removesuffix(' deep')}{below}{rounded}"
    else:
        words = f"{at.kind} {at.sizes.cut(u1 - u0)}{thick}{at.depth_words}{below}{rounded}"
        if not any(ends):
            places.append(Place(ALONG, u0 - frame.u0, (u0, sign * (w0 if sign > 0 else w1)), f"{at.feature}:near"))
    middle_w = sign * (w0 + w1) / 2
    targets = tuple((u0 + share * (u1 - u0), middle_w) for share in (0.62, 0.38, 0.5))
    yield at.note(words, targets, places)


def _bore(at: At, centre: Point, radius: float) -> CutNote:
    """A round hole in an edge: its diameter and depth, how far its middle lies from the reference face, where along."""
    (u, w), sign = centre, -1.0 if at.view is Face.FAR else 1.0
    words = f"{at.kind} Ø {at.sizes.cut(2 * radius)}{at.depth_words}, centre {at.sizes.cut(-w)} from face"
    place = Place(ALONG, u - at.frame.u0, (u, sign * w), f"{at.feature}:centre-along")
    return at.note(words, ((u, sign * w),), (place,))


def v_groove(at: At) -> Iterator[CutNote]:
    """A V-groove across a board: its angle, depth, width at the face, flat floor if it has one, and where it stops."""
    cut, frame = at.cut, at.frame
    u0, w0, u1, w1 = bounds(cut.outline)
    on_face = w1 >= -SAME
    depth, floor_w = w1 - w0, w0 if on_face else w1
    floor = [c.x for c in cut.outline.corners if abs(c.y - floor_w) < SAME]
    flat = max(floor) - min(floor)
    angle = 2 * math.degrees(math.atan2((u1 - u0 - flat) / 2, depth))
    words = f"V-groove {at.sizes.angle(angle)}, {at.sizes.cut(u1 - u0)} wide × {at.sizes.cut(depth)} deep"
    if flat > SAME:
        words += f", {at.sizes.cut(flat)} flat"
    words += ", in the face" if on_face else ", in the other face"
    if cut.depth < at.board.width - SAME:
        words += f", {at.sizes.cut(cut.depth)} along from this edge"
    level = -at.frame.thickness if not on_face else 0.0
    sign = -1.0 if at.view is Face.FAR else 1.0
    place = Place(ALONG, u0 - frame.u0, (u0, sign * level), f"{at.feature}:near")
    middle = sign * (w0 + w1) / 2
    yield at.note(words, (((u0 + u1) / 2, middle), (u0 + 0.4 * (u1 - u0), middle)), (place,))


def below_face(at: At, gap: float, reaches_back: bool) -> str:
    """How far from the reference face something in an edge begins."""
    if gap <= SAME:
        return ", at the face"
    return ", at the other face" if reaches_back else f", {at.sizes.cut(gap)} from face"


def on_end(at: At) -> Iterator[CutNote]:
    """A cut in an end, or along the grain from it."""
    cut, board = at.cut, at.board
    if cut.kind == MOULDING:
        yield from moulding_note(at)
    elif cut.islands:
        yield from _tenons(at)
    elif cut.start <= SAME and cut.depth >= board.length - SAME:
        yield from profile(at)
    elif circle_of(cut.outline) is not None:
        yield from _round_along(at)
    else:
        yield from _sockets(at)


def _tenons(at: At) -> Iterator[CutNote]:
    cut, frame = at.cut, at.frame
    foot = cut.face is Face.FOOT
    shoulder = frame.u0 + cut.depth if foot else frame.u1 - cut.depth
    name = "tongue" if cut.kind == "tongue" else "tenon"
    for n, island in enumerate(cut.islands):
        box = box_of(island)
        if box is None:
            yield from corner_by_corner(at)
            return
        v0, w0, v1, w1, _ = box
        words = (
            f"{name} {at.sizes.cut(cut.depth)} × {at.sizes.cut(v1 - v0)} × {at.sizes.cut(w1 - w0)} thick"
            f"{below_face(at, -w1, w0 <= -frame.thickness + SAME)}"
        )
        low = low_edge(frame, v0, v1)
        places = [at.along(shoulder, low, "shoulder")]
        if frame.from_edge(low) > SAME:
            places.append(at.across(frame.u0 if foot else frame.u1, low, f"tenon-{n + 1}"))
        middle = ((frame.u0 if foot else frame.u1) + shoulder) / 2
        yield at.note(words, tuple(at.shown(middle, v0 + share * (v1 - v0)) for share in (0.6, 0.4, 0.8)), places)


def _round_along(at: At) -> Iterator[CutNote]:
    """A round channel along the grain, such as half of a hinge's barrel."""
    found = circle_of(at.cut.outline)
    assert found is not None
    (v, w), radius = found
    frame, cut = at.frame, at.cut
    u0 = frame.u0 + cut.start if cut.face is Face.FOOT else frame.u1 - cut.start - cut.depth
    gap = frame.from_edge(v)
    words = (
        f"{at.kind} Ø {at.sizes.cut(2 * radius)} × {at.sizes.cut(cut.depth)} along, "
        f"centre {_off(at, gap, 'edge')}, {_off(at, -w, 'face')}"
    )
    shown = min(max(v, frame.v0), frame.v1)
    targets = tuple(at.shown(u0 + share * cut.depth, shown) for share in (0.35, 0.65))
    yield at.note(words, targets, (at.along(u0, shown, "near"),))


def _off(at: At, gap: float, what: str) -> str:
    """How far inside or outside an edge or face something lies."""
    if abs(gap) < float(at.sizes.writing.cut.step_mm) / 2:
        return f"on the {what}"
    written = at.sizes.cut(abs(gap))
    return f"{written} {'inside' if gap > 0 else 'outside'} the {what}"


def _sockets(at: At) -> Iterator[CutNote]:
    """Sockets in an end: each by its width at both faces; places across from the reference edge."""
    cut, frame = at.cut, at.frame
    levels = sorted({round(c.y, 6) for c in cut.outline.corners})
    if len(cut.outline.corners) != 4 or len(levels) != 2:
        yield from profile(at)
        return
    widths = [sorted(c.x for c in cut.outline.corners if abs(c.y - level) < SAME) for level in levels]
    (out0, out1), (in0, in1) = widths
    low = in1 if frame.far else in0
    sign = -1.0 if at.view is Face.HEAD else 1.0
    top = "" if levels[1] >= -SAME else f", {at.sizes.cut(-levels[1])} from face"
    back = "other face" if levels[0] <= -frame.thickness + SAME else f"{at.sizes.cut(-levels[0])} from face"
    name = "socket" if at.kind == "dovetail" else at.kind
    words = (
        f"{name} {at.sizes.cut(in1 - in0)} at face, {at.sizes.cut(out1 - out0)} at {back} "
        f"× {at.sizes.cut(cut.depth)} deep{top}"
    )
    place = Place(ACROSS, frame.from_edge(low), (sign * levels[1], low), f"{at.feature}:{at.index}")
    middle = (sign * (levels[0] + levels[1]) / 2, (in0 + in1) / 2)
    yield at.note(words, (middle,), (place,))


def profile(at: At) -> Iterator[CutNote]:
    """A flank across an edge or an end: its tilt from square, and where it meets a face."""
    cut, frame = at.cut, at.frame
    if cut.kind == MOULDING:
        yield from moulding_note(at)
        return
    if is_sliding(at):
        yield from sliding_note(at)
        return
    if cut.kind == "v-groove" and cut.face in (Face.NEAR, Face.FAR):
        yield from v_groove(at)
        return
    closed = [i for i in range(len(cut.outline.corners)) if i not in cut.open]
    segments = list(cut.outline.pairs())
    if len(closed) != 1 or segments[closed[0]][0].bulge or cut.islands:
        yield from corner_by_corner(at)
        return
    (ax, aw, _), (bx, bw, _) = segments[closed[0]]
    lengthwise = cut.face in (Face.FOOT, Face.HEAD)
    low, high = (frame.v0, frame.v1) if lengthwise else (frame.u0, frame.u1)
    if abs(aw - bw) < SAME:
        yield from corner_by_corner(at)
        return
    slope = (bx - ax) / (bw - aw)
    tilt = math.degrees(math.atan(abs(slope)))
    hits = [(level, ax + slope * (level - aw)) for level in (0.0, -frame.thickness)]
    within = [hit for hit in hits if low - SAME <= hit[1] <= high + SAME]
    level, x = max(within or hits, key=lambda hit: min(hit[1] - low, high - hit[1]))
    if lengthwise:
        distance = frame.from_edge(x)
        side, distance = ("edge", distance) if distance <= (high - low) / 2 else ("other edge", high - low - distance)
    else:
        distance = x - low
        side, distance = ("end", distance) if distance <= (high - low) / 2 else ("other end", high - low - distance)
    face = "face" if level == 0.0 else "other face"
    square, from_face = at.sizes.angle(tilt), at.sizes.angle(90.0 - tilt)
    if tilt <= MOST_TILT:
        angles = f"tilt saw {square} from square, {from_face} from face"
    else:
        angles = f"{square} from square, over what a saw tilts; {from_face} from face"
    words = f"{at.kind} {square}"
    more = f"{words}: {angles}; at {face} {at.sizes.cut(distance)} from {side}"
    point = _profile_point(at, ax, aw, slope, low, high)
    yield replace(at.note(words, (point,), ()), more=(more,))


def _profile_point(at: At, ax: float, aw: float, slope: float, low: float, high: float) -> Point:
    """The middle of the flank within the wood, in the view."""
    levels = [-at.frame.thickness * share / 20 for share in range(21)]
    inside = [level for level in levels if low <= ax + slope * (level - aw) <= high]
    level = inside[len(inside) // 2] if inside else -at.frame.thickness / 2
    x = ax + slope * (level - aw)
    if at.view is Face.FOOT:
        return level, x
    return (-level, x) if at.view is Face.HEAD else (x, level if at.view is Face.NEAR else -level)
