"""Boards that share wood, at rest and on their way; and whether each joint closes. Measured on solids.

Findings are made elsewhere: here are only volumes, positions and distances.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

import manifold3d
import numpy as np

from shopdraw.wood.assembly import Assembly, Body, Joint
from shopdraw.wood.board import Board
from shopdraw.wood.hole import filled
from shopdraw.wood.solid import placed_solid

SHARED_MM3 = 1.0
"""Boards may share this much: the chords of arcs and the last decimals of a double."""

_MANY = 4_000_000
"""Pairs of triangles above which a quicker look comes first."""

Box = tuple[float, float, float, float, float, float]
Wood = Callable[[Board], manifold3d.Manifold]
"""A board's wood in the world."""


@dataclass(frozen=True, slots=True)
class Closing:
    """How a joint closes.

    Attributes:
        gap: from the guest's end to the host's floor, mm; to the body's own end where the host is cut through;
            None where no guest was found in the body.
        relief: what the joint states, mm.
        through: the host has no floor there.
    """

    gap: float | None
    relief: float
    through: bool

    def closes(self, tolerance_mm: float = 1e-3) -> bool:
        """Whether the gap is the stated relief."""
        stated = 0.0 if self.through else self.relief
        return self.gap is not None and abs(self.gap - stated) <= tolerance_mm


def overlaps(
    boards: Sequence[Board], limit_mm3: float = SHARED_MM3, wood: Wood = placed_solid
) -> tuple[tuple[str, str, float], ...]:
    """Pairs of boards that share more wood than the limit.

    Args:
        wood: a board's wood in the world, where it isn't to be made from the board's shape.
    Returns:
        (id, id, shared volume in mm³) in the order of the boards.
    """
    found = []
    bodies = [wood(board) for board in boards]
    for i, j in _near_pairs([body.bounding_box() for body in bodies], limit_mm3):
        if bodies[i].num_tri() * bodies[j].num_tri() > _MANY and _clear(boards[i], boards[j], limit_mm3, wood):
            continue
        volume = float((bodies[i] ^ bodies[j]).volume())
        if volume > limit_mm3:
            found.append((boards[i].id, boards[j].id, volume))
    return tuple(found)


def _clear(one: Board, other: Board, limit_mm3: float, wood: Wood) -> bool:
    """Whether two boards share little even as if no hole had been drilled into them: then they do with their holes.

    A face with many round holes is cut into thousands of slivers, each of which would be tried against the others.
    """
    plain, also = filled(one), filled(other)
    if plain is one and also is other:
        return False
    return float((wood(plain) ^ wood(also)).volume()) <= limit_mm3


def shared_volume(one: Board, other: Board) -> float:
    """Wood that two boards share, mm³."""
    return float((placed_solid(one) ^ placed_solid(other)).volume())


def box_of(board: Board) -> Box:
    """The upright box round a board in the world: least x, y, z, greatest x, y, z, mm."""
    box: Box = placed_solid(board).bounding_box()
    return box


def box_volume(a: Box, b: Box) -> float:
    """What two upright boxes share, mm³."""
    x = min(a[3], b[3]) - max(a[0], b[0])
    y = min(a[4], b[4]) - max(a[1], b[1])
    z = min(a[5], b[5]) - max(a[2], b[2])
    return x * y * z if x > 0 and y > 0 and z > 0 else 0.0


def _near_pairs(boxes: Sequence[Box], limit_mm3: float) -> Iterator[tuple[int, int]]:
    """Pairs whose boxes share enough for their wood to share more than the limit."""
    if len(boxes) < 2:
        return
    table = np.array(boxes)
    both = np.minimum(table[:, None, 3:], table[None, :, 3:]) - np.maximum(table[:, None, :3], table[None, :, :3])
    volume = np.where((both > 0).all(axis=2), both.prod(axis=2), 0.0)
    for i, j in np.argwhere(np.triu(volume, 1) > limit_mm3):
        yield int(i), int(j)


def closing(assembly: Assembly, joint: Joint, wood: Wood = placed_solid) -> Closing | None:
    """How a joint closes, or None for one without a body.

    Rays run along the body from halfway down it: in the guest they come out at its end, in the host at the floor.
    Where another groove crosses the guest just there, they start further down. The worst of several rays is told.

    Args:
        wood: a board's wood in the world, where it isn't to be made from the board's shape.
    """
    if joint.body is None:
        return None
    host = wood(assembly.board(joint.host))
    names = joint.guest_boards or (joint.guest,)
    guests = [wood(assembly.board(name)) for name in names if assembly.has(name)]
    for share in _STARTS:
        worst: Closing | None = None
        for start, end in _rays(joint.body, share):
            reached = next((found for found in (_leaves_at(guest, start, end) for guest in guests) if found), None)
            if reached is None:
                continue
            floor = _enters_at(host, start, end)
            at = floor if floor is not None else joint.body.depth * (1.0 - share)
            here = Closing(at - reached, joint.relief, floor is None)
            if worst is None or _miss(here) > _miss(worst):
                worst = here
        if worst is not None:
            return worst
    return Closing(None, joint.relief, through=False)


def joint_closes(assembly: Assembly, joint: Joint) -> bool:
    """Whether the guest's end stands off the host's floor by the stated relief; True for a joint without a body."""
    found = closing(assembly, joint)
    return found is None or found.closes()


def _miss(found: Closing) -> float:
    return abs((found.gap or 0.0) - (0.0 if found.through else found.relief))


_BEYOND_MM = 1000.0
_STARTS = (0.5, 0.85)
"""How far down a body rays start, as a share of its depth."""


def _rays(body: Body, share: float) -> Iterator[tuple[tuple[float, float, float], tuple[float, float, float]]]:
    """Rays down the body from a share of its depth, one through the middle of each triangle of its outline."""
    points = np.array([(c.x, c.y) for c in body.outline.anticlockwise().corners])
    for corners in manifold3d.triangulate([points]):
        a, b = points[list(corners)].mean(axis=0)
        yield (
            body.frame.point((float(a), float(b), -body.depth * share)),
            body.frame.point((float(a), float(b), -body.depth * share - _BEYOND_MM)),
        )


def _leaves_at(
    wood: manifold3d.Manifold, start: tuple[float, float, float], end: tuple[float, float, float]
) -> float | None:
    """How far along the ray it leaves the wood that it starts in, mm; None where it starts in the open."""
    hit = _first_hit(wood, start, end)
    return hit[0] if hit and hit[1] > 0 else None


def _enters_at(
    wood: manifold3d.Manifold, start: tuple[float, float, float], end: tuple[float, float, float]
) -> float | None:
    """How far along the ray it first enters wood, mm; 0 where it starts in it; None where it meets none."""
    hit = _first_hit(wood, start, end)
    if hit is None:
        return None
    return hit[0] if hit[1] < 0 else 0.0


def _first_hit(
    wood: manifold3d.Manifold, start: tuple[float, float, float], end: tuple[float, float, float]
) -> tuple[float, float] | None:
    hits = wood.ray_cast(start, end)
    if not hits:
        return None
    way = [(b - a) / _BEYOND_MM for a, b in zip(start, end, strict=True)]
    facing = sum(n * d for n, d in zip(hits[0].normal, way, strict=True))
    return hits[0].distance * _BEYOND_MM, facing
