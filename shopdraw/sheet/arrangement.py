"""The general arrangement: front, right side and plan as they are drawn, before their dimensions."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning
from shopdraw.sheet.extent import whole
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.sheet.look import Look
from shopdraw.sheet.mark_words import ground_of
from shopdraw.sheet.moving import moving_marks, open_boards, swing_marks
from shopdraw.sheet.near_lines import without_near
from shopdraw.sheet.plane_mark import plane_marks
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.sheet.sighting import Seen
from shopdraw.sheet.view import Balloon, PlainView
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE, Direction
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly

VIEWS: Mapping[str, tuple[str, Direction]] = {
    "front": ("Front", FRONT),
    "side": ("Right side", RIGHT_SIDE),
    "plan": ("Plan", PLAN),
}
HIDDEN_MEMBERS: Mapping[str, tuple[str, ...]] = {
    "front": ("bottom", "shelf", "frame.front", "divider", "support", "back", "top", "side"),
    "side": ("bottom", "shelf", "frame.front", "frame.rear", "divider", "support", "back", "top", "side"),
    "plan": ("shelf", "divider", "support", "back", "side"),
}
"""Members whose hidden lines tell where things lie; those of drawers, joints and fittings would only crowd the view."""
LEAST_HIDDEN = 4.0
"""A hidden line shorter than this on paper is left out."""


@dataclass(frozen=True, slots=True)
class Arranged:
    """One view of the arrangement.

    Attributes:
        plain: what is drawn.
        seen: what dimensions may go to.
        balloons: labels of the boards in sight.
    """

    plain: PlainView
    seen: Seen
    balloons: tuple[Balloon, ...]


def arranged_views(
    assembly: Assembly, planes: Sequence[CuttingPlane], scale: float, look: Look
) -> tuple[Arranged, ...]:
    """Front, right side and plan with cutting planes, moved positions and labels.

    Args:
        assembly: the piece.
        planes: that are drawn where they are seen from their edge.
        scale: 0.2 for 1:5; letters and arrows have their size on paper.
        look: their heights.
    """
    return tuple(_arranged(assembly, view, planes, scale, look) for view in VIEWS)


def _arranged(assembly: Assembly, view: str, planes: Sequence[CuttingPlane], scale: float, look: Look) -> Arranged:
    title, direction = VIEWS[view]
    lines = project(assembly.boards, direction, hidden=hidden_of(assembly, view))
    marks: list[Mark] = list(without_near([mark for mark in lines if is_drawn(mark, scale)], scale))
    if view == "side":
        marks += moving_marks(open_boards(assembly), direction)
        marks += swing_marks(assembly, direction)
    ground = ground_of((*marks, *(_kept_free(assembly) if view == "side" else ())), scale)
    marks += plane_marks([plane for plane in planes if plane.on == view], scale, look, ground)
    plain = PlainView(view, title, tuple(marks))
    return Arranged(plain, Seen(view, direction, lines), _balloons(assembly, view, direction))


def _kept_free(assembly: Assembly) -> tuple[Line, ...]:
    """Where extension lines will run beside the side view: letters of cutting planes keep off these lines."""
    slant = assembly.slant
    box = whole(assembly)
    far = box.z1 - box.z0
    depths = dict.fromkeys((box.y0, 0.0, assembly.depth, box.y1))
    hanging = (Line((y, 0.0), (y, -far), Meaning.SIZE) for y in depths)
    if slant is None:
        return tuple(hanging)
    upright = (Line((y, box.z1), (y, box.z1 + far), Meaning.SIZE) for y in (0.0, slant.run_mm, assembly.depth))
    level = (Line((box.y1, z), (box.y1 + far, z), Meaning.SIZE) for z in (0.0, slant.slant_start_mm, assembly.height))
    return (*upright, *hanging, *level)


def hidden_of(assembly: Assembly, view: str) -> frozenset[str]:
    """Ids of the boards whose hidden lines are drawn in a view of the arrangement."""
    return frozenset(board.id for board in assembly.boards if board.member in HIDDEN_MEMBERS[view])


def is_drawn(mark: Line | ArcMark, scale: float) -> bool:
    """Whether a line of the projection is drawn: all in sight, of the hidden ones straight ones that are long enough.

    Args:
        scale: 0.2 for 1:5.
    """
    if mark.meaning is not Meaning.HIDDEN:
        return True
    if not isinstance(mark, Line):
        return False
    run = abs(mark.end[0] - mark.start[0]) + abs(mark.end[1] - mark.start[1])
    return run * scale >= LEAST_HIDDEN


def _balloons(assembly: Assembly, view: str, direction: Direction) -> tuple[Balloon, ...]:
    """Labels of what is in sight; in front those of the left hand are left to a section, since the rows stand there."""
    points = points_in_sight(assembly.boards, direction)
    return tuple(
        Balloon(board.label, points[board.id][0], "dot", (), board.id, points[board.id][1:])
        for board in assembly.boards
        if board.id in points and not (view == "front" and board.id.endswith("left"))
    )
