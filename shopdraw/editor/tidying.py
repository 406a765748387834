"""Python's search for rings of dead values would stop a hand for a tenth of a second: it waits until all is quiet.

Nothing is lost by waiting: nearly all values die as soon as nobody knows them any more, without a search.
"""

from __future__ import annotations

import gc
from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer

QUIET_MS = 1000
"""So long after a hand let go it is quiet: its views and findings are there, or a worker process makes them."""


MOST_NEW = 15_000
"""So many values may have come and stayed since the last search; beyond that the next one would be long."""


class Tidying(QObject):
    """Keeps the search off while a hand is at work and until it is quiet again."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.setInterval(QUIET_MS)
        self._quiet.timeout.connect(self._search)
        self.destroyed.connect(lambda _gone: gc.enable())
        self._settled = False
        self.busy: Callable[[], bool] = lambda: False
        """Whether something else is under way that shows its progress: the search waits for its end."""

    def hold(self) -> None:
        """Puts the search off: a hand is at work."""
        self._quiet.stop()
        if gc.get_count()[0] > MOST_NEW:
            # A hand that was never quiet since: it takes hold now and hasn't moved yet.
            gc.collect()
        gc.disable()
        if not self._settled:
            # What is there by now, mostly what was loaded, stays to the end: no search goes through it again.
            gc.freeze()
            self._settled = True

    def let_go(self) -> None:
        """Lets the search come once it is quiet."""
        self._quiet.start()

    def _search(self) -> None:
        """Searches now, when nobody waits, rather than at the next move of a hand."""
        if self.busy():
            self._quiet.start()
            return
        gc.enable()
        gc.collect()
