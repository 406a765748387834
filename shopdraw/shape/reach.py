"""What a round cutter can't reach: flat regions swept by a disc, level by level.

Areas only; outlines never come back from here, so that arcs stay arcs everywhere else.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from shopdraw.shape.path import flattened
from shopdraw.shape.region import Region

_CHORD_MM = 1e-4
_EASE_MM = 1e-3
"""A disc this much smaller is swept, so that a groove of the cutter's own width isn't lost to rounding."""
_SEGMENTS = 48
_SLIVER_MM2 = 0.01


@dataclass(frozen=True, slots=True)
class Sweep:
    """Where a cutter may be, between two levels.

    Attributes:
        paths: the region that it must keep to.
        radius: of the cutter, mm; 0 where none fits, which reaches nothing.
        low, high: levels along the thickness, mm.
    """

    paths: Region
    radius: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Left:
    """Wood that a sweep should have taken and can't reach.

    Attributes:
        places: how many there are at one level, at most.
        volume: mm³.
    """

    places: int = 0
    volume: float = 0.0


def left_behind(sweeps: Sequence[Sweep], wood: Region) -> tuple[Left, ...]:
    """What stays of the wood that each sweep should take; what another one reaches is gone.

    Args:
        sweeps: all that is cut; wood that two of them miss counts for the first.
        wood: the blank.
    """
    blank = _shape(wood)
    reached = [_reached(sweep.paths, sweep.radius) for sweep in sweeps]
    missed = {i: _missed(sweep.paths, sweep.radius).intersection(blank) for i, sweep in enumerate(sweeps)}
    missed = {i: shape for i, shape in missed.items() if _pieces(shape)}
    levels = sorted({level for sweep in sweeps for level in (sweep.low, sweep.high)}) if missed else []
    places, volumes = [0] * len(sweeps), [0.0] * len(sweeps)
    for low, high in pairwise(levels):
        here = [i for i, sweep in enumerate(sweeps) if sweep.low < (low + high) / 2 < sweep.high]
        counted: BaseGeometry = Polygon()
        for i in here:
            if i not in missed:
                continue
            near = [reached[j] for j in here if j != i and reached[j].intersects(missed[i])]
            left = missed[i].difference(shapely.union_all([counted, *near]))
            pieces = _pieces(left)
            places[i] = max(places[i], len(pieces))
            volumes[i] += sum(pieces) * (high - low)
            counted = counted.union(left)
    return tuple(Left(count, volume) for count, volume in zip(places, volumes, strict=True))


def unreached_mm2(paths: Region, radius: float) -> float:
    """Area of a region that a disc kept inside it can't reach, mm²."""
    return sum(_pieces(_missed(paths, radius)))


def _pieces(shape: BaseGeometry) -> list[float]:
    return [area for area in (float(piece.area) for piece in shapely.get_parts(shape)) if area > _SLIVER_MM2]


@lru_cache(maxsize=4096)
def _shape(paths: Region) -> BaseGeometry:
    shape: BaseGeometry = Polygon()
    for path in paths:
        shape = shape.symmetric_difference(Polygon(flattened(path, _CHORD_MM)))
    return shape


@lru_cache(maxsize=4096)
def _missed(paths: Region, radius: float) -> BaseGeometry:
    return _shape(paths).difference(_reached(paths, radius))


@lru_cache(maxsize=4096)
def _reached(paths: Region, radius: float) -> BaseGeometry:
    """What a disc sweeps that is kept inside a region."""
    if radius <= 0.0:
        return Polygon()
    r = radius - _EASE_MM
    return _shape(paths).buffer(-r, quad_segs=_SEGMENTS).buffer(r, quad_segs=_SEGMENTS)
