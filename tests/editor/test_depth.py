"""The picture shows at each of its points the board that a ray meets first."""

from __future__ import annotations

import random

import pytest

from shopdraw.build import build
from shopdraw.editor.depth import Frame, placed, seen, wood_of
from shopdraw.editor.motion import moved_boards
from shopdraw.editor.picture import direction_of
from shopdraw.piece.reading import read_piece
from shopdraw.shipped import sample_path
from shopdraw.view.direction import FRONT, PLAN, Direction
from shopdraw.wood.assembly import Assembly
from tests.view.judge import Judge

POINTS = 150
WIDTH, HEIGHT = 360, 320
BESIDE = ((0.0, 0.0), (0.01, 0.0), (-0.01, 0.0), (0.0, 0.01), (0.0, -0.01))
"""A ray and four close by, mm."""


@pytest.fixture(scope="module")
def desk() -> Assembly:
    return build(read_piece(sample_path("harbour-office-desk")).design)


DIRECTIONS = {
    "front": FRONT,
    "plan": PLAN,
    "from the right": direction_of(32.0, 22.0),
    "from behind": direction_of(205.0, 40.0),
    "from below": direction_of(300.0, -35.0),
}


@pytest.mark.parametrize("part", [0.0, 0.6, 1.0], ids=["shut", "half open", "open"])
@pytest.mark.parametrize("direction", DIRECTIONS.values(), ids=DIRECTIONS.keys())
def test_each_point_shows_the_board_that_a_ray_meets_first(desk: Assembly, direction: Direction, part: float) -> None:
    boards = moved_boards(desk, {motion.id: part for motion in desk.motions})
    frame = Frame(direction.on_paper((desk.width / 2, desk.depth / 2, desk.height / 2)), 0.2, WIDTH, HEIGHT)
    picture = seen(placed(wood_of(boards), boards), direction, frame)
    judge = Judge(boards, direction)
    chance = random.Random(7)
    shown = 0
    for _ in range(POINTS):
        row, column = chance.randrange(HEIGHT), chance.randrange(WIDTH)
        owner = int(picture.owner[row, column])
        at = frame.on_plane(column, row)
        # Two boards flush with each other may share a point at their seam: rays close by tell both.
        near = [
            judge.seen((at[0] + dx, at[1] + dy)) for dx, dy in ((0, 0), (0.01, 0), (-0.01, 0), (0, 0.01), (0, -0.01))
        ]
        told = {hit.board if hit else "" for hit in near}
        assert (boards[owner].id if owner >= 0 else "") in told, (at, told)
        shown += owner >= 0
    assert shown > POINTS / 10


def test_boards_that_run_into_each_other_come_out_by_what_is_nearer_at_each_point(desk: Assembly) -> None:
    boards = moved_boards(desk, {"lid": 0.5, "drawer.1": 1.0})
    direction = direction_of(32.0, 22.0)
    frame = Frame(direction.on_paper((desk.width / 2, 0.0, desk.height * 0.6)), 0.3, WIDTH, HEIGHT)
    picture = seen(placed(wood_of(boards), boards), direction, frame)
    judge = Judge(boards, direction)
    names = {boards[owner].id for owner in set(picture.owner.flat) if owner >= 0}
    assert {"lid", "drawer.1.front"} <= names
    wrong = 0
    for row in range(8, HEIGHT, 24):
        for column in range(8, WIDTH, 24):
            at = frame.on_plane(column, row)
            told = {hit.board if hit else "" for hit in (judge.seen((at[0] + dx, at[1] + dy)) for dx, dy in BESIDE)}
            owner = int(picture.owner[row, column])
            wrong += (boards[owner].id if owner >= 0 else "") not in told
    assert wrong == 0
