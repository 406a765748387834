"""Panels wider than any board: which boards they are glued up from."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations_with_replacement

_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Width:
    """A width that boards come in, mm.

    Attributes:
        sold: as the yard has it.
        clear: what is left once both edges are jointed.
    """

    sold: float
    clear: float


@dataclass(frozen=True, slots=True)
class GlueUp:
    """The boards of one panel before it is glued up.

    Attributes:
        widths: of its boards, widest first.
        length: to cut them to, mm.
    """

    widths: tuple[Width, ...]
    length: float

    @property
    def clear(self) -> float:
        """Width of the panel as glued, mm."""
        return sum(width.clear for width in self.widths)


def staves(width: float, length: float, widths: Sequence[Width]) -> tuple[float, ...]:
    """Finished widths of the boards of a panel, from its near edge, mm; empty for one that a single board makes.

    What the boards have over its width is trimmed off its two edges alike.

    Args:
        width: of the finished panel, mm.
        length: of it, mm.
        widths: what boards there are.
    """
    if not widths or width <= max(one.clear for one in widths) + _NEAR:
        return ()
    made = glue_up(width, length, widths)
    if made is None:
        return ()
    trim = (made.clear - width) / 2
    clear = [one.clear for one in made.widths]
    return (clear[0] - trim, *clear[1:-1], clear[-1] - trim)


def rough_width(sold: float, edge_loss: float) -> Width:
    """A rough board's width: it loses as much on each edge that is jointed."""
    return Width(sold, sold - 2 * edge_loss)


def glue_up(width: float, length: float, widths: Sequence[Width]) -> GlueUp | None:
    """The boards for a panel: the least wood, then the fewest boards, then the most even ones.

    Args:
        width: of the finished panel, mm.
        length: to which its boards are cut, trim at the ends included, mm.
        widths: what boards there are.
    Returns:
        None where there are no boards of any clear width.
    """
    usable = sorted({one for one in widths if one.clear > _NEAR}, key=lambda one: (-one.clear, one.sold))
    if not usable:
        return None
    fewest = math.ceil(width / usable[0].clear - _NEAR)
    most = min(math.ceil(width / usable[-1].clear - _NEAR), fewest + 2)
    choices = [
        chosen
        for number in range(max(1, fewest), max(1, most) + 1)
        for chosen in combinations_with_replacement(usable, number)
        if sum(one.clear for one in chosen) >= width - _NEAR
    ]
    best = min(choices, key=lambda one: (sum(w.sold for w in one), len(one), one[0].clear - one[-1].clear))
    return GlueUp(best, length)
