"""Saving a piece file: one value changed, all else as a person wrote it; written beside, then renamed."""

from __future__ import annotations

import contextlib
import copy
import os
import pickle
import tempfile
import tomllib
from collections.abc import Mapping, MutableMapping
from functools import lru_cache
from pathlib import Path
from typing import Any

import tomlkit
from tomlkit.exceptions import TOMLKitError
from tomlkit.items import AbstractTable

from shopdraw.piece.address import NotAnAddress, address_path, address_text

Typed = str | int | float | bool | list[Any]
"""What a person may type as a value; text such as "31 1/2 in" stays text."""


class CannotSave(Exception):
    """The file wasn't written; what stood there before is untouched."""


class CannotSet(ValueError):
    """The address can't take a value in this file."""


def save_piece(path: Path | str, text: str) -> None:
    """Writes the text as the piece file, whole or not at all.

    It is written beside the target, flushed to the disk and renamed over it, with the old file's mode; a link stays a
    link. Should any step fail, the old file is byte for byte what it was.

    Raises:
        CannotSave: with a line that names the file and the reason.
    """
    try:
        target = Path(os.path.realpath(path))
        data = text.encode("utf-8")
        if target.is_dir():
            raise IsADirectoryError(0, "Is a folder")
        if target.exists() and not os.access(target, os.W_OK):
            raise PermissionError(0, "Is write-protected")
        _replace(target, data)
    except (OSError, ValueError) as error:
        reason = (getattr(error, "strerror", None) or str(error)).rstrip(".")
        told = f"can't be saved ({reason[:1].lower()}{reason[1:]})"
        raise CannotSave(f"{path}: {told}; the file is as it was: save it in another place") from error


def _replace(target: Path, data: bytes) -> None:
    handle, name = tempfile.mkstemp(dir=target.parent, prefix=f".{target.name[:40]}.", suffix=".part")
    beside = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        beside.chmod(target.stat().st_mode & 0o7777 if target.exists() else 0o666 & ~_umask())
        beside.replace(target)
    except BaseException:
        beside.unlink(missing_ok=True)
        raise
    _flush_folder(target.parent)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask


def _flush_folder(folder: Path) -> None:
    """Makes the rename itself last; not every system can open a folder, and there it needs no help."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def set_value(text: str, address: str, value: Typed) -> str:
    """The text with one value set; comments, order and all other values stay as they are.

    Args:
        text: a well-formed piece file.
        address: where (``case.width``); tables on the way that aren't there are made.
        value: as typed: "31 1/2 in" stays that text.
    Raises:
        CannotSet: no address; it leads through a plain value; a table stands there.
    """
    if isinstance(value, str):
        return _set_word(text, address, value)
    return _set_any(text, address, value)


def _set_any(text: str, address: str, value: Typed) -> str:
    path = _path(address)
    fitted = _fitted(text, path, value)
    return _set(text, path, value) if fitted is None else fitted


@lru_cache(maxsize=8)
def _set_word(text: str, address: str, value: str) -> str:
    """The same for words: a drag that sets a word beside a size does so at each of its steps."""
    return _set_any(text, address, value)


def _set(text: str, path: tuple[str, ...], value: Typed) -> str:
    address = address_text(path)

    def change(document: MutableMapping[str, Any]) -> None:
        node: Any = document
        for length, key in enumerate(path[:-1], start=1):
            if key not in node:
                node[key] = tomlkit.table() if _has_header(node) else tomlkit.inline_table()
            node = node[key]
            if not isinstance(node, MutableMapping):
                raise CannotSet(f"{address}: {address_text(path[:length])} is a value, not a table")
        if isinstance(node.get(path[-1]), Mapping):
            raise CannotSet(f"{address}: a table stands there; expected the address of one value")
        node[path[-1]] = value

    return _changed(text, change, lambda tables: _lay(tables, path, value), address)


_MARK = "value-that-is-set-here"


def _fitted(text: str, path: tuple[str, ...], value: Typed) -> str | None:
    """The text with a value put where one was put before; None where that isn't known to say what it should."""
    place = _place(text, path)
    if place is None:
        return None
    expected = tomllib.loads(text)
    _lay(expected, path, value)
    try:
        result = place[0] + tomlkit.item(value).as_string() + place[1]
        return result if _same(tomllib.loads(result), expected) else None
    except (TOMLKitError, TypeError, ValueError):
        return None


@lru_cache(maxsize=4)
def _place(text: str, path: tuple[str, ...]) -> tuple[str, str] | None:
    """What stands before a value that is set and behind it; None where that can't be told.

    A drag sets one value of one text at each of its steps: the text is taken apart and put together once.
    """
    written = tomlkit.item(_MARK).as_string()
    try:
        marked = _set(text, path, _MARK)
    except CannotSet:
        return None
    before, _, behind = marked.partition(written)
    return (before, behind) if marked.count(written) == 1 else None


@lru_cache(maxsize=8)
def remove_value(text: str, address: str) -> str:
    """The text without the value, so that its default holds again; the text itself where the value isn't in it.

    Raises:
        CannotSet: no address; it leads through a plain value.
    """
    path = _path(address)
    return text if _is_without(text, path) else _removed(text, path)


def _is_without(text: str, path: tuple[str, ...]) -> bool:
    """Whether nothing stands at an address: told by Python's own quick reader."""
    try:
        node: object = tomllib.loads(text)
    except (ValueError, RecursionError):
        return False
    for key in path:
        if not isinstance(node, dict):
            return False
        if key not in node:
            return True
        node = node[key]
    return False


def _removed(text: str, path: tuple[str, ...]) -> str:
    address = address_text(path)

    def change(document: MutableMapping[str, Any]) -> None:
        node: Any = document
        for key in path[:-1]:
            node = node.get(key, {})
            if not isinstance(node, MutableMapping):
                raise CannotSet(f"{address}: expected the address of a value")
        node.pop(path[-1], None)

    return _changed(text, change, lambda tables: _drop(tables, path), address)


def _path(address: str) -> tuple[str, ...]:
    try:
        return address_path(address)
    except NotAnAddress as error:
        raise CannotSet(f'"{address}": expected an address such as case.width') from error


def _changed(text: str, change: Any, expect: Any, address: str) -> str:
    """The text after the change, once it is known to say what it should and nothing else."""
    try:
        document = _document(text)
        change(document)
        result = tomlkit.dumps(document)
        expected = tomllib.loads(text)
        expect(expected)
        if not _same(tomllib.loads(result), expected):
            raise CannotSet(f"{address}: this file is laid out so that the value can't be changed alone")
    except CannotSet:
        raise
    except (TOMLKitError, TypeError, ValueError) as error:
        raise CannotSet(f"{address}: the value can't stand there ({error})") from error
    return result


def _document(text: str) -> tomlkit.TOMLDocument:
    """The text as a document that may be changed.

    A drag changes one text at each of its steps: read once and kept as bytes, it is there again seven times sooner.
    """
    kept = _kept(text)
    if kept is None:
        return tomlkit.parse(text)
    document: tomlkit.TOMLDocument = pickle.loads(kept)
    return document


@lru_cache(maxsize=4)
def _kept(text: str) -> bytes | None:
    """A text's document as bytes; None where it wouldn't come back as it was."""
    try:
        kept = pickle.dumps(tomlkit.parse(text), pickle.HIGHEST_PROTOCOL)
        return kept if tomlkit.dumps(pickle.loads(kept)) == text else None
    except (pickle.PicklingError, AttributeError, TypeError, RecursionError):
        return None


def _has_header(node: Any) -> bool:
    return not isinstance(node, tomlkit.items.InlineTable) and isinstance(node, AbstractTable | tomlkit.TOMLDocument)


def _lay(tables: dict[str, Any], path: tuple[str, ...], value: object) -> None:
    node = tables
    for key in path[:-1]:
        node = node.setdefault(key, {})
    node[path[-1]] = copy.deepcopy(value)


def _drop(tables: dict[str, Any], path: tuple[str, ...]) -> None:
    node = tables
    for key in path[:-1]:
        node = node.get(key, {})
    node.pop(path[-1], None)


def _same(one: object, other: object) -> bool:
    """Equal in type too (1 is not true and not 1.0), with nan equal to itself; order aside."""
    if isinstance(one, dict) and isinstance(other, dict):
        # A table that holds nothing says nothing: it may come and go with its only key.
        keys = {key for table in (one, other) for key in table if table[key] != {}}
        return all(_same(one.get(key), other.get(key)) for key in keys)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(_same, one, other))
    return type(one) is type(other) and (one == other or (one != one and other != other))
