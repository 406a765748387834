"""Faces that a step of the assembly closes in: what must be sanded, or finished, before it.

Looked at from points spread over a face: straight out of it, and at 45° to each side. A face that looks straight at
other wood over more than half of its points can't be sanded any more; one from which no way is left either leads out
can't be reached by a brush. Where boards touch nothing is looked at: that is a joint. What comes out again (a drawer, a
lid) closes in its own faces only, and nothing else closes in these.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence, Set
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from shopdraw.check.assembly_order import Step, assembly_order
from shopdraw.shape.frame import Vec3, add, scale
from shopdraw.shape.path import bounds
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.interference import box_of
from shopdraw.wood.solid import placed_solid

SHARE = 0.5
"""A face is closed in when more than this share of its points is."""
SIDES = ("face", "back")
POINTS = 4
"""Points along a face and across it."""
TOUCHING_MM = 2.0
"""Nearer wood than this touches."""
_LEAST_POINTS = 3
_FAR_MM = 5000.0
_OFF_MM = 0.01
_Floats = np.typing.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Closed:
    """Faces of boards, as (board id, "face" or "back").

    Attributes:
        sand: can't be sanded after the step.
        finish: can't be reached at all after it.
    """

    sand: tuple[tuple[str, str], ...] = ()
    finish: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class _Outlook:
    """What stands in the way out of one point of a face: straight out first, then to the sides."""

    ways: tuple[frozenset[str], ...]


@lru_cache(maxsize=32)
def closed_in(assembly: Assembly) -> tuple[Closed, ...]:
    """For each step of the order of assembly, in order, the faces that it closes in."""
    outlooks = {
        (board.id, side): tuple(_outlooks(assembly, board, side)) for board in assembly.boards for side in SIDES
    }
    sanded: set[tuple[str, str]] = set()
    finished: set[tuple[str, str]] = set()
    found = []
    for step in assembly_order(assembly).steps:
        here = [key for key in outlooks if key[0] in step.boards or key[0] in step.onto]
        now = frozenset((*step.boards, *step.onto))
        sand = [key for key in here if key not in sanded and _shut(outlooks[key], now, 1)]
        finish = [key for key in here if key not in finished and _shut(outlooks[key], now, None)]
        sanded.update(sand)
        finished.update(finish)
        found.append(Closed(tuple(sand), tuple(finish)))
    return tuple(found)


def steps_with_closed(assembly: Assembly) -> tuple[tuple[Step, Closed], ...]:
    """The steps, each with what it closes in."""
    return tuple(zip(assembly_order(assembly).steps, closed_in(assembly), strict=True))


def _shut(points: tuple[_Outlook, ...], there: Set[str], ways: int | None) -> bool:
    """Whether the first so many ways out (None: all) are barred from most points."""
    if len(points) < _LEAST_POINTS:
        return False
    barred = sum(all(way & there for way in point.ways[:ways]) for point in points)
    return barred > SHARE * len(points)


def _outlooks(assembly: Assembly, board: Board, side: str) -> Iterator[_Outlook]:
    u0, v0, u1, v1 = bounds(board.shape.outline)
    frame, sign = board.frame, 1.0 if side == "face" else -1.0
    level = _OFF_MM if side == "face" else -board.thickness - _OFF_MM
    out = scale(frame.w, sign)
    wood = placed_solid(board)
    spread = [((i + 0.5) / POINTS, (j + 0.5) / POINTS) for i in range(POINTS) for j in range(POINTS)]
    points = [frame.point((u0 + i * (u1 - u0), v0 + j * (v1 - v0), level)) for i, j in spread]
    points = [at for at in points if wood.ray_cast(at, add(at, scale(out, -3 * _OFF_MM)))]
    if not points:
        return
    sides = (frame.u, scale(frame.u, -1.0), frame.v, scale(frame.v, -1.0))
    ways = (out, *(scale(add(out, aside), math.sqrt(0.5)) for aside in sides))
    rays = (scale(out, TOUCHING_MM), *(scale(way, _FAR_MM) for way in ways))
    stands = _others(assembly, board)
    may_meet = _boxes_met(np.array(points), np.array(rays), stands.boxes)
    for at, rows in zip(points, may_meet, strict=True):
        near, *far = (_met(at, add(at, ray), row, stands) for ray, row in zip(rays, rows, strict=True))
        if not near:
            yield _Outlook(tuple(far))


@dataclass(frozen=True, slots=True)
class _Others:
    """What may stand in the way: ids, what a ray meets of each, boxes round them."""

    ids: tuple[str, ...]
    casts: tuple[Callable[[Vec3, Vec3], Sequence[object]], ...]
    boxes: _Floats


def _others(assembly: Assembly, board: Board) -> _Others:
    """The other boards, without those that come out apart from it."""
    goes = {name: motion.id for motion in assembly.motions for name in motion.boards}
    others = [b for b in assembly.boards if b.id != board.id and goes.get(b.id) == goes.get(board.id)]
    return _Others(
        tuple(other.id for other in others),
        tuple(placed_solid(other).ray_cast for other in others),
        np.array([box_of(other) for other in others]).reshape(-1, 6),
    )


def _boxes_met(points: _Floats, rays: _Floats, boxes: _Floats) -> np.typing.NDArray[np.bool_]:
    """For each point and each ray from it which boxes it meets, or starts in."""
    low, high = boxes[:, :3] - points[:, None, :], boxes[:, 3:] - points[:, None, :]
    inside = ((low <= 0.0) & (high >= 0.0))[:, None]
    flat = (np.abs(rays) < 1e-12)[:, None, :]
    safe = np.where(flat, 1.0, rays[:, None, :])
    one, two = low[:, None] / safe, high[:, None] / safe
    first = np.where(flat, np.where(inside, -np.inf, np.inf), np.minimum(one, two)).max(axis=3)
    last = np.where(flat, np.where(inside, np.inf, -np.inf), np.maximum(one, two)).min(axis=3)
    met: np.typing.NDArray[np.bool_] = (first <= last) & (last >= 0.0) & (first <= 1.0)
    return met


def _met(start: Vec3, end: Vec3, may: np.typing.NDArray[np.bool_], stands: _Others) -> frozenset[str]:
    """Boards that a ray meets, of those whose boxes it meets."""
    return frozenset([stands.ids[row] for row in may.nonzero()[0].tolist() if stands.casts[row](start, end)])
