"""The shop that a piece is made in, for what the window shows. Knows no Qt."""

from __future__ import annotations

from pathlib import Path

from shopdraw.piece.design import Design
from shopdraw.piece.fault import PieceError
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import ShopFile, shop_for


def shop_of(design: Design, path: Path | None) -> Shop:
    """The shop of a piece; the stated defaults where its file has faults, which are told on the shop's own page.

    Args:
        design: the piece's inputs.
        path: of the piece file, if it has one.
    """
    read = shop_read(design, path)
    return read.shop if read is not None else Shop()


def shop_read(design: Design, path: Path | None) -> ShopFile | None:
    """The shop of a piece as read, with the keys in its file that mean nothing; None where it has faults."""
    try:
        return shop_for(path, design)
    except PieceError:
        return None
