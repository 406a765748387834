"""Pictures of the boards that no other view has labelled: each alone with its like, in place within the piece's box."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace
from itertools import product

from shopdraw.drawing.mark import Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import rectangle
from shopdraw.sheet.arrange import free_area, stand_on_pages, with_more
from shopdraw.sheet.compose import compose_view
from shopdraw.sheet.extent import Extent, whole
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.sheet.leaf import Leaf
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.near_lines import without_near
from shopdraw.sheet.picture_balloon import picture_balloon
from shopdraw.sheet.view import ComposedView, PlainView
from shopdraw.view.direction import ISOMETRIC
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Shape, Stock

TITLE = "Boards within, in their places, not to scale"
_THIN_MM = 0.01
_SHARE = 0.45
"""A picture takes at most so much of the page's width and height, so that several share a sheet."""
_SMALLER = (0.36, 0.28)
"""Less of it where the picture then stands on another one's sheet."""
_MOST_BESIDE = 2
"""So many pictures may stand on another one's sheet."""


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
    made = _pictures(assembly, manner, labelled, _SHARE)
    pages = stand_on_pages(made, free_area(manner.size, manner.look)) or ()
    return tuple(
        Leaf("labels" if n == 0 else f"labels-{n + 1}", "Boards within", "Picture", (), standing)
        for n, standing in enumerate(pages)
    )


def labels_beside(leaf: Leaf, assembly: Assembly, manner: Manner, labelled: Collection[str]) -> Leaf | None:
    """A picture's sheet with the boards that have no balloon yet, where it has room for them; None where it has none.

    Args:
        leaf: the sheet.
        assembly, manner, labelled: see `label_leaves`.
    """
    area = free_area(manner.size, manner.look)
    for share in (_SHARE, *_SMALLER):
        made = _pictures(assembly, manner, labelled, share)
        if len(made) > _MOST_BESIDE:
            return None
        found = with_more([leaf.standing], made, area)
        if found is not None:
            title = f"{leaf.title}, Boards within" if made else leaf.title
            return replace(leaf, title=title, standing=found[0])
    return None


def _pictures(assembly: Assembly, manner: Manner, labelled: Collection[str], share: float) -> list[ComposedView]:
    waiting = [board for board in assembly.boards if board.id not in labelled]
    x0, y0, x1, y1 = free_area(manner.size, manner.look).box
    box = whole(assembly)
    corners = [ISOMETRIC.on_paper(corner) for corner in _corners(box)]
    wide, high = (max(c[i] for c in corners) - min(c[i] for c in corners) for i in (0, 1))
    ratio = min(share * (x1 - x0) / wide, share * (y1 - y0) / high)
    made: list[ComposedView] = []
    while waiting:
        view = _picture(waiting, box, ratio, manner, len(made) + 1)
        shown = labelled_in([view.drawing])
        waiting = [board for board in waiting if board.id not in shown]
        made.append(view)
        if not shown:
            break
    return made


def _picture(boards: Sequence[Board], box: Extent, ratio: float, manner: Manner, number: int) -> ComposedView:
    behind = _planes_behind(box, boards[0].stock)
    names = {plane.id for plane in behind}
    drawn = project((*boards, *behind), ISOMETRIC, hidden=False)
    edges = tuple(replace(mark, meaning=Meaning.MOVING, board="") for mark in drawn if mark.board in names)
    held = without_near((*(mark for mark in drawn if mark.board not in names), *edges), ratio)
    lines = tuple(mark for mark in held if mark.meaning is not Meaning.MOVING)
    points = points_in_sight(boards, ISOMETRIC)
    balloons = [picture_balloon(board, points.get(board.id, ()), lines) for board in boards]
    view = PlainView(f"labels.{number}", TITLE, held)
    return compose_view(view, (), ratio, manner.look, {}, [balloon for balloon in balloons if balloon is not None])


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
