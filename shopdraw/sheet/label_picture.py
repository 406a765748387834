"""Pictures of the boards that no other view has labelled: each alone with its like, in place within the piece's box."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace
from itertools import product

from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import Point, rectangle
from shopdraw.sheet.arrange import free_area, stand_on_pages
from shopdraw.sheet.compose import compose_view
from shopdraw.sheet.extent import Extent, whole
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.sheet.leaf import Leaf
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.near_lines import without_near
from shopdraw.sheet.view import Balloon, ComposedView, PlainView
from shopdraw.view.direction import ISOMETRIC
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Shape, Stock

TITLE = "Boards within, in their places, not to scale"
_THIN_MM = 0.01
_SHARE = 0.45
"""A picture takes at most so much of the page's width and height, so that several share a sheet."""


def labelled_in(drawings: Iterable[Drawing]) -> frozenset[str]:
    """Ids of the boards whose labels stand in balloons."""
    return frozenset(
        mark.board
        for drawing in drawings
        for mark in drawing.marks
        if isinstance(mark, Text) and mark.meaning is Meaning.WORD and mark.board
    )


def label_leaves(assembly: Assembly, manner: Manner, labelled: Collection[str]) -> tuple[Leaf, ...]:
    """Sheets with the boards that have no balloon yet; none where every board has one.

    Args:
        assembly: the piece.
        manner: paper and look.
        labelled: ids of the boards that other sheets label.
    """
    waiting = [board for board in assembly.boards if board.id not in labelled]
    area = free_area(manner.size, manner.look)
    x0, y0, x1, y1 = area.box
    box = whole(assembly)
    corners = [ISOMETRIC.on_paper(corner) for corner in _corners(box)]
    wide, high = (max(c[i] for c in corners) - min(c[i] for c in corners) for i in (0, 1))
    ratio = min(_SHARE * (x1 - x0) / wide, _SHARE * (y1 - y0) / high)
    made: list[ComposedView] = []
    while waiting:
        view = _picture(waiting, box, ratio, manner, len(made) + 1)
        shown = labelled_in([view.drawing])
        waiting = [board for board in waiting if board.id not in shown]
        made.append(view)
        if not shown:
            break
    pages = stand_on_pages(made, area) or ()
    return tuple(
        Leaf("labels" if n == 0 else f"labels-{n + 1}", "Boards within", "Picture", (), standing)
        for n, standing in enumerate(pages)
    )


def _picture(boards: Sequence[Board], box: Extent, ratio: float, manner: Manner, number: int) -> ComposedView:
    behind = _planes_behind(box, boards[0].stock)
    names = {plane.id for plane in behind}
    drawn = project((*boards, *behind), ISOMETRIC, hidden=False)
    edges = tuple(replace(mark, meaning=Meaning.MOVING, board="") for mark in drawn if mark.board in names)
    held = without_near((*(mark for mark in drawn if mark.board not in names), *edges), ratio)
    lines = tuple(mark for mark in held if mark.meaning is not Meaning.MOVING)
    points = points_in_sight(boards, ISOMETRIC)
    balloons = [_balloon(board, points.get(board.id, ()), lines) for board in boards]
    view = PlainView(f"labels.{number}", TITLE, held)
    return compose_view(view, (), ratio, manner.look, {}, [balloon for balloon in balloons if balloon is not None])


def _balloon(board: Board, points: Sequence[Point], lines: Iterable[object]) -> Balloon | None:
    """At a board's face, or at its edges where all that is seen of it is narrow."""
    if points:
        return Balloon(board.label, points[0], "dot", (), board.id, tuple(points[1:]))
    edges = [mark for mark in lines if isinstance(mark, Line) and mark.board == board.id]
    if not edges:
        return None
    edges.sort(key=lambda mark: (-_long(mark), mark.start))
    middles = [((m.start[0] + m.end[0]) / 2, (m.start[1] + m.end[1]) / 2) for m in edges[:5]]
    return Balloon(board.label, middles[0], "arrow", (), board.id, tuple(middles[1:]))


def _long(mark: Line) -> float:
    return round(abs(mark.end[0] - mark.start[0]) + abs(mark.end[1] - mark.start[1]), 3)


def _planes_behind(box: Extent, stock: Stock) -> tuple[Board, ...]:
    """The faces of the piece's box that lie behind all boards, as sheets too thin to see: boards hide their edges."""
    wide, deep, high = (b - a for a, b in zip(box.low, box.high, strict=True))
    x, y, z = (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)
    faces = (
        ("below", Frame(x, y, z, box.low), wide, deep),
        ("behind", Frame(x, z, (0.0, -1.0, 0.0), (box.x0, box.y1, box.z0)), wide, high),
        ("left", Frame(y, z, x, box.low), deep, high),
    )
    return tuple(
        Board(f"box:{name}", "", name, "box", Shape(rectangle(0.0, 0.0, u, v), _THIN_MM), frame, stock)
        for name, frame, u, v in faces
    )


def _corners(box: Extent) -> list[Vec3]:
    return list(product((box.x0, box.x1), (box.y0, box.y1), (box.z0, box.z1)))
