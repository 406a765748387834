"""The cutting planes of a set: where they stand, which way they are looked at, where they are drawn."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import Point
from shopdraw.sheet.extent import extent, faces_across, whole
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE, looking
from shopdraw.view.section import Plane
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

OFF_FACE_MM = 1.0
"""A plane never runs inside a face: it is moved by this."""


DOWN = (0.0, -1.0)
"""Arrows of planes that are looked at from above."""


@dataclass(frozen=True, slots=True)
class CuttingPlane:
    """A cutting plane.

    Attributes:
        letter: "A" for section A–A.
        plane: where it cuts and which way one looks.
        on: id of the view that it is drawn on.
        ends: where its line leaves what it cuts there, true-size mm.
        sight: unit direction of the arrows there.
        shows: ids of the boards that its section shows; none for all.
    """

    letter: str
    plane: Plane
    on: str
    ends: tuple[Point, Point]
    sight: Point
    shows: tuple[str, ...] = ()

    @property
    def view(self) -> str:
        """Id of its section."""
        return f"section.{self.letter}"

    @property
    def title(self) -> str:
        """Of its section; one that cuts nothing is a view."""
        if self.letter == "L":
            return "View L, lid open" if self.sight == DOWN else "View L"
        return f"Section {self.letter}–{self.letter}"


def cutting_planes(assembly: Assembly) -> tuple[CuttingPlane, ...]:
    """The planes of a piece by letter: front to back, side to side, through the topmost drawer, across the lid,
    through the plinth, through compartments and their small drawers, through a frame or a shelf, along the lid.
    """
    planes = [plane_a(assembly), plane_b(assembly)]
    if any(opening.use == "drawer" for opening in assembly.openings):
        planes.append(plane_c(assembly))
    if assembly.slant is not None and assembly.has("lid"):
        planes.append(plane_d(assembly))
    if assembly.has("plinth.front"):
        planes.append(plane_e(assembly))
    if any(board.member == "partition" for board in assembly.boards):
        planes.append(plane_f(assembly))
    if any(board.member in IN_DADOS for board in assembly.boards):
        planes.append(plane_g(assembly))
    if assembly.slant is not None and any(board.member == "lid.cap" for board in assembly.boards):
        planes.append(plane_h(assembly))
    if any(board.member == "face" for board in assembly.boards):
        planes.append(plane_j(assembly))
    upper = _upper_small_drawers(assembly)
    if upper:
        planes.append(plane_k(assembly, upper))
    if assembly.slant is not None and assembly.has("lid"):
        planes.append(plane_l(assembly))
    return tuple(planes)


def plane_a(assembly: Assembly) -> CuttingPlane:
    """Front to back at mid width, moved to the middle of the next bay where an upright, a kicker or a knob stands.

    Looked at to the left, so that it lies like the right side view.
    """
    box = whole(assembly)
    x = _clear_of(assembly.width / 2, [b for b in assembly.boards if _stands(b)], 0)
    return CuttingPlane("A", Plane(RIGHT_SIDE, (x, 0.0, 0.0)), "front", ((x, box.z0), (x, box.z1)), (-1.0, 0.0))


def plane_b(assembly: Assembly) -> CuttingPlane:
    """Side to side through the middle of the drawers' sides, or of the case, and of what compartments stand there.

    Where the top of a slant begins behind that, the plane moves back into it, so that it shows how the top is held.
    Looked at to the back.
    """
    box = whole(assembly)
    cut = [[b for b in assembly.boards if b.member == member] for member in ("drawer.side", "partition")]
    held = [extent(boards) for boards in cut if boards]
    low, high = max((one.y0 for one in held), default=0.0), min((one.y1 for one in held), default=assembly.depth)
    middle = (low + high) / 2 if low < high else assembly.depth / 2
    if assembly.has("top"):
        top = extent([assembly.board("top")])
        inside = top.y0 + (top.y1 - top.y0) / 4
        middle = inside if middle < inside < (high if low < high else assembly.depth) else middle
    y = off_faces(middle, assembly.boards, 1)
    return CuttingPlane("B", Plane(FRONT, (0.0, y, 0.0)), "side", ((y, box.z0), (y, box.z1)), (1.0, 0.0))


def plane_c(assembly: Assembly) -> CuttingPlane:
    """Level through the middle of the topmost drawer's opening, and so through the supports; looked at from above."""
    box = whole(assembly)
    drawers = [opening for opening in assembly.openings if opening.use == "drawer"]
    top = max(drawers, key=lambda opening: opening.bottom)
    z = off_faces(top.bottom + top.height / 2, assembly.boards, 2)
    return CuttingPlane("C", Plane(PLAN, (0.0, 0.0, z)), "side", ((box.y0, z), (box.y1, z)), (0.0, -1.0))


def plane_d(assembly: Assembly) -> CuttingPlane:
    """Across the shut lid, square to its length, at three quarters of it from its pin; looked at up the slope.

    Below a lid that is hinged at its upper edge it runs through the stops that this lies on, where it has any.
    """
    slant = assembly.slant
    assert slant is not None
    c, s = math.cos(math.radians(slant.angle_from_level_deg)), math.sin(math.radians(slant.angle_from_level_deg))
    along, thick = 0.75 * slant.lid_length_mm, slant.lid_thickness_mm
    pin_y, pin_z = slant.hinge_pin_mm
    if slant.hinge_edge == "upper":
        stops = [corner for b in assembly.boards if b.member == "stop" for corner in _corners(b)]
        places = [(pin_y - y) * c + (pin_z - z) * s for _, y, z in stops]
        along = -((min(places) + max(places)) / 2 if places else along)
    at = pin_y + along * c, pin_z + along * s
    # The pin lies in the lid's inner face, or in its reading face where it is hinged above.
    above, below = (thick, thick / 2) if slant.hinge_edge == "lower" else (thick / 2, 1.5 * thick)
    ends = (at[0] - above * s, at[1] + above * c), (at[0] + below * s, at[1] - below * c)
    plane = Plane(looking((0.0, c, s), (0.0, -s, c)), (0.0, *at))
    return CuttingPlane("D", plane, "section.A", ends, (c, s))


def _corners(board: Board) -> list[Vec3]:
    u0, v0, u1, v1 = board.shape.box
    return [board.frame.point((u, v, w)) for u in (u0, u1) for v in (v0, v1) for w in (-board.shape.thickness, 0.0)]


def plane_e(assembly: Assembly) -> CuttingPlane:
    """Level through the middle of the plinth's height; looked at from above."""
    box, plinth = whole(assembly), extent([assembly.board("plinth.front")])
    z = off_faces((plinth.z0 + plinth.z1) / 2, assembly.boards, 2)
    return CuttingPlane("E", Plane(PLAN, (0.0, 0.0, z)), "side", ((box.y0, z), (box.y1, z)), (0.0, -1.0))


def plane_f(assembly: Assembly) -> CuttingPlane:
    """Level through compartments: the middle of their lowest small drawers, or below their middle; from above."""
    partitions = extent([b for b in assembly.boards if b.member == "partition"])
    drawers = [b for b in assembly.boards if b.member == "compartment.drawer.side"]
    low = min((extent([b]) for b in drawers), key=lambda one: one.z0, default=None)
    at = (low.z0 + low.z1) / 2 if low is not None else partitions.z0 + 0.4 * (partitions.z1 - partitions.z0)
    z, box = off_faces(at, assembly.boards, 2), whole(assembly)
    return CuttingPlane("F", Plane(PLAN, (0.0, 0.0, z)), "front", ((box.x0, z), (box.x1, z)), (0.0, -1.0))


def plane_g(assembly: Assembly) -> CuttingPlane:
    """Level through the middle of the uppermost frame, or else of a fixed shelf or the bottom: how they are housed."""
    box = whole(assembly)
    housed = next(held for member in IN_DADOS if (held := [b for b in assembly.boards if b.member == member]))
    top = max((extent([b]) for b in housed), key=lambda one: one.z1)
    z = off_faces((top.z0 + top.z1) / 2, assembly.boards, 2)
    return CuttingPlane("G", Plane(PLAN, (0.0, 0.0, z)), "side", ((box.y0, z), (box.y1, z)), (0.0, -1.0))


def plane_h(assembly: Assembly) -> CuttingPlane:
    """Through the tongues of the shut lid's ends, along it; looked at square to its outer face."""
    return _along_lid("H", assembly, 0.5, 0.0)


def plane_j(assembly: Assembly) -> CuttingPlane:
    """Through the middle of the face frame's thickness; looked at to the back."""
    box, face = whole(assembly), extent([b for b in assembly.boards if b.member == "face"])
    y = off_faces((face.y0 + face.y1) / 2, assembly.boards, 1)
    return CuttingPlane("J", Plane(FRONT, (0.0, y, 0.0)), "side", ((y, box.z0), (y, box.z1)), (1.0, 0.0))


def plane_k(assembly: Assembly, upper: Sequence[Board]) -> CuttingPlane:
    """Level through the uppermost row of small drawers, where F–F runs through another; from above."""
    row = extent(upper)
    z = off_faces((row.z0 + row.z1) / 2, assembly.boards, 2)
    ends = (row.y0, z), (row.y1 - WITHIN_MM, z)
    return CuttingPlane("K", Plane(PLAN, (0.0, 0.0, z)), "section.A", ends, (0.0, -1.0))


def _upper_small_drawers(assembly: Assembly) -> tuple[Board, ...]:
    """Sides of the small drawers that stand highest, none where they stand in the row of the lowest ones."""
    sides = [(extent([b]), b) for b in assembly.boards if b.member == "compartment.drawer.side"]
    if not sides:
        return ()
    lowest, highest = min(sides, key=lambda item: item[0].z0)[0], max(sides, key=lambda item: item[0].z0)[0]
    return tuple(b for box, b in sides if box.z0 > lowest.z1 and abs(box.z0 - highest.z0) < OFF_FACE_MM)


def plane_l(assembly: Assembly) -> CuttingPlane:
    """Square to the lid: it cuts nothing. A lid that falls open is seen as it lies then, its writing face up.

    One that is hinged above is seen as it lies shut, its reading face up.
    """
    slant = assembly.slant
    assert slant is not None
    if slant.hinge_edge == "upper":
        return _along_lid("L", assembly, 1.0, BEFORE_LID_MM)
    turn = math.radians(slant.angle_from_level_deg)
    c, s = math.cos(turn), math.sin(turn)
    pin_y, pin_z = slant.hinge_pin_mm
    over = OVER_LID_SHARE * slant.lid_length_mm
    z = pin_z + over
    ends = (pin_y - slant.lid_length_mm - BEYOND_OPEN_MM, z), (pin_y - BEFORE_PIN_MM, z)
    # The boards lie shut: one looks at the writing face from inside, its free edge down.
    plane = Plane(looking((0.0, -s, c), (0.0, -c, -s)), (0.0, pin_y + over * s, pin_z - over * c))
    return CuttingPlane("L", plane, "section.A", ends, DOWN)


def _along_lid(letter: str, assembly: Assembly, share: float, before: float) -> CuttingPlane:
    """A plane parallel to the shut lid; looked at square to its outer face.

    Args:
        letter: of the plane.
        assembly: a piece with a lid.
        share: of the lid's thickness, from its inner face on.
        before: how far out from there, mm.
    """
    assert assembly.slant is not None
    turn = math.radians(assembly.slant.angle_from_level_deg)
    c, s = math.cos(turn), math.sin(turn)
    corners = _corners(assembly.board("lid"))
    out = [-s * y + c * z for _, y, z in corners]
    along = [c * y + s * z for _, y, z in corners]
    level = min(out) + share * (max(out) - min(out)) + before
    low, high = min(along) - BEYOND_MM, max(along) + BEYOND_MM
    ends = (c * low - s * level, s * low + c * level), (c * high - s * level, s * high + c * level)
    plane = Plane(looking((0.0, s, -c), (0.0, c, s)), (0.0, *ends[0]))
    return CuttingPlane(letter, plane, "section.A", ends, (s, -c))


WITHIN_MM = 40.0
"""Plane K ends before the compartments' back: its arrow stands inside the case, off the rows beside it."""
BEYOND_MM = 2.0
"""How far the ends of a plane along the lid lie beyond it."""
BEYOND_OPEN_MM = 16.0
"""How far the end of view L's plane lies beyond the open lid: past the swing."""
BEFORE_PIN_MM = 160.0
"""How far before the pin its other end lies: with its arrow clear of the shut lid down to a scale of 1:16."""
OVER_LID_SHARE = 0.2
"""How far over the open lid view L is looked at from, as a share of its length."""
BEFORE_LID_MM = 60.0
"""How far before the lid view L is looked at from: beyond a ledge or a knob on it."""
IN_DADOS = ("frame.front", "shelf", "bottom")
"""What a level section shows housed in the sides, the most telling first."""

D_BELOW_MM = 60.0
"""How far behind the lid section D–D is drawn: it is there for the lid's ends only."""


def _stands(board: Board) -> bool:
    """An upright board: its faces look to the left and right, so that a plane inside it would cut it lengthwise."""
    return abs(board.frame.w[0]) > 0.99 or board.member == "kicker"


def _clear_of(at: float, boards: Sequence[Board], axis: int) -> float:
    """The place, or the middle of the next bay where a board stands there; ties go to the left."""
    spans = sorted((extent([b])[axis], extent([b])[axis + 3]) for b in boards)
    if not any(low - OFF_FACE_MM < at < high + OFF_FACE_MM for low, high in spans):
        return at
    ends = sorted({value for span in spans for value in span})
    bays = [
        (a + b) / 2
        for a, b in pairwise(ends)
        if b - a > 4 * OFF_FACE_MM and not any(low < (a + b) / 2 < high for low, high in spans)
    ]
    return min(bays, key=lambda bay: (round(abs(bay - at), 6), bay), default=at)


def off_faces(at: float, boards: Iterable[Board], axis: int) -> float:
    """A coordinate along an axis, moved until no board's face lies in it, be it the floor of a cut, mm."""
    faces = sorted({value for b in boards for value in faces_across(b.shape, b.frame, axis)})
    for _ in range(len(faces)):
        if not any(abs(face - at) < OFF_FACE_MM / 2 for face in faces):
            return at
        at += OFF_FACE_MM
    return at
