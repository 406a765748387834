"""Chains within chains: links that add up to what longer rows print for the same stretch."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shopdraw.measure import exact_mm, round_chain, steps_in

Pair = frozenset[str]


@dataclass(frozen=True, slots=True)
class Links:
    """A chain's links in order: sizes in mm, and the features that they go from and to."""

    sizes: tuple[float, ...]
    ends: tuple[tuple[str, str], ...]

    def corners(self) -> tuple[str, ...] | None:
        """The features along the chain, one more than links; None where two neighbours share none."""
        if len(self.ends) == 1:
            return self.ends[0]
        first = next((f for f in self.ends[0] if f not in self.ends[1]), None)
        if first is None:
            return None
        found = [first]
        for ends in self.ends:
            if found[-1] not in ends:
                return None
            found.append(ends[1] if ends[0] == found[-1] else ends[0])
        return tuple(found)


def nested_steps(links: Links, known: Mapping[Pair, int], step: Fraction) -> tuple[int, ...]:
    """The links in whole steps.

    Where a stretch of the chain, or the whole of it, is printed elsewhere, its links make what is printed there; the
    others make the rest of the chain's overall. Where that would take a figure more than a step from its exact size,
    the chain is rounded by itself.

    Args:
        links: in order.
        known: steps already printed between two features.
        step: mm.
    """
    alone = round_chain(links.sizes, step).links
    corners = links.corners()
    if corners is None:
        return alone
    printed: dict[int, int] = {}
    own = steps_in(sum((exact_mm(size) for size in links.sizes), Fraction(0)), step)
    # A longer row may have rounded the whole of this chain as one of its links.
    rest_total = known.get(frozenset((corners[0], corners[-1])), own) if len(corners) > 2 else own
    for low, high, total in _known_stretches(corners, known):
        found = _made(links.sizes[low:high], total, step)
        if found is None:
            return alone
        printed.update(zip(range(low, high), found, strict=True))
        rest_total -= total
    rest = [i for i in range(len(links.sizes)) if i not in printed]
    found = _made([links.sizes[i] for i in rest], rest_total, step)
    if found is None:
        return alone
    printed.update(zip(rest, found, strict=True))
    return tuple(printed[i] for i in range(len(links.sizes)))


def _known_stretches(corners: Sequence[str], known: Mapping[Pair, int]) -> list[tuple[int, int, int]]:
    """Stretches of a chain that are printed elsewhere, shortest first, none over another, the whole left out."""
    count = len(corners) - 1
    taken: list[tuple[int, int, int]] = []
    for length in range(1, count):
        for low in range(count - length + 1):
            high = low + length
            total = known.get(frozenset((corners[low], corners[high])))
            if total is not None and all(high <= a or low >= b for a, b, _ in taken):
                taken.append((low, high, total))
    return taken


def _made(sizes: Sequence[float], total: int, step: Fraction) -> tuple[int, ...] | None:
    """Links that make a given total, none more than a step from its exact size; None where there are no such."""
    if not sizes:
        return () if total == 0 else None
    exact = [exact_mm(size) for size in sizes]
    whole = sum(exact, Fraction(0))
    # Sizes that make the total as they are stay as they are: a hair off a whole step would close its next one to them.
    shift = (total * step - whole) / len(exact) if steps_in(whole, step) != total else Fraction(0)
    if any(size + shift < 0 for size in exact):
        return None
    links = round_chain([size + shift for size in exact], step).links
    near = all(abs(link * step - size) <= step for link, size in zip(links, exact, strict=True))
    return links if near and sum(links) == total else _nearest(exact, total, step)


def _nearest(exact: Sequence[Fraction], total: int, step: Fraction) -> tuple[int, ...] | None:
    """Links that make a total, each within a step: from the nearest figures on, those furthest off give way."""
    links = [steps_in(size, step) for size in exact]
    missing = total - sum(links)
    way = 1 if missing > 0 else -1
    order = sorted(range(len(links)), key=lambda i: (way * (links[i] * step - exact[i]), -i))
    for i in order[: abs(missing)]:
        links[i] += way
    near = all(link >= 0 and abs(link * step - size) <= step for link, size in zip(links, exact, strict=True))
    return tuple(links) if near and sum(links) == total else None
