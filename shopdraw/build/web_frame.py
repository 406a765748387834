"""Web frames: front and rear rail with runners between them, housed in the sides as one guest.

Two ways of fixing, chosen in the piece: front only (the frame is glued up whole and free behind), or front and rear
(both rails glued in the dado, the runners' rear tenons dry, with a gap for the seasons at their shoulders).
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case import stand_in_sides
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import Tenon, mortise_and_tenon
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


def frame_size(plan: CasePlan) -> FrameSize:
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


@dataclass(frozen=True, slots=True)
class Middle:
    """A runner between the outer ones, under a divider or over one: its key, its sides and where it is held (x)."""

    key: str
    left: float
    right: float
    held: float


@dataclass(frozen=True, slots=True)
class FramePlace:
    """Where a web frame lies.

    Attributes:
        key: of its id, `frame.KEY`.
        top: its upper face, world z, mm.
        words: what it is called.
        beside: what stands on the outer runners between side and drawer, mm.
        middles: runners between the outer ones.
    """

    key: str
    top: float
    words: str
    beside: float = 0.0
    middles: tuple[Middle, ...] = ()


def runner_bearing(plan: CasePlan, beside: float) -> float:
    """Clear width of the outer runners from the side's face inwards, mm: all that stands or slides on them."""
    drawer_side = plan.stocks.of("drawer.side").thickness
    least = drawer_side + 2.0 + BEARING_MM + beside
    given = plan.design.frame.runner
    return max(least, given - plan.dado if given is not None else 45.0 - plan.dado)


def lay_frame(bench: Bench, plan: CasePlan, place: FramePlace) -> None:
    """Lay and join a web frame in its place."""
    size, choice, stock = frame_size(plan), plan.design.frame, plan.stocks.of("frame")
    low, high = place.top - stock.thickness, place.top
    rear_rail = size.depth - choice.rail

    def rail(end: str, y0: float, y1: float, fixing: Fixing) -> Blank:
        box = Box(plan.left, plan.right, y0, y1, low, high)
        words = f"{end} rail, {place.words}"
        id = f"frame.{place.key}.{end}"
        return bench.lay(id, words, f"frame.{end}", stock, box, u="+x", w="+z", fixing=fixing)

    middle = plan.width / 2
    shoulder = plan.front + choice.rail
    front = rail("front", plan.front, shoulder, Fixing("", (middle, plan.front, high)))
    both = choice.fixing == "front-and-rear"
    bearing = runner_bearing(plan, place.beside)
    # A frame fixed in front only carries its rear rail on its runners; each is held where it doesn't move sideways.
    on_runner = Fixing(f"frame.{place.key}.runner-left", (_held_at(plan, place, "left"), rear_rail, high))
    rear = rail("rear", rear_rail, size.depth, Fixing("side.left", (middle, size.depth, high)) if both else on_runner)
    spans = [
        ("left", plan.left, plan.left + bearing, _held_at(plan, place, "left")),
        ("right", plan.right - bearing, plan.right, _held_at(plan, place, "right")),
        *((f"middle-{one.key}", one.left, one.right, one.held) for one in place.middles),
    ]
    between = (shoulder, rear_rail - size.gap)
    runners = [_runner(bench, plan, place, which, (x0, x1), between, at) for which, x0, x1, at in spans]
    whole = Box(plan.left, plan.right, plan.front, size.depth, low, high)
    # A runner's width moves, the dado's floor doesn't: its outer edge keeps clear of it.
    clear = {one.id: plan.season.gain(_width(one) + plan.dado, stock) + PLAY_MM for one in runners[:2]}
    dry = () if both else (rear.id,)
    frame = f"frame.{place.key}"
    guests = (front, rear, *runners)
    stand_in_sides(bench, plan, frame, guests, whole, guest_front=plan.front, short=clear, dry=dry)
    let_in = ((0.0, plan.dado), (plan.dado, 0.0), *((0.0, 0.0) for _ in place.middles))
    for runner, dados in zip(runners, let_in, strict=True):
        runner.shoulders = rear_rail - size.gap - shoulder
        thickness = stock.thickness / 3
        room = plan.season.gain(_width(runner), stock) + 0.1
        inset = (8.0 + dados[0], 8.0 + dados[1])
        square = choice.mortise == "square"
        front_joint = Tenon(
            thickness, inset, size.front_tenon, size.front_tenon + 2.0, room=room, radius=plan.radius, square=square
        )
        mortise_and_tenon(bench, front, runner, "-y", front_joint, glued=True, purpose=runner.name)
        rear_joint = replace(front_joint, length=size.rear_tenon, mortise=size.rear_tenon + 2.0, gap=size.gap)
        mortise_and_tenon(bench, rear, runner, "+y", rear_joint, glued=choice.fixing == "front", purpose=runner.name)


def _width(runner: Blank) -> float:
    return runner.high[1] - runner.low[1]


def _runner(
    bench: Bench,
    plan: CasePlan,
    place: FramePlace,
    which: str,
    x: tuple[float, float],
    y: tuple[float, float],
    held: float,
) -> Blank:
    stock = plan.stocks.of("frame")
    words = which.replace("-", " ")
    return bench.lay(
        f"frame.{place.key}.runner-{which}",
        f"runner, {words}, {place.words}",
        "frame.runner",
        stock,
        Box(x[0], x[1], y[0], y[1], place.top - stock.thickness, place.top),
        u="+y",
        w="+z",
        fixing=Fixing(f"frame.{place.key}.front", (held, y[0], place.top)),
    )


def _held_at(plan: CasePlan, place: FramePlace, hand: str) -> float:
    """World x at which an outer runner is held: under a divider where that stands, else at the runner's middle."""
    half = plan.stocks.of("divider").thickness / 2
    beside = place.beside - half if place.beside else runner_bearing(plan, 0.0) / 2
    return plan.left + beside if hand == "left" else plan.right - beside
