"""Findings in the piece's own figures: a rule writes every length as `6.35 mm`, a person reads `1/4 in` or `6,35 mm`.

The one place where the words of a finding take the unit and the decimal sign of the piece, so that `check`, `facts`,
the sheets and the editor say the same. The numbers of a finding (value, limit) stay as they are.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace

from shopdraw.measure import Unit, fractions, with_comma, write_length
from shopdraw.piece.design import Design
from shopdraw.wood.finding import Finding

_NUMBER = r"\d+(?:\.\d+)?"
_LENGTHS = re.compile(rf"(?<![\w.])(-?{_NUMBER}(?:(?: × | x | to | or ){_NUMBER})*) (mm³|mm)(?!\w)")
_RIGHT = re.compile(rf"(-?{_NUMBER}) mm")
_INCH = float(Unit.INCH.in_mm)
_FINEST = 64
"""Of fractions that a rule or tape carries. Common practice."""
_ON_THE_MARK_MM = 0.011
"""A figure written to 0.01 mm this near to a fraction is that fraction."""


def in_own_figures(design: Design, found: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings worded for a piece: inches in inch pieces, a decimal comma where its drawings print one.

    Args:
        design: its unit and its decimal sign.
        found: findings as rules word them, in mm and with a decimal point.
    """
    inch = design.piece.units == "inch"
    if not inch and design.drawing.decimal != "comma":
        return tuple(found)
    return tuple(
        replace(
            finding,
            message=words_in_own_figures(design, finding.message),
            right=(finding.right[0], _right_inches(finding.right[1])) if inch and finding.right else finding.right,
        )
        for finding in found
    )


def words_in_own_figures(design: Design, words: str) -> str:
    """A sentence about a piece in its own figures: inches in inch pieces, a decimal comma where its drawings print one.

    Args:
        design: its unit and its decimal sign.
        words: worded in mm and with a decimal point.
    """
    if design.piece.units == "inch":
        return _inches(words)
    return with_comma(words) if design.drawing.decimal == "comma" else words


def inches_in_words(mm: float) -> str:
    """A length of a finding in inches, without its unit.

    A fraction where the figure is one; else what is an inch or longer to the nearest 1/64, as a tape reads, and what is
    shorter (play, gaps, webs) in thousandths, as a feeler gauge and a calliper read. Common practice.
    """
    sign, size = ("-" if mm < 0 else ""), abs(mm)
    nearest = round(size / _INCH * _FINEST) / _FINEST * _INCH
    if abs(nearest - size) <= _ON_THE_MARK_MM or size >= _INCH:
        return sign + write_length(nearest, fractions(_FINEST))
    return f"{sign}{size / _INCH:.3f}"


def _inches(words: str) -> str:
    def told(found: re.Match[str]) -> str:
        if found[2] == "mm³":
            return f"{float(found[1]) / _INCH**3:.2g} in³"
        return re.sub(_NUMBER, lambda one: inches_in_words(float(one[0])), found[1]) + " in"

    return _LENGTHS.sub(told, words)


def _right_inches(value: str) -> str:
    """A value for the file: a fraction, or decimals as fine as the 0.01 mm that the rule gave."""
    found = _RIGHT.fullmatch(value)
    if found is None:
        return value
    mm = float(found[1])
    nearest = round(mm / _INCH * _FINEST) / _FINEST * _INCH
    if abs(nearest - mm) <= 1e-6 and mm > 0:
        return write_length(nearest, fractions(_FINEST)) + " in"
    return f"{mm / _INCH:.4f} in"
