"""From a file's tables to tables as the models take them, and back from a model's address to the file's."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from pydantic import BaseModel

from shopdraw.piece.address import Path
from shopdraw.piece.design import BoardTable, Design, FittingTable, OpeningTable
from shopdraw.piece.unknown import EACH, known_names

_LONG_IDS: Mapping[str, tuple[str, ...]] = {
    "use": (),
    "board": tuple(known_names(BoardTable)),
    "opening": tuple(known_names(OpeningTable)),
    "fitting": tuple(known_names(FittingTable)),
}
"""Tables whose keys are ids with dots in them, and the keys that one of their own tables may hold."""


def with_long_ids(tables: Mapping[str, Any]) -> tuple[dict[str, Any], dict[Path, Path]]:
    """The tables with ids of boards and members in one key each.

    A person may write [board."side.left"] or [board.side.left]; TOML reads the second as a table in a table.

    Returns:
        The tables, and for each id that was put together its address in the file.
    """
    result: dict[str, Any] = dict(tables)
    places: dict[Path, Path] = {}
    for name, own in _LONG_IDS.items():
        if isinstance(result.get(name), dict):
            gathered: dict[str, Any] = {}
            _gather(result[name], (name,), own, gathered, places)
            result[name] = gathered
    return result, places


def shaped(tables: Mapping[str, Any]) -> dict[str, Any]:
    """The tables as the models take them: lists as tuples, [drawer.2] in its place below [drawer]."""
    result = {key: tuples(value) for key, value in tables.items()}
    for name, field in Design.model_fields.items():
        model, table = field.annotation, result.get(name)
        if not (isinstance(model, type) and issubclass(model, BaseModel) and isinstance(table, dict)):
            continue
        if EACH in model.model_fields:
            result[name] = _with_each(table, known_names(model))
    return result


def _gather(
    table: Mapping[str, Any], path: Path, own: tuple[str, ...], out: dict[str, Any], places: dict[Path, Path]
) -> None:
    """Puts every entry below a table into `out` under its whole id; notes the place of an id that was put together."""
    for key, value in table.items():
        here = (*path, key)
        entry: Any = value
        if isinstance(value, dict):
            below = {k: v for k, v in value.items() if k not in own and (isinstance(v, dict) or not own)}
            _gather(below, here, own, out, places)
            entry = {k: v for k, v in value.items() if k not in below}
            if below and not entry:
                continue
        long_id = ".".join(str(part) for part in here[1:])
        if len(here) > 2:
            places[here[0], long_id] = here
        before = out.get(long_id)
        out[long_id] = {**before, **entry} if isinstance(before, dict) and isinstance(entry, dict) else entry


def _with_each(table: Mapping[str, Any], known: list[str]) -> dict[str, Any]:
    each = {key: value for key, value in table.items() if key not in known and isinstance(value, dict)}
    return {**{key: value for key, value in table.items() if key not in each}, EACH: each}


def tuples(value: Any) -> Any:
    """A file's value with lists as tuples, as frozen models take them."""
    if isinstance(value, dict):
        return {key: tuples(item) for key, item in value.items()}
    return tuple(tuples(item) for item in value) if isinstance(value, list) else value
