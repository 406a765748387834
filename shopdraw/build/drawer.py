"""Drawers: front (inset, lipped or overlay), two sides, back, and a bottom in grooves under the back."""

from __future__ import annotations

import math
from dataclasses import replace

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.drawer_face import mould_front, screw_overlay
from shopdraw.build.drawer_joint import GROOVE_SHARE, back_inset, join_back, join_front
from shopdraw.build.drawer_size import DrawerSize, drawer_size
from shopdraw.build.handle import lay_handles
from shopdraw.build.joinery import Housing, house
from shopdraw.build.repeat import Names, Place, lay_alike
from shopdraw.build.screw import wood_screws
from shopdraw.build.slot import across_slot, open_slot
from shopdraw.wood.assembly import Motion
from shopdraw.wood.board import Face, Fixing

LEAST_BACK_MM = 15.0
"""No back lower than this (common practice)."""
INSIDE_SHARE = 0.25
"""Share of the box that stays in the case when a drawer is pulled (common practice)."""
BOTTOM_SCREWS = 3
SCREW_MM = 4.0
"""Diameter of the slots for a solid bottom's screws (common practice)."""
SLOT_ROOM_MM = 1.0
"""Added to what a solid bottom moves."""
LEAST_BEHIND_SLOT_MM = 5.0
"""Wood behind a slot's end (common practice)."""
FROM_SIDE_MM = 25.0
"""From the box's inner faces to the bottom's outer screws (common practice)."""


def lay_drawers(bench: Bench, plan: CasePlan) -> None:
    """Lay every drawer of the bank, from the top down."""
    for row in plan.rows:
        lay_drawer(bench, plan, row, drawer_size(plan, row))


def lay_drawer(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize) -> None:
    """Lay one drawer, with the plan's stocks and choices for it, in any place that its size says.

    One like another that is laid already is laid after that one.
    """
    if row.key in plan.design.drawer.each:
        _lay_anew(bench, plan, row, size)
        return
    inner = None if size.inner is None else _from(size.inner, row.floor)
    sizes = replace(size, box=_from(size.box, row.floor), front=_from(size.front, row.floor), inner=inner)
    pattern = ("drawer", id(plan), round(row.left, 9), round(row.right, 9), round(row.height, 9), sizes)
    lay_alike(bench, pattern, Place(row.key, row.floor), lambda: _lay_anew(bench, plan, row, size), _names)


def _from(box: Box, floor: float) -> Box:
    """A box as it lies over a floor, to what a double holds of it."""
    return Box(*(round(value, 9) for value in (*box[:4], box.z0 - floor, box.z1 - floor)))


def _names(first: Place, other: Place) -> Names:
    """What of a drawer's ids and words is another drawer's."""
    return [(f"drawer{sign}{first.key}", f"drawer{sign}{other.key}") for sign in ". "]


def _lay_anew(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize) -> None:
    front = _front(bench, plan, row, size)
    entered = front if size.inner is None else _inner_front(bench, plan, row, size.inner)
    sides = {hand: _side(bench, plan, row, size, hand) for hand in ("left", "right")}
    join_front(bench, plan, row, size, entered, sides)
    back = _back(bench, plan, row, size, sides)
    bottom = _bottom(bench, plan, row, size, entered, sides)
    if entered is not front:
        screw_overlay(bench, plan, front, entered)
    mould_front(plan, row, size, front)
    drawer = f"drawer.{row.key}"
    own = {board.id: None for board in (front, entered, sides["left"], sides["right"], back, bottom)}
    length = size.box.y1 - size.shoulder
    bench.motions.append(
        Motion(
            drawer, tuple(own), "slide", (size.box.x0, 0.0, row.floor), (0.0, -1.0, 0.0), (1 - INSIDE_SHARE) * length
        )
    )
    lay_handles(bench, plan, row, front)
    on = (bottom.id, back.id)
    high = back.box().z1 - back.box().z0
    bench.hardware.append(
        wood_screws(plan, f"screw:{drawer}.bottom", BOTTOM_SCREWS, on, bottom.stock.thickness, high)
    )


def _front(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize) -> Blank:
    """The front that shows; a lipped one is rabbeted on each edge that has a lip."""
    middle = (size.front.x0 + size.front.x1) / 2
    front = bench.lay(
        f"drawer.{row.key}.front",
        f"drawer {row.key}, front",
        "drawer.front",
        plan.stocks.of("drawer.front"),
        size.front,
        u="-x",
        w="+y",
        fixing=Fixing("", (middle, 0.0, row.floor)),
    )
    if size.lipped:
        box, face, lip, lips = size.box, size.front, size.front.y0 + size.lip_thickness, size.lips
        spans = {
            "left": (lips.left, face._replace(x1=box.x0)),
            "right": (lips.right, face._replace(x0=box.x1)),
            "lower": (lips.bottom, face._replace(z1=box.z0)),
            "upper": (lips.top, face._replace(z0=box.z1)),
        }
        for where, (reach, span) in spans.items():
            if reach:
                front.sink_box(
                    "rabbet", span._replace(y0=lip), "-y", id=f"rabbet:{front.id}:{where}", purpose=f"lip, {where}"
                )
    return front


def _inner_front(bench: Bench, plan: CasePlan, row: Row, box: Box) -> Blank:
    """The box's own front behind an overlay front."""
    return bench.lay(
        f"drawer.{row.key}.box-front",
        f"drawer {row.key}, front of the box",
        "drawer.box-front",
        plan.stocks.of("drawer.box-front"),
        box,
        u="-x",
        w="+y",
        fixing=Fixing("", ((box.x0 + box.x1) / 2, 0.0, row.floor)),
    )


def _side(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, hand: str) -> Blank:
    """A side from the front's inner shoulder to the box's rear end; inner face as reference."""
    stock = plan.stocks.of("drawer.side")
    t = stock.thickness
    x0 = size.box.x0 if hand == "left" else size.box.x1 - t
    return bench.lay(
        f"drawer.{row.key}.side-{hand}",
        f"drawer {row.key}, side, {hand}",
        "drawer.side",
        stock,
        size.box._replace(x0=x0, x1=x0 + t),
        u="+y",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", (x0, 0.0, row.floor)),
    )


def _back(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, sides: dict[str, Blank]) -> Blank:
    """The back between the sides; it stands on the bottom."""
    stock, ply = plan.stocks.of("drawer.back"), plan.stocks.of("drawer.bottom")
    side = plan.stocks.of("drawer.side")
    y1 = size.box.y1 - back_inset(plan, row)
    over = _over_bottom(plan, row, ply.thickness)
    low = size.box.z0 + plan.length_choice(row.key, "groove_up") + ply.thickness + over
    high = size.box.z1 - plan.length_choice(row.key, "drop")
    if high - low < LEAST_BACK_MM:
        right = f"expected at least {LEAST_BACK_MM:g} mm: a higher opening, a lower groove or less drop"
        raise CannotBuild([fault(f"drawer.{row.key}", f"a back {high - low:.1f} mm high", right)])
    x0, x1 = size.box.x0 + side.thickness, size.box.x1 - side.thickness
    back = bench.lay(
        f"drawer.{row.key}.back",
        f"drawer {row.key}, back",
        "drawer.back",
        stock,
        Box(x0, x1, y1 - stock.thickness, y1, low, high),
        u="+x",
        w="-y",
        # it stands on the bottom, and keeps its place in the sides while a solid bottom moves under it
        fixing=Fixing(f"drawer.{row.key}.bottom", ((x0 + x1) / 2, size.shoulder, low)),
    )
    join_back(bench, plan, row, size, back, sides)
    return back


def _over_bottom(plan: CasePlan, row: Row, thick: float) -> float:
    """Between bottom and back, mm: the fit; a dovetailed back moves with the sides, the bottom with its groove."""
    fit = plan.design.case.fit
    if plan.choice(row.key, "back_joint") != "dovetail":
        return fit
    nearer = max(plan.season.loss(thick, plan.stocks.of(f"drawer.{name}")) for name in ("side", "front"))
    return max(fit, math.ceil(10 * nearer) / 10)


def _bottom(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, front: Blank, sides: dict[str, Blank]) -> Blank:
    """The bottom slides in from the rear under the back, in grooves of sides and front.

    A solid one has its grain from side to side: it is glued in front only, and moves in its grooves and slots.
    """
    stock, side, season = plan.stocks.of("drawer.bottom"), plan.stocks.of("drawer.side"), plan.season
    depth, fit = GROOVE_SHARE * side.thickness, plan.design.case.fit
    low = size.box.z0 + plan.length_choice(row.key, "groove_up")
    high = low + stock.thickness
    # A groove keeps its width and moves with the wood at its middle.
    middle = low + (stock.thickness + fit) / 2
    x0, x1 = size.box.x0 + side.thickness, size.box.x1 - side.thickness
    rear = size.box.y1 - back_inset(plan, row)
    grows, shrinks = season.gain(rear - size.shoulder, stock), season.loss(rear - size.shoulder, stock)
    solid = stock.kind == "solid"
    bottom = bench.lay(
        f"drawer.{row.key}.bottom",
        f"drawer {row.key}, bottom",
        "drawer.bottom",
        stock,
        Box(x0, x1, size.shoulder, min(rear, size.box.y1 - grows), low, high),
        u="+x",
        w="+z",
        fixing=Fixing(sides["left"].id, (x0, size.shoulder, middle)),
    )
    for hand, into, x in (("left", "-x", x0), ("right", "+x", x1)):
        section = Box(x, x, size.front.y0, size.box.y1, low, high)
        house(
            bench,
            "groove",
            sides[hand],
            bottom.id,
            (bottom,),
            section,
            into,
            Housing(depth, fit, relief=0.5),
            purpose=bottom.name,
            glued=False,
            floats=solid,
            gap=grows + shrinks,
        )
    across = Box(x0 - depth, x1 + depth, size.shoulder, size.shoulder, low, high)
    # Bottom and sides move alike; the front's groove is eased by what the front moves more or less than they do.
    up = middle - row.floor
    moves = bench[sides["left"].fixing.moves_with or sides["left"].id].stock
    ease = max(
        abs(season.gain(up, front.stock) - season.gain(up, moves)),
        abs(season.loss(up, front.stock) - season.loss(up, moves)),
    )
    how = Housing(min(depth, size.entry), fit, relief=0.5, ease=ease)
    house(bench, "groove", front, bottom.id, (bottom,), across, "-y", how, purpose=bottom.name, glued=solid)
    if solid:
        _slots(bottom, (x0, x1), rear - plan.stocks.of("drawer.back").thickness / 2, grows, shrinks)
    return bottom


def _slots(bottom: Blank, inside: tuple[float, float], at: float, grows: float, shrinks: float) -> None:
    """Slots for the screws into the back's lower edge, as long as the bottom moves to the front and to the rear."""
    outer = inside[0] + FROM_SIDE_MM, inside[1] - FROM_SIDE_MM
    for number in range(BOTTOM_SCREWS):
        x = outer[0] + (outer[1] - outer[0]) * number / (BOTTOM_SCREWS - 1)
        u, v, _ = bottom.frame.local((x, at, 0.0))
        first, last = v - grows - SLOT_ROOM_MM / 2, v + shrinks + SLOT_ROOM_MM / 2
        # too little wood behind it would break out: it runs out at the rear, as a saw makes it
        runs_out = last + SCREW_MM / 2 > bottom.high[1] - LEAST_BEHIND_SLOT_MM
        bottom.sink(
            "slot",
            Face.FACE,
            open_slot(u, first, bottom.high[1], SCREW_MM / 2)
            if runs_out
            else across_slot(u, first, last, SCREW_MM / 2),
            id=f"screw:{bottom.id}:drawer.back.{number + 1}",
            purpose="screw into the back, may slide",
        )


__all__ = ["DrawerSize", "drawer_size", "lay_drawer", "lay_drawers"]
