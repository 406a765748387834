"""Angles in degrees: reading and writing."""

from __future__ import annotations

import re
from fractions import Fraction

from shopdraw.measure.error import AngleError
from shopdraw.measure.rounding import steps_in

ANGLE_STEP = Fraction(1, 10)
"""Angles are printed to a tenth of a degree."""

FULL_TURN = 360
_RIGHT = "write degrees, for example 50, 50.2, 50,2° or 50° 12'"
_ANGLE = re.compile(
    r"(?P<sign>[-+\u2212]?) *(?P<degrees>[0-9]{1,4}(?:[.,][0-9]{1,12})?|[.,][0-9]{1,12})"
    r"(?: *(?:°|º|deg\.?|degrees?))?"
    r"(?:(?<=[°º]) *(?P<minutes>[0-9]{1,2}) *['′’](?: *(?P<seconds>[0-9]{1,2}) *(?:[\"″”]|''))?)?"
)


def read_angle(text: str, *, negative: bool = False) -> float:
    """The angle that a person typed, in degrees: `50`, `50.2°`, `50,2 deg`, `50° 12' 30"`.

    Args:
        text: what was typed.
        negative: whether an angle below zero makes sense here.
    Raises:
        AngleError: it can't be read, is over a full turn, or below zero where that makes no sense.
    """
    found = _ANGLE.fullmatch(text.strip().lower())
    if not found:
        raise AngleError(text, "is empty" if not text.strip() else "can't be read", _RIGHT)
    degrees = Fraction("0" + found["degrees"].replace(",", "."))
    minutes, seconds = int(found["minutes"] or 0), int(found["seconds"] or 0)
    if minutes >= 60 or seconds >= 60 or (found["minutes"] and degrees.denominator != 1):
        right = "write whole degrees, and less than 60 of each, as 50° 12'"
        raise AngleError(text, "has minutes or seconds that don't go with it", right)
    degrees += Fraction(minutes, 60) + Fraction(seconds, 3600)
    if degrees > FULL_TURN:
        raise AngleError(text, "is over a full turn", "an angle is at most 360")
    if found["sign"] in ("", "+") or not degrees:
        return float(degrees)
    if not negative:
        raise AngleError(text, "is below zero", "an angle here is zero or more")
    return -float(degrees)


def write_angle(degrees: float, decimal_sign: str = ".") -> str:
    """The angle as printed, to 0.1°: 50.2°."""
    return _tenths(steps_in(degrees, ANGLE_STEP), decimal_sign)


def write_with_complement(degrees: float, decimal_sign: str = ".") -> tuple[str, str]:
    """An angle and what it lacks to 90°, as printed: the two figures always make 90.0 (50.25 gives 50.3° and 39.7°)."""
    tenths = steps_in(degrees, ANGLE_STEP)
    return _tenths(tenths, decimal_sign), _tenths(900 - tenths, decimal_sign)


def _tenths(tenths: int, decimal_sign: str) -> str:
    whole, rest = divmod(abs(tenths), 10)
    return f"{'-' if tenths < 0 else ''}{whole}{decimal_sign}{rest}°"
