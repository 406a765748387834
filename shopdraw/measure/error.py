"""What is said when a written size can't be taken."""

from __future__ import annotations

LONGEST_QUOTE = 40
"""Characters of a person's own words that an error repeats; the rest is left out, so that it stays one line."""


class MeasureError(ValueError):
    """A written size that can't be taken, with what would be right.

    Attributes:
        found: the words as they were written, cut short where long, on one line.
        reason: what is wrong with them.
        right: the form that would be right.
    """

    kind = "size"

    def __init__(self, text: str, reason: str, right: str) -> None:
        self.found = quoted(text)
        self.reason = reason
        self.right = right
        super().__init__(f'{self.kind} "{self.found}" {reason}; {right}')


class LengthError(MeasureError):
    """A length that can't be read, or can be read in two ways."""

    kind = "length"


class AngleError(MeasureError):
    """An angle that can't be read."""

    kind = "angle"


class ChainError(ValueError):
    """Links of a chain that don't make its overall."""


def quoted(text: str) -> str:
    """A person's words on one line: control characters escaped, long ones cut short."""
    start = text[: LONGEST_QUOTE + 1]
    shown = "".join(c if c.isprintable() else c.encode("unicode_escape").decode("ascii") for c in start)
    return shown if len(shown) <= LONGEST_QUOTE else shown[:LONGEST_QUOTE] + "…"
