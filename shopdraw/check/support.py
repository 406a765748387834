"""Lid supports: reach and what stays inside, droop; what stands before the pin."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.support import support_size
from shopdraw.check.figure import mm
from shopdraw.check.pin_side import pin_side_findings
from shopdraw.check.subject import Subject
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of

LEAST_REACH = 1 / 2
LEAST_INSIDE = 1 / 3
MOST_DROOP_MM = 3.0


def support_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about supports."""
    yield from reach_and_rest(subject)
    yield from droops(subject)
    yield from pin_side_findings(subject)


def reach_and_rest(subject: Subject) -> Iterator[Finding]:
    """A caution: supports that reach under less than half the lid, or keep less than a third inside."""
    assembly, slant = subject.assembly, subject.assembly.slant
    for motion in assembly.motions:
        if slant is None or not motion.id.startswith("support."):
            continue
        bar = assembly.board(motion.boards[0])
        box = box_of(bar)
        length = box[4] - box[1]
        inside, lid = length - motion.reach, slant.lid_length_mm
        if motion.reach < LEAST_REACH * lid - 1e-9:
            yield Finding(
                "support-reach",
                Severity.CAUTION,
                (bar.id, "lid"),
                f"{bar.name} reaches {mm(motion.reach)} mm under a lid of {mm(lid)} mm, {motion.reach / lid:.0%}: "
                "the lid tears its hinges; "
                f"right would be {mm(LEAST_REACH * lid)} mm or more, better {mm(2 * lid / 3)} mm",
                motion.reach,
                LEAST_REACH * lid,
                basis="common practice",
                right=("supports.reach", f"{LEAST_REACH * lid:.1f} mm"),
            )
        if inside < LEAST_INSIDE * length - 1e-6:
            yield Finding(
                "support-inside",
                Severity.MUST_FIX if inside <= 0 else Severity.CAUTION,
                (bar.id,),
                f"of {bar.name}'s {mm(length)} mm only {mm(inside)} mm stay inside at full reach; right would be a "
                "third, "
                f"{mm(LEAST_INSIDE * length)} mm: a reach of {mm(length * (1 - LEAST_INSIDE))} mm at most",
                inside,
                LEAST_INSIDE * length,
                basis="common practice",
                right=("supports.reach", f"{length * (1 - LEAST_INSIDE):.1f} mm"),
            )


def droops(subject: Subject) -> Iterator[Finding]:
    """How far the open lid's edge falls by the clearance over the supports; a pad on the bar takes it up."""
    slant = subject.assembly.slant
    if slant is None or subject.desk is None or subject.desk.stayed:
        return
    size = support_size(subject.desk)
    if size.inside <= 0 or size.droop <= 0:
        return
    edge = size.droop * slant.lid_length_mm / max(size.reach - slant.hinge_pin_mm[0], 1.0)
    heavy = size.droop > MOST_DROOP_MM
    yield Finding(
        "support-droop",
        Severity.CAUTION if heavy else Severity.NOTE,
        ("support.left", "support.right", "lid"),
        f"drawn {mm(size.reach)} mm with {mm(size.inside)} mm inside, a support's end falls {mm(size.droop)} mm and "
        f"the lid's edge {mm(edge)} mm; "
        f"a pad or shim of {mm(size.droop)} mm takes it up",
        size.droop,
        MOST_DROOP_MM,
    )
