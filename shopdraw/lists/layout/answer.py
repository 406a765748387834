"""A layout: which boards and sheets are cut up, where each part lies on them, and every cut in order."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from shopdraw.lists.layout.job import Job, Piece

Way = Literal["rip", "crosscut"]
"""Along the grain of the piece, or across it."""


@dataclass(frozen=True, slots=True)
class Laid:
    """A part as it lies: lower left corner, extents along and across the piece, mm.

    Attributes:
        turned: its own grain runs across the piece's.
    """

    part: str
    x: float
    y: float
    length: float
    width: float
    turned: bool = False


@dataclass(frozen=True, slots=True)
class SawCut:
    """One cut from edge to edge of what lies on the saw.

    Attributes:
        way: a rip runs along x at y = `at`, a crosscut along y at x = `at`.
        at: where the saw's kerf begins; it takes from there to `at` + kerf.
        start, end: where the cut enters and leaves, mm.
    """

    way: Way
    at: float
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class Offcut:
    """What is left over, mm."""

    x: float
    y: float
    length: float
    width: float

    @property
    def area(self) -> float:
        """Its area, mm²."""
        return self.length * self.width


@dataclass(frozen=True, slots=True)
class CutUp:
    """A board or sheet cut up: parts, cuts in the order in which they are made, what is left."""

    piece: Piece
    laid: tuple[Laid, ...]
    cuts: tuple[SawCut, ...]
    offcuts: tuple[Offcut, ...]


@dataclass(frozen=True, slots=True)
class Misfit:
    """A part that no board or sheet can hold, or a strip that can't be cut whole; `reason` is for people."""

    part: str
    reason: str


@dataclass(frozen=True, slots=True)
class Layout:
    """An answer to a job.

    Attributes:
        job: as it was laid out: parts that fit nowhere left out, strips that can't be whole taken apart.
        cut_up: boards and sheets in order.
        bound: no layout of this job costs less.
        contender: which search found it.
        misfits: what was left out or taken apart.
        hurried: the clock ended a search: a slower or faster machine may find another layout.
    """

    job: Job
    cut_up: tuple[CutUp, ...]
    bound: float
    contender: str
    misfits: tuple[Misfit, ...] = ()
    hurried: bool = False

    @property
    def cost(self) -> float:
        """What the boards and sheets cost."""
        return sum(cut.piece.cost for cut in self.cut_up)

    @property
    def proven(self) -> bool:
        """Nothing cheaper is possible."""
        return self.cost <= self.bound + 1e-6 * max(1.0, self.bound)

    @property
    def largest_offcut(self) -> float:
        """Area of the largest single offcut, mm²."""
        return max((offcut.area for cut in self.cut_up for offcut in cut.offcuts), default=0.0)

    @property
    def share_used(self) -> float:
        """Area of the parts as a share of the area cut up, 0 to 1."""
        whole = sum(cut.piece.length * cut.piece.width for cut in self.cut_up)
        return sum(laid.length * laid.width for cut in self.cut_up for laid in cut.laid) / whole if whole else 0.0
