"""A cut as a note is made of it: its board, its view, the places it is found from. True-size mm."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.shape.askew import askew_rectangle
from shopdraw.shape.path import Path, Point, arc_of, bounds
from shopdraw.sheet.cut_size import CutSizes
from shopdraw.wood.board import Board, Cut, Face

ALONG, ACROSS = "along", "across"
SAME = 1e-3
"""Sizes nearer than this are one size, mm."""

_ROUND = (math.tan(math.pi / 8), 1.0)
"""Bulges of a quarter of a circle, a rounded corner, and of half of one, a round end."""


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
        more: lines that the heading adds to it.
    """

    view: Face
    kind: str
    words: str
    targets: tuple[Point, ...]
    places: tuple[Place, ...]
    cuts: tuple[int, ...]
    more: tuple[str, ...] = ()


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


@dataclass(frozen=True, slots=True)
class At:
    """A cut with all that its note is made from."""

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
        """Its depth, or that it goes through."""
        cut = self.cut
        whole = {Face.FACE: self.board.thickness, Face.BACK: self.board.thickness}.get(cut.face, self.board.width)
        if cut.start + cut.depth >= whole - SAME:
            return ", through"
        lower = f", from {self.sizes.cut(cut.start)} below" if cut.start > SAME else ""
        return f" × {self.sizes.cut(cut.depth)} deep{lower}"

    def note(self, words: str, targets: Sequence[Point], places: Sequence[Place]) -> CutNote:
        """The note of this cut alone."""
        return CutNote(self.view, self.kind, words, tuple(targets), tuple(places), (self.index,))

    def shown(self, u: float, v: float) -> Point:
        """A point of the face as the note's view has it."""
        return (u, -v) if self.view is Face.BACK else (u, v)

    def along(self, u: float, v: float, what: str) -> Place:
        """A place counted from the reference end."""
        return Place(ALONG, u - self.frame.u0, self.shown(u, v), f"{self.feature}:{what}")

    def across(self, u: float, v: float, what: str) -> Place:
        """A place counted from the reference edge."""
        return Place(ACROSS, self.frame.from_edge(v), self.shown(u, v), f"{self.feature}:{what}")


def box_of(path: Path) -> tuple[float, float, float, float, float] | None:
    """A rectangle's sides x0, y0, x1, y1 and the radius of its rounded corners or ends; None for any other outline."""
    x0, y0, x1, y1 = bounds(path)
    radius = 0.0
    if all(corner.bulge for corner in path.corners):
        return None
    for (ax, ay, bulge), (bx, by, _) in path.pairs():
        if bulge:
            if min(abs(abs(bulge) - round_one) for round_one in _ROUND) > 1e-6:
                return None
            radius = max(radius, arc_of((ax, ay), (bx, by), bulge).radius)
        elif (abs(ax - bx) > 1e-6 and abs(ay - by) > 1e-6) or not any(
            abs(a - b) < 1e-6 for a, b in ((ax, x0), (ax, x1), (ay, y0), (ay, y1))
        ):
            return None
    return x0, y0, x1, y1, radius


def circle_of(path: Path) -> tuple[Point, float] | None:
    """A circle's centre and radius; None for any other outline."""
    arcs = [arc_of((a.x, a.y), (b.x, b.y), a.bulge) for a, b in path.pairs() if a.bulge]
    if len(arcs) != len(path.corners) or any(math.dist(a.centre, arcs[0].centre) > 1e-6 for a in arcs):
        return None
    return arcs[0].centre, arcs[0].radius


def low_edge(frame: Frame2, v0: float, v1: float) -> float:
    """The one of two places across that lies nearer to the reference edge."""
    return v1 if frame.far else v0


def high_edge(frame: Frame2, v0: float, v1: float) -> float:
    """The one of two places across that lies further from the reference edge."""
    return v0 if frame.far else v1


def corner_by_corner(at: At) -> Iterator[CutNote]:
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
    start = f" from {at.sizes.cut(cut.start)}" if cut.start > SAME else ""
    askew = askew_rectangle(cut.outline) if listed and not cut.islands else None
    if askew is not None:
        x, w = askew.middle
        first = frame.from_edge(x) if cut.face in (Face.FOOT, Face.HEAD) else x - frame.u0
        words = (
            f"{at.kind} {at.sizes.fine(askew.wide)} × {at.sizes.cut(askew.long / 2)} into each board, "
            f"{at.sizes.angle(askew.degrees)} to the face, {at.sizes.cut(cut.depth)} long{start}; "
            f"its middle {at.sizes.cut(first)} from the {'edge' if cut.face in (Face.FOOT, Face.HEAD) else 'end'}, "
            f"{at.sizes.cut(-w)} from the reference face"
        )
        yield at.note(words, [*targets, _end_point(at)], places)
        return
    words = f"{at.kind} × {at.sizes.cut(cut.depth)} deep{start}"
    if listed:
        words += ", corners from the edge and the reference face " + " ".join(listed)
        targets.append(_end_point(at))
    yield at.note(words, targets, places)


def _end_point(at: At) -> Point:
    x0, w0, x1, w1 = bounds(at.cut.outline)
    x, w = (x0 + x1) / 2, max(-at.frame.thickness, min(0.0, (w0 + w1) / 2))
    return {Face.FOOT: (w, x), Face.HEAD: (-w, x), Face.FAR: (x, -w)}.get(at.view, (x, w))
