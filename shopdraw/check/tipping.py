"""Whether the piece tips in its worst pose: lid down, supports and drawers out, contents in them, a weight on the edge.

A screening by moments about the front foot line, never a certificate: floors, carpets, pushes and climbing children
are for the tests of the standard that covers the piece.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.check.figure import mm, opened
from shopdraw.check.subject import Subject
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import bounds
from shopdraw.trade.loads import figure, in_scope_of_tip_over_rule
from shopdraw.wood.assembly import Assembly, Motion
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import Box
from shopdraw.wood.solid import placed_solid
from shopdraw.wood.sweep import moved_frame
from shopdraw.wood.volume import bulk, mass_kg

_ON_FLOOR_MM = 0.01
_STORAGE_KINDS = ("chest", "free")
"""Kinds that may be sold as clothing storage; desks, bookcases and lecterns aren't."""
ANCHOR = (
    "fix it to the wall with two brackets, a screw at least 50.8 mm long into solid framing behind each, and say so in "
    "load.anchored; keep heavy things in the lowest drawers"
)


@dataclass(frozen=True, slots=True)
class Weight:
    """A weight, kg, and how far behind the front foot line it acts, mm; negative in front of it."""

    kg: float
    behind: float


def resting_moment(weights: Sequence[Weight]) -> float:
    """What keeps the piece standing, kg·mm about the front foot line; negative where it has tipped."""
    return sum(weight.kg * weight.behind for weight in weights)


def tipping_load(weights: Sequence[Weight], arm: float) -> float:
    """The weight, kg, that tips the piece when hung `arm` mm in front of the front foot line; 0 if it tips without."""
    return max(resting_moment(weights), 0.0) / arm


@dataclass(frozen=True, slots=True)
class Edge:
    """An edge that a person may lean on: what is opened, and how far it stands in front of the foot line, mm."""

    motion: Motion
    arm: float


@dataclass(frozen=True, slots=True)
class Pose:
    """The piece with everything open.

    Attributes:
        weights: of boards and of what is in the drawers.
        edges: opened ones in front of the feet, the furthest first.
        room_litres: enclosed room of all drawers, as the tip-over rule counts it.
        mass_kg: of the boards.
    """

    weights: tuple[Weight, ...]
    edges: tuple[Edge, ...]
    room_litres: float
    mass_kg: float


def tipping_findings(subject: Subject) -> Iterator[Finding]:
    """One finding for a piece that opens to the front: that it tips, or the weight that it takes."""
    pose = worst_pose(subject)
    if not pose.edges:
        return
    load = subject.design.load
    hung = figure("load", "child").value if load.hung is None else load.hung
    edge = pose.edges[0]
    takes = tipping_load(pose.weights, edge.arm)
    severity = Severity.NOTE if takes >= hung or load.anchored else Severity.CAUTION
    if takes <= 0.0 and not load.anchored:
        severity = Severity.MUST_FIX
    yield Finding(
        "tipping",
        severity,
        (edge.motion.id, *(board for board in edge.motion.boards[:1] if board != edge.motion.id)),
        _words(subject, pose, edge, takes, hung),
        takes,
        hung,
        unit="kg",
        basis=f"moments about the front foot line; weight: {figure('load', 'child').source.publication}",
    )


def worst_pose(subject: Subject) -> Pose:
    """The piece with lid, supports and drawers open as far as they go, and the drawers full."""
    assembly, load = subject.assembly, subject.design.load
    line = front_foot_line(assembly.boards)
    opened = {board: motion for motion in assembly.motions for board in motion.boards}
    weights = [_weight(board, opened.get(board.id), line) for board in assembly.boards]
    density = figure("load", "drawer").value if load.contents is None else load.contents
    edges, litres = [], 0.0
    for motion in assembly.motions:
        room = _room(assembly, motion)
        if room is not None:
            litres += _litres(room)
            middle = (room[1] + room[4]) / 2 + motion.direction[1] * motion.reach
            weights.append(Weight(_litres(room) * density / 1000.0, middle - line))
        if not motion.id.startswith("support."):
            edges.append(Edge(motion, line - _foremost(assembly, motion)))
    in_front = sorted((edge for edge in edges if edge.arm > 1.0), key=lambda edge: (-edge.arm, edge.motion.id))
    return Pose(tuple(weights), tuple(in_front), litres, sum(map(mass_kg, assembly.boards)))


def front_foot_line(boards: Sequence[Board]) -> float:
    """The foremost y at which the piece stands on the floor, mm."""
    floor, feet = math.inf, []
    for low, board in sorted(((_blank(board.frame, board)[2], board) for board in boards), key=lambda pair: pair[0]):
        if low > floor + _ON_FLOOR_MM:
            break
        corners = placed_solid(board).to_mesh().vert_properties.tolist()
        feet += corners
        floor = min(floor, *(z for _, _, z, *_ in corners))
    return float(min(y for _, y, z, *_ in feet if z < floor + _ON_FLOOR_MM))


def _blank(frame: Frame, board: Board) -> Box:
    """The upright box round a board's blank: what its wood can't reach beyond, and mostly does reach."""
    u0, v0, u1, v1 = bounds(board.shape.outline)
    corners = [frame.point((u, v, w)) for u in (u0, u1) for v in (v0, v1) for w in (0.0, -board.thickness)]
    x, y, z = zip(*corners, strict=True)
    return (min(x), min(y), min(z), max(x), max(y), max(z))


def _weight(board: Board, motion: Motion | None, line: float) -> Weight:
    frame = board.frame if motion is None else moved_frame(board.frame, motion, motion.reach)
    return Weight(mass_kg(board), frame.point(bulk(board.shape).centre)[1] - line)


def _foremost(assembly: Assembly, motion: Motion) -> float:
    boards = (assembly.board(name) for name in motion.boards)
    return min(_blank(moved_frame(board.frame, motion, motion.reach), board)[1] for board in boards)


def _room(assembly: Assembly, motion: Motion) -> Box | None:
    """The room inside a drawer's box, shut; None for what isn't a drawer."""
    names = {end: f"{motion.id}.{end}" for end in ("side-left", "side-right", "front", "back", "bottom")}
    if motion.kind != "slide" or not all(map(assembly.has, names.values())):
        return None
    left, right, front, back, bottom = (
        _blank(assembly.board(name).frame, assembly.board(name)) for name in names.values()
    )
    return (left[3], front[4], bottom[5], right[0], back[1], max(left[5], bottom[5]))


def _litres(room: Box) -> float:
    """A drawer's room as the tip-over rule counts it: the inner height less 1/8 in."""
    height = max(room[5] - room[2] - figure("scope", "obstruction").value, 0.0)
    return max(room[3] - room[0], 0.0) * max(room[4] - room[1], 0.0) * height * 1e-6


def _words(subject: Subject, pose: Pose, edge: Edge, takes: float, hung: float) -> str:
    start = "with everything open and the drawers full "
    where = f"{opened(edge.motion.id)}'s edge, {mm(edge.arm, 0)} mm in front of the foot line"
    if takes <= 0.0:
        told = f"{start}the piece tips over by itself"
    else:
        told = f"{start}{mm(takes, 1)} kg on {where} tip the piece; a weight of {mm(hung, 1)} kg is reckoned with"
    if subject.design.load.anchored:
        return f"{told}; it will be fixed to a wall, and stands only with that"
    if takes < hung:
        told = f"{told}: {ANCHOR}"
    return f"{told}. {_standard(subject, pose)} A screening, not a test to that standard"


def _standard(subject: Subject, pose: Pose) -> str:
    scope = "the US rule for clothing storage (16 CFR 1261, ASTM F2057-23: from 685.8 mm tall, 13.6 kg and 90.6 dm³)"
    height = subject.assembly.height
    told = f"{mm(height, 0)} mm, {mm(pose.mass_kg, 1)} kg and {mm(pose.room_litres, 1)} dm³ here"
    if not in_scope_of_tip_over_rule(height, pose.mass_kg, pose.room_litres):
        return f"It is outside {scope}: {told}."
    if subject.assembly.kind in _STORAGE_KINDS:
        return f"Sold as clothing storage it must pass {scope}, tested on a block that imitates carpet: {told}."
    return f"Its sizes are those of {scope}, which doesn't count desks: {told}."
