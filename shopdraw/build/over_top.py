"""A top that lies over the sides on a web frame: fixed to the front rail, in slots on the rear one."""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import butt
from shopdraw.build.profile import edge_profile, mould
from shopdraw.build.screw import wood_screws
from shopdraw.build.slot import across_slot
from shopdraw.build.stack import middles_of
from shopdraw.build.web_frame import FramePlace, lay_frame
from shopdraw.shape.path import circle
from shopdraw.wood.board import Face, Fixing

FRAME = "frame.top"
SCREW_MM = 5.0
"""Diameter of the holes for the screws (common practice)."""
FROM_END_MM = 70.0
"""From the sides to the outer screws (common practice)."""
EDGE_SHARE = 0.4
"""Size of a moulding that nobody gave, as a share of the top's thickness (common practice)."""
LEFT_UNDER_MM = 3.0
"""Of the top's edge, left square under its moulding (common practice)."""
SLOT_ROOM_MM = 1.0
"""Added to what the top moves."""


def lay_over_top(bench: Bench, plan: CasePlan) -> Blank:
    """Lay the top and the frame that it is screwed to from below.

    The top's rear edge is level with the sides'. Its front is held; the rear screws stand in slots as long as what its
    depth loses and gains.
    """
    lay_frame(bench, plan, FramePlace("top", plan.side_top, "web frame under the top", middles=middles_of(plan, FRAME)))
    stock, over = plan.stocks.of("top"), plan.design.case.overhang
    front, rear = bench[f"{FRAME}.front"], bench[f"{FRAME}.rear"]
    at = _middle(front)
    top = bench.lay(
        "top",
        "top",
        "top",
        stock,
        Box(-over, plan.width + over, -over, plan.depth, plan.side_top, plan.height),
        u="+x",
        w="+z",
        fixing=Fixing("", (plan.width / 2, at, plan.side_top)),
    )
    _moulded(plan, top)
    room = plan.season.loss(plan.depth, stock) + plan.season.gain(plan.depth, stock) + SLOT_ROOM_MM
    first, last = plan.left + FROM_END_MM, plan.right - FROM_END_MM
    for number, x in enumerate((first, plan.width / 2, last), 1):
        u, v, _ = front.frame.local((x, at, plan.side_top))
        hole = circle((u, v), SCREW_MM / 2)
        front.sink("bore", Face.FACE, hole, id=f"screw:{front.id}:top.{number}", purpose="screw into the top, fast")
        u, v, _ = rear.frame.local((x, _middle(rear), plan.side_top))
        slot = across_slot(u, v - room / 2, v + room / 2, SCREW_MM / 2)
        rear.sink("slot", Face.FACE, slot, id=f"screw:{rear.id}:top.{number}", purpose="screw into the top, may slide")
    for rail in (front, rear):
        butt(bench, rail, top, glued=False, gap=room if rail is rear else 0.0)
        on, through = (rail.id, "top"), rail.stock.thickness
        bench.hardware.append(wood_screws(plan, f"screw:{rail.id}:top", 3, on, through, stock.thickness))
    return top


def _moulded(plan: CasePlan, top: Blank) -> None:
    """The moulding on the upper edges that show: in front and at both ends, mitred at the corners."""
    case, thick = plan.design.case, top.stock.thickness
    if case.top_edge == "square":
        return
    size = case.top_edge_size if case.top_edge_size is not None else round(EDGE_SHARE * thick * 2) / 2
    if size > thick - LEFT_UNDER_MM:
        right = f"expected at most {thick - LEFT_UNDER_MM:g} mm on a top of {thick:g} mm"
        raise CannotBuild([fault("case.top_edge_size", f"{size:g} mm", right)])
    made = edge_profile(case.top_edge, size)
    for edge, where in (("-y", "front"), ("-x", "left"), ("+x", "right")):
        mould(top, edge, "+z", made, id=f"moulding:top:{where}", purpose=f"moulding, {where} edge")


def _middle(rail: Blank) -> float:
    box = rail.box()
    return (box.y0 + box.y1) / 2
