"""Cutting planes that are there for joints which no other section shows: dovetails along their tails, back frames.

Each shows only the boards that it is there for.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.shape.frame import Vec3
from shopdraw.sheet.extent import extent, whole
from shopdraw.sheet.joint_body import corners_of, is_cut
from shopdraw.sheet.planes import DOWN, OFF_FACE_MM, CuttingPlane, off_faces
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE
from shopdraw.view.section import Plane
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board

DRAWER_JOINTS = (("drawer.front", "drawer.side"), ("drawer.box-front", "drawer.side"), ("drawer.back", "drawer.side"))
"""What meets at a drawer's corners, either way round."""
FURTHER = "PRU"
"""Letters for drawers whose joints are others than those of the topmost one."""


def joint_planes(assembly: Assembly, planes: Sequence[CuttingPlane]) -> Iterator[CuttingPlane]:
    """Planes for those joints of a piece that its other sections don't show, or not along their tails.

    N–N through dividers that end before B–B, P–P and further ones level through drawers that are joined in another way
    than the topmost one, T–T through the top's dovetails, V–V through the back's frame, W–W along drawers' dovetails.

    Args:
        planes: that the piece has of itself.
    """
    yield from _top_tails(assembly)
    yield from _back_frame(assembly)
    yield from _short_dividers(assembly, planes)
    yield from _drawer_tails(assembly)
    yield from _other_drawers(assembly, planes)


def _top_tails(assembly: Assembly) -> Iterator[CuttingPlane]:
    """Through the middle of the boards that carry the tails: level through the top, or plumb through the right side."""
    held = [j for j in assembly.joints if j.kind == "dovetail" and "top" in (j.host, j.guest) and assembly.has(j.guest)]
    if not held:
        return
    tails = extent([assembly.board(held[-1].guest)])
    shown = [b for b in assembly.boards if b.member in ("top", "side")]
    shows = tuple(b.id for b in shown)
    if held[-1].guest == "top":
        z = off_faces((tails.z0 + tails.z1) / 2, shown, 2)
        yield CuttingPlane("T", Plane(PLAN, (0.0, 0.0, z)), "section.B", ((0.0, z), (assembly.width, z)), DOWN, shows)
    else:
        yield _plumb("T", assembly, off_faces((tails.x0 + tails.x1) / 2, shown, 0), shows)


def _plumb(letter: str, assembly: Assembly, x: float, shows: tuple[str, ...]) -> CuttingPlane:
    """Front to back, looked at to the left; it is drawn on the plan, which has more room than the front."""
    box = whole(assembly)
    return CuttingPlane(
        letter, Plane(RIGHT_SIDE, (x, 0.0, 0.0)), "plan", ((x, box.y0), (x, box.y1)), (-1.0, 0.0), shows
    )


def _back_frame(assembly: Assembly) -> Iterator[CuttingPlane]:
    """Through the middle of the back frame's thickness; looked at to the back."""
    boards = [b for b in assembly.boards if b.member in ("back.frame", "back.panel")]
    frame = [b for b in boards if b.member == "back.frame"]
    if not frame:
        return
    box, held = whole(assembly), extent(frame)
    y = off_faces((held.y0 + held.y1) / 2, boards, 1)
    shows = tuple(b.id for b in boards)
    yield CuttingPlane("V", Plane(FRONT, (0.0, y, 0.0)), "side", ((y, box.z0), (y, box.z1)), (1.0, 0.0), shows)


def _short_dividers(assembly: Assembly, planes: Sequence[CuttingPlane]) -> Iterator[CuttingPlane]:
    """Side to side through dividers that no other plane cuts so, and through what stands beside them."""
    dividers = [b for b in assembly.boards if b.member == "divider"]
    looking_back = [plane for plane in planes if plane.plane.direction == FRONT]
    cut = [extent([b]) for b in dividers]
    if not dividers or any(one.y0 < plane.plane.through[1] < one.y1 for one in cut for plane in looking_back):
        return
    held, box = extent(dividers), whole(assembly)
    near = [b for b in assembly.boards if (one := extent([b])).z0 < held.z1 and one.z1 > held.z0]
    y = off_faces((held.y0 + held.y1) / 2, near, 1)
    shows = tuple(b.id for b in near)
    yield CuttingPlane("N", Plane(FRONT, (0.0, y, 0.0)), "side", ((y, box.z0), (y, box.z1)), (1.0, 0.0), shows)


def _drawer_tails(assembly: Assembly) -> Iterator[CuttingPlane]:
    """Through the thickness of the leftmost drawers' left sides, along their tails."""
    tailed = [j for j in _corners(assembly) if j.kind == "dovetail"]
    sides = [board for joint in tailed for board in _sides(assembly, joint)]
    if not sides:
        return
    first = min(extent([side]).x0 for side in sides)
    cut = [side for side in sides if extent([side]).x0 < first + OFF_FACE_MM]
    box = extent(cut)
    drawers = {side.id.rpartition(".")[0] for side in cut}
    shown = [b for b in assembly.boards if b.id.rpartition(".")[0] in drawers]
    yield _plumb("W", assembly, off_faces((box.x0 + box.x1) / 2, shown, 0), tuple(b.id for b in shown))


def _other_drawers(assembly: Assembly, planes: Sequence[CuttingPlane]) -> Iterator[CuttingPlane]:
    """Level through the highest drawer of each further way of joining a drawer's corners."""
    waiting = [j for j in _corners(assembly) if j.kind not in ("dovetail", "butt")]
    shown = {_how(assembly, j) for j in waiting if any(is_cut(corners_of(assembly, j), plane) for plane in planes)}
    letters = iter(FURTHER)
    for joint in sorted(waiting, key=lambda j: (-_top(assembly, j), j.id)):
        if _how(assembly, joint) in shown or (letter := next(letters, "")) == "":
            continue
        drawer = joint.host.rpartition(".")[0]
        boards = [b for b in assembly.boards if b.id.rpartition(".")[0] == drawer]
        held, box = extent([b for b in boards if b.member == "drawer.side"]), whole(assembly)
        z = off_faces((held.z0 + held.z1) / 2, boards, 2)
        plane = Plane(PLAN, (0.0, 0.0, z))
        ends = (box.y0, z), (box.y1, z)
        made = CuttingPlane(letter, plane, "side", ends, DOWN, tuple(b.id for b in boards))
        shown |= {_how(assembly, j) for j in waiting if j.host.startswith(f"{drawer}.")}
        yield made


def _corners(assembly: Assembly) -> list[Joint]:
    """The joints at drawers' corners."""
    pairs = {frozenset(pair) for pair in DRAWER_JOINTS}
    return [
        joint
        for joint in assembly.joints
        if assembly.has(joint.host) and assembly.has(joint.guest) and _members(assembly, joint) in pairs
    ]


def _members(assembly: Assembly, joint: Joint) -> frozenset[str]:
    return frozenset((assembly.board(joint.host).member, assembly.board(joint.guest).member))


def _how(assembly: Assembly, joint: Joint) -> tuple[str, bool]:
    """How a corner is joined: the joint, and whether it is a rear corner."""
    return joint.kind, "drawer.back" in _members(assembly, joint)


def _sides(assembly: Assembly, joint: Joint) -> tuple[Board, ...]:
    held = (assembly.board(joint.host), assembly.board(joint.guest))
    return tuple(board for board in held if board.member == "drawer.side")


def _top(assembly: Assembly, joint: Joint) -> float:
    corners: Sequence[Vec3] = corners_of(assembly, joint)
    return round(max((corner[2] for corner in corners), default=0.0), 3)
