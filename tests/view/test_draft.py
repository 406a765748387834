"""Drafts: what a draft shows is what the full view shows, as far as faces filled from the back to the front can."""

from __future__ import annotations

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning
from shopdraw.piece.reading import read_piece
from shopdraw.shape.frame import WORLD, Frame
from shopdraw.shape.path import polygon, rectangle
from shopdraw.shipped import sample_names, sample_path
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE, Direction
from shopdraw.view.draft import DraftFace, draft
from shopdraw.view.projection import project
from shopdraw.wood.board import Board, Cut, Face, Shape, Stock

STOCK = Stock("oak", "oak_white", "solid", 20.0, "", 0.002, 700.0)


def board(name: str, at: tuple[float, float, float], *cuts: Cut) -> Board:
    """A board 300 long to the right, 100 to the back, 20 thick, its upper face at `at`."""
    frame = Frame(WORLD.u, WORLD.v, WORLD.w, at)
    return Board(name, "1", name, "shelf", Shape(rectangle(0, 0, 300, 100), 20.0, cuts), frame, STOCK)


def test_a_board_seen_from_above_is_its_outline() -> None:
    (face,) = draft((board("a", (10.0, 20.0, 500.0)),), PLAN)
    assert sorted(face.points) == [(10.0, 20.0), (10.0, 120.0), (310.0, 20.0), (310.0, 120.0)]
    assert face.facing == pytest.approx(1.0)


def test_a_board_seen_from_in_front_is_its_edge() -> None:
    (face,) = draft((board("a", (0.0, 0.0, 500.0)),), FRONT)
    assert sorted(face.points) == [(0.0, 480.0), (0.0, 500.0), (300.0, 480.0), (300.0, 500.0)]


def test_what_is_nearer_is_painted_later() -> None:
    low, high = board("low", (0.0, 0.0, 100.0)), board("high", (100.0, 50.0, 400.0))
    assert [face.board for face in draft((high, low), PLAN)] == ["low", "high"]
    assert [face.board for face in draft((high, low), FRONT)] == ["high", "low"]


def test_what_lies_whole_behind_a_face_is_left_out() -> None:
    under = Board(
        "under",
        "2",
        "",
        "shelf",
        Shape(rectangle(0, 0, 50, 50), 20.0),
        Frame(WORLD.u, WORLD.v, WORLD.w, (9, 9, 9)),
        STOCK,
    )
    assert [face.board for face in draft((under, board("over", (0.0, 0.0, 400.0))), PLAN)] == ["over"]


@pytest.mark.parametrize(
    ("cut_face", "outline", "direction"),
    [
        (Face.FACE, rectangle(50, 20, 90, 60), PLAN),
        (Face.NEAR, rectangle(50, -15, 90, -5), FRONT),
        (Face.HEAD, rectangle(20, -15, 60, -5), RIGHT_SIDE),
    ],
)
def test_a_cut_on_the_viewers_side_is_outlined_on_its_face(cut_face: Face, outline, direction: Direction) -> None:
    cut = Cut("mortise", cut_face, 0.0, 6.0, outline)
    faces = draft((board("a", (0.0, 0.0, 500.0), cut),), direction)
    marked = [face for face in faces if face.cut]
    assert len(marked) == 1
    assert faces.index(marked[0]) == len(faces) - 1
    other = draft((board("a", (0.0, 0.0, 500.0), cut),), Direction((-1.0, 0.0, 0.0), (0.0, 0.0, 1.0)))
    assert not [face for face in other if face.cut]


def box_of(faces: tuple[DraftFace, ...]) -> tuple[float, float, float, float]:
    xs = [x for face in faces for x, _ in face.points]
    ys = [y for face in faces for _, y in face.points]
    return min(xs), min(ys), max(xs), max(ys)


@pytest.mark.parametrize("direction", [FRONT, RIGHT_SIDE], ids=["front", "side"])
@pytest.mark.parametrize("name", sample_names())
def test_a_draft_reaches_as_far_as_the_full_view(name: str, direction: Direction) -> None:
    boards = build(read_piece(sample_path(name)).design).boards
    lines = [mark for mark in project(boards, direction) if isinstance(mark, Line) and mark.meaning is Meaning.VISIBLE]
    xs = [x for line in lines for x, _ in (line.start, line.end)]
    ys = [y for line in lines for _, y in (line.start, line.end)]
    assert box_of(draft(boards, direction)) == pytest.approx((min(xs), min(ys), max(xs), max(ys)), abs=0.6)


@pytest.mark.parametrize("name", sample_names())
def test_every_board_with_a_long_line_in_sight_has_a_face_in_the_draft(name: str) -> None:
    boards = build(read_piece(sample_path(name)).design).boards
    for direction in (FRONT, RIGHT_SIDE, PLAN):
        seen = {
            mark.board
            for mark in project(boards, direction)
            if isinstance(mark, Line)
            and mark.meaning is Meaning.VISIBLE
            and abs(mark.end[0] - mark.start[0]) + abs(mark.end[1] - mark.start[1]) > 60.0
        }
        assert seen <= {face.board for face in draft(boards, direction)}


def side(name: str, *corners: tuple[float, float]) -> Board:
    """A board 20 thick that stands upright, seen from the right: y to the right, z up; nearest of all."""
    frame = Frame((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), (900.0, 0.0, 0.0))
    return Board(name, "1", name, "side", Shape(polygon(corners), 20.0), frame, STOCK)


@pytest.mark.parametrize(
    ("corners", "seen"),
    [
        (((0, 0), (400, 0), (400, 600), (300, 600), (0, 300)), False),
        (((0, 0), (400, 0), (400, 600), (300, 600), (0, 90)), True),
        (((0, 0), (400, 0), (400, 600), (200, 60), (0, 600)), True),
    ],
)
def test_a_side_with_a_slant_hides_what_lies_below_and_behind_its_slant(
    corners: tuple[tuple[float, float], ...], seen: bool
) -> None:
    """A shelf from y = 0 to 100, 100 up: below the slant, beyond its foot, or in a hollow."""
    shelf = board("shelf", (0.0, 0.0, 100.0))
    found = {face.board for face in draft((shelf, side("side", *corners)), RIGHT_SIDE)}
    assert ("shelf" in found) is seen
