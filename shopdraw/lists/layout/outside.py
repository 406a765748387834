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
    """One problem, or the same sheets with three stages of cuts and with any number of them, side by side."""

    def __init__(self, task: BoardTask | SheetTask, stop: float) -> None:
        self._task = task
        self._stop = stop
        self._started: list[subprocess.Popen[str]] = []
        self._asked: list[str] = []
        seconds = stop - time.monotonic() - _UNSTARTED
        if seconds > 0 and is_there():
            for asked in _asked(task, seconds):
                self._asked.append(json.dumps(asked))
                self._started.append(_start())

    def __enter__(self) -> OutsideRun:
        """Hands the problems over."""
        for process, asked in zip(self._started, self._asked, strict=True):
            assert process.stdin is not None
            with contextlib.suppress(BrokenPipeError):  # it died at once: its entry is empty then
                process.stdin.write(asked)
                process.stdin.close()
            process.stdin = None
        return self

    def __exit__(self, *_: object) -> None:
        """Ends what still runs."""
        for process in self._started:
            if process.poll() is None:
                process.kill()
            process.communicate()

    def entries(self) -> list[Entry]:
        """The answers, waited for until the clock's stop; late ones count as none."""
        return [self._entry(process) for process in self._started]

    def _entry(self, process: subprocess.Popen[str]) -> Entry:
        try:
            told, _ = process.communicate(timeout=max(self._stop - time.monotonic(), 0.01))
        except subprocess.TimeoutExpired:
            return Entry(_NAME, None, hurried=True)
        answer = json.loads(told) if process.returncode == 0 and told else None
        if answer is None:
            return Entry(_NAME, None)
        if isinstance(self._task, BoardTask):
            return Entry(_NAME, boards_of(self._task, [(kind, tuple(fill)) for kind, fill in answer]))
        task = self._task
        waiting = [list(group) for group in task.groups]
        by_stock = sorted(answer, key=lambda one: int(one[0]))
        made = [cut_up(task.job, task.pieces[area], _node(task, tree, waiting)) for area, tree in by_stock]
        return Entry(_NAME, tuple(made))


def _start() -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, str(_WORKER)],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, encoding="utf-8",
    )


def _asked(task: BoardTask | SheetTask, seconds: float) -> list[dict[str, Any]]:
    if isinstance(task, BoardTask):
        lengths = task.lengths
        total = sum(lengths.demand)
        return [
            {
                "kind": "boards",
                "seconds": seconds,
                "sizes": list(zip(lengths.sizes, lengths.demand, strict=True)),
                "spaces": [
                    [space.capacity, space.cost, total if space.count is None else space.count]
                    for space in lengths.spaces
                ],
            }
        ]
    problem = task.problem
    sheets = {
        "kind": "sheets",
        "seconds": seconds,
        "wanted": [[one.x, one.y, one.count, one.free] for one in problem.wanted],
        "areas": [
            [area.x, area.y, area.cost, problem.number if area.count is None else area.count]
            for area in problem.areas
        ],
    }
    return [{**sheets, "stages": 3}, {**sheets, "stages": 0}]


def _node(task: SheetTask, tree: Any, waiting: list[list[Bundle]]) -> Node:
    if isinstance(tree[0], str):
        return Split("rip" if tree[0] == "rip" else "crosscut", tuple(_node(task, one, waiting) for one in tree[1]))
    kind, x = int(tree[0]), int(tree[1])
    wanted = task.problem.wanted[kind]
    return waiting[kind].pop(0).node(turned=wanted.free and x != wanted.x)
