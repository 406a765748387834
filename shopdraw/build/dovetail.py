"""Dovetails between the top and the sides: through, or half-blind with clean case sides or a clean upper surface.

Through and with clean sides the tails stand on the top, their sockets in the sides' upper ends. With a clean upper
surface the tails stand on the sides, which end under the lap, their sockets in the top's ends.
"""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.tails import (
    LEAST_PIN_MM,
    NoRoom,
    Tails,
    in_plane,
    prism_body,
    slope_of,
    tails_along,
    tails_on_pitch,
    trapezoid,
)
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Face

BEHIND_RABBET_MM = 3.0
"""Wood of the rear half pin behind the back's rabbet."""


def tail_length(plan: CasePlan) -> float:
    """How long the top's or the sides' tails are, mm.

    Raises:
        CannotBuild: a lap that leaves too little of them.
    """
    thick = plan.stocks.of("top").thickness if plan.design.case.dovetails == "clean-top" else plan.side.thickness
    deep = thick - plan.lap
    if deep < thick / 2:
        right = f"expected at most {thick / 2:.1f} mm of {thick:g}: the tails go halfway in at least"
        raise CannotBuild([fault("case.dovetail_lap", f"{plan.lap:g} mm", right)])
    return deep


def tails_of(plan: CasePlan) -> Tails:
    """The layout of the corner's tails, from the front; rear half pins leave 3 mm behind the back's rabbet.

    It lies on the top's depth at its upper surface.

    Raises:
        CannotBuild: more tails than there is room for, or a depth without room for one.
    """
    case, deep, length = plan.design.case, tail_length(plan), plan.depth - plan.top_front
    slope = slope_of(plan.side, case.tail_slope)
    narrowing = deep / slope
    pin = max(LEAST_PIN_MM, deep / 2)
    half = max(plan.rabbet_depth + BEHIND_RABBET_MM + narrowing, pin / 2 + narrowing)
    try:
        if case.tail_pitch is None:
            return tails_along(length, deep, slope, half, pin, count=case.tails)
        return tails_on_pitch(length, deep, slope, half, pin, case.tail_pitch, case.tails)
    except NoRoom as error:
        if error.most and case.tails is not None:
            right = f"expected at most {error.most}: more would be narrower than their pins"
            raise CannotBuild([fault("case.tails", f"{case.tails} tails on {length:.1f} mm", right)]) from error
        least_pitch = 2 * pin + 2 * narrowing
        if case.tail_pitch is not None and case.tail_pitch < least_pitch:
            right = f"expected at least {least_pitch:.1f} mm: a tail no narrower at its root than a pin"
            raise CannotBuild([fault("case.tail_pitch", f"{case.tail_pitch:g} mm", right)]) from error
        right = f"expected at least {error.least:.1f} mm for one dovetail: a flatter slant or a deeper case"
        where = "slant" if plan.design.slant is not None else "case.depth"
        raise CannotBuild([fault(where, f"a top {length:.1f} mm deep", right)]) from error


def dovetailed_top(bench: Bench, plan: CasePlan, top: Blank, sides: tuple[Blank, Blank]) -> None:
    """Cut the tails and their sockets into the top's ends and the sides' upper ends."""
    tails = tails_of(plan)
    for side, out, inner in zip(sides, ("-x", "+x"), (plan.left, plan.right), strict=True):
        if plan.design.case.dovetails == "clean-top":
            _tails_on_side(bench, plan, top, side, out, inner, tails)
        else:
            _tails_on_top(bench, plan, top, side, out, inner, tails)


def _tails_on_top(bench: Bench, plan: CasePlan, top: Blank, side: Blank, out: str, inner: float, tails: Tails) -> None:
    """Tails on an end of the top; what the side keeps before their ends is the lap."""
    t, deep = plan.side.thickness - plan.lap, plan.stocks.of("top").thickness
    end = inner + (t if out[0] == "+" else -t)
    top.grow(out, t)
    drawn = [
        trapezoid(span, tails.narrowing, begin=plan.top_front, wide_at=end, narrow_at=inner) for span in tails.spans
    ]
    placed: list[list[Vec3]] = [[(x, y, plan.height) for x, y in corners] for corners in drawn]
    low, high = top.low, top.high
    strip = (
        rectangle(low[0], low[1], low[0] + t, high[1])
        if out == "-x"
        else rectangle(high[0] - t, low[1], high[0], high[1])
    )
    cut_id = f"dovetail:{side.id}:top"
    top.sink(
        "dovetail",
        Face.FACE,
        strip,
        islands=[in_plane(top.frame, corners, (0, 1)) for corners in placed],
        id=cut_id,
        purpose=f"tails into {side.name}, 1:{tails.slope:g}",
    )
    for number, corners in enumerate(placed, start=1):
        side.sink(
            "dovetail",
            Face.HEAD,
            in_plane(side.frame, corners, (1, 2)),
            floor=plan.height - plan.foot - deep,
            id=f"{cut_id}.{number}",
            purpose="tail of the top, square by chisel",
        )
    body = prism_body(placed[0], "+z", deep)
    bench.joints.append(Joint(cut_id, "dovetail", side.id, "top", ("top",), body=body, sizes=_sizes(plan, tails)))


def _tails_on_side(bench: Bench, plan: CasePlan, top: Blank, side: Blank, out: str, inner: float, tails: Tails) -> None:
    """Tails on a side's upper end, which the top covers by the lap; the top's end shows its pins."""
    t, root = plan.side.thickness, plan.height - plan.stocks.of("top").thickness
    outer = inner + (t if out[0] == "+" else -t)
    top.grow(out, t)
    drawn = [
        trapezoid(span, tails.narrowing, begin=plan.top_front, wide_at=plan.side_top, narrow_at=root)
        for span in tails.spans
    ]
    placed: list[list[Vec3]] = [[(outer, y, z) for z, y in corners] for corners in drawn]
    around: list[Vec3] = [(outer, y, z) for y in (plan.front, plan.depth) for z in (root, plan.side_top)]
    us, vs = zip(*(side.frame.local(point)[:2] for point in around), strict=True)
    cut_id = f"dovetail:top:{side.id}"
    side.sink(
        "dovetail",
        Face.FACE,
        rectangle(min(us), min(vs), max(us), max(vs)),
        islands=[in_plane(side.frame, corners, (0, 1)) for corners in placed],
        id=cut_id,
        purpose=f"tails into the top, 1:{tails.slope:g}",
    )
    axis, sign = top.axis_of(out)
    if axis != 0:
        raise ValueError("the top's ends hold the sockets")
    floor = top.frame.local((inner, 0.0, 0.0))[0]
    for number, corners in enumerate(placed, start=1):
        top.sink(
            "dovetail",
            Face.HEAD if sign > 0 else Face.FOOT,
            in_plane(top.frame, corners, (1, 2)),
            floor=floor,
            id=f"{cut_id}.{number}",
            purpose=f"tail of {side.name}, square by chisel",
        )
    body = prism_body(placed[0], out, t)
    bench.joints.append(Joint(cut_id, "dovetail", "top", side.id, (side.id,), body=body, sizes=_sizes(plan, tails)))


def _sizes(plan: CasePlan, tails: Tails) -> tuple[tuple[str, float], ...]:
    return tails.sizes() if plan.lap == 0.0 else (*tails.sizes(), ("lap", plan.lap))


__all__ = ["BEHIND_RABBET_MM", "Tails", "dovetailed_top", "tails_of"]
