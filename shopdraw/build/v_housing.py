"""The mitred housing: a shelf's end cut to a point by two cuts of 45°, standing in a V-groove of an upright board."""

from __future__ import annotations

from shopdraw.build.bench import SLIGHT_MM, Bench, Blank, Box, opposite
from shopdraw.build.joinery import body_in
from shopdraw.shape.path import polygon
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Face


def house_v(
    bench: Bench, host: Blank, guest: Blank, into: str, point: float, *, stop: float | None, purpose: str
) -> None:
    """Let a shelf's end into an upright board by a V point.

    The guest's blank ends on the host's surface; it grows by the point. A point less than half its thickness is blunt:
    a flat stays between the two cuts, and the groove's floor is as wide.

    Args:
        host: an upright board, its grain up.
        guest: a lying board, its grain along `into`.
        point: depth of the point, v, mm; at most half the guest's thickness.
        stop: world y where the groove begins behind the host's front edge; None where it runs through from there.
    """
    box = guest.box()
    surface = box.side(into)
    guest.grow(into, point)
    _cut_point(guest, host, into, point)
    thickness = box.z1 - box.z0
    flat = thickness - 2 * point
    middle = (box.z0 + box.z1) / 2
    sign = 1.0 if into[0] == "+" else -1.0
    section = [(surface, box.z0), (surface, box.z1), (surface + sign * point, middle + flat / 2)]
    if flat > SLIGHT_MM:
        section.append((surface + sign * point, middle - flat / 2))
    local = [host.frame.local((x, 0.0, z)) for x, z in section]
    cut_id = f"v-housing:{host.id}:{guest.id}"
    # Entered from the rear edge, so that a stopped groove is open where its guest comes from.
    axis, towards = host.axis_of("-y")
    face = Face.FAR if towards < 0 else Face.NEAR
    floor = None if stop is None else host.frame.local((surface, stop, middle))[axis]
    host.sink(
        "v-groove", face, polygon((p[0], p[2]) for p in local), floor=floor, id=cut_id, purpose=f"{purpose}, V-groove"
    )
    end = Box(surface, surface, box.y0, box.y1, box.z0, box.z1)
    bench.joints.append(
        Joint(
            id=cut_id,
            kind="v-housing",
            host=host.id,
            guest=guest.id,
            guest_boards=(guest.id,),
            body=body_in(end.grown(into, point).with_side(opposite(into), surface), into, point),
            sizes=(("point", point), ("width", thickness)),
        )
    )


def _cut_point(guest: Blank, host: Blank, into: str, point: float) -> None:
    """Two cuts of 45° across the guest's end, over its whole width."""
    axis, sign = guest.axis_of(into)
    end = guest.high[axis] if sign > 0 else guest.low[axis]
    back = end - sign * point
    for name, level, inwards in (("upper", guest.high[2], -1.0), ("lower", guest.low[2], 1.0)):
        corners = [(back, level), (end, level), (end, level + inwards * point)]
        guest.sink(
            "mitre", Face.NEAR, polygon(corners), id=f"mitre:{guest.id}:{host.id}:{name}",
            purpose=f"45°, V point into {host.name}, {name} cut",
        )  # fmt: skip
