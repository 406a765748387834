"""The plinth: a front and two returns wrapped round the case's foot, mitred, shaped below and moulded above."""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.plinth_edge import shaped_edge
from shopdraw.build.plinth_fixing import fix_returns, lay_foot_blocks, lay_glue_blocks
from shopdraw.build.plinth_mitre import edge_size, lay_mitres
from shopdraw.build.profile import edge_profile, mould
from shopdraw.wood.board import Fixing


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
    for board in (front, *returns.values()):
        _shape(plan, board)
    lay_mitres(bench, plan, front, returns)
    _mould(plan, front, returns)
    fix_returns(bench, plan, returns)
    lay_foot_blocks(bench, plan, returns)
    if base.glue_blocks:
        lay_glue_blocks(bench, plan, front, returns)


def _shape(plan: CasePlan, board: Blank) -> None:
    """Saw the lower edge to its shape; a board whose width runs downwards has it at its far edge."""
    outline = shaped_edge(plan, board.high[0])
    if outline is None:
        return
    high = board.high[1]
    down = board.frame.v[2] < 0.0
    board.outline = outline.mapped(lambda p: (p[0], high - p[1]), mirrored=True) if down else outline


def _mould(plan: CasePlan, front: Blank, returns: dict[str, Blank]) -> None:
    """The moulding on the upper outer edges; it mitres with the boards."""
    size = edge_size(plan)
    if not size or plan.design.base.edge == "square":
        return
    made = edge_profile(plan.design.base.edge, size)
    for board, face in ((front, "-y"), (returns["left"], "-x"), (returns["right"], "+x")):
        mould(board, "+z", face, made, id=f"moulding:{board.id}", purpose="moulding, upper edge")


