"""All fillings of a one-way problem, where they are few."""

from __future__ import annotations

from bisect import bisect_left

from shopdraw.lists.layout.lengths import Fill, Lengths

_STEPS_EACH = 30
"""Sizes looked at, for each filling that may be found: with many sizes it is soon clear that they won't be few."""


class _TooMany(Exception):
    """There are more fillings than were asked for."""


def all_fills(lengths: Lengths, most: int) -> list[tuple[int, Fill]] | None:
    """Every filling to which nothing can be added, for each kind of space; None where there are more than `most`."""
    listing = _Listing(lengths, most)
    try:
        for kind, space in enumerate(lengths.spaces):
            listing.of_space(kind, space.capacity)
    except _TooMany:
        return None
    return listing.found


class _Listing:
    """Fillings put together size by size, largest first."""

    def __init__(self, lengths: Lengths, most: int) -> None:
        self.found: list[tuple[int, Fill]] = []
        self._sizes = lengths.sizes
        self._ascending = [-size for size in lengths.sizes]
        self._left = list(lengths.demand)
        self._demand = lengths.demand
        self._most = most
        self._steps = _STEPS_EACH * most

    def of_space(self, kind: int, capacity: int) -> None:
        """Adds the fillings of one kind of space."""
        self._from(kind, 0, capacity)

    def _from(self, kind: int, i: int, room: int) -> None:
        """Goes on with sizes from the i-th on."""
        self._steps -= len(self._sizes) - i + 1
        if self._steps < 0:
            raise _TooMany
        first = bisect_left(self._ascending, -room)
        went_on = False
        for j in range(max(i, first), len(self._sizes)):
            if self._left[j]:
                went_on = True
                self._left[j] -= 1
                self._from(kind, j, room - self._sizes[j])
                self._left[j] += 1
        if went_on or any(self._left[first:i]):
            return
        fill = tuple(wanted - left for wanted, left in zip(self._demand, self._left, strict=True))
        if any(fill):
            self.found.append((kind, fill))
            if len(self.found) > self._most:
                raise _TooMany
