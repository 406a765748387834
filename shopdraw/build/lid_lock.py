"""The lid's lock: its body let into the writing face, its bolt shot into the flat of the top's edge.

The bolt slides up the slope in the middle of the core's edge; the keeper's mortise in the top is in line with it, wide
enough for what the lid moves. Keyhole and escutcheon are on the show face.
"""

from __future__ import annotations

import math

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.lid_size import LidSize
from shopdraw.build.screw import EDGE_ROOM_MM, wood_screws
from shopdraw.build.slant import top_flat
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.build.top_edge import bevel_kept
from shopdraw.shape.path import circle, polygon, rectangle
from shopdraw.wood.assembly import Hardware
from shopdraw.wood.board import Face

LOCK_SCREWS, KEEPER_SCREWS = 4, 2
"""Screws of a lock and of its keeper (common practice)."""
SELVAGE_MM = 2.0
"""Thickness of the lock's plate, let into the core's edge; of the keeper's, too (common practice)."""
BOLT_WIDTH_MM, BOLT_THICKNESS_MM = 16.0, 3.0
BOLT_ROOM_MM = 1.0
"""Round the bolt in the keeper's mortise, and under its end."""
KEYHOLE_MM = 7.0
ESCUTCHEON_MM, ESCUTCHEON_DEPTH_MM = 22.0, 1.5
"""A round escutcheon, let in level (common practice)."""
LEAST_LEFT_MM = 4.0
"""Wood left between the lock and the show face."""
LEAST_INSIDE_MM = 2.0
"""Wood of the top behind the bolt's mortise, from the edge of its flat."""


def lay_lock(bench: Bench, plan: SlantPlan, lid: Blank, size: LidSize) -> None:
    """Cut the lock into the lid and its keeper into the top.

    Raises:
        CannotBuild: a lid that lies on the slant and has no edge of the top over it; a lock too deep for the lid, or
            a core or a flat too thin for its bolt.
    """
    choice, t = plan.design.lid, lid.stock.thickness
    if plan.design.slant is not None and plan.design.slant.seat == "on":
        right = "expected false: a lid on the slant has no edge of the top above it; rabbet it, or set it flush"
        raise CannotBuild([fault("lid.lock", "true", right)])
    most = t - LEAST_LEFT_MM
    if choice.lock_depth > most:
        right = f"expected at most {most:g} mm in a lid of {t:g} mm"
        raise CannotBuild([fault("lid.lock_depth", f"{choice.lock_depth:g} mm", right)])
    if not KEYHOLE_MM / 2 + SELVAGE_MM < choice.keyhole < choice.lock_height - KEYHOLE_MM / 2:
        right = f"expected {KEYHOLE_MM / 2 + SELVAGE_MM:g} to {choice.lock_height - KEYHOLE_MM / 2:g} mm"
        raise CannotBuild([fault("lid.keyhole", f"{choice.keyhole:g} mm", right)])
    middle = bolt_line(plan, size)
    edge = size.core_length - plan.slant.joint_gap / 2
    u, half = size.width / 2, choice.lock_width / 2
    body = rectangle(u - half, edge - choice.lock_height, u + half, edge)
    lid.sink("lock", Face.FACE, body, floor=-choice.lock_depth, id="lock:lid:body", purpose="body of the lock")
    lid.sink("bore", Face.FACE, circle((u, edge - choice.keyhole), KEYHOLE_MM / 2), id="keyhole:lid", purpose="keyhole")
    lid.sink(
        "escutcheon", Face.BACK, circle((u, edge - choice.keyhole), ESCUTCHEON_MM / 2),
        floor=-t + ESCUTCHEON_DEPTH_MM, id="escutcheon:lid", purpose="escutcheon, let in level",
    )  # fmt: skip
    _keeper(plan, bench["top"], size, middle)
    sizes = (("width", choice.lock_width), ("height", choice.lock_height), ("depth", choice.lock_depth))
    bench.hardware.append(Hardware("lock:lid", "lid lock", 1, (lid.id,), (*sizes, ("bolt", choice.bolt))))
    plate = (("length", _plate()), ("width", size.inset), ("thickness", SELVAGE_MM))
    bench.hardware.append(Hardware("keeper:lid", "lock keeper", 1, ("top",), plate))
    room = t - choice.lock_depth
    bench.hardware.append(wood_screws(plan, "screw:lock:lid", LOCK_SCREWS, (lid.id,), SELVAGE_MM, room))
    bench.hardware.append(wood_screws(plan, "screw:keeper:lid", KEEPER_SCREWS, ("top",), SELVAGE_MM, EDGE_ROOM_MM))
    bench.hardware.append(Hardware("escutcheon:lid", "escutcheon", 1, (lid.id,), (("diameter", ESCUTCHEON_MM),)))


def _plate() -> float:
    return BOLT_WIDTH_MM + 24.0


def bolt_line(plan: SlantPlan, size: LidSize) -> float:
    """How far inside the slant plane the middle of the bolt moves, mm: in the middle of the core's edge.

    Raises:
        CannotBuild: a core or a flat of the top too thin for it.
    """
    need = BOLT_THICKNESS_MM + 2 * BOLT_ROOM_MM
    core = size.inset
    if core < need:
        right = f"expected at least {need:g} mm, for the lock's bolt, or lid.lock = false"
        raise CannotBuild([fault("lid.rabbet", f"{core:g} mm", right)])
    flat = top_flat(plan.stocks.of("top").thickness, bevel_kept(plan), plan.slant.alpha)
    middle = min(core, 16.0) / 2
    if flat < middle + need / 2 + LEAST_INSIDE_MM:
        right = f"expected at least {middle + need / 2 + LEAST_INSIDE_MM:.1f} mm: a thicker top or a smaller bevel"
        raise CannotBuild([fault("lid.lock", f"a flat of {flat:.1f} mm on the top's edge for its bolt", right)])
    return middle


def _keeper(plan: SlantPlan, top: Blank, size: LidSize, middle: float) -> None:
    """The bolt's mortise in the flat of the top's front edge, and the seat of the keeper's plate round it."""
    s, alpha = plan.slant, math.radians(plan.slant.alpha)
    bevel = bevel_kept(plan)
    half = BOLT_THICKNESS_MM / 2 + BOLT_ROOM_MM

    def at(up: float, inside: float) -> tuple[float, float]:
        """(v, w) of a point `up` the slope from the flat, into the top, and `inside` the slant plane."""
        y = s.run - (bevel - up) * math.cos(alpha) + inside * math.sin(alpha)
        z = plan.height - (bevel - up) * math.sin(alpha) - inside * math.cos(alpha)
        local = top.frame.local((0.0, y, z))
        return (local[1], local[2])

    x = top.frame.local((plan.width / 2, 0.0, 0.0))[0]
    deep = plan.design.lid.bolt + size.gap + BOLT_ROOM_MM
    spans = (
        ("mortise", "bolt of the lid's lock", BOLT_WIDTH_MM / 2 + BOLT_ROOM_MM, deep, (middle - half, middle + half)),
        ("keeper", "keeper's plate", _plate() / 2, SELVAGE_MM, (0.0, 2 * middle)),
    )
    for kind, words, wide, depth, (low, high) in spans:
        corners = [at(-1.0, low), at(-1.0, high), at(depth, high), at(depth, low)]
        path = polygon(corners).anticlockwise()
        top.sink(kind, Face.FOOT, path, enter=x - wide, floor=x + wide, id=f"{kind}:top:lock", purpose=words)
