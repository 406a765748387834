"""What a model refused, told as faults: line, address, what was found, what would be right."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, get_args

from pydantic import BaseModel, ValidationError

from shopdraw.piece.address import Path, address_text, file_path, quoted, value_at
from shopdraw.piece.fault import Fault
from shopdraw.piece.line import line_of
from shopdraw.piece.quantity import ERROR_KIND
from shopdraw.piece.unknown import EACH, known_names, nearest_name

_MISSING = "missing"
_LONGEST_FOUND = 60

_RIGHT = {
    "string_type": "expected text in quotes",
    "bool_type": "expected true or false",
    "int_type": "expected a whole number",
    "int_from_float": "expected a whole number",
    "float_type": "expected a number",
    "finite_number": "expected a finite number",
    "tuple_type": "expected a list, as [1, 2]",
    "list_type": "expected a list, as [1, 2]",
    "dict_type": "expected a table",
    "model_type": "expected a table",
    "model_attributes_type": "expected a table",
}


def faults_of(
    error: ValidationError, model: type[BaseModel], tables: Mapping[str, Any], text: str, origin: Mapping[Path, Path]
) -> tuple[Fault, ...]:
    """The faults in a refused piece file, in the order of the file, one for each address.

    Args:
        error: what pydantic found.
        model: the model that refused.
        tables: the file's tables as read, a variant laid over them.
        text: the file's text.
        origin: for ids put together and for what a variant set: its address in the file.
    """
    rights: dict[Path, list[str]] = {}
    founds: dict[Path, str] = {}
    for detail in error.errors(include_url=False, include_input=False):
        path = _path(detail["loc"], detail["type"], tables)
        rights.setdefault(path, []).append(_right(dict(detail), path, tables))
        founds.setdefault(path, _found(path, detail["type"], model, tables))
    faults = [
        Fault(line_of(text, file_path(path, origin)), address_text(path), founds[path], _joined(right))
        for path, right in rights.items()
    ]
    return tuple(sorted(faults, key=lambda fault: fault.line))


def _path(location: Sequence[str | int], kind: str, tables: Mapping[str, Any]) -> Path:
    """The address in the file: the models' own steps (a choice of several, `each`) are left out."""
    path: list[str | int] = []
    for position, part in enumerate(location):
        last = position == len(location) - 1
        if value_at(tables, [*path, part]) is not None or (last and kind == _MISSING):
            path.append(part)
    return tuple(path)


def _found(path: Path, kind: str, model: type[BaseModel], tables: Mapping[str, Any]) -> str:
    """What stands at the address; for a missing key the unknown key beside it that looks like it."""
    if kind != _MISSING:
        return shown(value_at(tables, path))
    beside = value_at(tables, path[:-1])
    known = _known_at(model, path[:-1])
    strangers = [key for key in beside if key not in known] if isinstance(beside, Mapping) else []
    near = nearest_name(str(path[-1]), strangers)
    return f"{quoted(near)} in its place" if near else "nothing"


def _known_at(model: type[BaseModel], path: Path) -> list[str]:
    """The keys that the table at this address may hold."""
    kind: Any = model
    for part in path:
        fields = getattr(kind, "model_fields", None)
        if fields is not None:
            field = fields.get(part) or fields.get(EACH)
            kind = _table_kind(field.annotation) if field else None
            if field is not None and part not in fields:
                kind = _table_kind(kind)
        else:
            kind = _table_kind(kind)
    kind = _table_kind(kind) if not hasattr(kind, "model_fields") else kind
    return known_names(kind) if kind is not None and hasattr(kind, "model_fields") else []


def _table_kind(kind: Any) -> Any:
    """The model behind an annotation: itself, or the one inside `dict[str, Model]` or `Model | None`."""
    if hasattr(kind, "model_fields"):
        return kind
    return next((inner for inner in map(_table_kind, get_args(kind)) if inner is not None), None)


def _right(detail: Mapping[str, Any], path: Path, tables: Mapping[str, Any]) -> str:
    kind, context = detail["type"], detail.get("ctx", {})
    if kind == ERROR_KIND:
        return str(context["right"])
    if kind == _MISSING:
        return f"expected a value for {path[-1]}, which has no default"
    if kind == "literal_error":
        return _choice(str(context["expected"]), value_at(tables, path))
    if kind == "value_error":
        return str(context["error"])
    if kind in _RIGHT:
        return _RIGHT[kind]
    said = str(detail["msg"])
    said = said.removeprefix("Input should ").removeprefix("be ")
    return f"expected {said[:1].lower()}{said[1:]}"


def _choice(expected: str, value: object) -> str:
    """The words that may stand there, and the one that was probably meant."""
    words = [word.strip().strip("'") for word in expected.replace(" or ", ", ").split(",")]
    told = ", ".join(quoted(word) for word in words)
    near = nearest_name(value, words) if isinstance(value, str) else None
    return f"expected {'one of ' if len(words) > 1 else ''}{told}" + (f"; did you mean {quoted(near)}?" if near else "")


def _joined(rights: Sequence[str]) -> str:
    """One telling for several refusals of one value: each said once."""
    first, *rest = dict.fromkeys(rights)
    return "".join([first, *(f", or {right.removeprefix('expected ')}" for right in rest)])


def shown(value: object) -> str:
    """A value as it would be written in the file, on one line and not too long."""
    if isinstance(value, Mapping):
        return "a table"
    if isinstance(value, list | tuple):
        return "a list"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return quoted(value if len(value) <= _LONGEST_FOUND else value[:_LONGEST_FOUND] + "…")
    try:
        text = str(value)
    except ValueError:  # Python won't write out a whole number of thousands of figures
        return "a number of thousands of figures"
    return text if len(text) <= _LONGEST_FOUND else text[:_LONGEST_FOUND] + "…"
