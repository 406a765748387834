"""Dovetailed corners: pins and half pins wide enough, and half pins that a fixed template leaves unequal."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.dovetail import BEHIND_RABBET_MM, tails_of
from shopdraw.build.drawer_joint import LEAST_PIN_MM as LEAST_DRAWER_PIN_MM
from shopdraw.build.tails import LEAST_PIN_MM, equal_lengths
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.finding import Finding, Severity

UNEQUAL_MM = 0.5
"""Half pins that differ by more look unequal (common practice)."""
_SLIGHT = 1e-6


def corner_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about dovetailed corners."""
    yield from pins_narrow(subject)
    yield from half_pins_unequal(subject)


def pins_narrow(subject: Subject) -> Iterator[Finding]:
    """Pins, half pins and tails of a dovetailed corner; behind the back's rabbet the top's rear half pin keeps wood."""
    for joint in subject.assembly.joints:
        if joint.kind != "dovetail":
            continue
        sizes = dict(joint.sizes)
        of_top = "top" in (joint.host, joint.guest)
        least = LEAST_PIN_MM if of_top else LEAST_DRAWER_PIN_MM
        pin, half = sizes.get("pin", least), sizes.get("half-pin", least)
        if pin < least - _SLIGHT:
            yield _narrow(subject.assembly, joint, "a pin", pin, least, "fewer tails")
        behind = subject.plan.rabbet_depth + BEHIND_RABBET_MM if of_top else least
        rear = sizes.get("rear-half-pin", half)
        if rear < behind - _SLIGHT:
            words = "fewer tails, or a shallower rabbet for the back" if of_top else "fewer tails"
            yield _narrow(subject.assembly, joint, "the rear half pin" if of_top else "a half pin", rear, behind, words)
        if "tail" in sizes and sizes["tail"] < pin - _SLIGHT:
            yield _narrow(subject.assembly, joint, "a tail at its root", sizes["tail"], pin, "fewer tails")


def _narrow(assembly: Assembly, joint: Joint, what: str, value: float, limit: float, mend: str) -> Finding:
    host, guest = (assembly.board(name).name if assembly.has(name) else name for name in (joint.host, joint.guest))
    of_top = "top" in (joint.host, joint.guest)
    return Finding(
        "pin-narrow",
        Severity.MUST_FIX if value <= 1.0 else Severity.CAUTION,
        (joint.id, joint.host),
        f"{what} between {host} and {guest} is {mm(value)} mm wide; right would be {mm(limit)} mm or more: {mend}",
        value,
        limit,
        basis="common practice",
        right=("case.tails", "2") if "fewer" in mend and of_top else None,
    )


def half_pins_unequal(subject: Subject) -> Iterator[Finding]:
    """A caution: on a template's fixed pitch the last half pin takes what is left; the nearest depth that mends it."""
    plan, case = subject.plan, subject.design.case
    joints = [joint for joint in subject.assembly.joints if "pitch" in dict(joint.sizes)]
    if not joints or case.tail_pitch is None:
        return
    tails, length = tails_of(plan), plan.depth - plan.top_front
    over = tails.last_half_pin - tails.half_pin
    if over <= UNEQUAL_MM:
        return
    right = min(equal_lengths(length, tails), key=lambda one: abs(one - length))
    slant = subject.design.slant
    given = slant is not None and slant.top_depth is not None
    address, value = ("slant.top_depth", right) if given else ("case.depth", plan.depth + right - length)
    yield Finding(
        "half-pins-unequal",
        Severity.CAUTION,
        (*(joint.id for joint in joints), "top"),
        f"on a pitch of {mm(case.tail_pitch)} mm the half pins are {mm(tails.half_pin)} mm in front and "
        f"{mm(tails.last_half_pin)} mm at the rear; right would be a corner {mm(right)} mm deep: {address} "
        f"{mm(value)} mm",
        over,
        UNEQUAL_MM,
        basis="common practice",
        right=(address, f"{value:.2f} mm"),
    )
