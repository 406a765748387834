"""Pockets of one depth joined to one, trimmed to the board, with the cutter that fits them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.cnc.cutter import Cutter, largest_for
from shopdraw.cnc.layer import SAME_DEPTH_MM, distinct
from shopdraw.cnc.pocket import Pocket
from shopdraw.cnc.run_out import are_open, open_sides
from shopdraw.shape.path import Corner, Path, Point, arc_of, bounds, signed_area
from shopdraw.shape.region import Region, Side, inside, intersection, region_area, sides_of, union
from shopdraw.wood.board import Face

_SLIGHT_MM2 = 1e-6
_NEAR_MM = 1e-4
_SHORTEST_MM = 0.05
"""Of a side of an outline."""


@dataclass(frozen=True, slots=True)
class Sunk:
    """Pockets of one depth from one face that meet, joined, in the board's u and v.

    Attributes:
        depth: mm.
        paths: the outer edge, then wood that stays standing inside; trimmed to the board.
        opens: for each side of the outer edge, whether it lies on the board's edge.
        cuts: indices of the cuts that make it.
        width: between the walls of its narrowest pocket, mm; infinite where that is open to one side.
        radius: of its tightest rounded corner, or None.
        cutter: the largest of the job that fits its width, or None where none does.
        finishing: the largest that makes its rounded corners too, or None.
    """

    depth: float
    paths: Region
    opens: tuple[bool, ...]
    cuts: tuple[int, ...]
    width: float
    radius: float | None
    cutter: Cutter | None
    finishing: Cutter | None


def sunk_from(
    face: Face, pockets: Sequence[Pocket], outline: Region, cutters: Sequence[Cutter]
) -> tuple[Sunk, ...]:
    """What is sunk into a face, shallowest first.

    Args:
        face: `Face.FACE` or `Face.BACK`.
        pockets: all of the board's; those that go through or start from the other face are left out.
        outline: the board, with what goes through taken away.
        cutters: of the job.
    """
    own = [pocket for pocket in pockets if pocket.face is face and not pocket.through]
    # openings stay inside a pocket: they are air there, and nothing that a cutter must go round
    board = tuple(path for path in outline if signed_area(path) > 0)
    found: list[Sunk] = []
    for depth in sorted(distinct(pocket.depth for pocket in own)):
        alike = [pocket for pocket in own if abs(pocket.depth - depth) <= SAME_DEPTH_MM]
        for near in _touching(alike):
            joined: Region = ()
            for pocket in near:
                joined = union(joined, pocket.region)
            found.extend(_sunk(depth, group, near, outline, cutters) for group in apart(intersection(joined, board)))
    return tuple(found)


def _sunk(
    depth: float, group: Region, alike: Sequence[Pocket], outline: Region, cutters: Sequence[Cutter]
) -> Sunk:
    group = (_parted(group[0], outline), *group[1:])
    opens = open_sides(group[0], outline)
    cuts, widths = [], []
    for pocket in alike:
        pieces = apart(intersection(pocket.region, group))
        if sum(map(region_area, pieces)) > _SLIGHT_MM2:
            cuts.append(pocket.cut)
            if not pocket.relief:
                widths += [_width(piece[0], open_sides(piece[0], outline)) for piece in pieces]
    width, radius = min(widths, default=math.inf), _tightest(group)
    # a pocket without an open side is entered from above
    able = [cutter for cutter in cutters if cutter.plunge or any(opens)]
    return Sunk(
        depth=depth,
        paths=group,
        opens=opens,
        cuts=tuple(dict.fromkeys(cuts)),
        width=width,
        radius=radius,
        cutter=largest_for(width, able),
        finishing=largest_for(width, able, radius),
    )


def _parted(path: Path, outline: Region) -> Path:
    """A pocket's edge with a corner where a side leaves the board's edge, so that each side is open or isn't."""
    found: list[Corner] = []
    ends = [(corner.x, corner.y) for own in outline for corner in own.corners]
    for side in sides_of(path):
        places = [] if side.bulge else sorted(place for end in ends if (place := _along(side, end)) is not None)
        points = [side.start, *(_at(side, place) for place in places)]
        parts = [Side(a, b, 0.0) for a, b in pairwise((*points, side.end))] if places else [side]
        mixed = places and len(set(are_open(parts, outline))) > 1
        found += [Corner(*part.start, part.bulge) for part in (parts if mixed else [side])]
    return Path(tuple(found))


def _along(side: Side, point: Point) -> float | None:
    """Where on a straight side a point lies, as a share of it; None beside it or at its ends."""
    (x0, y0), (x1, y1) = side.start, side.end
    length = math.dist(side.start, side.end)
    place = ((point[0] - x0) * (x1 - x0) + (point[1] - y0) * (y1 - y0)) / length**2
    aside = abs((point[0] - x0) * (y1 - y0) - (point[1] - y0) * (x1 - x0)) / length
    return place if aside < _NEAR_MM and _SHORTEST_MM < place * length < length - _SHORTEST_MM else None


def _at(side: Side, place: float) -> Point:
    (x0, y0), (x1, y1) = side.start, side.end
    return x0 + (x1 - x0) * place, y0 + (y1 - y0) * place


def _touching(pockets: Sequence[Pocket]) -> list[list[Pocket]]:
    """Pockets in groups whose boxes meet, in order of the first of each; those of two groups can't touch."""
    groups: list[list[Pocket]] = []
    for pocket in pockets:
        box = _box_of(pocket)
        meeting = [group for group in groups if any(_meet(box, _box_of(other)) for other in group)]
        rest = [group for group in groups if group not in meeting]
        joined = [*(one for group in meeting for one in group), pocket]
        at = groups.index(meeting[0]) if meeting else len(groups)
        groups = [*rest[:at], joined, *rest[at:]]
    return groups


_Box = tuple[float, float, float, float]


def _box_of(pocket: Pocket) -> _Box:
    boxes = [bounds(path) for path in pocket.region]
    return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)


def _meet(one: _Box, two: _Box) -> bool:
    near = 1e-3
    return (
        one[0] <= two[2] + near and two[0] <= one[2] + near and one[1] <= two[3] + near and two[1] <= one[3] + near
    )


def apart(paths: Region) -> list[Region]:
    """Each outer path with the islands inside it."""
    outer = [path for path in paths if signed_area(path) > 0]
    return [
        (path, *(hole for hole in paths if signed_area(hole) < 0 and inside((path,), sides_of(hole)[0].middle())))
        for path in outer
    ]


def _width(path: Path, opens: Sequence[bool]) -> float:
    """Between a pocket's walls: the lesser of its extents that aren't open to one side; infinite where both are."""
    x0, y0, x1, y1 = bounds(path)
    free_x = free_y = False
    for side, is_open in zip(sides_of(path), opens, strict=True):
        if is_open and not side.bulge:
            level = abs(side.end[1] - side.start[1]) <= abs(side.end[0] - side.start[0])
            long = math.dist(side.start, side.end) > 0.9 * ((x1 - x0) if level else (y1 - y0))
            free_y |= level and long
            free_x |= not level and long
    return min(math.inf if free_x else x1 - x0, math.inf if free_y else y1 - y0)


def _tightest(paths: Region) -> float | None:
    """The least radius of an inside corner."""
    radii = [
        arc_of(side.start, side.end, side.bulge).radius for path in paths for side in sides_of(path) if side.bulge > 0
    ]
    return min(radii, default=None)
