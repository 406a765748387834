"""Parts that would fit side by side if a saw took nothing."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.lists.layout.job import Job, Piece

_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Shortfall:
    """Equal parts in a row that miss by the kerf, mm.

    Attributes:
        piece: the board or sheet.
        way: "length" or "width": along which of its extents they lie.
        count: how many.
        size: of each.
        needed: parts and kerfs together.
        short_by: how much more that is than the piece has.
        largest: the largest size of which as many fit.
    """

    piece: Piece
    way: str
    count: int
    size: float
    needed: float
    short_by: float
    largest: float


def shortfall(piece: Piece, way: str, extent: float, size: float, count: int, kerf: float) -> Shortfall | None:
    """How much a row of equal parts misses an extent by; None where it fits, or wouldn't even without a kerf."""
    needed = count * size + (count - 1) * kerf
    if count < 2 or count * size > extent + _NEAR or needed <= extent + _NEAR:
        return None
    return Shortfall(piece, way, count, size, needed, needed - extent, (extent - (count - 1) * kerf) / count)


def shortfalls(job: Job) -> Iterator[Shortfall]:
    """Every size of a job of which one more would fit a piece if the saw took nothing, each once."""
    seen: set[tuple[str, str, float]] = set()
    for piece in job.stock:
        x0, y0, x1, y1 = job.clear(piece)
        for way, extent in (("length", x1 - x0), ("width", y1 - y0)):
            sizes = [part.length if way == "length" else part.width for part in job.parts]
            for size in sizes:
                count = math.floor(extent / size + _NEAR)
                found = shortfall(piece, way, extent, size, count, job.kerf)
                alike = sum(abs(other - size) <= _NEAR for other in sizes)
                if found is not None and alike >= count and (piece.id, way, round(size, 3)) not in seen:
                    seen.add((piece.id, way, round(size, 3)))
                    yield found
