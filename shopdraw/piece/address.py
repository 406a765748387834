"""Addresses: where a value stands in a piece file, as a path of keys (``opening.bank.divide.keys``)."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping, Sequence
from typing import Any

Path = tuple[str | int, ...]
"""An address taken apart: keys of tables, positions in lists."""

_BARE = re.compile(r"[A-Za-z0-9_-]+")


class NotAnAddress(ValueError):
    """The text can't be read as a path of keys."""


def address_text(path: Sequence[str | int]) -> str:
    """The path as a person writes it: keys joined by dots, quoted where TOML wants quotes, positions in brackets."""
    text = ""
    for part in path:
        if isinstance(part, int):
            text += f"[{part}]"
            continue
        key = part if _BARE.fullmatch(part) else quoted(part)
        text += f".{key}" if text else key
    return text


def address_path(text: str) -> tuple[str, ...]:
    """The keys of a written address.

    Raises:
        NotAnAddress: empty, an empty key, a quote that isn't closed.
    """
    if "\n" in text or ("=" in text and not ('"' in text or "'" in text)):
        raise NotAnAddress(text)
    try:
        tables: Any = tomllib.loads(f"{text} = 0")
    except ValueError as error:
        raise NotAnAddress(text) from error
    keys: list[str] = []
    while isinstance(tables, dict):
        if len(tables) != 1:
            raise NotAnAddress(text)
        key, tables = next(iter(tables.items()))
        keys.append(key)
    return tuple(keys)


def quoted(text: str) -> str:
    """The text as a TOML basic string on one line."""
    escapes = {"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t", "\r": "\\r", "\b": "\\b", "\f": "\\f"}
    return '"' + "".join(escapes.get(c) or (c if c.isprintable() else f"\\u{ord(c):04X}") for c in text) + '"'


def value_at(tables: object, path: Sequence[str | int]) -> object:
    """The value at the path, or None where there is none."""
    node = tables
    for part in path:
        if isinstance(node, list | tuple):
            in_it = isinstance(part, int) and 0 <= part < len(node)
        else:
            in_it = isinstance(node, Mapping) and part in node
        if not in_it:
            return None
        node = node[part]  # type: ignore[index]  # a list with a position or a table with a key: seen above
    return node


def file_path(path: Path, places: Mapping[Path, Path]) -> Path:
    """Where an address stands in the file, if it or a table above it stands in another place than it says."""
    for length in range(len(path), 0, -1):
        if path[:length] in places:
            return (*places[path[:length]], *path[length:])
    return path
