"""The wood of boards, kept from one size that a hand passes to the next. Knows no Qt: a worker process has it."""

from __future__ import annotations

from shopdraw.wood.board import Board, Shape
from shopdraw.wood.carried import carried
from shopdraw.wood.facet import Facets, facets
from shopdraw.wood.solid import made

MOST = 1500
"""So many boards' facets are kept: a long drag passes hundreds of sizes that nobody will see again."""


class KeptWood:
    """Facets of boards: where a board has but changed its sizes those it had are carried over, else they are made."""

    def __init__(self) -> None:
        self._made: dict[str, tuple[Shape, Facets]] = {}
        self._known: dict[Shape, Facets] = {}

    def of(self, board: Board) -> Facets:
        """The faces and edges of a board's wood, in its own frame."""
        shape = board.shape
        known = self._known.get(shape)
        if known is not None:
            return known
        base = self._made.get(board.id)
        # always from what solids have made, so that steps never add up errors
        found = carried(base[1], base[0], shape) if base is not None else None
        if found is None:
            found = facets(shape)
            self._made[board.id] = (shape, found)
        self._known[shape] = found
        return found

    def tidy(self) -> None:
        """Forgets sizes that were passed when there are many of them."""
        if len(self._known) > MOST:
            self._known = dict(self._made.values())
            facets.cache_clear()
            made.cache_clear()
