"""A lectern's ledge: a strip along the lid's lower edge, on its outer face, that keeps a book from sliding off.

It goes with the lid: hinged below, a ledge fixed to the case would stand in the way of the lid's lower corner, which
swings round the pin in front of it.
"""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import butt
from shopdraw.shape.frame import Frame, Vec3, scale
from shopdraw.wood.board import Fixing

LEDGE_MM = 12.0
"""How far it stands over the lid's outer face (common practice)."""


def lay_ledge(bench: Bench, plan: CasePlan, lid: Blank, corner: Vec3, up: Vec3, out: Vec3, length: float) -> Blank:
    """Lay the ledge and glue it to the lid; the grain of both runs left to right.

    Args:
        corner: its lower left corner on the lid's outer face, world, mm.
        up: the way up the slope.
        out: the way off the lid's outer face.
        length: of the ledge, mm.
    """
    high = plan.design.lid.ledge or LEDGE_MM
    stock = plan.stocks.of("ledge")
    # its lower face is the reference face: u to the right, v off the lid, w down the slope
    frame = Frame((1.0, 0.0, 0.0), out, scale(up, -1.0), corner)
    middle = frame.point((length / 2, 0.0, 0.0))
    ledge = bench.lay_in(
        "lid.ledge", "ledge", "ledge", stock, frame, length, high, fixing=Fixing("lid", middle), reference_edge="far"
    )
    butt(bench, lid, ledge, glued=True)
    return ledge
