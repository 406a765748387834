"""Lid supports: sliding bars beside the topmost drawer, in layers or solid, with head, knob, stop and what is above.

A bar draws out under the open lid and keeps a third of its length inside. A block on its inner face meets the
divider's rear edge at full reach; it is fitted from the drawer's side, with the bar in place.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.face_rail import FRONT_GLUE_MM, LEAST_KICKER_MM, screw_up
from shopdraw.build.joinery import butt
from shopdraw.build.lid_size import lid_size
from shopdraw.build.plan import Plan
from shopdraw.build.screw import Passing, lay_screws
from shopdraw.build.writing import shelf_under
from shopdraw.wood.assembly import Hardware, Motion
from shopdraw.wood.board import Fixing

STOP_MM = 40.0
"""Length of the block that stops a bar (common practice)."""
STOP_CLEAR_MM = 1.0
"""Between the block and the guide under it, and the drawer beside it, besides what grows."""
SCREW_PAST_HEAD_MM = 25.0
"""The knob's screw goes so far past the head into the bar (common practice)."""
LEAST_STOP_MM = 12.0
PLAY_MM = 0.5
"""Kept over a divider besides what it grows."""
STILL_IN_MM = 2.0
"""A divider stands so far in its groove above in the driest season."""
GROOVE_SHARE = 1 / 3
"""Of the shelf's thickness, for that groove (common practice)."""


@dataclass(frozen=True, slots=True)
class SupportSize:
    """Sizes of a lid support, mm.

    Attributes:
        height: of bar and head.
        length: of both together, from the front plane.
        above: clearance over it.
        reach: how far it pulls out.
        inside: what stays in the case then.
        droop: what its end falls by then.
        head: how much of the length is the head's.
    """

    height: float
    length: float
    above: float
    reach: float
    inside: float
    droop: float
    head: float = 0.0


def support_size(plan: Plan) -> SupportSize:
    """A support's bar and travel.

    It reaches two thirds of the lid if a third of the bar stays inside, else as far as that allows. The droop at full
    reach is what the clearance above lets the end fall, clearance × reach / inside.
    """
    row, choice = plan.rows[0], plan.design.supports
    height = plan.support_top - row.floor
    stocks = (plan.support, plan.stocks.of("support.head")) if choice.head else (plan.support,)
    least = max(1.0, round(max(plan.season.gain(height, stock) for stock in stocks) + 0.5, 1))
    above = choice.clearance_above if choice.clearance_above is not None else least
    length = plan.usable
    lid = lid_size(plan).length
    most = 2 * length / 3
    if choice.stop and choice.divider is not None:
        most = min(most, length - choice.divider - divider_swells(plan, choice.divider) - STOP_MM)
    reach = choice.reach if choice.reach is not None else min(2 * lid / 3, most)
    inside = length - reach
    shelf = plan.stocks.of("shelf").thickness
    room = plan.writing - shelf - plan.support_top - above
    # A kicker too thin to be made leaves its room to the bar.
    loose = above + (room if 0.0 < room < LEAST_KICKER_MM else 0.0)
    droop = loose * reach / inside if inside > 0 else 0.0
    return SupportSize(height, length, above, reach, inside, droop, stocks[-1].thickness if choice.head else 0.0)


def over_support(plan: Plan) -> float:
    """Room between a support's clearance and the shelf's underside, mm: a kicker if positive, a notch if negative."""
    shelf = plan.stocks.of("shelf").thickness
    return (plan.writing - shelf) - (plan.support_top + support_size(plan).above)


def mirrored(plan: Plan, hand: str, x0: float, x1: float) -> tuple[float, float]:
    """A span measured from the opening's left edge, for the left or the right hand."""
    row = plan.rows[0]
    return (row.left + x0, row.left + x1) if hand == "left" else (row.right - x1, row.right - x0)


def groove_needed(plan: Plan) -> float:
    """Depth of the groove over a divider whose grain runs front to back, mm: it grows and shrinks in it."""
    stock, tall = plan.divider, plan.writing - plan.stocks.of("shelf").thickness - plan.rows[0].floor
    free = plan.season.gain(tall, stock) + PLAY_MM
    return math.ceil(2 * (free + plan.season.loss(tall, stock) + STILL_IN_MM) - 1e-9) / 2


def grain_up(plan: Plan) -> bool:
    """Whether the dividers are so tall that their grain runs up: else their groove takes over a third of the shelf.

    Then their depth moves, as the sides' does, and their height doesn't.
    """
    return groove_needed(plan) > GROOVE_SHARE * plan.stocks.of("shelf").thickness + 1e-9


def divider_swells(plan: Plan, depth: float) -> float:
    """What a divider's rear edge goes back by in the wettest season, mm, up to a tenth."""
    return math.ceil(10 * plan.season.gain(depth, plan.divider) - 1e-9) / 10 if grain_up(plan) else 0.0


def divider_rear(plan: Plan) -> float:
    """World y of the rear edge of the dividers beside the supports.

    Raises:
        CannotBuild: a divider too short to stand, or so deep that no guide is left behind it.
    """
    depth = plan.design.supports.divider
    if depth is None:
        # one whose grain runs up may gain more than the sides beside it
        more = divider_swells(plan, plan.usable) - plan.season.gain(plan.depth, plan.side)
        return plan.usable - max(0.0, math.ceil(10 * more) / 10)
    least = plan.face_rail + plan.design.frame.rail + 30.0
    if not least <= depth <= plan.usable - 60.0:
        right = f"expected {least:.0f} to {plan.usable - 60.0:.0f} mm: over the front rail and on the runner behind it"
        raise CannotBuild([fault("supports.divider", f"{depth:g} mm", right)])
    return depth


def lay_support(bench: Bench, plan: Plan, hand: str, shelf: Blank) -> None:
    """The sliding bar, and over it a kicker or, where the shelf is too thick, a notch in its underside."""
    size, row, choice = support_size(plan), plan.rows[0], plan.design.supports
    x0, x1 = mirrored(plan, hand, plan.beside_bar, plan.beside_bar + plan.bar)
    bar = bench.lay(
        f"support.{hand}",
        f"lid support, {hand}",
        "support",
        plan.support,
        Box(x0, x1, size.head, size.length, row.floor, plan.support_top),
        u="+y",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", ((x0 + x1) / 2, 0.0, row.floor)),
        layers=(plan.support.thickness,) * choice.layers if choice.layers > 1 else (),
    )
    moving, carries = [bar.id], bar.id
    if size.head:
        head = _head(bench, plan, hand, bar, size)
        moving.append(head.id)
        carries = head.id
        screw = (("length", size.head + SCREW_PAST_HEAD_MM),)
        on, room = (head.id, bar.id), size.length - size.head
        bench.hardware.append(Hardware(f"screw:knob:{bar.id}", "knob screw", 1, on, screw, size.head, room))
    if choice.stop:
        moving.append(_stop(bench, plan, hand, bar, size).id)
    bench.motions.append(Motion(bar.id, tuple(moving), "slide", (x0, 0.0, row.floor), (0.0, -1.0, 0.0), size.reach))
    bench.hardware.append(Hardware(f"knob:{bar.id}", "knob", 1, (carries,)))
    _above(bench, plan, hand, bar, shelf)


def _head(bench: Bench, plan: Plan, hand: str, bar: Blank, size: SupportSize) -> Blank:
    """The solid front, grain across as the rail's and the drawers': glued on the bar's end, and held by the knob."""
    stock, row = plan.stocks.of("support.head"), plan.rows[0]
    x0, x1 = bar.box().x0, bar.box().x1
    head = bench.lay(
        f"support.{hand}.head", f"lid support, {hand}, head", "support.head", stock,
        Box(x0, x1, 0.0, size.head, row.floor, plan.support_top), u="+x", w="-y",
        fixing=Fixing(bar.id, ((x0 + x1) / 2, 0.0, row.floor)),
    )  # fmt: skip
    butt(bench, bar, head, glued=True)
    return head


def _stop(bench: Bench, plan: Plan, hand: str, bar: Blank, size: SupportSize) -> Blank:
    """The block on the bar's inner face that meets the divider's rear edge at full reach, above the guide.

    Raises:
        CannotBuild: no short divider to meet, or no room for the block at rest or over the guide.
    """
    choice, row, stock = plan.design.supports, plan.rows[0], plan.stocks.of("stop")
    if choice.divider is None:
        right = "expected a depth: the block meets the divider's rear edge, and this one runs all the way back"
        raise CannotBuild([fault("supports.divider", "nothing", right)])
    met = choice.divider + divider_swells(plan, choice.divider)
    front = met + size.reach
    if front + STOP_MM > size.length + 1e-6:
        right = f"expected at most {size.length - STOP_MM - met:.1f} mm, for the block that stops it"
        raise CannotBuild([fault("supports.reach", f"{size.reach:.1f} mm", right)])
    guide = min(plan.design.face.guide if plan.design.face is not None else 25.0, row.height / 2)
    low = row.floor + guide + STOP_CLEAR_MM
    high = plan.support_top - STOP_CLEAR_MM
    room = plan.season.gain(high - low, stock) + 0.1
    if high - low - room < LEAST_STOP_MM:
        right = f"expected at least {LEAST_STOP_MM:g} mm: a higher opening"
        raise CannotBuild([fault("supports.stop", f"{high - low - room:.1f} mm over the guide for the block", right)])
    wide = plan.beside_bar + plan.divider.thickness - STOP_CLEAR_MM
    x0, x1 = (bar.box().x1, bar.box().x1 + wide) if hand == "left" else (bar.box().x0 - wide, bar.box().x0)
    touching = x0 if hand == "left" else x1
    block = bench.lay(
        f"support.{hand}.stop", f"lid support, {hand}, stop", "stop", stock,
        Box(x0, x1, front, front + STOP_MM, low, high - room), u="+y", w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing(bar.id, (touching, front, low)),
    )  # fmt: skip
    butt(bench, bar, block, glued=True)
    x, z = (x0 + x1) / 2, (low + high - room) / 2
    places = [Passing((x, front + STOP_MM * share, z)) for share in (0.3, 0.7)]
    lay_screws(bench, plan, block, bar, "+x", places, plan.bar)
    return block


def _above(bench: Bench, plan: Plan, hand: str, bar: Blank, shelf: Blank) -> None:
    """A kicker over the bar, or a notch in the shelf's underside."""
    room = over_support(plan)
    bay0, bay1 = mirrored(plan, hand, 0.0, plan.bay)
    if room >= LEAST_KICKER_MM:
        stock = plan.stocks.of("kicker")
        low = plan.writing - plan.stocks.of("shelf").thickness - room
        kicker = bench.lay(
            f"kicker.support-{hand}",
            f"kicker over lid support, {hand}",
            "kicker",
            stock,
            Box(bay0, bay1, 0.0, plan.usable, low, low + room),
            u="+y",
            w="-z",
            fixing=Fixing("shelf.writing", ((bay0 + bay1) / 2, plan.side_front, low + room)),
        )
        _ease_sides(kicker, plan)
        butt(bench, shelf, kicker, glued=True, glue=FRONT_GLUE_MM)
        screw_up(bench, plan, kicker, shelf, along=False)
    elif room < 0:
        underside = plan.writing - plan.stocks.of("shelf").thickness
        # It runs out behind: a wall that thin would break away.
        notch = Box(bay0, bay1, -1.0, plan.depth, underside, underside - room)
        for board in (shelf, *shelf_under(bench, notch)):
            board.sink_box("notch", notch, "+z", id=f"notch:{board.id}:{bar.id}", purpose=f"room over {bar.name}")


def _ease_sides(kicker: Blank, plan: Plan) -> None:
    """A kicker between side and divider keeps clear of both by what its width may grow."""
    play = plan.season.gain(kicker.high[1] - kicker.low[1], kicker.stock) / 2 + 0.2
    if plan.strip:
        play += plan.season.gain(plan.strip, plan.stocks.of("strip"))
    for direction in ("-x", "+x"):
        kicker.grow(direction, -play)
