"""The rules that look at solids, asked by a second process where the system can split this one.

The second process is begun before anything large is imported: it imports what judges solids while this one reads and
builds the piece.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from shopdraw.cli.beside import Beside, Other, has_cores, may_split

if TYPE_CHECKING:
    from shopdraw.wood.assembly import Assembly
    from shopdraw.wood.finding import Ruled


class Solids:
    """What the rules that look at solids find in a piece."""

    def __init__(self, other: Beside | None) -> None:
        self._other = other
        self._assembly: Assembly | None = None

    def begin(self, assembly: Assembly) -> None:
        """The piece is built."""
        self._assembly = assembly
        if self._other is not None:
            self._other.tell(assembly)

    def found(self) -> Ruled:
        """What the rules found, waited for, or found now where there is no second process."""
        if self._other is not None:
            found: Ruled = self._other.outcome()
            return found
        from shopdraw.check.by_solids import by_solids

        assert self._assembly is not None
        return by_solids(self._assembly)


@contextmanager
def solids_judged() -> Iterator[Solids]:
    """Begins; left early, the second process is ended."""
    if not (has_cores() and may_split(wholly=True)):
        yield Solids(None)
        return
    with Beside(_judged, split=True) as other:
        yield Solids(other)


def _judged(other: Other) -> Ruled:
    from shopdraw.check.by_solids import by_solids

    return by_solids(other.hear())
