"""What holds the plinth to the case: foot blocks that carry the load, short glue blocks, slotted screws."""

from __future__ import annotations

import math
from collections.abc import Mapping

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.case_plan import WEB_TO_FOOT_MM, CasePlan
from shopdraw.build.joinery import butt
from shopdraw.build.profile import mould, profile
from shopdraw.build.screw import Passing, lay_screws, wood_screws
from shopdraw.build.slot import across_slot
from shopdraw.shape.path import circle
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Face, Fixing

GLUE_MM = 75.0
"""A return is glued to its side over this from the front; behind it, the side moves past it (common practice)."""
SCREW_HOLE_MM = 4.5
SLOT_ROOM_MM = 1.0
"""Added to what a side moves at a slot (common practice)."""
FIRST_MM, LAST_MM, APART_MM = 45.0, 45.0, 180.0
"""First screw behind the front, last before the rear, and how far apart they stand at most (common practice)."""
BLOCK_MM, BLOCK_LONG_MM = 20.0, 60.0
"""Section and length of a glue block: short, so that none spans over 75 mm across a side's grain (common practice)."""
BLOCK_EACH_MM = 220.0
"""A glue block for each so much of the plinth's inside (common practice)."""
SCREW_DOWN_MM = 18.0
"""From a foot block's top to its first screw, and to the second (common practice)."""
CLEAR_MM = 5.0
EASED = profile("chamfer", 2.0)
"""A foot block's lower edges, so that they don't split when the piece is pushed over a floor (common practice)."""


def fix_returns(bench: Bench, plan: CasePlan, returns: Mapping[str, Blank]) -> None:
    """Glue each return to its side in front, and screw it from inside the case; all screws but the first in slots."""
    last = plan.depth - plan.rabbet_depth - LAST_MM
    first = max(plan.side_front + FIRST_MM, FIRST_MM)
    count = 1 + max(1, math.ceil((last - first) / APART_MM))
    places = [first + (last - first) * n / (count - 1) for n in range(count)]
    z = plan.foot + WEB_TO_FOOT_MM / 2
    for hand, board in returns.items():
        side = bench[f"side.{hand}"]
        butt(bench, side, board, glued=True, glue=GLUE_MM)
        for number, y in enumerate(places, 1):
            u, v, _ = side.frame.local((plan.left if hand == "left" else plan.right, y, z))
            away = y - plan.side_front
            loss, gain = plan.season.loss(away, plan.side), plan.season.gain(away, plan.side)
            if number == 1:
                hole, kind, words = circle((u, v), SCREW_HOLE_MM / 2), "bore", "fast"
            else:
                # the side draws forward past the screw when it dries, so the slot reaches further behind it
                half = SLOT_ROOM_MM / 2
                ends = sorted(side.frame.local((0.0, y + step, z))[1] for step in (-gain - half, loss + half))
                hole, kind, words = across_slot(u, ends[0], ends[1], SCREW_HOLE_MM / 2), "slot", "may slide"
            purpose = f"screw into {board.name}, {words}"
            side.sink(kind, Face.FACE, hole, id=f"screw:{side.id}:{board.id}.{number}", purpose=purpose)
        on = (side.id, board.id)
        thick = board.stock.thickness
        bench.hardware.append(wood_screws(plan, f"screw:{board.id}", count, on, plan.side.thickness, thick))


def lay_foot_blocks(bench: Bench, plan: CasePlan, returns: Mapping[str, Blank]) -> None:
    """Foot blocks inside the corners: the case stands on their tops, they stand on the floor."""
    stock = plan.stocks.of("block")
    wide = plan.design.base.block
    thick = stock.thickness
    for end, y0 in (("front", 0.0), ("rear", plan.depth - thick - 10.0)):
        for hand in ("left", "right"):
            x0 = 0.0 if hand == "left" else plan.width - wide
            held = 0.0 if hand == "left" else plan.width
            block = bench.lay(
                f"block.{end}-{hand}",
                f"foot block, {end} {hand}",
                "block",
                stock,
                Box(x0, x0 + wide, y0, y0 + thick, 0.0, plan.foot),
                u="+z",
                w="-y",
                fixing=Fixing("", (held, y0, plan.foot)),
            )
            for edge in ("-x", "+x", "-y", "+y"):
                mould(block, edge, "-z", EASED, id=f"eased:{block.id}:{edge}", purpose="eased")
            board = returns[hand]
            # its grain is upright and the plinth's isn't: glued above, where the plinth is held, and dry below
            glued = min(GLUE_MM, plan.foot - plan.design.base.foot_gap)
            name, sizes = f"butt:{board.id}:{block.id}", (("glue-above", glued),)
            bench.joints.append(Joint(name, "butt", board.id, block.id, (block.id,), glued=True, sizes=sizes))
            butt(bench, bench[f"side.{hand}"], block, glued=False)
            # both near its top, where the plinth is held: below, the plinth moves past the block
            x, down = x0 + wide / 2, min(SCREW_DOWN_MM, plan.foot / 3)
            places = [
                Passing((x, y0 + thick * share, plan.foot - down * step)) for step, share in ((1, 0.3), (2, 0.7))
            ]
            lay_screws(bench, plan, block, board, "+x", places, board.stock.thickness)


def lay_glue_blocks(bench: Bench, plan: CasePlan, front: Blank, returns: Mapping[str, Blank]) -> None:
    """Short blocks in the corner of plinth and case: under the bottom in front, under the sides' lower ends beside."""
    stock, wide = plan.stocks.of("block"), plan.design.base.block
    under = plan.bottom_top - plan.stocks.of("bottom").thickness
    number = 0
    room = (plan.left + CLEAR_MM, plan.right - CLEAR_MM)
    # a face frame's lower rail hangs down behind the plinth
    framed = "face.rail-lower" in bench.blanks
    before, y0 = (bench["face.rail-lower"], plan.front) if framed else (front, 0.0)
    for x0 in _spread(max(room[0], wide + CLEAR_MM), min(room[1], plan.width - wide - CLEAR_MM)):
        number += 1
        box = Box(x0, x0 + BLOCK_LONG_MM, y0, bench["bottom"].box().y0 + BLOCK_MM, under - BLOCK_MM, under)
        block = _glue_block(bench, plan, number, box, "+x", "-y", before, (x0 + BLOCK_LONG_MM / 2, y0, under))
        butt(bench, bench["bottom"], block, glued=True)
    thick = stock.thickness
    for hand, board in returns.items():
        for start in _spread(thick + CLEAR_MM, plan.depth - thick - 10.0 - CLEAR_MM):
            number += 1
            x0 = 0.0 if hand == "left" else plan.width - BLOCK_MM
            box = Box(x0, x0 + BLOCK_MM, start, start + BLOCK_LONG_MM, plan.foot - BLOCK_MM, plan.foot)
            held = (0.0 if hand == "left" else plan.width, start, plan.foot)
            face = "-x" if hand == "left" else "+x"
            block = _glue_block(bench, plan, number, box, "+y", face, board, held)
            butt(bench, bench[f"side.{hand}"], block, glued=False)


def _glue_block(
    bench: Bench, plan: CasePlan, number: int, box: Box, u: str, w: str, host: Blank, held: tuple[float, float, float]
) -> Blank:
    block = bench.lay(
        f"block.glue-{number}",
        f"glue block {number}",
        "block.glue",
        plan.stocks.of("block.glue"),
        box,
        u=u,
        w=w,
        fixing=Fixing("", held),
    )
    butt(bench, host, block, glued=True)
    return block


def _spread(low: float, high: float) -> list[float]:
    """Where blocks begin, evenly over a stretch; none where not even one has room."""
    room = high - low
    count = max(1, round(room / BLOCK_EACH_MM))
    if room < count * (BLOCK_LONG_MM + CLEAR_MM):
        return []
    return [low + room * (2 * n + 1) / (2 * count) - BLOCK_LONG_MM / 2 for n in range(count)]
