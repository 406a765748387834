"""How schedules write sizes: in the same figures as the drawings, handed down by who draws these."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.measure import (
    Form,
    Style,
    decimal_inches,
    millimetres,
    round_to_step,
    write_angle,
    write_chain,
    write_length,
)


@dataclass(frozen=True, slots=True)
class Figures:
    """Figures of a set.

    Attributes:
        cut: style of cuts and joints.
        fit: style of fits and clearances.
        decimal_sign: of angles.
    """

    cut: Style
    fit: Style
    decimal_sign: str = "."

    @property
    def inch(self) -> bool:
        """Whether sizes are in inches."""
        return self.cut.form is not Form.MM

    @property
    def fine(self) -> Style:
        """The style of sizes that carry a fit: so fine that the fit isn't rounded away."""
        return decimal_inches(3) if self.inch else millimetres("0.01", self.decimal_sign)

    def size(self, size_mm: float) -> str:
        """A size of a cut."""
        return write_length(max(size_mm, 0.0), self.cut)

    def fine_size(self, size_mm: float) -> str:
        """A size that goes with a fit."""
        return write_length(max(size_mm, 0.0), self.fine)

    def fitted(self, guest_mm: float, fit_mm: float) -> tuple[str, str]:
        """An opening that carries a fit, and the fit: as the part sheets add them up."""
        (_, gap), whole = write_chain((guest_mm, fit_mm), self.fine)
        return whole, gap

    def gap(self, size_mm: float) -> str:
        """A gap in words; finer where rounding would eat it."""
        size = max(size_mm, 0.0)
        eaten = size > 0.0 and float(round_to_step(size, self.fit.step_mm)) == 0.0
        return write_length(size, self.fine if eaten else self.fit)

    def angle(self, degrees: float) -> str:
        """An angle to 0.1°."""
        return write_angle(degrees, self.decimal_sign)
