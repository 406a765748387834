"""The plinth: a front and two returns wrapped round the case's foot, mitred, with foot blocks that carry the load."""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import butt
from shopdraw.shape.path import polygon
from shopdraw.wood.assembly import Hardware, Joint
from shopdraw.wood.board import Face, Fixing


def lay_plinth(bench: Bench, plan: CasePlan) -> None:
    """Lay the plinth's boards and blocks; the returns are fixed in front only, their rear screws slotted."""
    base, stock = plan.design.base, plan.stocks.of("plinth")
    t, low, high = stock.thickness, base.foot_gap, base.height
    front = bench.lay(
        "plinth.front",
        "plinth, front",
        "plinth",
        stock,
        Box(-t, plan.width + t, -t, 0.0, low, high),
        u="+x",
        w="-y",
        fixing=Fixing("", (plan.width / 2, 0.0, high)),
    )
    returns = {}
    for hand, x0 in (("left", -t), ("right", plan.width)):
        returns[hand] = bench.lay(
            f"plinth.{hand}",
            f"plinth return, {hand}",
            "plinth",
            stock,
            Box(x0, x0 + t, -t, plan.depth, low, high),
            u="+y",
            w="-x" if hand == "left" else "+x",
            reference_edge="far" if hand == "left" else "near",
            fixing=Fixing("", (x0, 0.0, high)),
        )
    _mitres(bench, plan, front, returns)
    _blocks(bench, plan, returns)


def _mitres(bench: Bench, plan: CasePlan, front: Blank, returns: dict[str, Blank]) -> None:
    """Mitres across the thickness: each board loses a triangle that runs over its whole width."""
    t = plan.stocks.of("plinth").thickness
    corners = {"left": ((-t, -t), (0.0, 0.0)), "right": ((plan.width + t, -t), (plan.width, 0.0))}
    for hand, (toe, heel) in corners.items():
        side = returns[hand]
        _take_triangle(front, [toe, heel, (toe[0], heel[1])], f"mitre:{front.id}:{side.id}", side.name)
        _take_triangle(side, [toe, heel, (heel[0], toe[1])], f"mitre:{side.id}:{front.id}", front.name)
        bench.joints.append(
            Joint(
                f"mitre:{front.id}:{side.id}",
                "mitre",
                front.id,
                side.id,
                (side.id,),
                glued=True,
                sizes=(("angle", 45.0),),
            )
        )


def _take_triangle(board: Blank, corners: list[tuple[float, float]], cut_id: str, other: str) -> None:
    points = [board.frame.local((x, y, 0.0)) for x, y in corners]
    board.sink(
        "mitre",
        Face.NEAR,
        polygon((p[0], p[2]) for p in points),
        id=cut_id,
        purpose=f"mitre with {other}, tilt 45° from square",
    )


def _blocks(bench: Bench, plan: CasePlan, returns: dict[str, Blank]) -> None:
    """Foot blocks inside the corners: the case stands on their tops, they stand on the floor."""
    stock = plan.stocks.of("block")
    wide = plan.design.base.block
    thick = stock.thickness
    inner_rear = plan.depth
    for end, y0 in (("front", 0.0), ("rear", inner_rear - thick - 10.0)):
        for hand in ("left", "right"):
            x0 = 0.0 if hand == "left" else plan.width - wide
            held = 0.0 if hand == "left" else plan.width
            block = bench.lay(
                f"block.{end}-{hand}",
                f"foot block, {end} {hand}",
                "block",
                stock,
                Box(x0, x0 + wide, y0, y0 + thick, 0.0, plan.foot),
                u="+z",
                w="-y",
                fixing=Fixing("", (held, y0, plan.foot)),
            )
            butt(bench, returns[hand], block, glued=True)
            butt(bench, bench[f"side.{hand}"], block, glued=False)
            bench.hardware.append(Hardware(f"screw:{block.id}", "wood screw", 2, (block.id, f"plinth.{hand}")))
