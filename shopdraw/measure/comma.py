"""The decimal comma in words: figures in a sentence take it, labels and ids keep their points."""

from __future__ import annotations

import re

_NUMBER = r"\d+(?:[.,]\d+)?"
_FIGURES = (
    re.compile(rf"(?<![\w.,])-?{_NUMBER}(?:(?: × | x | to | or ){_NUMBER})* (?:mm³|mm|in³|in|dm³)(?!\w)"),
    re.compile(rf"(?<![\w.,])-?{_NUMBER}(?=°| ?%| kg\b)"),
    re.compile(rf"(?<=ratio ){_NUMBER}"),
)


def with_comma(words: str) -> str:
    """The words with a decimal comma in every figure that has a unit.

    >>> with_comma("7.1a: bank.2 is 4.25 mm deep, at 48.5°")
    '7.1a: bank.2 is 4,25 mm deep, at 48,5°'
    """
    return _with(",", words)


def with_point(words: str) -> str:
    """The words with a decimal point in every figure that has a unit.

    >>> with_point("7.1a is 4,25 mm deep, at 48,5°")
    '7.1a is 4.25 mm deep, at 48.5°'
    """
    return _with(".", words)


def _with(sign: str, words: str) -> str:
    other = "." if sign == "," else ","
    for figure in _FIGURES:
        words = figure.sub(lambda told: told.group(0).replace(other, sign), words)
    return words
