"""Whether what opens can open: lid, drawers and supports swept in all seasons."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.check.seasons import Season
from shopdraw.wood.assembly import Assembly, Motion
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.sweep import Hit, swept


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
