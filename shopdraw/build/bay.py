"""What stands beside and above the topmost drawer: dividers with their guides, the rail under the shelf, a kicker."""

from __future__ import annotations

import math

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.face_rail import FRONT_GLUE_MM, fix_on, floor_of, forward_room, screw_up
from shopdraw.build.joinery import Housing, butt, house, into_face
from shopdraw.build.plan import LEAST_RAIL_MM, Plan
from shopdraw.build.support import PLAY_MM, divider_rear, divider_swells, grain_up, groove_needed, lay_support, mirrored
from shopdraw.build.writing import shelf_under
from shopdraw.wood.board import Fixing

GROOVE_MM = 4.0
"""Depth of the divider's groove in the runner under it (common practice)."""
UPPER_GROOVE_MM = 6.0
"""Depth of its groove in the shelf, a third of it at most; it floats there."""
GUIDE_MM = 25.0
"""Height of the guide behind a divider where the piece has no face (common practice)."""
RAIL_PLAY_MM = 0.1
"""Between the rail's end and a strip in the wettest season."""
KICKER_MM = 60.0
"""Width of a drawer's kicker (common practice)."""


def lay_bay(bench: Bench, plan: Plan) -> None:
    """Lay dividers, supports, rail and kickers; where stays hold the lid, the rail and its kicker alone."""
    shelf = bench["shelf.writing"]
    for hand in () if plan.stayed else ("left", "right"):
        _divider(bench, plan, hand)
        lay_support(bench, plan, hand, shelf)
    _rail(bench, plan, shelf)


def _divider(bench: Bench, plan: Plan, hand: str) -> None:
    """Between drawer and support: held in the runner's groove below, free above.

    Its grain runs front to back, as the trade has it, or up where it is tall.
    """
    row, stock = plan.rows[0], plan.divider
    shelf = bench["shelf.writing"]
    underside = plan.writing - plan.stocks.of("shelf").thickness
    x0, x1 = mirrored(plan, hand, plan.bay, plan.bay + stock.thickness)
    up = grain_up(plan)
    free = PLAY_MM if up else plan.season.gain(underside - row.floor, stock) + PLAY_MM
    upper_depth = upper_groove(plan)
    depth = plan.design.supports.divider
    rear = divider_rear(plan)
    box = Box(x0, x1, 0.0, rear, row.floor, underside - free)
    divider = bench.lay(
        f"divider.{hand}",
        f"divider, {hand}",
        "divider",
        stock,
        box,
        u="+z" if up else "+y",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if up is (hand == "right") else "far",
        fixing=Fixing("", ((x0 + x1) / 2, 0.0, row.floor)),
    )
    front = plan.face_rail + plan.design.frame.rail
    lower = floor_of(bench, row, hand)
    tongue_front = front + 1.0 if row.level != "bottom" else plan.design.case.dado_stop
    # It stands on the front rail with its shoulder; the tongue behind has room to grow down.
    spare = 0.1 + (0.0 if up else plan.season.gain(GROOVE_MM, stock))
    how = Housing(GROOVE_MM, plan.design.case.fit, "+x", relief=spare, stop=tongue_front, radius=plan.radius)
    section = Box(x0 - plan.design.case.fit / 2, x1 - plan.design.case.fit / 2, 0.0, plan.rear, row.floor, row.floor)
    # Across the grain of a bottom, or of a runner where its own runs up, it is glued in front only.
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
        glue=FRONT_GLUE_MM if up is not (row.level == "bottom") else None,
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
    if depth is not None:
        _guide_behind(bench, plan, hand, (x0, x1), rear)


def upper_groove(plan: Plan) -> float:
    """Depth of the dividers' grooves in the writing shelf's underside, mm: they grow and shrink in them; 0 without."""
    if plan.stayed:
        return 0.0
    usual = min(UPPER_GROOVE_MM, plan.stocks.of("shelf").thickness / 3)
    return usual if grain_up(plan) else max(usual, groove_needed(plan))


def _ease_front(divider: Blank, plan: Plan, top: float) -> None:
    """In front of its stopped upper groove the divider ends below the shelf by what it may grow."""
    box = divider.box()
    corner = box._replace(y1=plan.design.case.dado_stop + plan.radius, z0=top)
    name, words = f"notch:{divider.id}:front", "room to move below the shelf"
    divider.sink_box("notch", corner, into_face(divider), id=name, purpose=words)


def _guide_behind(bench: Bench, plan: Plan, hand: str, span: tuple[float, float], front: float) -> None:
    """The guide behind a short divider, as wide as it: its two faces guide the drawer and the support."""
    row, stock = plan.rows[0], plan.stocks.of("guide")
    high = min(plan.design.face.guide if plan.design.face is not None else GUIDE_MM, row.height / 2)
    host = floor_of(bench, row, hand)
    middle = (span[0] + span[1]) / 2
    comes = plan.season.loss(front, host.stock) + 0.2 if row.level == "bottom" else 0.0
    front += max(forward_room(plan), math.ceil(10 * comes) / 10) + divider_swells(plan, front)
    guide = bench.lay(
        f"guide.divider-{hand}", f"guide behind the divider, {hand}", "guide", stock,
        Box(*span, front, plan.usable, row.floor, row.floor + high), u="+y", w="+z",
        fixing=Fixing(host.id, (middle, front, row.floor)),
    )  # fmt: skip
    fix_on(bench, plan, host, guide, along=row.level != "bottom")


def _rail(bench: Bench, plan: Plan, shelf: Blank) -> None:
    """The rail under the shelf's front edge between the dividers, and the drawer's kicker behind it."""
    hang = plan.rail_drop - plan.stocks.of("shelf").thickness
    if hang < LEAST_RAIL_MM - 1e-6:
        return
    x0, x1 = plan.drawer_bay(plan.rows[0])
    if plan.stayed and plan.strip:
        # no divider stands between it and a strip, which grows towards it
        play = math.ceil(10 * (plan.season.gain(plan.strip, plan.stocks.of("strip")) + RAIL_PLAY_MM)) / 10
        x0, x1 = x0 + play, x1 - play
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
        fixing=Fixing("shelf.writing", ((x0 + x1) / 2, plan.side_front, upper)),
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
    screw_up(bench, plan, kicker, shelf, along=False)
