"""Cutters: what a job has, and which of them fits a pocket."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.measure import MM_PER_INCH

ONE_PASS_MM = 0.2
"""A groove that is within this of its cutter is cut in one pass that can't be tuned (common practice)."""
RUN_OUT_MM = 1.0
"""How much further than its radius a cutter runs out of an open pocket."""
SAME_DRILL_MM = 0.05
"""A drill within this of a hole's diameter makes it (common practice)."""
_INCH = float(MM_PER_INCH)
_SLIGHT = 1e-6


@dataclass(frozen=True, slots=True)
class Cutter:
    """A cutter as measured.

    Attributes:
        id: as the shop calls it.
        kind: "straight", "ball", "vee" or "drill".
        diameter: mm, as measured.
        cutting_length: mm, or None where nobody has said.
        plunge: whether it may enter straight down.
        angle: of a vee's point, degrees.
    """

    id: str
    kind: str
    diameter: float
    cutting_length: float | None = None
    plunge: bool = True
    angle: float = 90.0


def default_cutters(*, inch: bool) -> tuple[Cutter, ...]:
    """What a job has where no shop file says otherwise: straight 3, 6 and 12 mm, or 1/8, 1/4 and 1/2 in; vee 90°."""
    named = (("1/8 in", _INCH / 8), ("1/4 in", _INCH / 4), ("1/2 in", _INCH / 2)) if inch else (
        ("3 mm", 3.0), ("6 mm", 6.0), ("12 mm", 12.0)
    )  # fmt: skip
    vee = Cutter("90°", "vee", _INCH / 2 if inch else 12.0)
    return (*(Cutter(name, "straight", size) for name, size in named), vee)


def straight(cutters: Sequence[Cutter]) -> tuple[Cutter, ...]:
    """The straight cutters, thinnest first."""
    return tuple(sorted((c for c in cutters if c.kind == "straight"), key=lambda c: (c.diameter, c.id)))


def largest_for(width_mm: float, cutters: Sequence[Cutter], radius_mm: float | None = None) -> Cutter | None:
    """The largest straight cutter that fits a pocket; None where none does.

    Args:
        width_mm: between the pocket's walls; infinite where it is open.
        radius_mm: of its tightest rounded corner, or None where it has none.
    """
    most = width_mm if radius_mm is None else min(width_mm, 2 * radius_mm)
    fitting = [c for c in straight(cutters) if c.diameter <= most + _SLIGHT]
    return fitting[-1] if fitting else None


def vee_for(angle_deg: float, cutters: Sequence[Cutter], width_mm: float) -> Cutter | None:
    """The thinnest vee of an angle that is wide enough for a groove; None where there is none."""
    fitting = [
        c for c in cutters if c.kind == "vee" and abs(c.angle - angle_deg) < 0.5 and c.diameter >= width_mm - _SLIGHT
    ]
    return min(fitting, key=lambda c: (c.diameter, c.id), default=None)


def is_drilled(diameter_mm: float, cutters: Sequence[Cutter]) -> bool:
    """Whether a hole may be drilled: a shop that names no drill has any that is asked for."""
    drills = [c.diameter for c in cutters if c.kind == "drill"]
    return not drills or any(abs(drill - diameter_mm) <= SAME_DRILL_MM for drill in drills)
