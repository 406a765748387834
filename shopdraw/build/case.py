"""The case: two mirrored sides, bottom, writing shelf, top and back."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping
from types import MappingProxyType

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.dovetail import dovetailed_top
from shopdraw.build.joinery import Housing, butt, house
from shopdraw.build.plan import Plan
from shopdraw.build.slant import top_flat
from shopdraw.build.top_edge import bevel_kept, slanted_edge
from shopdraw.shape.path import polygon
from shopdraw.wood.board import Fixing, Stock

SQUARE_END = "square by chisel at its upper end"


def lay_case(bench: Bench, plan: Plan) -> None:
    """Lay and join the boards of the case."""
    left, right = _side(bench, plan, "left"), _side(bench, plan, "right")
    bottom = _across(bench, plan, "bottom", "bottom", "bottom", plan.bottom_top)
    # The shelf's front edge stands half the joint gap behind the pin, and never before the front plane.
    front = max(0.0, plan.slant.pin[0] + plan.slant.joint_gap / 2)
    shelf = _across(bench, plan, "shelf.writing", "writing shelf", "shelf", plan.writing, front)
    _back_rabbets(bench, plan)
    top = _top(bench, plan)
    for board in (bottom, shelf):
        stand_in_sides(bench, plan, board.id, (board,), board.box(), guest_front=board.box().y0)
    if plan.design.case.top_joint == "dovetail":
        dovetailed_top(bench, plan, top, (left, right))
    else:
        _housed_top(bench, plan, top, (left, right))
    _back(bench, plan, top)


def _side(bench: Bench, plan: Plan, hand: str) -> Blank:
    """A side panel: grain up, inside face as reference, slant cut at the upper front."""
    s, t = plan.slant, plan.side.thickness
    x0 = 0.0 if hand == "left" else plan.width - t
    box = Box(x0, x0 + t, 0.0, plan.depth, plan.foot, plan.height)
    side = bench.lay(
        f"side.{hand}",
        f"side, {hand}",
        "side",
        plan.side,
        box,
        u="+z",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", (x0, 0.0, plan.foot)),
    )
    profile = [(0.0, plan.foot), (plan.depth, plan.foot), (plan.depth, plan.height), (s.run, plan.height), (0.0, s.z0)]
    points = [side.frame.local((x0, y, z)) for y, z in profile]
    side.outline = polygon((p[0], p[1]) for p in points)
    return side


def _across(bench: Bench, plan: Plan, id: str, name: str, member: str, top: float, front: float = 0.0) -> Blank:
    """A solid panel between the sides, grain left to right, fixed at its front edge."""
    stock = plan.stocks.of(member)
    box = Box(plan.left, plan.right, front, plan.rear - rear_gap(plan, stock), top - stock.thickness, top)
    return bench.lay(id, name, member, stock, box, u="+x", w="+z", fixing=Fixing("", (plan.width / 2, 0.0, top)))


def rear_gap(plan: Plan, stock: Stock) -> float:
    """How far short of the back a panel fixed in front ends, mm, where its wood moves otherwise than the sides'.

    Nothing when both move alike; else the difference in the season in which the panel would push the back off.
    """
    if abs(stock.coefficient - plan.side.coefficient) < 1e-9:
        return 0.0
    wet = plan.season.gain(plan.rear, stock) - plan.season.gain(plan.depth, plan.side)
    dry = plan.season.loss(plan.depth, plan.side) - plan.season.loss(plan.rear, stock)
    return math.ceil(max(wet, dry, 0.0) + 0.5)


def stand_in_sides(
    bench: Bench,
    plan: Plan,
    guest_id: str,
    guests: tuple[Blank, ...],
    box: Box,
    *,
    guest_front: float,
    short: Mapping[str, float] = MappingProxyType({}),
    dry: Collection[str] = (),
) -> None:
    """House a shelf or a frame in dados of both sides; the dado's lower edge carries it, its fit lies above."""
    case = plan.design.case
    how = Housing(
        depth=plan.dado,
        fit=case.fit,
        relief=case.relief,
        stop=case.dado_stop if case.dado == "stopped" else None,
        radius=plan.radius,
    )
    for hand, into, x in (("left", "-x", plan.left), ("right", "+x", plan.right)):
        section = box.with_side(into, x)._replace(y1=plan.depth)
        ends = tuple(guest for guest in guests if abs(guest.box().side(into) - x) < 1e-6)
        house(
            bench,
            "dado",
            bench[f"side.{hand}"],
            guest_id,
            ends,
            section,
            into,
            how,
            purpose=guest_id,
            guest_front=guest_front,
            short=short,
            dry=dry,
        )


def back_upper(plan: Plan) -> float:
    """Upper edge of the back's rabbets: half the top's thickness over its underside."""
    thickness = plan.stocks.of("top").thickness
    return plan.height - thickness / 2


def _back_rabbets(bench: Bench, plan: Plan) -> None:
    for hand, into, x in (("left", "-x", plan.left), ("right", "+x", plan.right)):
        other = x - plan.rabbet_width if hand == "left" else x + plan.rabbet_width
        box = Box(min(x, other), max(x, other), plan.rear, plan.depth, plan.foot, back_upper(plan))
        bench[f"side.{hand}"].sink_box(
            "rabbet", box, into, id=f"rabbet:side.{hand}:back", purpose=f"back, {SQUARE_END}"
        )


def _top(bench: Bench, plan: Plan) -> Blank:
    """The top, ripped to the slant in front, its sharp lower corner squared off, its rear rabbeted for the back."""
    s, stock = plan.slant, plan.stocks.of("top")
    t = stock.thickness
    alpha = math.radians(s.alpha)
    bevel = bevel_kept(plan)
    nose = bevel * math.cos(alpha) if bevel < t / math.sin(alpha) - 1e-9 else t / math.tan(alpha)
    front = s.run - nose
    # Held where its front meets the sides, so that it moves with them.
    box = Box(plan.left, plan.right, front, plan.depth, plan.height - t, plan.height)
    top = bench.lay(
        "top",
        "top",
        "top",
        stock,
        box,
        u="+x",
        w="+z",
        fixing=Fixing("side.left", (plan.width / 2, s.run, plan.height)),
    )
    slanted_edge(top, plan, bevel)
    rear = Box(-1.0, plan.width + 1.0, plan.rear, plan.depth, plan.height - t, back_upper(plan))
    top.sink_box("rabbet", rear, "+z", id="rabbet:top:back", purpose="back")
    return top


def _housed_top(bench: Bench, plan: Plan, top: Blank, sides: tuple[Blank, Blank]) -> None:
    """Let the top's ends into rabbets at the sides' upper ends; the sides' outer faces reach the full height."""
    for side, into, x in zip(sides, ("-x", "+x"), (plan.left, plan.right), strict=True):
        section = top.box().with_side(into, x)._replace(y0=0.0, y1=plan.depth)
        house(
            bench,
            "rabbet",
            side,
            "top",
            (top,),
            section,
            into,
            Housing(depth=plan.dado, fit=0.0, relief=plan.design.case.relief),
            purpose="top",
        )


def _back(bench: Bench, plan: Plan, top: Blank) -> None:
    """Plywood in the rear rabbets, smaller than its seat by its clearance each way; it squares the case."""
    stock, play = plan.stocks.of("back"), plan.design.back.clearance / 2
    low = plan.bottom_top - plan.stocks.of("bottom").thickness
    box = Box(
        plan.left - plan.rabbet_width + play,
        plan.right + plan.rabbet_width - play,
        plan.rear,
        plan.rear + stock.thickness,
        low,
        back_upper(plan) - 2 * play,
    )
    back = bench.lay(
        "back", "back", "back", stock, box, u="+z", w="-y", fixing=Fixing("side.left", (plan.width / 2, plan.rear, low))
    )
    for host in (bench["side.left"], bench["side.right"], bench["bottom"], bench["shelf.writing"], top):
        butt(bench, host, back, glued=False)


def top_flat_of(plan: Plan) -> float:
    """The flat that squares off the top's sharp lower corner, mm; 0 when the bevel takes the whole edge."""
    return max(0.0, top_flat(plan.stocks.of("top").thickness, bevel_kept(plan), plan.slant.alpha))
