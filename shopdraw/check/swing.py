"""Whether what opens can open: lid, drawers and supports swept in all seasons, and what stands before the pin."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.check.seasons import Season
from shopdraw.check.subject import Subject, mm
from shopdraw.wood.assembly import Assembly, Motion
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of
from shopdraw.wood.sweep import Hit, swept

UNDER_LID_MM = 1.0
"""What stands before the pin ends so far below the open lid (common practice)."""


def swing_findings(subject: Subject, seasons: Sequence[Season]) -> Iterator[Finding]:
    """All findings about motions."""
    yield from motions_blocked(seasons)
    yield from fouls_open_lid(subject)


def motions_blocked(seasons: Sequence[Season]) -> Iterator[Finding]:
    """Must be fixed: a moving board runs into one that stays; each pair is told for the first season."""
    told: set[tuple[str, str, str]] = set()
    for season in seasons:
        for hit in swept(season.assembly.boards, season.assembly.motions, wood=season.wood):
            if (hit.motion, hit.board, hit.other) in told:
                continue
            told.add((hit.motion, hit.board, hit.other))
            motion = next(motion for motion in season.assembly.motions if motion.id == hit.motion)
            yield _blocked(season.assembly, season.words, motion, hit)


def _blocked(assembly: Assembly, words: str, motion: Motion, hit: Hit) -> Finding:
    unit = "°" if motion.kind == "turn" else " mm"
    verb = "swung" if motion.kind == "turn" else "drawn"
    return Finding(
        "motion-blocked",
        Severity.MUST_FIX,
        (hit.board, hit.other, motion.id),
        f"{assembly.board(hit.board).name} runs into {assembly.board(hit.other).name} {words} when {verb} "
        f"{hit.position:.1f}{unit} of {motion.reach:.1f}{unit}, by up to {hit.volume:.0f} mm³; its way must be free "
        "to the end",
        hit.position,
        motion.reach,
        "deg" if motion.kind == "turn" else "mm",
    )


def fouls_open_lid(subject: Subject) -> Iterator[Finding]:
    """Must be fixed: something stands before the pin where the open lid, its thickness below the surface, will lie."""
    assembly, slant = subject.assembly, subject.assembly.slant
    if slant is None or slant.hinge_edge == "upper":
        return
    pin_y = slant.hinge_pin_mm[0]
    limit = slant.writing_height_mm - slant.lid_thickness_mm - UNDER_LID_MM
    half = slant.lid_width_mm / 2
    for board in assembly.boards:
        if board.member in ("lid", "side", "shelf", "top") or board.id.startswith("lid"):
            continue
        box = box_of(board)
        most = limit + UNDER_LID_MM if board.member == "support" else limit
        beside = box[3] < assembly.width / 2 - half or box[0] > assembly.width / 2 + half
        if box[1] >= pin_y - 1e-6 or box[5] <= most + 1e-6 or beside or box[2] > slant.writing_height_mm:
            continue
        drop = None if subject.desk is None else subject.desk.rail_drop + box[5] - most
        mend = "lower it, or set it back" if drop is None else f"case.top_rail {mm(drop)} mm or more"
        yield Finding(
            "fouls-open-lid",
            Severity.MUST_FIX,
            (board.id, "lid"),
            f"{board.name} stands {mm(pin_y - box[1])} mm before the pin and reaches {mm(box[5])} mm above the "
            "floor; the open "
            f"lid's underside is at {mm(limit + UNDER_LID_MM)} mm, so it may reach {mm(most)} mm at most: "
            f"{mend}",
            box[5],
            most,
            right=None if drop is None else ("case.top_rail", f"{drop:.2f} mm"),
        )
