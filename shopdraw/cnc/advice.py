"""Findings about cutters: grooves too narrow, corners too tight, wood too thin, slivers beside an edge."""

from __future__ import annotations

import math

from shopdraw.cnc.cutter import ONE_PASS_MM
from shopdraw.cnc.sunk import Sunk
from shopdraw.shape.path import Point
from shopdraw.shape.region import Region, inside, sides_of
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity

LEAST_WEB_MM = 3.0
"""Wood that stays under the deepest pocket."""
DEEP = 4.0
"""Depth over the cutter's diameter beyond which it may break (common practice)."""


def pocket_findings(board: Board, sunk: Sunk, outline: Region) -> list[Finding]:
    """What a person should know before a pocket is cut.

    Args:
        board: its board.
        sunk: the pocket.
        outline: the board, with what goes through taken away.
    """
    radius = sunk.cutter.diameter / 2 if sunk.cutter is not None else 0.0
    return [*_cutter_findings(board, sunk), *(_sliver_findings(board, sunk, outline, radius) if radius else ())]


def _cutter_findings(board: Board, sunk: Sunk) -> list[Finding]:
    where = (board.id, *(board.cut_ids[i] for i in sunk.cuts if i < len(board.cut_ids)))
    if sunk.cutter is None:
        words = (
            f"{board.label}: a pocket {sunk.width:.2f} mm wide is narrower than any cutter; it takes one of at "
            f"most {sunk.width:.2f} mm"
        )
        return [Finding("groove-narrower-than-cutter", Severity.MUST_FIX, where, words, sunk.width)]
    diameter, web = sunk.cutter.diameter, board.thickness - sunk.depth
    length = sunk.cutter.cutting_length
    told = [
        (
            abs(sunk.width - diameter) < ONE_PASS_MM,
            "groove-one-pass",
            f"a groove {sunk.width:.2f} mm wide is one pass of a {diameter:g} mm cutter: its width can't be tuned",
            sunk.width, diameter,
        ),
        (
            sunk.finishing is None,
            "corner-tighter-than-cutter",
            f"an inside corner of radius {sunk.radius or 0.0:.2f} mm is tighter than any cutter: finish it by chisel",
            sunk.radius, diameter / 2,
        ),
        (
            sunk.depth > DEEP * diameter,
            "pocket-deep-for-cutter",
            f"{sunk.depth:.2f} mm deep with a {diameter:g} mm cutter, over {DEEP:g} times its diameter",
            sunk.depth, DEEP * diameter,
        ),
        (
            length is not None and sunk.depth > length,
            "pocket-deeper-than-cutter",
            f"{sunk.depth:.2f} mm deep, the cutter cuts {length or 0.0:.2f} mm",
            sunk.depth, length,
        ),
        (
            web < LEAST_WEB_MM - 1e-9,
            "web-thin",
            f"{web:.2f} mm of wood stay under a pocket; at least {LEAST_WEB_MM:g} mm should",
            web, LEAST_WEB_MM,
        ),
    ]  # fmt: skip
    return [
        Finding(code, Severity.CAUTION, where, f"{board.label}: {words}", value, limit, "mm", "common practice")
        for holds, code, words, value, limit in told
        if holds
    ]


def _sliver_findings(board: Board, sunk: Sunk, outline: Region, radius: float) -> list[Finding]:
    """Walls so near to an edge that less than a cutter's radius of wood stays between."""
    for side, is_open in zip(sides_of(sunk.paths[0]), sunk.opens, strict=True):
        gap = None if is_open else _to_edge(side.middle(), _outward(side.heading(), side.bulge), radius - 1e-3, outline)
        if gap is not None:
            words = f"{board.label}: a pocket ends {gap:.2f} mm short of an edge; run it out, or leave {radius:.2f} mm"
            return [Finding("sliver", Severity.CAUTION, (board.id,), words, gap, radius, "mm", "common practice")]
    return []


def _outward(heading: float, bulge: float) -> float:
    """The way out of a pocket from a side's middle, radians."""
    return heading + 2 * math.atan(bulge) - math.pi / 2


def _to_edge(start: Point, heading: float, most: float, outline: Region) -> float | None:
    """How far it is from a wall outwards to the edge, mm; None where there is more wood than `most`, or none at all."""
    dx, dy = math.cos(heading), math.sin(heading)

    def wood(distance: float) -> bool:
        return inside(outline, (start[0] + dx * distance, start[1] + dy * distance))

    if not wood(1e-4) or wood(most):
        return None
    low, high = 1e-4, most
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if wood(middle) else (low, middle)
    return low
