"""A long job in a process of its own, one at a time: it may take its time, and a person may give it up."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from shopdraw.editor.tongue import translate

if TYPE_CHECKING:
    from concurrent.futures import Future, ProcessPoolExecutor


class Apart(QObject):
    """One job at a time.

    Signals:
        done: what came of it.
        failed: a sentence, when it broke down.
        given_up: a person gave it up.
    """

    done = Signal(object)
    failed = Signal(str)
    given_up = Signal()

    def __init__(self, parent: QObject | None = None, *, apart: bool = True) -> None:
        """Makes ready.

        Args:
            parent: owner.
            apart: in a process of its own; else at once, in this one.
        """
        super().__init__(parent)
        self._apart = apart
        self._pool: ProcessPoolExecutor | None = None
        self._future: Future[Any] | None = None

    @property
    def busy(self) -> bool:
        """Whether a job is under way."""
        return self._future is not None

    def begin(self, job: Callable[..., object], *of: object) -> None:
        """Begins a job; one that is under way is given up for it."""
        # Loaded when the first job is begun: the window opens without it.
        import multiprocessing
        from concurrent.futures import Future, ProcessPoolExecutor

        self.close()
        future: Future[Any]
        if self._apart:
            self._pool = ProcessPoolExecutor(1, mp_context=multiprocessing.get_context("spawn"))
            future = self._pool.submit(job, *of)
        else:
            future = Future()
            try:
                future.set_result(job(*of))
            except Exception as error:  # noqa: BLE001  # told below, as a process's own breakdown is
                future.set_exception(error)
        self._future = future
        # The signal crosses from the pool's thread to the window's by Qt's own queue.
        future.add_done_callback(self._tell)

    def give_up(self) -> None:
        """Ends the process; what it made before stays in sight."""
        if self._future is not None:
            self.close()
            self.given_up.emit()

    def close(self) -> None:
        """Ends the process without a word."""
        self._future = None
        pool, self._pool = self._pool, None
        if pool is not None:
            for process in list((pool._processes or {}).values()):
                process.terminate()
            pool.shutdown(wait=True, cancel_futures=True)

    def _tell(self, future: Future[Any]) -> None:
        if future is not self._future or future.cancelled():
            return
        self._future = None
        error = future.exception()
        if error is not None:
            told = translate("Working", "This couldn't be worked out ({kind}): {why}")
            self.failed.emit(told.format(kind=type(error).__name__, why=error))
        else:
            self.done.emit(future.result())
