"""The piece in another season: every solid-wood board wider or narrower, about the point where it is held.

Assumptions, all common practice: wood moves across the grain only, evenly, and in proportion to the change of its
moisture content; sheet goods don't move. Change of thickness is left out: it is under a fit. So a groove that holds
another board's thickness, and a mortise in an edge that holds a tenon's length, keep that size and move with the
wood; so does a round hole. Two boards dovetailed along their width move as one of them does: the glue holds them to
one size. What a board carries moves with that board's wood at the point where it is held.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from shopdraw.shape.frame import Frame, Vec3, add, cross, dot, scale, subtract
from shopdraw.shape.path import Corner, Path, bounds
from shopdraw.wood.assembly import Assembly, Joint, Motion
from shopdraw.wood.board import Board, Cut, Face, Lean, Shape
from shopdraw.wood.hole import hole_centre

_ALIKE = 1e-9
_ASKEW = 0.1
"""Cosine of the angle between two directions that are as good as square to each other."""
_HERE = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))


@dataclass(frozen=True, slots=True)
class Carried:
    """Where a board's wood goes: stretched across its grain about the held point, then turned and moved.

    Attributes:
        held: the point held, at build, world, mm.
        across: the direction it stretches in, world, at build.
        factor: by how much.
        turn: the turn, as a frame whose axes are where the world's go and whose origin is where `held` goes.
        opened: how far a leaning board is turned open, degrees.
    """

    held: Vec3
    across: Vec3
    factor: float
    turn: Frame
    opened: float = 0.0

    def point(self, p: Vec3) -> Vec3:
        """Where the board's wood that was at a world point at build is now."""
        away = subtract(p, self.held)
        return self.turn.point(add(away, scale(self.across, (self.factor - 1.0) * dot(away, self.across))))

    def frame(self, frame: Frame) -> Frame:
        """Where a frame that is fast to the board's wood is now; it turns with the board and isn't stretched."""
        return Frame(
            self.turn.direction(frame.u),
            self.turn.direction(frame.v),
            self.turn.direction(frame.w),
            self.point(frame.at),
        )


def in_season(assembly: Assembly, moisture_percent: float) -> Assembly:
    """The piece at another moisture content of its wood.

    Args:
        assembly: as built, at `assembly.moisture.build`.
        moisture_percent: the wood's moisture content now, percent.
    Returns:
        The same boards, stretched or shrunk and moved; joints' bodies and motions' axes moved with them.
    Raises:
        ValueError: a board is held by one that isn't there, or boards hold each other in a ring.
    """
    change = moisture_percent - assembly.moisture.build
    return assembly if change == 0.0 else _changed(assembly, change)


@lru_cache(maxsize=32)
def _changed(assembly: Assembly, change: float) -> Assembly:
    carried = _Carrying(assembly, change)
    kept = _kept_sizes(assembly)
    return replace(
        assembly,
        boards=tuple(
            _board(board, carried.of(board.id), tuple(name in kept for name in board.cut_ids))
            for board in assembly.boards
        ),
        joints=tuple(_joint(joint, carried) for joint in assembly.joints),
        motions=tuple(_motion(motion, carried) for motion in assembly.motions),
    )


class _Carrying:
    """Follows each board to the one that carries it, down to the floor."""

    def __init__(self, assembly: Assembly, change: float) -> None:
        self._assembly, self._change = assembly, change
        self._known: dict[str, Carried] = {}
        self._asked: list[str] = []

    def of(self, board_id: str) -> Carried:
        """Where a board's wood goes."""
        if board_id not in self._known:
            if board_id in self._asked:
                ring = " → ".join([*self._asked[self._asked.index(board_id) :], board_id])
                raise ValueError(f"boards hold each other in a ring: {ring}; one of them must be held by the piece")
            self._asked.append(board_id)
            self._known[board_id] = self._work_out(self._assembly.board(board_id))
            self._asked.pop()
        return self._known[board_id]

    def at(self, point: Vec3, carrier: str, board: Board) -> Vec3:
        """Where a point of a carrier's wood is now; the piece's own planes stay where they are."""
        if not carrier:
            return point
        if not self._assembly.has(carrier):
            raise ValueError(f"{board.id} is held by {carrier!r}, and there is no such board")
        return self.of(carrier).point(point)

    def _work_out(self, board: Board) -> Carried:
        fixing = board.fixing
        leads = self._assembly.board(fixing.moves_with) if fixing.moves_with else board
        factor = 1.0 + leads.stock.coefficient * self._change
        held = fixing.dry if fixing.dry is not None and self._change < 0.0 else fixing.at
        there = self.at(held, fixing.to, board)
        axes = self.of(fixing.to).turn if fixing.to else _HERE
        plain = Carried(held, board.frame.v, factor, Frame(axes.u, axes.v, axes.w, there))
        return plain if fixing.lean is None else self._leant(board, fixing.lean, plain)

    def _leant(self, board: Board, lean: Lean, plain: Carried) -> Carried:
        pin = plain.point(lean.pin)
        axis = plain.turn.direction(lean.axis)
        planes = _resting(lean.axis, subtract(lean.at, lean.pin), lean.offset)
        # of the two planes the one that runs with the board's faces at build counts, then and now
        which = max((0, 1), key=lambda i: abs(dot(planes[i], board.frame.w)))
        before = planes[which]
        now = _resting(axis, subtract(self.at(lean.at, lean.on, board), pin), lean.offset)[which]
        started = plain.turn.direction(before)
        degrees = math.degrees(math.atan2(dot(cross(started, now), axis), dot(started, now)))
        if degrees <= 0.0:
            return plain
        return replace(plain, turn=plain.turn.turned(pin, axis, degrees), opened=degrees)


def _resting(axis: Vec3, contact: Vec3, offset: float) -> tuple[Vec3, Vec3]:
    """The unit normals of the two planes through the contact that pass the pin at the offset.

    Args:
        contact: from the pin to the point of contact, mm.
    """
    square = subtract(contact, scale(axis, dot(contact, axis)))
    size = math.sqrt(dot(square, square))
    part = min(1.0, abs(offset) / size)
    out = scale(square, 1.0 / size)
    side = cross(axis, out)
    rest = math.sqrt(1.0 - part * part)
    return add(scale(out, part), scale(side, rest)), add(scale(out, part), scale(side, -rest))


def _kept_sizes(assembly: Assembly) -> frozenset[str]:
    """Ids of joints whose guest stands in the host with its thickness or its length across the host's grain."""
    found = set()
    for joint in assembly.joints:
        names = joint.guest_boards or (joint.guest,)
        guests = [assembly.board(name) for name in names if assembly.has(name)]
        if guests and assembly.has(joint.host):
            across = assembly.board(joint.host).frame.v
            if all(abs(dot(guest.frame.v, across)) < _ASKEW for guest in guests):
                found.add(joint.id)
    return frozenset(found)


def _board(board: Board, carried: Carried, kept: tuple[bool, ...]) -> Board:
    shape = stretched(board.shape, carried.factor, kept)
    u, v, w = board.frame.local(carried.held)
    turn = carried.turn.direction
    turned = Frame(turn(board.frame.u), turn(board.frame.v), turn(board.frame.w), (0.0, 0.0, 0.0))
    frame = replace(turned, at=subtract(carried.turn.at, turned.point((u, v * carried.factor, w))))
    fixing = replace(board.fixing, at=carried.turn.at)
    return replace(board, shape=shape, frame=frame, fixing=fixing)


def _joint(joint: Joint, carried: _Carrying) -> Joint:
    if joint.body is None:
        return joint
    body, host = joint.body, carried.of(joint.host)
    x0, y0, x1, y1 = bounds(body.outline)
    middle = ((x0 + x1) / 2, (y0 + y1) / 2, 0.0)
    turned = host.frame(body.frame)
    # its own middle moves with the host's wood; the frame's origin may lie far outside the board
    away = subtract(host.point(body.frame.point(middle)), turned.point(middle))
    return replace(joint, body=replace(body, frame=replace(turned, at=add(turned.at, away))))


def _motion(motion: Motion, carried: _Carrying) -> Motion:
    if not motion.boards:
        return motion
    first = carried.of(motion.boards[0])
    # a lid that leans further open has less way to go until it lies level
    reach = motion.reach - first.opened if motion.kind == "turn" else motion.reach
    return replace(
        motion, point=first.point(motion.point), direction=first.turn.direction(motion.direction), reach=reach
    )


@lru_cache(maxsize=8192)
def stretched(shape: Shape, factor: float, kept: tuple[bool, ...] = ()) -> Shape:
    """A shape wider or narrower by a factor across its grain, about v = 0.

    Args:
        kept: for each cut, whether it holds what doesn't change with this board's width: as long as it lies within
            the board it keeps its size across the grain and moves with the wood.
    """
    if factor == 1.0:
        return shape
    keep = kept or (False,) * len(shape.cuts)
    cuts = tuple(_stretched_cut(shape, cut, factor, held) for cut, held in zip(shape.cuts, keep, strict=True))
    return Shape(_stretched_path(shape.outline, 1.0, factor), shape.thickness, cuts)


def _stretched_cut(shape: Shape, cut: Cut, factor: float, kept: bool) -> Cut:
    if cut.face in (Face.NEAR, Face.FAR):
        if kept and cut.start + cut.depth < shape.width / 2:
            return cut
        return replace(cut, start=cut.start * factor, depth=cut.depth * factor)
    if cut.face is Face.TILTED:
        if cut.frame is None:
            return cut
        x, y, z = cut.frame.at
        return replace(cut, frame=replace(cut.frame, at=(x, y * factor, z)))
    upright = cut.face in (Face.FACE, Face.BACK)
    x0, y0, x1, y1 = bounds(cut.outline)
    low, high = (y0, y1) if upright else (x0, x1)
    if kept and low > 0.0 and high < shape.width and high - low <= shape.width / 2:
        by = (low + high) / 2 * (factor - 1.0)
        dx, dy = (0.0, by) if upright else (by, 0.0)
        moved = tuple(island.moved(dx, dy) for island in cut.islands)
        return replace(cut, outline=cut.outline.moved(dx, dy), islands=moved)
    first, second = (1.0, factor) if upright else (factor, 1.0)
    return replace(
        cut,
        outline=_stretched_path(cut.outline, first, second),
        islands=tuple(_stretched_path(island, first, second) for island in cut.islands),
    )


def _stretched_path(path: Path, first: float, second: float) -> Path:
    """The path with its two coordinates stretched; an arc stays an arc through its moved ends and middle."""
    centre = hole_centre(path)
    if centre is not None:
        return path.moved(centre[0] * (first - 1.0), centre[1] * (second - 1.0))
    return Path(
        tuple(
            Corner(here.x * first, here.y * second, _stretched_bulge(here, there, first, second))
            for here, there in path.pairs()
        )
    )


def _stretched_bulge(here: Corner, there: Corner, first: float, second: float) -> float:
    if not here.bulge:
        return 0.0
    # rise of the arc's middle over its chord: half the chord times the bulge, square to the chord
    dx, dy = there.x - here.x, there.y - here.y
    rise_x, rise_y = here.bulge * dy / 2 * first, -here.bulge * dx / 2 * second
    dx, dy = dx * first, dy * second
    return 2 * (rise_x * dy - rise_y * dx) / (dx * dx + dy * dy)
