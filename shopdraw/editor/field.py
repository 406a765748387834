"""Form fields made from the typed Design: one for each input, so that new inputs appear by themselves. Knows no Qt."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from types import NoneType
from typing import Any, Literal, get_args, get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo
from pydantic_core import PydanticUndefined

from shopdraw.editor.bay import bays_of
from shopdraw.editor.division import divisions_of, drawer_key
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import State
from shopdraw.editor.tongue import translate
from shopdraw.measure import Unit
from shopdraw.piece import quantity
from shopdraw.piece.address import address_path, address_text, value_at
from shopdraw.piece.design import Design

_KINDS = (
    ("length", quantity.PositiveLength),
    ("offset", quantity.Length),
    ("angle", quantity.Angle),
    ("angle", quantity.SlantAngle),
    ("percent", quantity.Percent),
    ("number", quantity.Ratio),
    ("number", quantity.Number),
    ("length", quantity.Clearance),
    ("count", quantity.Count),
)
_TABLE_WORDS = re.compile(r"^[^:]*:\s*")
_NOT_IN_FORM = {"format"}
SPANS, TO = "; ", " … "
"""Between stretches, and between the two ends of one, as a field shows them."""


@dataclass(frozen=True, slots=True)
class FormField:
    """One input.

    Attributes:
        address: in the piece file.
        label: what a person reads.
        kind: "length", "offset" (may be negative), "angle", "percent", "number", "count", "choice", "yes-no", "text",
            "words" (a list of keys), "lengths" (a list of sizes) or "spans" (a list of stretches: from and to).
        choices: for "choice".
        default: the default as shown; "" where there is none or it follows from others.
        follows: whether, left empty, it is worked out when the piece is built.
        description: a short explanation, or "".
        unit: shown behind the field.
        needed: it must be given.
    """

    address: str
    label: str
    kind: str
    choices: tuple[str, ...]
    default: str
    follows: bool
    description: str
    unit: str
    needed: bool


@dataclass(frozen=True, slots=True)
class FormGroup:
    """The inputs of one table.

    Attributes:
        key: the table's address.
        title: what a person reads.
        about: a sentence on the table.
        fields: its inputs.
        own: a table of the file under a person's own key, which can be taken out as a whole.
    """

    key: str
    title: str
    about: str
    fields: tuple[FormField, ...]
    own: bool = False


def form_of(state: State, shown: Shown, board: str = "") -> tuple[FormGroup, ...]:
    """Every input of the piece file, by table, in the order of the Design.

    Args:
        state: its design decides which keyed tables there are; unread, only the plain ones are shown.
        shown: how defaults are shown.
        board: id of a board whose own choices are wanted too, or "".
    """
    return tuple(_groups(Design, state.design, (), _Wanted(shown, _more_keys(state, board))))


def form_of_file(model: type[BaseModel], given: BaseModel | None, shown: Shown) -> tuple[FormGroup, ...]:
    """Every input of another file, made in the same way from its model.

    Args:
        model: the whole file's.
        given: the file as read: it decides which keyed tables there are.
        shown: how defaults are shown.
    """
    return tuple(_groups(model, given, (), _Wanted(shown, {})))


def _more_keys(state: State, board: str) -> dict[str, tuple[str, ...]]:
    """Keyed tables that are offered though nothing of them stands in the file."""
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        return {"board": (board,) if board else ()}
    drawers = tuple(drawer_key(opening.id) for opening in assembly.openings if opening.use == "drawer")
    bays = dict.fromkeys(bay.key for bay in bays_of(design, assembly))
    divided = tuple(division.opening for division in divisions_of(design, assembly))
    return {"drawer": drawers, "opening": divided, "compartments": tuple(bays), "board": (board,) if board else ()}


def typed_values(text: str) -> Mapping[str, Any]:
    """What the file gives, as typed; empty where the text is no TOML."""
    try:
        return tomllib.loads(text)
    except (ValueError, RecursionError):
        return {}


def typed_at(tables: Mapping[str, Any], address: str) -> str:
    """What a person typed at an address, as a form field shows it; "" where nothing stands there."""
    value = value_at(tables, address_path(address))
    if value is None or isinstance(value, Mapping):
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list):
        if any(isinstance(item, list) for item in value):
            return SPANS.join(TO.join(str(end) for end in item) for item in value if isinstance(item, list))
        return ", ".join(str(item) for item in value)
    return str(value)


def label_words(key: str) -> str:
    """The name of an input as a person reads it."""
    return translate("Input", spelt(key))


def table_words(name: str) -> str:
    """The name of a table as a person reads it."""
    return translate("Table", spelt(name))


def choice_words(choice: str) -> str:
    """One of an input's choices as a person reads it."""
    return translate("Choice", choice)


def spelt(key: str) -> str:
    """A key of the file as words, in English."""
    words = " ".join(_ACRONYMS.get(word, word) for word in key.replace("_", " ").replace("-", " ").split(" "))
    return words[:1].upper() + words[1:]


_ACRONYMS = {"dxf": "DXF", "csv": "CSV", "cnc": "CNC"}


@dataclass(frozen=True, slots=True)
class _Wanted:
    """How fields are shown, and which keys are offered besides those in the file."""

    shown: Shown
    more: Mapping[str, tuple[str, ...]]


def _groups(model: type[BaseModel], given: object, path: tuple[str, ...], wanted: _Wanted) -> Iterator[FormGroup]:
    """The groups for a table and the tables in it; a table's own plain inputs come first."""
    plain: list[FormField] = []
    below: list[FormGroup] = []
    for name, info in model.model_fields.items():
        if name in _NOT_IN_FORM and not path:
            continue
        here = (*path, name)
        value = getattr(given, name, None) if given is not None else None
        table = _table(info.annotation)
        if table is not None and get_origin(info.annotation) is not dict:
            below += _groups(table, value, here, wanted)
        elif table is not None:
            place = path if name == "each" else here
            below += _keyed(table, value, place, wanted)
        elif get_origin(info.annotation) is dict:
            below += _members(name, value, here)
        else:
            plain.append(_field(here, info, wanted.shown))
    if plain:
        yield FormGroup(address_text(path), _title(path), _about(model), tuple(plain))
    yield from below


def _keyed(table: type[BaseModel], value: object, place: tuple[str, ...], wanted: _Wanted) -> Iterator[FormGroup]:
    given: Mapping[str, object] = value if isinstance(value, Mapping) else {}
    for key in dict.fromkeys((*given, *wanted.more.get(place[0], ()))):
        own = (*place, str(key))
        for group in _groups(table, given.get(key), own, wanted):
            yield replace(group, own=True) if key in given and group.key == address_text(own) else group


def _members(name: str, value: object, here: tuple[str, ...]) -> Iterator[FormGroup]:
    """A table of words by name: member to stock."""
    keys = list(value) if isinstance(value, Mapping) else []
    means = translate("Explanation", "the stock that it is made of, by its name")
    fields = tuple(
        FormField(address_text((*here, str(key))), str(key), "text", (), "", False, means, "", False) for key in keys
    )
    if fields:
        about = translate("Explanation", "which member is made of which stock")
        yield FormGroup(address_text(here), table_words(name), about, fields)


def _field(path: tuple[str, ...], info: FieldInfo, shown: Shown) -> FormField:
    kind, choices = kind_of(info)
    optional = NoneType in get_args(info.annotation)
    needed = info.default is PydanticUndefined and info.default_factory is None
    return FormField(
        address=address_text(path),
        label=label_words(path[-1]),
        kind=kind,
        choices=choices,
        default="" if needed or info.default is None else _shown_default(info.default, kind, shown),
        follows=optional and info.default is None,
        description=translate("Explanation", info.description) if info.description else "",
        unit=_unit(kind, shown),
        needed=needed,
    )


def kind_of(info: FieldInfo) -> tuple[str, tuple[str, ...]]:
    """What an input holds ("length", "choice", "text", ...), and its choices as the file has them."""
    annotation: Any = info.annotation
    kinds = [*info.metadata]
    inner = [part for part in get_args(annotation) if part is not NoneType] if NoneType in get_args(annotation) else []
    if inner:
        annotation = inner[0]
        kinds += getattr(annotation, "__metadata__", ())
        annotation = get_args(annotation)[0] if hasattr(annotation, "__metadata__") else annotation
    for name, quantity_type in _KINDS:
        if any(mark in kinds for mark in get_args(quantity_type)[1:]):
            return name, ()
    if get_origin(annotation) is Literal:
        return "choice", tuple(str(choice) for choice in get_args(annotation))
    if get_origin(annotation) is tuple and get_origin(get_args(annotation)[0]) is tuple:
        return "spans", ()
    if get_origin(annotation) is tuple:
        sizes = any(hasattr(part, "__metadata__") and get_args(part)[0] is float for part in get_args(annotation))
        return ("lengths" if sizes else "words"), ()
    return {bool: "yes-no", int: "count", float: "number"}.get(annotation, "text"), ()


def _shown_default(value: object, kind: str, shown: Shown) -> str:
    if isinstance(value, bool):
        return choice_words("yes" if value else "no")
    if kind == "choice":
        return choice_words(str(value))
    if isinstance(value, tuple):
        return ", ".join(str(item) for item in value)
    if isinstance(value, int | float):
        if kind in ("length", "offset"):
            return _shown_length(float(value), shown)
        return shown.angle(float(value)) if kind == "angle" else shown.number(float(value))
    return str(value)


def _shown_length(mm: float, shown: Shown) -> str:
    """A default length: in the piece's unit where that shows it as it is, else in mm."""
    exact = shown.unit is Unit.MM or abs(mm / float(shown.style.step_mm) % 1.0) < 1e-9
    return shown.length(mm) if exact and shown.unit is Unit.INCH else f"{shown.number(mm)} mm"


def _unit(kind: str, shown: Shown) -> str:
    lengths = dict.fromkeys(("length", "offset", "lengths", "spans"), shown.unit.short)
    return {**lengths, "angle": "°", "percent": "%"}.get(kind, "")


def inner_table(info: FieldInfo) -> type[BaseModel] | None:
    """The table that an input of the Design stands for; None for a plain input."""
    return _table(info.annotation)


def choices_of(info: FieldInfo) -> tuple[str, ...]:
    """What can be chosen for an input, as the file has it; empty where it isn't a choice."""
    kind, choices = kind_of(info)
    return ("yes", "no") if kind == "yes-no" else choices


def explanation_of(model: type[BaseModel]) -> str:
    """A sentence on a table, in English."""
    words = (model.__doc__ or "").strip().split("\n")[0]
    return _TABLE_WORDS.sub("", words, count=1)


def _table(annotation: Any) -> type[BaseModel] | None:
    """The table behind an annotation: itself, or the one inside `dict[str, Table]` or `Table | None`."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    return next((table for table in map(_table, get_args(annotation)) if table is not None), None)


def _title(path: tuple[str, ...]) -> str:
    return ", ".join([table_words(path[0]), *(_inner_words(part) for part in path[1:])])


def _inner_words(part: str) -> str:
    """A key below a table: a person's own one as it is, a table's in words."""
    return translate("Table", "divide") if part == "divide" else part.replace("_", " ")


def _about(model: type[BaseModel]) -> str:
    words = explanation_of(model)
    return translate("Explanation", words) if words else ""
