"""Findings about cutters: grooves too narrow, corners too tight, wood too thin, slivers beside an edge."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from shopdraw.cnc.cutter import ONE_PASS_MM, Cutter, is_drilled, vee_for
from shopdraw.cnc.pocket import RELIEF
from shopdraw.cnc.sunk import Sunk
from shopdraw.cnc.vee import Vee
from shopdraw.shape.path import Path, Point, arc_of, bounds, signed_area
from shopdraw.shape.region import Region, inside, sides_of
from shopdraw.wood.board import Board, Cut, Face
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.volume import volume_mm3

LEAST_WEB_MM = 3.0
"""Wood that stays under the deepest pocket."""
INTO_BED_MM = 0.5
"""How far a cutter goes past the stock that it cuts through."""
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
    cutter = sunk.finishing or sunk.cutter
    diameter, web, length = cutter.diameter, board.thickness - sunk.depth, cutter.cutting_length
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


def relief_findings(board: Board) -> Iterator[Finding]:
    """The wood that reliefs take beyond their corners, named: it is out of the board for good."""
    own = [i for i, cut in enumerate(board.shape.cuts) if cut.kind == RELIEF]
    if not own:
        return
    reliefs = tuple(board.shape.cuts[i] for i in own)
    near = tuple(cut for i, cut in enumerate(board.shape.cuts) if i not in own and _beside(cut, reliefs))
    # Cuts elsewhere change neither volume's difference; left out, the sum is quick.
    wood = volume_mm3(replace(board.shape, cuts=near)) - volume_mm3(replace(board.shape, cuts=(*near, *reliefs)))
    ids = tuple(board.cut_ids[i] for i in own if i < len(board.cut_ids))
    what = "relief" if len(own) == 1 else "reliefs"
    words = f"{board.label}: {len(own)} corner {what} for a round cutter: {wood:.0f} mm³ of wood, covered by the mate"
    yield Finding("corner-relief", Severity.NOTE, (board.id, *ids), words, wood, None, "mm³", "the joint's table")


def _beside(cut: Cut, reliefs: Sequence[Cut]) -> bool:
    """Whether a cut may share wood with a relief: it comes from another face, or its outline's box meets a relief's."""
    x0, y0, x1, y1 = bounds(cut.outline)
    for relief in reliefs:
        if relief.face is not cut.face:
            return True
        a0, b0, a1, b1 = bounds(relief.outline)
        if a0 < x1 and x0 < a1 and b0 < y1 and y0 < b1:
            return True
    return False


def through_findings(
    board: Board, outline: Region, cutter: Cutter | None, job: Sequence[Cutter]
) -> Iterator[Finding]:
    """What a person should know before a part is cut out."""
    if not any(each.kind == "straight" for each in job):
        words = f"{board.label}: no straight cutter in the shop file; it can't be cut out"
        yield Finding("no-straight-cutter", Severity.MUST_FIX, (board.id,), words, None, None, "mm", "the shop file")
        return
    assert cutter is not None
    need = board.thickness + INTO_BED_MM
    if cutter.cutting_length is not None and cutter.cutting_length < need - 1e-9:
        words = (
            f"{board.label}: {board.thickness:.2f} mm thick and {INTO_BED_MM:g} into the bed; the cutter {cutter.id} "
            f"cuts {cutter.cutting_length:.2f} mm: a longer one, or two faces"
        )
        yield Finding("outline-deeper-than-cutter", Severity.CAUTION, (board.id,), words, need, cutter.cutting_length,
                      "mm", "common practice")  # fmt: skip
    hollows = [arc_of(s.start, s.end, s.bulge).radius for p in outline for s in sides_of(p) if s.bulge < 0]
    tightest = min(hollows, default=math.inf)
    if tightest < cutter.diameter / 2 - 1e-6:
        words = (
            f"{board.label}: an inside corner of radius {tightest:.2f} mm in the outline is tighter than any cutter "
            f"({cutter.id}): finish it by chisel"
        )
        yield Finding("corner-tighter-than-cutter", Severity.CAUTION, (board.id,), words, tightest,
                      cutter.diameter / 2, "mm", "common practice")  # fmt: skip


def hole_findings(
    board: Board, sunk: Sequence[tuple[Face, Sunk]], outline: Region, job: Sequence[Cutter]
) -> Iterator[Finding]:
    """Holes without a drill, and holes that go into the bed."""
    blind = [each.paths[0] for _, each in sunk if len(each.paths) == 1 and not any(each.opens)]
    through = [path for path in outline if signed_area(path) < 0]
    for path in (*blind, *through):
        radius = round_of(path)
        if radius is not None and not is_drilled(2 * radius, job):
            words = f"{board.label}: no drill of {2 * radius:.2f} mm in the shop file; the hole is milled"
            size = 2 * radius
            yield Finding("drill-missing", Severity.CAUTION, (board.id,), words, size, None, "mm", "the shop file")
    if any(round_of(path) is not None for path in through):
        words = f"{board.label}: a hole goes through into the bed; lay a spoil board under it"
        yield Finding("hole-into-bed", Severity.NOTE, (board.id,), words, None, None, "mm", "common practice")


def vee_findings(board: Board, vees: Sequence[Vee], job: Sequence[Cutter]) -> Iterator[Finding]:
    """V-grooves without a cutter of their angle and width."""
    for vee in vees:
        if vee_for(vee.angle, job, vee.width) is None:
            words = f"{board.label}: no vee cutter of {vee.angle}° that is {vee.width:.2f} mm wide"
            yield Finding("vee-missing", Severity.CAUTION, (board.id,), words, vee.width, None, "mm", "the shop file")


def round_of(path: Path) -> float | None:
    """The radius of a full circle; None for any other path."""
    sides = sides_of(path)
    if not all(side.bulge for side in sides):
        return None
    arcs = [arc_of(side.start, side.end, side.bulge) for side in sides]
    centre, radius = arcs[0].centre, arcs[0].radius
    alike = all(math.dist(arc.centre, centre) < 1e-6 and abs(arc.radius - radius) < 1e-6 for arc in arcs)
    return radius if alike else None


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
