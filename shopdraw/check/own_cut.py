"""A person's own cuts: whether their boards are there, and whether they meet a joint or the wood at all."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.own_cut import own_id
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.shape.path import bounds
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board, Cut
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import Box, box_of
from shopdraw.wood.prism import cut_prism

EDGES = frozenset({"moulding", "chamfer", "bevel"})
"""Cuts that an own cut may run into: they belong to the board's own shape."""
LEAST_LEFT_MM = 3.0
"""Wood between an own cut and a joint, at least (common practice)."""
_NEAR_MM = 0.2


def own_cut_findings(subject: Subject) -> Iterator[Finding]:
    """For each own cut: its board is gone, it takes no wood, or it runs into a joint."""
    assembly = subject.assembly
    for key, table in subject.design.cut.items():
        address = f"cut.{key}"
        if not assembly.has(table.board):
            words = f"there is no board {table.board!r} in this piece: the cut for {table.reason!r} is lost"
            yield _lost(address, words)
            continue
        board = assembly.board(table.board)
        name = own_id(board.id, key)
        found = [cut for cut, cut_id in zip(board.shape.cuts, board.cut_ids, strict=True) if cut_id == name]
        if not found or not _takes_wood(board, found[0]):
            yield _lost(
                address,
                f"the cut for {table.reason!r} lies outside {board.name}, which is {mm(board.length)} × "
                f"{mm(board.width)} × {mm(board.thickness)} mm: it takes nothing",
            )
            continue
        yield from _meets(assembly, board, address, name, found[0])


def _lost(address: str, message: str) -> Finding:
    return Finding("own-cut-lost", Severity.CAUTION, (address,), message, unit="")


def _takes_wood(board: Board, cut: Cut) -> bool:
    low, high = _extent(board, cut)[:3], _extent(board, cut)[3:]
    u0, v0, u1, v1 = board.shape.box
    wood = ((u0, u1), (v0, v1), (-board.thickness, 0.0))
    return all(min(high[i], wood[i][1]) - max(low[i], wood[i][0]) > 1e-6 for i in range(3))


def _meets(assembly: Assembly, board: Board, address: str, name: str, own: Cut) -> Iterator[Finding]:
    here = _extent(board, own)
    met: dict[str, str] = {}
    for cut, cut_id, words in zip(board.shape.cuts, board.cut_ids, board.cut_for, strict=True):
        if cut_id == name or cut.kind in EDGES or not _near(here, _extent(board, cut), LEAST_LEFT_MM):
            continue
        met.setdefault(cut_id, f"the {cut.kind} for {words}" if words else f"a {cut.kind}")
    world = _world(board, here)
    for joint in assembly.joints:
        other = _other(joint, board.id)
        if joint.body is None and other and assembly.has(other) and _touching(world, assembly.board(other)):
            met.setdefault(joint.id, f"{assembly.board(other).name}, which lies there")
    if met:
        first = next(iter(met.values()))
        more = f" and {len(met) - 1} more" if len(met) > 1 else ""
        yield Finding(
            "own-cut-meets-joint",
            Severity.MUST_FIX,
            (address, board.id, *met),
            f"the own cut in {board.name} runs into {first}{more}; right would be {LEAST_LEFT_MM:g} mm of wood between "
            "them: move it, or make it smaller",
            basis="common practice",
            unit="",
        )


def _extent(board: Board, cut: Cut) -> Box:
    """A cut's least and greatest (u, v, w), mm."""
    prism = cut_prism(board.shape.outline, board.thickness, cut)
    a0, b0, a1, b1 = bounds(prism.outline)
    corners = [
        prism.frame.point((a, b, c)) for a in (a0, a1) for b in (b0, b1) for c in (prism.low, prism.high)
    ]
    low, high = (tuple(pick(p[i] for p in corners) for i in range(3)) for pick in (min, max))
    return (low[0], low[1], low[2], high[0], high[1], high[2])


def _world(board: Board, box: Box) -> Box:
    u0, v0, u1, v1 = board.shape.box
    low = (max(box[0], u0), max(box[1], v0), max(box[2], -board.thickness))
    high = (min(box[3], u1), min(box[4], v1), min(box[5], 0.0))
    corners = [
        board.frame.point((u, v, w)) for u in (low[0], high[0]) for v in (low[1], high[1]) for w in (low[2], high[2])
    ]
    least, most = (tuple(pick(p[i] for p in corners) for i in range(3)) for pick in (min, max))
    return (least[0], least[1], least[2], most[0], most[1], most[2])


def _near(one: Box, other: Box, within: float) -> bool:
    return all(min(one[i + 3], other[i + 3]) - max(one[i], other[i]) > -within for i in range(3))


def _touching(cut: Box, other: Board) -> bool:
    """Whether another board lies against this one just where the cut is."""
    there = box_of(other)
    inside = [min(cut[i + 3], there[i + 3]) - max(cut[i], there[i]) for i in range(3)]
    return all(over > -_NEAR_MM for over in inside) and sum(over > _NEAR_MM for over in inside) >= 2


def _other(joint: Joint, board: str) -> str:
    guests = joint.guest_boards or (joint.guest,)
    if joint.host == board:
        return guests[0]
    return joint.host if board in guests else ""
