"""What stands beside and above the topmost drawer: dividers, lid supports, the rail under the shelf and the kickers."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.joinery import Housing, butt, house
from shopdraw.build.lid_size import lid_size
from shopdraw.build.plan import LEAST_RAIL_MM, Plan
from shopdraw.build.writing import shelf_under
from shopdraw.wood.assembly import Hardware, Motion
from shopdraw.wood.board import Fixing

GROOVE_MM = 4.0
"""Depth of the divider's groove in the runner under it (common practice)."""
UPPER_GROOVE_MM = 6.0
"""Depth of its groove in the shelf; it floats there."""
LEAST_KICKER_MM = 3.0
"""No kicker thinner than this is made."""
FRONT_GLUE_MM = 60.0
"""What lies across another board's grain is glued over this much in front, dry or in slots behind (common practice)."""
KICKER_MM = 60.0
"""Width of a drawer's kicker (common practice)."""


@dataclass(frozen=True, slots=True)
class SupportSize:
    """Sizes of a lid support, mm: bar, clearance over it, how far it pulls out, what stays inside, droop at the end."""

    height: float
    length: float
    above: float
    reach: float
    inside: float
    droop: float


def support_size(plan: Plan) -> SupportSize:
    """A support's bar and travel.

    It reaches two thirds of the lid if a third of the bar stays inside, else as far as that allows. The droop at full
    reach is what the clearance above lets the end fall, clearance × reach / inside.
    """
    row, choice = plan.rows[0], plan.design.supports
    height = plan.support_top - row.floor
    least = max(1.0, round(plan.season.gain(height, plan.support) + 0.5, 1))
    above = choice.clearance_above if choice.clearance_above is not None else least
    length = plan.usable
    lid = lid_size(plan).length
    reach = choice.reach if choice.reach is not None else min(2 * lid / 3, 2 * length / 3)
    inside = length - reach
    shelf = plan.stocks.of("shelf").thickness
    room = plan.writing - shelf - plan.support_top - above
    # A kicker too thin to be made leaves its room to the bar.
    loose = above + (room if 0.0 < room < LEAST_KICKER_MM else 0.0)
    return SupportSize(height, length, above, reach, inside, loose * reach / inside if inside > 0 else 0.0)


def over_support(plan: Plan) -> float:
    """Room between a support's clearance and the shelf's underside, mm: a kicker if positive, a notch if negative."""
    shelf = plan.stocks.of("shelf").thickness
    return (plan.writing - shelf) - (plan.support_top + support_size(plan).above)


def lay_bay(bench: Bench, plan: Plan) -> None:
    """Lay dividers, supports, rail and kickers."""
    shelf = bench["shelf.writing"]
    for hand in ("left", "right"):
        _divider(bench, plan, hand)
        _support(bench, plan, hand, shelf)
    _rail(bench, plan, shelf)


def _mirrored(plan: Plan, hand: str, x0: float, x1: float) -> tuple[float, float]:
    """A span measured from the left side's inner face, for the left or the right hand."""
    if hand == "left":
        return plan.left + x0, plan.left + x1
    return plan.right - x1, plan.right - x0


def _divider(bench: Bench, plan: Plan, hand: str) -> None:
    """Upright between drawer and support: held in the runner's groove below, free above."""
    row, stock = plan.rows[0], plan.divider
    shelf = bench["shelf.writing"]
    underside = plan.writing - plan.stocks.of("shelf").thickness
    x0, x1 = _mirrored(plan, hand, plan.bay, plan.bay + stock.thickness)
    tall = underside - row.floor
    free = plan.season.gain(tall, stock) + 0.5
    upper_depth = upper_groove(plan)
    rear = plan.usable
    box = Box(x0, x1, 0.0, rear, row.floor, underside - free)
    divider = bench.lay(
        f"divider.{hand}",
        f"divider, {hand}",
        "divider",
        stock,
        box,
        u="+y",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", ((x0 + x1) / 2, 0.0, row.floor)),
    )
    front = plan.design.frame.rail
    lower = _floor_under(bench, plan, hand)
    tongue_front = front + 1.0 if row.level != "bottom" else plan.design.case.dado_stop
    # It stands on the front rail with its shoulder; the tongue behind has room to grow down.
    spare = 0.1 + plan.season.gain(GROOVE_MM, stock)
    how = Housing(GROOVE_MM, plan.design.case.fit, "+x", relief=spare, stop=tongue_front, radius=plan.radius)
    section = Box(x0 - plan.design.case.fit / 2, x1 - plan.design.case.fit / 2, 0.0, plan.rear, row.floor, row.floor)
    # A bottom's grain runs across the divider's: glued in front only. A runner's grain runs with it.
    house(
        bench,
        "groove",
        lower,
        divider.id,
        (divider,),
        section,
        "-z",
        how,
        purpose=divider.name,
        guest_front=0.0,
        glue=FRONT_GLUE_MM if row.level == "bottom" else None,
    )
    if row.level != "bottom":
        rear_rail = bench[f"{row.level}.rear"]
        through = Box(
            x0 - plan.design.case.fit / 2,
            x1 + plan.design.case.fit / 2,
            0.0,
            plan.depth,
            row.floor - GROOVE_MM,
            row.floor,
        )
        rear_rail.sink_box(
            "groove", through, "-z", id=f"groove:{rear_rail.id}:{divider.id}", purpose=f"way in for {divider.name}"
        )
    # The body ends short of the groove's floor by what the divider may grow.
    upper = Housing(upper_depth, 0.3, "+x", relief=free, stop=plan.design.case.dado_stop, radius=plan.radius)
    divider.grow("+z", free)
    ceiling = Box(x0 - 0.15, x1 - 0.15, 0.0, plan.rear, underside, underside)
    house(
        bench,
        "groove",
        shelf,
        divider.id,
        (divider,),
        ceiling,
        "+z",
        upper,
        purpose=divider.name,
        guest_front=0.0,
        glued=False,
        floats=True,
        gap=free,
    )
    under = ceiling._replace(x1=x1 + 0.15, z1=underside + upper_depth)
    for board in shelf_under(bench, under):
        words = f"room over {divider.name}"
        board.sink_box("groove", under, "+z", id=f"groove:{board.id}:{divider.id}", purpose=words)
    if free > 0:
        _ease_front(divider, plan, underside - free)


def upper_groove(plan: Plan) -> float:
    """Depth of the dividers' grooves in the writing shelf's underside, mm: they grow and shrink in them."""
    stock, tall = plan.divider, plan.writing - plan.stocks.of("shelf").thickness - plan.rows[0].floor
    free = plan.season.gain(tall, stock) + 0.5
    return max(UPPER_GROOVE_MM, math.ceil(2 * (free + plan.season.loss(tall, stock) + 2.0)) / 2)


def _ease_front(divider: Blank, plan: Plan, top: float) -> None:
    """In front of its stopped upper groove the divider ends below the shelf by what it may grow."""
    box = divider.box()
    corner = box._replace(y1=plan.design.case.dado_stop + plan.radius, z0=top)
    into = "-x" if divider.reference_edge == "near" else "+x"
    divider.sink_box("notch", corner, into, id=f"notch:{divider.id}:front", purpose="room to move below the shelf")


def _floor_under(bench: Bench, plan: Plan, hand: str) -> Blank:
    row = plan.rows[0]
    return bench["bottom"] if row.level == "bottom" else bench[f"{row.level}.runner-{hand}"]


def _support(bench: Bench, plan: Plan, hand: str, shelf: Blank) -> None:
    """The sliding bar, and over it a kicker or, where the shelf is too thick, a notch in its underside."""
    size, row, choice = support_size(plan), plan.rows[0], plan.design.supports
    x0, x1 = _mirrored(plan, hand, choice.clearance, choice.clearance + plan.support.thickness)
    box = Box(x0, x1, 0.0, size.length, row.floor, plan.support_top)
    bar = bench.lay(
        f"support.{hand}",
        f"lid support, {hand}",
        "support",
        plan.support,
        box,
        u="+y",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", ((x0 + x1) / 2, 0.0, row.floor)),
    )
    bench.motions.append(Motion(bar.id, (bar.id,), "slide", (x0, 0.0, row.floor), (0.0, -1.0, 0.0), size.reach))
    bench.hardware.append(Hardware(f"knob:{bar.id}", "knob", 1, (bar.id,)))
    room = over_support(plan)
    bay0, bay1 = _mirrored(plan, hand, 0.0, plan.bay)
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
            fixing=Fixing("shelf.writing", ((bay0 + bay1) / 2, 0.0, low + room)),
        )
        _ease_sides(kicker, plan)
        butt(bench, shelf, kicker, glued=True, glue=FRONT_GLUE_MM)
        bench.hardware.append(Hardware(f"screw:{kicker.id}", "wood screw", 2, (kicker.id, shelf.id)))
    elif room < 0:
        underside = plan.writing - plan.stocks.of("shelf").thickness
        # It runs out behind: a wall that thin would break away.
        notch = Box(bay0, bay1, -1.0, plan.depth, underside, underside - room)
        for board in (shelf, *shelf_under(bench, notch)):
            board.sink_box("notch", notch, "+z", id=f"notch:{board.id}:{bar.id}", purpose=f"room over {bar.name}")


def _ease_sides(kicker: Blank, plan: Plan) -> None:
    """A kicker between side and divider keeps clear of both by what its width may grow."""
    play = plan.season.gain(kicker.high[1] - kicker.low[1], kicker.stock) / 2 + 0.2
    for direction in ("-x", "+x"):
        kicker.grow(direction, -play)


def _rail(bench: Bench, plan: Plan, shelf: Blank) -> None:
    """The rail under the shelf's front edge between the dividers, and the drawer's kicker behind it."""
    hang = plan.rail_drop - plan.stocks.of("shelf").thickness
    if hang < LEAST_RAIL_MM - 1e-6:
        return
    x0, x1 = plan.drawer_bay(plan.rows[0])
    upper = plan.writing - plan.stocks.of("shelf").thickness
    stock = plan.stocks.of("rail")
    rail = bench.lay(
        "rail.top",
        "rail under the writing shelf",
        "rail",
        stock,
        Box(x0, x1, 0.0, stock.thickness, upper - hang, upper),
        u="+x",
        w="-y",
        fixing=Fixing("shelf.writing", ((x0 + x1) / 2, 0.0, upper)),
    )
    butt(bench, shelf, rail, glued=True)
    wood = plan.stocks.of("kicker")
    middle = (x0 + x1) / 2
    half = min(KICKER_MM, (x1 - x0) / 3) / 2
    # The shelf shrinks towards its front and takes the kicker along; the rail stays.
    y0 = stock.thickness + math.ceil(2 * (plan.season.loss(stock.thickness, plan.stocks.of("shelf")) + 0.2)) / 2
    kicker = bench.lay(
        "kicker.drawer",
        f"kicker over drawer {plan.rows[0].key}",
        "kicker",
        wood,
        Box(middle - half, middle + half, y0, plan.usable, upper - hang, upper),
        u="+y",
        w="-z",
        fixing=Fixing("shelf.writing", (middle, y0, upper)),
    )
    butt(bench, shelf, kicker, glued=True, glue=FRONT_GLUE_MM)
    bench.hardware.append(Hardware(f"screw:{kicker.id}", "wood screw", 2, (kicker.id, shelf.id)))
