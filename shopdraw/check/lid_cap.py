"""Breadboard caps: mitres that lock the panel or open with the seasons, what stands out at the ends."""

from __future__ import annotations

import math
from collections.abc import Iterator

from shopdraw.build.cap_size import CapSize, cap_size
from shopdraw.build.lid import INSIDE_CAP_MM, hinge_places
from shopdraw.build.lid_size import lid_size
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity

HANDBOOK = "Wood Handbook FPL-GTR-190 (2010), Table 13-5 and eq. 13-2"
MOST_OPEN_MM = 0.4
"""A mitre that opens further is told (common practice)."""


def lid_cap_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about a lid's caps."""
    caps = [board for board in subject.assembly.boards if board.id.startswith("lid.cap")]
    if subject.slanted is None or not caps:
        return
    lid = subject.assembly.board("lid")
    size = cap_size(subject.slanted, lid.width, lid.stock)
    yield from mitred_at_both_ends(subject, caps, lid)
    yield from mitre_opens(subject, caps)
    yield from ends_not_flush(subject, caps, lid, size)
    yield from leaf_over_shoulder(subject, caps)


def mitre_opening(cap: Board, change_percent: float) -> float:
    """How far a glued mitre of 45° opens when the wood's moisture changes by so many percent, mm.

    Both boards change across their grain, so each of its two faces turns: √2 · width · C · change.
    """
    return math.sqrt(2.0) * cap.width * cap.stock.coefficient * abs(change_percent)


def mitred_at_both_ends(subject: Subject, caps: list[Board], lid: Board) -> Iterator[Finding]:
    """Must be fixed: caps mitred at both ends of a solid panel; nothing could move."""
    if subject.design.lid.ends != "mitred-both" or lid.stock.coefficient == 0.0:
        return
    m = subject.assembly.moisture
    moves = lid.width * lid.stock.coefficient * (m.wet - m.dry)
    yield Finding(
        "caps-lock-panel",
        Severity.MUST_FIX,
        ("lid", *(cap.id for cap in caps)),
        f"the caps are mitred at both ends: the panel moves {mm(moves)} mm over its {mm(lid.width)} mm between seasons "
        'and can\'t; it will split, or break the mitres. Right would be lid.ends "mitred", at the free edge only',
        moves,
        0.0,
        basis=HANDBOOK,
        right=("lid.ends", "mitred"),
    )


def mitre_opens(subject: Subject, caps: list[Board]) -> Iterator[Finding]:
    """A caution: a cap's mitre opens by more than 0.4 mm, at its heel when dry, at its toe when wet."""
    if subject.design.lid.ends not in ("mitred", "mitred-both"):
        return
    m = subject.assembly.moisture
    cap = max(caps, key=lambda one: mitre_opening(one, 1.0))
    dry, wet = mitre_opening(cap, m.build - m.dry), mitre_opening(cap, m.wet - m.build)
    worst = max(dry, wet)
    if worst <= MOST_OPEN_MM + 1e-9:
        return
    right = cap.width * MOST_OPEN_MM / worst
    yield Finding(
        "mitre-opens",
        Severity.CAUTION,
        tuple(one.id for one in caps),
        f"the caps' mitres, {mm(cap.width)} mm wide, open {dry:.2f} mm at the heel in the driest season and {wet:.2f} "
        f"mm at the toe in the wettest; right would be at most {MOST_OPEN_MM:g} mm: caps of {mm(right)} mm, or "
        "quartered wood",
        worst,
        MOST_OPEN_MM,
        basis=f"common practice; {HANDBOOK}",
        right=("lid.cap", f"{right:.1f} mm"),
    )


def ends_not_flush(subject: Subject, caps: list[Board], lid: Board, size: CapSize) -> Iterator[Finding]:
    """A note: how far the panel passes the caps' ends through the year, and by what they are cut short for it."""
    season = subject.plan.season
    lower = (size.glue[0] + size.glue[1]) / 2
    upper = 0.0 if size.mitred else size.high - lower
    reach = max(lower, upper)
    shrinks, grows = season.loss(reach, lid.stock), season.gain(reach, lid.stock)
    if shrinks + grows < 1e-9 or size.both:
        return
    yield Finding(
        "caps-not-flush",
        Severity.NOTE,
        ("lid", *(cap.id for cap in caps)),
        f"panel and caps are flush in one season only: {mm(reach)} mm from the glue the panel draws back {shrinks:.1f} "
        f"mm by the driest season and stands {grows:.1f} mm further out in the wettest; at the hinge edge the caps are "
        f"cut {mm(size.short)} mm short, so that they never strike the shelf",
        shrinks + grows,
        basis=HANDBOOK,
    )


def leaf_over_shoulder(subject: Subject, caps: list[Board]) -> Iterator[Finding]:
    """A caution: a hinge's leaf nearer than 10 mm to a cap's shoulder; hinges belong on the panel only."""
    plan, choice = subject.slanted, subject.design.lid
    assert plan is not None
    size = lid_size(plan)
    first = min(hinge_places(plan, size)) - choice.hinge_length / 2
    shoulder = (plan.width - size.width) / 2 + choice.cap
    inside = first - shoulder
    if inside >= INSIDE_CAP_MM - 1e-6:
        return
    yield Finding(
        "leaf-near-cap",
        Severity.CAUTION,
        ("lid", *(cap.id for cap in caps)),
        f"the outer hinges' leaves end {mm(inside)} mm inside the caps' shoulders; right would be "
        f"{INSIDE_CAP_MM:g} mm or more: shorter hinges or narrower caps",
        inside,
        INSIDE_CAP_MM,
        basis="common practice",
    )
