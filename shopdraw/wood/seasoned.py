"""Solids of another season, stretched from those at build: far quicker than making each board's solid anew."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import manifold3d
import numpy as np

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Corner, Path, Point, bounds
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face, Shape
from shopdraw.wood.hole import hole_centre, without_holes
from shopdraw.wood.prism import Prism, blank_prism, cut_prism
from shopdraw.wood.solid import Floats, placed_solid, solid

_ALIKE_MM = 1e-9
_ONE_PLACE_MM = 1e-6
_HALF_ROUND = 0.9
"""Bulge of an arc whose middle lies farther out than its ends, also when it is stretched a little."""
_BENT_MM = 1e-5
"""Far less than a cubic millimetre over the longest flank."""


@dataclass(frozen=True, eq=False)
class Stretch:
    """Where places across a board's grain come to lie; between two places the wood moves evenly.

    Attributes:
        before: places at build, mm, ascending.
        after: the same places in the other season, ascending.
    """

    before: Floats
    after: Floats

    @property
    def evenly(self) -> bool:
        """Whether all the board is stretched by one factor."""
        factor = self.after[-1] / self.before[-1]
        return bool(np.abs(self.after - self.before * factor).max() < _ALIKE_MM)

    def moved(self, corners: Floats) -> Floats:
        """Corners in the board's frame (rows of x, y, z) where they come to lie."""
        return np.column_stack((corners[:, 0], np.interp(corners[:, 1], self.before, self.after), corners[:, 2]))


@lru_cache(maxsize=8)
def seasoned_wood(built: Assembly) -> Callable[[Board], manifold3d.Manifold]:
    """A board's wood in the world, for boards of the same piece in another season, also with their holes filled.

    A round hole is stretched with its board here; it gets a few hundredths of a millimetre wider or narrower.

    Args:
        built: the piece at build.
    """
    known: dict[tuple[str, Frame, float, int], manifold3d.Manifold] = {}

    def wood(board: Board) -> manifold3d.Manifold:
        key = (board.id, board.frame, board.shape.width, len(board.shape.cuts))
        if key not in known:
            shape = built.board(board.id).shape
            whole = len(shape.cuts) == len(board.shape.cuts)
            known[key] = _seasoned(shape if whole else without_holes(shape), board)
        return known[key]

    return wood


def _seasoned(shape: Shape, board: Board) -> manifold3d.Manifold:
    """A board's wood in the world, from the wood that its shape has at build where that is possible."""
    if board.shape == shape:
        return placed_solid(board)
    stretch = stretch_between(shape, board.shape)
    if stretch is None:
        return placed_solid(board)
    rows = np.array(board.frame.rows(), dtype=np.float64).reshape(3, 4)
    if stretch.evenly:
        rows[:, 1] *= stretch.after[-1] / stretch.before[-1]
        return solid(shape).transform(rows)
    return solid(shape).warp_batch(stretch.moved).transform(rows)


def stretch_between(shape: Shape, later: Shape) -> Stretch | None:
    """How a shape's wood moves when it becomes another one of the same cuts.

    A groove that keeps its guest's thickness moves with the wood and isn't stretched with it. Round holes follow.

    Returns:
        None where no such movement carries each corner to its new place, or one would bend what is straight.
    """
    pairs = sorted(zip(_places(shape), _places(later), strict=True))
    before, after = [pairs[0][0]], [pairs[0][1]]
    for old, new in pairs[1:]:
        if old - before[-1] > _ONE_PLACE_MM:
            before.append(old)
            after.append(new)
        elif abs(new - after[-1]) > _ONE_PLACE_MM:
            return None
    if any(there <= here for here, there in pairwise(after)):
        return None
    stretch = Stretch(np.array(before), np.array(after))
    return stretch if stretch.evenly or not _bends(shape, stretch) else None


def _bends(shape: Shape, stretch: Stretch) -> bool:
    """Whether something tilted, slanted or curved would come out bent."""
    if any(cut.face is Face.TILTED for cut in shape.cuts):
        return True
    for low, high in _slants(shape):
        ends = np.interp((low, high), stretch.before, stretch.after)
        inside = (stretch.before > low) & (stretch.before < high)
        even = np.interp(stretch.before[inside], (low, high), ends)
        if (np.abs(even - stretch.after[inside]) > _BENT_MM).any():
            return True
    return False


@lru_cache(maxsize=8192)
def _places(shape: Shape) -> tuple[float, ...]:
    """Where the corners of the blank and of its upright cuts stand across the grain, mm, in the order of the cuts."""
    return tuple(place for prism in _upright(shape) for place in _across(prism))


def _upright(shape: Shape) -> Iterator[Prism]:
    yield blank_prism(shape)
    for cut in shape.cuts:
        if cut.face is not Face.TILTED:
            yield cut_prism(shape.outline, shape.thickness, cut)


def _across(prism: Prism) -> Iterator[float]:
    first, second, run = prism.frame.u[1], prism.frame.v[1], prism.frame.w[1]
    levels = (prism.low, prism.high) if run else (0.0,)
    for path in (prism.outline, *prism.islands):
        hole = hole_centre(path)
        for x, y in [hole] if hole else _points(path):
            for level in levels:
                yield prism.frame.at[1] + first * x + second * y + run * level


def _points(path: Path) -> Iterator[Point]:
    """The corners of a path, and the middle of each arc of a half circle or more."""
    for here, there in path.pairs():
        yield here.x, here.y
        if abs(here.bulge) > _HALF_ROUND:
            yield (
                (here.x + there.x + here.bulge * (there.y - here.y)) / 2,
                (here.y + there.y - here.bulge * (there.x - here.x)) / 2,
            )


@lru_cache(maxsize=8192)
def _slants(shape: Shape) -> tuple[tuple[float, float], ...]:
    """From where to where, across the grain, each segment of the upright prisms runs that is slanted or curved."""
    found = []
    for prism in _upright(shape):
        if prism.frame.w[1]:
            continue  # it runs straight across the grain
        lies_first = bool(prism.frame.u[1])
        way = prism.frame.u[1] or prism.frame.v[1]
        for path in (prism.outline, *prism.islands):
            for here, there in path.pairs() if hole_centre(path) is None else ():
                if not here.bulge and (abs(here.x - there.x) < _ALIKE_MM or abs(here.y - there.y) < _ALIKE_MM):
                    continue
                x0, y0, x1, y1 = _reach(here, there)
                low, high = (x0, x1) if lies_first else (y0, y1)
                ends = (prism.frame.at[1] + way * low, prism.frame.at[1] + way * high)
                found.append((min(ends), max(ends)))
    return tuple(found)


def _reach(here: Corner, there: Corner) -> tuple[float, float, float, float]:
    if here.bulge:
        return bounds(Path((here, Corner(there.x, there.y, 0.0))))
    return min(here.x, there.x), min(here.y, there.y), max(here.x, there.x), max(here.y, there.y)
