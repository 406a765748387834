"""Free nesting: parts by their true outlines, turned half round as they please, where a router cuts and no saw.

Each part in turn goes as far to the left and then as far down as it may; orders are tried by size and then by chance of
a fixed seed, a counted number of them, so that the same job gives the same answer.
"""

from __future__ import annotations

import math
import random
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from shopdraw.cnc.nested_sheet import Nesting
from shopdraw.lists.layout.job import Piece
from shopdraw.shape.no_fit import Blank, Lying, first_place

_SEED = 3
PLACES = 160
"""Parts placed in all attempts together, about: the search's own end, the same on every machine; about a second."""
MOST_ATTEMPTS = 40
_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Loose:
    """A part to be nested.

    Attributes:
        id: of its board.
        blank: its outline.
        free: its grain may run across the sheet's.
    """

    id: str
    blank: Blank
    free: bool = False

    def turns(self, liked: int | None) -> tuple[tuple[int, ...], ...]:
        """Right angles by which it may be turned; those come first that lay its grain as is liked (1: across)."""
        if not self.free:
            return ((0, 2),)
        if liked is None:
            return ((0, 1, 2, 3),)
        return ((liked, liked + 2), (1 - liked, 3 - liked))


@dataclass(frozen=True, slots=True)
class Spot:
    """Where a part lies: its board's id, the lower left of its box, mm, and right angles anticlockwise."""

    part: str
    x: float
    y: float
    quarters: int = 0


@dataclass(slots=True)
class Filled:
    """A sheet and what lies on it."""

    piece: Piece
    spots: list[Spot] = field(default_factory=list)
    lying: list[Lying] = field(default_factory=list)


def least_cost(parts: Sequence[Loose], pieces: Sequence[Piece], how: Nesting) -> float:
    """No nesting costs less: the parts' own areas against what is clear of each sheet, the cheapest area first."""
    left = sum(part.blank.area for part in parts)
    clear = [(piece, _clear_area(piece, how)) for piece in pieces if _clear_area(piece, how) > 0]
    cost = 0.0
    for piece, area in sorted(clear, key=lambda one: one[0].cost / one[1]):
        taken = min(left / area, math.inf if piece.count is None else float(piece.count))
        cost += piece.cost * (math.ceil(taken - _NEAR) if len(clear) == 1 else taken)
        left -= taken * area
        if left <= _NEAR:
            break
    return cost


def free_nest(
    parts: Sequence[Loose], pieces: Sequence[Piece], gap: float, how: Nesting, below: float
) -> tuple[Filled, ...] | None:
    """The cheapest nesting found that costs less than `below`; None where none does.

    Args:
        parts: each fits some sheet.
        pieces: sheets, those on hand first.
        gap: between outlines, mm.
        how: margins and keep-out strips.
        below: what another nesting costs.
    """
    best: tuple[Filled, ...] | None = None
    least = least_cost(parts, pieces, how)
    for order in _orders(parts):
        made = _attempt(order, pieces, gap, how)
        cost = math.inf if made is None else sum(one.piece.cost for one in made)
        if made is not None and cost < below - _NEAR:
            best, below = tuple(made), cost
        if below <= least + _NEAR:
            break
    return best


_Turn = tuple[Loose, int | None]
"""A part whose turn it is, and how its grain is liked to lie."""


def _orders(parts: Sequence[Loose]) -> Iterator[list[_Turn]]:
    """Largest first by several measures, then by area shaken by chance, with the grain this way or that."""
    measures = {part.id: (part.blank.area, *part.blank.size, max(part.blank.size)) for part in parts}
    attempts = max(2, min(MOST_ATTEMPTS, PLACES // max(1, len(parts))))
    for by in range(min(4, attempts)):
        ordered = sorted(parts, key=lambda part, by=by: (-measures[part.id][by], part.id))  # type: ignore[misc]
        yield [(part, None) for part in ordered]
    chance = random.Random(_SEED)
    for _ in range(attempts - 4):
        shaken = {part.id: part.blank.area * chance.uniform(0.6, 1.4) for part in parts}
        liked = {part.id: chance.choice((0, 1)) for part in parts}
        yield [(part, liked[part.id]) for part in sorted(parts, key=lambda one: (-shaken[one.id], one.id))]


def _attempt(order: Sequence[_Turn], pieces: Sequence[Piece], gap: float, how: Nesting) -> list[Filled] | None:
    """Sheets filled in the order of parts; None where the counted sheets run out."""
    made: list[Filled] = []
    left = {piece.id: piece.count for piece in pieces}
    for part in order:
        if any(_laid(part, sheet, gap, how) for sheet in made):
            continue
        for piece in sorted(pieces, key=lambda one: (not one.on_hand, one.cost / (one.length * one.width))):
            fresh = Filled(piece)
            if left[piece.id] != 0 and _laid(part, fresh, gap, how):
                count = left[piece.id]
                left[piece.id] = None if count is None else count - 1
                made.append(fresh)
                break
        else:
            return None
    return made


def _laid(turn: _Turn, sheet: Filled, gap: float, how: Nesting) -> bool:
    """Lays a part on a sheet, turned as it ends furthest to the left; False where there is no room."""
    margin = how.margin
    room = (margin, margin, sheet.piece.length - margin, sheet.piece.width - margin)
    closed = (*how.keep_out, *sheet.piece.defects)
    part, liked = turn
    for turns in part.turns(liked):
        found: list[tuple[float, float, int, Blank, float]] = []
        for quarters in turns:
            turned = part.blank.turned(quarters)
            place = first_place(room, sheet.lying, turned, gap, closed)
            if place is not None:
                found.append((round(place[0] + turned.size[0], 3), place[1], quarters, turned, place[0]))
        if found:
            break
    else:
        return False
    _, y, quarters, turned, x = min(found, key=lambda one: one[:3])
    sheet.spots.append(Spot(part.id, x, y, quarters))
    sheet.lying.append(Lying(turned, (x, y)))
    return True


def _clear_area(piece: Piece, how: Nesting) -> float:
    return max(0.0, piece.length - 2 * how.margin) * max(0.0, piece.width - 2 * how.margin)
