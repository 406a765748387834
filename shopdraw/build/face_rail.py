"""A desk's face: thick rails before its web frames, strips down its sides' front edges, guides and kickers behind.

A face rail's top is its frame's top, the floor of the opening; what it is higher than the frame hangs below, and the
kickers under the frame are level with its lower edge. Its ends fill the sides' dados in front; strips hide them.
"""

from __future__ import annotations

import math
from dataclasses import replace

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.joinery import butt
from shopdraw.build.screw import Passing, hole_mm, lay_screws
from shopdraw.build.slant import Slant
from shopdraw.shape.path import polygon
from shopdraw.wood.board import Face, Fixing

LEAST_KICKER_MM = 3.0
LEAST_GUIDE_MM = 3.0
"""No kicker or guide thinner than this is made."""
FRONT_GLUE_MM = 60.0
"""What lies across another board's grain is glued over this much in front, dry or in slots behind (common practice)."""
SCREW_BEHIND_MM, SCREW_BEFORE_MM = 30.0, 40.0
"""First screw of what lies on a runner behind its front, and last before its rear (common practice)."""
SLOT_ROOM_MM = 1.0
"""Added to what a board moves at a slot (common practice)."""
CLEAR_MM = 0.3
"""Between a guide or kicker and a side, beside what it may grow."""


def faced(case: CasePlan, shelf_under: float) -> CasePlan:
    """A desk's plan with its face rails and strips, where the piece has them.

    Args:
        case: without them.
        shelf_under: world z of the writing shelf's underside: over it a strip is no wider than its side.
    Raises:
        CannotBuild: a face frame, rails lower than their frames, or strips narrower than their sides.
    """
    face, frame = case.design.face, case.stocks.of("frame").thickness
    if face is None:
        return case
    if face.kind == "frame":
        right = 'expected "rails": a face frame would stand in the way of the lid'
        raise CannotBuild([fault("face.kind", '"frame"', right)])
    if face.rail < frame:
        raise CannotBuild([fault("face.rail", f"{face.rail:g} mm", f"expected at least the frames' {frame:g} mm")])
    side = case.side.thickness
    strip = face.strip if face.strip is not None else side
    if strip and not side <= strip <= side + case.inside / 8:
        right = f"expected 0, or {side:g} to {side + case.inside / 8:.0f} mm: it covers the side's edge"
        raise CannotBuild([fault("face.strip", f"{strip:g} mm", right)])
    if 0.0 < strip - side < LEAST_GUIDE_MM:
        right = f"expected {side:g}, or at least {side + LEAST_GUIDE_MM:g} mm: the guides behind are as thick as that"
        raise CannotBuild([fault("face.strip", f"{strip:g} mm", right)])
    depth = case.stocks.of("strip").thickness if strip else 0.0
    rail = case.stocks.of("rail.face").thickness
    if rail <= depth:
        right = f"expected thicker than the strips' {depth:g} mm: its ends are let in behind them"
        raise CannotBuild([fault("use.rail.face", f"a stock of {rail:g} mm", right)])
    return replace(case, strip=strip, strip_depth=depth, strip_cut=shelf_under, face_rail=rail)


def lay_strips(bench: Bench, plan: CasePlan, slant: Slant) -> None:
    """Lay a strip down each side's front edge, grain up, over the dados' ends; the slant runs on through it."""
    if not plan.strip:
        return
    stock, wide, deep = plan.stocks.of("strip"), plan.strip, plan.strip_depth
    high = slant.on_line(deep)
    for hand in ("left", "right"):
        x0, x1 = (0.0, wide) if hand == "left" else (plan.width - wide, plan.width)
        outer = x0 if hand == "left" else x1
        strip = bench.lay(
            f"strip.{hand}", f"edge strip, {hand}", "strip", stock, Box(x0, x1, 0.0, deep, plan.foot, high),
            u="+z", w="-y", reference_edge="far" if hand == "left" else "near",
            fixing=Fixing("", (outer, 0.0, plan.foot)),
        )  # fmt: skip
        slope = [(0.0, slant.on_line(0.0)), (deep, high), (0.0, high)]
        local = [strip.frame.local((0.0, y, z)) for y, z in slope]
        path = polygon((p[0], p[2]) for p in local).anticlockwise()
        words = f"slant, {slant.alpha:.1f}° from level"
        strip.sink("bevel", Face.NEAR, path, id=f"bevel:{strip.id}:slant", purpose=words)
        if wide > plan.side.thickness:
            edge = plan.side.thickness
            inner = (edge, wide + 1.0) if hand == "left" else (plan.width - wide - 1.0, plan.width - edge)
            over = Box(*inner, -1.0, deep + 1.0, plan.strip_cut, high + 1.0)
            words = "no wider than the side over the writing shelf's underside"
            strip.sink_box("notch", over, "+y", id=f"notch:{strip.id}:shelf.writing", purpose=words)
        butt(bench, bench[f"side.{hand}"], strip, glued=True)


def lay_face_rail(bench: Bench, plan: CasePlan, key: str, top: float, words: str) -> Blank:
    """Lay the rail before a web frame, between the sides; the frame's dados take its ends.

    Args:
        key: of its id.
        top: its upper edge, world z, mm.
        words: what it is called.
    """
    assert plan.design.face is not None
    box = Box(plan.left, plan.right, 0.0, plan.face_rail, top - plan.design.face.rail, top)
    held = Fixing("", (plan.width / 2, 0.0, top))
    return bench.lay(f"rail.{key}", words, "rail.face", plan.stocks.of("rail.face"), box, u="+x", w="-y", fixing=held)


def shape_face_rail(bench: Bench, plan: CasePlan, rail: Blank, frame: Blank) -> None:
    """Notch a face rail that has grown into the dados: below the frame to the inside width, in front round the strips.

    What is left of its ends are lugs as thick as the frame, with room to grow down.
    """
    box = rail.box()
    lug = frame.box().z0 + plan.season.gain(box.z1 - frame.box().z0, rail.stock) + 0.05
    for hand, x0, x1 in (("left", box.x0 - 1.0, plan.left), ("right", plan.right, box.x1 + 1.0)):
        below = Box(x0, x1, -1.0, plan.face_rail + 1.0, box.z0 - 1.0, lug)
        rail.sink_box(
            "notch", below, "+y", id=f"notch:{rail.id}:side.{hand}", purpose="below the frame, round the side"
        )
    butt(bench, frame, rail, glued=True)


def lay_guides(bench: Bench, plan: CasePlan, row: Row) -> None:
    """Lay the guides on a row's floor beside its drawer or supports, their faces in the plane of the strips' edges."""
    face = plan.design.face
    if face is None or plan.guide < LEAST_GUIDE_MM:
        return
    stock = plan.stocks.of("guide")
    # a runner's wood under the guide draws away from where the runner is held, towards the side
    beside = row.left - plan.left + plan.drawer_bay(row)[0] - row.left
    room = CLEAR_MM + plan.season.gain(plan.guide, stock) + plan.season.gain(beside, plan.stocks.of("frame"))
    front, high = plan.strip_depth + forward_room(plan), min(face.guide, row.height / 2)
    for hand, x0, x1 in (
        ("left", plan.left + room, row.left),
        ("right", row.right, plan.right - room),
    ):
        host = floor_of(bench, row, hand)
        held = row.left if hand == "left" else row.right
        guide = bench.lay(
            f"guide.{row.key}.{hand}", f"guide beside drawer {row.key}, {hand}", "guide", stock,
            Box(x0, x1, front, plan.usable, row.floor, row.floor + high), u="+y", w="+z",
            fixing=Fixing(host.id, (held, front, row.floor)),
        )  # fmt: skip
        fix_on(bench, plan, host, guide, along=row.level != "bottom")


def lay_kickers(bench: Bench, plan: CasePlan, row: Row, above: str) -> None:
    """Lay the kickers of a drawer under the runners of the frame above it, their undersides level with its opening.

    Args:
        above: id of that frame.
    """
    face = plan.design.face
    runner = bench[f"{above}.runner-left"].box()
    if face is None or runner.z0 - plan.ceiling(row) < LEAST_KICKER_MM:
        return
    stock = plan.stocks.of("kicker")
    wide = min(face.kicker, runner.x1 - row.left)
    room = CLEAR_MM + plan.season.gain(wide, stock) + plan.season.gain(runner.x1 - plan.left, plan.stocks.of("frame"))
    front = plan.face_rail + forward_room(plan)
    for hand, x0, x1 in (
        ("left", row.left + room, row.left + wide),
        ("right", row.right - wide, row.right - room),
    ):
        host = bench[f"{above}.runner-{hand}"]
        inner = x1 if hand == "left" else x0
        kicker = bench.lay(
            f"kicker.{row.key}.{hand}", f"kicker over drawer {row.key}, {hand}", "kicker", stock,
            Box(x0, x1, front, plan.usable, plan.ceiling(row), runner.z0), u="+y", w="-z",
            fixing=Fixing(host.id, (inner, front, runner.z0)),
        )  # fmt: skip
        fix_on(bench, plan, host, kicker, along=True)


def forward_room(plan: CasePlan) -> float:
    """What a runner comes forward by the driest season, as its front rail shrinks, and a hair, mm."""
    stocks = (plan.stocks.of("frame"), plan.stocks.of("bottom"))
    wide = plan.face_rail + plan.design.frame.rail
    return math.ceil(10 * (max(plan.season.loss(wide, stock) for stock in stocks) + 0.1)) / 10


def floor_of(bench: Bench, row: Row, hand: str) -> Blank:
    """What a row's guides and dividers stand on at one side: the bottom, or a runner."""
    return bench["bottom"] if row.level == "bottom" else bench[f"{row.level}.runner-{hand}"]


def fix_on(bench: Bench, plan: CasePlan, host: Blank, guest: Blank, *, along: bool) -> None:
    """Glue and screw a guide, kicker or block on its host; across its grain in front only, the rear screw in a slot."""
    butt(bench, host, guest, glued=True, glue=None if along else FRONT_GLUE_MM)
    screw_up(bench, plan, guest, host, along=along)


def screw_up(bench: Bench, plan: CasePlan, guest: Blank, host: Blank, *, along: bool) -> None:
    """Two screws through a board's height into what it lies on or hangs under; none where it is too narrow for holes.

    Args:
        along: whether both have their grain one way; else the host moves past the rear screw, which has a slot.
    """
    box, under = guest.box(), host.box()
    if box.x1 - box.x0 < 2 * hole_mm(box.z1 - box.z0):
        return
    middle, z = (box.x0 + box.x1) / 2, (box.z0 + box.z1) / 2
    first, last = box.y0 + SCREW_BEHIND_MM, min(box.y1, under.y1) - SCREW_BEFORE_MM
    away, half = last - first, SLOT_ROOM_MM / 2
    season = plan.season
    slot = None if along else (-season.loss(away, host.stock) - half, season.gain(away, host.stock) + half)
    places = [Passing((middle, first, z)), Passing((middle, last, z), slot)]
    if away < SCREW_BEHIND_MM:
        places = [Passing((middle, (box.y0 + box.y1) / 2, z))]
    lay_screws(bench, plan, guest, host, "+z", places, host.stock.thickness)
