"""The contender for sheets: rip, then crosscut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.lists.layout.answer import CutUp, Way
from shopdraw.lists.layout.bundle import Bundle, by_size
from shopdraw.lists.layout.contender import Entry
from shopdraw.lists.layout.job import Piece, SheetJob
from shopdraw.lists.layout.rectangles import Area, CutSheet, Rectangle, Rectangles
from shopdraw.lists.layout.sheets import SheetSearch
from shopdraw.lists.layout.tree import Cutting, Node, Split
from shopdraw.lists.layout.whole import SHEET_UNIT, cost_unit, down, up


@dataclass(frozen=True, slots=True)
class SheetTask:
    """A job for sheets in whole numbers; `unit` is what a cost of 1 in the problem is worth."""

    job: SheetJob
    groups: tuple[tuple[Bundle, ...], ...]
    pieces: tuple[Piece, ...]
    problem: Rectangles
    unit: float


def sheet_task(job: SheetJob, bundles: Sequence[Bundle]) -> SheetTask:
    """The job in whole numbers: sheets less their trims; a kerf added to each part and once to each sheet."""
    groups = tuple(tuple(group) for group in by_size(bundles))
    pieces = tuple(piece for piece in job.stock if piece.count != 0)
    unit = cost_unit([piece.cost for piece in pieces])
    wanted = tuple(
        Rectangle(
            up(group[0].length + job.kerf, SHEET_UNIT), up(group[0].width + job.kerf, SHEET_UNIT),
            len(group), group[0].free,
        )
        for group in groups
    )
    areas = []
    for piece in pieces:
        x0, y0, x1, y1 = job.clear(piece)
        cost = piece.cost / unit
        areas.append(
            Area(
                down(x1 - x0 + job.kerf, SHEET_UNIT), down(y1 - y0 + job.kerf, SHEET_UNIT),
                float(round(cost)) if abs(cost - round(cost)) < 1e-6 else cost, piece.count,
            )
        )
    return SheetTask(job, groups, pieces, Rectangles(wanted, tuple(areas)), unit)


def strips(task: SheetTask, stop: float) -> Entry:
    """Strips with restarts and repairs.

    Args:
        task: the job.
        stop: the hard stop, by `worked`.
    """
    search = SheetSearch(task.problem, stop)
    best = search.run()
    made = None if best is None else sheets_of(task, best)
    return Entry("strips", made, task.unit * search.bound, search.hurried)


def sheets_of(task: SheetTask, cut: Sequence[CutSheet]) -> tuple[CutUp, ...]:
    """Cut sheets with their parts and cuts, in the order of the stock."""
    waiting = [list(group) for group in task.groups]
    return tuple(
        cut_up(task.job, task.pieces[sheet.area], _tree(sheet, waiting))
        for sheet in sorted(cut, key=lambda one: one.area)
    )


def cut_up(job: SheetJob, piece: Piece, node: Node) -> CutUp:
    """A sheet trimmed and then cut as its tree says."""
    cutting = Cutting(job.kerf)
    clear = job.clear(piece)
    cutting.trim((0.0, 0.0, piece.length, piece.width), clear)
    cutting.walk(node, clear)
    return CutUp(piece, tuple(cutting.laid), tuple(cutting.cuts), tuple(cutting.offcuts))


def _tree(sheet: CutSheet, waiting: list[list[Bundle]]) -> Node:
    """Strips, columns and parts as cuts within cuts."""
    first: Way = "crosscut" if sheet.across else "rip"
    then: Way = "rip" if sheet.across else "crosscut"
    return Split(
        first,
        tuple(
            Split(
                then,
                tuple(
                    Split(first, tuple(waiting[one.kind].pop(0).node(one.turned) for one in column.placed))
                    for column in strip.columns
                ),
            )
            for strip in sheet.strips
        ),
    )
