"""The bench: boards as blanks in world coordinates, cut and joined until the piece is frozen.

A blank is laid where its wood lies between shoulders. Joints make it grow to their bodies' ends and take wood
away; nothing else changes a size. World axes as everywhere: x right, y from the front plane to the back, z up.
"""

from __future__ import annotations

import builtins
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from shopdraw.build.label import label_of
from shopdraw.shape.frame import Frame, Vec3, cross, dot
from shopdraw.shape.path import Corner, Path, polygon, rectangle
from shopdraw.wood.assembly import Hardware, Joint, Motion
from shopdraw.wood.board import Board, Cut, Face, Fixing, Shape, Stock
from shopdraw.wood.flank import open_segments
from shopdraw.wood.glue_up import staves

AXES: dict[str, Vec3] = {
    "+x": (1.0, 0.0, 0.0),
    "-x": (-1.0, 0.0, 0.0),
    "+y": (0.0, 1.0, 0.0),
    "-y": (0.0, -1.0, 0.0),
    "+z": (0.0, 0.0, 1.0),
    "-z": (0.0, 0.0, -1.0),
}
SLIGHT_MM = 1e-6
"""Two planes nearer than this are one plane."""


_new = tuple.__new__
_SIDE = {"-x": 0, "+x": 1, "-y": 2, "+y": 3, "-z": 4, "+z": 5}
"""Where a box keeps its side towards a direction."""


class Box(NamedTuple):
    """An upright box in world coordinates, mm."""

    x0: float
    x1: float
    y0: float
    y1: float
    z0: float
    z1: float

    def corners(self) -> tuple[Vec3, Vec3]:
        """Its least and its greatest corner."""
        return (self.x0, self.y0, self.z0), (self.x1, self.y1, self.z1)

    def with_side(self, direction: str, at: float) -> Box:
        """The box with its side towards a direction (such as "+x") moved to a coordinate."""
        i = _SIDE[direction]
        return _new(Box, (*self[:i], at, *self[i + 1 :]))

    def side(self, direction: str) -> float:
        """Coordinate of the side towards a direction."""
        return self[_SIDE[direction]]

    def grown(self, direction: str, by: float) -> Box:
        """The box with one side moved outwards by mm."""
        i = _SIDE[direction]
        return _new(Box, (*self[:i], self[i] + by if i % 2 else self[i] - by, *self[i + 1 :]))


def opposite(direction: str) -> str:
    """The other way: "-x" becomes "+x" and so on."""
    return ("-" if direction[0] == "+" else "+") + direction[1]


_FACE_OF = {
    (2, 1): Face.FACE,
    (2, -1): Face.BACK,
    (1, -1): Face.NEAR,
    (1, 1): Face.FAR,
    (0, -1): Face.FOOT,
    (0, 1): Face.HEAD,
}
"""Local axis and the side that it is entered from."""
_PLANE_OF = {
    Face.FACE: (0, 1),
    Face.BACK: (0, 1),
    Face.NEAR: (0, 2),
    Face.FAR: (0, 2),
    Face.FOOT: (1, 2),
    Face.HEAD: (1, 2),
}
_AXIS_OF = {Face.FACE: 2, Face.BACK: 2, Face.NEAR: 1, Face.FAR: 1, Face.FOOT: 0, Face.HEAD: 0}
_FROM_HIGH = {Face.FACE, Face.FAR, Face.HEAD}
_LIES = {face: (_AXIS_OF[face], *_PLANE_OF[face], face in _FROM_HIGH) for face in _AXIS_OF}
"""Of each face: its axis, the two axes of its plane, whether a cut enters from the axis's high end."""


@dataclass
class Sunk:
    """A cut on a blank, in the blank's first frame: the prism between `enter` and `floor` along the face's axis."""

    kind: str
    face: Face
    enter: float
    floor: float
    outline: Path
    islands: tuple[Path, ...]
    id: str
    purpose: str
    clipped: bool


@dataclass
class Blank:
    """A board while it is being made: local box (u, v, w), outline and cuts, all in the frame it was laid with."""

    id: str
    name: str
    member: str
    stock: Stock
    frame: Frame
    low: list[float]
    high: list[float]
    reference_edge: str = "near"
    fixing: Fixing = field(default_factory=Fixing)
    outline: Path | None = None
    cuts: list[Sunk] = field(default_factory=list)
    shoulders: float | None = None
    layers: tuple[float, ...] = ()
    like: Blank | None = None
    """Where it is the same as others but for its place and its names: what they all were when they were laid."""

    def axis_of(self, direction: str) -> tuple[int, int]:
        """The local axis (0 to 2) that lies along a world direction, and its sign."""
        return _axis_along(self.frame.u, self.frame.v, self.frame.w, direction)

    def box(self) -> Box:
        """The blank's extent in the world, for a board that lies square to the axes."""
        return world_box(self.frame, self.low, self.high)

    def grow(self, direction: str, by: float) -> None:
        """Lengthen (or widen) the blank by mm towards a world direction."""
        axis, sign = self.axis_of(direction)
        if axis == 0 and self.shoulders is None:
            self.shoulders = self.high[0] - self.low[0]
        if sign > 0:
            self.high[axis] += by
        else:
            self.low[axis] -= by

    def sink_box(
        self, kind: str, box: Box, into: str, *, id: str, purpose: str, round_end: tuple[str, float] | None = None
    ) -> None:
        """Take an upright box of wood away, entered towards a world direction; what lies outside the blank is ignored.

        Args:
            round_end: a world direction at whose end the pocket keeps the cutter's radius, and that radius, mm.
        """
        a, b = self.frame.local((box.x0, box.y0, box.z0)), self.frame.local((box.x1, box.y1, box.z1))
        low, high = _low_and_high(a, b)
        axis, sign = self.axis_of(into)
        face = _FACE_OF[(axis, -sign)]
        p, q = _PLANE_OF[face]
        outline = rectangle(low[p], low[q], high[p], high[q])
        if round_end is not None:
            end_axis, end_sign = self.axis_of(round_end[0])
            outline = _rounded_at(outline, 0 if end_axis == p else 1, end_sign, round_end[1])
        enter, floor = (high[axis], low[axis]) if face in _FROM_HIGH else (low[axis], high[axis])
        self.cuts.append(Sunk(kind, face, enter, floor, outline, (), id, purpose, clipped=True))

    def sink(
        self,
        kind: str,
        face: Face,
        outline: Path,
        *,
        enter: float | None = None,
        floor: float | None = None,
        islands: Sequence[Path] = (),
        id: str,
        purpose: str,
    ) -> None:
        """Take a prism away, given in the blank's own (u, v, w).

        Args:
            face: the face it is entered from.
            outline, islands: in that face's two coordinates.
            enter, floor: where it begins and ends along the third; None for the blank's own
                faces, from one to the other.
        """
        self.cuts.append(
            Sunk(
                kind,
                face,
                _or_end(enter, face, True),
                _or_end(floor, face, False),
                outline.anticlockwise(),
                tuple(islands),
                id,
                purpose,
                clipped=False,
            )
        )

    def sink_rectangle(
        self, kind: str, face: Face, frame: Frame, span: Path, *, floor: float, id: str, purpose: str
    ) -> None:
        """Take a rectangle of wood away that is given in (u, v) of another frame in the same plane.

        What lies outside this board is ignored.
        """
        points = [self.frame.local(frame.point((c.x, c.y, 0.0))) for c in span.corners]
        us, vs = [p[0] for p in points], [p[1] for p in points]
        outline = rectangle(min(us), min(vs), max(us), max(vs))
        enter = _or_end(None, face, True)
        self.cuts.append(Sunk(kind, face, enter, floor, outline, (), id, purpose, clipped=True))


@lru_cache(maxsize=1024)
def _axis_along(u: Vec3, v: Vec3, w: Vec3, direction: str) -> tuple[int, int]:
    """Which of three axes lies along a world direction (0 to 2), and its sign. Most boards lie in a few ways."""
    a, b, c = dot(AXES[direction], u), dot(AXES[direction], v), dot(AXES[direction], w)
    x, y, z = abs(a), abs(b), abs(c)
    if x >= y and x >= z:
        return 0, 1 if a > 0 else -1
    return (1, 1 if b > 0 else -1) if y >= z else (2, 1 if c > 0 else -1)


_ENDLESS = 1e9


def _or_end(value: float | None, face: Face, entering: bool) -> float:
    """A coordinate along a face's axis, or one beyond the blank on the side where the cut enters or leaves."""
    if value is not None:
        return value
    return _ENDLESS if (face in _FROM_HIGH) == entering else -_ENDLESS


def world_box(frame: Frame, low: Sequence[float], high: Sequence[float]) -> Box:
    """The upright box between two local corners of a frame that lies square to the world's axes."""
    a = frame.point((low[0], low[1], low[2]))
    b = frame.point((high[0], high[1], high[2]))
    (x0, y0, z0), (x1, y1, z1) = _low_and_high(a, b)
    return _new(Box, (x0, x1, y0, y1, z0, z1))


def _low_and_high(a: Vec3, b: Vec3) -> tuple[Vec3, Vec3]:
    """The least and the greatest corner of the box between two points."""
    (ax, ay, az), (bx, by, bz) = a, b
    if ax > bx:
        ax, bx = bx, ax
    if ay > by:
        ay, by = by, ay
    if az > bz:
        az, bz = bz, az
    return (ax, ay, az), (bx, by, bz)


def square_frame(box: Box, u: str, w: str) -> tuple[Frame, list[float], list[float]]:
    """A board's frame in a box: `u` along the grain, `w` out of the reference face, each a world direction.

    Returns:
        The frame with its origin at the blank's corner (u = v = w = 0), and the blank's least and greatest (u, v, w).
    """
    du, dw = AXES[u], AXES[w]
    dv = cross(dw, du)
    frame = Frame(du, dv, dw, (0.0, 0.0, 0.0))
    a, b = frame.local((box.x0, box.y0, box.z0)), frame.local((box.x1, box.y1, box.z1))
    low, high = _low_and_high(a, b)
    at = frame.point((low[0], low[1], high[2]))
    size = [high[i] - low[i] for i in range(3)]
    return Frame(du, dv, dw, at), [0.0, 0.0, -size[2]], [size[0], size[1], 0.0]


class Bench:
    """Collects blanks, joints, hardware and motions while a piece is put together."""

    def __init__(self) -> None:
        self.blanks: dict[str, Blank] = {}
        self.joints: list[Joint] = []
        self.hardware: list[Hardware] = []
        self.motions: list[Motion] = []
        self.patterns: dict[tuple[object, ...], object] = {}
        """What was laid and may be laid again, by what decides how it is laid."""

    def lay(
        self,
        id: str,
        name: str,
        member: str,
        stock: Stock,
        box: Box,
        *,
        u: str,
        w: str,
        reference_edge: str = "near",
        fixing: Fixing | None = None,
        layers: tuple[float, ...] = (),
    ) -> Blank:
        """Lay a board square to the axes: `u` along its grain, `w` out of its reference face (world directions).

        A board is held at the middle of its front unless `fixing` says otherwise.
        """
        frame, low, high = square_frame(box, u, w)
        held = fixing or Fixing("", ((box.x0 + box.x1) / 2, box.y0, box.z0))
        return self.put(Blank(id, name, member, stock, frame, low, high, reference_edge, held, layers=layers))

    def lay_in(
        self,
        id: str,
        name: str,
        member: str,
        stock: Stock,
        frame: Frame,
        length: float,
        width: float,
        *,
        fixing: Fixing,
        reference_edge: str = "near",
        outline: Path | None = None,
    ) -> Blank:
        """Lay a board in a frame of its own (its corner u = v = w = 0), of a length and width in mm."""
        return self.put(
            Blank(
                id,
                name,
                member,
                stock,
                frame,
                [0.0, 0.0, -stock.thickness],
                [length, width, 0.0],
                reference_edge,
                fixing,
                outline,
            )
        )

    def put(self, blank: Blank) -> Blank:
        """Lay a blank that is ready."""
        if blank.id in self.blanks:
            raise ValueError(f"a board named {blank.id} is laid twice")
        self.blanks[blank.id] = blank
        return blank

    def __getitem__(self, board_id: str) -> Blank:
        return self.blanks[board_id]

    def boards(self, order: Callable[[str], tuple[object, ...]], *, rough: bool = False) -> tuple[Board, ...]:
        """The finished boards, in the given order of their ids; rough ones don't say where cuts are open."""
        known: dict[int, _Measured] = {}
        found = []
        for id in sorted(self.blanks, key=order):
            blank = self.blanks[id]
            like = blank.like
            if like is None or not _is_still(blank, like):
                found.append(finished(blank, rough=rough))
                continue
            if builtins.id(like) not in known:
                known[builtins.id(like)] = _shape_of(like, rough=rough)
            found.append(_board(blank, known[builtins.id(like)]))
        return tuple(found)


def _is_still(blank: Blank, like: Blank) -> bool:
    """Whether nothing has been done to a blank since it was laid like others."""
    return (
        blank.low == like.low
        and blank.high == like.high
        and len(blank.cuts) == len(like.cuts)
        and blank.outline is like.outline
        and all(
            one.outline is other.outline and one.enter == other.enter and one.floor == other.floor
            for one, other in zip(blank.cuts, like.cuts, strict=True)
        )
    )


class _Measured(NamedTuple):
    """A blank's shape, and which of its cuts take wood."""

    shape: Shape
    kept: tuple[int, ...]


def finished(blank: Blank, *, rough: bool = False) -> Board:
    """The board that a blank has become: outline from its corner, cuts measured from its own six faces."""
    return _board(blank, _shape_of(blank, rough=rough))


def _shape_of(blank: Blank, *, rough: bool) -> _Measured:
    low, high = blank.low, blank.high
    outline = blank.outline or rectangle(low[0], low[1], high[0], high[1])
    shifted = outline.moved(-low[0], -low[1])
    thickness = high[2] - low[2]
    cuts, kept = [], []
    for number, sunk in enumerate(blank.cuts):
        cut = _measured(sunk, low, high)
        if cut is None:
            continue
        cuts.append(cut if rough else replace(cut, open=open_segments(shifted, thickness, cut)))
        kept.append(number)
    return _Measured(Shape(shifted, thickness, tuple(cuts)), tuple(kept))


def _board(blank: Blank, measured: _Measured) -> Board:
    low, high = blank.low, blank.high
    cuts = [blank.cuts[number] for number in measured.kept]
    at = blank.frame.point((low[0], low[1], high[2]))
    return Board(
        id=blank.id,
        label=label_of(blank.id),
        name=blank.name,
        member=blank.member,
        shape=measured.shape,
        frame=Frame(blank.frame.u, blank.frame.v, blank.frame.w, at),
        stock=blank.stock,
        cut_ids=tuple([cut.id for cut in cuts]),
        cut_for=tuple([cut.purpose for cut in cuts]),
        reference_edge=blank.reference_edge,
        fixing=blank.fixing,
        between_shoulders=blank.shoulders if blank.shoulders != high[0] - low[0] else None,
        layers=blank.layers,
        staves=staves(high[1] - low[1], high[0] - low[0], blank.stock.at_hand),
    )


def _measured(sunk: Sunk, low: Sequence[float], high: Sequence[float]) -> Cut | None:
    """A cut measured from the finished blank's faces, or None where it only takes air."""
    axis, p, q, from_high = _LIES[sunk.face]
    enter = min(max(sunk.enter, low[axis]), high[axis])
    floor = min(max(sunk.floor, low[axis]), high[axis])
    start = high[axis] - enter if from_high else enter - low[axis]
    depth = abs(enter - floor)
    if depth < SLIGHT_MM:
        return None
    outline = _clipped(sunk.outline, low[p], low[q], high[p], high[q]) if sunk.clipped else sunk.outline
    if outline is None:
        return None
    shift = (-low[p], -low[q] if q != 2 else -high[2])
    return Cut(
        sunk.kind,
        sunk.face,
        start if start > SLIGHT_MM else 0.0,
        depth,
        outline.moved(*shift),
        tuple(i.moved(*shift) for i in sunk.islands),
    )


def _squared(corners: Sequence[Corner], blank: tuple[float, float, float, float]) -> list[Corner]:
    """A pocket's corners, those square at which it runs out of the blank's edge: the cutter leaves nothing there."""
    xs, ys = [c.x for c in corners], [c.y for c in corners]
    ends = ((min(xs), max(xs)), (min(ys), max(ys)))
    sharp = [_sharp_at_edge(here, there, ends, blank) for here, there in pairwise((*corners, corners[0]))]
    kept: list[Corner] = []
    for i, corner in enumerate(corners):
        made = sharp[i]
        if made is not None:
            kept.append(made)
        elif sharp[i - 1] is None or corner.bulge:
            kept.append(corner)
    return kept


def _sharp_at_edge(
    here: Corner,
    there: Corner,
    ends: tuple[tuple[float, float], tuple[float, float]],
    blank: tuple[float, float, float, float],
) -> Corner | None:
    """The square corner in place of an upright pocket's rounded one that lies on the blank's edge; else None.

    Args:
        here, there: the corner, and the one after it.
        ends: where the pocket ends along both axes.
        blank: least, then greatest coordinates.
    """
    if not here.bulge:
        return None
    for x, y in ((here.x, there.y), (there.x, here.y)):
        outermost = x in ends[0] and y in ends[1]
        if outermost and min(x - blank[0], y - blank[1], blank[2] - x, blank[3] - y) <= SLIGHT_MM:
            return Corner(x, y)
    return None


def _clipped(outline: Path, x0: float, y0: float, x1: float, y1: float) -> Path | None:
    """An upright pocket's outline held to the blank; corners that lie outside move to its edge."""
    corners: Sequence[Corner] = outline.corners
    if any(bulge for _, _, bulge in corners):
        corners = _squared(corners, (x0, y0, x1, y1))
    if all(x0 <= x <= x1 and y0 <= y <= y1 for x, y, _ in corners) and _is_spread(corners):
        return outline if len(corners) == len(outline.corners) else Path(tuple(corners))
    kept: list[Corner] = []
    for x, y, bulge in corners:
        x, y = min(max(x, x0), x1), min(max(y, y0), y1)  # noqa: PLW2901
        if not kept or max(abs(kept[-1].x - x), abs(kept[-1].y - y)) > SLIGHT_MM:
            kept.append(Corner(x, y, bulge))
        elif bulge == 0.0:
            kept[-1] = kept[-1]._replace(bulge=0.0)
    while len(kept) > 1 and max(abs(kept[0].x - kept[-1].x), abs(kept[0].y - kept[-1].y)) <= SLIGHT_MM:
        kept.pop()
    xs, ys = [c.x for c in kept], [c.y for c in kept]
    if len(kept) < 3 or max(xs) - min(xs) < SLIGHT_MM or max(ys) - min(ys) < SLIGHT_MM:
        return None
    return Path(tuple(kept))


def _is_spread(corners: Sequence[Corner]) -> bool:
    """Whether no two corners that follow each other are one place, so that nothing is to be left out."""
    x0, y0, _ = corners[-1]
    for x, y, _ in corners:
        if abs(x - x0) <= SLIGHT_MM and abs(y - y0) <= SLIGHT_MM:
            return False
        x0, y0 = x, y
    return len(corners) >= 3


_QUARTER = 0.41421356237309503
"""Bulge of a quarter circle: tan(90° / 4)."""


def _rounded_at(outline: Path, axis: int, sign: int, radius: float) -> Path:
    """An upright rectangle whose two corners at one end keep the cutter's radius."""
    xs = [c.x for c in outline.corners]
    ys = [c.y for c in outline.corners]
    x0, x1, y0, y1 = min(xs), max(xs), min(ys), max(ys)
    width = (y1 - y0) if axis == 0 else (x1 - x0)
    r = min(radius, width / 2)
    if axis == 0 and sign > 0:
        right = [Corner(x1 - r, y0, _QUARTER), Corner(x1, y0 + r), Corner(x1, y1 - r, _QUARTER), Corner(x1 - r, y1)]
        corners = [Corner(x0, y0), *right, Corner(x0, y1)]
    elif axis == 0:
        left = [Corner(x0 + r, y1, _QUARTER), Corner(x0, y1 - r), Corner(x0, y0 + r, _QUARTER), Corner(x0 + r, y0)]
        corners = [Corner(x1, y0), Corner(x1, y1), *left]
    elif sign > 0:
        top = [Corner(x1, y1 - r, _QUARTER), Corner(x1 - r, y1), Corner(x0 + r, y1, _QUARTER), Corner(x0, y1 - r)]
        corners = [Corner(x0, y0), Corner(x1, y0), *top]
    else:
        foot = [Corner(x0, y0 + r, _QUARTER), Corner(x0 + r, y0), Corner(x1 - r, y0, _QUARTER), Corner(x1, y0 + r)]
        corners = [*foot, Corner(x1, y1), Corner(x0, y1)]
    return Path(tuple(_without_doubles(corners))).anticlockwise()


def _without_doubles(corners: Iterable[Corner]) -> list[Corner]:
    """Corners of a slot as wide as its cutter: the straight piece between its two quarters has no length."""
    kept: list[Corner] = []
    for corner in corners:
        if kept and abs(kept[-1].x - corner.x) < SLIGHT_MM and abs(kept[-1].y - corner.y) < SLIGHT_MM:
            kept[-1] = corner
        else:
            kept.append(corner)
    return kept


def section_of(points: Iterable[tuple[float, float]]) -> Path:
    """A straight-sided outline through points, anticlockwise."""
    return polygon(points)
