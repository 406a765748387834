"""Short grain in shaped feet: how little wood there is along the grain, and how far over the foot's end.

A foot that is pushed sideways breaks along the grain at its weakest section, where its length along the grain is
least for its height over the floor.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.shape.path import Path, Point, bounds, flattened
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity

LEAST_RATIO = 1.0
"""A foot is along the grain at least as long as it is high there (common practice)."""
MEMBERS = ("plinth", "bracket")
_STEP_MM = 0.5
_OFF_MM = 1e-4
_CHORD_MM = 0.05


@dataclass(frozen=True, slots=True)
class Section:
    """A foot's section along the grain: so long, so high over the foot's end, mm."""

    length: float
    height: float

    @property
    def ratio(self) -> float:
        """Length over height: the less, the weaker."""
        return self.length / self.height


def short_grain_findings(subject: Subject) -> Iterator[Finding]:
    """A caution for each board whose feet are weak; else a note with the weakest section of the plinth's feet."""
    sound: list[tuple[Board, Section]] = []
    for board in subject.assembly.boards:
        if board.member not in MEMBERS or len(board.shape.outline.corners) == 4:
            continue
        weakest = weakest_section(board.shape.outline)
        if weakest is None:
            continue
        if weakest.ratio >= LEAST_RATIO - 1e-6:
            if board.member == "plinth":
                sound.append((board, weakest))
            continue
        yield Finding(
            "short-grain",
            Severity.CAUTION,
            (board.id,),
            f"a foot of {board.name} is {mm(weakest.length)} mm long along the grain {mm(weakest.height)} mm over its "
            f"end: such short grain breaks off; right would be {mm(weakest.height * LEAST_RATIO)} mm or more there, "
            "a lower rise, or a block glued behind it with its grain upright",
            weakest.length,
            weakest.height * LEAST_RATIO,
            basis="common practice",
        )
    if sound:
        board, weakest = min(sound, key=lambda item: item[1].ratio)
        yield Finding(
            "weakest-section",
            Severity.NOTE,
            (board.id,),
            f"the plinth's feet are weakest in {board.name}, {mm(weakest.length)} mm along the grain "
            f"{mm(weakest.height)} mm over their end",
            weakest.length,
            weakest.height * LEAST_RATIO,
            basis="common practice",
        )


def weakest_section(outline: Path) -> Section | None:
    """The weakest section of an outline's feet; None where neither of its edges along the grain has any.

    Args:
        outline: in (u, v), u along the grain, mm.
    """
    _, low, _, high = bounds(outline)
    points = flattened(outline, _CHORD_MM)
    found: list[Section] = []
    for end, into in ((low, 1.0), (high, -1.0)):
        if len(runs_at(points, end + into * _OFF_MM)) < 2:
            continue
        for level in _levels(points, low, high):
            runs = runs_at(points, level)
            over = (level - end) * into
            if over <= _OFF_MM or len(runs) < 2:
                continue
            found += [Section(b - a, over) for a, b in runs]
    return min(found, key=lambda one: one.ratio, default=None)


def _levels(points: Sequence[Point], low: float, high: float) -> list[float]:
    """Heights to look at: close by each corner on both sides, and evenly between."""
    near = [y + off for _, y in points for off in (-_OFF_MM, _OFF_MM)]
    even = [low + _STEP_MM * n + _STEP_MM / 3 for n in range(int((high - low) / _STEP_MM))]
    return sorted({round(y, 9) for y in (*near, *even) if low < y < high})


def runs_at(points: Sequence[Point], level: float) -> list[tuple[float, float]]:
    """Where a level line lies inside a polygon, from left to right."""
    crossed = []
    for i, (x1, y1) in enumerate(points):
        x0, y0 = points[i - 1]
        if (y0 > level) != (y1 > level):
            crossed.append(x0 + (x1 - x0) * (level - y0) / (y1 - y0))
    crossed.sort()
    return list(zip(crossed[::2], crossed[1::2], strict=True))
