"""How a drawer's sides meet its front and its back: tongues, rabbets, dados, dovetails; each from one body."""

from __future__ import annotations

import math
from dataclasses import replace

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.drawer_size import DrawerSize
from shopdraw.build.joinery import Housing, house, into_face
from shopdraw.build.tails import NoRoom, Tails, in_plane, prism_body, slope_of, tails_along, trapezoid
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Face, Fixing

GROOVE_SHARE = 0.4
"""Depth of grooves and dados in drawer sides, as a share of their thickness (common practice: half at most)."""
BACK_INSET_MM = 12.0
"""The back's dado stands this far from the sides' rear ends, at least."""
RABBET_SHARE = 0.5
"""Depth of rabbets for the back in drawer sides, as a share of their thickness (common practice)."""
TAIL_MM = 32.0
"""About how wide a tail of a drawer is (common practice)."""
LEAST_PIN_MM = 3.0
"""No pin and no half pin of a drawer narrower than this at its narrow side (common practice)."""
ROUND_GROOVE_MM = 1.5
"""Wood of the lowest tail above and below the bottom's groove (common practice)."""
SLIDING_STOP_MM = 10.0
"""A sliding dovetail stops this far below the side's upper edge (common practice)."""


def back_inset(plan: CasePlan, row: Row) -> float:
    """How far the back's rear face lies before the sides' rear ends, mm: a dado needs wood behind it."""
    return BACK_INSET_MM if plan.choice(row.key, "back_joint") == "dado" else 0.0


def back_entry(plan: CasePlan, row: Row) -> float:
    """How far the back enters each side, mm."""
    t = plan.stocks.of("drawer.side").thickness
    return {"dado": GROOVE_SHARE * t, "rabbet": RABBET_SHARE * t, "dovetail": t}[
        str(plan.choice(row.key, "back_joint"))
    ]


def groove_span(plan: CasePlan, row: Row) -> tuple[float, float]:
    """From the box's lower edge to the lower and the upper wall of the bottom's groove, mm."""
    low = plan.length_choice(row.key, "groove_up")
    return low, low + plan.stocks.of("drawer.bottom").thickness + plan.design.case.fit


def join_front(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, front: Blank, sides: dict[str, Blank]) -> None:
    """Join both sides to the front that they enter, the way that the piece chooses."""
    how = plan.choice(row.key, "front_joint")
    for hand, side in sides.items():
        if how == "dovetail":
            _dovetailed(bench, plan, row, size, front, side, hand)
        elif how == "sliding":
            _sliding(bench, plan, row, size, front, side, hand)
        else:
            _tongue_or_rabbet(bench, plan, size, front, side, hand, tongue=how == "tongue")


def _tongue_or_rabbet(
    bench: Bench, plan: CasePlan, size: DrawerSize, front: Blank, side: Blank, hand: str, *, tongue: bool
) -> None:
    """A tongue on the side in a groove of the front, or the side's whole end in a rabbet."""
    stock, fit = plan.stocks.of("drawer.side"), plan.design.case.fit
    box, entered = side.box(), size.entered
    half = stock.thickness / 2 if tongue else stock.thickness
    # The tongue stands on the inner half of the side's thickness.
    x0, x1 = (box.x1 - half, box.x1) if hand == "left" else (box.x0, box.x0 + half)
    section = Box(x0, x1, entered.y1, entered.y1, entered.z0, entered.z1)
    how = Housing(size.entry, fit if tongue else 0.0, "-x" if hand == "left" else "+x")
    house(bench, "groove" if tongue else "rabbet", front, side.id, (side,), section, "-y", how, purpose=side.name)
    if tongue:
        end = side.box()
        cheek = end._replace(y1=entered.y1)
        cheek = cheek._replace(x1=end.x1 - half) if hand == "left" else cheek._replace(x0=end.x0 + half)
        into = "+x" if hand == "left" else "-x"
        side.sink_box("tongue", cheek, into, id=f"tongue:{side.id}:{front.id}", purpose=f"tongue into {front.name}")


def front_tails(plan: CasePlan, row: Row, size: DrawerSize) -> Tails:
    """The layout of the tails on a drawer's sides, from the box's lower edge up.

    The lowest tail holds the bottom's groove, so that it shows on neither side.

    Raises:
        CannotBuild: a groove so low that no half pin is left under it, or more tails than there is room for.
    """
    address = f"drawer.{row.key}"
    height, entered = size.box.z1 - size.box.z0, size.entered
    slope = slope_of(plan.stocks.of("drawer.side"), _given(plan, row, "tail_slope"))
    narrowing = size.entry / slope
    low, high = groove_span(plan, row)
    # an inset front's edges lie inside the box's
    beyond = max(entered.z0 - size.box.z0, size.box.z1 - entered.z1, 0.0)
    least = beyond + LEAST_PIN_MM
    half = min(max(least, size.entry / 2), low - ROUND_GROOVE_MM - narrowing)
    if half < least - 1e-9:
        right = f"expected at least {least + ROUND_GROOVE_MM + narrowing:.1f} mm: a half pin stands under the groove"
        raise CannotBuild([fault(f"{address}.groove_up", f"{low:g} mm", right)])
    pin = max(LEAST_PIN_MM, size.entry / 2)
    count = _given(plan, row, "tails")
    least_tail = high + ROUND_GROOVE_MM + narrowing - half
    try:
        return tails_along(
            height, size.entry, slope, half, pin,
            count=None if count is None else int(count), wide=TAIL_MM, least_tail=least_tail,
        )  # fmt: skip
    except NoRoom as error:
        if error.most:
            right = f"expected at most {error.most}: the lowest tail holds the bottom's groove"
            raise CannotBuild([fault(f"{address}.tails", f"{count} tails on {height:.1f} mm", right)]) from error
        right = (
            f"expected a box at least {error.least:.1f} mm high for one dovetail: a higher opening or a lower groove"
        )
        raise CannotBuild([fault(address, f"a box {height:.1f} mm high", right)]) from error


def _given(plan: CasePlan, row: Row, name: str) -> float | None:
    value = plan.choice(row.key, name)
    return None if value is None else float(value)


def _dovetailed(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, front: Blank, side: Blank, hand: str) -> None:
    """Half-blind dovetails: tails on the side's end, sockets in the front's end and inner face."""
    tails, y = front_tails(plan, row, size), size.entered.y1
    side.grow("-y", size.entry)
    drawn = [
        trapezoid(span, tails.narrowing, begin=size.box.z0, wide_at=y - size.entry, narrow_at=y) for span in tails.spans
    ]
    grooved = size.box.z0 + groove_span(plan, row)[1]
    _tails_and_sockets(bench, front, side, hand, tails, drawn, (y - size.entry, y), lap=_lap(size), whole_from=grooved)
    _moves_with(side, front)


def _lap(size: DrawerSize) -> float:
    """Wood that the front keeps before the sides' ends, mm."""
    return size.entered.y1 - size.entered.y0 - size.entry


def _moves_with(guest: Blank, host: Blank) -> None:
    """Boards glued by dovetails over their whole width keep to one size."""
    if guest.stock.coefficient != host.stock.coefficient:
        guest.fixing = replace(guest.fixing, moves_with=host.fixing.moves_with or host.id)


def _tails_and_sockets(
    bench: Bench,
    host: Blank,
    side: Blank,
    hand: str,
    tails: Tails,
    drawn: list[list[tuple[float, float]]],
    strip: tuple[float, float],
    *,
    lap: float | None = None,
    low: float | None = None,
    whole_from: float = -math.inf,
) -> None:
    """Cut tails on a side and their sockets in the end of the board across it, all from one outline each.

    Args:
        drawn: the tails, (y, z) in the world.
        strip: y between which the side is cut.
        lap: wood that the host keeps before the tails' ends, or None where they go through.
        low: z under which the side isn't cut; None for its own lower edge.
        whole_from: z over which no groove runs through the uppermost tail.
    """
    out = "-x" if hand == "left" else "+x"
    box = side.box()
    outer, inner = (box.x0, box.x1) if hand == "left" else (box.x1, box.x0)
    tall = (box.z0 if low is None else low, box.z1)
    cut_id = f"dovetail:{host.id}:{side.id}"
    around: list[Vec3] = [(inner, y, z) for y in strip for z in tall]
    us, vs = zip(*(side.frame.local(point)[:2] for point in around), strict=True)
    placed: list[list[Vec3]] = [[(outer, y, z) for y, z in corners] for corners in drawn]
    side.sink(
        "dovetail",
        Face.FACE,
        rectangle(min(us), min(vs), max(us), max(vs)),
        islands=[in_plane(side.frame, corners, (0, 1)) for corners in placed],
        id=cut_id,
        purpose=f"tails into {host.name}, 1:{tails.slope:g}",
    )
    axis, sign = host.axis_of(out)
    if axis != 0:
        raise ValueError(f"{host.id} lies across {side.id}; its ends hold the sockets")
    floor = host.frame.local((inner, 0.0, 0.0))[0]
    for number, corners in enumerate(placed, 1):
        host.sink(
            "dovetail",
            Face.HEAD if sign > 0 else Face.FOOT,
            in_plane(host.frame, corners, (1, 2)),
            floor=floor,
            id=f"{cut_id}.{number}",
            purpose=f"tail of {side.name}, square by chisel",
        )
    sizes = tails.sizes() if lap is None else (*tails.sizes(), ("lap", lap))
    whole: list[Vec3] = [(outer, y, max(z, whole_from)) for y, z in drawn[-1]]
    body = prism_body(whole, out, abs(inner - outer))
    bench.joints.append(Joint(cut_id, "dovetail", host.id, side.id, (side.id,), body=body, sizes=sizes))


def _sliding(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, front: Blank, side: Blank, hand: str) -> None:
    """A dovetail along the side's end, pushed up from below into a socket of the front that stops under its edge.

    It stands on the inner half of the side's thickness, so that the front keeps wood outside of it.
    """
    slope = slope_of(plan.stocks.of("drawer.side"), _given(plan, row, "tail_slope"))
    narrowing, entered = size.entry / slope, size.entered
    box, y = side.box(), entered.y1
    half = (box.x1 - box.x0) / 2
    if half - 2 * narrowing < LEAST_PIN_MM:
        right = f"expected at most {(half - LEAST_PIN_MM) * slope / 2:.1f} mm: 3 mm are left at the dovetail's root"
        raise CannotBuild([fault(f"drawer.{row.key}.entry", f"{size.entry:g} mm", right)])
    end = y - size.entry
    x0, x1 = (box.x1 - half, box.x1) if hand == "left" else (box.x0, box.x0 + half)
    stop = min(box.z1, entered.z1) - SLIDING_STOP_MM
    # the cutter's round end, and what the side grows more than the front
    tall, season = stop - row.floor, plan.season
    more = max(0.0, season.gain(tall, side.stock) - season.gain(tall, front.stock))
    top, cut_id = stop - plan.radius - math.ceil(10 * more) / 10, f"sliding:{front.id}:{side.id}"
    tail: list[Vec3] = [
        (x0, end, box.z0), (x1, end, box.z0), (x1 - narrowing, y, box.z0), (x0 + narrowing, y, box.z0)
    ]  # fmt: skip
    side.grow("-y", size.entry)
    around: list[Vec3] = [(x, at, box.z0) for x in (box.x0, box.x1) for at in (end, y)]
    us, ws = zip(*(side.frame.local(point)[::2] for point in around), strict=True)
    # entered from the lower edge on both hands, so that left and right are a mirrored pair
    side.sink(
        "dovetail",
        Face.NEAR if side.axis_of("-z")[1] < 0 else Face.FAR,
        rectangle(min(us), min(ws), max(us), max(ws)),
        islands=[in_plane(side.frame, tail, (0, 2))],
        id=cut_id,
        purpose=f"sliding dovetail into {front.name}, 1:{slope:g}",
    )
    above = box._replace(y0=end, y1=y, z0=top)
    words = f"dovetail ends below its socket's end in {front.name}"
    side.sink_box("notch", above, into_face(side), id=f"notch:{side.id}:{front.id}", purpose=words)
    face = Face.NEAR if front.axis_of("-z")[1] < 0 else Face.FAR
    front.sink(
        "dovetail",
        face,
        in_plane(front.frame, tail, (0, 2)),
        floor=front.frame.local((0.0, 0.0, stop))[1],
        id=cut_id,
        purpose=f"socket of {side.name}, dovetail cutter 1:{slope:g}, from below",
    )
    sizes = (("slope", slope), ("width", half), ("depth", size.entry), ("lap", _lap(size)))
    bench.joints.append(
        Joint(
            cut_id, "sliding-dovetail", front.id, side.id, (side.id,),
            body=prism_body(tail, "-z", top - box.z0), relief=stop - top, sizes=sizes,
        )
    )  # fmt: skip


def join_back(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, back: Blank, sides: dict[str, Blank]) -> None:
    """Join the back to both sides the way that the piece chooses; it is laid between them."""
    how, box = plan.choice(row.key, "back_joint"), back.box()
    for hand, into in (("left", "-x"), ("right", "+x")):
        side, x = sides[hand], box.side(into)
        if how == "dovetail":
            _through(bench, plan, row, back, side, hand)
            continue
        section = Box(x, x, box.y0, box.y1, size.box.z0, size.box.z1)
        housing = Housing(back_entry(plan, row), plan.design.case.fit, "-y")
        house(bench, str(how), side, back.id, (back,), section, into, housing, purpose=back.name)


def _through(bench: Bench, plan: CasePlan, row: Row, back: Blank, side: Blank, hand: str) -> None:
    """Through dovetails: tails on the side's rear end, pins on the back, which stands on the bottom."""
    box = back.box()
    deep, height = box.y1 - box.y0, box.z1 - box.z0
    slope = slope_of(plan.stocks.of("drawer.side"), _given(plan, row, "tail_slope"))
    half = deep / slope + LEAST_PIN_MM
    try:
        tails = tails_along(height, deep, slope, half, max(LEAST_PIN_MM, deep / 2), wide=TAIL_MM)
    except NoRoom as error:
        right = f'expected at least {error.least:.1f} mm for one dovetail: a higher opening, or back_joint = "dado"'
        raise CannotBuild([fault(f"drawer.{row.key}.back_joint", f"a back {height:.1f} mm high", right)]) from error
    back.grow("-x" if hand == "left" else "+x", plan.stocks.of("drawer.side").thickness)
    drawn = [trapezoid(span, tails.narrowing, begin=box.z0, wide_at=box.y1, narrow_at=box.y0) for span in tails.spans]
    _tails_and_sockets(bench, back, side, hand, tails, drawn, (box.y0, box.y1), low=box.z0)
    leader = bench[side.fixing.moves_with or side.id]
    alike = leader.stock.coefficient == back.stock.coefficient
    back.fixing = Fixing(side.id, (box.x0, box.y1, box.z0), moves_with="" if alike else leader.id)
