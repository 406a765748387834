"""What the canvas shows of a piece: the marks of each view. Pure, so that a worker process can make it. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np

from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning
from shopdraw.editor.arrangement import DIRECTIONS, SECTION, middle_plane
from shopdraw.editor.scene import Views
from shopdraw.shape.frame import WORLD
from shopdraw.view.direction import FRONT, PLAN
from shopdraw.view.projection import lines_of, of_use, project
from shopdraw.view.section import section as cut_through
from shopdraw.view.standing import Shown, standing
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.facet import Facets, facets

SHOWN_SCALE = 0.15
"""About how large the canvas shows a piece: hatches have their pitch on paper, and short hidden lines only crowd it."""


def full_views(
    assembly: Assembly,
    *,
    section: bool = False,
    stale: Callable[[], bool] = lambda: False,
    wood: Callable[[Board], Facets] = lambda board: facets(board.shape),
) -> Views | None:
    """Front, side and plan, and the section through the middle where it is wanted.

    Of the hidden lines those are shown that the general arrangement prints.

    Args:
        assembly: the piece.
        section: whether it is wanted.
        stale: whether nobody waits for the views any more; looked at now and then.
        wood: the faces and edges of a board, where they aren't to be made from its shape.
    Returns:
        The views; None where nobody waits for them.
    """
    # The sheets are loaded by the process that draws, not by the window.
    from shopdraw.sheet.arrangement import hidden_of, is_drawn

    stands = [(board.shape, board.frame) for board in assembly.boards]
    made: Views = {}
    shown: dict[int, Shown] = {}
    for view, direction in DIRECTIONS.items():
        named = hidden_of(assembly, view)
        told = np.array([board.id in named for board in assembly.boards], dtype=np.bool_)
        rows = np.flatnonzero(of_use(stands, direction, told)).tolist()
        for row in rows:
            if stale():
                return None
            if row not in shown:
                shown[row] = Shown(wood(assembly.boards[row]), assembly.boards[row].frame)
        names = [assembly.boards[row].id for row in rows]
        here = standing([shown[row] for row in rows])
        lines = lines_of(here, names, direction, Meaning.VISIBLE, Meaning.HIDDEN, told[rows])
        made[view] = tuple(mark for mark in lines if is_drawn(mark, SHOWN_SCALE))
    if section:
        made[SECTION] = cut_through(assembly.boards, middle_plane(assembly), SHOWN_SCALE)
    return made


def board_alone(board: Board) -> tuple[Mark, ...]:
    """A board by itself: its reference face turned to the viewer, its edge below, hidden cuts dashed, mm.

    The edge view stands under the face, in projection with it.
    """
    flat = replace(board, frame=WORLD)
    face = project((flat,), PLAN)
    edge = project((flat,), FRONT)
    drop = board.thickness + 0.12 * max(board.length, board.width)
    low = min(y for mark in face if isinstance(mark, Line) for y in (mark.start[1], mark.end[1]))
    return (*face, *(_lowered(mark, drop - low) for mark in edge))


def _lowered(mark: Line | ArcMark, by: float) -> Line | ArcMark:
    if isinstance(mark, Line):
        return replace(mark, start=(mark.start[0], mark.start[1] - by), end=(mark.end[0], mark.end[1] - by))
    return replace(mark, centre=(mark.centre[0], mark.centre[1] - by))
