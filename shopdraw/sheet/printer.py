"""A printer's correction: what a template is stretched by, so that it comes out of that printer at true size.

A printer moves the paper and prints across it by different means, so the two directions err differently. The feed is
taken to run along a cut sheet's long side, and along a roll page's (common practice); the page says so.
"""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.piece.shop import Shop
from shopdraw.shape.path import Point

FEED = "feed along the page's long side"


@dataclass(frozen=True, slots=True)
class Correction:
    """What a page is stretched by.

    Attributes:
        printer: its id in the shop file.
        along, across: factors along the feed and across it; 1 changes nothing.
    """

    printer: str
    along: float
    across: float

    def on(self, width: float, height: float) -> Point:
        """The factors across and up a page of this size, mm."""
        return (self.along, self.across) if width > height else (self.across, self.along)

    def words(self, decimal_sign: str = ".") -> str:
        """What the page says that it carries."""
        along, across = (f"{factor:.5f}".replace(".", decimal_sign) for factor in (self.along, self.across))
        return f"Corrected for printer {self.printer}: × {along} along the feed, × {across} across; {FEED}."


def correction_of(shop: Shop) -> Correction | None:
    """The correction for the printer that templates go to: the one named as a habit, else the only one there is.

    Args:
        shop: where the templates are printed.
    """
    name = shop.habit.printer or (next(iter(shop.printer)) if len(shop.printer) == 1 else "")
    if not name:
        return None
    printer = shop.printer[name]
    return Correction(name, printer.along_feed, printer.across_feed)
