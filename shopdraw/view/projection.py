"""Views: visible and hidden lines of boards put in place, seen from any direction."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

import numpy as np

from shopdraw.drawing.mark import ArcMark, Line, Meaning
from shopdraw.shape.frame import Frame
from shopdraw.view.covering import stretches
from shopdraw.view.direction import Direction
from shopdraw.view.joining import Pieces, marks_of
from shopdraw.view.scene import Edges, scene
from shopdraw.view.standing import Bools, Floats, Ints, Shown, Standing, standing
from shopdraw.view.unseen import unseen
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.facet import facets

Stands = tuple[str, Shape, Frame]
"""What of a board a view depends on: its id, its shape and its place."""


def project(
    boards: Sequence[Board], direction: Direction, *, hidden: bool | frozenset[str] = True
) -> tuple[Line | ArcMark, ...]:
    """The lines of a view, in the view's plane at true size, mm.

    Args:
        boards: what is shown; of lines that coincide the nearest board's is drawn, then the first one's.
        direction: which way one looks.
        hidden: whether hidden lines are wanted too, or ids of the boards whose hidden lines are wanted: of these all
            but those of cuts within joints and for fittings, which don't tell where boards lie.
    Returns:
        Lines and arcs with the meaning VISIBLE or HIDDEN and their board's id.
    """
    return _projected(tuple((b.id, b.shape, b.frame) for b in boards), direction, hidden)


@lru_cache(maxsize=256)
def _projected(
    stands: tuple[Stands, ...], direction: Direction, hidden: bool | frozenset[str]
) -> tuple[Line | ArcMark, ...]:
    covered = None if hidden is False else Meaning.HIDDEN
    if hidden is True:
        here = _standing(tuple((shape, frame) for _, shape, frame in stands))
        return lines_of(here, [name for name, _, _ in stands], direction, Meaning.VISIBLE, covered)
    wanted = hidden or frozenset()
    told = np.array([name in wanted for name, _, _ in stands], dtype=np.bool_)
    rows = np.flatnonzero(of_use([(shape, frame) for _, shape, frame in stands], direction, told)).tolist()
    here = _standing(tuple((stands[row][1], stands[row][2]) for row in rows))
    return lines_of(here, [stands[row][0] for row in rows], direction, Meaning.VISIBLE, covered, told[rows])


def of_use(stands: Sequence[tuple[Shape, Frame]], direction: Direction, told: Bools) -> Bools:
    """Of each board whether a view needs it: something of it may be in sight, or its hidden lines are wanted.

    Args:
        stands: shapes and where they stand.
        direction: which way one looks.
        told: (boards,) whose hidden lines are wanted.
    """
    return told | ~unseen(stands, direction)


@lru_cache(maxsize=16)
def _standing(stands: tuple[tuple[Shape, Frame], ...]) -> Standing:
    return standing([Shown(facets(shape), frame) for shape, frame in stands])


def forget() -> None:
    """Drops the views kept so far: for measuring, and for testing that the same piece gives the same lines."""
    _projected.cache_clear()
    _standing.cache_clear()


def lines_of(
    here: Standing,
    names: Sequence[str],
    direction: Direction,
    visible: Meaning,
    covered: Meaning | None,
    told: Bools | None = None,
) -> tuple[Line | ArcMark, ...]:
    """Lines and arcs of what stands there.

    Args:
        names: the boards' ids.
        visible: what the lines in sight mean.
        covered: what the lines out of sight mean, or None to leave them out.
        told: (boards,) whose lines out of sight are wanted, but for those of cuts within joints and for fittings;
            all lines of all boards where it is None.
    """
    before = scene(here, direction, told)
    if not len(before.edges.owner):
        return ()
    seen_edge, seen_low, seen_high, hid_edge, hid_low, hid_high = stretches(before)
    wanted = before.edges.told[hid_edge] if covered is not None else np.zeros(len(hid_edge), dtype=np.bool_)
    hid_edge, hid_low, hid_high = hid_edge[wanted], hid_low[wanted], hid_high[wanted]
    edge = np.concatenate((seen_edge, hid_edge))
    low, high = np.concatenate((seen_low, hid_low)), np.concatenate((seen_high, hid_high))
    is_covered = np.arange(len(edge)) >= len(seen_edge)
    pieces = pieces_of(before.edges, edge, low, high, is_covered)
    return marks_of(pieces, names, visible, covered or visible)


def pieces_of(edges: Edges, edge: Ints, low: Floats, high: Floats, covered: Bools) -> Pieces:
    """Stretches of edges as pieces on paper.

    Args:
        edge, low, high: which edge, and from where to where as parts of its length.
        covered: whether each is out of sight.
    """
    start = edges.start.take(edge, axis=0)
    run = edges.end.take(edge, axis=0) - start
    return Pieces(
        start=(start + low[:, None] * run)[:, :2],
        end=(start + high[:, None] * run)[:, :2],
        depth=np.round(start[:, 2] + run[:, 2] / 2, 5),
        facing=edges.facing[edge],
        owner=edges.owner[edge],
        covered=covered,
        centre=edges.centre.take(edge, axis=0),
        radius=edges.radius[edge],
    )
