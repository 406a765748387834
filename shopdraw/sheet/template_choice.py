"""Which boards every package has templates of, besides the side panels: what is marked out sooner than measured."""

from __future__ import annotations

from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face
from shopdraw.wood.part import parts

SIDE, PARTITION, CAP = "side", "partition", "lid.cap"
_PROFILED = ("moulding", "rabbet")
"""Cuts that give a drawer's front a profile."""


def full_boards(assembly: Assembly) -> tuple[Board, ...]:
    """Boards with a template of their face, in the piece's order.

    Both side panels; one of each part that is shaped (plinth, feet, brackets), carries tails or pins on its face, or
    grooves for partitions.
    """
    grooved = {
        joint.host
        for joint in assembly.joints
        if any(_member(assembly, guest) == PARTITION for guest in (joint.guest, *joint.guest_boards))
        and _member(assembly, joint.host) not in (PARTITION, "")
    }
    firsts = {part.id for part in parts(assembly.boards)}
    return tuple(
        board
        for board in assembly.boards
        if board.member == SIDE
        or board.id in grooved
        or (board.id in firsts and (shaped(board) or _has_tails(board)))
    )


def profiled_boards(assembly: Assembly) -> tuple[Board, ...]:
    """One of each drawer front that is lipped or moulded, by what its end shows."""
    found: dict[object, Board] = {}
    for board in assembly.boards:
        kinds = {cut.kind for cut in board.shape.cuts}
        if board.member.endswith("drawer.front") and kinds & set(_PROFILED):
            look = round(board.width, 3), round(board.thickness, 3), board.stock, frozenset(kinds)
            found.setdefault(look, board)
    return tuple(found.values())


def capped_boards(assembly: Assembly) -> tuple[Board, ...]:
    """The breadboard ends that are let on to a tongue: a jig guides the router in their edges."""
    return tuple(
        board
        for board in assembly.boards
        if board.member == CAP and any(cut.face in (Face.NEAR, Face.FAR) for cut in board.shape.cuts)
    )


def shaped(board: Board) -> bool:
    """Whether a board's outline is anything but a rectangle."""
    corners = board.shape.outline.corners
    if len(corners) != 4 or any(corner.bulge for corner in corners):
        return True
    return any(abs(a.x - b.x) > 1e-6 and abs(a.y - b.y) > 1e-6 for a, b in board.shape.outline.pairs())


def _has_tails(board: Board) -> bool:
    return any("dovetail" in cut.kind and cut.face in (Face.FACE, Face.BACK) for cut in board.shape.cuts)


def _member(assembly: Assembly, board: str) -> str:
    return assembly.board(board).member if assembly.has(board) else ""
