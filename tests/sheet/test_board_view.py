"""A board's own views: which lines are drawn, from closed geometry written here."""

from __future__ import annotations

import math

import pytest

from shopdraw.drawing.mark import ArcMark, Line
from shopdraw.shape.path import Corner, Path, circle, rectangle
from shopdraw.sheet.board_view import board_marks
from shopdraw.wood.board import Cut, Face, Shape

BLANK = rectangle(0, 0, 400, 100)


def lines(shape: Shape, face: Face) -> set[tuple[tuple[float, float], tuple[float, float]]]:
    """Straight marks as sorted pairs of rounded ends."""
    found = set()
    for mark in board_marks(shape, face):
        if isinstance(mark, Line):
            a, b = ((round(x, 3) + 0.0, round(y, 3) + 0.0) for x, y in (mark.start, mark.end))
            found.add((min(a, b), max(a, b)))
    return found


def test_a_plain_board_is_its_outline() -> None:
    assert lines(Shape(BLANK, 20.0), Face.FACE) == {
        ((0, 0), (400, 0)),
        ((0, 100), (400, 100)),
        ((0, 0), (0, 100)),
        ((400, 0), (400, 100)),
    }


def test_a_dado_right_through_shows_two_lines_and_leaves_the_outline_whole() -> None:
    dado = Cut("dado", Face.FACE, 0.0, 6.0, rectangle(100, 0, 120, 100))
    seen = lines(Shape(BLANK, 20.0, (dado,)), Face.FACE)
    assert ((100, 0), (100, 100)) in seen
    assert ((120, 0), (120, 100)) in seen
    assert ((0, 0), (400, 0)) in seen


def test_a_dado_stops_at_the_deeper_rabbet_that_it_runs_into() -> None:
    rabbet = Cut("rabbet", Face.FACE, 0.0, 10.0, rectangle(0, 0, 400, 8))
    dado = Cut("dado", Face.FACE, 0.0, 6.0, rectangle(100, 0, 120, 100))
    seen = lines(Shape(BLANK, 20.0, (rabbet, dado)), Face.FACE)
    assert ((100, 8), (100, 100)) in seen
    assert ((0, 8), (400, 8)) in seen, "the rabbet's step runs on below the dado's floor"


def test_a_round_end_is_drawn_as_a_true_arc() -> None:
    quarter = math.tan(math.pi / 8)
    stopped = Path(
        (
            Corner(100, 0),
            Corner(120, 0),
            Corner(120, 77, quarter),
            Corner(117, 80),
            Corner(103, 80, quarter),
            Corner(100, 77),
        )
    )
    shape = Shape(BLANK, 20.0, (Cut("dado", Face.FACE, 0.0, 6.0, stopped),))
    arcs = sorted((m.centre, m.radius) for m in board_marks(shape, Face.FACE) if isinstance(m, ArcMark))
    assert [(round(x, 6), round(y, 6), round(r, 6)) for (x, y), r in arcs] == [(103, 77, 3), (117, 77, 3)]


def test_a_notch_takes_the_outline_away() -> None:
    notch = Cut("notch", Face.FACE, 0.0, 20.0, rectangle(0, 0, 30, 10))
    seen = lines(Shape(BLANK, 20.0, (notch,)), Face.FACE)
    assert ((30, 0), (400, 0)) in seen
    assert ((0, 10), (30, 10)) in seen
    assert ((30, 0), (30, 10)) in seen
    assert ((0, 0), (400, 0)) not in seen


def test_a_tenon_shows_its_shoulder_on_the_face_and_its_thickness_on_the_edge() -> None:
    tenon = Cut("tenon", Face.FOOT, 0.0, 30.0, rectangle(0, -20, 100, 0), (rectangle(15, -13, 85, -7),))
    shape = Shape(BLANK, 20.0, (tenon,))
    face = lines(shape, Face.FACE)
    assert ((0, 15), (30, 15)) in face
    assert ((30, 0), (30, 100)) in face
    assert ((0, 0), (400, 0)) not in face
    edge = lines(shape, Face.NEAR)
    assert ((0, -7), (30, -7)) in edge
    assert ((0, -13), (30, -13)) in edge


def test_the_other_face_is_turned_about_the_long_edge() -> None:
    dado = Cut("dado", Face.BACK, 0.0, 6.0, rectangle(100, 0, 120, 60))
    seen = lines(Shape(BLANK, 20.0, (dado,)), Face.BACK)
    assert ((100, -60), (120, -60)) in seen, "the foot stays left, the near edge comes up"
    assert not any(a[0] == b[0] == 100 for a, b in lines(Shape(BLANK, 20.0, (dado,)), Face.FACE))


def test_a_bevel_meets_the_face_where_trigonometry_says() -> None:
    # A flank tilted 30° from square, starting at the near edge of the other face: it meets the face 20·tan 30° in.
    run = 20 * math.tan(math.radians(30))
    bevel = Cut(
        "bevel", Face.FOOT, 0.0, 400.0, Path((Corner(0, -20), Corner(2 * run, 20), Corner(-50, 20), Corner(-50, -20)))
    )
    seen = lines(Shape(BLANK, 20.0, (bevel,)), Face.FACE)
    assert ((0, round(run, 3)), (400, round(run, 3))) in seen
    end = lines(Shape(BLANK, 20.0, (bevel,)), Face.FOOT)
    assert ((-20, 0), (0, round(run, 3))) in end


def test_a_bore_is_a_circle() -> None:
    shape = Shape(BLANK, 20.0, (Cut("bore", Face.FACE, 0.0, 12.0, circle((200, 50), 2.5)),))
    (arc,) = [m for m in board_marks(shape, Face.FACE) if isinstance(m, ArcMark)]
    assert arc.centre == pytest.approx((200, 50))
    assert arc.radius == pytest.approx(2.5)
    assert arc.end_deg - arc.start_deg == pytest.approx(360.0)


def test_a_round_outline_keeps_its_radius() -> None:
    # A quarter circle of radius 40 for the upper corner at the head.
    outline = Path(
        (Corner(0, 0), Corner(400, 0), Corner(400, 60, math.tan(math.pi / 8)), Corner(360, 100), Corner(0, 100))
    )
    (arc,) = [m for m in board_marks(Shape(outline, 20.0), Face.FACE) if isinstance(m, ArcMark)]
    assert arc.centre == pytest.approx((360, 60))
    assert arc.radius == pytest.approx(40)
