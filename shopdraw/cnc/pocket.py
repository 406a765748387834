"""Cuts as pockets from one of the two faces, where they can be that; everything else needs a second setting."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from shopdraw.shape.path import Path, arc_of, area, bounds, rectangle
from shopdraw.shape.region import Region, difference, region, sides_of, union
from shopdraw.wood.board import Board, Cut, Face, Shape

RELIEF = "relief"
"""The kind of a cut that only clears a corner for a round cutter."""
SLIGHT_MM = 1e-6
_QUARTER = math.tan(math.pi / 8)


@dataclass(frozen=True, slots=True)
class Pocket:
    """Wood to take away from one face, in the board's u and v.

    Attributes:
        cut: index of the cut in the board's shape.
        face: `Face.FACE` or `Face.BACK`.
        depth: from that face, mm.
        region: what is cut, not carried past the edges.
        through: all the way through the thickness.
        relief: it only clears another pocket's corner.
    """

    cut: int
    face: Face
    depth: float
    region: Region
    through: bool
    relief: bool = False


def pockets_of(board: Board) -> tuple[tuple[Pocket, ...], tuple[int, ...]]:
    """The cuts of a board as pockets, and the indices of those that aren't flat."""
    found: list[Pocket] = []
    others = []
    for index, cut in enumerate(board.shape.cuts):
        own = _pockets(board.shape, index, cut)
        if own:
            found.extend(replace(each, relief=cut.kind == RELIEF) for each in own)
        else:
            others.append(index)
    return tuple(found), tuple(others)


def _pockets(shape: Shape, index: int, cut: Cut) -> list[Pocket]:
    if cut.face is Face.TILTED:
        return []
    if cut.face in (Face.FACE, Face.BACK):
        if cut.start > SLIGHT_MM:
            return []
        return [_pocket(shape, index, cut.face, cut.depth, _without_islands(cut))]
    box = _box(cut.outline)
    if box is None:
        return []
    islands = [rounded_box(island) for island in cut.islands]
    return _cheeks(shape, index, cut, box, islands) if islands else _from_edge(shape, index, cut, box)


def _without_islands(cut: Cut) -> Region:
    """What a cut takes away in its plane; an island may stand on the outline's own edge."""
    taken = region(cut.outline)
    for island in cut.islands:
        taken = difference(taken, region(island))
    return taken


def _pocket(shape: Shape, index: int, face: Face, depth: float, paths: Region) -> Pocket:
    return Pocket(index, face, depth, paths, depth >= shape.thickness - SLIGHT_MM)


Box = tuple[float, float, float, float]


def _from_edge(shape: Shape, index: int, cut: Cut, box: Box) -> list[Pocket]:
    """An upright pocket in an edge or end that reaches a face is a pocket in that face."""
    plan = _plan(shape, cut, box[0], box[2])
    if box[3] >= -SLIGHT_MM:
        return [_pocket(shape, index, Face.FACE, -max(box[1], -shape.thickness), region(plan))]
    if box[1] <= -shape.thickness + SLIGHT_MM:
        return [_pocket(shape, index, Face.BACK, box[3] + shape.thickness, region(plan))]
    return []


def _cheeks(shape: Shape, index: int, cut: Cut, box: Box, islands: list[Box | None]) -> list[Pocket]:
    """A tenon or tongue: its cheeks are pockets from both faces, its width and length stand in the outline."""
    boxes = [island for island in islands if island is not None]
    whole = box[3] >= -SLIGHT_MM and box[1] <= -shape.thickness + SLIGHT_MM
    if len(boxes) < len(islands) or not whole or cut.start > SLIGHT_MM:
        return []
    low, high = boxes[0][1], boxes[0][3]
    if any(abs(b[1] - low) > SLIGHT_MM or abs(b[3] - high) > SLIGHT_MM for b in boxes):
        return []
    end = region(_plan(shape, cut, box[0], box[2]))
    standing: Region = ()
    for b in boxes:
        standing = union(standing, region(_plan(shape, cut, b[0], b[2])))
    found = []
    if -high > SLIGHT_MM:
        found.append(Pocket(index, Face.FACE, -high, end, through=False))
    if low + shape.thickness > SLIGHT_MM:
        found.append(Pocket(index, Face.BACK, low + shape.thickness, end, through=False))
    beside = difference(end, standing)
    if beside:
        found.append(Pocket(index, Face.FACE, shape.thickness, beside, through=True))
    return found


def tenon_edges(shape: Shape, cut: Cut) -> list[tuple[float, float]]:
    """Rounded tenons of a cut: the radius of each one's edges, and the wood that the flat part keeps there, mm³."""
    if cut.face not in (Face.FOOT, Face.HEAD, Face.NEAR, Face.FAR) or not _pockets(shape, 0, cut):
        return []
    found = []
    for island in cut.islands:
        box, radii = rounded_box(island), [arc_of(s.start, s.end, s.bulge).radius for s in sides_of(island) if s.bulge]
        if box is not None and radii:
            kept = (box[2] - box[0]) * (box[3] - box[1]) - area(island)
            found.append((max(radii), kept * cut.depth))
    return found


def _plan(shape: Shape, cut: Cut, low: float, high: float) -> Path:
    """What a prism from an edge or end covers in u and v, between two coordinates along that edge."""
    near, far = cut.start, cut.start + cut.depth
    match cut.face:
        case Face.NEAR:
            return rectangle(low, near, high, far)
        case Face.FAR:
            return rectangle(low, shape.width - far, high, shape.width - near)
        case Face.FOOT:
            return rectangle(near, low, far, high)
        case _:
            return rectangle(shape.length - far, low, shape.length - near, high)


def rounded_box(path: Path) -> Box | None:
    """An upright rectangle's corners, square or rounded; None for any other path."""
    if not any(corner.bulge for corner in path.corners):
        return _box(path)
    x0, y0, x1, y1 = box = bounds(path)
    for side in sides_of(path):
        if side.bulge:
            if abs(side.bulge - _QUARTER) > SLIGHT_MM and abs(side.bulge - 1.0) > SLIGHT_MM:
                return None
        elif not any(abs(a - b) < SLIGHT_MM and abs(c - b) < SLIGHT_MM for a, c, b in (
            (side.start[0], side.end[0], x0), (side.start[0], side.end[0], x1),
            (side.start[1], side.end[1], y0), (side.start[1], side.end[1], y1),
        )):  # fmt: skip
            return None
    return box


def _box(path: Path) -> Box | None:
    """An upright rectangle's corners; None for any other path."""
    if len(path.corners) != 4 or any(corner.bulge for corner in path.corners):
        return None
    x0, y0, x1, y1 = bounds(path)
    upright = all(
        min(abs(c.x - x0), abs(c.x - x1)) < SLIGHT_MM and min(abs(c.y - y0), abs(c.y - y1)) < SLIGHT_MM
        for c in path.corners
    )
    return (x0, y0, x1, y1) if upright else None
