"""Lengths as people type them, read exactly or refused.

Read: `31 1/2`, `31-1/2`, `31 1/2"`, `2' 7 1/2"`, `2'-7 1/2"`, `7½″`, `31.5 in`, `18,3 mm`, `80 cm`, `0.8 m`, and sums
and differences of these. What can be read in two ways is refused with the forms that would be right:

* `1,234`: a decimal comma or a thousands mark. (`0,703` and `1234,567` are decimals: thousands never start with 0, nor
  follow four figures. A point is always a decimal point, as in 1.250.)
* `31 -1/2`, `31- 1/2`: a mixed number or a difference. The hyphen of a mixed number has no space on either side, the
  minus of a difference has one on both; any other hyphen (`800-20`) is refused too, since it may be a range.
* `2' - 7"`: feet and inches, or a difference.
* `31 1/2 + 3/4 mm` in an inch piece: whether the unit is meant for both.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from fractions import Fraction
from typing import NoReturn

from shopdraw.measure.error import LengthError
from shopdraw.measure.length import MM_PER_INCH, Length, Unit, checked

LONGEST_TEXT = 80
"""Characters; no length takes more, and a limit keeps the reading quick whatever is fed in."""

FORMS = "write for example 31 1/2, 31-1/2, 2' 7 1/2\", 31.5 in, 800 mm, 80 cm or 31 1/2 + 3/4"

_FOOT = 12 * MM_PER_INCH
_UNITS: dict[str, Fraction] = {
    **dict.fromkeys(('"', "in", "in.", "inch", "inches"), MM_PER_INCH),
    **dict.fromkeys(("'", "ft", "ft.", "foot", "feet"), _FOOT),
    **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters"), Fraction(1)),
    **dict.fromkeys(("cm", "centimetre", "centimetres", "centimeter", "centimeters"), Fraction(10)),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), Fraction(1000)),
}

_MINUS = "\u2212"
_SAME = {
    **dict.fromkeys("\u00a0\u2009\u200a\u202f\u2007\t", " "),
    **dict.fromkeys("\u2010\u2011\u2013", "-"),
    **dict.fromkeys("\u2032\u2019\u02b9\u00b4", "'"),
    **dict.fromkeys("\u2033\u201d\u02ba\u201c", '"'),
    "\u2044": "/",
    "\u2215": "/",
}
"""Other signs that people's keyboards and drawings give for a space, hyphen, foot mark, inch mark and fraction bar."""

_STRANGE = re.compile(rf"""[^0-9a-z .,/'"+{_MINUS}-]""")
_EXPONENT = re.compile(r"[0-9]e[+-]?[0-9]")
_TWO_SIGNS = re.compile(r"[0-9][.,][0-9]+[.,][0-9]")
_THOUSANDS = re.compile(r"(?<![0-9.,])[1-9][0-9]{0,2},[0-9]{3}(?![0-9])")
_OPERATOR = re.compile(rf"( *\+ *| +[{_MINUS}-] +)")
_AMOUNT = re.compile(
    r"(?P<decimal>[0-9]*[.,][0-9]+)"
    r"|(?:(?P<whole>[0-9]+)(?: +|-))?(?P<top>[0-9]+)/(?P<under>[0-9]+)"
    r"|(?P<plain>[0-9]+)"
)
_UNIT = re.compile(r""" *(?P<unit>["']|[a-z]+\.?)""")
_AFTER_FEET = re.compile(r"-| *")


@dataclass(frozen=True, slots=True)
class _Term:
    """One length of a sum: mm without a sign; the unit that was written, in mm, if one was."""

    mm: Fraction
    unit: Fraction | None


def read_length(text: str, unit: Unit, *, negative: bool = False) -> Length:
    """The length that a person typed.

    Args:
        text: one of the forms in the module's docstring.
        unit: the unit of numbers that carry none, the piece's own.
        negative: whether a length below zero makes sense here (an offset, say).
    Returns:
        The exact length.
    Raises:
        LengthError: it can't be read, can be read in two ways, is below zero where that makes no sense, or is beyond
            100 m.
    """
    plain = _plain(text)
    first_sign = -1 if plain[0] in f"-{_MINUS}" else 1
    parts = _OPERATOR.split(plain[1:].lstrip() if plain[0] in f"{_MINUS}+-" else plain)
    terms = [_term(part, unit, text) for part in parts[0::2]]
    signs = [first_sign, *(1 if "+" in mark else -1 for mark in parts[1::2])]
    _refuse_mixed_units(terms, unit, text)
    _refuse_feet_less_inches(terms, signs, text)
    return checked(sum((s * t.mm for s, t in zip(signs, terms, strict=True)), Fraction(0)), text, negative=negative)


def _plain(text: str) -> str:
    """The text in the few signs that the reader knows, after refusing what no form allows."""
    if len(text) > LONGEST_TEXT:
        raise LengthError(text, f"is {len(text)} characters long", FORMS)
    plain = _with_plain_fractions("".join(_SAME.get(c, c) for c in text.strip())).lower().replace("''", '"').strip()
    if not plain:
        raise LengthError(text, "is empty", FORMS)
    if strange := _STRANGE.search(plain):
        raise LengthError(text, f'holds "{strange[0] if strange[0].isprintable() else "?"}"', FORMS)
    if _EXPONENT.search(plain):
        raise LengthError(text, "is written with a power of ten", "write the number out, for example 1200 mm")
    if _TWO_SIGNS.search(plain):
        raise LengthError(text, "has a thousands mark", "write it without one, for example 1234.5 or 1234,5")
    if found := _THOUSANDS.search(plain):
        decimal, whole = found[0].replace(",", "."), found[0].replace(",", "")
        raise LengthError(text, f"can be read as {decimal} or as {whole}", f"write {decimal} or {whole}")
    return re.sub(r" */ *", "/", plain)


def _with_plain_fractions(text: str) -> str:
    """½ as 1/2, kept apart from a figure before it: 7½ is 7 1/2, not 71/2."""
    out = ""
    for sign in text:
        figures = unicodedata.normalize("NFKC", sign)
        if len(sign) == 1 and "\u2044" in figures and figures != sign and figures[-1].isdigit():
            out += ("" if out.endswith(("-", _MINUS)) else " ") + figures.replace("\u2044", "/")
        else:
            out += sign
    return out


def _term(part: str, unit: Unit, text: str) -> _Term:
    """One length of the sum, with its unit or feet and inches."""
    part = part.strip()
    amount, at = _amount(part, 0, text)
    written, at = _unit(part, at, text)
    if written is None or at == len(part):
        if at < len(part):
            _refuse(part, text)
        return _Term(amount * (written or unit.in_mm), written)
    if written != _FOOT:
        _refuse(part, text)
    after = _AFTER_FEET.match(part, at)
    inches, at = _amount(part, after.end() if after else at, text)
    inch_unit, at = _unit(part, at, text)
    if at < len(part) or (inch_unit or unit.in_mm) != MM_PER_INCH:
        _refuse(part, text)
    if inches >= 12 or amount.denominator != 1:
        right = "write whole feet and less than 12 inches, as 2' 7 1/2\""
        raise LengthError(text, "has feet and inches that don't go together", right)
    return _Term(amount * _FOOT + inches * MM_PER_INCH, MM_PER_INCH)


def _amount(part: str, at: int, text: str) -> tuple[Fraction, int]:
    """The number that starts at `at`, and where it ends."""
    found = _AMOUNT.match(part, at)
    if not found:
        _refuse(part, text)
    if found["decimal"]:
        return Fraction("0" + found["decimal"].replace(",", ".")), found.end()
    if found["plain"]:
        return Fraction(int(found["plain"])), found.end()
    top, under = int(found["top"]), int(found["under"])
    if under == 0:
        raise LengthError(text, "divides by zero", "write a fraction such as 1/2 or 3/16")
    if found["whole"] and top >= under:
        raise LengthError(text, f"has {top}/{under} after a whole number", "write a fraction below 1 there, as 31 1/2")
    return int(found["whole"] or 0) + Fraction(top, under), found.end()


def _unit(part: str, at: int, text: str) -> tuple[Fraction | None, int]:
    """The unit that starts at `at`, in mm, and where it ends; None where there is none."""
    found = _UNIT.match(part, at)
    if not found:
        return None, at
    if found["unit"] not in _UNITS:
        right = "write in, ft, mm, cm, m, \" or '"
        raise LengthError(text, f'has "{found["unit"]}", which is no unit known here', right)
    return _UNITS[found["unit"]], found.end()


def _refuse(part: str, text: str) -> NoReturn:
    """Says as closely as possible why a term of the sum can't be read."""
    if not part:
        right = "write a length on both sides, as 31 1/2 + 3/4"
        raise LengthError(text, "has a plus or minus with nothing beside it", right)
    if re.match(r"[0-9]+( -|- )[0-9]+/[0-9]", part):
        mixed, less = re.sub(r" *- *", " ", part), re.sub(r" *- *", " - ", part)
        raise LengthError(text, f"can be read as {mixed} or as {less}", f"write {mixed} or {less}")
    if re.search(rf".[{_MINUS}-]", part):
        right = "write 31 1/2 - 3/4 for a difference, 31-1/2 for a mixed number"
        raise LengthError(text, "has a minus without a space on both sides", right)
    if part[0] in f"-{_MINUS}":
        raise LengthError(text, "has two signs in a row", "write one, as 31 1/2 - 3/4")
    if re.search(r"[0-9] +[0-9]", part):
        right = "write 1234 without a space, 31 1/2 for a mixed number, 2' 7\" for feet and inches"
        raise LengthError(text, "has two numbers side by side", right)
    if re.search(r"[.,](?![0-9])", part):
        raise LengthError(text, "has a decimal sign without a figure after it", "write 5 or 5.0")
    raise LengthError(text, "can't be read", FORMS)


def _refuse_mixed_units(terms: list[_Term], unit: Unit, text: str) -> None:
    """A unit on some lengths of a sum only is clear where it is the piece's own."""
    written = {t.unit for t in terms if t.unit is not None}
    if written and any(t.unit is None for t in terms) and written != {unit.in_mm}:
        right = "write the unit on each, as 31 1/2 in + 3 mm"
        raise LengthError(text, "has a unit on one length and none on another", right)


def _refuse_feet_less_inches(terms: list[_Term], signs: list[int], text: str) -> None:
    """`2' - 7"` is how some write 2' 7"."""
    for left, right, sign in zip(terms, terms[1:], signs[1:], strict=False):
        if sign < 0 and left.unit == _FOOT and right.unit in (MM_PER_INCH, None) and right.mm < _FOOT:
            forms = 'write 2\' 7" for the one, 24" - 7" for the other'
            raise LengthError(text, "can be read as feet and inches or as a difference", forms)
