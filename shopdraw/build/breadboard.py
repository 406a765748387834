"""Breadboard caps across the ends of the lid's panel, grooved over its tongues: square, or mitred at the free edge.

A cap is glued at one place and nowhere else: a square one at the hinge edge or its middle, a mitred one at its mitre.
The panel moves past it elsewhere. Its pegs stand fast in the cap, and in slots of the tongue away from the glue.
"""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cap_size import SLOT_ROOM_MM, CapSize, cap_size, peg_places
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.shape.frame import Frame, Vec3, cross, dot, scale
from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle
from shopdraw.wood.assembly import Body, Hardware, Joint
from shopdraw.wood.board import Face, Fixing

FIT_MM = 0.1
"""A cap's groove is so much wider than its tongue is thick."""


def lay_caps(bench: Bench, plan: SlantPlan, lid: Blank) -> tuple[Blank, Blank]:
    """Shape the lid's panel to stand between two caps, give it tongues, and lay the caps.

    A panel between square caps is shortened; one between mitred caps keeps the lid's whole width at its free edge.

    Args:
        lid: the panel, laid over the lid's whole width.
    Returns:
        The left and the right cap.
    """
    size = cap_size(plan, lid.high[1], lid.stock)
    width = lid.high[0]
    if size.mitred:
        lid.outline = _mitred_panel(width, size)
    else:
        lid.low[0], lid.high[0] = size.width, width - size.width
    lid.shoulders = width - 2 * size.width
    laid = []
    for hand, inner, outer in (("left", width - size.width, width), ("right", size.width, 0.0)):
        if not size.mitred:
            lid.grow("-x" if hand == "left" else "+x", size.tongue)
        cap = _cap(bench, plan, lid, hand, (inner, outer), size)
        if size.mitred:
            _tongue_by_faces(lid, hand, inner, size)
        else:
            _tongue(lid, hand, size)
        _groove(bench, lid, cap, hand, inner, size, plan.design.lid.groove_room)
        if size.mitred:
            _mitre(bench, lid, cap, size)
        _pegs(bench, plan, lid, cap, hand, inner, size)
        laid.append(cap)
    return laid[0], laid[1]


def _mitred_panel(width: float, size: CapSize) -> Path:
    """The panel's outline: tongues beside the shoulders, turning out at 45° to the corners of its free edge."""
    cap, high, tongue = size.width, size.high, size.tongue
    low, end = size.tongue_span
    at_hinge = [(0.0, 0.0), (cap, cap)] if size.both else [(cap, 0.0)]
    right = [
        *at_hinge, (cap, low), (cap - tongue, low), (cap - tongue, end), (cap, end), (cap, size.heel), (0.0, high),
    ]  # fmt: skip
    return polygon([*right, *((width - u, v) for u, v in reversed(right))]).anticlockwise()


def _cap(bench: Bench, plan: SlantPlan, lid: Blank, hand: str, span: tuple[float, float], size: CapSize) -> Blank:
    """A cap, grain up the slope, writing face as reference, outer edge as reference edge."""
    frame = lid.frame
    away: Vec3 = scale(frame.u, -1.0)
    at = frame.point((max(span), size.short, 0.0))
    inner, outer = span
    long, wide = size.high - size.short, size.width
    outline = None
    if size.mitred:
        # along the inner edge it is shorter by its width
        low = wide if size.both else 0.0
        points = [(0.0, 0.0), (long, 0.0), (long - wide, wide), (low, wide)]
        if hand == "right":
            points = [(low, 0.0), (long - wide, 0.0), (long, wide), (0.0, wide)]
        outline = polygon(points).anticlockwise()
    # a mitre opens at its toe when the wood has swollen and at its heel when it has shrunk
    held = frame.point((inner, size.heel if size.mitred else (size.glue[1] if size.glue[0] == 0 else size.high / 2), 0))
    toe = frame.point((outer, size.high, 0.0)) if size.mitred else None
    return bench.lay_in(
        f"lid.cap-{hand}",
        f"lid, breadboard cap, {hand}",
        "lid.cap",
        plan.stocks.of("lid.cap"),
        Frame(frame.v, away, frame.w, at),
        long,
        wide,
        fixing=Fixing("lid", held, dry=toe),
        reference_edge="near" if hand == "left" else "far",
        outline=outline,
    )


def _tongue(lid: Blank, hand: str, size: CapSize) -> None:
    """A tongue a third of the thickness on the panel's end, stopped short of the hinge edge."""
    t, tongue = lid.stock.thickness, size.tongue
    end = lid.high[0] if hand == "left" else lid.low[0]
    lid.sink(
        "tongue",
        Face.HEAD if hand == "left" else Face.FOOT,
        rectangle(-1.0, -t - 1.0, lid.high[1] + 1.0, 1.0),
        enter=end,
        floor=end - tongue if hand == "left" else end + tongue,
        islands=(rectangle(size.tongue_span[0], -size.below - size.thick, size.tongue_span[1], -size.below),),
        id=f"tongue:lid:lid.cap-{hand}",
        purpose="tongue, a third of the thickness",
    )


def _tongue_by_faces(lid: Blank, hand: str, inner: float, size: CapSize) -> None:
    """The same beside a mitred cap, cut from both faces: its shoulder runs into the mitre."""
    low, end = size.tongue_span
    u0, u1 = (inner, inner + size.tongue) if hand == "left" else (inner - size.tongue, inner)
    cheek = rectangle(u0, low, u1, end)
    for face, floor in ((Face.FACE, -size.below), (Face.BACK, -size.below - size.thick)):
        lid.sink(
            "tongue", face, cheek, floor=floor, id=f"tongue:lid:lid.cap-{hand}",
            purpose="tongue, a third of the thickness",
        )  # fmt: skip


def _groove(bench: Bench, lid: Blank, cap: Blank, hand: str, inner: float, size: CapSize, room: float) -> None:
    """The groove in the cap's inner edge: stopped at the hinge edge, and open above or ended by the mitre."""
    tongue, below, thick = size.tongue, size.below, size.thick
    low, end = size.tongue_span
    start = cap.frame.local(lid.frame.point((inner, size.groove_start, 0.0)))[0]
    stop = cap.frame.local(lid.frame.point((inner, size.heel, 0.0)))[0] if size.mitred else cap.high[0]
    floor = cap.high[1] - (tongue + room) if hand == "left" else tongue + room
    cut_id = f"groove:{cap.id}:lid"
    cap.sink(
        "groove",
        Face.FAR if hand == "left" else Face.NEAR,
        rectangle(start, -below - thick - FIT_MM / 2, stop, -below + FIT_MM / 2),
        floor=floor,
        id=cut_id,
        purpose="tongue of the lid's panel",
    )
    out = scale(lid.frame.u, -1.0 if hand == "left" else 1.0)
    frame = Frame(lid.frame.v, cross(out, lid.frame.v), out, lid.frame.point((inner, 0.0, 0.0)))
    sign = 1.0 if dot(frame.v, lid.frame.w) > 0 else -1.0
    w0, w1 = sorted((sign * (-below - thick), sign * -below))
    glue = (("glue", size.glue[1] - size.glue[0]),) if not size.mitred else ()
    bench.joints.append(
        Joint(
            cut_id,
            "groove",
            cap.id,
            "lid",
            ("lid",),
            body=Body(frame, rectangle(low, w0, end, w1), tongue),
            fit=FIT_MM,
            relief=room,
            glued=not size.mitred,
            floats=True,
            sizes=(("width", thick + FIT_MM), ("depth", tongue + room), *glue),
        )
    )


def _mitre(bench: Bench, lid: Blank, cap: Blank, size: CapSize) -> None:
    """The mitre between panel and cap: the one place that is glued; at both ends it holds the panel fast."""
    sizes = (("angle", 45.0), ("glue", size.width))
    for name in ("", ".hinge") if size.both else ("",):
        bench.joints.append(
            Joint(f"mitre:{lid.id}:{cap.id}{name}", "mitre", lid.id, cap.id, (cap.id,), glued=True, sizes=sizes)
        )


def _pegs(bench: Bench, plan: SlantPlan, lid: Blank, cap: Blank, hand: str, inner: float, size: CapSize) -> None:
    """Holes through the cap and, in the tongue, a hole where it is glued and slots elsewhere."""
    choice, radius = plan.design.lid, plan.design.lid.peg / 2
    across = inner + (size.tongue / 2 if hand == "left" else -size.tongue / 2)
    places = peg_places(choice.pegs, size)
    for number, place in enumerate(places, start=1):
        fitting = f"peg.{hand}.{number}"
        u, v, _ = cap.frame.local(lid.frame.point((across, place, 0.0)))
        cap.sink("bore", Face.FACE, circle((u, v), radius), id=f"peg:{cap.id}:{fitting}", purpose="peg, fast")
        away = size.away(place)
        slot = circle((across, place), radius)
        if away:
            # the panel's wood draws towards the glue when it dries, so the peg stands further from it in the slot
            dry, wet = (move(away, lid.stock) + SLOT_ROOM_MM for move in (plan.season.loss, plan.season.gain))
            below, above = (wet, dry) if place > size.glue[1] else (dry, wet)
            slot = _slot(across, place - below, place + above, radius)
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
