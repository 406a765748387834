"""Findings: what is wrong with a piece, where, by how much, and what would be right."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Severity(Enum):
    """How much a finding matters, worst first."""

    MUST_FIX = "must-fix"
    CAUTION = "caution"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that a person should know.

    Attributes:
        code: stable name of the rule, such as `boards-overlap`.
        severity: how much it matters.
        where: ids of boards, cuts, joints, levels or openings.
        message: a sentence that says what, where, by how much and what would be right.
        value, limit: the figure found and the one allowed, in `unit`; None where there is none.
        unit: "mm", "mm³", "deg", "percent", "kg" or "".
        basis: the published source, 'geometry', 'common practice' or 'from memory, to be confirmed'.
        silenced: the reason a person gave for silencing it, or None.
        right: the piece file's address and value that would mend it, or None.
    """

    code: str
    severity: Severity
    where: tuple[str, ...]
    message: str
    value: float | None = None
    limit: float | None = None
    unit: str = "mm"
    basis: str = "geometry"
    silenced: str | None = None
    right: tuple[str, str] | None = None


Ruled = tuple[tuple[Finding, ...], ...]
"""What each of several rules found, in the order of the rules; nothing for a rule that wasn't asked."""
