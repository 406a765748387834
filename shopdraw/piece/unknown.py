"""Keys that nobody knows: they stay in the file, and each is a caution that names the nearest known one."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, get_args, get_origin

from pydantic import BaseModel

from shopdraw.piece.address import Path, address_text, file_path
from shopdraw.piece.line import line_of

EACH = "each"
"""A model's field of this name holds the tables below its own that are no field of it: [drawer.2] below [drawer]."""


@dataclass(frozen=True, slots=True)
class UnknownKey:
    """A key of the file that means nothing here.

    Attributes:
        line: its line, from 1.
        address: where it stands.
        nearest: the known key at that place that looks most like it, or None.
        file: what kind of file it stands in.
    """

    line: int
    address: str
    nearest: str | None
    file: str = "a piece file"

    @property
    def message(self) -> str:
        """A sentence for the person who wrote it."""
        meant = f'; did you mean "{self.nearest}"?' if self.nearest else ""
        return f"{self.address} is no key of {self.file}: it is kept and has no effect{meant}"


def unknown_keys(
    model: type[BaseModel], tables: Mapping[str, Any], text: str, places: Mapping[Path, Path]
) -> tuple[UnknownKey, ...]:
    """Every key of the tables that the model doesn't know, in the order of the file.

    Args:
        model: what the tables are to be.
        tables: the file's tables, ids put together.
        text: the file's text.
        places: for ids that were put together: the address in the file.
    """
    found = [
        UnknownKey(line_of(text, file_path(path, places)), address_text(path), nearest)
        for path, nearest in _unknown(model, tables, ())
    ]
    return tuple(sorted(found, key=lambda key: key.line))


def nearest_name(key: str, names: Iterable[str]) -> str | None:
    """The name that looks most like the key, or None where none does."""
    near = difflib.get_close_matches(key.lower(), list(names), 1, 0.6)
    return near[0] if near else None


def known_names(model: type[BaseModel]) -> list[str]:
    """The keys that a table of this model may hold."""
    return [field.alias or name for name, field in model.model_fields.items() if name != EACH]


def _unknown(model: type[BaseModel], table: Mapping[str, Any], path: Path) -> Iterator[tuple[Path, str | None]]:
    kinds = {field.alias or name: field.annotation for name, field in model.model_fields.items()}
    each = kinds.pop(EACH, None)
    for key, value in table.items():
        here = (*path, key)
        if key in kinds:
            yield from _below(kinds[key], value, here)
        elif each is not None and isinstance(value, Mapping):
            yield from _below(each, {key: value}, path)
        else:
            yield here, nearest_name(key, kinds)


def _below(kind: Any, value: object, path: Path) -> Iterator[tuple[Path, str | None]]:
    """What is unknown inside a value of this kind: a model, tables by key, or one of several."""
    if isinstance(kind, type) and issubclass(kind, BaseModel):
        if isinstance(value, Mapping):
            yield from _unknown(kind, value, path)
        return
    inner = get_args(kind)
    if get_origin(kind) is dict and isinstance(value, Mapping):
        for key, item in value.items():
            yield from _below(inner[1], item, (*path, key))
    elif get_origin(kind) in (list, tuple) and isinstance(value, list | tuple):
        for index, item in enumerate(value):
            yield from _below(inner[0], item, (*path, index))
    else:
        for choice in inner:
            yield from _below(choice, value, path)
