"""The shop that a piece is made in, for what the window shows. Knows no Qt."""

from __future__ import annotations

from pathlib import Path

from shopdraw.piece.design import Design
from shopdraw.piece.fault import PieceError
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import shop_for


def shop_of(design: Design, path: Path | None) -> Shop:
    """The shop of a piece; the stated defaults where its file has faults, which are told on the shop's own page.

    Args:
        design: the piece's inputs.
        path: of the piece file, if it has one.
    """
    try:
        return shop_for(path, design).shop
    except PieceError:
        return Shop()
