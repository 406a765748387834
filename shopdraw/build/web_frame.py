"""Web frames: front and rear rail with runners between them, housed in the sides as one guest.

Two ways of fixing, chosen in the piece: front only (the frame is glued up whole and free behind), or front and rear
(both rails glued in the dado, the runners' rear tenons dry, with a gap for the seasons at their shoulders).
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import stand_in_sides
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.dust_panel import groove_depth, haunch, lay_panels
from shopdraw.build.face_rail import lay_face_rail, shape_face_rail
from shopdraw.build.joinery import Tenon, mortise_and_tenon
from shopdraw.build.repeat import Names, Place, lay_alike
from shopdraw.wood.board import Fixing

STILL_ENGAGED_MM = 10.0
"""What a dry tenon keeps in its mortise in the wettest season."""
PLAY_MM = 0.5
"""Added to every computed movement gap."""
LEAST_RUNNER_MM = 40.0
"""No runner is shorter between its shoulders than this."""
LEAST_BEYOND_MM = 6.0
"""A tenon beside a dust panel reaches so far beyond the panel's groove."""
LEAST_TENON_MM = 15.0
"""No tenon of a runner is narrower than this (common practice)."""
BEARING_MM = 10.0
"""What a drawer side or a divider bears on beside its own thickness (common practice)."""


@dataclass(frozen=True, slots=True)
class FrameSize:
    """Sizes of a frame, mm.

    Attributes:
        front, rear: world y of its front and rear edge; the front one lies behind the face rail.
        gap: at the runners' rear shoulders.
        behind: free behind the frame.
        front_tenon, rear_tenon: lengths.
        groove: of its dust panels, deep; 0 without.
    """

    front: float
    rear: float
    gap: float
    behind: float
    front_tenon: float
    rear_tenon: float
    groove: float = 0.0

    @property
    def depth(self) -> float:
        """From its front edge to its rear one."""
        return self.rear - self.front


def frame_size(plan: CasePlan) -> FrameSize:
    """The gap from the moisture range and the tenons that stay engaged over it."""
    choice, season = plan.design.frame, plan.season
    front = plan.front + plan.face_rail
    if choice.fixing == "front":
        behind = _up_to_half(season.loss(plan.depth, plan.side) + PLAY_MM)
        groove = groove_depth(plan, 0.0)
        tenon = max(choice.tenon, groove + LEAST_BEYOND_MM if groove else 0.0)
        return FrameSize(front, plan.rear - behind, 0.0, behind, tenon, tenon, groove)
    between_glue = plan.rear - 25.0
    gap = _up_to_half(season.loss(between_glue, plan.side) + PLAY_MM)
    opens = gap + season.gain(between_glue, plan.side)
    groove = groove_depth(plan, opens)
    rear = math.ceil(STILL_ENGAGED_MM + opens)
    least = groove + LEAST_BEYOND_MM if groove else 0.0
    tenon = max(choice.tenon, least)
    return FrameSize(front, plan.rear, gap, 0.0, tenon, float(max(rear, tenon)), groove)


def _up_to_half(value: float) -> float:
    return math.ceil(2 * value - 1e-9) / 2


@dataclass(frozen=True, slots=True)
class Middle:
    """A runner between the outer ones, under a divider or over one: its key, its sides and where it is held (x)."""

    key: str
    left: float
    right: float
    held: float


MIDDLE_MM = 45.0
"""Width of a runner under a wide drawer's middle (common practice)."""


def under_wide(plan: CasePlan, key: str, left: float, right: float) -> tuple[Middle, ...]:
    """The runner under the middle of a drawer, where the piece wants one under drawers so wide.

    Args:
        key: the drawer's.
        left, right: world x of its opening.
    """
    over = plan.design.frame.middle_over
    if over is None or right - left <= over:
        return ()
    at = (left + right) / 2
    return (Middle(key.replace(".", "-"), at - MIDDLE_MM / 2, at + MIDDLE_MM / 2, at),)


@dataclass(frozen=True, slots=True)
class FramePlace:
    """Where a web frame lies.

    Attributes:
        key: of its id, `frame.KEY`.
        top: its upper face, world z, mm.
        words: what it is called.
        beside: what stands on the outer runners between side and drawer, mm, guides left out.
        middles: runners between the outer ones.
        face: what its face rail is called; "" where it has none.
    """

    key: str
    top: float
    words: str
    beside: float = 0.0
    middles: tuple[Middle, ...] = ()
    face: str = ""


def runner_bearing(plan: CasePlan, beside: float) -> float:
    """Clear width of the outer runners from the side's face inwards, mm: all that stands or slides on them."""
    drawer_side = plan.stocks.of("drawer.side").thickness
    least = drawer_side + 2.0 + BEARING_MM + beside + plan.guide
    given = plan.design.frame.runner
    if plan.design.frame.dust_panels:
        # room for a tenon between what the dado and the panel's groove take
        least = max(least, 8.0 + LEAST_TENON_MM + frame_size(plan).groove + 2.0)
    return max(least, given - plan.dado if given is not None else 45.0 - plan.dado)


def lay_frame(bench: Bench, plan: CasePlan, place: FramePlace) -> None:
    """Lay and join a web frame in its place; one like another that is laid already is laid after that one."""
    if place.middles:
        _lay_anew(bench, plan, place)
        return
    pattern = ("web-frame", id(plan), place.beside, bool(place.face))
    words = (place.words, place.face) if place.face else (place.words,)
    lay_alike(bench, pattern, Place(place.key, place.top, words), lambda: _lay_anew(bench, plan, place), _names)


def _names(first: Place, other: Place) -> Names:
    """What of a frame's ids and words is another frame's."""
    ids = [(f"{kind}.{first.key}", f"{kind}.{other.key}") for kind in ("frame", "rail")]
    return [*ids, *zip(first.words, other.words, strict=True)]


def _lay_anew(bench: Bench, plan: CasePlan, place: FramePlace) -> None:
    size, choice, stock = frame_size(plan), plan.design.frame, plan.stocks.of("frame")
    low, high = place.top - stock.thickness, place.top
    rear_rail = size.rear - (choice.rear_rail or choice.rail)

    def rail(end: str, y0: float, y1: float, fixing: Fixing) -> Blank:
        box = Box(plan.left, plan.right, y0, y1, low, high)
        words = f"{end} rail, {place.words}"
        id = f"frame.{place.key}.{end}"
        return bench.lay(id, words, f"frame.{end}", stock, box, u="+x", w="+z", fixing=fixing)

    middle = plan.width / 2
    shoulder = size.front + choice.rail
    if rear_rail - shoulder < LEAST_RUNNER_MM:
        right = f"expected at most {choice.rail - (LEAST_RUNNER_MM - rear_rail + shoulder) / 2:.0f} mm, for its runners"
        raise CannotBuild([fault("frame.rail", f"{choice.rail:g} mm", right)])
    front = rail("front", size.front, shoulder, Fixing("", (middle, size.front, high)))
    both = choice.fixing == "front-and-rear"
    bearing = runner_bearing(plan, place.beside)
    # A frame fixed in front only carries its rear rail on its runners; each is held where it doesn't move sideways.
    on_runner = Fixing(f"frame.{place.key}.runner-left", (_held_at(plan, place, "left"), rear_rail, high))
    rear = rail("rear", rear_rail, size.rear, Fixing("side.left", (middle, size.rear, high)) if both else on_runner)
    spans = [
        ("left", plan.left, plan.left + bearing, _held_at(plan, place, "left")),
        ("right", plan.right - bearing, plan.right, _held_at(plan, place, "right")),
        *((f"middle-{one.key}", one.left, one.right, one.held) for one in place.middles),
    ]
    between = (shoulder, rear_rail - size.gap)
    runners = [_runner(bench, plan, place, which, (x0, x1), between, at) for which, x0, x1, at in spans]
    facing = [lay_face_rail(bench, plan, place.key, high, place.face)] if place.face else []
    whole = Box(plan.left, plan.right, 0.0 if facing else plan.front, size.rear, low, high)
    # A runner's width moves, the dado's floor doesn't: its outer edge keeps clear of it.
    clear = {one.id: plan.season.gain(_width(one) + plan.dado, stock) + PLAY_MM for one in runners[:2]}
    dry = () if both else (rear.id,)
    frame = f"frame.{place.key}"
    guests = (*facing, front, rear, *runners)
    stand_in_sides(bench, plan, frame, guests, whole, guest_front=whole.y0, short=clear, dry=dry, through=bool(facing))
    for one in facing:
        shape_face_rail(bench, plan, one, front)
    let_in = ((0.0, plan.dado), (plan.dado, 0.0), *((0.0, 0.0) for _ in place.middles))
    for number, (runner, dados) in enumerate(zip(runners, let_in, strict=True)):
        runner.shoulders = rear_rail - size.gap - shoulder
        # beside a dust panel the tenon is as thick as the panel, so that its haunch fills the groove
        thickness = plan.stocks.of("frame.panel").thickness if size.groove else stock.thickness / 3
        room = plan.season.gain(_width(runner), stock) + 0.1
        edge = 8.0 if not size.groove else size.groove + 2.0
        # no panel lies beside an outer runner's outer edge
        inset = (
            (8.0 if number == 1 and dados[0] else edge) + dados[0],
            (8.0 if number == 0 and dados[1] else edge) + dados[1],
        )
        square = choice.mortise == "square"
        front_joint = Tenon(
            thickness, inset, size.front_tenon, size.front_tenon + 2.0, room=room, radius=plan.radius, square=square
        )
        mortise_and_tenon(bench, front, runner, "-y", front_joint, glued=True, purpose=runner.name)
        rear_joint = replace(front_joint, length=size.rear_tenon, mortise=size.rear_tenon + 2.0, gap=size.gap)
        mortise_and_tenon(bench, rear, runner, "+y", rear_joint, glued=choice.fixing == "front", purpose=runner.name)
        if size.groove:
            haunch(plan, runner, front.id, rear.id, size.groove)
    if size.groove:
        lay_panels(bench, plan, place.key, place.words, front, rear, runners, size.groove, size.gap)


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
    words = re.sub("^middle-(.*)", lambda found: f"middle at {found[1].replace('-', '.')}", which)
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
    beside = plan.guide + place.beside - half if place.beside else runner_bearing(plan, 0.0) / 2
    return plan.left + beside if hand == "left" else plan.right - beside
