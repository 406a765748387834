"""The cutters that a shop file names, as the router's files use them."""

from __future__ import annotations

from shopdraw.cnc.cutter import Cutter
from shopdraw.piece.shop import Shop


def cutters_of(shop: Shop) -> tuple[Cutter, ...] | None:
    """The shop's cutters in the file's order; None where it names none, so that the stated defaults hold."""
    if not shop.cutter:
        return None
    return tuple(
        Cutter(key, table.kind, table.diameter, table.cutting_length, table.plunge, table.angle or 90.0)
        for key, table in shop.cutter.items()
    )
