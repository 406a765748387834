"""The three seasons in which a piece is looked at: as built, driest, wettest."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.wood.assembly import Assembly
from shopdraw.wood.interference import Wood
from shopdraw.wood.season import in_season
from shopdraw.wood.seasoned import seasoned_wood


@dataclass(frozen=True, slots=True)
class Season:
    """A piece in one season.

    Attributes:
        words: when, as a sentence has it: "as built", "in the driest season".
        moisture: of the wood, percent.
        assembly: the piece then.
        wood: a board's wood in the world then.
    """

    words: str
    moisture: float
    assembly: Assembly
    wood: Wood


def seasons(assembly: Assembly) -> tuple[Season, ...]:
    """The piece as built, then driest, then wettest; a season with the moisture of another one counts once."""
    found: list[Season] = []
    wood = seasoned_wood(assembly)
    m = assembly.moisture
    for words, moisture in (("as built", m.build), ("in the driest season", m.dry), ("in the wettest season", m.wet)):
        if all(abs(season.moisture - moisture) > 1e-9 for season in found):
            found.append(Season(words, moisture, in_season(assembly, moisture), wood))
    return tuple(found)
