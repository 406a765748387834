"""Sizes as lists hold them: numbers in millimetre pieces, printed fractions in inch pieces. T × W × L everywhere."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.lists.table import Cell, Column
from shopdraw.measure import Style, fractions, millimetres, round_to_step, write_length
from shopdraw.piece.design import Design


@dataclass(frozen=True, slots=True)
class Sizes:
    """How a piece's lists print sizes.

    Attributes:
        unit: "mm" or "in".
        thickness: of stock and boards, as measured.
        cut: finished widths and lengths: what a person cuts to.
        rough: rough widths and lengths, which are rounded up before.
    """

    unit: str
    thickness: Style
    cut: Style
    rough: Style

    def cell(self, size_mm: float | None, style: Style) -> Cell:
        """A size as a cell: a rounded number of mm, or an inch figure as printed."""
        if size_mm is None:
            return None
        return float(round_to_step(size_mm, style.step_mm)) if self.unit == "mm" else write_length(size_mm, style)

    def column(self, head: str) -> Column:
        """A column of such cells."""
        return Column(head, self.unit, 1)

    def words(self, size_mm: float, style: Style | None = None) -> str:
        """A size within a sentence, with its unit."""
        return f"{write_length(size_mm, style or self.cut)} {self.unit}"


def sizes_of(design: Design) -> Sizes:
    """The rounding of a piece's lists.

    Source: common practice: what is cut to 1/32 in or 0.1 mm, thicknesses and fits to 1/64 in or 0.1 mm. Rough sizes
    are whole quarters of an inch or millimetres already (`rough_size`), unless the board they come from is narrower.
    """
    drawing = design.drawing
    if design.piece.units == "mm":
        fine = millimetres("0.1")
        return Sizes("mm", fine, fine, fine)
    cut = fractions(max(32, drawing.denominator))
    return Sizes("in", fractions(64), cut, cut)
