"""Breadboard caps: square caps across the ends of the lid's panel, grooved over its tongues.

The cap is glued and pegged fast at the hinge edge and nowhere else: the panel's other end moves past it. Its other
pegs stand fast in the cap and in slots of the tongue.
"""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.shape.frame import Frame, Vec3, cross, dot, scale
from shopdraw.shape.path import Corner, Path, circle, rectangle
from shopdraw.wood.assembly import Body, Hardware, Joint
from shopdraw.wood.board import Face, Fixing

GLUE_MM = 40.0
"""The glue lies within this of the hinge edge (common practice)."""
STOP_MM = 12.0
"""The groove is stopped this far short of the hinge edge, where it would show."""
FROM_END_MM = 30.0
"""The outermost peg stands this far from a cap's end (common practice)."""
SLOT_ROOM_MM = 0.5
"""Added to a slot at each of its ends."""


def lay_caps(bench: Bench, plan: SlantPlan, lid: Blank) -> tuple[Blank, Blank]:
    """Shorten the lid's panel to stand between two caps, give it tongues, and lay the caps.

    Args:
        lid: the panel, laid over the lid's whole width.
    Returns:
        The left and the right cap.
    """
    choice, stock = plan.design.lid, lid.stock
    cap, width, high = choice.cap, lid.high[0], lid.high[1]
    tongue = choice.tongue if choice.tongue is not None else cap / 2
    lid.low[0], lid.high[0] = cap, width - cap
    lid.shoulders = width - 2 * cap
    short = plan.season.loss(GLUE_MM, stock) + plan.slant.joint_gap
    places = _peg_places(choice.pegs, high)
    laid = []
    for hand, inner, outer in (("left", width - cap, width), ("right", cap, 0.0)):
        lid.grow("-x" if hand == "left" else "+x", tongue)
        side = _cap(bench, plan, lid, hand, (inner, outer), short)
        _tongue(lid, hand, tongue, stock.thickness)
        _groove(bench, lid, side, hand, inner, tongue, choice.groove_room)
        _pegs(bench, plan, lid, side, hand, inner, tongue, places)
        laid.append(side)
    return laid[0], laid[1]


def _cap(bench: Bench, plan: SlantPlan, lid: Blank, hand: str, span: tuple[float, float], short: float) -> Blank:
    """A cap, grain up the slope, writing face as reference, outer edge as reference edge."""
    frame = lid.frame
    away: Vec3 = scale(frame.u, -1.0)
    high_u = max(span)
    at = frame.point((high_u, short, 0.0))
    held = frame.point((span[0], GLUE_MM, 0.0))
    return bench.lay_in(
        f"lid.cap-{hand}",
        f"lid, breadboard cap, {hand}",
        "lid.cap",
        plan.stocks.of("lid.cap"),
        Frame(frame.v, away, frame.w, at),
        lid.high[1] - short,
        abs(span[1] - span[0]),
        fixing=Fixing("lid", held),
        reference_edge="near" if hand == "left" else "far",
    )


def _tongue(lid: Blank, hand: str, tongue: float, thickness: float) -> None:
    """A centred tongue a third of the thickness on the panel's end, stopped short of the hinge edge."""
    third = thickness / 3
    end = lid.high[0] if hand == "left" else lid.low[0]
    lid.sink(
        "tongue",
        Face.HEAD if hand == "left" else Face.FOOT,
        rectangle(-1.0, -thickness - 1.0, lid.high[1] + 1.0, 1.0),
        enter=end,
        floor=end - tongue if hand == "left" else end + tongue,
        islands=(rectangle(STOP_MM, -2 * third, lid.high[1], -third),),
        id=f"tongue:lid:lid.cap-{hand}",
        purpose="tongue, a third of the thickness",
    )


def _groove(bench: Bench, lid: Blank, cap: Blank, hand: str, inner: float, tongue: float, room: float) -> None:
    """The groove in the cap's inner edge: open at the upper end, stopped at the hinge edge."""
    third = lid.stock.thickness / 3
    fit = 0.1
    start = cap.frame.local(lid.frame.point((inner, STOP_MM, 0.0)))[0] - 0.5
    floor = cap.high[1] - (tongue + room) if hand == "left" else tongue + room
    cut_id = f"groove:{cap.id}:lid"
    cap.sink(
        "groove",
        Face.FAR if hand == "left" else Face.NEAR,
        rectangle(start, -2 * third - fit / 2, cap.high[0], -third + fit / 2),
        floor=floor,
        id=cut_id,
        purpose="tongue of the lid's panel",
    )
    out = scale(lid.frame.u, -1.0 if hand == "left" else 1.0)
    frame = Frame(lid.frame.v, cross(out, lid.frame.v), out, lid.frame.point((inner, 0.0, 0.0)))
    w_sign = 1.0 if dot(frame.v, lid.frame.w) > 0 else -1.0
    low, high = sorted((w_sign * -2 * third, w_sign * -third))
    bench.joints.append(
        Joint(
            cut_id,
            "groove",
            cap.id,
            "lid",
            ("lid",),
            body=Body(frame, rectangle(STOP_MM, low, lid.high[1], high), tongue),
            fit=fit,
            relief=room,
            glued=True,
            floats=True,
            sizes=(("width", third + fit), ("depth", tongue + room), ("glue", GLUE_MM)),
        )
    )


def _peg_places(count: int, high: float) -> tuple[float, ...]:
    """Distances of the pegs from the hinge edge, along the cap."""
    first, last = FROM_END_MM, high - FROM_END_MM
    return tuple(first + (last - first) * i / (count - 1) for i in range(count))


def _pegs(
    bench: Bench,
    plan: SlantPlan,
    lid: Blank,
    cap: Blank,
    hand: str,
    inner: float,
    tongue: float,
    places: tuple[float, ...],
) -> None:
    """Holes through the cap and, in the tongue, a hole where it is glued and slots elsewhere."""
    choice, radius = plan.design.lid, plan.design.lid.peg / 2
    across = inner + (tongue / 2 if hand == "left" else -tongue / 2)
    for number, place in enumerate(places, start=1):
        fitting = f"peg.{hand}.{number}"
        u, v, _ = cap.frame.local(lid.frame.point((across, place, 0.0)))
        cap.sink("bore", Face.FACE, circle((u, v), radius), id=f"peg:{cap.id}:{fitting}", purpose="peg, fast")
        away = max(0.0, place - GLUE_MM)
        low = high = 0.0
        if away > 0.0:
            low = plan.season.gain(away, lid.stock) + SLOT_ROOM_MM
            high = plan.season.loss(away, lid.stock) + SLOT_ROOM_MM
        slot = circle((across, place), radius) if not away else _slot(across, place - low, place + high, radius)
        lid.sink("slot" if away else "bore", Face.FACE, slot, id=f"peg:lid:{fitting}", purpose="peg of the cap")
    bench.hardware.append(
        Hardware(
            f"peg:{cap.id}",
            "peg",
            len(places),
            (cap.id, "lid"),
            (("diameter", choice.peg), ("length", cap.stock.thickness)),
        )
    )


def _slot(u: float, v0: float, v1: float, radius: float) -> Path:
    """A slot along v with round ends, its end centres at v0 and v1."""
    return Path(
        (Corner(u + radius, v0), Corner(u + radius, v1, 1.0), Corner(u - radius, v1), Corner(u - radius, v0, 1.0))
    )
