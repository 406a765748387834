"""All fillings of a one-way problem, where they are few."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.lists.layout.lengths import Fill, Lengths

MOST_FILLS = 20_000
"""With more than these, fillings are made as they are needed (column generation)."""


def all_fills(lengths: Lengths, most: int = MOST_FILLS) -> list[tuple[int, Fill]] | None:
    """Every filling to which nothing can be added, for each kind of space; None where there are more than `most`."""
    found: list[tuple[int, Fill]] = []
    for kind, space in enumerate(lengths.spaces):
        for fill in _full(lengths, space.capacity):
            found.append((kind, fill))
            if len(found) > most:
                return None
    return found


def _full(lengths: Lengths, capacity: int) -> Iterator[Fill]:
    """Fillings that leave no room for any size that is still wanted. Largest size first, most of it first."""
    sizes, demand = lengths.sizes, lengths.demand
    fill = [0] * len(sizes)

    def from_size(i: int, room: int, missed: int) -> Iterator[Fill]:
        """`missed`: the smallest size of which fewer were taken than are wanted; it must not fit at the end."""
        if i == len(sizes):
            if room < missed and any(fill):
                yield tuple(fill)
            return
        for count in range(min(demand[i], room // sizes[i]), -1, -1):
            fill[i] = count
            short = sizes[i] if count < demand[i] else missed
            yield from from_size(i + 1, room - count * sizes[i], min(missed, short))
        fill[i] = 0

    yield from from_size(0, capacity, capacity + 1)
