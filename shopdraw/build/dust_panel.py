"""Dust panels: plywood in grooves of a web frame's rails and runners, its tenons haunched into the same grooves.

The panels are fast to nothing. Where the rear rail moves with the sides, its groove is deep enough that the panel
neither bottoms in the driest season nor drops out in the wettest.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from shopdraw.build.bench import Bench, Blank, Box, Sunk
from shopdraw.build.case_plan import CasePlan
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Fixing

STILL_IN_MM = 4.0
"""What a panel keeps in its groove at the worst (common practice)."""
PLAY_MM = 0.5
"""Between a panel and its groove's floor."""


def groove_depth(plan: CasePlan, opens: float) -> float:
    """Depth of the panels' grooves, mm; 0 for frames without panels.

    Args:
        opens: how far the rear shoulders stand open at the most, mm.
    """
    if not plan.design.frame.dust_panels:
        return 0.0
    return float(math.ceil(max(8.0, STILL_IN_MM + PLAY_MM + opens)))


def haunch(plan: CasePlan, runner: Blank, front: str, rear: str, groove: float) -> None:
    """Leave a haunch beside a runner's tenons, as wide as the runner and as long as the rails' grooves are deep."""
    middle = (runner.low[2] + runner.high[2]) / 2
    half = plan.stocks.of("frame.panel").thickness / 2
    # the rear one stands back by the gap: when the rail comes nearer it must not bottom
    reach = groove - PLAY_MM
    for rail in (front, rear):
        cut_id = f"tenon:{runner.id}:{rail}"
        at = next(i for i, cut in enumerate(runner.cuts) if cut.id == cut_id)
        tenon = runner.cuts[at]
        sign = 1.0 if tenon.enter > tenon.floor else -1.0
        step = tenon.floor + sign * min(reach, abs(tenon.enter - tenon.floor))
        wide = rectangle(runner.low[1], middle - half, runner.high[1], middle + half)
        runner.cuts[at] = replace(tenon, floor=step)
        words = "haunch, fills the panel's groove"
        runner.cuts.append(
            Sunk("tenon", tenon.face, step, tenon.floor, tenon.outline, (wide,), f"haunch:{runner.id}:{rail}", words,
                 clipped=False)
        )  # fmt: skip


def lay_panels(
    bench: Bench,
    plan: CasePlan,
    key: str,
    words: str,
    front: Blank,
    rear: Blank,
    runners: Sequence[Blank],
    groove: float,
    gap: float,
) -> None:
    """Groove a frame's members and lay a panel between each two runners.

    Args:
        front, rear: its rails.
        runners: all of them, their tenons cut.
        groove: depth, mm.
        gap: at the runners' rear shoulders, mm.
    """
    stock, fit = plan.stocks.of("frame.panel"), plan.design.case.fit
    box = front.box()
    middle = (box.z0 + box.z1) / 2
    low, high = middle - stock.thickness / 2, middle + stock.thickness / 2
    slot = (low - fit / 2, high + fit / 2)
    y0, y1 = box.y1, rear.box().y0
    for rail, a, b, into in ((front, y0 - groove, y0, "-y"), (rear, y1, y1 + groove, "+y")):
        run = rail.box()._replace(y0=a, y1=b, z0=slot[0], z1=slot[1])
        rail.sink_box("groove", run, into, id=f"groove:{rail.id}:panels", purpose="dust panels")
    ordered = sorted(runners, key=lambda one: one.box().x0)
    for number, (left, right) in enumerate(pairwise(ordered), 1):
        x0, x1 = left.box().x1, right.box().x0
        for runner, edge, into in ((left, x0, "-x"), (right, x1, "+x")):
            run = runner.box()._replace(z0=slot[0], z1=slot[1])
            run = run._replace(x0=edge - groove) if into == "-x" else run._replace(x1=edge + groove)
            name = f"groove:{runner.id}:frame.{key}.panel-{number}"
            runner.sink_box("groove", run, into, id=name, purpose="dust panel")
        room = PLAY_MM + max(plan.season.gain(one.high[1] - one.low[1], one.stock) for one in (left, right))
        at = ((x0 + x1) / 2, y0, high)
        panel = bench.lay(
            f"frame.{key}.panel-{number}", f"dust panel {number}, {words}", "frame.panel", stock,
            Box(x0 - groove + room, x1 + groove - room, y0 - groove + PLAY_MM, y1 + groove - PLAY_MM - gap, low, high),
            u="+x", w="+z", fixing=Fixing(front.id, at),
        )  # fmt: skip
        for host in (front, rear, left, right):
            bench.joints.append(
                Joint(
                    f"panel:{host.id}:{panel.id}", "groove", host.id, panel.id, (panel.id,), fit=fit, glued=False,
                    floats=True, sizes=(("width", stock.thickness + fit), ("depth", groove)),
                )
            )  # fmt: skip
