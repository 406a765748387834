"""Reading a piece file: from bytes to a Design, or to faults that say where, what was found and what would be right.

The order is: bytes, text, TOML, format (migrations), variant, types. Keys that nobody knows are cautions and stay in
the text, which is kept as it was read; saving changes that text and never writes a Design back.
"""

from __future__ import annotations

import re
import tomllib
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
from shopdraw.piece.unknown import UnknownKey, unknown_keys
from shopdraw.piece.variant import VARIANT, NoSuchVariant, with_variant

LARGEST_FILE = 4_000_000
"""Bytes; a piece file of a thousand boards has a tenth of it."""

BYTE_ORDER_MARK = "\ufeff"
_TOML_PLACE = re.compile(r"\s*\(at (?:line (\d+), column \d+|end of document)\)$")


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
    return parse_piece(_text_of(path, source), source, variant=variant, path=path)


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
    return _text_of(Path(path), str(path)).removeprefix(BYTE_ORDER_MARK)


def unit_of(tables: Mapping[str, Any]) -> Unit:
    """The unit of bare numbers in the file; mm where it states none that is known."""
    piece = tables.get("piece")
    word = piece.get("units") if isinstance(piece, Mapping) else None
    return next((unit for unit in Unit if unit.value == word), Unit.MM)


def _text_of(path: Path, source: str) -> str:
    def refuse(found: str, right: str) -> PieceError:
        return PieceError(source, (Fault(0, "", found, right),))

    try:
        if path.is_dir():
            raise refuse("a folder", "expected a piece file")
        with path.open("rb") as file:
            data = file.read(LARGEST_FILE + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise refuse("", f"can't be read ({reason[:1].lower()}{reason[1:]}); expected a piece file") from error
    if len(data) > LARGEST_FILE:
        raise refuse(f"more than {LARGEST_FILE // 1_000_000} MB", "expected a piece file, which is a short text")
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        fault = Fault(line, "", f"the byte 0x{data[error.start]:02x}", "expected text saved as UTF-8")
        raise PieceError(source, (fault,)) from error


def _tables_of(text: str, source: str) -> dict[str, Any]:
    if not text.strip():
        right = f'expected a piece file: format = {FORMAT}, then [piece], [case] with its width, height and depth'
        raise PieceError(source, (Fault(0, "", "an empty file", right),))
    try:
        return tomllib.loads(text)
    except RecursionError as error:
        right = "expected lists and tables that are not nested hundreds deep"
        raise PieceError(source, (Fault(0, "", "", right),)) from error
    except ValueError as error:
        raise PieceError(source, (_toml_fault(error, text),)) from error


def _toml_fault(error: ValueError, text: str) -> Fault:
    said = str(error)
    place = _TOML_PLACE.search(said)
    lines = text.split("\n")
    line = int(place[1]) if place and place[1] else len(text.rstrip().split("\n")) if place else 0
    reason = _TOML_PLACE.sub("", said) if place else "a number is too long"
    if reason.startswith("Cannot overwrite a value") or "twice" in reason:
        right = "expected each key and each table once"
    else:
        right = f"expected TOML, key = value or [table] ({reason[:1].lower()}{reason[1:]})"
    found = lines[line - 1].strip() if 0 < line <= len(lines) else ""
    return Fault(line, "", f"`{found[:60]}`" if found else "", right)


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
