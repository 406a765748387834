"""What a person types into a dimension or a field: a length, a sum, or a part of another size. Knows no Qt.

Besides everything that `measure` reads: `1/2 of depth`, `depth - 30`, `2/3 of width + 10 mm`, `0.618 of height`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from shopdraw.editor.said import said
from shopdraw.editor.tongue import translate
from shopdraw.measure import AngleError, LengthError, Unit, read_angle, read_length

_SUM = re.compile(r"\s+([+\u2212-])\s+|\s*(\+)\s*")
_PART = re.compile(r"(?:(?P<whole>\d+)\s+)?(?P<top>\d+)\s*/\s*(?P<under>\d+)|(?P<decimal>\d*[.,]?\d+)")
_OF = re.compile(r"^(?P<part>.+?)\s*(?:\bof\b|\bvon\b|×|\*)\s*(?P<name>.+)$")
_OVER = re.compile(r"^(?P<name>.+?)\s*/\s*(?P<under>\d+)$")
_PLAIN = re.compile(r"\d+(?:[.,]\d+)?")


class NotTyped(ValueError):
    """What was typed can't be read; the message says what would be right."""


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed.

    Attributes:
        mm: its size.
        keeps: what goes into the file: a number in the piece's unit, or the text as typed.
    """

    mm: float
    keeps: str | float | int


def read_typed(text: str, unit: Unit, sizes: Mapping[str, float], *, negative: bool = False) -> Typed:
    """A typed length.

    Args:
        text: as typed.
        unit: the piece's.
        sizes: other sizes of the piece by name, mm: "depth", "writing height".
        negative: whether a length below zero makes sense.
    Raises:
        NotTyped: with what would be right.
    """
    try:
        mm = read_length(text, unit, negative=negative).mm
    except LengthError as plain_error:
        if not re.search(r"[^\W\d_]{3,}", text):
            raise NotTyped(said(plain_error.right)) from plain_error
        mm = _with_names(text, unit, sizes, plain_error)
        if mm < 0 and not negative:
            raise NotTyped(
                translate("Typed", "It comes out below zero; a length here is zero or more.")
            ) from plain_error
        return Typed(mm, kept(mm, unit))
    plain = text.strip().replace(",", ".")
    if _PLAIN.fullmatch(plain):
        number = float(plain)
        return Typed(mm, int(number) if number.is_integer() else number)
    return Typed(mm, text.strip())


def read_typed_angle(text: str) -> Typed:
    """A typed angle, degrees.

    Raises:
        NotTyped: with what would be right.
    """
    try:
        degrees = read_angle(text)
    except AngleError as error:
        raise NotTyped(said(error.right)) from error
    plain = text.strip().rstrip("°").strip().replace(",", ".")
    if _PLAIN.fullmatch(plain):
        return Typed(degrees, int(degrees) if degrees.is_integer() else degrees)
    return Typed(degrees, text.strip())


def kept(mm: float, unit: Unit) -> str | float | int:
    """A size that nobody typed (a drag's end, a part of another) as it goes into the file.

    Inches become a mixed number where a sixty-fourth is exact, else a decimal; mm are kept to a hundredth.
    """
    if unit is Unit.MM:
        rounded = round(mm, 2)
        return int(rounded) if rounded.is_integer() else rounded
    inches = mm / float(unit.in_mm)
    sixty_fourths = round(inches * 64)
    if abs(inches * 64 - sixty_fourths) > 1e-6:
        return round(inches, 4)
    whole, rest = divmod(Fraction(sixty_fourths, 64), 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def _with_names(text: str, unit: Unit, sizes: Mapping[str, float], plain_error: LengthError) -> float:
    total, sign = 0.0, 1.0
    parts = [part for part in _SUM.split(text.strip()) if part is not None]
    for position, part in enumerate(parts):
        if position % 2:
            sign = 1.0 if part == "+" else -1.0
        else:
            total += sign * _term(part, unit, sizes, plain_error)
    return total


def _term(part: str, unit: Unit, sizes: Mapping[str, float], plain_error: LengthError) -> float:
    part = part.strip()
    over = _OVER.match(part)
    of = _OF.match(part)
    if of:
        return _factor(of["part"]) * _named(of["name"], sizes)
    if over and _known(over["name"], sizes) is not None and int(over["under"]):
        return _named(over["name"], sizes) / int(over["under"])
    known = _known(part, sizes)
    if known is not None:
        return known
    try:
        return read_length(part, unit, negative=True).mm
    except LengthError as error:
        if re.search(r"[^\W\d_]{3,}", part):
            _named(part, sizes)
        raise NotTyped(said(error.right)) from plain_error


def _factor(text: str) -> float:
    found = _PART.fullmatch(text.strip())
    if found is None or (found["under"] is not None and int(found["under"]) == 0):
        raise NotTyped(
            translate("Typed", "“{text}” is no part; write for example 1/2 of depth.").format(text=text.strip())
        )
    if found["decimal"]:
        return float(found["decimal"].replace(",", "."))
    return int(found["whole"] or 0) + int(found["top"]) / int(found["under"])


def _named(name: str, sizes: Mapping[str, float]) -> float:
    known = _known(name, sizes)
    if known is None:
        raise NotTyped(
            translate("Typed", "“{name}” is no size of this piece; known are {sizes}.").format(
                name=name.strip(), sizes=", ".join(sizes)
            )
        )
    return known


def _known(name: str, sizes: Mapping[str, float]) -> float | None:
    plain = " ".join(name.lower().replace("_", " ").split()).removeprefix("the ")
    return next((mm for known, mm in sizes.items() if known.lower() == plain), None)
