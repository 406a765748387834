"""A length as an exact value, and the two units that a piece may be in."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from shopdraw.measure.error import LengthError

MM_PER_INCH = Fraction(254, 10)
"""Exact. Source: international yard and pound agreement of 1959; ISO 80000-3."""

LONGEST_MM = 100_000
"""100 m: what is longer is no piece of furniture but a slip of the keys."""

_SPELT_OUT = 10**30
"""Numbers from here on aren't repeated in an error: Python itself won't write out the longest."""


class Unit(Enum):
    """The unit of a bare number."""

    MM = "mm"
    INCH = "inch"

    @property
    def in_mm(self) -> Fraction:
        """How many mm one of it is, exactly."""
        return Fraction(1) if self is Unit.MM else MM_PER_INCH

    @property
    def short(self) -> str:
        """As written after a number: mm, in."""
        return "mm" if self is Unit.MM else "in"


@dataclass(frozen=True, slots=True, order=True)
class Length:
    """A length, held exactly, so that 31 1/2 in stays 800.1 mm however often it is read and written.

    Attributes:
        exact: mm.
    """

    exact: Fraction

    @property
    def mm(self) -> float:
        """Millimetres as a float: the nearest double."""
        return float(self.exact)

    @property
    def inches(self) -> Fraction:
        """Inches, exactly."""
        return self.exact / MM_PER_INCH


def length_of(number: int | float, unit: Unit, *, negative: bool = False) -> Length:
    """The length that a bare number stands for, such as an unquoted figure in a piece file.

    Args:
        number: as typed; a float is taken by its shortest decimal form, so 18.3 is exactly 18.3.
        unit: the unit of bare numbers.
        negative: whether a length below zero makes sense here.
    Raises:
        LengthError: not a number (true, NaN, infinite), below zero where that makes no sense, or beyond 100 m.
    """
    right = f'write a number such as 31.5, or text such as "31 1/2 {unit.short}"'
    if isinstance(number, bool) or (isinstance(number, float) and not math.isfinite(number)):
        raise LengthError(str(number).lower(), "is not a size", right)
    text = repr(number) if abs(number) < _SPELT_OUT else "a number beyond 1e30"
    exact = Fraction(number) if isinstance(number, int) else Fraction(repr(number))
    return checked(exact * unit.in_mm, text, negative=negative)


def checked(exact: Fraction, text: str, *, negative: bool) -> Length:
    """A length of `exact` mm, once it is known to be possible; `text` is what a person wrote.

    Raises:
        LengthError: below zero where that makes no sense, or beyond 100 m.
    """
    if exact < 0 and not negative:
        raise LengthError(text, "comes out below zero", "a length here is zero or more")
    if abs(exact) > LONGEST_MM:
        raise LengthError(text, "is too long", f"a length is at most {LONGEST_MM // 1000} m ({LONGEST_MM} mm)")
    return Length(exact)
