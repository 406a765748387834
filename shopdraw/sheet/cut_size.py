"""How the sizes of a board's cuts are written, and which of them carry a fit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from shopdraw.measure import Form, Style, decimal_inches, fractions, millimetres, write_angle, write_chain, write_length
from shopdraw.sheet.figure import Writing
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board


@dataclass(frozen=True, slots=True)
class Fit:
    """What a cut is fitted to.

    Attributes:
        kind: of the cut, in the trade's word.
        to: what enters it: "stock primary as measured", "tenon".
        thickness: of what enters, mm.
        fit: how much wider the cut is, mm.
    """

    kind: str
    to: str
    thickness: float
    fit: float


@dataclass(frozen=True, slots=True)
class CutSizes:
    """The writing of one board's cuts; `fits` by the cut's number in the board's list."""

    writing: Writing
    fits: Mapping[int, Fit] = field(default_factory=dict)

    def cut(self, size: float) -> str:
        """A size of a cut or of a finished board."""
        return write_length(max(size, 0.0), self.writing.cut)

    def thickness(self, size: float) -> str:
        """A finished thickness: as measured, so rounded as fits are."""
        return write_length(size, self.writing.fit)

    def rough(self, size: float) -> str:
        """A rough width or length: to 1/4 in or 1 mm, as the cut list has it (common practice)."""
        inch = self.writing.cut.form is not Form.MM
        return write_length(size, fractions(4) if inch else millimetres("1", self.writing.decimal_sign))

    def fine(self, size: float) -> str:
        """A size that carries a fit: written finer, so that the fit isn't rounded away."""
        return write_length(size, self._fine_style)

    def width(self, index: int, size: float) -> str:
        """A width: finer where it carries a fit."""
        return self.fine(size) if index in self.fits else self.cut(size)

    def angle(self, degrees: float) -> str:
        """An angle to 0.1°."""
        return write_angle(degrees, self.writing.decimal_sign)

    def fit_lines(self) -> tuple[str, ...]:
        """Each fit once: "dado for stock primary as measured 20.00: 20.10 (fit 0.10)"."""
        lines = []
        for fit in self.fits.values():
            (entering, gap), whole = write_chain((fit.thickness, fit.fit), self._fine_style)
            lines.append(f"{fit.kind} for {fit.to} {entering}: {whole} (fit {gap})")
        return tuple(dict.fromkeys(lines))

    @property
    def _fine_style(self) -> Style:
        inch = self.writing.cut.form is not Form.MM
        return decimal_inches(3) if inch else millimetres("0.01", self.writing.decimal_sign)


def cut_sizes(board: Board, assembly: Assembly, writing: Writing) -> CutSizes:
    """How a board's cuts are written, with the fits of the joints that made them."""
    hosted = [joint for joint in assembly.joints if joint.host == board.id and joint.fit > 1e-9]
    fits: dict[int, Fit] = {}
    for index, cut_id in enumerate(board.cut_ids):
        joint = _joint_of(cut_id, hosted)
        if joint is not None:
            fit = _fit(joint, board.shape.cuts[index].kind, assembly)
            if fit is not None:
                fits[index] = fit
    return CutSizes(writing, fits)


def _joint_of(cut_id: str, joints: list[Joint]) -> Joint | None:
    exact = next((joint for joint in joints if joint.id == cut_id), None)
    return exact or next((joint for joint in joints if joint.id.startswith(cut_id + ".")), None)


def _fit(joint: Joint, kind: str, assembly: Assembly) -> Fit | None:
    sizes = dict(joint.sizes)
    name = kind.replace("-", " ")
    if "thickness" in sizes:
        return Fit(name, "tenon", sizes["thickness"], joint.fit)
    guest = next((assembly.board(one) for one in joint.guest_boards if assembly.has(one)), None)
    width = sizes.get("width")
    if guest is None or width is None:
        return None
    entering = width - joint.fit
    same = abs(entering - guest.stock.thickness) < 1e-6
    return Fit(name, f"stock {guest.stock.name} as measured" if same else "tongue", entering, joint.fit)
