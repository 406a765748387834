"""Work that another process does meanwhile: begun at once, its outcome waited for at the end."""

from __future__ import annotations

import multiprocessing
import os
import signal
import sys
import threading
import warnings
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from multiprocessing.connection import Connection
from pathlib import Path
from types import TracebackType
from typing import Any

TASKS = Path("/proc/self/task")
"""Where the system lists this process's threads."""


class EndedEarly(RuntimeError):
    """The other process ended before it had told its outcome."""


def has_cores() -> bool:
    """Whether there is a second core, without which a second process only costs."""
    return (os.cpu_count() or 1) > 1


def may_split(*, wholly: bool) -> bool:
    """Whether this process may go on as two, so that the second finds everything worked out that the first has.

    A thread is not carried over, nor what it holds let go: with one running, the second process could wait for ever.
    Where splitting isn't the system's own way (only Linux's libraries are all made for it) the answer is no.

    Args:
        wholly: no thread at all may run, also none of a library; else only none of Python's own.
    """
    if sys.platform != "linux" or threading.active_count() > 1:
        return False
    try:
        return not wholly or len(list(TASKS.iterdir())) == 1
    except OSError:
        return False


class Other:
    """The first process, as the second one talks with it."""

    def __init__(self, pipe: Connection) -> None:
        self._pipe = pipe
        self._telling = ThreadPoolExecutor(max_workers=1)

    def hear(self) -> Any:
        """Waits for what the first process tells."""
        return self._pipe.recv()

    def tell(self, value: object) -> None:
        """Tells what the first process may wait for before the outcome; goes on at once, also while nobody listens."""
        self._telling.submit(self._pipe.send, (True, value))

    def told(self) -> None:
        """Waits until the first process has heard all."""
        self._telling.shutdown()


class Turns:
    """Rising numbers from 0, each told once to one of the processes that have split: whoever is free takes the next."""

    def __init__(self) -> None:
        self._next = multiprocessing.get_context("fork").Value("L", 0)

    def __iter__(self) -> Turns:
        return self

    def __next__(self) -> int:
        with self._next.get_lock():
            taken: int = self._next.value
            self._next.value = taken + 1
        return taken


class Beside:
    """A call made in another process. As a context: left early, the process is ended at once."""

    def __init__(self, what: Callable[..., Any], *words: object, split: bool) -> None:
        """Begins.

        Args:
            what: is called with the `Other`, then with the words; a module's own function, and words that can be
                pickled, unless the process splits.
            words: further arguments.
            split: see `may_split`; else a process of its own starts from nothing.
        """
        context = multiprocessing.get_context("fork" if split else "spawn")
        self._pipe, theirs = context.Pipe()
        self._process = context.Process(  # type: ignore[attr-defined]
            target=_run, args=(theirs, self._pipe if split else None, what, words), daemon=True
        )
        with warnings.catch_warnings():
            # A library's idle threads are named in a warning; `may_split` is the judge of them.
            warnings.simplefilter("ignore", DeprecationWarning)
            self._process.start()
        theirs.close()

    def tell(self, value: object) -> None:
        """Tells the other process what it waits for; nothing where that has ended already: its outcome says why."""
        with suppress(BrokenPipeError):
            self._pipe.send(value)

    def hear(self) -> Any:
        """Waits for what the other process tells next; the last it tells is its outcome.

        Raises:
            EndedEarly: the other process ended without a word.
            Exception: what it raised itself.
        """
        try:
            done, value = self._pipe.recv()
        except (EOFError, ConnectionResetError) as error:
            self._process.join()
            raise EndedEarly(f"a second process ended with {self._process.exitcode}") from error
        if not done:
            raise value
        return value

    outcome = hear
    """Waits for the outcome, when all that was told before it has been heard."""

    def __enter__(self) -> Beside:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None
    ) -> None:
        if kind is not None:
            self._process.terminate()
        self._pipe.close()
        self._process.join()
        self._process.close()


def _run(pipe: Connection, other: Connection | None, what: Callable[..., Any], words: tuple[object, ...]) -> None:
    """The second process. The first one alone hears the keyboard, and ends this one."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    if other is not None:
        other.close()
    outcome: tuple[bool, object]
    first = Other(pipe)
    try:
        outcome = (True, what(first, *words))
    except Exception as error:  # noqa: BLE001  # raised again where the outcome is waited for
        outcome = (False, error)
    first.told()
    pipe.send(outcome)
