"""Which boards, or which of them together, can be slid out of others in a straight line, and which way is best.

What can be slid out can be slid in: taken apart in one order, a piece goes together in the other. Whether a set of
boards can be taken from the rest along a direction is known from pairs alone: nothing of it may have a board of the
rest in its way. Taking boards away never makes it harder for another to go, so a board that can go may go at once.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.shape.frame import Vec3, dot, scale
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board
from shopdraw.wood.in_the_way import blocked_pairs
from shopdraw.wood.interference import box_of
from shopdraw.wood.solid import placed_solid

AXES: tuple[Vec3, ...] = (
    (0.0, 0.0, 1.0),
    (0.0, -1.0, 0.0),
    (0.0, 1.0, 0.0),
    (1.0, 0.0, 0.0),
    (-1.0, 0.0, 0.0),
    (0.0, 0.0, -1.0),
)
"""The six ways out along the axes: up, forward, back, right, left, down."""
_BEYOND_MM = 50.0
_SQUARE = 0.999
_STRAIGHT = 0.9
"""Cosine over which a way runs along a joint's body: the joint closes straight, glue isn't wiped along it."""


@dataclass(frozen=True)
class Ways:
    """Ways out and who stands in them.

    Attributes:
        directions: unit, world; the axes first, then square to boards that lean.
        blocked: for each direction, the boards that stand in each board's way.
        movers: for each direction, the boards that it is tried for: all along an axis, else those that
            lie square to it.
        spans: for each direction, from where to where each board reaches along it, mm.
    """

    directions: tuple[Vec3, ...]
    blocked: tuple[Mapping[str, AbstractSet[str]], ...]
    movers: tuple[AbstractSet[str], ...]
    spans: tuple[Mapping[str, tuple[float, float]], ...]

    def travel(self, moving: Iterable[str], rest: Iterable[str], direction: Vec3) -> float:
        """How far boards go until they are past the rest, mm."""
        spans = self.spans[self.directions.index(direction)]
        return max(spans[board][1] for board in rest) - min(spans[board][0] for board in moving)


@dataclass(frozen=True, slots=True)
class Way:
    """A set of boards that can be slid out.

    Attributes:
        nodes: what goes, by name, in order.
        direction: which way, unit, world.
        wiped: how many glued joints would be slid along instead of opened straight.
    """

    nodes: tuple[str, ...]
    direction: Vec3
    wiped: int


@lru_cache(maxsize=32)
def ways_of(assembly: Assembly) -> Ways:
    """Every pair of boards tried in every direction, on solids."""
    boards = assembly.boards
    leaning = {
        tuple(round(part, 9) + 0.0 for part in board.frame.w): board.frame.w
        for board in boards
        if max(abs(part) for part in board.frame.w) < _SQUARE
    }
    lean = [direction for _, direction in sorted(leaning.items())]
    directions = (*AXES, *(way for one in lean for way in (one, scale(one, -1.0))))
    boxes = [box_of(board) for board in boards]
    reach = _BEYOND_MM + sum(max(b[i + 3] for b in boxes) - min(b[i] for b in boxes) for i in range(3))
    every = frozenset(board.id for board in boards)
    movers = [every if d in AXES else _lying_square(boards, d) for d in directions]
    known: dict[Vec3, Mapping[str, AbstractSet[str]]] = {}
    for direction, moving in zip(directions, movers, strict=True):
        match = scale(direction, -1.0)
        if direction in AXES and match in known:
            # a stands in b's way along d just where b stands in a's way against d
            known[direction] = _turned_round(known[match])
        else:
            known[direction] = _by_first(blocked_pairs(boards, direction, reach, moving))
    spans = tuple({board.id: _span(board, direction) for board in boards} for direction in directions)
    return Ways(directions, tuple(known[direction] for direction in directions), tuple(movers), spans)


def _lying_square(boards: Sequence[Board], direction: Vec3) -> AbstractSet[str]:
    return frozenset(board.id for board in boards if abs(dot(board.frame.w, direction)) > 1.0 - 1e-9)


def _span(board: Board, direction: Vec3) -> tuple[float, float]:
    along = placed_solid(board).to_mesh64().vert_properties[:, :3] @ direction
    return float(along.min()), float(along.max())


def _by_first(pairs: AbstractSet[tuple[str, str]]) -> Mapping[str, AbstractSet[str]]:
    found: dict[str, set[str]] = {}
    for first, second in pairs:
        found.setdefault(first, set()).add(second)
    return found


def _turned_round(blocked: Mapping[str, AbstractSet[str]]) -> Mapping[str, AbstractSet[str]]:
    return _by_first({(second, first) for first, seconds in blocked.items() for second in seconds})


def ways_out(nodes: Mapping[str, Sequence[str]], ways: Ways, joints: Sequence[Joint]) -> Iterator[Way]:
    """Each smallest set of nodes that can go, direction by direction.

    Args:
        nodes: boards by name of the node: a board, or a sub-assembly that goes as one.
        ways: who stands in whose way.
        joints: of the piece.
    """
    home = {board: node for node, boards in nodes.items() for board in boards}
    for direction, blocked, movers in zip(ways.directions, ways.blocked, ways.movers, strict=True):
        beyond = {
            node: {home[other] for board in boards for other in blocked.get(board, ()) if other in home} - {node}
            for node, boards in nodes.items()
        }
        if direction in AXES:
            groups = [group for group in _free_sets(beyond) if len(group) < len(nodes)]
        else:
            square = [node for node, boards in nodes.items() if movers >= set(boards) and not beyond[node]]
            groups = [frozenset({node}) for node in square if len(nodes) > 1]
        for group in groups:
            ordered = tuple(node for node in nodes if node in group)
            moving = {board for node in ordered for board in nodes[node]}
            yield Way(ordered, direction, _wiped(moving, set(home) - moving, direction, joints))


def _wiped(moving: AbstractSet[str], rest: AbstractSet[str], direction: Vec3, joints: Sequence[Joint]) -> int:
    count = 0
    for joint in joints:
        if joint.glued and joint.body is not None:
            guests = set(joint.guest_boards or (joint.guest,))
            apart = (joint.host in moving and guests & rest) or (joint.host in rest and guests & moving)
            if apart and abs(dot(joint.body.frame.w, direction)) < _STRAIGHT:
                count += 1
    return count


def _free_sets(beyond: Mapping[str, AbstractSet[str]]) -> list[frozenset[str]]:
    """Sets that hold each other in a ring and have nothing else in their way: each goes as one, or alone."""
    known: set[str] = set()
    found: list[frozenset[str]] = []
    for node in beyond:
        if node in known:
            continue
        # what reaches a set that goes without it, or what doesn't go, doesn't go either
        others = _reached(node, beyond, known)
        known.add(node)
        if others is not None and all(node in (_reached(other, beyond) or ()) for other in others):
            found.append(frozenset({node, *others}))
            known |= others
    return found


def _reached(
    node: str, beyond: Mapping[str, AbstractSet[str]], known: AbstractSet[str] = frozenset()
) -> AbstractSet[str] | None:
    """All that stands in a node's way, and in the way of that; None where one of `known` is among it."""
    seen: set[str] = set()
    waiting = [node]
    while waiting:
        here = beyond[waiting.pop()]
        if known and not known.isdisjoint(here):
            return None
        waiting.extend(here - seen)
        seen |= here
    return seen
