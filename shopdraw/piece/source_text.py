"""From a file's bytes to TOML tables, or to a fault that says where, what was found and what would be right."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path
from typing import Any

from shopdraw.piece.fault import Fault, PieceError

LARGEST_FILE = 4_000_000
"""Bytes; a piece file of a thousand boards has a tenth of it."""

BYTE_ORDER_MARK = "\ufeff"
_TOML_PLACE = re.compile(r"\s*\(at (?:line (\d+), column \d+|end of document)\)$")


def text_of(path: Path, source: str, what: str) -> str:
    """A file's text as it stands on the disk.

    Args:
        path: the file.
        source: what faults call it.
        what: what was expected: "a piece file".
    Raises:
        PieceError: it can't be read, is far too large, or isn't UTF-8.
    """

    def refuse(found: str, right: str) -> PieceError:
        return PieceError(source, (Fault(0, "", found, right),))

    try:
        if path.is_dir():
            raise refuse("a folder", f"expected {what}")
        with path.open("rb") as file:
            data = file.read(LARGEST_FILE + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise refuse("", f"can't be read ({reason[:1].lower()}{reason[1:]}); expected {what}") from error
    if len(data) > LARGEST_FILE:
        raise refuse(f"more than {LARGEST_FILE // 1_000_000} MB", f"expected {what}, which is a short text")
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        fault = Fault(line, "", f"the byte 0x{data[error.start]:02x}", "expected text saved as UTF-8")
        raise PieceError(source, (fault,)) from error


def tables_of(text: str, source: str, right: str) -> dict[str, Any]:
    """A text's tables.

    Args:
        text: TOML.
        source: what faults call it.
        right: what would be right where there is no text at all.
    Raises:
        PieceError: it isn't TOML; with the line.
    """
    if not text.strip():
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
