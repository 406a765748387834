"""Web frames: front and rear rail with runners between them, housed in the sides as one guest.

Two ways of fixing, chosen in the piece: front only (the frame is glued up whole and free behind), or front and rear
(both rails glued in the dado, the runners' rear tenons dry, with a gap for the seasons at their shoulders).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case import stand_in_sides
from shopdraw.build.joinery import Tenon, mortise_and_tenon
from shopdraw.build.plan import Plan, Row
from shopdraw.wood.board import Fixing

STILL_ENGAGED_MM = 10.0
"""What a dry tenon keeps in its mortise in the wettest season."""
PLAY_MM = 0.5
"""Added to every computed movement gap."""
BEARING_MM = 10.0
"""What a drawer side or a divider bears on beside its own thickness (common practice)."""


@dataclass(frozen=True, slots=True)
class FrameSize:
    """Sizes of a frame, mm: rear gap at the shoulder (or behind the frame), tenons and mortises."""

    depth: float
    gap: float
    behind: float
    front_tenon: float
    rear_tenon: float


def frame_size(plan: Plan) -> FrameSize:
    """The gap from the moisture range and the tenons that stay engaged over it."""
    choice = plan.design.frame
    if choice.fixing == "front":
        behind = _up_to_half(plan.season.loss(plan.depth, plan.side) + PLAY_MM)
        return FrameSize(plan.rear - behind, 0.0, behind, choice.tenon, choice.tenon)
    between_glue = plan.rear - 25.0
    gap = _up_to_half(plan.season.loss(between_glue, plan.side) + PLAY_MM)
    rear = math.ceil(STILL_ENGAGED_MM + gap + plan.season.gain(between_glue, plan.side))
    return FrameSize(plan.rear, gap, 0.0, choice.tenon, float(max(rear, choice.tenon)))


def _up_to_half(value: float) -> float:
    return math.ceil(2 * value - 1e-9) / 2


def runner_bearing(plan: Plan, row_above: Row) -> float:
    """Clear width of the outer runners from the side's face inwards, mm: all that stands or slides on them."""
    drawer_side = plan.stocks.of("drawer.side").thickness
    least = drawer_side + 2.0 + BEARING_MM
    if row_above is plan.rows[0]:
        least += plan.bay + plan.divider.thickness
    given = plan.design.frame.runner
    return max(least, given - plan.dado if given is not None else 45.0 - plan.dado)


def lay_frames(bench: Bench, plan: Plan) -> None:
    """Lay and join one web frame below every drawer but the lowest."""
    for row in plan.rows:
        if row.level.startswith("frame."):
            _frame(bench, plan, row)


def _frame(bench: Bench, plan: Plan, row: Row) -> None:
    size, choice, stock = frame_size(plan), plan.design.frame, plan.stocks.of("frame")
    low, high = row.floor - stock.thickness, row.floor
    rear_rail = size.depth - choice.rail
    words = f"web frame under drawer {row.key}"

    def rail(end: str, y0: float, y1: float, fixing: Fixing) -> Blank:
        box = Box(plan.left, plan.right, y0, y1, low, high)
        return bench.lay(
            f"frame.{row.key}.{end}", f"{end} rail, {words}", f"frame.{end}", stock, box, u="+x", w="+z", fixing=fixing
        )

    middle = plan.width / 2
    front = rail("front", 0.0, choice.rail, Fixing("", (middle, 0.0, high)))
    both = choice.fixing == "front-and-rear"
    bearing = runner_bearing(plan, row)
    # A frame fixed in front only carries its rear rail on its runners; each is held where it doesn't move sideways.
    on_runner = Fixing(f"frame.{row.key}.runner-left", (_held_at(plan, row, "left"), rear_rail, high))
    rear = rail("rear", rear_rail, size.depth, Fixing("side.left", (middle, size.depth, high)) if both else on_runner)
    runners = [
        _runner(bench, plan, row, hand, (x0, x1), (choice.rail, rear_rail - size.gap), words)
        for hand, x0, x1 in (
            ("left", plan.left, plan.left + bearing),
            ("right", plan.right - bearing, plan.right),
        )
    ]
    guest_id = f"frame.{row.key}"
    whole = Box(plan.left, plan.right, 0.0, size.depth, low, high)
    # A runner's width moves, the dado's floor doesn't: its outer edge keeps clear of it.
    clear = {one.id: plan.season.gain(_width(one) + plan.dado, stock) + PLAY_MM for one in runners}
    dry = () if both else (rear.id,)
    stand_in_sides(bench, plan, guest_id, (front, rear, *runners), whole, guest_front=0.0, short=clear, dry=dry)
    for runner, away in zip(runners, ("-x", "+x"), strict=True):
        runner.shoulders = rear_rail - size.gap - choice.rail
        thickness = stock.thickness / 3
        room = plan.season.gain(_width(runner), stock) + 0.1
        inset = (8.0, 8.0 + plan.dado)
        if away == "+x":
            inset = (8.0 + plan.dado, 8.0)
        front_joint = Tenon(thickness, inset, size.front_tenon, size.front_tenon + 2.0, room=room)
        mortise_and_tenon(bench, front, runner, "-y", front_joint, glued=True, purpose=runner.name)
        rear_joint = Tenon(thickness, inset, size.rear_tenon, size.rear_tenon + 2.0, gap=size.gap, room=room)
        mortise_and_tenon(bench, rear, runner, "+y", rear_joint, glued=choice.fixing == "front", purpose=runner.name)


def _width(runner: Blank) -> float:
    return runner.high[1] - runner.low[1]


def _runner(
    bench: Bench, plan: Plan, row: Row, hand: str, x: tuple[float, float], y: tuple[float, float], words: str
) -> Blank:
    stock = plan.stocks.of("frame")
    box = Box(x[0], x[1], y[0], y[1], row.floor - stock.thickness, row.floor)
    at = _held_at(plan, row, hand)
    return bench.lay(
        f"frame.{row.key}.runner-{hand}",
        f"runner, {hand}, {words}",
        "frame.runner",
        stock,
        box,
        u="+y",
        w="+z",
        fixing=Fixing(f"frame.{row.key}.front", (at, y[0], row.floor)),
    )


def _held_at(plan: Plan, row: Row, hand: str) -> float:
    """World x at which a runner is held: under a divider where that stands, else at the runner's middle."""
    topmost = row is plan.rows[0]
    beside = plan.bay + plan.divider.thickness / 2 if topmost else runner_bearing(plan, row) / 2
    return plan.left + beside if hand == "left" else plan.right - beside
