"""Small drawers in compartments: a drawer's box with stocks of its own, its front rabbeted over the sides."""

from __future__ import annotations

import math
from dataclasses import replace

from shopdraw.build.bench import Bench, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import BEHIND_BACK_MM, CasePlan, Row
from shopdraw.build.compartment_plan import KNOB_RADIUS_MM, Compartments
from shopdraw.build.drawer import DrawerSize, lay_drawer
from shopdraw.build.pigeonholes import Bay
from shopdraw.build.stocks import Stocks
from shopdraw.piece.design import Design, DrawersTable
from shopdraw.wood.board import Fixing, Stock

BEHIND_FRONT_MM = 1.0
"""A small drawer's front stands this far behind the partitions' front edges (common practice)."""
LIP_MM = 3.0
"""Wood of the front before the sides' ends."""
MOST_ENTRY_MM = 9.0
GROOVE_UP_MM = 4.0
"""Its bottom's groove over the box's lower edge (common practice)."""
LEAST_LENGTH_MM = 60.0
MEMBER = "compartment"


class _SmallStocks(Stocks):
    """Stocks of small drawers: `compartment.drawer.side` for `drawer.side`."""

    def of(self, member: str) -> Stock:
        return super().of(f"{MEMBER}.{member}" if member.startswith("drawer.") else member)


def small_plan(plan: CasePlan) -> CasePlan:
    """The plan with small drawers' stocks and choices in the place of the large ones'."""
    design, stocks = plan.design, _SmallStocks(plan.design)
    front = stocks.of("drawer.front").thickness
    choices = DrawersTable(
        front="inset",
        front_joint="rabbet",
        entry=min(MOST_ENTRY_MM, front - LIP_MM),
        groove_up=GROOVE_UP_MM,
        reveal=design.compartments.reveal,
        knobs=1 if design.compartments.knob > 0 else 0,
        knob_diameter=2 * KNOB_RADIUS_MM,
        knob_projection=design.compartments.knob or None,
    )
    small: Design = design.model_copy(update={"drawer": choices})
    return replace(plan, design=small, stocks=stocks)


def small_drawer_id(bay: Bay, number: int) -> str:
    """The key of a drawer: the bay's name, and from the second one up its number."""
    return f"c{bay.name}" if number == 1 else f"c{bay.name}-{number}"


def small_drawer_size(plan: CasePlan, one: Compartments, bay: Bay, number: int) -> DrawerSize:
    """Sizes of a drawer in one of a bay's spaces, counted from the lowest up.

    Args:
        plan: of small drawers.

    Raises:
        CannotBuild: compartments too shallow for a drawer.
    """
    floor, ceiling = bay.spaces[number - 1]
    table = plan.design.compartments
    front, side = plan.stocks.of("drawer.front"), plan.stocks.of("drawer.side")
    reveal, tall = table.reveal, ceiling - floor
    over = math.ceil(10 * (max(plan.season.gain(tall, front), plan.season.gain(tall, side)) + reveal)) / 10
    y0 = one.room.front + BEHIND_FRONT_MM
    # Its sides keep their length while what carries it shrinks towards its front.
    rear = one.rear - plan.season.loss(one.rear, plan.stocks.of("partition")) - BEHIND_BACK_MM
    if rear - y0 - front.thickness < LEAST_LENGTH_MM:
        least = LEAST_LENGTH_MM + front.thickness
        right = f"expected at least {least:.1f} mm: a front further forward, a deeper case, or no drawers"
        raise CannotBuild([fault("compartments.drawers", f"drawers {rear - y0:.1f} mm long", right)])
    face = Box(bay.left + reveal, bay.right - reveal, y0, y0 + front.thickness, floor + reveal, ceiling - over)
    box = Box(bay.left + reveal, bay.right - reveal, face.y1, rear, floor, ceiling - over)
    entry = plan.design.drawer.entry
    return DrawerSize(
        box=box,
        front=face,
        shoulder=face.y1,
        entry=entry,
        lipped=False,
        lip_thickness=0.0,
        top_clearance=over,
        side_clearance=reveal,
    )


def lay_small_drawers(bench: Bench, plan: CasePlan, one: Compartments, bay: Bay) -> None:
    """Lay the drawers of a bay; they come out when the lid is open."""
    small = small_plan(plan)
    for number in range(1, bay.drawers + 1):
        key = small_drawer_id(bay, number)
        floor, ceiling = bay.spaces[number - 1]
        row = Row(key, floor, ceiling - floor, one.room.below, bay.left, bay.right)
        before = set(bench.blanks)
        lay_drawer(bench, small, row, small_drawer_size(small, one, bay, number))
        for blank in [board for id, board in bench.blanks.items() if id not in before]:
            blank.member = f"{MEMBER}.{blank.member}"
            if not blank.fixing.to:
                x, _, z = blank.fixing.at
                blank.fixing = Fixing(one.room.below, (x, one.room.front, z))
        motion = bench.motions[-1]
        after = ("lid",) if one.room.slanted else ()
        bench.motions[-1] = replace(motion, point=(bay.left, one.room.front, floor), after=after)
