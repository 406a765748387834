"""Joints: each makes both halves from one body.

The guest grows to the body's end and loses what stands round the body; the host loses the body plus its fit and its
relief. Directions are world directions such as "+x"; sizes are mm.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

from shopdraw.build.bench import AXES, SLIGHT_MM, Bench, Blank, Box, opposite
from shopdraw.build.relief import mortise_corners, relieve_corners, relieve_end, rounded
from shopdraw.shape.frame import Frame, Vec3, cross, scale
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Body, Joint
from shopdraw.wood.board import Face


@dataclass(frozen=True, slots=True)
class Housing:
    """How a guest stands in a dado or groove.

    Attributes:
        depth: of the host's pocket, mm.
        fit: how much wider than the guest the pocket is, on the side towards `fit_side`.
        relief: how far short of the pocket's floor the guest ends.
        stop: world coordinate (along "y") at which the pocket ends in front, or None where it runs through.
        radius: of the stopped end, the cutter's; the guest begins this far behind it.
        ease: further width on both sides, for a guest that moves otherwise than the host.
        relieved: world directions at whose stopped ends a square guest has its corners cleared, along the groove.
        closed: the box's rear end is the pocket's, too, with the cutter's radius in its corners.
    """

    depth: float
    fit: float
    fit_side: str = "+z"
    relief: float = 0.0
    stop: float | None = None
    radius: float = 3.0
    ease: float = 0.0
    relieved: tuple[str, ...] = ()
    closed: bool = False


def body_in(box: Box, into: str, depth: float) -> Body:
    """The body of an upright box that enters a host by `depth` towards `into`; its plane is the host's surface."""
    a, b, out = _ENTERING[into]
    surface = box.side(opposite(into))
    at = {"x": (surface, 0.0, 0.0), "y": (0.0, surface, 0.0), "z": (0.0, 0.0, surface)}[into[1]]
    frame = Frame(a, b, out, at)
    p, q = frame.local((box.x0, box.y0, box.z0)), frame.local((box.x1, box.y1, box.z1))
    return Body(frame, rectangle(p[0], p[1], q[0], q[1]), depth)


_ALONG = {"x": AXES["+y"], "y": AXES["+z"], "z": AXES["+x"]}
_ENTERING: dict[str, tuple[Vec3, Vec3, Vec3]] = {
    into: (_ALONG[into[1]], cross(AXES[opposite(into)], _ALONG[into[1]]), AXES[opposite(into)]) for into in AXES
}
"""The axes of a body's frame by the direction in which it enters: two in the host's surface, the third out of it."""


def house(
    bench: Bench,
    kind: str,
    host: Blank,
    guest_id: str,
    guests: Sequence[Blank],
    box: Box,
    into: str,
    how: Housing,
    *,
    purpose: str,
    guest_front: float | None = None,
    glued: bool = True,
    floats: bool = False,
    gap: float = 0.0,
    short: Mapping[str, float] = MappingProxyType({}),
    dry: Collection[str] = (),
    glue: float | None = None,
) -> None:
    """Let a guest (one board or a frame of several) into a dado or groove of the host.

    A frame's boards share one cut; each has a joint of its own, since each closes by itself.

    Args:
        box: the guest's section where it meets the host, with the side towards `into` on the host's surface.
        guests: the boards that reach the host there; each grows into it.
        guest_front: the guest's own front, where its stopped lug has to be cut back; None when there is none.
        short: by board id, how much further short of the floor a board ends, mm; it stands dry.
        dry: ids of boards that stand dry and may slide.
        glue: how long the glued part is, from the guest's front, mm; the rest stays dry. None for all of it.
    """
    cut_id = f"{kind}:{host.id}:{guest_id}"
    reach = how.depth - how.relief
    pocket = box.grown(into, how.depth).grown(how.fit_side, how.fit + how.ease).grown(opposite(how.fit_side), how.ease)
    lug = box.grown(into, reach)
    round_end = None
    if how.stop is not None:
        pocket = pocket._replace(y0=how.stop)
        lug = lug._replace(y0=how.stop + how.radius)
        round_end = ("-y", how.radius)
    if how.closed and round_end is None:
        round_end = ("+y", how.radius)
    host.sink_box(kind, pocket, into, id=cut_id, purpose=purpose, round_end=round_end)
    if how.closed and how.stop is not None:
        host.cuts[-1].outline = rounded(host.cuts[-1].outline, how.radius)
    for end in how.relieved:
        walls = (how.fit_side, opposite(how.fit_side))
        name = f"relief:{host.id}:{guest_id}{end}"
        relieve_end(host, pocket, into, end, walls, how.radius, id=name, purpose=f"corners for {purpose}")
    fit = how.fit + 2 * how.ease
    width = _across(box, how.fit_side) + fit
    for guest in guests:
        extra = short.get(guest.id, 0.0)
        guest.grow(into, reach - extra)
        if how.stop is not None and guest_front is not None and guest_front < lug.y0 - SLIGHT_MM:
            _notch_front(guest, lug, box.side(into), into, host, how.radius)
        own = lug.with_side(opposite(into), box.side(into))
        if into[1] != "y":
            own = own._replace(y0=max(own.y0, guest.box().y0), y1=min(own.y1, guest.box().y1))
        bench.joints.append(
            Joint(
                id=cut_id if len(guests) == 1 else f"{kind}:{host.id}:{guest.id}",
                kind=kind,
                host=host.id,
                guest=guest_id if len(guests) == 1 else guest.id,
                guest_boards=(guest.id,),
                body=body_in(own, into, reach - extra),
                fit=fit,
                relief=how.relief + extra,
                glued=glued and not extra and guest.id not in dry,
                floats=floats or bool(extra) or guest.id in dry,
                gap=gap or extra,
                sizes=(("width", width), ("depth", how.depth), *(() if glue is None else (("glue", glue),))),
            )
        )


def _across(box: Box, direction: str) -> float:
    return box.side("+" + direction[1]) - box.side("-" + direction[1])


def _notch_front(guest: Blank, lug: Box, surface: float, into: str, host: Blank, radius: float) -> None:
    """Cut a guest's front corner back behind the stopped end of its dado.

    The corner's relief goes into the front of what stands in the dado, where the host covers it; the show edge stays.
    """
    box = guest.box()
    if box.y0 >= lug.y0 - SLIGHT_MM:
        return
    corner = box._replace(y1=lug.y0).with_side(opposite(into), surface)
    enter = into_face(guest)
    guest.sink_box(
        "notch", corner, enter, id=f"notch:{guest.id}:{host.id}", purpose="front corner, hides the stopped dado"
    )
    name, words = f"relief:{guest.id}:{host.id}", f"corner of the notch, covered by {host.name}"
    relieve_end(guest, corner, enter, "+y", (opposite(into),), radius, id=name, purpose=words)


def into_face(blank: Blank) -> str:
    """The world direction in which a cutter enters the board's reference face."""
    axis = _thickness_axis(blank)
    return ("-" if blank.frame.w["xyz".index(axis)] > 0 else "+") + axis


def _thickness_axis(blank: Blank) -> str:
    w = blank.frame.w
    return "xyz"[max(range(3), key=lambda i: abs(w[i]))]


@dataclass(frozen=True, slots=True)
class Tenon:
    """A tenon on a guest's end and its mortise.

    Attributes:
        thickness: across the guest's thickness, centred, mm.
        inset: from the guest's two edges to the tenon, mm.
        length: of the tenon from the shoulder.
        mortise: depth of the mortise.
        gap: open at the shoulder, at build.
        fit: mortise wider than the tenon is thick.
        room: mortise longer than the tenon is wide, at each of its ends.
        radius: of the cutter that makes the mortise.
        square: the tenon stays square and the mortise's corners are cleared; else both are rounded.
    """

    thickness: float
    inset: tuple[float, float]
    length: float
    mortise: float
    gap: float = 0.0
    fit: float = 0.1
    room: float = 0.0
    radius: float = 3.0
    square: bool = False


def mortise_and_tenon(
    bench: Bench, host: Blank, guest: Blank, into: str, how: Tenon, *, glued: bool, purpose: str
) -> None:
    """Cut a tenon on the guest's end towards `into` and the mortise for it in the host's edge.

    The guest's end stands at its shoulder, `gap` short of the host.
    """
    cut_id = f"mortise:{host.id}:{guest.id}"
    axis, sign = guest.axis_of(into)
    if axis != 0:
        raise ValueError(f"{guest.id} meets {host.id} with an edge; a tenon stands on an end")
    shoulder = guest.box()
    guest.grow(into, how.length)
    low, high = guest.low, guest.high
    middle = (low[2] + high[2]) / 2
    island = rectangle(
        low[1] + how.inset[0], middle - how.thickness / 2, high[1] - how.inset[1], middle + how.thickness / 2
    )
    end = high[0] if sign > 0 else low[0]
    guest.sink(
        "tenon",
        Face.HEAD if sign > 0 else Face.FOOT,
        rectangle(low[1], low[2], high[1], high[2]),
        enter=end,
        floor=end - sign * how.length,
        islands=(island if how.square else rounded(island, how.radius),),
        id=f"tenon:{guest.id}:{host.id}",
        purpose=f"tenon into {host.name}",
    )
    corners = [
        guest.frame.point((end, v, w))
        for v, w in ((island.corners[0].x, island.corners[0].y), (island.corners[2].x, island.corners[2].y))
    ]
    face = host.box().side(opposite(into))
    tenon = _between(corners[0], corners[1], shoulder, into, face)
    across = _thickness_axis(guest)
    pocket = tenon.with_side(into, face + (1 if into[0] == "+" else -1) * how.mortise)
    pocket = pocket.grown("+" + across, how.fit / 2).grown("-" + across, how.fit / 2)
    along = "xyz"[3 - "xyz".index(across) - "xyz".index(into[1])]
    pocket = pocket.grown("+" + along, how.room).grown("-" + along, how.room)
    host.sink_box("mortise", pocket, into, id=cut_id, purpose=purpose)
    if how.square:
        covered = (_across(shoulder, "+" + across) - how.thickness - how.fit) / 2
        cleared = mortise_corners(covered, min(how.inset) - how.room, how.radius)
        name, words = f"relief:{host.id}:{guest.id}", f"corners for {purpose}"
        relieve_corners(host, pocket, into, (across, along), cleared, how.radius, id=name, purpose=words)
    else:
        made = host.cuts[-1]
        made.outline = rounded(made.outline, how.radius)
    reach = how.length - how.gap
    body = body_in(tenon.with_side(into, face + (1 if into[0] == "+" else -1) * reach), into, reach)
    bench.joints.append(
        Joint(
            id=cut_id,
            kind="mortise-and-tenon",
            host=host.id,
            guest=guest.id,
            guest_boards=(guest.id,),
            body=body if how.square else replace(body, outline=rounded(body.outline, how.radius)),
            fit=how.fit,
            relief=how.mortise - reach,
            glued=glued,
            floats=not glued,
            gap=how.gap,
            sizes=(("tenon", how.length), ("mortise", how.mortise), ("thickness", how.thickness)),
        )
    )


def _between(a: Vec3, b: Vec3, shoulder: Box, into: str, face: float) -> Box:
    """The tenon's section between two of its corners, as an upright box that starts on the host's face."""
    box = Box(min(a[0], b[0]), max(a[0], b[0]), min(a[1], b[1]), max(a[1], b[1]), min(a[2], b[2]), max(a[2], b[2]))
    return box.with_side(opposite(into), face).with_side(into, shoulder.side(into))


def butt(bench: Bench, host: Blank, guest: Blank, *, glued: bool, gap: float = 0.0, glue: float | None = None) -> None:
    """Note that a guest stands against a host without entering it.

    Args:
        glue: how long the glued part is, from the guest's front, mm; the rest stays dry. None for all of it.
    """
    sizes = () if glue is None else (("glue", glue),)
    bench.joints.append(
        Joint(f"butt:{host.id}:{guest.id}", "butt", host.id, guest.id, (guest.id,), glued=glued, gap=gap, sizes=sizes)
    )


def shifted(point: Vec3, direction: str, by: float) -> Vec3:
    """A point moved along a world direction, mm."""
    step = scale(AXES[direction], by)
    return (point[0] + step[0], point[1] + step[1], point[2] + step[2])
