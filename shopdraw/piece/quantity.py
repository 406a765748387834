"""The kinds of value that a piece file holds: lengths, angles, ratios, percentages, counts.

A model's field says which kind it is (``width: PositiveLength``) and holds a plain number afterwards: lengths in mm,
angles in degrees. What a person typed stays in the file's text; these types only read it.

A bare number is in the piece's unit, which the reader passes to pydantic as validation context
(``Model.model_validate(tables, context=in_unit(Unit.INCH))``); without it a bare number is in mm. So a model that
code builds (``Case(width=800)``) takes mm.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from typing import Annotated, Any

from pydantic import BeforeValidator, Strict, StringConstraints, ValidationInfo
from pydantic_core import PydanticCustomError

from shopdraw.measure import NotALength, Unit, mm_per, read_length

LARGEST_MM = 1e5
"""No length of a piece of furniture comes near it: 100 m. What is larger is a slip of the finger."""

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


def _finite(value: int | float, what: str) -> float:
    try:
        number = float(value)
    except OverflowError:
        number = math.inf
    if not math.isfinite(number):
        raise _refuse(f"expected {what}, a finite number")
    return number


def _length_mm(value: object, info: ValidationInfo) -> float:
    unit = _unit(info)
    what = f'a length, a number in {unit.value} or text such as "31 1/2 in" or "800 mm"'
    if isinstance(value, str):
        try:
            mm = float(read_length(value, unit))
        except NotALength as error:
            raise _refuse(f"expected {error.right}") from error
    elif isinstance(value, int | float) and not isinstance(value, bool):
        mm = _finite(value, what) * mm_per(unit)
    else:
        raise _refuse(f"expected {what}")
    if not abs(mm) <= LARGEST_MM:
        raise _refuse(f"expected a length of at most {LARGEST_MM:.0f} mm")
    return mm


def _plain(value: object, what: str, mark: str) -> float:
    """A number, or text of a number with the mark behind it ("50°", "7 %")."""
    if isinstance(value, str):
        found = re.fullmatch(rf"\s*([+-]?\d+(?:[.,]\d+)?)\s*(?:{mark})?\s*", value)
        if found is None:
            raise _refuse(f"expected {what}")
        return _finite(float(found[1].replace(",", ".")), what)
    if isinstance(value, int | float) and not isinstance(value, bool):
        return _finite(value, what)
    raise _refuse(f"expected {what}")


def _bounded(
    read: Callable[[object, ValidationInfo], float], holds: Callable[[float], bool], right: str
) -> BeforeValidator:
    def validate(value: object, info: ValidationInfo) -> float:
        number = read(value, info)
        if not holds(number):
            raise _refuse(f"expected {right}")
        return number

    return BeforeValidator(validate)


def _angle(value: object, info: ValidationInfo) -> float:
    return _plain(value, 'an angle in degrees, a number or text such as "50°"', "°|deg")


def _number(value: object, info: ValidationInfo) -> float:
    return _plain(value, "a number", "")


def _percent(value: object, info: ValidationInfo) -> float:
    return _plain(value, 'a percentage, a number or text such as "8 %"', "%")


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
