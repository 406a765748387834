"""The kinds of value that a piece file holds: lengths, angles, ratios, percentages, counts.

A model's field says which kind it is (``width: PositiveLength``) and holds a plain number afterwards: lengths in mm,
angles in degrees. What a person typed stays in the file's text; these types only read it.

A bare number is in the piece's unit, which the reader passes to pydantic as validation context
(``Model.model_validate(tables, context=in_unit(Unit.INCH))``); without it a bare number is in mm. So a model that
code builds (``Case(width=800)``) takes mm.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Annotated, Any

from pydantic import BeforeValidator, Strict, StringConstraints, ValidationInfo
from pydantic_core import PydanticCustomError

from shopdraw.measure import MeasureError, Unit, length_of, read_angle, read_length

LARGEST_NUMBER = 1e6
"""No number of a piece file comes near it; what is larger (or not a number at all) is a slip of the keys."""

_EXAMPLES = {Unit.MM: "800 mm", Unit.INCH: "31 1/2 in"}

UNITS_KEY = "units"
ERROR_KIND = "quantity"
"""The type of every error that these readers raise; its text says what would be right."""


def in_unit(unit: Unit) -> dict[str, Any]:
    """The validation context that reads bare numbers in this unit."""
    return {UNITS_KEY: unit}


def _refuse(right: str) -> PydanticCustomError:
    return PydanticCustomError(ERROR_KIND, "{right}", {"right": right})


def _unit(info: ValidationInfo) -> Unit:
    context = info.context
    unit = context.get(UNITS_KEY) if isinstance(context, dict) else None
    return unit if isinstance(unit, Unit) else Unit.MM


def _finite(value: object, what: str) -> float:
    """A number of the file as a float; true and false are none, though Python would take them."""
    if isinstance(value, bool) or not isinstance(value, int | float) or value != value:
        raise _refuse(f"expected {what}")
    if not abs(value) <= LARGEST_NUMBER:
        raise _refuse(f"expected {what}, no larger than {LARGEST_NUMBER:.0f}")
    return float(value)


def _length_mm(value: object, info: ValidationInfo) -> float:
    unit = _unit(info)
    try:
        if isinstance(value, str):
            return read_length(value, unit, negative=True).mm
        number = _finite(value, f'a length, a number or text such as "{_EXAMPLES[unit]}"')
        return length_of(number, unit, negative=True).mm
    except MeasureError as error:
        raise _refuse(f"expected a length; it {error.reason}: {error.right}") from error


def _plain(value: object, what: str, mark: str = "") -> float:
    """A number, or text of a number with the mark behind it (7 %)."""
    if not isinstance(value, str):
        return _finite(value, what)
    found = re.fullmatch(rf"\s*([+-]?\d{{1,12}}(?:[.,]\d{{1,12}})?)\s*{mark}\s*", value, re.ASCII)
    if found is None:
        raise _refuse(f"expected {what}")
    return float(found[1].replace(",", "."))


def _bounded(
    read: Callable[[object, ValidationInfo], float], holds: Callable[[float], bool], right: str
) -> BeforeValidator:
    def validate(value: object, info: ValidationInfo) -> float:
        number = read(value, info)
        if not holds(number):
            raise _refuse(f"expected {right}")
        return number

    return BeforeValidator(validate)


def _angle(value: object, _info: ValidationInfo) -> float:
    if not isinstance(value, str):
        return _finite(value, 'an angle in degrees, a number or text such as "50°"')
    try:
        return read_angle(value, negative=True)
    except MeasureError as error:
        raise _refuse(f"expected an angle; it {error.reason}: {error.right}") from error


def _number(value: object, _info: ValidationInfo) -> float:
    return _plain(value, "a number")


def _percent(value: object, _info: ValidationInfo) -> float:
    return _plain(value, 'a percentage, a number or text such as "8 %"', "%?")


def _count(value: object) -> int:
    if isinstance(value, int) and not isinstance(value, bool) and 0 <= value <= 1_000_000:
        return value
    raise _refuse("expected a whole number, 0 or more")


Length = Annotated[float, BeforeValidator(_length_mm)]
"""Any length, mm; may be negative (an offset)."""

PositiveLength = Annotated[float, _bounded(_length_mm, lambda mm: mm > 0.0, "a length above 0")]
"""A size, mm, above 0."""

Clearance = Annotated[float, _bounded(_length_mm, lambda mm: mm >= 0.0, "a length of 0 or more")]
"""A gap, inset, reveal or relief, mm, 0 or more."""

Angle = Annotated[float, BeforeValidator(_angle)]
"""Any angle, degrees."""

SlantAngle = Annotated[float, _bounded(_angle, lambda deg: 0.0 < deg < 90.0, "an angle between 0 and 90 degrees")]
"""An angle from level, degrees, between 0 and 90, both left out."""

Number = Annotated[float, BeforeValidator(_number)]
"""Any finite number without a unit."""

Ratio = Annotated[float, _bounded(_number, lambda x: 0.0 < x <= 1000.0, "a number above 0 and up to 1000")]
"""A factor, above 0."""

Percent = Annotated[float, _bounded(_percent, lambda x: 0.0 <= x <= 100.0, "a percentage from 0 to 100")]
"""A percentage, 0 to 100; wood moisture, humidity."""

Count = Annotated[int, BeforeValidator(_count)]
"""A whole number, 0 or more: keys, numbers of things."""

YesNo = Annotated[bool, Strict()]
"""true or false and nothing that merely looks like it."""

Word = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=200)]
"""A name or a word that must not be empty."""

Text = Annotated[str, StringConstraints(max_length=4000)]
"""A person's own words; may be empty."""
