"""Members of a case: two mirrored sides, panels between them, a top in one of three joints, the back."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping, Sequence
from types import MappingProxyType

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import Housing, house, into_face
from shopdraw.shape.path import polygon
from shopdraw.wood.board import Fixing, Stock

SQUARE_END = "square by chisel at its upper end"


def lay_sides(bench: Bench, plan: CasePlan, profile: Sequence[tuple[float, float]]) -> tuple[Blank, Blank]:
    """Lay both sides, a mirrored pair from one description: grain up, inside face as reference.

    Args:
        profile: their outline in the side view, (y, z) in the world, mm.
    """
    return _side(bench, plan, "left", profile), _side(bench, plan, "right", profile)


def _side(bench: Bench, plan: CasePlan, hand: str, profile: Sequence[tuple[float, float]]) -> Blank:
    t = plan.side.thickness
    x0 = 0.0 if hand == "left" else plan.width - t
    front = plan.side_front
    box = Box(x0, x0 + t, front, plan.depth, plan.foot, plan.side_top)
    side = bench.lay(
        f"side.{hand}",
        f"side, {hand}",
        "side",
        plan.side,
        box,
        u="+z",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", (x0, front, plan.foot)),
    )
    points = [side.frame.local((x0, y, z)) for y, z in profile]
    side.outline = polygon((p[0], p[1]) for p in points)
    return side


def square_profile(plan: CasePlan) -> tuple[tuple[float, float], ...]:
    """The outline of a side without a slant, (y, z)."""
    return (
        (plan.front, plan.foot),
        (plan.depth, plan.foot),
        (plan.depth, plan.side_top),
        (plan.front, plan.side_top),
    )


def lay_across(
    bench: Bench, plan: CasePlan, id: str, name: str, member: str, top: float, front: float | None = None
) -> Blank:
    """Lay a solid panel between the sides, grain left to right, fixed at its front edge."""
    stock = plan.stocks.of(member)
    y0 = plan.front + forward_of(plan, stock) if front is None else front
    box = Box(plan.left, plan.right, y0, plan.rear - rear_gap(plan, stock), top - stock.thickness, top)
    held = Fixing("", (plan.width / 2, plan.side_front, top))
    return bench.lay(id, name, member, stock, box, u="+x", w="+z", fixing=held)


def forward_of(plan: CasePlan, stock: Stock) -> float:
    """How far behind the front plane a panel between the sides begins, mm.

    It is glued to them behind their strips, and what lies before that comes forward when it swells.
    """
    return math.ceil(10 * plan.season.gain(plan.strip_depth, stock)) / 10


def rear_gap(plan: CasePlan, stock: Stock) -> float:
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
    plan: CasePlan,
    guest_id: str,
    guests: tuple[Blank, ...],
    box: Box,
    *,
    guest_front: float,
    short: Mapping[str, float] = MappingProxyType({}),
    dry: Collection[str] = (),
    rear: float | None = None,
    through: bool = False,
) -> None:
    """House a shelf or a frame in dados of both sides; the dado's lower edge carries it, its fit lies above.

    Behind a face frame, strips or face rails the dados run through, since nothing shows of them; the guests are
    notched round the strips.

    Args:
        through: the dados run out in front, whatever the case's are.
        rear: world y at which the dados end behind, where they don't run out there.
    """
    case = plan.design.case
    how = Housing(
        depth=plan.dado,
        fit=case.fit,
        relief=case.relief,
        stop=case.dado_stop if case.dado == "stopped" and plan.side_front == 0.0 and not through else None,
        radius=plan.radius,
        closed=rear is not None,
    )
    for hand, into, x in (("left", "-x", plan.left), ("right", "+x", plan.right)):
        section = box.with_side(into, x)._replace(y1=plan.depth if rear is None else rear)
        section = section._replace(y0=max(section.y0, plan.side_front))
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
        if plan.strip_depth:
            _round_strip(plan, hand, ends)


def _round_strip(plan: CasePlan, hand: str, guests: Sequence[Blank]) -> None:
    """Notch what reaches to the front round a strip, with room for the season in which either comes nearer."""
    for guest in guests:
        box = guest.box()
        if box.y0 >= plan.strip_depth:
            continue
        edge = plan.strip if box.z0 < plan.strip_cut - 1e-6 else plan.side.thickness
        edge += 0.1 + plan.season.gain(plan.strip, plan.stocks.of("strip"))
        room = 0.1 + plan.season.loss(plan.strip_depth, guest.stock) * 1.1
        corner = box._replace(y0=box.y0 - 1.0, y1=plan.strip_depth + room)
        corner = corner._replace(x1=edge) if hand == "left" else corner._replace(x0=plan.width - edge)
        into = into_face(guest)
        guest.sink_box("notch", corner, into, id=f"notch:{guest.id}:strip.{hand}", purpose=f"round the strip, {hand}")


def back_upper(plan: CasePlan) -> float:
    """Upper edge of the back's rabbets: half the top's thickness over its underside; under a top that lies over all."""
    thickness = plan.stocks.of("top").thickness
    if plan.design.case.top_joint == "overhanging":
        return plan.side_top
    return plan.height - thickness / 2


def rabbet_sides(bench: Bench, plan: CasePlan) -> None:
    """Cut the rabbets for the back into both sides."""
    words = "back" if back_upper(plan) >= plan.side_top - 1e-6 else f"back, {SQUARE_END}"
    for hand, into, x in (("left", "-x", plan.left), ("right", "+x", plan.right)):
        other = x - plan.rabbet_width if hand == "left" else x + plan.rabbet_width
        box = Box(min(x, other), max(x, other), plan.rear, plan.depth, plan.foot, back_upper(plan))
        bench[f"side.{hand}"].sink_box("rabbet", box, into, id=f"rabbet:side.{hand}:back", purpose=words)


def rabbet_top(top: Blank, plan: CasePlan) -> None:
    """Cut the rabbet for the back into the rear of a top that stands between the sides."""
    t = plan.stocks.of("top").thickness
    rear = Box(-1.0, plan.width + 1.0, plan.rear, plan.depth, plan.height - t, back_upper(plan))
    top.sink_box("rabbet", rear, "+z", id="rabbet:top:back", purpose="back")


def housed_top(bench: Bench, plan: CasePlan, top: Blank, sides: tuple[Blank, Blank]) -> None:
    """Let the top's ends into rabbets at the sides' upper ends; the sides' outer faces reach the full height."""
    for side, into, x in zip(sides, ("-x", "+x"), (plan.left, plan.right), strict=True):
        section = top.box().with_side(into, x)._replace(y0=plan.front, y1=plan.depth)
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
