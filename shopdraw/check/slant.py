"""The slant: its angle told both ways, tilts that a saw can't be set to, and a pin that the overlap can't clear."""

from __future__ import annotations

import math
from collections.abc import Iterator

from shopdraw.build.slant import SlantDisagrees, slant_from_top_depth
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of

STEEPEST_TILT_DEG = 45.0
"""A saw's blade tilts no further from square (common practice)."""


def slant_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about the slant."""
    yield from pin_behind_overlap(subject)
    yield from tilts(subject)
    yield from angle_both_ways(subject)


def angle_both_ways(subject: Subject) -> Iterator[Finding]:
    """A note that tells the angle from level and from square, with run and rise, since the two are mixed up daily."""
    slant = subject.assembly.slant
    if slant is not None:
        yield Finding(
            "slant-angle",
            Severity.NOTE,
            ("side.left", "side.right"),
            f"slant {slant.angle_from_level_deg:.1f}° from level; tilt saw {slant.saw_tilt_deg:.1f}° from square; "
            f"run {slant.run_mm:.1f} mm, rise {slant.rise_mm:.1f} mm",
            slant.angle_from_level_deg,
            unit="deg",
        )


def tilts(subject: Subject) -> Iterator[Finding]:
    """Bevels that ask for more tilt than a saw has: they are cut on edge against a tall fence, or planed."""
    slant = subject.assembly.slant
    if slant is None:
        return
    cuts = [("bevel:top:slant", "the top's front edge", slant.saw_tilt_deg)]
    if slant.top_flat_mm > 0:
        cuts.append(("bevel:top:flat", "the flat on the top's lower corner", slant.angle_from_level_deg))
    for where, name, tilt in cuts:
        if tilt > STEEPEST_TILT_DEG:
            yield Finding(
                "tilt-over-45",
                Severity.NOTE,
                ("top", where),
                f"{name} would need a tilt of {tilt:.1f}° from square: it can't be cut that way; cut it with the board "
                f"on edge against a tall fence, tilt {90 - tilt:.1f}°, or plane it",
                tilt,
                STEEPEST_TILT_DEG,
                "deg",
                "common practice",
            )


def pin_behind_overlap(subject: Subject) -> Iterator[Finding]:
    """Must be fixed: sides that the lid overlaps stand in front of the pin, so the open lid runs into them."""
    slant = subject.assembly.slant
    if slant is None or subject.slanted is None or slant.seat == "flush" or slant.hinge_edge == "upper":
        return
    overlapped = ("side.left", "side.right", "strip.left", "strip.right")
    sides = [subject.assembly.board(one) for one in overlapped if subject.assembly.has(one)]
    front = min(box_of(side)[1] for side in sides)
    limit = front - slant.hinge_gap_mm / 2
    pin = slant.hinge_pin_mm[0]
    if pin <= limit + 1e-6:
        return
    yield Finding(
        "pin-behind-overlap",
        Severity.MUST_FIX,
        ("lid", "side.left", "side.right"),
        f"the hinge pin lies {mm(pin)} mm behind the front plane, but the lid overlaps the sides, which reach to it: "
        "open, "
        f"its ends run into them. {_remedies(subject, subject.slanted)}",
        pin,
        limit,
        "mm",
        "geometry",
        right=_right(subject, subject.slanted),
    )


def _remedies(subject: Subject, plan: SlantPlan) -> str:
    """What would clear it, and what each choice holds; with the pin on the front plane and no joint gap."""
    s = plan.slant
    if subject.design.slant is None or subject.design.slant.start is None:
        return f"Right would be a pin {mm(s.joint_gap / 2)} mm in front of the front plane"
    alpha = math.radians(s.alpha)
    inset = s.inset + s.pin_above
    lowered = s.z0 - inset / math.cos(alpha) - s.pin_above
    raised = s.writing + s.pin_above + inset / math.cos(alpha)
    held = raised - s.z0
    deeper = plan.depth - (s.z1 - raised) / math.tan(alpha)
    told = (
        f"Right would be (pin on the front plane, joint gap 0): writing surface lowered to {lowered:.2f} mm, all else "
        f"held; or slant start raised by {held:.2f} mm with the angle held (top depth becomes {deeper:.2f} mm)"
    )
    try:
        other = slant_from_top_depth(
            plan.depth,
            s.z1,
            s.writing,
            s.inset,
            plan.depth - s.run,
            joint_gap=0.0,
            pin_above=s.pin_above,
            pin_behind=0.0,
        )
    except SlantDisagrees:
        return told
    return (
        f"{told}; or raised by {other.z0 - s.z0:.2f} mm with top depth and height held (the angle becomes "
        f"{other.alpha:.2f}°). "
        f"The joint gap of {mm(s.joint_gap)} mm adds {s.joint_gap / 2 * math.tan(alpha):.2f} mm"
    )


def _right(subject: Subject, plan: SlantPlan) -> tuple[str, str] | None:
    """The one input that mends it: the writing height beside a measured start, else the pin's place."""
    table, s = subject.design.slant, plan.slant
    if table is None:
        return None
    if table.start is None:
        return ("slant.pin_behind_front", f"{-s.joint_gap / 2:.3f} mm")
    alpha = math.radians(s.alpha)
    inset = s.inset + s.pin_above
    height = s.z0 - inset / math.cos(alpha) - s.pin_above - s.joint_gap / 2 * math.tan(alpha)
    return ("slant.writing_height", f"{height:.3f} mm")
