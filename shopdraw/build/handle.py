"""Knobs and pulls: how many on a drawer's front, where their holes are, and the screws that hold them from behind."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.screw import usual_length
from shopdraw.shape.path import circle
from shopdraw.trade.hardware import knobs
from shopdraw.wood.assembly import Hardware
from shopdraw.wood.board import Face

WIDE_MM = 450.0
"""A front wider than this has two handles (common practice)."""
HOLE_MM = 4.5
"""Diameter of a hole for a handle's screw (common practice)."""
HIGH_SHARE = 0.25
"""A usual knob's diameter is at most this share of its front's height (common practice)."""
IN_KNOB_MM = 3.0
"""A screw ends so far under a knob's top (common practice)."""
POST_MM = 12.0
"""Depth of the thread in a pull's post (common practice)."""
FROM_END_MM = 15.0


@dataclass(frozen=True, slots=True)
class Handle:
    """What a front is drawn by: a knob's diameter and projection, or a pull's distance between its posts, mm."""

    kind: str
    diameter: float = 0.0
    projection: float = 0.0
    centres: float = 0.0


def usual_knob(high: float) -> Handle:
    """The usual knob for a front so high, mm: the largest that isn't too large for it."""
    fits = [one for one in knobs() if one.diameter_mm <= HIGH_SHARE * high] or [knobs()[0]]
    return Handle("knob", fits[-1].diameter_mm, fits[-1].projection_mm)


def handle_of(plan: CasePlan, row: Row, high: float) -> Handle:
    """The handle of a drawer's front."""
    if plan.choice(row.key, "handle") == "pull":
        inch = plan.design.piece.units == "inch"
        return Handle("pull", centres=plan.length_choice(row.key, "pull_centres", 63.5 if inch else 64.0))
    given = plan.choice(row.key, "knob_diameter"), plan.choice(row.key, "knob_projection")
    usual = usual_knob(high)
    return Handle("knob", *(float(one) if one is not None else other for one, other in zip(
        given, (usual.diameter, usual.projection), strict=True
    )))  # fmt: skip


def lay_handles(bench: Bench, plan: CasePlan, row: Row, front: Blank) -> None:
    """Bore the holes of a front's handles, evenly over its width at half its height, and list handles and screws.

    Raises:
        CannotBuild: pulls that have no room beside each other.
    """
    box = front.box()
    wide, high = box.x1 - box.x0, box.z1 - box.z0
    chosen = plan.choice(row.key, "knobs")
    count = int(chosen) if isinstance(chosen, int | float) else (2 if wide > WIDE_MM else 1)
    if not count:
        return
    one = handle_of(plan, row, high)
    most = wide / count - 2 * FROM_END_MM
    if max(one.centres, one.diameter) > most:
        address = "pull_centres" if one.kind == "pull" else "knob_diameter"
        right = f"expected at most {most:.0f} mm, or fewer of them, on a front of {wide:.0f} mm"
        raise CannotBuild([fault(f"drawer.{row.key}.{address}", f"{max(one.centres, one.diameter):g} mm", right)])
    posts = (-one.centres / 2, one.centres / 2) if one.kind == "pull" else (0.0,)
    drawer = f"drawer.{row.key}"
    for number in range(count):
        middle = box.x0 + wide * (2 * number + 1) / (2 * count)
        for post, off in enumerate(posts, 1):
            u, v, _ = front.frame.local((middle + off, 0.0, (box.z0 + box.z1) / 2))
            end = f".{post}" if len(posts) > 1 else ""
            front.sink(
                "bore", Face.FACE, circle((u, v), HOLE_MM / 2),
                id=f"{one.kind}:{front.id}:{number + 1}{end}", purpose=f"screw of the {one.kind}, countersunk behind",
            )  # fmt: skip
    sizes = (
        (("centres", one.centres),)
        if one.kind == "pull"
        else (("diameter", one.diameter), ("projection", one.projection))
    )
    bench.hardware.append(Hardware(f"{one.kind}:{drawer}", one.kind, count, (front.id,), sizes))
    thick = front.stock.thickness
    room = max(one.projection - IN_KNOB_MM, POST_MM)
    long = usual_length(thick, room, inch=plan.design.piece.units == "inch")
    name = f"screw:{one.kind}:{drawer}"
    own = plan.design.fitting.get(name)
    screw = (("diameter", HOLE_MM - 0.5), ("length", own.length if own and own.length else long))
    kind = f"{one.kind} screw"
    bench.hardware.append(Hardware(name, kind, count * len(posts), (front.id,), screw, thick, room))
