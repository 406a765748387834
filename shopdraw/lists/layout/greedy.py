"""First answers to the one-way problem: largest first into the fullest space that holds it."""

from __future__ import annotations

from shopdraw.lists.layout.lengths import Fill, Lengths


def best_fit(lengths: Lengths, order: tuple[int, ...]) -> tuple[tuple[int, Fill], ...] | None:
    """Best-fit decreasing; then each space is exchanged for the cheapest kind that holds its contents.

    Args:
        lengths: the problem.
        order: kinds of spaces, the one to open first at the front.
    Returns:
        None where the counted spaces run out.
    """
    left = [space.count for space in lengths.spaces]
    opened: list[tuple[int, list[int]]] = []
    room: list[int] = []
    for size_index, size in enumerate(lengths.sizes):
        for _ in range(lengths.demand[size_index]):
            fitting = [i for i, space in enumerate(room) if space >= size]
            if fitting:
                place = min(fitting, key=lambda i: room[i])
            else:
                kind = next((k for k in order if lengths.spaces[k].capacity >= size and left[k] != 0), None)
                if kind is None:
                    return None
                _take(left, kind)
                place = len(opened)
                opened.append((kind, [0] * len(lengths.sizes)))
                room.append(lengths.spaces[kind].capacity)
            opened[place][1][size_index] += 1
            room[place] -= size
    return tuple((_cheapest(lengths, kind, room[i], left), tuple(fill)) for i, (kind, fill) in enumerate(opened))


def _take(left: list[int | None], kind: int) -> None:
    count = left[kind]
    if count is not None:
        left[kind] = count - 1


def _cheapest(lengths: Lengths, kind: int, room: int, left: list[int | None]) -> int:
    """The cheapest kind of space that holds what is in this one; the counts are kept."""
    needed = lengths.spaces[kind].capacity - room
    best = kind
    for other, space in enumerate(lengths.spaces):
        if space.capacity >= needed and left[other] != 0 and space.cost < lengths.spaces[best].cost:
            best = other
    if best != kind:
        _take(left, best)
        count = left[kind]
        if count is not None:
            left[kind] = count + 1
    return best
