"""What stands in a case between its bottom and what closes it above: shelves, web frames, dividers, shelves on pins."""

from __future__ import annotations

from dataclasses import replace

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import lay_across, rear_gap, stand_in_sides
from shopdraw.build.case_plan import CasePlan, Level, Upright
from shopdraw.build.joinery import Housing, house
from shopdraw.build.level import pin_heights
from shopdraw.build.web_frame import BEARING_MM, FramePlace, Middle, lay_frame, runner_bearing, under_wide
from shopdraw.shape.path import circle
from shopdraw.wood.assembly import Hardware
from shopdraw.wood.board import Face, Fixing

UPRIGHT_SHARE = 1 / 6
"""Depth of a divider's dado as a share of its host: two that meet back to back are a third together."""
LEAST_RUNNER_MM = 45.0
BETWEEN_RUNNERS_MM = 10.0
"""Runners nearer to each other than this become one (common practice)."""
LEFT_BEHIND_PIN_MM = 3.0
"""Wood left behind a pin's hole (common practice)."""


def lay_stack(bench: Bench, plan: CasePlan) -> None:
    """Lay and join all levels and dividers; the bottom, and a frame or board above them, are laid before."""
    for level in plan.space.levels:
        if level.kind == "shelf":
            board = lay_across(bench, plan, level.id, f"shelf {_key(level.id)}", "shelf", level.top)
            stand_in_sides(bench, plan, level.id, (board,), board.box(), guest_front=plan.front)
        elif level.kind == "web-frame":
            words = f"web frame {_key(level.id)}"
            lay_frame(bench, plan, FramePlace(_key(level.id), level.top, words, middles=middles_of(plan, level.id)))
    for upright in plan.space.uprights:
        _lay_upright(bench, plan, upright)
    _lay_pinned(bench, plan)


def _key(level_id: str) -> str:
    return level_id.partition(".")[2]


def middles_of(plan: CasePlan, level_id: str) -> tuple[Middle, ...]:
    """The runners of a frame between its outer ones: at dividers, and under wide drawers where the piece wants that.

    Near ones become one.

    Raises:
        CannotBuild: a divider so near to a side that its runner would lie in the outer one.
    """
    stock = plan.stocks.of("divider")
    beside = plan.stocks.of("drawer.side").thickness + 2.0 + BEARING_MM
    half = max(LEAST_RUNNER_MM / 2, stock.thickness / 2 + beside)
    bearing = runner_bearing(plan, 0.0)
    found: list[Middle] = []
    uprights = [one for one in plan.space.uprights if level_id in (one.below, one.above)]
    for upright in sorted(uprights, key=lambda one: one.left):
        at = upright.left + stock.thickness / 2
        if at - half < plan.left + bearing or at + half > plan.right - bearing:
            least = half + bearing - stock.thickness / 2
            opening = upright.id.removeprefix("divider.")
            raise CannotBuild(
                [fault("opening", f"{upright.name} at {at - plan.left:.1f} mm from the side",
                       f"expected column {opening} at least {least:.1f} mm wide: its runner lies in the side's")]
            )  # fmt: skip
        one = Middle(upright.id.removeprefix("divider.").replace(".", "-"), at - half, at + half, at)
        if found and one.left < found[-1].right + BETWEEN_RUNNERS_MM:
            found[-1] = replace(found[-1], right=max(found[-1].right, one.right))
        else:
            found.append(one)
    for row in plan.rows:
        # a divider's runner near a wide drawer's middle carries that, too
        found += [
            one
            for one in (under_wide(plan, row.key, row.left, row.right) if row.level == level_id else ())
            if all(
                one.right + BETWEEN_RUNNERS_MM <= other.left or other.right + BETWEEN_RUNNERS_MM <= one.left
                for other in found
            )
        ]
    return tuple(sorted(found, key=lambda one: one.left))


def _lay_upright(bench: Bench, plan: CasePlan, upright: Upright) -> None:
    """A divider, grain up as the sides have it, so that it moves as they do; held and glued in front.

    It stands in shallow dados below and above, which are stopped in front and open behind: it comes in from the rear.
    """
    stock = plan.stocks.of("divider")
    x0, x1 = upright.left, upright.left + stock.thickness
    middle = (x0 + x1) / 2
    rear = plan.rear - rear_gap(plan, stock)
    board = bench.lay(
        upright.id,
        upright.name,
        "divider",
        stock,
        Box(x0, x1, plan.front, rear, upright.floor, upright.ceiling),
        u="+z",
        w="+x",
        fixing=Fixing("", (middle, plan.front, upright.floor)),
    )
    for level, into, z in ((upright.below, "-z", upright.floor), (upright.above, "+z", upright.ceiling)):
        for number, (host, y0, y1, off) in enumerate(_hosts(bench, plan, level, middle)):
            depth = UPRIGHT_SHARE * _thickness(host)
            if number:
                # it has grown into the first of the boards that share its dado, and grows no further
                board.grow(into, -depth)
            _let_in(bench, plan, host, board, Box(x0, x1, y0, y1, z, z), into, depth, first=number == 0, off=off)


def _hosts(bench: Bench, plan: CasePlan, level: str, x: float) -> tuple[tuple[Blank, float, float, float], ...]:
    """The boards of a level that a divider at x stands in, from the front: each with its y and how far off its hold."""
    if level in bench.blanks:
        board = bench[level]
        return ((board, plan.front, board.box().y1, 0.0),)
    front, rear = bench[f"{level}.front"], bench[f"{level}.rear"]
    runner = next(one for one in middles_of(plan, level) if one.left < x < one.right)
    first, last = front.box().y1, rear.box().y0
    off = x - runner.held
    return (
        (front, plan.front, first, 0.0),
        (bench[f"{level}.runner-middle-{runner.key}"], first, last, off),
        (rear, last, rear.box().y1, 0.0),
    )


def _thickness(board: Blank) -> float:
    return board.high[2] - board.low[2]


def _let_in(
    bench: Bench,
    plan: CasePlan,
    host: Blank,
    guest: Blank,
    box: Box,
    into: str,
    depth: float,
    *,
    first: bool,
    off: float,
) -> None:
    """Let a divider into one board of a level; only in the foremost one it is glued, and the dado stopped."""
    fit = plan.design.case.fit
    ease = max(plan.season.gain(abs(off), host.stock), plan.season.loss(abs(off), host.stock))
    stopped = first and plan.front == 0.0
    how = Housing(
        depth, fit, "+x", stop=plan.design.case.dado_stop if stopped else None, radius=plan.radius, ease=ease
    )
    section = box._replace(x0=box.x0 - fit / 2, x1=box.x1 - fit / 2)
    front = plan.front if stopped else None
    house(
        bench, "dado", host, guest.id, (guest,), section, into, how, purpose=guest.name, guest_front=front,
        glued=first, floats=not first,
    )  # fmt: skip


def _lay_pinned(bench: Bench, plan: CasePlan) -> None:
    """Shelves that lie on pins, and the rows of holes for them in both sides."""
    fixed = [level for level in plan.space.levels if level.kind != "pinned-shelf"]
    floors = [plan.bottom_top, *(level.top for level in fixed)]
    ceilings = [*(level.under for level in fixed), plan.closed_at]
    for floor, ceiling in zip(floors, ceilings, strict=True):
        shelves = [v for v in plan.space.levels if v.kind == "pinned-shelf" and floor < v.under < ceiling]
        for shelf in shelves:
            _refuse_through_upright(plan, shelf)
            _lay_loose(bench, plan, shelf)
        if shelves:
            _bore_sides(bench, plan, pin_heights(plan, shelves, floor, ceiling), bench[shelves[0].id].box())


def _refuse_through_upright(plan: CasePlan, shelf: Level) -> None:
    """A loose shelf runs from side to side: no divider may stand where it lies."""
    for upright in plan.space.uprights:
        if upright.floor < shelf.top and shelf.under < upright.ceiling:
            opening = upright.id.removeprefix("divider.").partition(".")[0]
            raise CannotBuild(
                [fault(f"level.{_key(shelf.id)}.member", '"pinned-shelf"',
                       f'expected "shelf": opening {opening} is divided by columns where it lies, and a shelf on pins '
                       f"would run through {upright.name}; or leave opening.{opening}.divide out")]
            )  # fmt: skip


def _lay_loose(bench: Bench, plan: CasePlan, level: Level) -> None:
    pins, stock = plan.design.pins, plan.stocks.of("shelf")
    box = Box(
        plan.left + pins.play / 2,
        plan.right - pins.play / 2,
        plan.front,
        plan.usable - rear_gap(plan, stock),
        level.under,
        level.top,
    )
    middle = plan.width / 2
    held = Fixing("", (middle, plan.front, level.top))
    bench.lay(level.id, f"shelf {_key(level.id)}, on pins", "shelf.loose", stock, box, u="+x", w="+z", fixing=held)
    sizes = (("diameter", pins.diameter),)
    bench.hardware.append(Hardware(f"pin:{level.id}", "shelf pin", 4, (level.id, "side.left", "side.right"), sizes))


def _bore_sides(bench: Bench, plan: CasePlan, heights: tuple[float, ...], shelf: Box) -> None:
    """Two rows of holes in each side, before and behind, alike on both."""
    pins = plan.design.pins
    depth = min(pins.depth, plan.side.thickness - LEFT_BEHIND_PIN_MM)
    if 2 * pins.setback >= shelf.y1 - shelf.y0:
        most = (shelf.y1 - shelf.y0) / 2
        raise CannotBuild([fault("pins.setback", f"{pins.setback:g} mm", f"expected less than {most:.1f} mm")])
    for hand, x in (("left", plan.left), ("right", plan.right)):
        side = bench[f"side.{hand}"]
        for row, y in (("front", shelf.y0 + pins.setback), ("rear", shelf.y1 - pins.setback)):
            for z in heights:
                u, v, _ = side.frame.local((x, y, z))
                number = sum(cut.id.startswith(f"pin:{side.id}:{row}.") for cut in side.cuts) + 1
                side.sink(
                    "bore", Face.FACE, circle((u, v), pins.diameter / 2), floor=-depth,
                    id=f"pin:{side.id}:{row}.{number}", purpose=f"shelf pin, {row} row",
                )  # fmt: skip
