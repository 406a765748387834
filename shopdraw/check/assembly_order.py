"""The order of assembly: each board or sub-assembly moves straight in to what is already there, meeting nothing.

Worked out backwards. The piece is taken apart: of all that can be slid out along an axis, or square to a leaning board,
that goes first which the trade puts in last; the other way round it is the order of assembly. Nothing here knows one
piece from another: ways come from the boards' solids, sub-assemblies from ids and joints.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.check.sub_assembly import groups_of, jointed, sub_assemblies
from shopdraw.check.way_out import AXES, Way, Ways, ways_of, ways_out
from shopdraw.shape.frame import Vec3, dot, scale
from shopdraw.wood.assembly import Assembly, Hardware, Joint
from shopdraw.wood.finding import Finding, Severity

STAGES: tuple[frozenset[str], ...] = (
    frozenset({"side", "bottom", "shelf", "frame", "top"}),
    frozenset({"back"}),
    frozenset({"rail", "strip", "divider", "guide", "kicker"}),
    frozenset({"plinth", "block", "foot"}),
    frozenset({"drawer", "support", "stop"}),
    frozenset({"lid"}),
    frozenset({"partition", "pigeonhole", "bracket", "compartment"}),
)
"""Members by stage: case, back, what trims it, base, what slides, lid, compartments (common practice)."""
_OTHERS = 2
PIECE = "piece"


@dataclass(frozen=True, slots=True)
class Step:
    """One move.

    Attributes:
        group: id of the sub-assembly that the step is part of, or "piece".
        unit: id of what moves: a board, a sub-assembly, or several joined by " + ".
        boards: that move, in the piece's order.
        onto: boards that are already there; none in a group's first step.
        direction: which way it moves in, unit, world; None for the first.
        joints: that close in this step.
        hardware: that holds what moves to what is there.
    """

    group: str
    unit: str
    boards: tuple[str, ...]
    onto: tuple[str, ...]
    direction: Vec3 | None
    joints: tuple[Joint, ...]
    hardware: tuple[Hardware, ...] = ()


@dataclass(frozen=True, slots=True)
class AssemblyOrder:
    """Steps in order, those of a sub-assembly before the piece's own; sets of boards that can't be moved together."""

    steps: tuple[Step, ...]
    stuck: tuple[tuple[str, ...], ...]

    def of(self, group: str) -> tuple[Step, ...]:
        """The steps of a sub-assembly, or of the piece."""
        return tuple(step for step in self.steps if step.group == group)


@lru_cache(maxsize=32)
def assembly_order(assembly: Assembly) -> AssemblyOrder:
    """The order of assembly of a piece."""
    if not assembly.boards:
        return AssemblyOrder((), ())
    units = sub_assemblies(assembly)
    taking = _Taking(assembly, ways_of(assembly))
    main = taking.apart(PIECE, units)
    # what had to be taken apart board by board isn't put together on the bench
    whole = {step.unit for step in main}
    inner = [
        step
        for name, boards in units.items()
        if len(boards) > 1 and name in whole
        for step in taking.apart(name, {board: (board,) for board in boards})
    ]
    return AssemblyOrder((*taking.bench, *inner, *main), tuple(taking.stuck))


class _Taking:
    """A piece being taken apart; steps come out in the order of assembly."""

    def __init__(self, assembly: Assembly, ways: Ways) -> None:
        self._assembly, self._ways = assembly, ways
        self._place = {board.id: place for place, board in enumerate(assembly.boards)}
        self._stage = {board.id: stage_of(board.member) for board in assembly.boards}
        self._beside = jointed(assembly)
        self.stuck: list[tuple[str, ...]] = []
        self.bench: list[Step] = []
        """Steps of sets that only go in together, found on the way."""

    def apart(self, group: str, nodes: Mapping[str, Sequence[str]]) -> list[Step]:
        """Steps that put the nodes together."""
        here = dict(nodes)
        steps: list[Step] = []
        while len(here) > 1:
            way = self._best(group, here)
            if way is None and any(len(boards) > 1 for boards in here.values()):
                here = {board: (board,) for board in self._ordered(here)}
                continue
            if way is None:
                self.stuck.append(self._ordered(here))
                steps.append(self._step(group, tuple(here), here, (), None))
                return steps[::-1]
            gone = {node: here.pop(node) for node in way.nodes}
            if len(gone) > 1:
                self.bench += self.apart(" + ".join(gone), gone)
            steps.append(self._step(group, way.nodes, gone, self._ordered(here), scale(way.direction, -1.0)))
        steps.append(self._step(group, tuple(here), here, (), None))
        return steps[::-1]

    def _best(self, group: str, here: Mapping[str, Sequence[str]]) -> Way | None:
        """The way whose boards the trade puts in last; it wipes the least glue and leaves what hangs together."""
        found = list(ways_out(here, self._ways, self._assembly.joints))
        if not found:
            return None

        def rank(way: Way) -> tuple[int, int, int, int, int, bool, float]:
            boards = {board for node in way.nodes for board in here[node]}
            rest = {board for other in here.values() for board in other} - boards
            stage = min(self._stage[board] for board in boards)
            last = max(self._place[here[node][0]] for node in way.nodes)
            pieces = len(groups_of(rest, self._beside)) if group != PIECE else 0
            askew = way.direction not in AXES and not any(self._lies_square(board, way.direction) for board in boards)
            travel = round(self._ways.travel(boards, rest, way.direction), 3)
            return -stage, way.wiped, len(way.nodes), pieces, -last, askew, travel

        return min(found, key=rank)

    def _lies_square(self, board: str, direction: Vec3) -> bool:
        return abs(dot(self._assembly.board(board).frame.w, direction)) > 1.0 - 1e-9

    def _ordered(self, here: Mapping[str, Sequence[str]]) -> tuple[str, ...]:
        return tuple(sorted((board for boards in here.values() for board in boards), key=self._place.__getitem__))

    def _step(
        self,
        group: str,
        names: Sequence[str],
        gone: Mapping[str, Sequence[str]],
        onto: tuple[str, ...],
        direction: Vec3 | None,
    ) -> Step:
        boards = self._ordered(gone)
        moving, there = set(boards), set(onto)
        joints = tuple(joint for joint in self._assembly.joints if _closes(joint, moving, there))
        held = tuple(f for f in self._assembly.hardware if moving & set(f.on) and there & set(f.on))
        return Step(group, " + ".join(names), boards, onto, direction, joints, held)


def _closes(joint: Joint, moving: set[str], there: set[str]) -> bool:
    guests = set(joint.guest_boards or (joint.guest,))
    return bool((joint.host in moving and guests & there) or (joint.host in there and guests & moving))


def stage_of(member: str) -> int:
    """The stage at which a member goes in; one that no stage names goes in with what trims the case."""
    family = member.partition(".")[0]
    return next((number for number, members in enumerate(STAGES) if family in members), _OTHERS)


def assembly_findings(assembly: Assembly) -> tuple[Finding, ...]:
    """Boards that can't be moved in to each other along any direction tried."""
    order = assembly_order(assembly)
    return tuple(
        Finding(
            code="cant-be-put-together",
            severity=Severity.MUST_FIX,
            where=boards,
            message=f"{', '.join(_named(assembly, boards))} hold each other: none of them moves straight out along any "
            "axis, or square to the lid; open a dado or groove at the end from which its guest is to come",
            unit="",
        )
        for boards in order.stuck
    )


def _named(assembly: Assembly, boards: Sequence[str]) -> list[str]:
    return [f"{assembly.board(board).label} ({assembly.board(board).name})" for board in boards]
