"""Tables under keys of a person's own ([stock.NAME], [cut.ID], ...): what a new one may be called and begins with."""

from __future__ import annotations

from typing import get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo
from pydantic_core import PydanticUndefined

from shopdraw.editor.field import inner_table, kind_of
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import Setting, State
from shopdraw.measure import Unit
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design
from shopdraw.piece.saving import Typed

_OF_A_BOARD = {("cut", "board"), ("note", "on")}
"""Inputs that name a board: the one that was chosen last is meant."""
_FIRST_OF_ALL: dict[tuple[str, str], Typed] = {("level", "member"): "shelf", ("dimension", "view"): "front"}
"""Where the first choice, or the key, would hardly be what is meant."""
_TOO: dict[str, tuple[str, Typed]] = {"plane": ("cuts", "front-to-back"), "yard": ("quarters", "4/4")}
"""What a new table is given besides what has no default: a letter that isn't there yet must say which way it cuts, a
board of the yard is rough or dressed."""


def keyed_tables(whole: type[BaseModel] = Design) -> tuple[str, ...]:
    """Names of the tables that hold further ones under keys of a person's own."""
    return tuple(name for name, info in whole.model_fields.items() if get_origin(info.annotation) is dict)


def offered_keys(table: str, state: State, board: str = "") -> tuple[str, ...]:
    """Keys that mean something in a piece, where a table's keys do: boards, fittings, members; those not taken yet.

    Args:
        table: its name in the file.
        state: the piece.
        board: the board that was chosen last, or "": it comes first.
    """
    assembly, design = state.assembly, state.design
    if assembly is None or design is None:
        return ()
    if table == "board":
        boards = [one.id for one in assembly.boards]
        found = [*([board] if board in boards else []), *boards]
    elif table == "fitting":
        found = [one.id for one in assembly.hardware]
    elif table == "use":
        found = [one.member for one in assembly.boards]
    else:
        return ()
    taken = getattr(design, table)
    return tuple(key for key in dict.fromkeys(found) if key not in taken)


def beginnings(
    table: str, key: str, shown: Shown, whole: type[BaseModel] = Design, board: str = ""
) -> tuple[Setting, ...]:
    """Settings that begin a keyed table ([stock.NAME], [note.ID], ...) with what it needs.

    Args:
        table: its name in the file.
        key: what a person calls the new one.
        shown: the file's unit.
        whole: the file's model.
        board: the board that is meant, where it speaks of one.
    """
    model = inner_table(whole.model_fields[table])
    if model is None:
        return (Setting(address_text((table, key)), "primary"),)
    settings = [
        Setting(address_text((table, key, name)), _beginning((table, name), info, key, shown, board))
        for name, info in model.model_fields.items()
        if info.default is PydanticUndefined and info.default_factory is None
    ]
    if table in _TOO:
        name, value = _TOO[table]
        settings.append(Setting(address_text((table, key, name)), value))
    return tuple(settings) or (_as_it_is(model, (table, key), shown),)


def _as_it_is(model: type[BaseModel], path: tuple[str, ...], shown: Shown) -> Setting:
    """A setting that changes nothing, so that a table whose inputs all have defaults is there."""
    told = [(name, info, *kind_of(info)) for name, info in model.model_fields.items()]
    for name, info, kind, _ in told:
        if kind == "text" and not (info.default or "") and name not in ("stock", "name"):
            return Setting(address_text((*path, name)), "")
    for name, info, kind, choices in told:
        if isinstance(info.default, str | int | float):
            unit = " mm" if kind in ("length", "offset") else ""
            value: Typed = f"{info.default:g}{unit}" if unit else info.default
            return Setting(address_text((*path, name)), value)
        if choices:
            return Setting(address_text((*path, name)), choices[0])
    name, info, *_ = told[0]
    return Setting(address_text((*path, name)), _beginning(("", name), info, path[-1], shown, ""))


def _beginning(place: tuple[str, str], info: FieldInfo, key: str, shown: Shown, board: str) -> Typed:
    if board and place in _OF_A_BOARD:
        return board
    if place in _FIRST_OF_ALL:
        return _FIRST_OF_ALL[place]
    kind, choices = kind_of(info)
    if kind in ("length", "offset"):
        return "3/4" if shown.unit is Unit.INCH else 20
    if kind == "lengths":
        return ["6"] if shown.unit is Unit.INCH else [150]
    return choices[0] if choices else 1 if kind in ("number", "count", "percent", "angle") else key
