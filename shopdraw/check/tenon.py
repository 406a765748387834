"""Proportions of tenons: how thick against their board, how long, and what wood their mortises leave."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Board, Face
from shopdraw.wood.finding import Finding, Severity

THIN_SHARE, USUAL_SHARE, THICK_SHARE = 1 / 4, 1 / 3, 1 / 2
"""Of its board's thickness: a tenon is a third of it, a quarter at least and a half at most (common practice)."""
LEAST_LENGTHS = 1.5
"""A tenon is so many times as long as it is thick, at least (common practice)."""
LEAST_BEHIND_MM = 6.0
"""Wood of the host behind a mortise (common practice)."""
PRACTICE = "common practice"
_SLIGHT = 1e-6


def tenon_findings(subject: Subject) -> Iterator[Finding]:
    """Tenons out of proportion; alike joints of one kind of board are told once."""
    told: set[tuple[str, str]] = set()
    for joint in subject.assembly.joints:
        if joint.kind != "mortise-and-tenon":
            continue
        guest, host = subject.assembly.board(joint.guest), subject.assembly.board(joint.host)
        for finding in _of(joint, guest, host):
            once = (finding.code, guest.member)
            if once not in told:
                told.add(once)
                yield finding


def _of(joint: Joint, guest: Board, host: Board) -> Iterator[Finding]:
    sizes = dict(joint.sizes)
    thick, long = sizes["thickness"], sizes["tenon"]
    share = thick / guest.thickness
    usual = f"a third, {mm(USUAL_SHARE * guest.thickness)} mm"
    if share < THIN_SHARE - _SLIGHT or share > THICK_SHARE + _SLIGHT:
        limit = guest.thickness * (THIN_SHARE if share < THIN_SHARE else THICK_SHARE)
        words = "thin" if share < THIN_SHARE else "thick"
        yield _finding(
            f"tenon-{words}",
            joint,
            f"the tenon of {guest.name} is {mm(thick)} mm of {mm(guest.thickness)} mm thick; right would be {usual}, "
            f"and {'no less than a quarter' if words == 'thin' else 'no more than a half'}, {mm(limit)} mm",
            thick,
            limit,
        )
    if long < LEAST_LENGTHS * thick - _SLIGHT:
        yield _finding(
            "tenon-stubby",
            joint,
            f"the tenon of {guest.name} is {mm(long)} mm long and {mm(thick)} mm thick; right would be "
            f"{mm(LEAST_LENGTHS * thick)} mm or more",
            long,
            LEAST_LENGTHS * thick,
        )
    behind = _behind(joint, host)
    if behind < LEAST_BEHIND_MM - _SLIGHT:
        yield _finding(
            "mortise-deep",
            joint,
            f"the mortise for {guest.name} is {mm(sizes['mortise'])} mm deep and leaves {mm(behind)} mm of {host.name};"
            f" right would be {mm(LEAST_BEHIND_MM)} mm or more: a shorter tenon or a wider board",
            behind,
            LEAST_BEHIND_MM,
        )


def _behind(joint: Joint, host: Board) -> float:
    """Wood that a mortise leaves behind its floor, mm."""
    cuts = [cut for cut, name in zip(host.shape.cuts, host.cut_ids, strict=True) if name == joint.id]
    whole = {Face.FACE: host.thickness, Face.BACK: host.thickness, Face.FOOT: host.length, Face.HEAD: host.length}
    return min((whole.get(cut.face, host.width) - cut.start - cut.depth for cut in cuts), default=LEAST_BEHIND_MM)


def _finding(code: str, joint: Joint, message: str, value: float, limit: float) -> Finding:
    severity = Severity.MUST_FIX if code == "mortise-deep" and value <= 0.0 else Severity.CAUTION
    return Finding(code, severity, (joint.id, joint.guest, joint.host), message, value, limit, basis=PRACTICE)
