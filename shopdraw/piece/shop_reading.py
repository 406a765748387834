"""Reading a shop file, and finding the one that a piece is made with.

The order is: the one named on the command line, the one that the piece names (a path relative to the piece file), the
user's own in the configuration folder, the stated defaults.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from pydantic import ValidationError

from shopdraw.measure import Unit
from shopdraw.piece.design import Design
from shopdraw.piece.fault import Fault, PieceError, with_lines
from shopdraw.piece.quantity import in_unit
from shopdraw.piece.refusal import faults_of, shown
from shopdraw.piece.shaping import tuples
from shopdraw.piece.shop import Shop
from shopdraw.piece.source_text import BYTE_ORDER_MARK, tables_of, text_of
from shopdraw.piece.unknown import UnknownKey, unknown_keys

SHOP_FORMAT = 1
WHAT = "a shop file"
OWN_FILE = "shop.toml"
_FOLDER = "shopdraw"


@dataclass(frozen=True, slots=True)
class ShopFile:
    """A shop file as read.

    Attributes:
        shop: what it says, typed, in mm.
        path: where it was read from; None for the stated defaults.
        text: the file's text as it stands.
        cautions: keys that mean nothing here.
    """

    shop: Shop = field(default_factory=Shop)
    path: Path | None = None
    text: str = ""
    cautions: tuple[UnknownKey, ...] = ()


def read_shop(path: Path | str) -> ShopFile:
    """The shop in a file.

    Raises:
        PieceError: it can't be read, with every fault that was found.
    """
    path = Path(path)
    return parse_shop(text_of(path, str(path), WHAT), str(path), path=path)


def parse_shop(text: str, source: str = "shop", *, path: Path | None = None) -> ShopFile:
    """The shop in a text.

    Args:
        text: the contents of a shop file.
        source: what faults call the text: a file's name.
        path: the file that it came from, if any.
    Raises:
        PieceError: it can't be read, with every fault that was found.
    """
    text = text.removeprefix(BYTE_ORDER_MARK)
    tables = tables_of(text, source, f"expected {WHAT}: format = {SHOP_FORMAT}, then [shop], [saw], [cutter.ID], …")
    stated = tables.get("format", SHOP_FORMAT)
    if isinstance(stated, bool) or not isinstance(stated, int) or not 1 <= stated <= SHOP_FORMAT:
        fault = Fault(0, "format", shown(stated), f"expected format = {SHOP_FORMAT}; the file is left as it is")
        raise PieceError(source, with_lines((fault,), text))
    cautions = tuple(
        UnknownKey(key.line, key.address, key.nearest, WHAT) for key in unknown_keys(Shop, tables, text, {})
    )
    try:
        shop = Shop.model_validate(tuples(tables), context=in_unit(_unit_of(tables)))
    except ValidationError as error:
        raise PieceError(source, faults_of(error, Shop, tables, text, {})) from error
    return ShopFile(shop, path, text, cautions)


def shop_for(piece_path: Path | None, design: Design, given: Path | str | None = None) -> ShopFile:
    """The shop that a piece is made in.

    Args:
        piece_path: the piece file; the one that it names is found from there.
        design: what the piece says.
        given: a shop file named by the user for this run.
    Raises:
        PieceError: the file that counts can't be read.
    """
    if given is not None:
        return read_shop(given)
    if design.piece.shop:
        beside = piece_path.parent if piece_path is not None else Path()
        return read_shop(beside / design.piece.shop)
    own = own_shop_path(os.environ, sys.platform)
    return read_shop(own) if own is not None and own.is_file() else ShopFile()


def own_shop_path(environment: Mapping[str, str], platform: str) -> Path | None:
    """Where the user's own shop file lies, whether it is there or not; None where the system says no home.

    Args:
        environment: the process's own.
        platform: as `sys.platform`.
    Source:
        XDG Base Directory Specification (freedesktop.org): $XDG_CONFIG_HOME, relative paths ignored, else ~/.config;
        elsewhere the systems' own folders.
    """
    home = environment.get("USERPROFILE" if platform == "win32" else "HOME", "")
    if platform == "win32":
        folder = environment.get("APPDATA", "")
        base = Path(folder) if folder else Path(home) / "AppData" / "Roaming" if home else None
    elif platform == "darwin":
        base = Path(home) / "Library" / "Application Support" if home else None
    else:
        folder = environment.get("XDG_CONFIG_HOME", "")
        base = Path(folder) if folder.startswith("/") else Path(home) / ".config" if home else None
    return None if base is None else base / _FOLDER / OWN_FILE


def _unit_of(tables: Mapping[str, Any]) -> Unit:
    """The unit of bare numbers in the file; mm where it states none that is known."""
    table = tables.get("shop")
    word = table.get("units") if isinstance(table, Mapping) else None
    return next((unit for unit in Unit if unit.value == word), Unit.MM)
