"""What isn't flat: cuts that need a second setting, named with their tilt, depth, place and the wood left for them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from shopdraw.cnc.side_name import reference_edge, side_name
from shopdraw.lists.size import Sizes
from shopdraw.shape.path import Point, bounds
from shopdraw.shape.region import Side, sides_of
from shopdraw.wood.board import Board, Cut, Face
from shopdraw.wood.volume import volume_mm3

_SLIGHT = 0.05
_POCKETED = frozenset({"mortise", "groove", "dado", "rabbet", "slot"})
_TILTING = frozenset({"bevel", "mitre", "chamfer"})


@dataclass(frozen=True, slots=True)
class SecondSetting:
    """A cut that the router file leaves to another setting.

    Attributes:
        cut: its id.
        kind: the trade's word.
        on: the side it is entered from, in words.
        setting: tilt, or what does it.
        place: where it lies and how deep it is.
        wood_left: what stays for it in the flat part, or "".
        volume: of the wood that it takes of what the files leave, mm³; what two of them share counts for the first.
    """

    cut: str
    kind: str
    on: str
    setting: str
    place: str
    wood_left: str
    volume: float = 0.0


@dataclass(frozen=True, slots=True)
class Flank:
    """A wall of a cut where it stands in the wood: from (a, w) to (b, w), a and b along the edge or end, mm."""

    start: Point
    end: Point

    @property
    def level_deg(self) -> float:
        """Angle from the face, degrees."""
        return math.degrees(
            math.atan2(abs(self.end[1] - self.start[1]), abs(self.end[0] - self.start[0]))
        )

    @property
    def is_square(self) -> bool:
        """Square to the face, or level with it: nothing needs tilting."""
        return min(self.level_deg, 90.0 - self.level_deg) < 0.01


def second_setting(board: Board, index: int, sizes: Sizes) -> SecondSetting:
    """How a cut that isn't flat is told."""
    cut = board.shape.cuts[index]
    purpose = board.cut_for[index] if index < len(board.cut_for) else ""
    slopes = [flank for flank in flanks(board, cut) if not flank.is_square]
    return SecondSetting(
        cut=board.cut_ids[index] if index < len(board.cut_ids) else f"{cut.kind}:{board.id}:{index}",
        kind=cut.kind,
        on=side_name(board, _lies_on(board, cut)),
        setting=_setting(cut, slopes, purpose),
        place=_place(board, cut, sizes),
        wood_left=_wood_left(cut, slopes, sizes),
    )


def second_settings(board: Board, others: Sequence[int], sizes: Sizes) -> tuple[SecondSetting, ...]:
    """All cuts that the router files of a board leave, each with the wood that it takes.

    Args:
        board: whose cuts.
        others: indices of those cuts.
        sizes: how sizes are written.
    """
    if not others:
        return ()
    shape = board.shape
    made = [cut for index, cut in enumerate(shape.cuts) if index not in others]
    before = volume_mm3(replace(shape, cuts=tuple(made)))
    found = []
    for index in others:
        made.append(shape.cuts[index])
        after = volume_mm3(replace(shape, cuts=tuple(made)))
        found.append(replace(second_setting(board, index, sizes), volume=max(0.0, before - after)))
        before = after
    return tuple(found)


def _setting(cut: Cut, slopes: list[Flank], purpose: str) -> str:
    if cut.kind == "moulding":
        how = "moulding cutter of this profile, along the edge"
    elif cut.kind == "dovetail" and cut.face in (Face.NEAR, Face.FAR):
        how = "dovetail cutter, along the end" if cut.islands else "dovetail cutter, from this edge"
    elif cut.kind == "dovetail":
        how = "chisel, from the full-size template"
    elif slopes and cut.kind in _TILTING:
        level = slopes[0].level_deg
        tilt, slope = f"{90.0 - level:.1f}", f"{level:.1f}"
        how = (
            f"tilt {tilt}° from square, {slope}° from level, reference face up"
            if level >= 45.0 - 0.05
            else f"tilt {tilt}° from square, {slope}° from level, reference face up (over 45°: plane it, or cut it on "
            "edge against a tall fence)"
        )
    else:
        how = "by itself, from the side named"
    if cut.kind in _POCKETED and cut.face is not Face.TILTED and sharp_corners(cut):
        how += ", corners square by chisel"
    return f"{how}: {purpose}" if purpose else how


def sharp_corners(cut: Cut) -> int:
    """Corners of a pocket between two walls in the wood that no round cutter makes."""
    if cut.islands:
        return 0
    sides, walls = sides_of(cut.outline), [i not in cut.open for i in range(len(cut.outline.corners))]
    count = 0
    for i, side in enumerate(sides):
        turn = (side.heading() - sides[i - 1].heading(at_end=True) + math.pi) % (2 * math.pi) - math.pi
        count += walls[i] and walls[i - 1] and turn > math.radians(5.0)
    return count


def _lies_on(board: Board, cut: Cut) -> Face:
    """The side that a person finds a cut on: of a bevel that runs from end to end, the edge that it slopes."""
    if cut.face not in _ALONG or cut.depth < _run(board, cut.face) - _SLIGHT or cut.start > _SLIGHT:
        return cut.face
    x0, _, x1, _ = bounds(cut.outline)
    low, high = _ALONG[cut.face]
    reach = _reach(board, cut.face)
    if x0 <= _SLIGHT and x1 < reach - _SLIGHT:
        return low
    return high if x1 >= reach - _SLIGHT and x0 > _SLIGHT else cut.face


_ALONG = {
    Face.NEAR: (Face.FOOT, Face.HEAD),
    Face.FAR: (Face.FOOT, Face.HEAD),
    Face.FOOT: (Face.NEAR, Face.FAR),
    Face.HEAD: (Face.NEAR, Face.FAR),
}
"""For a cut in an edge the two ends of that edge, for one in an end the two edges beside it."""


def _reach(board: Board, face: Face) -> float:
    """How long an edge or end is."""
    return board.length if face in (Face.NEAR, Face.FAR) else board.width


def _run(board: Board, face: Face) -> float:
    """How far it is from an edge or end to the other one."""
    return board.width if face in (Face.NEAR, Face.FAR) else board.length


def _place(board: Board, cut: Cut, sizes: Sizes) -> str:
    """Where the cut lies: along its side, below the reference face, and how deep it goes."""
    if cut.face is Face.TILTED:
        return f"in a plane of its own, {sizes.words(cut.depth)} deep"
    x0, y0, x1, y1 = bounds(cut.outline)
    if cut.face in (Face.FACE, Face.BACK):
        start = f", from {sizes.words(cut.start)} below it" if cut.start else ""
        return f"{sizes.words(x1 - x0)} × {sizes.words(y1 - y0)}{start}, {sizes.words(cut.depth)} deep"
    along_edge, reach = cut.face in (Face.NEAR, Face.FAR), _reach(board, cut.face)
    measured_from = f"the {side_name(board, Face.FOOT if along_edge else reference_edge(board))}"
    low, high = max(x0, 0.0), min(x1, reach)
    if not along_edge and board.reference_edge == "far":
        low, high = reach - high, reach - low
    upper, lower = max(0.0, -y1), min(board.thickness, -y0)
    run = f"{sizes.words(cut.depth)} deep"
    if cut.start:
        run = f"from {sizes.words(cut.start)} in, {sizes.words(cut.depth)} long"
    elif cut.depth >= _run(board, cut.face) - _SLIGHT:
        run = "all along"
    return (
        f"{sizes.words(low)} to {sizes.words(high)} from {measured_from}, "
        f"{sizes.words(upper)} to {sizes.words(lower)} below the reference face, {run}"
    )


def _wood_left(cut: Cut, slopes: list[Flank], sizes: Sizes) -> str:
    if cut.kind not in _TILTING or not slopes:
        return ""
    return f"up to {sizes.words(max(abs(f.end[0] - f.start[0]) for f in slopes))}"


def flanks(board: Board, cut: Cut) -> list[Flank]:
    """The straight walls of a cut in an edge or end, as far as they stand in the board's wood."""
    if cut.face in (Face.FACE, Face.BACK, Face.TILTED):
        return []
    reach = _reach(board, cut.face)
    found = []
    for path in (cut.outline, *cut.islands):
        for side in sides_of(path):
            clipped = None if side.bulge else _clipped(side, reach, board.thickness)
            if clipped is not None:
                found.append(clipped)
    return found


def _clipped(side: Side, reach: float, thickness: float) -> Flank | None:
    """The part of a wall inside the board's end or edge; None where it only runs along its outside."""
    (a0, w0), (a1, w1) = side.start, side.end
    low, high = 0.0, 1.0
    for start, change, least, most in ((a0, a1 - a0, 0.0, reach), (w0, w1 - w0, -thickness, 0.0)):
        if abs(change) < 1e-12:
            if not least + 1e-9 < start < most - 1e-9:
                return None
            continue
        first, second = sorted(((least - start) / change, (most - start) / change))
        low, high = max(low, first), min(high, second)
    if (high - low) * math.hypot(a1 - a0, w1 - w0) < _SLIGHT:
        return None
    return Flank(
        (a0 + (a1 - a0) * low, w0 + (w1 - w0) * low), (a0 + (a1 - a0) * high, w0 + (w1 - w0) * high)
    )


def finished_lines(board: Board, cut: Cut) -> list[tuple[Point, Point]]:
    """Where the walls of a cut in an edge or end meet the board's faces, in u and v: its layout on the flat part."""
    places: list[float] = []
    for flank in flanks(board, cut):
        for a, w in (flank.start, flank.end):
            on_face = min(abs(w), abs(w + board.thickness)) < 1e-6
            if on_face and not any(abs(a - other) < _SLIGHT for other in places):
                places.append(a)
    reach = _reach(board, cut.face)
    places = sorted(a for a in places if _SLIGHT < a < reach - _SLIGHT)
    run = _run(board, cut.face)
    near, far = cut.start, min(cut.start + cut.depth, run)
    lines = [(_on_plan(board, cut.face, a, near), _on_plan(board, cut.face, a, far)) for a in places]
    if len(places) > 1 and far < run - _SLIGHT:
        lines.append((_on_plan(board, cut.face, places[0], far), _on_plan(board, cut.face, places[-1], far)))
    return lines


def _on_plan(board: Board, face: Face, along: float, into: float) -> Point:
    match face:
        case Face.NEAR:
            return (along, into)
        case Face.FAR:
            return (along, board.width - into)
        case Face.FOOT:
            return (into, along)
        case _:
            return (board.length - into, along)
