"""Boxes hold what is drawn, in the drawing's own mm."""

import math

import pytest

from shopdraw.drawing.bounds import NothingDrawn, arrow_corners, drawing_box, mark_box, marks_box
from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Hatching, Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import circle


@pytest.mark.parametrize(
    ("start", "end", "box"),
    [
        (0.0, 90.0, (0.0, 0.0, 10.0, 10.0)),
        (45.0, 135.0, (-10 / math.sqrt(2), 10 / math.sqrt(2), 10 / math.sqrt(2), 10.0)),
        (0.0, 360.0, (-10.0, -10.0, 10.0, 10.0)),
        (-45.0, 45.0, (10 / math.sqrt(2), -10 / math.sqrt(2), 10.0, 10 / math.sqrt(2))),
    ],
)
def test_arc_reaches_to_its_quadrants(start: float, end: float, box: tuple[float, ...]) -> None:
    assert mark_box(ArcMark((0.0, 0.0), 10.0, start, end, Meaning.VISIBLE)) == pytest.approx(box)


def test_paper_sizes_are_divided_by_the_scale() -> None:
    assert mark_box(Dot((0.0, 0.0), 0.5, Meaning.SIZE), 0.25) == (-2.0, -2.0, 2.0, 2.0)
    assert arrow_corners(Arrow((0.0, 0.0), 0.0, 3.0, 1.0), 0.5) == ((0.0, 0.0), (-6.0, 1.0), (-6.0, -1.0))
    assert mark_box(Text((0.0, 0.0), "H", 2.5), 0.5)[3] == pytest.approx(5.0)


def test_box_of_several_marks_holds_each() -> None:
    area = Area(circle((50.0, 0.0), 5.0), (), Hatching("lines"))
    assert marks_box([Line((0.0, 0.0), (10.0, -3.0), Meaning.CUT), area]) == (0.0, -5.0, 55.0, 5.0)


def test_dimensions_belong_to_the_drawing() -> None:
    size = Dimension("d", "linear", (0, 0), (100, 0), 0.0, (0, -20), "100", (50, -19), 0.0, 2.5, 100.0)
    drawing = Drawing("front", "", (Line((0, 0), (100, 0), Meaning.VISIBLE),), (size,))
    assert drawing_box(drawing, 1.0, "iso") == pytest.approx((0.0, -22.0, 100.0, 0.0))


def test_nothing_has_no_box() -> None:
    with pytest.raises(NothingDrawn):
        drawing_box(Drawing("front", "", ()), 1.0, "iso")
