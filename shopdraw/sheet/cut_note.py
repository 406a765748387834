"""What a part sheet says of each cut: on which view, in which words, and which places it is found from.

A cut is told by its near side, counted from the reference end and the reference edge, and by its sizes in words.
"along" is along the grain, "across" is across it. Everything is true-size mm in the planes of `board_view.PLANES`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.shape.path import Path, Point, arc_of, bounds
from shopdraw.sheet.cut_size import CutSizes
from shopdraw.wood.board import Board, Cut, Face

ALONG, ACROSS = "along", "across"
NARROW = frozenset({"dado", "groove", "rabbet", "tongue", "slot", "chamfer"})
"""Cuts that are told as width × depth; their length is where they run out or stop."""
_SAME = 1e-3


@dataclass(frozen=True, slots=True)
class Place:
    """One place that a cut is found from.

    Attributes:
        way: "along" from the reference end or "across" from the reference edge.
        distance: mm.
        at: the point of the view that it is measured to.
        feature: what it is, for ids: "dado:side.left:bottom:near".
    """

    way: str
    distance: float
    at: Point
    feature: str


@dataclass(frozen=True, slots=True)
class CutNote:
    """A cut, or several that are alike, as a view tells it.

    Attributes:
        view: the face that looks at the reader.
        kind: the trade's word.
        words: sizes: "dado 17.96 × 6.4" (width × depth), "mortise 51.4 × 6.8 × 17 deep" (along × across × deep).
        targets: points that its leader may go to, best first.
        places: what it is located by.
        cuts: which of the board's cuts it tells.
    """

    view: Face
    kind: str
    words: str
    targets: tuple[Point, ...]
    places: tuple[Place, ...]
    cuts: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Frame2:
    """A board's own measures and where its reference corner is."""

    u0: float
    v0: float
    u1: float
    v1: float
    thickness: float
    far: bool

    def from_edge(self, v: float) -> float:
        """Distance from the reference edge."""
        return self.v1 - v if self.far else v - self.v0


def frame_of(board: Board) -> Frame2:
    """A board's measures."""
    return Frame2(*bounds(board.shape.outline), board.thickness, board.reference_edge == "far")


def cut_notes(board: Board, sizes: CutSizes) -> tuple[CutNote, ...]:
    """Every cut of a board as it is told, alike ones together: "4 × tail ...".

    Args:
        board: whose cuts.
        sizes: how sizes are written, and what fits the cuts carry.
    """
    frame = frame_of(board)
    single = [note for i in standing_cuts(board) for note in _notes(board, frame, i, board.shape.cuts[i], sizes)]
    grouped: dict[tuple[Face, str], list[CutNote]] = {}
    for note in single:
        grouped.setdefault((note.view, note.kind), []).append(note)
    told: list[CutNote] = []
    for notes in grouped.values():
        if len(notes) > 1 and len({note.words for note in notes}) == 1:
            targets = tuple(target for note in notes for target in note.targets)
            places = tuple(place for note in notes for place in note.places)
            cuts = tuple(dict.fromkeys(i for note in notes for i in note.cuts))
            told.append(replace(notes[0], words=f"{len(notes)} × {notes[0].words}", targets=targets, places=places, cuts=cuts))
        else:
            told += notes
    return tuple(told)


def standing_cuts(board: Board) -> tuple[int, ...]:
    """Numbers of the cuts that take wood of their own: one that lies whole within another needs no words."""
    cuts = board.shape.cuts
    return tuple(
        i for i, cut in enumerate(cuts) if not any(i != j and _within(cut, other, i > j) for j, other in enumerate(cuts))
    )


def _within(cut: Cut, other: Cut, later: bool) -> bool:
    """Whether a rectangular cut lies whole within another one from the same face; of two alike the later one does."""
    one, two = box_of(cut.outline), box_of(other.outline)
    if one is None or two is None or two[4] or cut.face is not other.face or other.islands or cut.islands:
        return False
    inside = (
        one[0] >= two[0] - _SAME and one[1] >= two[1] - _SAME and one[2] <= two[2] + _SAME and one[3] <= two[3] + _SAME
        and cut.start >= other.start - _SAME and cut.start + cut.depth <= other.start + other.depth + _SAME
    )
    same = all(abs(a - b) <= _SAME for a, b in zip(one, two, strict=True)) and abs(cut.depth - other.depth) <= _SAME
    return inside and (later or not same)


def home_of(board: Board, cut: Cut) -> Face:
    """The view that tells a cut: the face it is seen best from."""
    shape = board.shape
    if cut.face is Face.BACK:
        return Face.FACE if cut.start + cut.depth >= shape.thickness - _SAME else Face.BACK
    if cut.face is Face.FAR and cut.depth >= shape.width - _SAME:
        return Face.NEAR
    if cut.face in (Face.FOOT, Face.HEAD):
        if cut.islands or cut.start > _SAME:
            return Face.FACE
        return Face.FOOT if cut.depth >= shape.length - _SAME else cut.face
    return Face.FACE if cut.face is Face.TILTED else cut.face


def _notes(board: Board, frame: Frame2, index: int, cut: Cut, sizes: CutSizes) -> Iterator[CutNote]:
    view = home_of(board, cut)
    feature = board.cut_ids[index] if index < len(board.cut_ids) else f"{cut.kind}:{board.id}:{index}"
    at = _At(board, frame, index, cut, view, cut.kind.replace("-", " "), feature, sizes)
    if cut.face in (Face.FACE, Face.BACK):
        yield from _on_face(at)
    elif cut.face in (Face.NEAR, Face.FAR):
        through = cut.depth >= board.width - _SAME
        yield from _profile(at) if through else _on_edge(at)
    elif cut.face in (Face.FOOT, Face.HEAD):
        yield from _on_end(at)
    else:
        yield from _corner_by_corner(at)


@dataclass(frozen=True, slots=True)
class _At:
    board: Board
    frame: Frame2
    index: int
    cut: Cut
    view: Face
    kind: str
    feature: str
    sizes: CutSizes

    @property
    def depth_words(self) -> str:
        cut = self.cut
        whole = {Face.FACE: self.board.thickness, Face.BACK: self.board.thickness}.get(cut.face, self.board.width)
        if cut.start + cut.depth >= whole - _SAME:
            return ", through"
        lower = f", from {self.sizes.cut(cut.start)} below" if cut.start > _SAME else ""
        return f" × {self.sizes.cut(cut.depth)} deep{lower}"

    def note(self, words: str, targets: Sequence[Point], places: Sequence[Place]) -> CutNote:
        return CutNote(self.view, self.kind, words, tuple(targets), tuple(places), (self.index,))

    def shown(self, u: float, v: float) -> Point:
        """A point of the face as the note's view has it."""
        return (u, -v) if self.view is Face.BACK else (u, v)

    def along(self, u: float, v: float, what: str) -> Place:
        return Place(ALONG, u - self.frame.u0, self.shown(u, v), f"{self.feature}:{what}")

    def across(self, u: float, v: float, what: str) -> Place:
        return Place(ACROSS, self.frame.from_edge(v), self.shown(u, v), f"{self.feature}:{what}")


def box_of(path: Path) -> tuple[float, float, float, float, float] | None:
    """A rectangle's sides x0, y0, x1, y1 and the radius of its rounded corners; None for any other outline."""
    x0, y0, x1, y1 = bounds(path)
    radius = 0.0
    for (ax, ay, bulge), (bx, by, _) in path.pairs():
        if bulge:
            if abs(abs(bulge) - math.tan(math.pi / 8)) > 1e-6:
                return None
            radius = max(radius, arc_of((ax, ay), (bx, by), bulge).radius)
        elif abs(ax - bx) > 1e-6 and abs(ay - by) > 1e-6:
            return None
        elif not any(abs(a - b) < 1e-6 for a, b in ((ax, x0), (ax, x1), (ay, y0), (ay, y1))):
            return None
    return x0, y0, x1, y1, radius


def circle_of(path: Path) -> tuple[Point, float] | None:
    """A circle's centre and radius; None for any other outline."""
    arcs = [arc_of((a.x, a.y), (b.x, b.y), a.bulge) for a, b in path.pairs() if a.bulge]
    if len(arcs) != len(path.corners) or any(math.dist(a.centre, arcs[0].centre) > 1e-6 for a in arcs):
        return None
    return arcs[0].centre, arcs[0].radius


def _on_face(at: _At) -> Iterator[CutNote]:
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
        yield from _corner_by_corner(at)
        return
    u0, v0, u1, v1, radius = box
    ends = (u0 <= frame.u0 + _SAME, u1 >= frame.u1 - _SAME)
    edges = (v0 <= frame.v0 + _SAME, v1 >= frame.v1 - _SAME)
    rounded = f", R {at.sizes.cut(radius)}" if radius else ""
    if cut.kind in NARROW:
        yield _narrow(at, (u0, v0, u1, v1), ends, edges, rounded)
        return
    low = _low_edge(frame, v0, v1)
    places = [at.along(u0, low, "near")] if not any(ends) else []
    places += [at.across(u0, low, "edge")] if not any(edges) else []
    words = f"{at.kind} {at.sizes.cut(u1 - u0)} × {at.sizes.cut(v1 - v0)}{at.depth_words}{rounded}"
    yield at.note(words, _inside(at, u0, v0, u1, v1), places)


def _narrow(
    at: _At, box: tuple[float, float, float, float], ends: tuple[bool, bool], edges: tuple[bool, bool], rounded: str
) -> CutNote:
    """A dado, groove or rabbet: width × depth; its near side, and where it stops."""
    u0, v0, u1, v1 = box
    low, high = _low_edge(at.frame, v0, v1), _high_edge(at.frame, v0, v1)
    at_low_edge, at_high_edge = (edges[::-1] if at.frame.far else edges)
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
    words = f"{at.kind} {written}{at.depth_words.removesuffix(' deep')}{rounded}"
    return at.note(words, _inside(at, u0, v0, u1, v1), places)


def _low_edge(frame: Frame2, v0: float, v1: float) -> float:
    return v1 if frame.far else v0


def _high_edge(frame: Frame2, v0: float, v1: float) -> float:
    return v0 if frame.far else v1


def _inside(at: _At, u0: float, v0: float, u1: float, v1: float) -> tuple[Point, ...]:
    """Points within a pocket for the leader to end at, the middle last when it is long."""
    shares = (0.62, 0.38, 0.8, 0.22, 0.5)
    wide = u1 - u0 > v1 - v0
    return tuple(
        at.shown(u0 + (s if wide else 0.5) * (u1 - u0), v0 + (0.5 if wide else s) * (v1 - v0)) for s in shares
    )


def _tails(at: _At) -> Iterator[CutNote]:
    """Islands of a strip at an end: tails, each by its width at the end and at the shoulder."""
    u0, _, u1, _ = bounds(at.cut.outline)
    at_foot = u0 <= at.frame.u0 + _SAME
    end, shoulder = (u0, u1) if at_foot else (u1, u0)
    for n, island in enumerate(at.cut.islands):
        outer = sorted(c.y for c in island.corners if abs(c.x - end) < _SAME)
        inner = sorted(c.y for c in island.corners if abs(c.x - shoulder) < _SAME)
        if len(island.corners) != 4 or len(outer) != 2 or len(inner) != 2:
            yield from _corner_by_corner(at)
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


def _through(at: _At) -> str:
    return "" if at.depth_words == ", through" else f",{at.depth_words.removeprefix(' ×')}"


def _on_edge(at: _At) -> Iterator[CutNote]:
    """A pocket in an edge: located along, its distance from the reference face in words."""
    cut, frame = at.cut, at.frame
    box = box_of(cut.outline)
    if box is None or cut.islands:
        yield from _profile(at)
        return
    u0, w0, u1, w1, radius = box
    ends = (u0 <= frame.u0 + _SAME, u1 >= frame.u1 - _SAME)
    sign = -1.0 if at.view is Face.FAR else 1.0
    whole = w1 >= -_SAME and w0 <= -frame.thickness + _SAME
    below = "" if whole else _below_face(at, -w1, w0 <= -frame.thickness + _SAME)
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


def _below_face(at: _At, gap: float, reaches_back: bool) -> str:
    if gap <= _SAME:
        return ", at the face"
    return ", at the other face" if reaches_back else f", {at.sizes.cut(gap)} from face"


def _on_end(at: _At) -> Iterator[CutNote]:
    cut, board = at.cut, at.board
    if cut.islands:
        yield from _tenons(at)
    elif cut.start <= _SAME and cut.depth >= board.length - _SAME:
        yield from _profile(at)
    elif circle_of(cut.outline) is not None:
        yield from _round_along(at)
    else:
        yield from _sockets(at)


def _tenons(at: _At) -> Iterator[CutNote]:
    cut, frame = at.cut, at.frame
    foot = cut.face is Face.FOOT
    shoulder = frame.u0 + cut.depth if foot else frame.u1 - cut.depth
    for n, island in enumerate(cut.islands):
        box = box_of(island)
        if box is None:
            yield from _corner_by_corner(at)
            return
        v0, w0, v1, w1, _ = box
        words = (
            f"tenon {at.sizes.cut(cut.depth)} × {at.sizes.cut(v1 - v0)} × {at.sizes.cut(w1 - w0)} thick"
            f"{_below_face(at, -w1, w0 <= -frame.thickness + _SAME)}"
        )
        low = _low_edge(frame, v0, v1)
        places = [at.along(shoulder, low, "shoulder")]
        if frame.from_edge(low) > _SAME:
            places.append(at.across(frame.u0 if foot else frame.u1, low, f"tenon-{n + 1}"))
        middle = ((frame.u0 if foot else frame.u1) + shoulder) / 2
        yield at.note(words, tuple(at.shown(middle, v0 + share * (v1 - v0)) for share in (0.6, 0.4, 0.8)), places)


def _round_along(at: _At) -> Iterator[CutNote]:
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


def _off(at: _At, gap: float, what: str) -> str:
    """How far inside or outside an edge or face something lies."""
    written = at.sizes.cut(abs(gap))
    if written.strip("0.,") == "":
        return f"on the {what}"
    return f"{written} {'inside' if gap > 0 else 'outside'} the {what}"


def _sockets(at: _At) -> Iterator[CutNote]:
    """Sockets in an end: each by its width at both faces; places across from the reference edge."""
    cut, frame = at.cut, at.frame
    levels = sorted({round(c.y, 6) for c in cut.outline.corners})
    if len(cut.outline.corners) != 4 or len(levels) != 2:
        yield from _profile(at)
        return
    widths = []
    for level in levels:
        widths.append(sorted(c.x for c in cut.outline.corners if abs(c.y - level) < _SAME))
    (out0, out1), (in0, in1) = widths
    low = in1 if frame.far else in0
    sign = -1.0 if at.view is Face.HEAD else 1.0
    top = "" if levels[1] >= -_SAME else f", {at.sizes.cut(-levels[1])} from face"
    back = "other face" if levels[0] <= -frame.thickness + _SAME else f"{at.sizes.cut(-levels[0])} from face"
    name = "socket" if at.kind == "dovetail" else at.kind
    words = (
        f"{name} {at.sizes.cut(in1 - in0)} at face, {at.sizes.cut(out1 - out0)} at {back} "
        f"× {at.sizes.cut(cut.depth)} deep{top}"
    )
    place = Place(ACROSS, frame.from_edge(low), (sign * levels[1], low), f"{at.feature}:{at.index}")
    middle = (sign * (levels[0] + levels[1]) / 2, (in0 + in1) / 2)
    yield at.note(words, (middle,), (place,))


def _profile(at: _At) -> Iterator[CutNote]:
    """A flank across an edge or an end: its tilt from square, and where it meets a face."""
    cut, frame = at.cut, at.frame
    closed = [i for i in range(len(cut.outline.corners)) if i not in cut.open]
    segments = list(cut.outline.pairs())
    if len(closed) != 1 or segments[closed[0]][0].bulge or cut.islands:
        yield from _corner_by_corner(at)
        return
    (ax, aw, _), (bx, bw, _) = segments[closed[0]]
    lengthwise = cut.face in (Face.FOOT, Face.HEAD)
    low, high = (frame.v0, frame.v1) if lengthwise else (frame.u0, frame.u1)
    if abs(aw - bw) < _SAME:
        yield from _corner_by_corner(at)
        return
    slope = (bx - ax) / (bw - aw)
    tilt = math.degrees(math.atan(abs(slope)))
    hits = [(level, ax + slope * (level - aw)) for level in (0.0, -frame.thickness)]
    within = [hit for hit in hits if low - _SAME <= hit[1] <= high + _SAME]
    level, x = max(within or hits, key=lambda hit: min(hit[1] - low, high - hit[1]))
    if lengthwise:
        distance = frame.from_edge(x)
        side, distance = ("edge", distance) if distance <= (high - low) / 2 else ("other edge", high - low - distance)
    else:
        distance = x - low
        side, distance = ("end", distance) if distance <= (high - low) / 2 else ("other end", high - low - distance)
    face = "face" if level == 0.0 else "other face"
    words = (
        f"{at.kind}, tilt saw {at.sizes.angle(tilt)} from square, {face} {at.sizes.cut(distance)} from {side}"
    )
    point = _profile_point(at, ax, aw, slope, low, high)
    yield at.note(words, (point,), ())


def _profile_point(at: _At, ax: float, aw: float, slope: float, low: float, high: float) -> Point:
    """The middle of the flank within the wood, in the view."""
    levels = [-at.frame.thickness * share / 20 for share in range(21)]
    inside = [level for level in levels if low <= ax + slope * (level - aw) <= high]
    level = inside[len(inside) // 2] if inside else -at.frame.thickness / 2
    x = ax + slope * (level - aw)
    if at.view is Face.FOOT:
        return level, x
    return (-level, x) if at.view is Face.HEAD else (x, level if at.view is Face.NEAR else -level)


def _corner_by_corner(at: _At) -> Iterator[CutNote]:
    """Any other outline: every corner is located."""
    cut, frame = at.cut, at.frame
    places: list[Place] = []
    targets: list[Point] = []
    listed: list[str] = []
    for path in (cut.outline, *cut.islands):
        for n, corner in enumerate(path.corners):
            if cut.face in (Face.FACE, Face.BACK):
                places.append(at.along(corner.x, corner.y, f"corner-{n + 1}-along"))
                places.append(at.across(corner.x, corner.y, f"corner-{n + 1}-across"))
                targets.append(at.shown(corner.x, corner.y))
            else:
                first = frame.from_edge(corner.x) if cut.face in (Face.FOOT, Face.HEAD) else corner.x - frame.u0
                listed.append(f"({at.sizes.cut(first)}, {at.sizes.cut(-corner.y)})")
    start = f" from {at.sizes.cut(cut.start)}" if cut.start > _SAME else ""
    words = f"{at.kind} × {at.sizes.cut(cut.depth)} deep{start}"
    if listed:
        words += ", corners from the edge and the reference face " + " ".join(listed)
        targets.append(_end_point(at))
    yield at.note(words, targets, places)


def _end_point(at: _At) -> Point:
    x0, w0, x1, w1 = bounds(at.cut.outline)
    x, w = (x0 + x1) / 2, max(-at.frame.thickness, min(0.0, (w0 + w1) / 2))
    return {Face.FOOT: (w, x), Face.HEAD: (-w, x), Face.FAR: (x, -w)}.get(at.view, (x, w))
