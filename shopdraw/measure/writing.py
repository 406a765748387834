"""Lengths as they are printed: fractions of an inch, decimal inches, millimetres, or two of these."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from shopdraw.measure.chain import round_chain
from shopdraw.measure.length import Unit
from shopdraw.measure.rounding import Size, steps_in

FINEST_DENOMINATOR = 128


class Form(Enum):
    """How a figure is formed."""

    FRACTION = "fraction"
    DECIMAL_INCH = "decimal-inch"
    MM = "mm"


@dataclass(frozen=True, slots=True)
class Style:
    """How lengths are printed. Made by `fractions`, `decimal_inches`, `millimetres` and `dual`.

    Attributes:
        form: fractions, decimal inches or mm.
        step: the rounding step in the form's own unit.
        decimal_sign: "." or ",".
        trailing_zeros: whether decimals are filled up: 800.0 beside 800.5.
        second: the style of the figure in brackets, or None.
    """

    form: Form
    step: Fraction
    decimal_sign: str = "."
    trailing_zeros: bool = True
    second: Style | None = None

    @property
    def unit(self) -> Unit:
        """The unit of the (first) figure."""
        return Unit.MM if self.form is Form.MM else Unit.INCH

    @property
    def step_mm(self) -> Fraction:
        """The rounding step of the (first) figure in mm, exactly."""
        return self.step * self.unit.in_mm


def fractions(denominator: int = 16) -> Style:
    """Whole inches and a fraction: 31 1/2.

    Args:
        denominator: the finest, a power of two up to 128.
    Raises:
        ValueError: it is none.
    """
    if not 1 <= denominator <= FINEST_DENOMINATOR or denominator & (denominator - 1):
        raise ValueError(f"a denominator of {denominator}; it is a power of two from 1 to {FINEST_DENOMINATOR}")
    return Style(Form.FRACTION, Fraction(1, denominator))


def decimal_inches(places: int = 3) -> Style:
    """Decimal inches without a zero before the point: 31.500, .703. Source: ASME Y14.5, decimal inch dimensioning.

    Raises:
        ValueError: places are not 1 to 4.
    """
    if not 1 <= places <= 4:
        raise ValueError(f"{places} decimal places of an inch; 1 to 4 are printed")
    return Style(Form.DECIMAL_INCH, Fraction(1, 10**places))


def millimetres(step: str = "0.5", decimal_sign: str = ".", *, trailing_zeros: bool = True) -> Style:
    """Millimetres with a zero before the decimal sign: 800.0, 0,5.

    Args:
        step: "1", "0.5", "0.1", "0.05" or "0.01". Three decimals after a comma would read as thousands.
        decimal_sign: "." or "," (ISO 129-1 has the comma).
        trailing_zeros: whether 800 is printed as 800.0 where the step has decimals.
    Raises:
        ValueError: another step or sign.
    """
    if step not in ("1", "0.5", "0.1", "0.05", "0.01") or decimal_sign not in (".", ","):
        allowed = "steps are 1, 0.5, 0.1, 0.05, 0.01, signs . and ,"
        raise ValueError(f'mm in steps of "{step}" with "{decimal_sign}"; {allowed}')
    return Style(Form.MM, Fraction(step), decimal_sign, trailing_zeros)


def dual(first: Style, second: Style) -> Style:
    """Two figures, the second in brackets, for reference: 31 1/2 [800.0]. Each comes from the exact size."""
    return Style(first.form, first.step, first.decimal_sign, first.trailing_zeros, second)


def write_length(size: Size, style: Style) -> str:
    """The figure as printed, rounded to the style's step; half a step goes away from zero.

    Args:
        size: mm; a negative one is printed with a hyphen before it.
        style: how.
    """
    figure = write_steps(steps_in(size, style.step_mm), style)
    return figure if style.second is None else f"{figure} [{write_length(size, style.second)}]"


def write_steps(steps: int, style: Style) -> str:
    """A whole number of the style's steps as printed, without a second figure: steps don't tell the exact size."""
    value = abs(steps) * style.step
    sign = "-" if steps < 0 else ""
    return sign + (_fraction(value) if style.form is Form.FRACTION else _decimal(value, style))


def write_chain(links: Sequence[Size], style: Style, overall: Size | None = None) -> tuple[tuple[str, ...], str]:
    """A chain's links and its overall as printed: they add up, in brackets too.

    Args:
        links: mm, in order.
        style: how; the links of each of two styles are rounded as a chain of their own.
        overall: mm; by default the sum of the links.
    Raises:
        ChainError: a link is below zero, or the links don't make the overall.
    """
    chain = round_chain(links, style.step_mm, overall)
    printed = tuple(write_steps(link, style) for link in chain.links)
    whole = write_steps(chain.overall, style)
    if style.second is None:
        return printed, whole
    inner, inner_whole = write_chain(links, style.second, overall)
    return tuple(f"{a} [{b}]" for a, b in zip(printed, inner, strict=True)), f"{whole} [{inner_whole}]"


def _fraction(value: Fraction) -> str:
    whole, rest = divmod(value, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def _decimal(value: Fraction, style: Style) -> str:
    places = _places(style.step)
    figures = str(int(value * 10**places)).zfill(places + 1)
    whole, rest = (figures[:-places], figures[-places:]) if places else (figures, "")
    if not style.trailing_zeros:
        rest = rest.rstrip("0")
    if style.form is Form.DECIMAL_INCH and whole == "0" and value:
        whole = ""
    return f"{whole}{style.decimal_sign}{rest}" if rest else whole


def _places(step: Fraction) -> int:
    """How many decimals the step needs: 1 for 0.5, 2 for 0.05."""
    places = 0
    while (step * 10**places).denominator != 1:
        places += 1
    return places
