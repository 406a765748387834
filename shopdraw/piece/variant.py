"""Variants: [variant.NAME] holds addresses and values that are laid over the file.

An address is a key in quotes (``"case.height" = "46 in"``) or keys joined by dots (``slant.angle = 48``). What the
variant is to do without is listed under ``unset`` (``unset = ["slant.top_depth"]``): a value, or a whole table.
"""

from __future__ import annotations

import copy
import difflib
from collections.abc import Mapping
from typing import Any

from shopdraw.piece.address import NotAnAddress, Path, address_path, address_text
from shopdraw.piece.fault import Fault

VARIANT = "variant"
UNSET = "unset"
"""The key of a variant that lists what is left out; no address of a piece file begins so."""


class NoSuchVariant(Exception):
    """The file has no variant of that name, or it can't be laid over the file; holds the fault."""

    def __init__(self, fault: Fault) -> None:
        self.fault = fault
        super().__init__(fault.right)


def variant_names(tables: Mapping[str, Any]) -> tuple[str, ...]:
    """The names of the file's variants, in file order."""
    variants = tables.get(VARIANT)
    return tuple(variants) if isinstance(variants, Mapping) else ()


def with_variant(tables: Mapping[str, Any], name: str) -> tuple[dict[str, Any], dict[Path, Path]]:
    """The file's tables with one variant laid over them.

    Returns:
        The new tables (the given ones stay as they are), and for each address that was laid over the address inside
        the variant from which its value came.
    Raises:
        NoSuchVariant: no such name; not a table; an address that can't be read or leads through a plain value; an
            address to leave out at which nothing stands.
    """
    names = variant_names(tables)
    if name not in names:
        raise NoSuchVariant(Fault(0, VARIANT, address_text((name,)), _names_right(name, names)))
    overlay = tables[VARIANT][name]
    place: Path = (VARIANT, name)
    if not isinstance(overlay, Mapping):
        raise NoSuchVariant(Fault(0, address_text(place), "", "expected a table of addresses and values"))
    result = {key: copy.deepcopy(value) for key, value in tables.items() if key != VARIANT}
    origin: dict[Path, Path] = {}
    for path, source in _left_out(overlay, place):
        _drop(result, path, source)
    for path, value, source in _leaves({key: overlay[key] for key in overlay if key != UNSET}, (), place):
        _lay(result, path, value, source)
        origin[path] = source
    return result, origin


def place_in_variant(tables: Mapping[str, Any], name: str, path: Path) -> Path | None:
    """Where a variant gives a value for an address, as the file has it; None where it gives none.

    Raises:
        NoSuchVariant: as for `with_variant`.
    """
    overlay = tables.get(VARIANT, {}).get(name, {})
    given = {key: overlay[key] for key in overlay if key != UNSET}
    return next((source for target, _, source in _leaves(given, (), (VARIANT, name)) if target == path), None)


def unset_in_variant(tables: Mapping[str, Any], name: str) -> tuple[str, ...]:
    """The addresses that a variant leaves out, as written; none where the list is no list of texts."""
    overlay = tables.get(VARIANT, {}).get(name, {})
    listed = overlay.get(UNSET, []) if isinstance(overlay, Mapping) else []
    return tuple(one for one in listed if isinstance(one, str)) if isinstance(listed, list) else ()


def _left_out(overlay: Mapping[str, Any], place: Path) -> list[tuple[Path, Path]]:
    """(address in the file, address in the variant) of everything that the variant does without."""
    listed = overlay.get(UNSET, [])
    source: Path = (*place, UNSET)
    if not isinstance(listed, list) or not all(isinstance(one, str) for one in listed):
        right = 'expected a list of addresses, such as ["slant.top_depth"]'
        raise NoSuchVariant(Fault(0, address_text(source), "", right))
    return [(_keys(one, (*source, number)), (*source, number)) for number, one in enumerate(listed)]


def _drop(tables: dict[str, Any], path: Path, source: Path) -> None:
    node: Any = tables
    for key in path[:-1]:
        node = node.get(key) if isinstance(node, dict) else None
    if not isinstance(node, dict) or path[-1] not in node:
        right = f"expected an address that the file gives: nothing stands at {address_text(path)}"
        raise NoSuchVariant(Fault(0, address_text(source), "", right))
    del node[path[-1]]


def _names_right(name: str, names: tuple[str, ...]) -> str:
    if not names:
        return "expected no variant: the file has none"
    near = difflib.get_close_matches(name, names, 1)
    told = ", ".join(address_text((known,)) for known in names)
    return f"expected one of {told}" + (f"; did you mean {address_text((near[0],))}?" if near else "")


def _leaves(table: Mapping[str, Any], path: Path, place: Path) -> list[tuple[Path, Any, Path]]:
    """(address in the file, value, address in the variant) of every plain value in the overlay."""
    found: list[tuple[Path, Any, Path]] = []
    for key, value in table.items():
        source = (*place, key)
        target = (*path, *_keys(key, source))
        if isinstance(value, Mapping):
            found += _leaves(value, target, source)
        else:
            found.append((target, value, source))
    return found


def _keys(key: str, source: Path) -> tuple[str, ...]:
    try:
        return address_path(key)
    except NotAnAddress as error:
        right = 'expected an address such as "case.width"'
        raise NoSuchVariant(Fault(0, address_text(source), "", right)) from error


def _lay(tables: dict[str, Any], path: Path, value: object, source: Path) -> None:
    node: Any = tables
    for length, key in enumerate(path[:-1], start=1):
        node = node.setdefault(key, {})
        if not isinstance(node, dict):
            right = f"expected an address of one value; {address_text(path[:length])} is a value, not a table"
            raise NoSuchVariant(Fault(0, address_text(source), "", right))
    if isinstance(node.get(path[-1]), dict):
        right = f"expected an address of one value; {address_text(path)} is a table"
        raise NoSuchVariant(Fault(0, address_text(source), "", right))
    node[path[-1]] = copy.deepcopy(value)
