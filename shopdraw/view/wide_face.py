"""The largest flat faces that are turned to the viewer: what hides most."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from shopdraw.view.scene import Scene
from shopdraw.view.standing import Bools, Floats, Ints

_MOST = 256
"""So many of the largest do nearly all of the hiding."""
_LEAST_PART = 1e-4
"""Faces smaller than this part of the paper hide little."""
_MARGIN_MM = 1e-5
_WHOLE = 1 - 1e-9


@dataclass(frozen=True, eq=False)
class WideFaces:
    """Flat faces.

    Attributes:
        face: (n,) their numbers, rising.
        slope: (n, 2) how their depth changes to the right and upwards.
        level: (n,) their plane's depth at the paper's origin, mm.
        low, high: (n, 2) the upright rectangle round each, mm.
        rectangular: (n,) whether it fills that.
    """

    face: Ints
    slope: Floats
    level: Floats
    low: Floats
    high: Floats
    rectangular: Bools

    @property
    def corners(self) -> list[Floats]:
        """(n, 3) four times: the corners of the rectangles, in the faces' planes."""
        flat = [np.stack((x[:, 0], y[:, 1]), axis=1) for x in (self.low, self.high) for y in (self.low, self.high)]
        return [np.column_stack((at, self.level + (at * self.slope).sum(axis=1))) for at in flat]

    def only(self, rows: Bools) -> WideFaces:
        """Some of the faces."""
        return WideFaces(
            self.face[rows],
            self.slope[rows],
            self.level[rows],
            self.low[rows],
            self.high[rows],
            self.rectangular[rows],
        )


def all_faces(scene: Scene) -> tuple[WideFaces, Ints, Floats]:
    """All faces of a scene, in how many triangles each is parted, and their areas on paper, mm²."""
    first = np.flatnonzero(np.diff(scene.face, prepend=-1) > 0)
    if not len(first):
        none = np.zeros((0, 2))
        return WideFaces(scene.face, none, np.zeros(0), none, none, scene.face > 0), scene.face, np.zeros(0)
    flat = scene.corners[:, :, :2]
    a, b = flat[:, 1] - flat[:, 0], flat[:, 2] - flat[:, 0]
    areas = np.add.reduceat(np.abs(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]) / 2, first)
    low = np.minimum.reduceat(scene.box[0][:, :2], first)
    high = np.maximum.reduceat(scene.box[1][:, :2], first)
    corner, slope = scene.corners[first, 0], scene.slope[first]
    level = corner[:, 2] - (corner[:, 0] * slope[:, 0] + corner[:, 1] * slope[:, 1])
    filled = areas >= np.prod(high - low, axis=1) * _WHOLE
    found = WideFaces(scene.face[first], slope, level, low, high, filled)
    return found, np.diff(first, append=len(scene.face)), areas


def wide_faces(scene: Scene) -> tuple[WideFaces, Bools]:
    """The largest faces of a scene, but for those behind another one; which triangles aren't behind one of them."""
    faces, many, areas = all_faces(scene)
    wide = np.zeros(len(areas), dtype=np.bool_)
    if len(areas):
        wide[np.argsort(-areas, kind="stable")[:_MOST]] = True
        wide &= areas > _LEAST_PART * np.prod(faces.high.max(axis=0) - faces.low.min(axis=0))
    largest = faces.only(wide)
    largest = largest.only(~behind_a_rectangle(largest.corners, largest))
    return largest, np.repeat(~behind_a_rectangle(faces.corners, largest), many)


def behind_a_rectangle(corners: Sequence[Floats], faces: WideFaces) -> Bools:
    """What lies whole behind one upright rectangular face, touching its rim at most.

    Args:
        corners: of edges, triangles or faces: each (n, 3), the first of all, the second of all, ...
        faces: that may hide them.
    """
    over = faces.only(faces.rectangular)
    thing = np.arange(len(corners[0]))
    within = np.ones((len(thing), len(over.face)), dtype=np.bool_)
    for axis in (0, 1):
        low = np.minimum.reduce([at[:, axis] for at in corners])
        high = np.maximum.reduce([at[:, axis] for at in corners])
        within &= over.low[:, axis] <= low[:, None]
        within &= over.high[:, axis] >= high[:, None]
    thing, face = np.nonzero(within)
    for at in corners:
        here, slope = at.take(thing, axis=0), over.slope.take(face, axis=0)
        depth = over.level[face] + (here[:, 0] * slope[:, 0] + here[:, 1] * slope[:, 1])
        behind = depth > here[:, 2] + _MARGIN_MM
        thing, face = thing[behind], face[behind]
    found = np.zeros(len(corners[0]), dtype=np.bool_)
    found[thing] = True
    return found
