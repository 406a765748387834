"""What the canvas shows of a piece: the marks of each view. Pure, so that a worker process can make it. Knows no Qt."""

from __future__ import annotations

from shopdraw.drawing.mark import ArcMark, Line, Mark
from shopdraw.editor.arrangement import DIRECTIONS
from shopdraw.view.projection import project
from shopdraw.wood.assembly import Assembly

Views = dict[str, tuple[Mark, ...]]
"""View id to marks in the view's own plane, true-size mm."""


def full_views(assembly: Assembly) -> Views:
    """Front, side and plan with hidden lines."""
    made: Views = {}
    for view, direction in DIRECTIONS.items():
        lines: tuple[Line | ArcMark, ...] = project(assembly.boards, direction)
        made[view] = lines
    return made
