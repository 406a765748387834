"""The lid of a lectern hinged at its upper edge: between the sides, on stops, its reading face in the slant plane."""

from __future__ import annotations

import math

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.joinery import butt
from shopdraw.build.ledge import lay_ledge
from shopdraw.build.lid import BARREL_MM, STOP_FROM_END_MM, STOP_LENGTH_MM, STOP_WIDTH_MM
from shopdraw.build.screw import EDGE_ROOM_MM, hinge_screws
from shopdraw.build.upper_plan import UpperPlan
from shopdraw.shape.frame import Frame, Vec3, add, scale
from shopdraw.shape.path import circle, rectangle
from shopdraw.wood.assembly import Hardware, Motion
from shopdraw.wood.board import Face, Fixing, Lean

AXIS: Vec3 = (-1.0, 0.0, 0.0)
"""It opens upwards and back: right-handed about the line to the left."""


def lay_upper_lid(bench: Bench, plan: UpperPlan) -> Blank:
    """Lay the lid shut, with its hinges, ledge, stops, stays and motion."""
    s, half = plan.slant, plan.slant.joint_gap / 2
    up, out = _ways(plan)
    pin: Vec3 = (plan.width / 2, s.pin[0], s.pin[1])
    left = (plan.width - plan.lid_width) / 2
    foot = add((left, s.pin[0], s.pin[1]), scale(up, -plan.lid_length))
    frame = Frame((1.0, 0.0, 0.0), up, out, foot)
    thickness = plan.stocks.of("lid").thickness
    near, _ = _stop_span(plan)
    contact = add(add((plan.left, s.pin[0], s.pin[1]), scale(up, -near)), scale(out, -thickness))
    lid = bench.lay_in(
        "lid",
        "lid",
        "lid",
        plan.stocks.of("lid"),
        frame,
        plan.lid_width,
        plan.lid_length - half,
        fixing=Fixing("top", pin, Lean(pin, AXIS, "stop.left", contact, thickness)),
        reference_edge="far",
    )
    _hinges(bench, plan, lid)
    ledge = lay_ledge(bench, plan, lid, foot, up, out, plan.lid_width)
    bench.motions.append(Motion("lid", (lid.id, ledge.id), "turn", pin, AXIS, plan.swing))
    _stops(bench, plan)
    for hand in ("left", "right"):
        on = (lid.id, f"side.{hand}")
        bench.hardware.append(Hardware(f"stay.{hand}", "lid stay with stop", 1, on, (("length", plan.lid_length / 2),)))
    return lid


def _ways(plan: UpperPlan) -> tuple[Vec3, Vec3]:
    """Up the slope, and off the reading face."""
    alpha = math.radians(plan.slant.alpha)
    return (0.0, math.cos(alpha), math.sin(alpha)), (0.0, -math.sin(alpha), math.cos(alpha))


def _hinges(bench: Bench, plan: UpperPlan, lid: Blank) -> None:
    """Both leaves let into the lid's upper edge, so that the top's edge stays whole; half the barrel in each edge."""
    choice, s, top = plan.design.lid, plan.slant, bench["top"]
    half = choice.hinge_length / 2
    leaf = min(choice.hinge_leaf, lid.stock.thickness - 3.0)
    deep = 2 * choice.hinge_thickness - s.joint_gap
    first = (plan.width - plan.lid_width) / 2 + 1.5 * choice.hinge_length
    for number in range(1, choice.hinges + 1):
        x = first + (plan.width - 2 * first) * (number - 1) / (choice.hinges - 1)
        fitting = f"hinge.{number}"
        u = lid.frame.local((x, s.pin[0], s.pin[1]))[0]
        lid.sink(
            "hinge-leaf", Face.FAR, rectangle(u - half, -leaf, u + half, 0.0), floor=lid.high[1] - deep,
            id=f"hinge:lid:{fitting}", purpose="both hinge leaves",
        )  # fmt: skip
        for board in (top, lid):
            at = board.frame.local((x, s.pin[0], s.pin[1]))
            board.sink(
                "hinge-barrel", Face.FOOT, circle((at[1], at[2]), BARREL_MM), enter=at[0] - half, floor=at[0] + half,
                id=f"barrel:{board.id}:{fitting}", purpose="half of the hinge's barrel",
            )  # fmt: skip
        sizes = (("length", choice.hinge_length), ("leaf", leaf))
        bench.hardware.append(Hardware(fitting, "butt hinge", 1, ("top", "lid"), sizes))
    hinge_screws(bench, plan, ("top", "lid"), EDGE_ROOM_MM)


def _stop_span(plan: UpperPlan) -> tuple[float, float]:
    """From where to where along the lid, from the pin down, its stops lie."""
    lower = plan.lid_length - STOP_FROM_END_MM
    return max(lower - STOP_LENGTH_MM, plan.lid_length / 3), lower


def _stops(bench: Bench, plan: UpperPlan) -> None:
    """Short blocks on the sides' inner faces under the lid's lower corners; short, since they lie across the grain."""
    stock, thickness = plan.stocks.of("stop"), plan.stocks.of("lid").thickness
    near, far = _stop_span(plan)
    up, out = _ways(plan)
    deep = scale(out, -STOP_WIDTH_MM)
    for hand, x in (("left", plan.left), ("right", plan.right)):
        pin: Vec3 = (x, plan.slant.pin[0], plan.slant.pin[1])
        # held where the lid lies on it, at the end towards the pin
        held = add(add(pin, scale(up, -near)), scale(out, -thickness))
        low = add(add(pin, scale(up, -far)), scale(out, -thickness))
        # reference face on the side's: the frame's third axis points into the side
        if hand == "left":
            frame = Frame(up, scale(out, -1.0), (-1.0, 0.0, 0.0), low)
        else:
            frame = Frame(up, out, (1.0, 0.0, 0.0), add(low, deep))
        block = bench.lay_in(
            f"stop.{hand}", f"lid stop, {hand}", "stop", stock, frame, far - near, STOP_WIDTH_MM,
            fixing=Fixing(f"side.{hand}", held), reference_edge="near" if hand == "left" else "far",
        )  # fmt: skip
        butt(bench, bench[f"side.{hand}"], block, glued=True)
