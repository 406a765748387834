"""How sizes are shown on the screen: in the piece's unit, rounded as its drawings are, with a decimal sign."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.editor.holding import steps
from shopdraw.measure import Style, Unit, fractions, millimetres, write_angle, write_length
from shopdraw.piece.design import Design


@dataclass(frozen=True, slots=True)
class Shown:
    """The way of showing sizes.

    Attributes:
        unit: the piece's.
        style: of lengths.
        decimal_sign: "." or ",".
        steps: of a drag, without and with Shift, mm.
    """

    unit: Unit
    style: Style
    decimal_sign: str
    steps: tuple[float, float] = (5.0, 0.5)

    def length(self, mm: float) -> str:
        """A length without its unit, as on a drawing."""
        sign = "−" if mm < 0 else ""
        return sign + _written(abs(mm), self.style)

    def length_with_unit(self, mm: float) -> str:
        """A length with its unit, as in a sentence."""
        return f"{self.length(mm)} {self.unit.short}"

    def angle(self, degrees: float) -> str:
        """An angle."""
        return write_angle(degrees, self.decimal_sign)

    def number(self, value: float, places: int = 3) -> str:
        """A bare number."""
        text = f"{value:.{places}f}".rstrip("0").rstrip(".")
        return text.replace(".", self.decimal_sign)

    def in_column(self, value: float, places: int = 3) -> str:
        """A bare number that stands under others: all have as many places."""
        return f"{value:.{places}f}".replace(".", self.decimal_sign)


@lru_cache(maxsize=4096)
def _written(mm: float, style: Style) -> str:
    """Kept: a canvas that follows a hand writes the same sizes again and again."""
    return write_length(mm, style)


def shown_for(design: Design, decimal_sign: str = ".") -> Shown:
    """How a piece's sizes are shown.

    Args:
        design: its unit and the fraction that it prints.
        decimal_sign: the reader's own.
    """
    return shown_in(design.piece.units, design.drawing.denominator, decimal_sign)


def shown_in(units: str, denominator: int | None = None, decimal_sign: str = ".") -> Shown:
    """How sizes of a file are shown.

    Args:
        units: "mm" or "inch".
        denominator: the finest fraction of an inch; sixteenths where none is told.
        decimal_sign: the reader's own.
    """
    unit = Unit.INCH if units == "inch" else Unit.MM
    if denominator not in (1, 2, 4, 8, 16, 32, 64):
        denominator = 16
    style = (
        fractions(denominator)
        if unit is Unit.INCH
        else millimetres("0.5", "," if decimal_sign == "," else ".", trailing_zeros=False)
    )
    return Shown(unit, style, "," if decimal_sign == "," else ".", steps(unit, denominator))
