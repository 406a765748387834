"""The decimal comma in words: figures in a sentence take it, labels and ids keep their points."""

from __future__ import annotations

import re

_NUMBER = r"\d+(?:\.\d+)?"
_FIGURES = (
    re.compile(rf"(?<![\w.])-?{_NUMBER}(?:(?: × | x | to ){_NUMBER})* (?:mm³|mm|in³|in)(?!\w)"),
    re.compile(rf"(?<![\w.])-?{_NUMBER}(?=°| ?%| kg\b)"),
    re.compile(rf"(?<=ratio ){_NUMBER}"),
)


def with_comma(words: str) -> str:
    """The words with a decimal comma in every figure that has a unit.

    >>> with_comma("7.1a: bank.2 is 4.25 mm deep, at 48.5°")
    '7.1a: bank.2 is 4,25 mm deep, at 48,5°'
    """
    for figure in _FIGURES:
        words = figure.sub(lambda told: told.group(0).replace(".", ","), words)
    return words
