"""The plinth's mitres: across the thickness, plain or with a spline or biscuits let into both of their faces."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.shape.frame import Frame, Vec3, cross, scale
from shopdraw.shape.path import polygon, rectangle
from shopdraw.trade.hardware import Biscuit, biscuits
from shopdraw.wood.assembly import Body, Hardware, Joint
from shopdraw.wood.board import Face, Fixing

FROM_HEEL = 1 / 3
"""Where a spline stands, as a share of the mitre from its heel: the toe is too thin for it (common practice)."""
DEEP_SHARE = 0.3
"""Depth of a spline's groove in each board, as a share of the plinth's thickness (common practice)."""
FIT_MM, FLOOR_MM, END_MM = 0.1, 0.5, 1.0
"""A spline's groove wider than it, deeper than it on each side, longer than it at its end (common practice)."""
UNDER_EDGE_MM = 12.0
"""A groove ends at least so far under the plinth's upper edge, and under its moulding (common practice)."""
LEFT_MM = 3.0
"""Wood left outside a biscuit's slot, at least (common practice)."""
SLOT_LONGER_MM, SLOT_DEEPER_MM = 3.0, 1.0
"""A biscuit's slot longer than it in all, and deeper on each side (common practice)."""


@dataclass(frozen=True, slots=True)
class Mitre:
    """One mitre of the plinth, seen from above.

    Attributes:
        hand: "left" or "right".
        heel: its inner end, world (x, y).
        inward: +1 where the front lies right of it, -1 on the right.
        thick: of the boards.
    """

    hand: str
    heel: tuple[float, float]
    inward: float
    thick: float

    @property
    def toe(self) -> tuple[float, float]:
        """Its outer end."""
        return self.heel[0] - self.inward * self.thick, self.heel[1] - self.thick

    @property
    def along(self) -> Vec3:
        """Unit direction from heel to toe."""
        return (-self.inward * _HALF, -_HALF, 0.0)

    @property
    def to_front(self) -> Vec3:
        """Unit direction square to the mitre's face, into the front."""
        return (self.inward * _HALF, -_HALF, 0.0)

    def at(self, along: float, into_front: float, z: float) -> Vec3:
        """A point so far from the heel along the mitre and so far into the front."""
        a, n = self.along, self.to_front
        x, y = self.heel
        return (x + a[0] * along + n[0] * into_front, y + a[1] * along + n[1] * into_front, z)


_HALF = math.sqrt(0.5)


def lay_mitres(bench: Bench, plan: CasePlan, front: Blank, returns: Mapping[str, Blank]) -> None:
    """Cut both mitres and what strengthens them."""
    thick = front.stock.thickness
    for mitre in (Mitre("left", (0.0, 0.0), 1.0, thick), Mitre("right", (plan.width, 0.0), -1.0, thick)):
        side = returns[mitre.hand]
        toe, heel = mitre.toe, mitre.heel
        _take(front, [toe, heel, (toe[0], heel[1])], f"mitre:{front.id}:{side.id}", side.name)
        _take(side, [toe, heel, (heel[0], toe[1])], f"mitre:{side.id}:{front.id}", front.name)
        name = f"mitre:{front.id}:{side.id}"
        sizes = (("angle", 45.0),)
        bench.joints.append(Joint(name, "mitre", front.id, side.id, (side.id,), glued=True, sizes=sizes))
        if plan.design.base.mitre == "spline":
            _spline(bench, plan, mitre, front, side)
        elif plan.design.base.mitre == "biscuits":
            _biscuits(bench, plan, mitre, front, side)


def _take(board: Blank, corners: list[tuple[float, float]], cut_id: str, other: str) -> None:
    """A triangle that runs over the board's whole width."""
    points = [board.frame.local((x, y, 0.0)) for x, y in corners]
    board.sink(
        "mitre",
        Face.NEAR,
        polygon((p[0], p[2]) for p in points),
        id=cut_id,
        purpose=f"mitre with {other}, tilt 45° from square",
    )


def _slot(
    board: Blank, mitre: Mitre, along: float, half: tuple[float, float], span: tuple[float, float], **words: str
) -> None:
    """A slot square to the mitre's face, cut along it: entered from the board's lower edge.

    Args:
        along: its middle, from the heel, mm.
        half: half its width, and its depth in each board, mm.
        span: world z of its two ends.
        words: kind, id and purpose.
    """
    wide, deep = half
    ends = [(along - wide, -deep), (along + wide, -deep), (along + wide, deep), (along - wide, deep)]
    points = [board.frame.local(mitre.at(a, n, 0.0)) for a, n in ends]
    low, high = (board.frame.local((0.0, 0.0, z))[1] for z in span)
    board.sink(
        words["kind"],
        Face.NEAR if low < high else Face.FAR,
        polygon((p[0], p[2]) for p in points),
        enter=low,
        floor=high,
        id=words["id"],
        purpose=words["purpose"],
    )


def _spline(bench: Bench, plan: CasePlan, mitre: Mitre, front: Blank, side: Blank) -> None:
    """A spline over the mitre's height but its upper end; it slides in from below."""
    base, stock = plan.design.base, plan.stocks.of("plinth.spline")
    along, deep = FROM_HEEL * mitre.thick * math.sqrt(2.0), round(DEEP_SHARE * mitre.thick * 2) / 2
    wide = stock.thickness + FIT_MM
    reach = (along + wide / 2 + deep + FLOOR_MM) * _HALF
    if reach > mitre.thick - LEFT_MM:
        right = f"expected a spline thinner than {stock.thickness:g} mm, or a thicker plinth"
        raise CannotBuild([fault("use.plinth.spline", f"{stock.thickness:g} mm in {mitre.thick:g} mm", right)])
    low, high = base.foot_gap, base.height - under_edge(plan)
    spline = bench.lay_in(
        f"plinth.spline-{mitre.hand}",
        f"spline of the plinth's mitre, {mitre.hand}",
        "plinth.spline",
        stock,
        _spline_frame(mitre, along + stock.thickness / 2, deep, low),
        2 * deep,
        high - END_MM - low,
        fixing=Fixing(front.id, mitre.at(along, 0.0, high - END_MM)),
    )
    for board, sign in ((front, 1.0), (side, -1.0)):
        name = f"groove:{board.id}:{spline.id}"
        _slot(
            board, mitre, along, (wide / 2, deep + FLOOR_MM), (low, high),
            kind="groove", id=name, purpose=f"{spline.name}, square to the mitre",
        )  # fmt: skip
        out = scale(mitre.to_front, -sign)
        up: Vec3 = (0.0, 0.0, 1.0)
        frame = Frame(up, cross(out, up), out, mitre.at(along, 0.0, 0.0))
        half = stock.thickness / 2
        bench.joints.append(
            Joint(
                name,
                "groove",
                board.id,
                spline.id,
                (spline.id,),
                body=Body(frame, rectangle(low, -half, high - END_MM, half), deep),
                fit=FIT_MM,
                relief=FLOOR_MM,
                glued=True,
                gap=END_MM,
                sizes=(("width", wide), ("depth", deep + FLOOR_MM)),
            )
        )


def _spline_frame(mitre: Mitre, along: float, deep: float, low: float) -> Frame:
    """Grain across the mitre, width up; the reference face towards the toe."""
    u = mitre.to_front if mitre.inward > 0 else scale(mitre.to_front, -1.0)
    up: Vec3 = (0.0, 0.0, 1.0)
    w = cross(u, up)
    start = -deep if mitre.inward > 0 else deep
    return Frame(u, up, w, mitre.at(along, start, low))


def under_edge(plan: CasePlan) -> float:
    """How far under the plinth's upper edge a groove in its mitre ends, mm."""
    return max(UNDER_EDGE_MM, edge_size(plan) + UNDER_EDGE_MM / 2)


def edge_size(plan: CasePlan) -> float:
    """Size of the moulding on the plinth's upper edge, mm; 0 where it is square.

    Raises:
        CannotBuild: one that leaves too little of the boards.
    """
    base, thick = plan.design.base, plan.stocks.of("plinth").thickness
    if base.edge == "square":
        return 0.0
    size = base.edge_size if base.edge_size is not None else round(0.4 * thick * 2) / 2
    most = min(thick - LEFT_MM, base.height / 3)
    if size > most:
        right = f"expected at most {most:g} mm on a plinth {thick:g} mm thick and {base.height:g} mm high"
        raise CannotBuild([fault("base.edge_size", f"{size:g} mm", right)])
    return size


def _biscuits(bench: Bench, plan: CasePlan, mitre: Mitre, front: Blank, side: Blank) -> None:
    """Biscuits one over the other, of the largest size that leaves enough wood outside its slot."""
    base = plan.design.base
    along = FROM_HEEL * mitre.thick * math.sqrt(2.0)
    one = _largest(plan, mitre.thick, along)
    low, high = base.foot_gap, base.height - under_edge(plan) / 2
    long = one.length_mm + SLOT_LONGER_MM
    count = max(1, int((high - low) // (long + 2 * UNDER_EDGE_MM)))
    if long > high - low - UNDER_EDGE_MM:
        least = base.height + long - (high - low) + UNDER_EDGE_MM
        right = f"expected at least {least:.0f} mm for biscuits, or a spline"
        raise CannotBuild([fault("base.height", f"{base.height:g} mm", right)])
    wide, deep = one.thickness_mm, one.width_mm / 2 + SLOT_DEEPER_MM
    for number in range(count):
        middle = low + (high - low) * (2 * number + 1) / (2 * count)
        for board in (front, side):
            _slot(
                board, mitre, along, (wide / 2, deep), (middle - long / 2, middle + long / 2), kind="slot",
                id=f"biscuit:{board.id}:{mitre.hand}.{number + 1}", purpose=f"biscuit {one.key}, square to the mitre",
            )  # fmt: skip
    sizes = (("length", one.length_mm), ("width", one.width_mm), ("thickness", one.thickness_mm))
    on = (front.id, side.id)
    bench.hardware.append(Hardware(f"biscuit:plinth.{mitre.hand}", f"biscuit {one.key}", count, on, sizes))


def _largest(plan: CasePlan, thick: float, along: float) -> Biscuit:
    fits = [
        one
        for one in biscuits()
        if (along + one.thickness_mm / 2 + one.width_mm / 2 + SLOT_DEEPER_MM) * _HALF <= thick - LEFT_MM
    ]
    if not fits:
        right = 'expected base.mitre = "spline" or "plain": no biscuit has room in such a mitre'
        raise CannotBuild([fault("base.mitre", f'"{plan.design.base.mitre}" in {thick:g} mm', right)])
    return fits[-1]
