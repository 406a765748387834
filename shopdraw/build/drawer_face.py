"""What a drawer's front shows: a moulding round its face; and how an overlay front is screwed on."""

from __future__ import annotations

from dataclasses import replace
from typing import cast

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.drawer_size import DrawerSize
from shopdraw.build.joinery import butt
from shopdraw.build.profile import Kind, edge_profile, mould
from shopdraw.build.screw import wood_screws
from shopdraw.build.slot import across_slot
from shopdraw.shape.path import circle
from shopdraw.wood.board import Face

SHARE = 0.4
"""Size of a moulding that nobody gave, as a share of the thickness at the edge (common practice)."""
LEFT_MM = 2.0
"""Wood of a lip, or of the edge, left under its moulding (common practice)."""
SCREW_MM = 4.5
"""Diameter of the holes in the box's front (common practice)."""
SLOT_ROOM_MM = 1.0
"""Added to what the front moves."""
FROM_EDGE_MM = 20.0
"""From the box's edges to the screws, at most (common practice)."""
BETWEEN_MM = 400.0
"""Screws of one row stand no further apart (common practice)."""


def mould_front(plan: CasePlan, row: Row, size: DrawerSize, front: Blank) -> None:
    """Cut the moulding round the front's face, mitred at its corners; a bead's quirks stop there.

    Raises:
        CannotBuild: a moulding larger than its edge.
    """
    kind = plan.choice(row.key, "edge")
    if kind is None or kind == "square":
        return
    thick = size.lip_thickness if size.lipped else size.front.y1 - size.front.y0
    given = plan.choice(row.key, "edge_size")
    chosen = float(given) if given is not None else max(2.0, round(SHARE * thick * 2) / 2)
    made = edge_profile(cast(Kind, kind), chosen)
    most = thick - LEFT_MM
    if made.down_edge > most or made.over_face > min(_spans(size)) / 4:
        largest = min(most * chosen / made.down_edge, min(_spans(size)) / 4 * chosen / made.over_face)
        right = f"expected at most {int(largest * 10) / 10:g} mm on an edge of {thick:g} mm"
        raise CannotBuild([fault(f"drawer.{row.key}.edge_size", f"{chosen:g} mm", right)])
    for edge, where in (("-x", "left"), ("+x", "right"), ("-z", "lower"), ("+z", "upper")):
        name = f"moulding:{front.id}:{where}"
        words = f"moulding, {where} edge"
        mould(front, edge, "-y", replace(made, paths=made.paths[:1]), id=name, purpose=words)
        if made.paths[1:]:
            quirk = replace(made, paths=made.paths[1:])
            stopped = f"{words}, stopped at the corners"
            mould(front, edge, "-y", quirk, id=f"{name}.2", purpose=stopped, inset=(chosen, chosen))


def _spans(size: DrawerSize) -> tuple[float, float]:
    return size.front.x1 - size.front.x0, size.front.z1 - size.front.z0


def screw_overlay(bench: Bench, plan: CasePlan, front: Blank, inner: Blank) -> None:
    """Screws through the box's front: fast in the lower row, in slots in the upper one, where the front may move."""
    box, shown = inner.box(), front.box()
    tall, wide = box.z1 - box.z0, box.x1 - box.x0
    off = min(FROM_EDGE_MM, tall / 4)
    low, high = box.z0 + off, box.z1 - off
    # the groove for the bottom lies under the lower row
    grooves = [c for c in inner.cuts if c.kind == "groove" and c.id.endswith(".bottom")]
    if grooves:
        top = max(inner.frame.point((0.0, corner.y, 0.0))[2] for c in grooves for corner in c.outline.corners)
        low = max(low, min(top + SCREW_MM, high - 2 * SCREW_MM))
    season = plan.season
    span = high - low
    room = max(
        season.gain(span, front.stock) + season.loss(span, front.stock),
        season.gain(span, inner.stock) + season.loss(span, inner.stock),
    ) + SLOT_ROOM_MM  # fmt: skip
    count = max(2, int(wide / BETWEEN_MM) + 1)
    first, last = box.x0 + 3 * FROM_EDGE_MM, box.x1 - 3 * FROM_EDGE_MM
    if last - first < 2 * FROM_EDGE_MM:
        first, last = box.x0 + wide / 4, box.x1 - wide / 4
    for number in range(count):
        x = first + (last - first) * number / (count - 1)
        u, v, _ = inner.frame.local((x, 0.0, low))
        inner.sink(
            "bore", Face.FACE, circle((u, v), SCREW_MM / 2),
            id=f"screw:{inner.id}:front.{number + 1}", purpose=f"screw into {front.name}, fast",
        )  # fmt: skip
        _, above, _ = inner.frame.local((x, 0.0, high))
        slot = across_slot(u, above - room / 2, above + room / 2, SCREW_MM / 2)
        inner.sink(
            "slot", Face.FACE, slot,
            id=f"screw:{inner.id}:front.{number + 1 + count}", purpose=f"screw into {front.name}, may slide",
        )  # fmt: skip
    butt(bench, inner, front, glued=False, gap=room)
    on, room = (inner.id, front.id), shown.y1 - shown.y0
    bench.hardware.append(
        wood_screws(plan, f"screw:{inner.id}:front", 2 * count, on, inner.stock.thickness, room)
    )
