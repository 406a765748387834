"""Reading a piece file: from bytes to a Design, or to faults that say where, what was found and what would be right.

The order is: bytes, text, TOML, format (migrations), variant, types. Keys that nobody knows are cautions and stay in
the text, which is kept as it was read; saving changes that text and never writes a Design back.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pydantic import ValidationError

from shopdraw.measure import Unit
from shopdraw.piece.address import Path as Address
from shopdraw.piece.design import Design
from shopdraw.piece.fault import Fault, PieceError, with_lines
from shopdraw.piece.migration import FORMAT, LaterFormat, migrated
from shopdraw.piece.quantity import in_unit
from shopdraw.piece.refusal import faults_of, shown
from shopdraw.piece.shaping import shaped, with_long_ids
from shopdraw.piece.source_text import BYTE_ORDER_MARK, tables_of, text_of
from shopdraw.piece.unknown import UnknownKey, unknown_keys
from shopdraw.piece.variant import VARIANT, NoSuchVariant, with_variant

WHAT = "a piece file"


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece file as read.

    Attributes:
        design: what it says, typed, in mm and degrees.
        path: where it was read from; None for a text without a file.
        text: the file's text as it stands (in the present format, if it was brought up from an earlier one).
        cautions: keys that mean nothing here.
        changed: what a migration changed, a sentence each; empty for a file of the present format.
    """

    design: Design
    path: Path | None
    text: str
    cautions: tuple[UnknownKey, ...] = ()
    changed: tuple[str, ...] = ()


def read_piece(path: Path | str, variant: str | None = None) -> Piece:
    """The piece in a file.

    Args:
        path: the piece file.
        variant: name of a variant in it to lay over it.
    Raises:
        PieceError: it can't be read, with every fault that was found.
    """
    path = Path(path)
    source = str(path)
    return parse_piece(text_of(path, source, WHAT), source, variant=variant, path=path)


def parse_piece(text: str, source: str = "piece", *, variant: str | None = None, path: Path | None = None) -> Piece:
    """The piece in a text.

    Args:
        text: the contents of a piece file.
        source: what faults call the text: a file's name.
        variant: name of a variant in it to lay over it.
        path: the file that it came from, if any.
    Raises:
        PieceError: it can't be read, with every fault that was found.
    """
    text = text.removeprefix(BYTE_ORDER_MARK)
    tables = _tables_of(text, source)
    text, changed = _in_present_format(text, tables, source)
    if changed:
        tables = _tables_of(text, source)
    plain, places = with_long_ids({key: tables[key] for key in tables if key != VARIANT})
    cautions = unknown_keys(Design, plain, text, places)
    origin: dict[Address, Address] = {}
    try:
        if variant is not None:
            laid, origin = with_variant(tables, variant)
            plain, places = with_long_ids(laid)
    except NoSuchVariant as error:
        raise PieceError(source, with_lines((error.fault,), text)) from error
    try:
        design = Design.model_validate(shaped(plain), context=in_unit(unit_of(plain)))
    except ValidationError as error:
        raise PieceError(source, faults_of(error, Design, plain, text, {**places, **origin})) from error
    return Piece(design, path, text, cautions, changed)


def piece_text(path: Path | str) -> str:
    """The text of a piece file as it stands on the disk, sound or not, without a mark of byte order.

    Raises:
        PieceError: it can't be read, is far too large, or isn't UTF-8.
    """
    return text_of(Path(path), str(path), WHAT).removeprefix(BYTE_ORDER_MARK)


def unit_of(tables: Mapping[str, Any]) -> Unit:
    """The unit of bare numbers in the file; mm where it states none that is known."""
    piece = tables.get("piece")
    word = piece.get("units") if isinstance(piece, Mapping) else None
    return next((unit for unit in Unit if unit.value == word), Unit.MM)


def _tables_of(text: str, source: str) -> dict[str, Any]:
    right = f"expected {WHAT}: format = {FORMAT}, then [piece], [case] with its width, height and depth"
    return tables_of(text, source, right)


def _in_present_format(text: str, tables: Mapping[str, Any], source: str) -> tuple[str, tuple[str, ...]]:
    """The text brought up to the present format; a file that states none is taken to be of the present one."""
    stated = tables.get("format", FORMAT)
    if isinstance(stated, bool) or not isinstance(stated, int) or stated < 1:
        fault = Fault(0, "format", shown(stated), f"expected format = {FORMAT}")
        raise PieceError(source, with_lines((fault,), text))
    try:
        return migrated(text, stated)
    except LaterFormat as error:
        right = f"expected format {FORMAT} or earlier: a later version of shopdraw wrote this file; it is left as it is"
        raise PieceError(source, with_lines((Fault(0, "format", shown(stated), right),), text)) from error
