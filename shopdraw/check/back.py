"""Shiplapped backs: boards laid tight buckle, laps too narrow open, boards fixed twice split."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.back import LAP_TIMES, PLAY_MM, least_gap, least_lap
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.finding import Finding, Severity

BASIS = "common practice; Wood Handbook FPL-GTR-190 (2010), Table 13-5 and eq. 13-2"


def back_findings(subject: Subject) -> Iterator[Finding]:
    """The gaps of a shiplapped back in the wettest season and its laps in the driest, by the widest board's share."""
    assembly, season = subject.assembly, subject.plan.season
    laps = [joint for joint in assembly.joints if joint.kind == "lap" and joint.host.startswith("back.")]
    if not laps:
        return
    board = max((assembly.board(joint.host) for joint in laps), key=lambda one: one.width)
    lap = min(dict(joint.sizes)["lap"] for joint in laps)
    gap = min(joint.gap for joint in laps)
    covers = board.width - lap
    where = tuple(joint.id for joint in laps)
    need = least_gap(season, board.stock, covers)
    if gap < need - 1e-9:
        grows = need - PLAY_MM
        yield Finding(
            "back-gap",
            Severity.MUST_FIX if gap < grows - 1e-9 else Severity.CAUTION,
            where,
            f"a board of the back gains {mm(grows)} mm by the wettest season and stands {mm(gap)} mm off the next one: "
            f"the back buckles, or pushes the sides apart; right would be back.gap {mm(need)} mm or more, and one "
            "fixing in each board",
            gap,
            need,
            basis=BASIS,
            right=("back.gap", f"{need + 0.005:.2f} mm"),
        )
    least = least_lap(season, board.stock, covers)
    if lap < least - 1e-9:
        yield Finding(
            "back-lap",
            Severity.MUST_FIX if lap < least / LAP_TIMES else Severity.CAUTION,
            where,
            f"a board of the back moves {mm(least / LAP_TIMES)} mm over the seasons and laps the next one by {mm(lap)} "
            f"mm; right would be back.lap {mm(least)} mm or more, {LAP_TIMES:g} times that",
            lap,
            least,
            basis=BASIS,
            right=("back.lap", f"{least + 0.005:.2f} mm"),
        )
