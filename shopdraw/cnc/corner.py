"""Corner wood: what the files ask for and a round cutter can't reach, named with its volume."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.cnc.cutter import RUN_OUT_MM, Cutter, straight
from shopdraw.cnc.pocket import tenon_edges
from shopdraw.cnc.run_out import run_out
from shopdraw.cnc.sunk import Sunk
from shopdraw.shape.path import Path, arc_of, rectangle, signed_area
from shopdraw.shape.reach import Left, Sweep, left_behind, unreached_mm2
from shopdraw.shape.region import Region, Side, difference, region, sides_of
from shopdraw.wood.board import Board, Face

CHISEL = "square by chisel"
_ROOM_MM = 60.0
"""Waste round a part in which a cutter runs; more than any diameter."""
_SAME = 1.03
"""Sharp corners leave wood by the square of the radius; a cutter that leaves more than that doesn't fit somewhere."""


@dataclass(frozen=True, slots=True)
class CornerWood:
    """Wood that stays in corners.

    Attributes:
        cuts: ids of the cuts that ask for it; empty for the outer edge.
        what: what is to be done.
        places: how many there are.
        cutter: what has left it.
        volume: mm³.
    """

    cuts: tuple[str, ...]
    what: str
    places: int
    cutter: str
    volume: float


@dataclass(frozen=True, slots=True)
class Reached:
    """Which cutters make a part, and what they leave.

    Attributes:
        sunk: for each pocket in order what stays in its corners.
        through: the largest cutter for the outer edge and the openings that leaves corners only; None without any.
        corners: hollow corners of outer edge and openings that stay.
        wood: all corner wood, named.
    """

    sunk: tuple[Left, ...]
    through: Cutter | None
    corners: Left
    wood: tuple[CornerWood, ...]


def reached_by(
    board: Board, sunk: Sequence[tuple[Face, Sunk]], outline: Region, cut_through: Sequence[int], job: Sequence[Cutter]
) -> Reached:
    """Sweeps every cutter over what it may reach.

    Args:
        board: the part.
        sunk: its pockets with the faces that they are sunk into.
        outline: the board, with what goes through taken away.
        cut_through: indices of the cuts that go through.
        job: the cutters.
    """
    thickness = board.thickness
    own_cutters = {each: pocket_cutter(each, outline, tuple(job)) for _, each in sunk}
    cutters = [
        least_of([own_cutters[other] for side, other in sunk if side is face and other.depth == each.depth])
        for face, each in sunk
    ]
    sweeps = [
        _sweep(face, each, cutter, outline, thickness) for (face, each), cutter in zip(sunk, cutters, strict=True)
    ]
    free = _free(outline)
    edge = through_cutter(outline, tuple(job))
    sweeps += [Sweep(paths, edge.diameter / 2 if edge else 0.0, -thickness, 0.0) for paths in free]
    blank = region(rectangle(0.0, 0.0, board.length, board.width))
    left = left_behind(sweeps, blank)
    own, edges = left[: len(sunk)], left[len(sunk) :]
    corners = Left(sum(each.places for each in edges), sum(each.volume for each in edges))
    wood = [
        CornerWood(_ids(board, each.cuts), CHISEL, one.places, name_of(cutter), one.volume)
        for (_, each), one, cutter in zip(sunk, own, cutters, strict=True)
        if one.places
    ]
    if corners.places:
        wood.append(CornerWood(_ids(board, cut_through), CHISEL, corners.places, name_of(edge), corners.volume))
    for index, cut in enumerate(board.shape.cuts):
        for radius, volume in tenon_edges(board.shape, cut):
            words = f"round the tenon's four edges to a radius of {radius:g} mm, as its mortise's ends are"
            wood.append(CornerWood(_ids(board, (index,)), words, 4, "", volume))
    return Reached(own, edge, corners, tuple(wood))


@lru_cache(maxsize=4096)
def pocket_cutter(sunk: Sunk, outline: Region, job: tuple[Cutter, ...]) -> Cutter | None:
    """The largest cutter for a pocket that leaves corners only; None where none fits its width.

    Where its rounded corners are too tight for any, the largest that fits its width.
    """
    most = sunk.finishing or sunk.cutter
    if most is None:
        return None
    own = [c for c in straight(job) if c.diameter <= most.diameter + 1e-9 and (c.plunge or any(sunk.opens))]
    paths = _carried(sunk, outline)

    def share(cutter: Cutter) -> float:
        return unreached_mm2(paths, cutter.diameter / 2) / (cutter.diameter / 2) ** 2

    least = share(own[0]) * _SAME + 1e-3
    return next((cutter for cutter in reversed(own) if share(cutter) <= least), own[0])


def least_of(cutters: Sequence[Cutter | None]) -> Cutter | None:
    """The cutter of a layer: the least that one of its pockets needs; None where one of them takes none."""
    fitting = [cutter for cutter in cutters if cutter is not None]
    return min(fitting, key=lambda one: (one.diameter, one.id)) if len(fitting) == len(cutters) else None


def name_of(cutter: Cutter | None) -> str:
    """A cutter as the covering sheet names it."""
    return cutter.id if cutter is not None else "none fits"


@lru_cache(maxsize=2048)
def through_cutter(outline: Region, job: tuple[Cutter, ...]) -> Cutter | None:
    """The largest straight cutter that follows a part's outer edge and openings, sharp corners apart."""
    own = straight(job)
    if not own:
        return None
    if all(_is_round_enough(path) for path in outline):
        return own[-1]
    free = _free(outline)

    def share(cutter: Cutter) -> float:
        radius = cutter.diameter / 2
        return sum(unreached_mm2(paths, radius) for paths in free) / radius**2

    tightest = min((_hollow_radius(side) for path in outline for side in sides_of(path)), default=math.inf)
    fitting = [cutter for cutter in own if cutter.diameter / 2 <= tightest + 1e-6] or [own[0]]
    least = share(own[0]) * _SAME + 1e-3
    return next((cutter for cutter in reversed(fitting) if share(cutter) <= least), fitting[0])


def _hollow_radius(side: Side) -> float:
    """The radius of a hollow in an edge; infinite for what isn't one."""
    return arc_of(side.start, side.end, side.bulge).radius if side.bulge < 0 else math.inf


def _is_round_enough(path: Path) -> bool:
    """An outer edge without hollows takes any cutter."""
    if signed_area(path) < 0:
        return False
    sides = sides_of(path)
    for i, side in enumerate(sides):
        turn = (side.heading() - sides[i - 1].heading(at_end=True) + math.pi) % (2 * math.pi) - math.pi
        if side.bulge < 0 or turn < -1e-6:
            return False
    return True


@lru_cache(maxsize=2048)
def _free(outline: Region) -> tuple[Region, ...]:
    """Where the cutter runs that cuts through: in the waste round the part, and inside each opening."""
    outer = next(path for path in outline if signed_area(path) > 0)
    xs, ys = [c.x for c in outer.corners], [c.y for c in outer.corners]
    waste = rectangle(min(xs) - _ROOM_MM, min(ys) - _ROOM_MM, max(xs) + _ROOM_MM, max(ys) + _ROOM_MM)
    openings = [region(path.anticlockwise()) for path in outline if signed_area(path) < 0]
    return (difference(region(waste), region(outer)), *openings)


def _sweep(face: Face, sunk: Sunk, cutter: Cutter | None, outline: Region, thickness: float) -> Sweep:
    radius = cutter.diameter / 2 if cutter else 0.0
    low, high = (-sunk.depth, 0.0) if face is Face.FACE else (-thickness, sunk.depth - thickness)
    return Sweep(_carried(sunk, outline), radius, low, high)


def _carried(sunk: Sunk, outline: Region) -> Region:
    """A pocket with its open sides run out, as its file has it."""
    outer, *islands = sunk.paths
    carried, _ = run_out(outer, sunk.opens, run_radius(sunk) + RUN_OUT_MM, outline)
    return (carried, *islands)


def run_radius(sunk: Sunk) -> float:
    """The radius by which a pocket runs past the edge; where nothing fits, the least that there could be."""
    return sunk.cutter.diameter / 2 if sunk.cutter is not None else min(sunk.width, 1e3) / 2


def _ids(board: Board, indices: Sequence[int]) -> tuple[str, ...]:
    return tuple(
        board.cut_ids[i] if i < len(board.cut_ids) else f"{board.shape.cuts[i].kind}:{board.id}:{i}" for i in indices
    )
