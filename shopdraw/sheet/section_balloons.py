"""Balloons of the sections: boards that no outside view shows are labelled where they are cut."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence

from shopdraw.drawing.mark import Area, Line, Meaning
from shopdraw.shape.inside import depth_inside
from shopdraw.shape.path import Path, Point, bounds
from shopdraw.sheet.sections import Cut
from shopdraw.sheet.view import Balloon
from shopdraw.wood.assembly import Assembly

_STEPS = 12
_DEEP = 0.8
BEST_FIRST = "CEABD"
"""Sections that hold few rows and labels take theirs first."""
LEAST_PAPER = 1.2
"""Cut wood narrower than this on paper can't be pointed at."""


def section_balloons(
    assembly: Assembly, cuts: Sequence[Cut], labelled: Iterable[str], scale: float
) -> Mapping[str, tuple[Balloon, ...]]:
    """Labels by section.

    Args:
        assembly: the piece.
        cuts: the sections.
        labelled: ids of boards that other views label.
        scale: of the sections.
    """
    cuts = sorted(cuts, key=lambda cut: BEST_FIRST.find(cut.plane.letter))
    waiting = [board for board in assembly.boards if board.id not in set(labelled)]
    found: dict[str, list[Balloon]] = {cut.plain.id: [] for cut in cuts}
    done: set[str] = set()
    for cut in cuts:
        faces: dict[str, list[Path]] = {}
        for mark in cut.plain.marks:
            if isinstance(mark, Area):
                faces.setdefault(mark.board, []).append(mark.outline)
        for board in waiting:
            if board.id in done or board.id not in faces:
                continue
            points = [point for path in faces[board.id] for point in inner_points(path, LEAST_PAPER / scale)]
            if points:
                found[cut.plain.id].append(Balloon(board.label, points[0], "dot", (), board.id, tuple(points[1:])))
                done.add(board.id)
    for board in waiting:
        if board.id not in done and (edge := _longest_edge(board.id, cuts)) is not None:
            view, ends = edge
            found[view].append(Balloon(board.label, ends[0], "arrow", (), board.id, ends[1:]))
    return {view: tuple(balloons) for view, balloons in found.items()}


def _longest_edge(board: str, cuts: Sequence[Cut]) -> tuple[str, tuple[Point, ...]] | None:
    """The section that shows most of a board that is too thin to point into, or stands behind: points on its edge."""
    lines = [
        (math.dist(mark.start, mark.end), cut.plain.id, mark)
        for cut in cuts
        for mark in cut.plain.marks
        if isinstance(mark, Line) and mark.board == board and mark.meaning in (Meaning.CUT, Meaning.BEHIND)
    ]
    if not lines:
        return None
    _, view, line = max(lines, key=lambda found: (round(found[0], 3), found[1], found[2].start))
    (ax, ay), (bx, by) = line.start, line.end
    return view, tuple((ax + share * (bx - ax), ay + share * (by - ay)) for share in (0.5, 0.25, 0.75, 0.1, 0.9))


def inner_points(path: Path, least: float) -> tuple[Point, ...]:
    """Points well inside an outline, its middle first, then its ends; none if it is narrower than `least` mm."""
    x0, y0, x1, y1 = bounds(path)
    grid = [
        (x0 + (i + 0.5) * (x1 - x0) / _STEPS, y0 + (j + 0.5) * (y1 - y0) / _STEPS)
        for i in range(_STEPS)
        for j in range(_STEPS)
    ]
    middle = (x0 + x1) / 2, (y0 + y1) / 2
    depths = {point: round(depth_inside(path, point), 3) for point in (*grid, middle)}
    deepest = max(depths.values())
    if 2 * deepest < least:
        return ()
    deep = [point for point, depth in depths.items() if depth >= _DEEP * deepest]
    first = min(deep, key=lambda p: (round(abs(p[0] - middle[0]) + abs(p[1] - middle[1]), 3), p))
    along = sorted(deep, key=lambda p: p if x1 - x0 > y1 - y0 else p[::-1])
    spread = (along[round(share * (len(along) - 1))] for share in (0.25, 0.75, 0.1, 0.9))
    return tuple(dict.fromkeys((first, *spread)))
