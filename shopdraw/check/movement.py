"""What the seasons do: parts fixed across the grain, gaps that close, corners of stocks that move differently.

M_d and M_w are what a size across the grain loses to the driest and gains to the wettest season.
Source of the change coefficients: Wood Handbook FPL-GTR-190 (2010), Table 13-5 and eq. 13-2.
"""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.lid_size import ENDS_PLAY_MM, LEAST_COVER_MM, end_clearance, ends_need, lid_size, net_gain, net_loss
from shopdraw.check.figure import mm
from shopdraw.check.lid_cap import lid_cap_findings
from shopdraw.check.subject import Subject, back_front
from shopdraw.shape.frame import dot
from shopdraw.trade.movement import VALID_FROM_PERCENT, VALID_TO_PERCENT
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import Box, box_of

HANDBOOK = "Wood Handbook FPL-GTR-190 (2010), Table 13-5 and eq. 13-2"
LONGEST_GLUED_MM = 75.0
"""A part across the grain is glued over no more than this (common practice)."""
PLAY_MM = 0.5
"""Kept beside every computed movement gap."""
CORNER_MM = 0.5
"""A corner of two stocks opens or strains by no more than this before it is told (common practice)."""
STILL_ENGAGED_MM = 10.0


def movement_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about movement."""
    yield from cross_grain_fixed(subject)
    yield from frames_locked(subject)
    yield from lid_clearance(subject)
    yield from lid_ends(subject)
    yield from lid_cap_findings(subject)
    yield from corner_stocks_differ(subject)
    yield from moisture_outside(subject)


def cross_grain_fixed(subject: Subject) -> Iterator[Finding]:
    """Must be fixed: a part glued over 75 mm and more across the grain of a board that is to move under it."""
    assembly = subject.assembly
    for joint in assembly.joints:
        length = _glued_across(assembly, joint)
        if length <= LONGEST_GLUED_MM + 1e-6:
            continue
        host = assembly.board(joint.host)
        moved = _swing(subject, host, host.width)
        guest = assembly.board(joint.guest_boards[0])
        yield Finding(
            "cross-grain-fixed",
            Severity.MUST_FIX,
            (joint.id, guest.id, host.id),
            f"{guest.name} is glued over {mm(length)} mm across the grain of {host.name}, which moves {moved:.1f} mm "
            "over its "
            f"{mm(host.width)} mm between seasons: it will split, or push the back off. Right would be at most "
            f"{LONGEST_GLUED_MM:g} mm of "
            f"glue in front and all else dry, with {mm(_loss(subject, host, host.width) + PLAY_MM)} mm free behind; "
            "or front "
            f"and rear rail glued and the rear tenons dry, with that gap at the rear shoulder",
            length,
            LONGEST_GLUED_MM,
            basis=f"common practice; {HANDBOOK}",
        )


def _glued_across(assembly: Assembly, joint: Joint) -> float:
    """How far a glued guest whose grain runs across its host's reaches along that host's width, mm; else 0."""
    names = [name for name in joint.guest_boards if assembly.has(name)]
    if not joint.glued or joint.floats or not names or not assembly.has(joint.host):
        return 0.0
    host, guest = assembly.board(joint.host), assembly.board(names[0])
    along = host.frame.v
    if host.stock.coefficient == 0.0 or abs(dot(guest.frame.u, along)) < 0.7:
        return 0.0
    sizes = dict(joint.sizes)
    for name in ("glue", "glue-above"):
        if name in sizes:
            return sizes[name]
    if joint.body is not None:
        reach = [dot(joint.body.frame.point((c.x, c.y, 0.0)), along) for c in joint.body.outline.corners]
        return max(reach) - min(reach)
    return _contact(box_of(host), box_of(guest), max(range(3), key=lambda axis: abs(along[axis])))


def _contact(one: Box, other: Box, axis: int) -> float:
    return max(0.0, min(one[axis + 3], other[axis + 3]) - max(one[axis], other[axis]))


def _swing(subject: Subject, board: Board, size: float) -> float:
    m = subject.assembly.moisture
    return size * board.stock.coefficient * (m.wet - m.dry)


def _loss(subject: Subject, board: Board, size: float) -> float:
    return subject.plan.season.loss(size, board.stock)


def frames_locked(subject: Subject) -> Iterator[Finding]:
    """Must be fixed: a frame glued at both ends, or with too little free behind a shoulder for the driest season."""
    assembly = subject.assembly
    side = assembly.board("side.left")
    by_guest: dict[str, list[Joint]] = {}
    for joint in assembly.joints:
        if joint.kind == "mortise-and-tenon":
            by_guest.setdefault(joint.guest, []).append(joint)
    for runner, joints in by_guest.items():
        frame = runner.rpartition(".")[0]
        rear = next((joint for joint in joints if joint.host == f"{frame}.rear"), None)
        if rear is None or not assembly.has(runner):
            continue
        both = _is_glued(assembly, f"{frame}.front") and _is_glued(assembly, f"{frame}.rear")
        span = subject.plan.rear - 25.0 if both else subject.plan.depth
        need = _loss(subject, side, span) + PLAY_MM
        if both:
            free, what = (0.0, "glued") if rear.glued else (rear.gap, "dry")
        else:
            free, what = _behind(assembly, f"{frame}.rear"), "free"
        if free < need - 1e-6:
            yield Finding(
                "frame-locked",
                Severity.MUST_FIX,
                (rear.id, runner, frame),
                f"the sides lose {mm(need - PLAY_MM)} mm over {mm(span)} mm by the driest season and {frame} has "
                f"{mm(free)} mm to give "
                f"({what} at its rear): it would push the back off or split the sides; right would be {mm(need)} mm "
                "or more",
                free,
                need,
                basis=HANDBOOK,
            )
        engaged = dict(rear.sizes).get("tenon", 0.0) - rear.gap - subject.plan.season.gain(span, side.stock)
        if both and engaged < STILL_ENGAGED_MM - 1e-6:
            yield Finding(
                "tenon-short",
                Severity.CAUTION,
                (rear.id, runner),
                f"the dry tenon of {runner} keeps {mm(engaged)} mm in its mortise in the wettest season; right would "
                "be "
                f"{mm(STILL_ENGAGED_MM)} mm or more",
                engaged,
                STILL_ENGAGED_MM,
                basis="common practice",
            )


def _is_glued(assembly: Assembly, board_id: str) -> bool:
    return any(
        joint.kind == "dado" and board_id in joint.guest_boards and joint.glued and not joint.floats
        for joint in assembly.joints
    )


def _behind(assembly: Assembly, board_id: str) -> float:
    """Free space between a board's rear and the back, mm."""
    return back_front(assembly) - box_of(assembly.board(board_id))[4]


def lid_clearance(subject: Subject) -> Iterator[Finding]:
    """The clearance at the lid's upper end for the wettest season, and the cover that a lip keeps in the driest."""
    slant, plan = subject.assembly.slant, subject.slanted
    if slant is None or plan is None or slant.seat == "on":
        return
    size = lid_size(plan)
    need = max(net_gain(plan), 0.0)
    if size.gap < need + 1.0 - 1e-9:
        yield Finding(
            "lid-top-tight",
            Severity.MUST_FIX if size.gap < need else Severity.CAUTION,
            ("lid", "top"),
            f"the lid's upper end nears the top by {mm(need)} mm by the wettest season and has {mm(size.gap)} mm; "
            "right would "
            f"be lid.top_clearance {mm(need + 1.0)} mm or more",
            size.gap,
            need + 1.0,
            basis=HANDBOOK,
            right=("lid.top_clearance", f"{need + 1.0:.2f} mm"),
        )
    if slant.seat != "rabbeted":
        return
    cover = size.lip - size.gap - max(net_loss(plan), 0.0)
    if cover < LEAST_COVER_MM - 1e-9:
        lip = size.lip + LEAST_COVER_MM - cover
        yield Finding(
            "lip-cover",
            Severity.MUST_FIX if cover <= 0 else Severity.CAUTION,
            ("lid", "top"),
            f"in the driest season the lid's lip covers the gap at the top by {mm(cover)} mm; right would be "
            f"{mm(LEAST_COVER_MM)} mm or more: lid.lip {mm(lip)} mm",
            cover,
            LEAST_COVER_MM,
            basis=HANDBOOK,
            right=("lid.lip", f"{lip:.2f} mm"),
        )


def lid_ends(subject: Subject) -> Iterator[Finding]:
    """The clearance at the lid's ends: caps grow in width, both of them, half of it to each side."""
    assembly, slant = subject.assembly, subject.assembly.slant
    caps = [board for board in assembly.boards if board.id.startswith("lid.cap")]
    if slant is None or slant.seat == "on" or not caps:
        return
    assert subject.slanted is not None
    need, clearance = ends_need(subject.slanted), end_clearance(subject.slanted)
    if clearance < need - 1e-9:
        yield Finding(
            "lid-ends-tight",
            Severity.MUST_FIX if clearance < need - ENDS_PLAY_MM else Severity.CAUTION,
            tuple(cap.id for cap in caps),
            f"the lid's caps grow {mm(need - ENDS_PLAY_MM)} mm at each end by the wettest season and have "
            f"{mm(clearance)} mm; right would be lid.clearance {mm(need)} mm or more",
            clearance,
            need,
            basis=HANDBOOK,
            right=("lid.clearance", f"{need:.2f} mm"),
        )


def corner_stocks_differ(subject: Subject) -> Iterator[Finding]:
    """A caution: two boards glued along their width, both moving the same way, of stocks that move differently."""
    assembly, m = subject.assembly, subject.assembly.moisture
    for joint in assembly.joints:
        if (
            not joint.glued
            or joint.floats
            or joint.kind not in ("dovetail", "dado", "rabbet")
            or not assembly.has(joint.host)
        ):
            continue
        host = assembly.board(joint.host)
        for guest in (assembly.board(name) for name in joint.guest_boards if assembly.has(name)):
            if abs(dot(guest.frame.v, host.frame.v)) < 0.7:
                continue
            length = min(guest.width, host.width)
            differs = (
                length * abs(guest.stock.coefficient - host.stock.coefficient) * max(m.wet - m.build, m.build - m.dry)
            )
            if differs <= CORNER_MM:
                continue
            yield Finding(
                "corner-stocks-differ",
                Severity.CAUTION,
                (joint.id, guest.id, host.id),
                f"{guest.name} ({guest.stock.species}) and {host.name} ({host.stock.species}) are glued along "
                f"{mm(length)} mm and "
                f"move differently, {differs:.1f} mm by the worst season; right would be one stock and cut for both, "
                "or glue in front only",
                differs,
                CORNER_MM,
                basis=f"common practice; {HANDBOOK}",
            )


def moisture_outside(subject: Subject) -> Iterator[Finding]:
    """A caution: moisture contents at which the change coefficients don't hold."""
    m = subject.assembly.moisture
    for key, value in (("build", m.build), ("dry", m.dry), ("wet", m.wet)):
        if VALID_FROM_PERCENT - 1e-9 <= value <= VALID_TO_PERCENT + 1e-9:
            continue
        limit = VALID_FROM_PERCENT if value < VALID_FROM_PERCENT else VALID_TO_PERCENT
        yield Finding(
            "moisture-range",
            Severity.CAUTION,
            (f"climate.{key}",),
            f"{value:.1f} % of moisture ({key}) lies outside {VALID_FROM_PERCENT:g} to {VALID_TO_PERCENT:g} %, where "
            "the change "
            f"coefficients hold: movement is an estimate there",
            value,
            limit,
            "percent",
            "Wood Handbook FPL-GTR-190 (2010), ch. 13",
        )
