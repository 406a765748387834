"""Short ways to say facts: a size between two places, a chain, a distance from one origin, words at a leader."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from shopdraw.sheet.fact import Fact, Feature, Rank


def size_between(a: Feature, b: Feature, rank: Rank, views: Sequence[str], where: str = "", **choices: object) -> Fact:
    """A linear fact between two features, called after both.

    Args:
        where: added to its id where another view tells it first: it is then printed in ( ).
        choices: further fields of `Fact`.
    """
    name = f"{a.id}/{b.id}" + (f", {where}" if where else "")
    return Fact(name, a, b, rank, tuple(views), **choices)  # type: ignore[arg-type]


def chain_of(
    name: str,
    places: Sequence[Feature],
    rank: Rank,
    views: Sequence[str],
    closing: int | None,
    where: str = "",
    **choices: object,
) -> tuple[Fact, ...]:
    """Links from place to place in one row, rounded together.

    Args:
        name: of the chain.
        places: in order.
        closing: number of the link that is printed in ( ), since it follows from the overall; None for none.
        where: added to the links' ids.
        choices: further fields of `Fact`.
    """
    links = [size_between(a, b, rank, views, where, chain=name, **choices) for a, b in pairwise(places)]
    return tuple(replace(link, reference=True) if i == closing else link for i, link in enumerate(links))


def running_from(
    name: str,
    origin: Feature,
    places: Iterable[Feature],
    rank: Rank,
    views: Sequence[str],
    where: str = "",
    **choices: object,
) -> tuple[Fact, ...]:
    """Distances of places from one origin, on one line."""
    return tuple(
        size_between(origin, place, rank, views, where, kind="running", chain=name, **choices) for place in places
    )


def note_at(name: str, place: Feature, words: str, rank: Rank, views: Sequence[str], **choices: object) -> Fact:
    """Words at the end of a leader."""
    return Fact(name, place, place, rank, tuple(views), kind="note", words=words, **choices)  # type: ignore[arg-type]


def least_link(places: Sequence[Feature], view: str, axis: int) -> int | None:
    """Number of the shortest link of a chain, as a view has it: the one to close with; None without a link."""
    found = tuple(_lengths(places, view, axis))
    return min(range(len(found)), key=lambda i: (round(found[i], 4), -i)) if found else None


def _lengths(places: Sequence[Feature], view: str, axis: int) -> Iterator[float]:
    for a, b in pairwise(places):
        one, two = a.sight(view), b.sight(view)
        yield abs(one.point[axis] - two.point[axis]) if one is not None and two is not None else float("inf")
