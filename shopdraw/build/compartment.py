"""Compartments: partitions in thin grooves, small shelves between them, a back in grooves, brackets, small drawers."""

from __future__ import annotations

import math

from shopdraw.build.bay import upper_groove
from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.bracket import lay_bracket
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.compartment_plan import (
    BACK_GROOVE_MM,
    PLAY_MM,
    Compartments,
    Room,
    compartments_of,
    front_behind_slant,
)
from shopdraw.build.joinery import Housing, house
from shopdraw.build.pigeonholes import Bay
from shopdraw.build.plan import Plan
from shopdraw.build.relief import relieve_end, rounded
from shopdraw.build.screw import wood_screws
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.build.small_drawer import lay_small_drawers
from shopdraw.build.top_edge import bevel_kept
from shopdraw.build.v_housing import house_v
from shopdraw.build.writing import FRONT, two_boards
from shopdraw.wood.assembly import OpeningFact
from shopdraw.wood.board import Fixing

FRONT_GLUE_MM = 60.0
"""A partition is glued over this much in front, dry behind (common practice)."""
BEHIND_FLAT_MM = 4.0
"""Wood between the flat on the top's front edge and a groove in its underside (common practice)."""
LEAST_IN_MM = 1.0
"""The back stands so far in its lower groove in the driest season, at least."""
END_PLAY_MM = 0.5
"""The back is shorter than the room by this at each end."""


def lay_compartments(bench: Bench, plan: CasePlan) -> None:
    """Lay and join all compartments of a piece, after the boards that they stand between."""
    for compartments in compartments_of(plan):
        _lay(bench, plan, compartments)


def compartment_facts(plan: CasePlan) -> tuple[OpeningFact, ...]:
    """The clear spaces of all bays, from the left, from the lowest up."""
    return tuple(
        OpeningFact(
            f"{one.room.opening}.{bay.key}.{number}", "pigeonhole", low, high - low, bay.width,
            one.rear - one.room.front, bay.left, one.room.front,
        )
        for one in compartments_of(plan)
        for bay in one.bays
        for number, (low, high) in enumerate(bay.spaces, 1)
    )  # fmt: skip


def _lay(bench: Bench, plan: CasePlan, one: Compartments) -> None:
    partitions = [_partition(bench, plan, one, bay) for bay in one.bays[:-1]]
    walls = [bench[one.room.on_left], *partitions, bench[one.room.on_right]]
    for number, bay in enumerate(one.bays):
        _shelves(bench, plan, one, bay, walls[number], walls[number + 1])
    if one.room.back:
        _back(bench, plan, one, partitions)
    for bay in one.bays:
        if bay.bracket != "none":
            lay_bracket(bench, plan, one, bay)
        lay_small_drawers(bench, plan, one, bay)


def _partition(bench: Bench, plan: CasePlan, one: Compartments, bay: Bay) -> Blank:
    """The partition right of a bay, grain up; held and glued in front, free to grow behind, dry above."""
    room, stock = one.room, plan.stocks.of("partition")
    x0, x1 = bay.right, bay.right + one.thickness
    held = Fixing(room.below, ((x0 + x1) / 2, room.front, room.floor))
    board = bench.lay(
        f"partition.{bay.name}",
        f"partition right of bay {bay.name}",
        "partition",
        stock,
        Box(x0, x1, room.front, one.rear, room.floor, room.ceiling),
        u="+z",
        w="-x",
        fixing=held,
    )
    fit = plan.design.case.fit
    for host, into, z, stop in (
        (bench[room.below], "-z", room.floor, room.front + one.stop),
        (bench[room.above], "+z", room.ceiling, _upper_stop(plan, one)),
    ):
        section = Box(x0 - fit / 2, x1 - fit / 2, room.front, plan.depth, z, z)
        how = Housing(one.groove, fit, "+x", relief=PLAY_MM / 2, stop=stop, radius=_radius(plan, one))
        house(
            bench, "groove", host, board.id, (board,), section, into, how, purpose=board.name, guest_front=room.front,
            glued=into == "-z", floats=into == "+z", glue=FRONT_GLUE_MM if into == "-z" else None,
        )  # fmt: skip
    return board


def _radius(plan: CasePlan, one: Compartments) -> float:
    """At the stopped end of a thin groove: half the groove at most, since its cutter is no wider."""
    return min(plan.radius, (one.thickness + plan.design.case.fit) / 2)


def _upper_stop(plan: CasePlan, one: Compartments) -> float:
    """World y where the grooves above begin: behind the front, and behind the flat on the top's front edge."""
    stop = one.room.front + one.stop
    if not isinstance(plan, SlantPlan):
        return stop
    return max(stop, _underside_front(plan) + BEHIND_FLAT_MM)


def _underside_front(plan: SlantPlan) -> float:
    """World y where the top's underside begins: behind bevel and flat."""
    alpha = math.radians(plan.slant.alpha)
    thickness, bevel = plan.stocks.of("top").thickness, bevel_kept(plan)
    flat = max(0.0, (thickness - bevel * math.sin(alpha)) / math.cos(alpha))
    return plan.slant.run - bevel * math.cos(alpha) + flat * math.sin(alpha)


def _shelves(bench: Bench, plan: CasePlan, one: Compartments, bay: Bay, left: Blank, right: Blank) -> None:
    """The small shelves of a bay, grain left to right, in V-grooves of both walls; they come in from the rear."""
    stock, front = plan.stocks.of("pigeonhole"), one.room.front
    # A wall of the case has its groove stopped where the shelf begins, so the shelf goes with that wall's wood.
    side = next((wall for wall in (left, right) if not wall.id.startswith("partition.")), left)
    for number, (_, under) in enumerate(bay.spaces[:-1], 1):
        upper = under + stock.thickness
        shelf = bench.lay(
            f"pigeonhole.{bay.name}.{number}",
            f"small shelf, bay {bay.name}",
            "pigeonhole",
            stock,
            Box(bay.left, bay.right, front, one.rear, under, upper),
            u="+x",
            w="+z",
            fixing=Fixing(side.id, ((bay.left + bay.right) / 2, front, upper)),
        )
        for wall, into in ((left, "-x"), (right, "+x")):
            stop = None if wall.id.startswith("partition.") else front
            house_v(bench, wall, shelf, into, one.point, stop=stop, purpose=shelf.name)


def back_groove(plan: CasePlan, one: Compartments) -> tuple[tuple[float, float], float]:
    """Depths of the back's grooves below and above, and how far short of their floors it ends, mm.

    It grows from its middle. A shelf in one board has the dividers' grooves on its other face: there both together
    take no more than half of its thickness, as far as the back still stands in.
    """
    stock, half = plan.stocks.of("compartment.back"), (one.room.ceiling - one.room.floor) / 2 + BACK_GROOVE_MM
    free = math.ceil(10 * (plan.season.gain(half, stock) + PLAY_MM)) / 10
    wanted = max(BACK_GROOVE_MM, math.ceil(2 * (free + plan.season.loss(half, stock) + 2.0)) / 2)
    below = wanted
    if isinstance(plan, Plan) and one.room.below == FRONT:
        least = free + plan.season.loss(half, stock) + LEAST_IN_MM
        most = plan.stocks.of("shelf").thickness / 2 - upper_groove(plan)
        # no shallower than the partitions' grooves, which cross it
        below = max(one.groove, min(wanted, max(least, most)))
    return (below, wanted), free


def _back(bench: Bench, plan: CasePlan, one: Compartments, partitions: list[Blank]) -> None:
    """The back, solid, grain left to right, in one plumb plane of grooves; held at the middle of its height.

    It goes in from above while the top is off; its grooves run out where the sides cover their ends.
    """
    room, stock = one.room, plan.stocks.of("compartment.back")
    depth, free = back_groove(plan, one)
    y0, y1 = room.rear, room.rear + stock.thickness
    fit = plan.design.case.fit
    # A groove keeps its width and moves with the wood at its middle.
    middle = (plan.width / 2, (y0 + y1 + fit) / 2, (room.floor + room.ceiling) / 2)
    back = bench.lay(
        "compartment.back",
        "back of the compartments",
        "compartment.back",
        stock,
        Box(room.left + END_PLAY_MM, room.right - END_PLAY_MM, y0, y1, room.floor, room.ceiling),
        u="+x",
        w="-y",
        fixing=Fixing(room.below, middle),
    )
    for host, into, z, deep in (
        (bench[room.below], "-z", room.floor, depth[0]),
        (bench[room.above], "+z", room.ceiling, depth[1]),
    ):
        ease = _drift(plan, middle[1]) if into == "+z" else 0.0
        # Through tails show at both ends of the top: there the groove stops, the cutter's radius inside the sides.
        stopped = into == "+z" and plan.design.case.top_joint == "dovetail"
        radius = min(plan.radius, stock.thickness / 2)
        x0, x1 = (room.left + radius, room.right - radius) if stopped else (-1.0, plan.width + 1.0)
        section = Box(x0, x1, y0, y1, z, z)
        how = Housing(deep, fit, "+y", relief=free, ease=ease)
        house(
            bench, "groove", host, back.id, (back,), section, into, how, purpose=back.name, glued=False, floats=True,
            gap=free,
        )  # fmt: skip
        if stopped:
            host.cuts[-1].outline = rounded(host.cuts[-1].outline, radius)
            _notch_ends(back, room, radius, free)
    if partitions:
        on = (back.id, *(board.id for board in partitions))
        deep = min(board.box().y1 - board.box().y0 for board in partitions)
        count, thick = len(partitions), back.stock.thickness
        bench.hardware.append(wood_screws(plan, "screw:compartment.back", count, on, thick, deep))


def _notch_ends(back: Blank, room: Room, radius: float, free: float) -> None:
    """Take off the back's upper corners, where the groove above has round ends, with what the back may grow."""
    box = back.box()
    for hand, x0, x1, end in (
        ("left", box.x0, room.left + 2 * radius, "+x"),
        ("right", room.right - 2 * radius, box.x1, "-x"),
    ):
        corner = box._replace(x0=x0, x1=x1, z0=room.ceiling - free)
        name, words = f"notch:{back.id}:{hand}", "upper corner, at the groove's round end"
        back.sink_box("notch", corner, "+y", id=name, purpose=words)
        relieve_end(back, corner, "+y", end, ("-z",), radius, id=f"relief:{back.id}:{hand}", purpose=words)


def _drift(plan: CasePlan, y: float) -> float:
    """How far the groove in the top moves away from the one below it by the worse season, mm."""
    if not isinstance(plan, SlantPlan):
        return 0.0
    top, run = plan.stocks.of("top"), plan.slant.run
    sizes = two_boards(plan, front_behind_slant(plan))
    held = 0.0 if sizes is None else sizes.step_at
    floor = plan.stocks.of("shelf" if sizes is None else "shelf.rear")
    worst = 0.0
    for change in (plan.season.gain, plan.season.loss):
        one = change(y - held, floor) + change(held, plan.side)
        other = change(run, plan.side) + change(y - run, top)
        worst = max(worst, abs(one - other))
    return worst
