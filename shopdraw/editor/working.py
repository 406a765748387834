"""Work that would hold up the window, done in a worker process: full views and findings.

Threads would gain nothing (one piece of Python runs at a time), and a process of its own keeps its solids between jobs.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QTimer, Signal

from shopdraw.editor.job import (
    Worked,
    collisions_job,
    findings_job,
    give_way,
    know_newest,
    nothing_job,
    router_job,
    sheets_job,
    views_ahead_job,
    views_job,
)
from shopdraw.editor.state import State
from shopdraw.editor.tongue import translate
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding

if TYPE_CHECKING:
    from concurrent.futures import Future, ProcessPoolExecutor

FIRST_MS = 40
"""So long after it was asked for the first job is begun."""
VIEWS, CHECKS, SHEETS = "views", "checks", "sheets"
"""Three worker processes: views never wait for findings, nor findings for sheets."""


class Working(QObject):
    """Works out views and findings of the latest state; what was asked for earlier and isn't begun is dropped.

    Signals:
        done: a state and what was worked out of it.
        collided: ids of boards that run into each other.
        failed: a sentence, when a job broke down.
    """

    done = Signal(object, object)
    collided = Signal(object)
    failed = Signal(str)

    def __init__(self, parent: QObject | None = None, *, apart: bool = True) -> None:
        """Makes ready.

        Args:
            parent: owner.
            apart: in a worker process; else at once, in this one.
        """
        super().__init__(parent)
        self._apart = apart
        self._pools: dict[str, ProcessPoolExecutor] = {}
        self._waiting: list[Future[Worked]] = []
        self._slow: list[Future[Worked]] = []
        self._latest: State | None = None
        self._path: Path | None = None
        self._ahead: tuple[str, Future[Worked]] | None = None
        self._newest: Any = None
        self._closed = False
        self.done.connect(self._check)

    def warm(self) -> None:
        """Starts the worker process before it is needed."""
        if self._apart:
            self._executor(VIEWS).submit(nothing_job)

    def ask(self, state: State, *, section: bool = False, path: Path | None = None) -> None:
        """Asks for views and findings of a state, the views first.

        Args:
            state: which.
            section: whether the section is wanted as well.
            path: of the piece file: it tells which shop's cutters the findings are for.
        """
        design, assembly = state.design, state.assembly
        if design is None or assembly is None:
            return
        for future in self._waiting:
            future.cancel()
        self._latest = state
        self._path = path
        if self._apart and VIEWS not in self._pools:
            # The window comes first: worker processes are started when it is up.
            QTimer.singleShot(FIRST_MS, lambda: self._begin(state, section=section))
        else:
            self._begin(state, section=section)

    def _begin(self, state: State, *, section: bool) -> None:
        if state is not self._latest or self._closed:
            return
        ahead, self._ahead = self._ahead, None
        if ahead is not None and ahead[0] == state.text and not section and not ahead[1].cancelled():
            ahead[1].add_done_callback(lambda finished: self._tell(state, finished))
            self._waiting = [ahead[1]]
            return
        if ahead is not None:
            ahead[1].cancel()
        self._newer()
        self._waiting = [self._do(VIEWS, state, views_job, state.assembly, section)]

    def ask_ahead(self, state: State) -> None:
        """Has the views of a state made before they are asked for: a hand that drags has come to it and may stay.

        What was asked for ahead of it is given up.
        """
        if VIEWS not in self._pools or state.design is None:
            return
        if self._ahead is not None:
            if self._ahead[0] == state.text:
                return
            self._ahead[1].cancel()
        future = self._executor(VIEWS).submit(views_ahead_job, state.design, self._newer())
        self._ahead = (state.text, future)

    def _newer(self) -> int:
        """The number of a job before which all that was made ahead is given up."""
        if self._newest is None:
            return 0
        self._newest.value += 1
        return int(self._newest.value)

    def _check(self, state: State, worked: Worked) -> None:
        """Asks for findings once the views are there: on two cores they would slow each other down."""
        piece, assembly = state.piece, state.assembly
        if worked.views is not None and state is self._latest and piece is not None and assembly is not None:
            asked = (piece.design, assembly, piece.cautions, self._path)
            self._waiting.append(self._do(CHECKS, state, findings_job, *asked))

    def ask_for_sheets(self, state: State, found: tuple[Finding, ...], path: Path | None = None) -> None:
        """Asks for the sheets of a state; the piece file's path tells which shop they are drawn for."""
        if state.design is not None and state.assembly is not None:
            for future in self._slow:
                future.cancel()
            self._slow = [self._do(SHEETS, state, sheets_job, state.design, state.assembly, found, path)]

    def ask_for_router(self, state: State, board: Board, path: Path | None) -> None:
        """Asks for a board as the router gets it; the piece file's path tells which shop's cutters it has."""
        if state.design is not None:
            self._do(SHEETS, state, router_job, state.design, board, path)

    def ask_for_collisions(self, boards: tuple[Board, ...]) -> None:
        """Asks which of some boards run into each other where they stand."""
        if self._apart:
            future = self._executor(CHECKS).submit(collisions_job, boards)
            future.add_done_callback(self._tell_collisions)
        else:
            self.collided.emit(collisions_job(boards))

    def close(self) -> None:
        """Ends the worker processes."""
        self._closed = True
        for pool in self._pools.values():
            # A slow job must not hold up the closing of the window.
            for process in list((pool._processes or {}).values()):
                process.terminate()
            pool.shutdown(wait=True, cancel_futures=True)
        self._pools.clear()

    def _do(self, pool: str, state: State, job: Callable[..., Worked], *of: object) -> Future[Worked]:
        from concurrent.futures import Future

        if self._apart:
            future = self._executor(pool).submit(job, *of)
        else:
            future = Future()
            try:
                future.set_result(job(*of))
            except Exception as error:  # noqa: BLE001  # told below, as a worker's own breakdown is
                future.set_exception(error)
        # Signals cross from the pool's thread to the window's by Qt's own queue.
        future.add_done_callback(lambda finished: self._tell(state, finished))
        return future

    def _tell(self, state: State, future: Future[Worked]) -> None:
        if future.cancelled() or self._closed:
            return
        error = future.exception()
        if error is not None:
            told = translate("Working", "This couldn't be worked out ({kind}): {why}")
            self.failed.emit(told.format(kind=type(error).__name__, why=error))
        else:
            self.done.emit(state, future.result())

    def _tell_collisions(self, future: Future[frozenset[str]]) -> None:
        if not future.cancelled() and future.exception() is None:
            self.collided.emit(future.result())

    def _executor(self, pool: str) -> ProcessPoolExecutor:
        if pool not in self._pools:
            # Loaded when the first job is begun: the window is up by then.
            import multiprocessing
            from concurrent.futures import ProcessPoolExecutor

            context = multiprocessing.get_context("spawn")
            # What nobody waits for at the end of a drag gives way to the window and to the views.
            begin: Callable[[], None] = give_way
            if pool == VIEWS:
                self._newest = context.RawValue("q", 0)
                begin = partial(know_newest, self._newest)
            self._pools[pool] = ProcessPoolExecutor(1, mp_context=context, initializer=begin)
        return self._pools[pool]
