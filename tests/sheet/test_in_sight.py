"""Where boards are in sight, against lines of sight cast through the solids (manifold3d's rays)."""

import math

import pytest

from shopdraw.shape.frame import Frame, Vec3, add, scale
from shopdraw.shape.path import circle
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.view.direction import FRONT, ISOMETRIC, PLAN, Direction
from shopdraw.wood.board import Board, Shape
from shopdraw.wood.solid import placed_solid
from tests.sheet.sample_set import made
from tests.wood.pieces import board, plain

FAR = 20_000.0


def first_met(boards: tuple[Board, ...], direction: Direction, x: float, y: float) -> str:
    """The board that a line of sight meets first."""
    start: Vec3 = add(add(scale(direction.right, x), scale(direction.up, y)), scale(direction.toward, FAR / 2))
    end = add(start, scale(direction.toward, -FAR))
    hits = {board.id: placed_solid(board).ray_cast(start, end) for board in boards}
    return min((hit[0].distance, name) for name, hit in hits.items() if hit)[1]


@pytest.mark.parametrize("direction", [FRONT, PLAN, ISOMETRIC], ids=["front", "plan", "isometric"])
@pytest.mark.parametrize("desk", ["chart-room-desk", "plan-chest", "tide-lectern"])
def test_a_leader_ends_on_the_board_that_the_eye_meets_first(desk, direction):
    boards = made(desk)[1].boards
    found = points_in_sight(boards, direction)
    assert found
    for name, points in found.items():
        for x, y in points:
            assert first_met(boards, direction, x, y) == name


def test_a_small_round_thing_in_front_of_a_wide_board_is_seen():
    facing = Frame((0.0, 0.0, 1.0), (-1.0, 0.0, 0.0), (0.0, -1.0, 0.0), (600.0, 0.0, 0.0))
    round_knob = Shape(circle((400.0, 300.0), 15.0), 20.0, ())
    door = board("door", plain(800.0, 600.0, 20.0), facing)
    knob = board("knob", round_knob, facing.moved((0.0, -20.0, 0.0)))
    found = points_in_sight((door, knob), FRONT)
    assert math.dist(found["knob"][0], (300.0, 400.0)) < 5.0
    assert all(math.dist(point, (300.0, 400.0)) > 15.0 for point in found["door"])
