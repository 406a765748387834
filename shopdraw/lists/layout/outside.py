"""packingsolver as a contender, where it is installed (Python 3.12 and newer): in a worker process with a hard stop."""

from __future__ import annotations

import contextlib
import importlib.util
import json
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

from shopdraw.lists.layout.answer import CutUp
from shopdraw.lists.layout.boards import BoardTask, boards_of
from shopdraw.lists.layout.bundle import Bundle
from shopdraw.lists.layout.contender import Entry
from shopdraw.lists.layout.panels import SheetTask, cut_up
from shopdraw.lists.layout.tree import Node, Split

_NAME = "packingsolver"
_WORKER = Path(__file__).with_name("outside_worker.py")
_UNSTARTED = 0.3


def is_there() -> bool:
    """Whether the library is installed."""
    return importlib.util.find_spec(_NAME) is not None


class OutsideRun:
    """One problem, asked for while our own searches run."""

    def __init__(self, task: BoardTask | SheetTask, stop: float) -> None:
        self._task = task
        self._stop = stop
        self._process: subprocess.Popen[str] | None = None
        self._seconds = stop - time.monotonic() - _UNSTARTED

    def __enter__(self) -> OutsideRun:
        """Hands the problem over, where there is anybody to take it."""
        if self._seconds > 0 and is_there():
            self._process = _start()
            assert self._process.stdin is not None
            with contextlib.suppress(BrokenPipeError):  # it died at once: it has no answers then
                self._process.stdin.write(json.dumps(_asked(self._task, self._seconds)))
                self._process.stdin.close()
            self._process.stdin = None
        return self

    def __exit__(self, *_: object) -> None:
        """Ends it if it still runs."""
        if self._process is not None:
            if self._process.poll() is None:
                self._process.kill()
            self._process.communicate()

    def entries(self) -> list[Entry]:
        """The answers that have come by the clock's stop."""
        if self._process is None:
            return []
        late = False
        try:
            told, _ = self._process.communicate(timeout=max(self._stop - time.monotonic(), 0.01))
        except subprocess.TimeoutExpired:
            late = True
            self._process.kill()
            told, _ = self._process.communicate()
        whole = [line for line in told.splitlines(keepends=True) if line.endswith("\n")]
        answers = [answer for answer in map(json.loads, whole) if answer is not None]
        return [Entry(_NAME, self._cut_up(answer), hurried=late) for answer in answers] or [
            Entry(_NAME, None, hurried=late)
        ]

    def _cut_up(self, answer: list[Any]) -> tuple[CutUp, ...]:
        task = self._task
        if isinstance(task, BoardTask):
            return boards_of(task, [(kind, tuple(fill)) for kind, fill in answer])
        waiting = [list(group) for group in task.groups]
        by_stock = sorted(answer, key=lambda one: int(one[0]))
        return tuple(cut_up(task.job, task.pieces[area], _node(task, tree, waiting)) for area, tree in by_stock)


def _start() -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, str(_WORKER)],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, encoding="utf-8",
    )


def _asked(task: BoardTask | SheetTask, seconds: float) -> dict[str, Any]:
    """The problem in whole numbers. With several prices it finds nothing in any number of stages: three then."""
    if isinstance(task, BoardTask):
        lengths = task.lengths
        total = sum(lengths.demand)
        return {
            "kind": "boards",
            "seconds": seconds,
            "sizes": list(zip(lengths.sizes, lengths.demand, strict=True)),
            "spaces": [
                [space.capacity, space.cost, total if space.count is None else space.count] for space in lengths.spaces
            ],
        }
    problem = task.problem
    return {
        "kind": "sheets",
        "stages": [3, 0] if len({area.cost for area in problem.areas}) == 1 else [3],
        "seconds": seconds,
        "wanted": [[one.x, one.y, one.count, one.free] for one in problem.wanted],
        "areas": [
            [area.x, area.y, area.cost, problem.number if area.count is None else area.count]
            for area in problem.areas
        ],
    }


def _node(task: SheetTask, tree: Any, waiting: list[list[Bundle]]) -> Node:
    if isinstance(tree[0], str):
        return Split("rip" if tree[0] == "rip" else "crosscut", tuple(_node(task, one, waiting) for one in tree[1]))
    kind, x = int(tree[0]), int(tree[1])
    wanted = task.problem.wanted[kind]
    return waiting[kind].pop(0).node(turned=wanted.free and x != wanted.x)
