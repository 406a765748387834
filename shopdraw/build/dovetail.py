"""Through dovetails between the top and the sides: tails on the top, sockets in the sides' upper ends."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Path, polygon, rectangle
from shopdraw.trade.species import species
from shopdraw.wood.assembly import Body, Joint
from shopdraw.wood.board import Face

TAIL_MM = 45.0
"""About how wide a tail is (common practice)."""
LEAST_PIN_MM = 6.0
"""No pin narrower than this at its narrow side (common practice)."""
SOFT_SG = 0.45
"""Under this specific gravity tails slope 1:6, else 1:8 (common practice)."""


@dataclass(frozen=True, slots=True)
class Tails:
    """A layout of tails along a corner, mm.

    Attributes:
        slope: 8 for 1:8.
        half_pin: at each end, at the tails' wide ends.
        pin: between two tails, there.
        spans: (from, to) of each tail at its wide end, measured from the corner's front.
        narrowing: how much narrower a tail is on each side at its root.
    """

    slope: float
    half_pin: float
    pin: float
    spans: tuple[tuple[float, float], ...]
    narrowing: float


def tails_along(
    length: float, thickness: float, slope: float, least_half_pin: float, count: int | None = None
) -> Tails:
    """Tails with equal half pins on a given length.

    Args:
        length: of the corner at the upper surface, mm.
        thickness: of the board that holds the sockets: the tails' length.
        slope: 8 for 1:8.
        least_half_pin: what the half pins may not fall below, at the tails' wide ends.
        count: of tails; by default as many as make them about 45 mm wide.
    Raises:
        CannotBuild: so many tails, or so short a corner, that a tail would be narrower at its root than a pin.
    """
    narrowing = thickness / slope
    pin = max(LEAST_PIN_MM, thickness / 2)
    half = max(least_half_pin, pin / 2 + narrowing)
    free = length - 2 * half
    most = int((free + pin) / (2 * pin + 2 * narrowing) + 1e-9)
    if most < 1:
        least = 2 * half + pin + 2 * narrowing
        raise CannotBuild(
            [
                fault(
                    "slant",
                    f"a top {length:.1f} mm deep",
                    f"expected at least {least:.1f} mm for one dovetail: a flatter slant or a deeper case",
                )
            ]
        )
    if count is not None and count > most:
        raise CannotBuild(
            [
                fault(
                    "case.tails",
                    f"{count} tails on {length:.1f} mm",
                    f"expected at most {most}: more would be narrower than their pins",
                )
            ]
        )
    count = count or min(most, max(2, round((free + pin) / (TAIL_MM + pin))))
    tail = (free - (count - 1) * pin) / count
    spans = tuple((half + i * (tail + pin), half + i * (tail + pin) + tail) for i in range(count))
    return Tails(slope, half, pin, spans, narrowing)


def tails_of(plan: CasePlan) -> Tails:
    """The layout of the top's tails; rear half pins leave 3 mm behind the back's rabbet."""
    slope = plan.design.case.tail_slope
    if slope is None:
        stock = plan.side
        soft = stock.kind == "solid" and species(stock.species).sg_12 < SOFT_SG
        slope = 6.0 if soft else 8.0
    narrowing = plan.side.thickness / slope
    return tails_along(
        plan.depth - plan.top_front,
        plan.side.thickness,
        slope,
        plan.rabbet_depth + 3.0 + narrowing,
        plan.design.case.tails,
    )


def dovetailed_top(bench: Bench, plan: CasePlan, top: Blank, sides: tuple[Blank, Blank]) -> None:
    """Cut tails on both ends of the top and their sockets in the sides."""
    tails = tails_of(plan)
    t = plan.side.thickness
    for side, into, inner, outer in zip(sides, ("-x", "+x"), (plan.left, plan.right), (0.0, plan.width), strict=True):
        top.grow(into, t)
        outlines = [_tail(plan, span, tails, inner, outer) for span in tails.spans]
        islands = [_in_plane(top.frame, outline, (0, 1), plan.height) for outline in outlines]
        low, high = top.low, top.high
        strip = (
            rectangle(low[0], low[1], low[0] + t, high[1])
            if into == "-x"
            else rectangle(high[0] - t, low[1], high[0], high[1])
        )
        cut_id = f"dovetail:{side.id}:top"
        top.sink(
            "dovetail",
            Face.FACE,
            strip,
            islands=islands,
            id=cut_id,
            purpose=f"tails into {side.name}, 1:{tails.slope:g}",
        )
        depth = plan.stocks.of("top").thickness
        for number, outline in enumerate(outlines, start=1):
            socket = _in_plane(side.frame, outline, (1, 2), plan.height)
            side.sink(
                "dovetail",
                Face.HEAD,
                socket,
                floor=plan.height - plan.foot - depth,
                id=f"{cut_id}.{number}",
                purpose="tail of the top, square by chisel",
            )
        bench.joints.append(
            Joint(
                cut_id,
                "dovetail",
                side.id,
                "top",
                ("top",),
                body=_body(outlines[0], plan.height, depth),
                sizes=(
                    ("slope", tails.slope),
                    ("tails", len(tails.spans)),
                    ("tail", tails.spans[0][1] - tails.spans[0][0] - 2 * tails.narrowing),
                    ("half-pin", tails.half_pin),
                    ("pin", tails.pin),
                ),
            )
        )


def _tail(
    plan: CasePlan, span: tuple[float, float], tails: Tails, inner: float, outer: float
) -> list[tuple[float, float]]:
    """A tail's corners in plan, world (x, y): wide at the side's outer face, narrow at its root."""
    y0, y1 = plan.top_front + span[0], plan.top_front + span[1]
    n = tails.narrowing
    return [(outer, y0), (inner, y0 + n), (inner, y1 - n), (outer, y1)]


def _in_plane(frame: Frame, corners: list[tuple[float, float]], axes: tuple[int, int], z: float) -> Path:
    points = [frame.local((x, y, z)) for x, y in corners]
    return polygon((p[axes[0]], p[axes[1]]) for p in points)


def _body(corners: list[tuple[float, float]], z: float, depth: float) -> Body:
    frame = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, z))
    return Body(frame, polygon(corners), depth)


__all__ = ["Tails", "dovetailed_top", "tails_along", "tails_of"]
