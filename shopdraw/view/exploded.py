"""Exploded pictures: boards drawn apart along the ways by which they come off, so that none hides its joint.

Each set of boards first goes along with what it touches, then out along its own way until it stands clear of all that
was there before it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from shopdraw.shape.frame import Vec3, add, scale
from shopdraw.wood.board import Board
from shopdraw.wood.interference import Box, box_of

TOUCHING_MM = 0.6
"""Boards nearer than this go along with each other: they touch, or one runs on the other."""
GAP_SHARE = 0.08
"""Free space between two sets, as a share of the piece's largest measure (own choice)."""
BESIDE_MM = 3.0
"""What lies no further beside a way counts as standing in it: a drawer comes wholly out of its opening."""
_FLAT = 1e-9


@dataclass(frozen=True, slots=True)
class Slide:
    """Boards that go together, in the order in which they are put in.

    Attributes:
        boards: ids.
        out: unit direction by which they come off, world; None for those that stay.
    """

    boards: tuple[str, ...]
    out: Vec3 | None


def exploded(boards: Sequence[Board], slides: Sequence[Slide]) -> tuple[Board, ...]:
    """The boards, moved apart; those that no slide names are left out.

    Args:
        boards: in place.
        slides: in the order of assembly.
    """
    by_id = {board.id: board for board in boards}
    home = {board.id: box_of(board) for board in boards}
    spans = [max(box[i + 3] for box in home.values()) - min(box[i] for box in home.values()) for i in range(3)]
    gap = GAP_SHARE * max(spans)
    moved: dict[str, Vec3] = {}
    for slide in slides:
        along = _carried(slide.boards, home, moved)
        if slide.out is not None:
            boxes = [_shifted(home[name], along) for name in slide.boards]
            there = [_shifted(home[name], move) for name, move in moved.items()]
            along = add(along, scale(slide.out, _clear(boxes, there, slide.out, gap)))
        moved.update((name, along) for name in slide.boards)
    return tuple(
        replace(board, frame=board.frame.moved(moved[board.id])) for board in by_id.values() if board.id in moved
    )


def _carried(names: Sequence[str], home: dict[str, Box], moved: dict[str, Vec3]) -> Vec3:
    """How far on average those boards went that these touch."""
    near = [move for other, move in moved.items() if any(_touch(home[name], home[other]) for name in names)]
    if not near:
        return (0.0, 0.0, 0.0)
    return (
        sum(m[0] for m in near) / len(near), sum(m[1] for m in near) / len(near), sum(m[2] for m in near) / len(near)
    )  # fmt: skip


def _touch(one: Box, other: Box) -> bool:
    return all(one[i] <= other[i + 3] + TOUCHING_MM and other[i] <= one[i + 3] + TOUCHING_MM for i in range(3))


def _shifted(box: Box, move: Vec3) -> Box:
    return (
        box[0] + move[0], box[1] + move[1], box[2] + move[2], box[3] + move[0], box[4] + move[1], box[5] + move[2]
    )  # fmt: skip


def _clear(boxes: Sequence[Box], there: Sequence[Box], way: Vec3, gap: float) -> float:
    """How far boxes go along a way until they and the gap have left all that stands in it; 0 where nothing does."""
    ends = [end for box in boxes for other in there if (end := _leaves(box, other, way)) is not None and end > -gap]
    return max(0.0, *ends) + gap if ends else 0.0


def _leaves(box: Box, other: Box, way: Vec3) -> float | None:
    """How far a box goes until it has passed another; None where it never meets it."""
    first, last = float("-inf"), float("inf")
    for i in range(3):
        low, high = other[i] - box[i + 3], other[i + 3] - box[i]
        if abs(way[i]) < _FLAT:
            if low >= BESIDE_MM or high <= -BESIDE_MM:
                return None
            continue
        ends = sorted((low / way[i], high / way[i]))
        first, last = max(first, ends[0]), min(last, ends[1])
    return last if first < last else None
