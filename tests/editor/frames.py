"""Frames of a window while something else is going on, beside a process that does nothing."""

from __future__ import annotations

import subprocess
import sys
import time
from types import TracebackType

from PySide6.QtCore import QTimer

FRAME_MS = 16
LATE = 0.1
"""Seconds after which a person sees a frame come late."""
_IDLE = """\
import sys, threading, time
ended = threading.Event()
threading.Thread(target=lambda: (sys.stdin.read(), ended.set()), daemon=True).start()
last, most = time.monotonic(), 0.0
while not ended.is_set():
    time.sleep(0.016)
    now = time.monotonic()
    last, most = now, max(most, now - last)
print(most)
"""


class Frames:
    """Counts a frame every 16 ms; used with `with`.

    Attributes:
        gaps: seconds between frames by the clock.
        own: seconds of the processor that this thread took between frames: how long it held itself up.
        idle: the longest gap of a process that only waits, in the same time on the same machine.
    """

    def __init__(self) -> None:
        self.gaps: list[float] = []
        self.own: list[float] = []
        self.idle = 0.0
        self._timer = QTimer()
        self._timer.timeout.connect(self._frame)

    def __enter__(self) -> Frames:
        self._other = subprocess.Popen(
            [sys.executable, "-c", _IDLE], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
        )
        self._last, self._last_own = time.monotonic(), time.thread_time()
        self._timer.start(FRAME_MS)
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._timer.stop()
        told, _ = self._other.communicate()
        self.idle = float(told)

    def _frame(self) -> None:
        now, own = time.monotonic(), time.thread_time()
        self.gaps.append(now - self._last)
        self.own.append(own - self._last_own)
        self._last, self._last_own = now, own
