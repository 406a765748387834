"""Marks cut off at a circle or a box, against plane geometry written out here."""

import math

import pytest

from shopdraw.drawing.mark import ArcMark, Area, Dot, Hatching, Line, Meaning, Text
from shopdraw.shape.path import area, circle, polygon, rectangle
from shopdraw.view.clip import Window, clipped

ROUND = Window.circle((10.0, 20.0), 5.0)
BOX = Window.box(0.0, 0.0, 40.0, 30.0)


def line(a, b):
    return Line(a, b, Meaning.CUT, "side.left")


def test_a_line_through_a_circle_keeps_its_chord():
    (kept,) = clipped([line((0.0, 23.0), (30.0, 23.0))], ROUND)
    # Pythagoras: half the chord at 3 from the middle of a circle of radius 5 is 4.
    assert kept.start == pytest.approx((6.0, 23.0))
    assert kept.end == pytest.approx((14.0, 23.0))
    assert kept.board == "side.left"
    assert kept.meaning is Meaning.CUT


def test_lines_inside_stay_and_lines_outside_go():
    inside = line((9.0, 19.0), (11.0, 21.0))
    assert clipped([inside, line((0.0, 0.0), (30.0, 14.0))], ROUND) == (inside,)


def test_a_line_along_a_boxs_edge_stays():
    assert clipped([line((0.0, 0.0), (40.0, 0.0))], BOX) == (line((0.0, 0.0), (40.0, 0.0)),)


def test_an_arc_through_a_box_stays_a_true_arc():
    pieces = clipped([ArcMark((0.0, 0.0), 20.0, 0.0, 360.0, Meaning.VISIBLE, "b")], BOX)
    assert all(isinstance(piece, ArcMark) and piece.radius == 20.0 and piece.centre == (0.0, 0.0) for piece in pieces)
    assert sum(piece.end_deg - piece.start_deg for piece in pieces) == pytest.approx(90.0)


def test_an_arc_met_by_a_circle_ends_on_both():
    (piece,) = clipped([ArcMark((17.0, 20.0), 5.0, 0.0, 360.0, Meaning.CUT, "b")], ROUND)
    # Two circles of radius 5, 7 apart: they meet where cos(half angle) = 3.5 / 5.
    assert piece.end_deg - piece.start_deg == pytest.approx(2 * math.degrees(math.acos(0.7)))
    for angle in (piece.start_deg, piece.end_deg):
        end = 17.0 + 5.0 * math.cos(math.radians(angle)), 20.0 + 5.0 * math.sin(math.radians(angle))
        assert math.dist(end, ROUND.centre) == pytest.approx(5.0)


def test_an_area_keeps_what_lies_inside_a_box_with_its_island():
    plate = Area(rectangle(-10.0, 5.0, 60.0, 25.0), (rectangle(30.0, 10.0, 50.0, 20.0),), Hatching("lines"), "b")
    (kept,) = clipped([plate], BOX)
    assert area(kept.outline) == pytest.approx(40.0 * 20.0)
    assert [area(island) for island in kept.islands] == [pytest.approx(10.0 * 10.0)]
    assert kept.hatching == plate.hatching
    assert kept.board == "b"


def test_an_area_in_a_circle_is_nearly_the_circles_segment():
    (kept,) = clipped([Area(rectangle(0.0, 20.0, 20.0, 40.0), (), Hatching("lines"), "b")], ROUND)
    assert area(kept.outline) == pytest.approx(math.pi * 25.0 / 2, rel=2e-3)


def test_an_area_that_lies_inside_keeps_its_arcs():
    ring = Area(circle((10.0, 20.0), 3.0), (), Hatching("lines"), "b")
    assert clipped([ring], ROUND) == (ring,)
    assert clipped([Area(circle((30.0, 20.0), 3.0), (), Hatching("lines"), "b")], ROUND) == ()


def test_an_area_with_a_bay_may_fall_in_two_without_gaining_wood():
    corners = ((0, 0), (12, 0), (12, 10), (8, 10), (8, 4), (4, 4), (4, 10), (0, 10))
    comb = Area(polygon(corners), (), Hatching("lines"), "b")
    (kept,) = clipped([comb], Window.box(0.0, 6.0, 12.0, 20.0))
    assert area(kept.outline) == pytest.approx(2 * 4.0 * 4.0)


def test_words_and_dots_stay_whole_or_go():
    marks = (Text((10.0, 20.0), "in", 2.5), Text((30.0, 20.0), "out", 2.5), Dot((12.0, 20.0), 0.7, Meaning.SIZE))
    assert clipped(marks, ROUND) == (marks[0], marks[2])
