"""Laying out a job: the contenders try, the checker judges each answer, the best one that it passes wins."""

from __future__ import annotations

import time
from functools import lru_cache

from shopdraw.lists.layout.answer import Layout, Misfit
from shopdraw.lists.layout.boards import board_task, fillings, largest_first
from shopdraw.lists.layout.bundle import Bundle, prepared
from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.clock import worked
from shopdraw.lists.layout.contender import Entry
from shopdraw.lists.layout.job import BoardJob, Job, SheetJob
from shopdraw.lists.layout.outside import OutsideRun
from shopdraw.lists.layout.panels import sheet_task, strips
from shopdraw.lists.layout.rectangles import least_cost

SECONDS = 5.0
"""The longest a job may take."""
_FOR_THE_REST = 0.5


class NoLayout(Exception):
    """No contender has an answer that the checker passes; the message says why."""


@lru_cache(maxsize=256)
def lay_out(job: Job, seconds: float = SECONDS) -> Layout:
    """The best layout found: least cost, then fewest boards or sheets, then the largest single offcut.

    Args:
        job: what to cut from what.
        seconds: of work, the hard stop; on jobs of furniture's size the searches end long before it by themselves.
    Raises:
        NoLayout: the boards or sheets on hand run out, and nothing may be bought.
    """
    fit, bundles, misfits = prepared(job)
    if not bundles:
        return Layout(fit, (), 0.0, "nothing to cut", misfits)
    return _judged(fit, misfits, _entries(fit, bundles, seconds - _FOR_THE_REST))


def bound_of(job: SheetJob) -> float:
    """What no layout of a job for sheets costs less than, known before anything is searched; 0 where nothing fits."""
    fit, bundles, _ = prepared(job)
    if not bundles or not isinstance(fit, SheetJob):
        return 0.0
    task = sheet_task(fit, bundles)
    return task.unit * least_cost(task.problem)


def _entries(job: Job, bundles: tuple[Bundle, ...], seconds: float) -> list[Entry]:
    stop, on_the_wall = worked() + seconds, time.monotonic() + seconds
    if isinstance(job, BoardJob):
        boards = board_task(job, bundles)
        with OutsideRun(boards, on_the_wall) as outside:
            own = [largest_first(boards), fillings(boards, stop)]
            return own if _reached(own) else [*own, *outside.entries()]
    sheets = sheet_task(job, bundles)
    with OutsideRun(sheets, on_the_wall) as outside:
        own = [strips(sheets, stop)]
        return own if _reached(own) else [*own, *outside.entries()]


def _reached(entries: list[Entry]) -> bool:
    """An answer costs no more than the bound: nobody can do better."""
    bound = max(entry.bound for entry in entries)
    return any(
        sum(cut.piece.cost for cut in entry.cut_up) <= bound * (1 + 1e-9) + 1e-9
        for entry in entries
        if entry.cut_up is not None
    )


def _judged(job: Job, misfits: tuple[Misfit, ...], entries: list[Entry]) -> Layout:
    bound = max(entry.bound for entry in entries)
    hurried = any(entry.hurried for entry in entries)
    best: Layout | None = None
    faults: list[str] = []
    for entry in entries:
        if entry.cut_up is None:
            continue
        layout = Layout(job, entry.cut_up, bound, entry.contender, misfits, hurried)
        wrong = faults_of_layout(layout)
        faults += [f"{entry.contender}: {fault}" for fault in wrong]
        if not wrong and (best is None or _key(layout) < _key(best)):
            best = layout
    if best is None:
        reason = f"; what was found can't be cut: {faults[0]}" if faults else ""
        raise NoLayout(f"there aren't enough boards or sheets for {len(job.parts)} parts{reason}")
    return best


def _key(layout: Layout) -> tuple[float, int, float]:
    return round(layout.cost, 6), len(layout.cut_up), -round(layout.largest_offcut, 3)
