"""Sections: the wood that a plane cuts, hatched, and what is seen behind it."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from shopdraw.drawing.mark import ArcMark, Area, Line, Meaning
from shopdraw.shape.frame import Frame, Vec3, dot
from shopdraw.shape.frame import scale as scaled
from shopdraw.view.covering import stretches
from shopdraw.view.direction import Direction
from shopdraw.view.hatching import CutBoard, hatchings
from shopdraw.view.joining import Pieces, marks_of
from shopdraw.view.outline import CutEdge, cut_faces
from shopdraw.view.projection import pieces_of
from shopdraw.view.scene import scene
from shopdraw.view.standing import Shown, standing
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.facet import Facets, facets, facets_beyond

_TOUCHING_MM = 1e-6

Stands = tuple[str, Shape, Frame, str, bool]
"""What of a board a section depends on: id, shape, place, its stock's kind, whether it is left whole."""


@dataclass(frozen=True, slots=True)
class Plane:
    """A cutting plane.

    Attributes:
        direction: which way one looks at it; what lies on the viewer's side is taken away.
        through: a point it passes through, world, mm.
    """

    direction: Direction
    through: Vec3


def section(
    boards: Sequence[Board], plane: Plane, scale: float, whole: Collection[str] = ()
) -> tuple[Area | Line | ArcMark, ...]:
    """A section as marks in the view's plane at true size, mm.

    Args:
        boards: the piece.
        plane: where it is cut and which way one looks.
        scale: of the view (0.2 for 1:5); hatches have their pitch on paper.
        whole: ids of what isn't cut lengthwise (pegs, dowels, splines): seen whole where the plane meets it.
    Returns:
        Hatched areas; lines and arcs with the meaning CUT round cut wood; BEHIND for edges in sight behind the plane.
    """
    stands = tuple((b.id, b.shape, b.frame, b.stock.kind, b.id in whole) for b in boards)
    return _section(stands, plane, scale)


@lru_cache(maxsize=256)
def _section(stands: tuple[Stands, ...], plane: Plane, scale: float) -> tuple[Area | Line | ArcMark, ...]:
    cut, lines = _cut(stands, plane)
    patterns = hatchings(cut, plane.direction, scale)
    areas = tuple(
        Area(face.outline, face.islands, patterns[item.board], item.board) for item in cut for face in item.faces
    )
    return (*areas, *lines)


@lru_cache(maxsize=64)
def _cut(stands: tuple[Stands, ...], plane: Plane) -> tuple[Sequence[CutBoard], tuple[Line | ArcMark, ...]]:
    """What is cut, and the lines: the same at every scale."""
    shown, names, cut = [], [], []
    for name, shape, frame, kind, whole in stands:
        left = _beyond(shape, frame, plane, whole)
        if left is None:
            continue
        shown.append(Shown(left, frame))
        names.append(name)
        if left.capped.any():
            faces = cut_faces(left, frame, plane.direction)
            cut.append(CutBoard(name, kind, frame.u, frame.w, shape.thickness, faces))
    return cut, _lines(shown, names, cut, plane.direction)


def forget() -> None:
    """Drops the sections kept so far, and the boards cut for them: for measuring."""
    _section.cache_clear()
    _cut.cache_clear()
    facets_beyond.cache_clear()


def _beyond(shape: Shape, frame: Frame, plane: Plane, whole: bool) -> Facets | None:
    """What is left of a board behind the plane; None where nothing is."""
    toward = plane.direction.toward
    depths = facets(shape).points @ np.array(frame.local_direction(toward))
    level = dot(plane.through, toward) - dot(frame.at, toward)
    if float(depths.min()) >= level - _TOUCHING_MM:
        return None
    if whole or float(depths.max()) <= level + _TOUCHING_MM:
        return facets(shape)
    x, y, z = scaled(frame.local_direction(toward), -1.0)
    return facets_beyond(shape, (round(x, 12) + 0.0, round(y, 12) + 0.0, round(z, 12) + 0.0), round(-level, 9))


def _lines(
    shown: Sequence[Shown], names: Sequence[str], cut: Sequence[CutBoard], direction: Direction
) -> tuple[Line | ArcMark, ...]:
    """Cut outlines, and the edges in sight behind them: a place where both lie is drawn as cut."""
    before = scene(standing(shown), direction)
    edge, low, high, *_ = stretches(before)
    behind = pieces_of(before.edges, edge, low, high, np.ones(len(edge), dtype=bool))
    index = {name: i for i, name in enumerate(names)}
    edges = [(index[item.board], e) for item in cut for face in item.faces for e in face.edges]
    outlines = _outline_pieces(edges)
    both = Pieces(*(np.concatenate((getattr(outlines, c), getattr(behind, c))) for c in Pieces.__annotations__))
    return marks_of(both, names, Meaning.CUT, Meaning.BEHIND)


def _outline_pieces(edges: Sequence[tuple[int, CutEdge]]) -> Pieces:
    rods = [edge.round or (0.0, 0.0, 0.0) for _, edge in edges]
    return Pieces(
        start=np.array([edge.start for _, edge in edges], dtype=np.float64).reshape(-1, 2),
        end=np.array([edge.end for _, edge in edges], dtype=np.float64).reshape(-1, 2),
        depth=np.zeros(len(edges)),
        facing=np.ones(len(edges)),
        owner=np.array([owner for owner, _ in edges], dtype=np.int64),
        covered=np.zeros(len(edges), dtype=bool),
        centre=np.array([rod[:2] for rod in rods], dtype=np.float64).reshape(-1, 2),
        radius=np.array([rod[2] for rod in rods], dtype=np.float64),
    )
