"""The back in the rear rabbets: plywood, shiplapped boards with room to move, or a frame with floating panels."""

from __future__ import annotations

import math
from collections.abc import Sequence

from shopdraw.build.back_frame import lay_back_frame
from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import back_upper
from shopdraw.build.case_plan import CasePlan, Season
from shopdraw.build.joinery import butt
from shopdraw.build.screw import EDGE_ROOM_MM, wood_screws
from shopdraw.piece.design import BackTable
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Fixing, Stock

NAIL_EACH_MM = 150.0
"""A plywood back is screwed all round, no further apart (common practice)."""
PLAY_MM = 0.5
"""Kept beside every computed movement gap."""
LAP_TIMES = 3.0
"""A lap covers three times what a board moves over the whole range (common practice)."""
LEAST_LAP_MM = 6.0
LEAST_BOARD_MM = 40.0
MOST_BOARD_MM = 150.0
"""Wider boards cup (common practice)."""


def lay_back(bench: Bench, plan: CasePlan, hosts: Sequence[Blank]) -> None:
    """Lay the back; each of its boards is fixed to the sides or to what lies between them.

    Args:
        hosts: what it is fixed to besides the sides.
    """
    kind = plan.design.back.kind
    if kind == "boards":
        _boards(bench, plan, hosts)
    elif kind == "frame":
        lay_back_frame(bench, plan, hosts, seat(plan))
    else:
        _panel(bench, plan, hosts)


def seat(plan: CasePlan) -> Box:
    """What the rabbets hold, without any clearance; its depth is the rabbets'."""
    return Box(
        plan.left - plan.rabbet_width,
        plan.right + plan.rabbet_width,
        plan.rear,
        plan.depth,
        plan.bottom_top - plan.stocks.of("bottom").thickness,
        back_upper(plan),
    )


def _panel(bench: Bench, plan: CasePlan, hosts: Sequence[Blank]) -> None:
    """Plywood, smaller than its seat by its clearance each way; it squares the case."""
    stock, play, room = plan.stocks.of("back"), plan.design.back.clearance / 2, seat(plan)
    box = room._replace(x0=room.x0 + play, x1=room.x1 - play, y1=room.y0 + stock.thickness, z1=room.z1 - 2 * play)
    held = Fixing("side.left", (plan.width / 2, plan.rear, box.z0))
    back = bench.lay("back", "back", "back", stock, box, u="+z", w="-y", fixing=held)
    around = (bench["side.left"], bench["side.right"], *hosts)
    for host in around:
        butt(bench, host, back, glued=False)
    count = 2 * math.ceil((box.x1 - box.x0) / NAIL_EACH_MM) + 2 * math.ceil((box.z1 - box.z0) / NAIL_EACH_MM)
    on = (back.id, *(host.id for host in around))
    bench.hardware.append(wood_screws(plan, "screw:back", count, on, stock.thickness, EDGE_ROOM_MM))


def board_count(table: BackTable, wide: float) -> int:
    """How many shiplapped boards cover a back."""
    return max(2, round(wide / table.board))


def least_lap(season: Season, stock: Stock, board: float) -> float:
    """What a lap needs over what one board moves over the whole range, mm."""
    return LAP_TIMES * (season.loss(board, stock) + season.gain(board, stock))


def least_gap(season: Season, stock: Stock, board: float) -> float:
    """What two boards need between them at build, so that they don't push each other in the wettest season, mm."""
    return season.gain(board, stock) + PLAY_MM


def lap_of(plan: CasePlan, stock: Stock, board: float) -> float:
    """How far a board laps over the next one, mm."""
    given = plan.design.back.lap
    return given if given is not None else max(LEAST_LAP_MM, math.ceil(2 * least_lap(plan.season, stock, board)) / 2)


def gap_of(plan: CasePlan, stock: Stock, board: float) -> float:
    """How far a board's edge stands off the next one's shoulder at build, mm."""
    given = plan.design.back.gap
    return given if given is not None else math.ceil(10 * least_gap(plan.season, stock, board)) / 10


def _boards(bench: Bench, plan: CasePlan, hosts: Sequence[Blank]) -> None:
    """Boards with their grain up, each held by one screw on what it crosses, lapped by half their thickness.

    Raises:
        CannotBuild: boards too narrow or too wide, or a lap that leaves nothing of them.
    """
    table, stock, room = plan.design.back, plan.stocks.of("back.board"), seat(plan)
    count = board_count(table, room.x1 - room.x0)
    pitch = (room.x1 - room.x0) / count
    if not LEAST_BOARD_MM <= pitch <= MOST_BOARD_MM:
        right = f"expected {LEAST_BOARD_MM:g} to {MOST_BOARD_MM:g} mm"
        raise CannotBuild([fault("back.board", f"{table.board:g} mm", right)])
    gap = gap_of(plan, stock, pitch)
    lap = lap_of(plan, stock, pitch)
    if lap + gap > pitch / 3:
        right = f"expected at most {pitch / 3 - gap:.1f} mm, a third of a board less its gap"
        raise CannotBuild([fault("back.lap", f"{lap:g} mm", right)])
    play = max(table.clearance / 2, plan.season.gain(pitch, stock) / 2 + PLAY_MM)
    half, t = lap / 2, stock.thickness
    before: Blank | None = None
    for number in range(1, count + 1):
        x0, x1 = room.x0 + (number - 1) * pitch, room.x0 + number * pitch
        low = x0 + play if number == 1 else x0 - half
        high = x1 - play if number == count else x1 + half
        middle = (x0 + x1) / 2
        board = bench.lay(
            f"back.{number}", f"back, board {number}", "back.board", stock,
            Box(low, high, room.y0, room.y0 + t, room.z0, room.z1 - table.clearance), u="+z", w="-y",
            fixing=Fixing("side.left", (middle, plan.rear, room.z0)),
        )  # fmt: skip
        box = board.box()
        if number > 1:
            # behind the one before: its own front half is taken off
            cut = box._replace(x1=low + lap + gap, y1=room.y0 + t / 2)
            board.sink_box("rabbet", cut, "+y", id=f"rabbet:{board.id}:back.{number - 1}", purpose="lap, behind")
        if number < count:
            cut = box._replace(x0=high - lap - gap, y0=room.y0 + t / 2)
            board.sink_box("rabbet", cut, "-y", id=f"rabbet:{board.id}:back.{number + 1}", purpose="lap, in front")
        _fix(bench, plan, board, hosts, count)
        if before is not None:
            sizes = (("lap", lap), ("gap", gap))
            bench.joints.append(
                Joint(
                    f"lap:{before.id}:{board.id}", "lap", before.id, board.id, (board.id,), glued=False, floats=True,
                    gap=gap, sizes=sizes,
                )
            )  # fmt: skip
        before = board


def _fix(bench: Bench, plan: CasePlan, board: Blank, hosts: Sequence[Blank], count: int) -> None:
    """One screw on each board that it crosses, in its middle; the outer ones lie in the sides' rabbets besides."""
    if board.id == "back.1":
        butt(bench, bench["side.left"], board, glued=False)
    if board.id == f"back.{count}":
        butt(bench, bench["side.right"], board, glued=False)
    for host in hosts:
        butt(bench, host, board, glued=False)
    on = (board.id, *(host.id for host in hosts))
    screws = wood_screws(plan, f"screw:{board.id}", len(hosts), on, board.stock.thickness, EDGE_ROOM_MM)
    bench.hardware.append(screws)
