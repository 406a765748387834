"""Gaps in words: as they are at build, and in the driest and the wettest season."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.measure import write_length
from shopdraw.sheet.figure import Writing
from shopdraw.wood.assembly import Moisture
from shopdraw.wood.board import Stock


@dataclass(frozen=True, slots=True)
class Gap:
    """An open space that wood closes or opens as it moves.

    Attributes:
        build: at build, mm.
        across: how much wood lies across its grain beside the gap, mm.
        stock: that wood's.
        moisture: of the seasons.
        closes: swelling closes the gap; else it opens it.
    """

    build: float
    across: float
    stock: Stock
    moisture: Moisture
    closes: bool = True

    def at(self, moisture: float) -> float:
        """The gap at a moisture content in percent, mm."""
        growth = self.across * self.stock.coefficient * (moisture - self.moisture.build)
        return self.build - growth if self.closes else self.build + growth


def words_of_gap(gap: Gap, writing: Writing) -> str:
    """As "3.2 (3.6 dry, 2.4 wet)"; one figure where the wood doesn't move."""
    build, dry, wet = (
        write_length(gap.at(m), writing.fit) for m in (gap.moisture.build, gap.moisture.dry, gap.moisture.wet)
    )
    if dry == build == wet:
        return build
    return f"{build} ({dry} dry, {wet} wet)"
