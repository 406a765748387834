"""The exploded picture on its sheet: boards apart along their ways, each labelled, not to scale."""

from __future__ import annotations

from shopdraw.check.assembly_order import PIECE, assembly_order
from shopdraw.drawing.bounds import marks_box
from shopdraw.shape.frame import scale
from shopdraw.sheet.arrange import FreeArea, Standing, free_area
from shopdraw.sheet.compose import compose_view
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.sheet.leaf import Leaf
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.near_lines import without_near
from shopdraw.sheet.picture_balloon import picture_balloon, seen_well
from shopdraw.sheet.view import ComposedView, PlainView
from shopdraw.view.direction import ISOMETRIC
from shopdraw.view.exploded import Slide, exploded
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

TITLE = "Exploded picture, not to scale"
_SHRINK = 0.92
_LEAST = 0.02
_LARGEST = 0.5
_LABELS = 30.0
"""Paper that labels and the title take at least."""


def exploded_boards(assembly: Assembly) -> tuple[Board, ...]:
    """The piece's boards apart; what is put together on the bench stays together."""
    slides = [
        Slide(step.boards, scale(step.direction, -1.0) if step.direction is not None else None)
        for step in assembly_order(assembly).of(PIECE)
    ]
    return exploded(assembly.boards, slides)


def exploded_leaf(assembly: Assembly, manner: Manner) -> tuple[Leaf, ...]:
    """The picture's sheet; none for a piece without boards.

    Args:
        assembly: the piece.
        manner: paper and look.
    """
    if not assembly.boards:
        return ()
    area = free_area(manner.size, manner.look)
    return (Leaf("exploded", "Exploded picture", "Picture", (), _standing(assembly, manner, area)),)


def _standing(assembly: Assembly, manner: Manner, area: FreeArea) -> tuple[Standing, ...]:
    """As large as it fits beside or over the title block, in the middle of what is left."""
    boards = exploded_boards(assembly)
    lines = project(boards, ISOMETRIC, hidden=False)
    points = points_in_sight(boards, ISOMETRIC)
    told = [
        picture_balloon(board, points.get(board.id, ()), lines)
        for board in boards
        if board.id in points or seen_well(board, lines, ISOMETRIC)
    ]
    balloons = [balloon for balloon in told if balloon is not None]
    x0, y0, x1, y1 = area.box
    bx0, _, _, by1 = area.block
    boxes = ((x0, by1, x1, y1), (x0, y0, bx0, y1))
    least_x, least_y, most_x, most_y = marks_box(lines)
    wide, high = most_x - least_x, most_y - least_y
    ratio = max(min((b[2] - b[0] - _LABELS) / wide, (b[3] - b[1] - _LABELS) / high, _LARGEST) for b in boxes)
    while ratio > _LEAST:
        made = compose_view(
            PlainView("exploded", TITLE, without_near(lines, ratio)), (), ratio, manner.look, {}, balloons
        )
        for box in boxes:
            if made.width <= box[2] - box[0] and made.height <= box[3] - box[1]:
                return (_middle(made, box),)
        ratio *= _SHRINK
    return ()


def _middle(view: ComposedView, box: tuple[float, float, float, float]) -> Standing:
    x0, y0, x1, y1 = view.room
    return Standing(view, ((box[0] + box[2] - x0 - x1) / 2, (box[1] + box[3] - y0 - y1) / 2))
