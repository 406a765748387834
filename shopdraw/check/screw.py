"""Screws against what they go through: none comes out, each bites."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.screw import LEAST_BITE_MM, POINT_LEFT_MM, usual_length
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.assembly import Hardware
from shopdraw.wood.finding import Finding, Severity

LEAST_SHARE = 0.4
"""A screw bites at least with so much of its length; about two thirds of it are threaded (common practice)."""


def screw_findings(subject: Subject) -> Iterator[Finding]:
    """Screws that come out or hardly bite, and fittings of the piece file that there are none of."""
    known = {fitting.id for fitting in subject.assembly.hardware}
    for fitting in subject.assembly.hardware:
        sizes = dict(fitting.sizes)
        if fitting.through and "length" in sizes:
            yield from _of(subject, fitting, sizes["length"])
    for name in subject.design.fitting:
        if name not in known:
            yield Finding(
                "no-such-fitting",
                Severity.CAUTION,
                (f"fitting.{name}",),
                f"there is no fitting {name}: it has no effect; right would be the id of one of the piece's fittings",
                unit="",
            )


def _of(subject: Subject, fitting: Hardware, length: float) -> Iterator[Finding]:
    boards = [subject.assembly.board(name).name for name in fitting.on if subject.assembly.has(name)]
    right = usual_length(fitting.through, fitting.room, inch=subject.design.piece.units == "inch")
    better = (f"fitting.{fitting.id}.length", f"{right:g} mm")
    most = fitting.through + fitting.room
    if length > most - POINT_LEFT_MM + 1e-9:
        out = length > most + 1e-9
        what = f"comes out by {mm(length - most)} mm" if out else f"leaves {mm(most - length)} mm before its point"
        yield Finding(
            "screw-long",
            Severity.MUST_FIX if out else Severity.CAUTION,
            (fitting.id, *fitting.on),
            f"a screw of {mm(length)} mm through {mm(fitting.through)} mm of {boards[0]} into {boards[-1]} {what}; "
            f"right would be {mm(right)} mm, {mm(most - POINT_LEFT_MM)} mm at most",
            length,
            most - POINT_LEFT_MM,
            basis="common practice",
            right=better,
        )
        return
    bite = length - fitting.through
    # thin wood gives no more to bite in
    least = min(max(LEAST_BITE_MM, LEAST_SHARE * length), fitting.room - POINT_LEFT_MM)
    if bite < least - 1e-9 and right != length:
        yield Finding(
            "screw-short",
            Severity.MUST_FIX if bite <= 0 else Severity.CAUTION,
            (fitting.id, *fitting.on),
            f"a screw of {mm(length)} mm passes {mm(fitting.through)} mm of {boards[0]} and bites {mm(max(bite, 0.0))} "
            f"mm into {boards[-1]}; right would be {mm(right)} mm, {mm(fitting.through + least)} mm at least",
            length,
            fitting.through + least,
            basis="common practice",
            right=better,
        )
