"""Where a flat shape may lie beside others that lie already: every place at which none comes nearer than a gap.

Shapes are taken as straight-sided ones that hold the true ones and are a little larger, so that a place found here
keeps the gap for the true arcs, too. Only places come back from here, no outlines.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from shopdraw.shape.path import Path, Point, flattened

Box = tuple[float, float, float, float]
SLACK_MM = 0.25
"""How much larger than the true shape a straight-sided one may be."""
_CHORD_MM = 0.02
_EASE_MM = 1e-3
_MORE_MM = 0.02
_QUARTERS = 12
_HOLLOW = 0.02


@dataclass(frozen=True, slots=True)
class Blank:
    """A straight-sided shape whose box has its lower left at (0, 0): corners anticlockwise, mm."""

    corners: tuple[Point, ...]

    @property
    def size(self) -> tuple[float, float]:
        """Extents along x and y, mm."""
        return max(x for x, _ in self.corners), max(y for _, y in self.corners)

    @property
    def area(self) -> float:
        """Its area, mm²."""
        return float(Polygon(self.corners).area)

    def turned(self, quarters: int) -> Blank:
        """Turned anticlockwise by right angles, its box moved back to (0, 0)."""
        made = self
        for _ in range(quarters % 4):
            width = made.size[1]
            made = Blank(tuple((width - y, x) for x, y in made.corners))
        return made


@lru_cache(maxsize=1024)
def blank(path: Path) -> Blank:
    """A closed path as a straight-sided shape that holds it: its hull where it is hardly hollow.

    Its box is the path's own, moved to (0, 0).
    """
    true = Polygon(flattened(path, _CHORD_MM))
    x0, y0, x1, y1 = true.bounds
    hull = true.convex_hull
    if hull.area - true.area > _HOLLOW * hull.area:
        hull = true.buffer(SLACK_MM / 2, join_style="mitre").simplify(SLACK_MM / 2)
        if hull.geom_type != "Polygon":
            hull = true.convex_hull
    held = shapely.clip_by_rect(hull, x0, y0, x1, y1)
    ring = shapely.geometry.polygon.orient(held if held.geom_type == "Polygon" else true.convex_hull).exterior
    return Blank(tuple((float(x - x0), float(y - y0)) for x, y in list(ring.coords)[:-1]))


@dataclass(frozen=True, slots=True)
class Lying:
    """A shape that lies already, and the lower left corner of its box, mm."""

    blank: Blank
    at: Point


def first_place(
    room: Box, lying: Sequence[Lying], shape: Blank, gap: float, closed: Sequence[Point] = ()
) -> Point | None:
    """The place furthest to the left, then furthest down, at which a shape lies in a room and clear of others.

    Args:
        room: that it must keep to, mm.
        lying: what lies in it already.
        shape: what is to be laid.
        gap: kept from everything that lies there, mm.
        closed: strips across the room, from and to along x, in which nothing may lie, mm.
    Returns:
        The lower left corner of its box; None where there is no place.
    """
    length, width = shape.size
    x0, y0, x1, y1 = room
    if x1 - x0 < length - _EASE_MM or y1 - y0 < width - _EASE_MM:
        return None
    corners = shapely.box(x0 - _EASE_MM, y0 - _EASE_MM, x1 - length + _EASE_MM, y1 - width + _EASE_MM)
    taken = [shapely.affinity.translate(_no_fit(one.blank, shape, gap), *one.at) for one in lying]
    taken += [
        shapely.box(low - length + _EASE_MM, y0 - 1.0, high - _EASE_MM, y1 + 1.0) for low, high in closed
    ]
    free = corners.difference(shapely.union_all(taken)) if taken else corners
    points = shapely.get_coordinates(free)
    if not len(points):
        return None
    x, y = min((round(float(x), 3), round(float(y), 3)) for x, y in points)
    return min(max(x, x0), x1 - length), min(max(y, y0), y1 - width)


@lru_cache(maxsize=4096)
def _no_fit(fixed: Blank, moving: Blank, gap: float) -> BaseGeometry:
    """Where the moving shape's corner may not be, with the fixed one at (0, 0): sums of the one and the other mirrored.

    Two connected shapes meet where their boundaries do, or where one holds a point of the other: the sums of all pairs
    of sides, and each shape moved to a point of the other.
    """
    ours, others = np.array(fixed.corners), -np.array(moving.corners)
    a0, a1 = ours, np.roll(ours, -1, axis=0)
    b0, b1 = others, np.roll(others, -1, axis=0)
    starts = a0[:, None, :] + b0[None, :, :]
    along = (a1 - a0)[:, None, :] + np.zeros_like(starts)
    beside = (b1 - b0)[None, :, :] + np.zeros_like(starts)
    corners = [starts, starts + along, starts + along + beside, starts + beside, starts]
    rings = np.stack(corners, axis=2).reshape(-1, 5, 2)
    across = along[..., 0] * beside[..., 1] - along[..., 1] * beside[..., 0]
    pieces = shapely.polygons(rings[np.abs(across).reshape(-1) > 1e-9])
    whole = [Polygon(ours + others[0]), Polygon(others + ours[0]), *pieces]
    more = gap + _MORE_MM + gap * (1.0 - math.cos(math.pi / (4 * _QUARTERS)))
    grown: BaseGeometry = shapely.union_all(whole).buffer(more, quad_segs=_QUARTERS)
    return grown
