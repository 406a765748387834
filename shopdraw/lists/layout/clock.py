"""The clock that stops a search: this process's own work, so that a busy machine doesn't end one earlier."""

from __future__ import annotations

import time

WALL_TIMES = 4.0
"""A library that knows only the clock on the wall is given so many times the seconds of work that are left."""


def worked() -> float:
    """Seconds that this process has worked; what else the machine does doesn't count."""
    return time.process_time()
