"""Sections of the blank and its cuts at one height, and the levels between which those sections change evenly.

Outlines are polygons here that hold exactly the area of the true ones, arcs included.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shopdraw.shape.chord import equal_area_points
from shopdraw.shape.frame import Frame, Vec3, dot
from shopdraw.shape.path import Path, Point
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.prism import ON_BOUNDARY_MM, Prism, blank_prism, cut_prism, exit_distance

_ARC_TOLERANCE_MM = 0.005
_SAME_LEVEL_MM = 1e-7
_LEVEL = 1e-12

Ring = tuple[Point, ...]
Floats = npt.NDArray[np.float64]
Box = tuple[float, float, float, float, float, float]


@dataclass(frozen=True, slots=True)
class Bar:
    """A prism with straight flanks: rings in the frame's first two axes, the first the outline, then islands."""

    frame: Frame
    rings: tuple[Ring, ...]
    low: float
    high: float

    @property
    def box(self) -> Box:
        """The upright box round it."""
        a, b = zip(*self.rings[0], strict=True)
        flat = [(x, y) for x in (min(a), max(a)) for y in (min(b), max(b))]
        u, v, w = zip(*(self.frame.point((x, y, z)) for x, y in flat for z in (self.low, self.high)), strict=True)
        return min(u), min(v), min(w), max(u), max(v), max(w)

    def turned(self, turns: int) -> Bar:
        """The bar where the axes u, v, w have changed places in a ring: (v, w, u) at one turn, (w, u, v) at two."""
        if not turns:
            return self
        frame = self.frame
        axes = ((v[turns], v[turns - 2], v[turns - 1]) for v in (frame.u, frame.v, frame.w, frame.at))
        return Bar(Frame(*axes), self.rings, self.low, self.high)


def bars(shape: Shape) -> tuple[Bar, ...]:
    """The blank, then the cuts."""
    return (_bar(blank_prism(shape)), *(_cut_bar(shape, cut) for cut in shape.cuts))


def _cut_bar(shape: Shape, cut: Cut) -> Bar:
    prism = cut_prism(shape.outline, shape.thickness, cut)
    bar = _bar(prism)
    if cut.face is Face.TILTED and cut.start <= ON_BOUNDARY_MM:
        return Bar(bar.frame, bar.rings, bar.low, bar.high + exit_distance(shape, prism) + 1.0)
    return bar


def _bar(prism: Prism) -> Bar:
    paths: tuple[Path, ...] = (prism.outline, *prism.islands)
    rings = tuple(equal_area_points(path, _ARC_TOLERANCE_MM) for path in paths)
    return Bar(prism.frame, rings, prism.low, prism.high)


def section_of(bar: Bar, w: float) -> list[list[Ring]]:
    """The bar's section at a height: for the outline and each island its rings in (u, v), even-odd."""
    frame = bar.frame
    tilt = frame.w[2]
    if abs(abs(tilt) - 1.0) < _LEVEL:
        z = (w - frame.at[2]) / tilt
        if not bar.low < z < bar.high:
            return []
        return [[tuple(_flat(frame, a, b, z) for a, b in ring)] for ring in bar.rings]
    if abs(tilt) < _LEVEL:
        return [_lying_section(bar, ring, w) for ring in bar.rings]
    return [[_tilted_section(bar, ring, w)] for ring in bar.rings]


def _flat(frame: Frame, a: float, b: float, z: float) -> Point:
    u, v, _ = frame.point((a, b, z))
    return (u, v)


def _lying_section(bar: Bar, ring: Ring, w: float) -> list[Ring]:
    """Parallelograms: the ring cut at the height, run along the bar."""
    frame = bar.frame
    # in the ring's plane the height is a·frame.u[2] + b·frame.v[2] + at[2]
    heights = [a * frame.u[2] + b * frame.v[2] + frame.at[2] - w for a, b in ring]
    stops: list[tuple[float, Point]] = []
    for i, here in enumerate(heights):
        before = heights[i - 1]
        if (here > 0) != (before > 0):
            part = before / (before - here)
            (a0, b0), (a1, b1) = ring[i - 1], ring[i]
            point = (a0 + (a1 - a0) * part, b0 + (b1 - b0) * part)
            stops.append((point[0] * frame.v[2] - point[1] * frame.u[2], point))
    stops.sort()
    return [
        (
            _flat(frame, *first, bar.low),
            _flat(frame, *second, bar.low),
            _flat(frame, *second, bar.high),
            _flat(frame, *first, bar.high),
        )
        for (_, first), (_, second) in zip(stops[::2], stops[1::2], strict=False)
    ]


def _tilted_section(bar: Bar, ring: Ring, w: float) -> Ring:
    """The ring where the height lies between the bar's ends, carried to the height along the bar."""
    frame = bar.frame

    def along(a: float, b: float) -> float:
        return (w - frame.at[2] - a * frame.u[2] - b * frame.v[2]) / frame.w[2]

    kept = _cut(_cut(list(ring), lambda a, b: along(a, b) - bar.low), lambda a, b: bar.high - along(a, b))
    return tuple(_flat(frame, a, b, along(a, b)) for a, b in kept)


def _cut(ring: list[Point], within: Callable[[float, float], float]) -> list[Point]:
    """The part of a ring where a function that is linear in the plane isn't below 0."""
    kept: list[Point] = []
    for i, here in enumerate(ring):
        before = ring[i - 1]
        now, then = within(*here), within(*before)
        if (now >= 0) != (then >= 0):
            part = then / (then - now)
            kept.append((before[0] + (here[0] - before[0]) * part, before[1] + (here[1] - before[1]) * part))
        if now >= 0:
            kept.append(here)
    return kept


@dataclass(frozen=True, slots=True)
class Cluster:
    """Bars whose boxes overlap, one leading to the next.

    Attributes:
        box: the upright box round them: least u, v, w, greatest u, v, w, mm.
    """

    bars: tuple[Bar, ...]
    box: Box


def clusters(parts: Sequence[Bar]) -> list[Cluster]:
    """The bars in as many clusters as there are, none of which shares anything with another."""
    found: list[Cluster] = []
    for bar in parts:
        box, together, apart = bar.box, [bar], []
        for cluster in found:
            if all(cluster.box[i] < box[i + 3] and box[i] < cluster.box[i + 3] for i in range(3)):
                together, box = [*cluster.bars, *together], around(box, cluster.box)
            else:
                apart.append(cluster)
        found = [*apart, Cluster(tuple(together), box)]
    return found


def around(one: Box, other: Box) -> Box:
    """The upright box round two."""
    return (
        min(one[0], other[0]),
        min(one[1], other[1]),
        min(one[2], other[2]),
        max(one[3], other[3]),
        max(one[4], other[4]),
        max(one[5], other[5]),
    )


def levels(parts: Sequence[Bar], bottom: float, top: float, *, still: bool = False) -> list[float]:
    """Heights from bottom to top between which every section's corners move evenly and none passes a flank.

    These are the heights of all corners, and of all points where three flanks meet, one of them sloping.

    Args:
        still: no flank slopes.
    """
    found = [bottom, top]
    for bar in parts:
        found.extend(
            bar.frame.point((a, b, z))[2] for ring in bar.rings for a, b in ring for z in (bar.low, bar.high)
        )
    if not still:
        found.extend(_meeting_heights(parts))
    kept: list[float] = []
    for height in sorted(h for h in found if bottom <= h <= top):
        if not kept or height - kept[-1] > _SAME_LEVEL_MM:
            kept.append(height)
    return kept


@dataclass(frozen=True, slots=True)
class _Patch:
    normal: Vec3
    offset: float
    low: Vec3
    high: Vec3

    @property
    def sloping(self) -> bool:
        return _LEVEL * 1e3 < abs(self.normal[2]) < 1 - _LEVEL * 1e3


def _patches(bar: Bar) -> list[_Patch]:
    found = []
    for ring in bar.rings:
        for i, (a1, b1) in enumerate(ring):
            a0, b0 = ring[i - 1]
            size = math.hypot(a1 - a0, b1 - b0)
            if size == 0.0:
                continue
            normal = bar.frame.direction(((b1 - b0) / size, (a0 - a1) / size, 0.0))
            corners = [bar.frame.point((a, b, z)) for a, b in ((a0, b0), (a1, b1)) for z in (bar.low, bar.high)]
            found.append(_patch(normal, corners))
    found.extend(
        _patch(bar.frame.w, [bar.frame.point((a, b, z)) for a, b in bar.rings[0]]) for z in (bar.low, bar.high)
    )
    return found


def _patch(normal: Vec3, corners: list[Vec3]) -> _Patch:
    columns = list(zip(*corners, strict=True))
    low, high = tuple(map(min, columns)), tuple(map(max, columns))
    return _Patch(normal, dot(normal, corners[0]), (low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _meeting_heights(parts: Sequence[Bar]) -> list[float]:
    patches = [patch for bar in parts for patch in _patches(bar)]
    sloping = [patch for patch in patches if patch.sloping]
    upright = [patch for patch in patches if abs(patch.normal[2]) < 1 - _LEVEL * 1e3]
    if not sloping:
        return []
    normals = np.array([p.normal for p in upright])
    offsets = np.array([p.offset for p in upright])
    low, high = np.array([p.low for p in upright]) - 1e-6, np.array([p.high for p in upright]) + 1e-6
    found: set[float] = set()
    for patch in sloping:
        near = np.flatnonzero(((low <= np.array(patch.high)) & (high >= np.array(patch.low))).all(axis=1))
        points = _crossings(np.array(patch.normal), patch.offset, normals[near], offsets[near])
        inside = (
            _held(points, np.array(patch.low) - 1e-6, np.array(patch.high) + 1e-6)
            & _held(points, low[near][:, None], high[near][:, None])
            & _held(points, low[near][None], high[near][None])
        )
        found.update(np.round(points[inside][:, 2], 9).tolist())
    return sorted(found)


def _held(points: Floats, low: Floats, high: Floats) -> npt.NDArray[np.bool_]:
    found: npt.NDArray[np.bool_] = np.logical_and.reduce((points >= low) & (points <= high), axis=-1)
    return found


def _crossings(normal: Floats, offset: float, normals: Floats, offsets: Floats) -> Floats:
    """Where one plane meets each pair of others, (n, n, 3); not a number for parallel ones."""
    pairs = _cross(normals[:, None], normals[None, :])
    bottom = pairs @ normal
    with np.errstate(divide="ignore", invalid="ignore"):
        across = _cross(normal, normals)  # normal × each
        top = offset * pairs + offsets[None, :, None] * across[:, None] - offsets[:, None, None] * across[None, :]
        points: Floats = np.where(np.abs(bottom)[..., None] > 1e-9, top / bottom[..., None], np.nan)
    return points


def _cross(one: Floats, other: Floats) -> Floats:
    """Cross products of rows of three: numpy's own spends its time on choosing axes."""
    x, y, z = one[..., 0], one[..., 1], one[..., 2]
    a, b, c = other[..., 0], other[..., 1], other[..., 2]
    return np.stack((y * c - z * b, z * a - x * c, x * b - y * a), axis=-1)
