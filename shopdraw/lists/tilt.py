"""Tilts: flanks that a saw's blade is tilted for, from square and from level, and what it is set from."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.shape.path import bounds
from shopdraw.wood.board import Board, Cut, Face

MOST_TILT = 45.05
"""A saw's blade tilts to 45°, degrees; a flank further over is cut on edge against a tall fence (common practice)."""
_SAME = 1e-3


@dataclass(frozen=True, slots=True)
class Tilt:
    """A flank across an edge or an end.

    Attributes:
        kind: the trade's word.
        board: that is cut.
        from_square: degrees; what the saw's scale says.
        distance: mm from `reference` to where the flank meets `face`.
        reference: "edge", "other edge", "end" or "other end".
        face: "face" or "other face".
    """

    kind: str
    board: Board
    from_square: float
    distance: float
    reference: str
    face: str

    @property
    def within_saw(self) -> bool:
        """Whether a blade tilts so far."""
        return self.from_square <= MOST_TILT


def tilts_of(board: Board) -> Iterator[Tilt]:
    """Every flank of a board that runs through its whole width or length."""
    for cut in board.shape.cuts:
        run = {
            Face.NEAR: board.width, Face.FAR: board.width, Face.FOOT: board.length, Face.HEAD: board.length
        }.get(cut.face)  # fmt: skip
        if run is not None and cut.start + cut.depth >= run - _SAME and not cut.islands:
            yield from _flanks(board, cut)


def _flanks(board: Board, cut: Cut) -> Iterator[Tilt]:
    segments = list(cut.outline.pairs())
    closed = [segments[i] for i in range(len(segments)) if i not in cut.open]
    if len(closed) != 1 or closed[0][0].bulge:
        return
    (ax, aw, _), (bx, bw, _) = closed[0]
    if abs(aw - bw) < _SAME or abs(ax - bx) < _SAME:
        return
    u0, v0, u1, v1 = bounds(board.shape.outline)
    lengthwise = cut.face in (Face.FOOT, Face.HEAD)
    low, high = (v0, v1) if lengthwise else (u0, u1)
    slope = (bx - ax) / (bw - aw)
    hits = [(level, ax + slope * (level - aw)) for level in (0.0, -board.thickness)]
    within = [hit for hit in hits if low - _SAME <= hit[1] <= high + _SAME]
    level, x = max(within or hits, key=lambda hit: min(hit[1] - low, high - hit[1]))
    distance = high - x if lengthwise and board.reference_edge == "far" else x - low
    word = "edge" if lengthwise else "end"
    if distance > (high - low) / 2:
        word, distance = f"other {word}", high - low - distance
    tilt = math.degrees(math.atan(abs(slope)))
    yield Tilt(cut.kind, board, tilt, distance, word, "face" if level == 0.0 else "other face")
