"""Who stands in whose way: plain boards, where it can be told by their sides, and a tongue in its groove."""

from __future__ import annotations

import random

from shopdraw.wood.board import Board
from shopdraw.wood.in_the_way import blocked_pairs
from tests.wood.pieces import LYING, board, dado, plain

Box = tuple[float, float, float, float, float, float]
WAYS = ((1.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, -1.0))


def lying(name: str, box: Box) -> Board:
    x0, y0, z0, x1, y1, z1 = box
    return board(name, plain(x1 - x0, y1 - y0, z1 - z0), LYING.moved((x0, y0, z1)))


def ahead(one: Box, other: Box, way: tuple[float, ...]) -> bool:
    """Two apart: the other lies ahead where the two overlap across the way and its far side is farther along it."""
    along = next(axis for axis in range(3) if way[axis])
    across = all(one[a] < other[a + 3] and other[a] < one[a + 3] for a in range(3) if a != along)
    return across and (other[along] - one[along]) * way[along] > 0


def test_boards_apart_stand_in_each_others_way_just_where_their_sides_overlap() -> None:
    draw = random.Random(5)
    boxes: list[Box] = []
    while len(boxes) < 14:
        at, size = [draw.uniform(0, 300) for _ in range(3)], [draw.uniform(10, 90) for _ in range(3)]
        box: Box = (*at, *(a + s for a, s in zip(at, size, strict=True)))  # type: ignore[assignment]
        if all(any(box[a] >= b[a + 3] or b[a] >= box[a + 3] for a in range(3)) for b in boxes):
            boxes.append(box)
    boards = [lying(str(number), box) for number, box in enumerate(boxes)]
    for way in WAYS:
        right = {
            (str(i), str(j)) for i, a in enumerate(boxes) for j, b in enumerate(boxes) if i != j and ahead(a, b, way)
        }
        assert right
        assert blocked_pairs(boards, way, 1000.0) == right


def test_a_board_in_a_groove_leaves_along_it_and_out_of_it_only() -> None:
    host = board("host", plain(200.0, 100.0, 20.0, dado(80.0, 20.0, 8.0, (0.0, 100.0))), LYING.moved((0.0, 0.0, 20.0)))
    guest = lying("guest", (80.0, 0.0, 12.0, 100.0, 100.0, 60.0))
    free = [way for way in WAYS if ("guest", "host") not in blocked_pairs((host, guest), way, 1000.0)]
    assert free == [(0.0, 1.0, 0.0), (0.0, 0.0, 1.0)]
