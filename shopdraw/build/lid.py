"""The lid: one panel, grain left to right, hinged on the writing shelf, in one of three seats."""

from __future__ import annotations

import math

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.breadboard import lay_caps
from shopdraw.build.joinery import butt
from shopdraw.build.lid_edge import mould, rabbets
from shopdraw.build.lid_lock import lay_lock
from shopdraw.build.lid_size import LidSize, lid_size
from shopdraw.build.screw import hinge_screws
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.shape.frame import Frame, Vec3, add, scale
from shopdraw.shape.path import Path, circle, rectangle
from shopdraw.wood.assembly import Hardware, Motion
from shopdraw.wood.board import Face, Fixing, Lean

STOP_LENGTH_MM = 70.0
STOP_WIDTH_MM = 15.0
"""A flush lid's stop block at each side (common practice)."""
STOP_FROM_END_MM = 15.0
BARREL_MM = 2.5
"""Radius of the hinge's barrel (common practice); half of it is let into each edge."""
INSIDE_CAP_MM = 10.0
AXIS: Vec3 = (1.0, 0.0, 0.0)


def lay_lid(bench: Bench, plan: SlantPlan) -> None:
    """Lay the lid shut, with its rabbets, hinge seats, motion and, for a flush seat, its stops."""
    size, s = lid_size(plan), plan.slant
    lid = _panel(bench, plan, size)
    caps = () if plan.design.lid.ends == "none" else lay_caps(bench, plan, lid)
    if plan.design.slant is not None and plan.design.slant.seat == "rabbeted":
        for board in (lid, *caps):
            rabbets(board, lid.frame, size, s.joint_gap / 2, plan.design.lid.rabbet_bevel)
    mould(plan, lid, caps, size)
    if plan.design.lid.lock:
        lay_lock(bench, plan, lid, size)
    _hinges(bench, plan, lid, size)
    pin = (0.0, s.pin[0], s.pin[1])
    bench.motions.append(Motion("lid", (lid.id, *(cap.id for cap in caps)), "turn", pin, AXIS, s.swing))
    if size.inset >= plan.stocks.of("lid").thickness - 1e-9:
        _stops(bench, plan, size)


def _panel(bench: Bench, plan: SlantPlan, size: LidSize) -> Blank:
    """The panel from half the joint gap above the pin to its upper end.

    The writing face is its reference face, the hinge edge its `near` edge.
    """
    s, stock = plan.slant, plan.stocks.of("lid")
    alpha = math.radians(s.alpha)
    up: Vec3 = (0.0, math.cos(alpha), math.sin(alpha))
    inwards: Vec3 = (0.0, math.sin(alpha), -math.cos(alpha))
    right = (plan.width + size.width) / 2
    y, z = s.on_slope(s.joint_gap / 2, s.pin_above)
    frame = Frame((-1.0, 0.0, 0.0), up, inwards, (right, y, z))
    middle = plan.width / 2
    # The hinge line is held with the front plane, where the shelf is fixed too.
    pin: Vec3 = (middle, s.pin[0], s.pin[1])
    return bench.lay_in(
        "lid",
        "lid",
        "lid",
        stock,
        frame,
        size.width,
        size.length - s.joint_gap / 2,
        fixing=Fixing("", pin, _rest(plan, size, pin)),
    )


def _rest(plan: SlantPlan, size: LidSize, pin: Vec3) -> Lean:
    """What the shut lid rests on: the sides' slant at the top, or for a flush lid its stops."""
    s = plan.slant
    if size.inset >= plan.stocks.of("lid").thickness - 1e-9:
        y, z = s.on_slope(stop_span(size)[0], s.pin_above)
        return Lean(pin, AXIS, "stop.left", (plan.left, y, z), s.pin_above)
    return Lean(pin, AXIS, "side.left", (0.0, s.run, s.z1), size.inset + s.pin_above)


def hinge_places(plan: SlantPlan, size: LidSize) -> tuple[float, ...]:
    """World x of the middles of the hinges: the outer ones their own length from the core's ends (common practice).

    Beside breadboard caps a leaf ends at least 10 mm inside the cap's shoulder.
    """
    lid = plan.design.lid
    first = (plan.width - size.core_width) / 2 + 1.5 * lid.hinge_length
    first = max(first, plan.left + 1.5 * lid.hinge_length)
    if lid.ends != "none":
        first = max(first, (plan.width - size.width) / 2 + lid.cap + INSIDE_CAP_MM + lid.hinge_length / 2)
    last = plan.width - first
    return tuple(first + (last - first) * i / (lid.hinges - 1) for i in range(lid.hinges))


def _hinges(bench: Bench, plan: SlantPlan, lid: Blank, size: LidSize) -> None:
    """Leaves let in to their thickness in shelf and lid, half the barrel in each edge; the pin on the writing face."""
    choice, s = plan.design.lid, plan.slant
    shelf = bench["shelf.writing"]
    leaf, half = choice.hinge_leaf, choice.hinge_length / 2
    for number, x in enumerate(hinge_places(plan, size), start=1):
        fitting = f"hinge.{number}"
        box = Box(x - half, x + half, 0.0, s.pin[0] + leaf, plan.writing - choice.hinge_thickness, plan.writing)
        shelf.sink_box("hinge-leaf", box, "-z", id=f"hinge:shelf.writing:{fitting}", purpose="hinge leaf")
        u = lid.frame.local((x, s.pin[0], s.pin[1]))[0]
        lid.sink(
            "hinge-leaf",
            Face.FACE,
            rectangle(u - half, 0.0, u + half, leaf - s.joint_gap / 2),
            floor=-choice.hinge_thickness,
            id=f"hinge:lid:{fitting}",
            purpose="hinge leaf",
        )
        for board in (shelf, lid):
            at = board.frame.local((x, s.pin[0], s.pin[1]))
            board.sink(
                "hinge-barrel",
                Face.FOOT,
                _barrel(at),
                enter=at[0] - half,
                floor=at[0] + half,
                id=f"barrel:{board.id}:{fitting}",
                purpose="half of the hinge's barrel",
            )
        bench.hardware.append(
            Hardware(
                fitting, "butt hinge", 1, ("shelf.writing", "lid"), (("length", choice.hinge_length), ("leaf", leaf))
            )
        )
    hinge_screws(bench, plan, ("shelf.writing", "lid"), min(shelf.stock.thickness, lid.stock.thickness))


def _barrel(at: Vec3) -> Path:
    return circle((at[1], at[2]), BARREL_MM)


def stop_span(size: LidSize) -> tuple[float, float]:
    """From where to where along the lid, from the pin, a flush lid's stops lie."""
    upper = size.length - STOP_FROM_END_MM
    return max(upper - STOP_LENGTH_MM, size.length / 3), upper


def _stops(bench: Bench, plan: SlantPlan, size: LidSize) -> None:
    """Short blocks on the sides' inner faces behind the lid's upper corners; short, since they lie across the grain."""
    s, stock = plan.slant, plan.stocks.of("stop")
    low, high = stop_span(size)
    alpha = math.radians(s.alpha)
    up: Vec3 = (0.0, math.cos(alpha), math.sin(alpha))
    out: Vec3 = (0.0, -math.sin(alpha), math.cos(alpha))
    y, z = s.on_slope(low, s.pin_above)
    inwards: Vec3 = (0.0, -out[1], -out[2])
    deep = scale(inwards, STOP_WIDTH_MM)
    for hand, x, w, v, corner in (
        ("left", plan.left, (-1.0, 0.0, 0.0), inwards, (plan.left, y, z)),
        ("right", plan.right, (1.0, 0.0, 0.0), out, add((plan.right, y, z), deep)),
    ):
        bench.lay_in(
            f"stop.{hand}",
            f"lid stop, {hand}",
            "stop",
            stock,
            Frame(up, v, w, corner),
            high - low,
            STOP_WIDTH_MM,
            fixing=Fixing(f"side.{hand}", (x, y, z)),
            reference_edge="near" if hand == "left" else "far",
        )
        butt(bench, bench[f"side.{hand}"], bench[f"stop.{hand}"], glued=True)
