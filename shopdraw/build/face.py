"""A face frame: two stiles and two rails before the case's front edges, mortised and tenoned, glued on."""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import Tenon, butt, mortise_and_tenon
from shopdraw.piece.design import FaceTable
from shopdraw.wood.board import Fixing

SHOULDER_MM = 8.0
"""From a rail's edges to its tenon (common practice)."""
BESIDE_PLINTH_MM = 0.3
"""Between a stile and the plinth's return besides what the stile may grow."""
DEEPER_MM = 2.0
"""A mortise is this much deeper than its tenon is long."""


def lay_face(bench: Bench, plan: CasePlan, face: FaceTable) -> None:
    """Lay and join the frame: its front in the front plane, its back on the case's front edges.

    The stiles are notched round the plinth's returns, with room to grow; the plinth hides it.

    Raises:
        CannotBuild: an overhang as wide as the stile, or rails too narrow for a tenon.
    """
    stock = plan.stocks.of("face")
    over = face.overhang
    if over >= face.stile - plan.side.thickness / 2:
        right = f"expected less than {face.stile - plan.side.thickness / 2:g} mm: the stiles are glued to the sides"
        raise CannotBuild([fault("face.overhang", f"{over:g} mm", right)])
    narrow = min((face.upper, "face.upper"), (face.lower, "face.lower"))
    if narrow[0] < 2 * SHOULDER_MM + 10.0:
        raise CannotBuild(
            [fault(narrow[1], f"{narrow[0]:g} mm", f"expected at least {2 * SHOULDER_MM + 10.0:g} mm, for its tenon")]
        )
    if face.tenon > face.stile - 8.0:
        raise CannotBuild([fault("face.tenon", f"{face.tenon:g} mm", f"expected at most {face.stile - 8.0:g} mm")])
    low, high = plan.foot, plan.side_top
    inner = {"left": face.stile - over, "right": plan.width - face.stile + over}
    stiles = {}
    for hand, x0, x1 in (("left", -over, inner["left"]), ("right", inner["right"], plan.width + over)):
        # the rails keep their length: a stile that grows does so outwards from their shoulders
        held = Fixing("", (inner[hand], 0.0, low))
        stiles[hand] = bench.lay(
            f"face.stile-{hand}", f"face frame, {hand} stile", "face", stock,
            Box(x0, x1, 0.0, plan.front, low, high), u="+z", w="-y",
            reference_edge="far" if hand == "left" else "near", fixing=held,
        )  # fmt: skip
        butt(bench, bench[f"side.{hand}"], stiles[hand], glued=True)
        room = plan.season.gain(face.stile, stock) + BESIDE_PLINTH_MM
        outer = (-over - 1.0, room) if hand == "left" else (plan.width - room, plan.width + over + 1.0)
        notch = Box(*outer, -1.0, plan.front + 1.0, low, plan.design.base.height)
        words = "room for the plinth's return"
        stiles[hand].sink_box("notch", notch, "+y", id=f"notch:face.stile-{hand}:plinth.{hand}", purpose=words)
    spans = {
        "upper": (high - face.upper, high),
        "lower": (max(low, plan.bottom_top - face.lower), plan.bottom_top),
    }
    for which, (z0, z1) in spans.items():
        at = z1 if which == "upper" else z0
        rail = bench.lay(
            f"face.rail-{which}", f"face frame, {which} rail", "face", stock,
            Box(inner["left"], inner["right"], 0.0, plan.front, z0, z1), u="+x", w="-y",
            fixing=Fixing("", (plan.width / 2, 0.0, at)),
        )  # fmt: skip
        _join(bench, plan, face, rail, stiles)
    frame_top = plan.design.case.top_joint == "overhanging"
    butt(bench, bench["frame.top.front" if frame_top else "top"], bench["face.rail-upper"], glued=True)
    butt(bench, bench["bottom"], bench["face.rail-lower"], glued=True)


def _join(bench: Bench, plan: CasePlan, face: FaceTable, rail: Blank, stiles: dict[str, Blank]) -> None:
    room = plan.season.gain(rail.high[1] - rail.low[1], rail.stock) + 0.1
    how = Tenon(
        rail.stock.thickness / 3,
        (SHOULDER_MM, SHOULDER_MM),
        face.tenon,
        face.tenon + DEEPER_MM,
        room=room,
        radius=plan.radius,
    )
    for hand, into in (("left", "-x"), ("right", "+x")):
        rail.shoulders = rail.shoulders or rail.high[0] - rail.low[0]
        mortise_and_tenon(bench, stiles[hand], rail, into, how, glued=True, purpose=rail.name)
