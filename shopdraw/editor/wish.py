"""From what a person typed into a form field to a setting of the piece file. Knows no Qt."""

from __future__ import annotations

import re
from collections.abc import Mapping

from shopdraw.editor.field import FormField
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import NotTyped, read_typed, read_typed_angle
from shopdraw.measure import Unit
from shopdraw.piece.saving import Typed

_ENDS = 2
_NUMBER = re.compile(r"[+\u2212-]?\d+(?:[.,]\d+)?")


def setting_of(field: FormField, text: str, unit: Unit, sizes: Mapping[str, float]) -> Setting:
    """The setting that a typed text means; an empty one takes the value out, so that the default holds.

    Args:
        field: what was typed into.
        text: as typed.
        unit: the piece's.
        sizes: sizes that can be named.
    Raises:
        NotTyped: it can't be read, or is empty where a value is needed.
    """
    if not text:
        if field.needed:
            raise NotTyped(translate("Typed", "It must be given; it has no default."))
        return Setting(field.address, None)
    return Setting(field.address, _value(field.kind, text, unit, sizes))


def _value(kind: str, text: str, unit: Unit, sizes: Mapping[str, float]) -> Typed:
    if kind in ("length", "offset"):
        return read_typed(text, unit, sizes, negative=kind == "offset").keeps
    if kind == "angle":
        return read_typed_angle(text).keeps
    if kind in ("number", "percent", "count"):
        return _number(text, whole=kind == "count")
    if kind == "yes-no":
        return text == "yes"
    if kind == "words":
        return [word for word in re.split(r"[,\s]+", text) if word]
    if kind == "lengths":
        return [read_typed(part, unit, sizes).keeps for part in re.split(r"\s*[;]\s*|,\s+", text) if part]
    if kind == "spans":
        return [_span(part, unit, sizes) for part in re.split(r"\s*;\s*", text) if part]
    return text


def _span(text: str, unit: Unit, sizes: Mapping[str, float]) -> list[str | float | int]:
    ends = [end for end in re.split(r"\s*(?:…|\.\.\.?|\bto\b|\bbis\b)\s*", text.strip()) if end]
    if len(ends) != _ENDS:
        raise NotTyped(translate("Typed", "Write where it begins and where it ends, for example 0 … 40; 600 … 650."))
    return [read_typed(end, unit, sizes).keeps for end in ends]


def _number(text: str, *, whole: bool) -> int | float:
    plain = text.removesuffix("%").strip()
    if not _NUMBER.fullmatch(plain):
        raise NotTyped(translate("Typed", "Write a number, for example 8 or 1.15."))
    number = float(plain.replace(",", ".").replace("\u2212", "-"))
    if whole and not number.is_integer():
        raise NotTyped(translate("Typed", "Write a whole number, for example 3."))
    return int(number) if number.is_integer() else number
