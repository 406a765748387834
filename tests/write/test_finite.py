"""No mark with a number that isn't finite gets into a file."""

import math

import pytest

from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Hatching, Line, Mark, Meaning, Text
from shopdraw.shape.path import rectangle
from shopdraw.write.finite import NotFinite, finite_marks

V = Meaning.VISIBLE
SQUARE = rectangle(0, 0, 1, 1)
GOOD: list[Mark] = [
    Line((0, 0), (1, 1), V),
    ArcMark((0, 0), 1, 0, 90, V),
    Dot((0, 0), 1, V),
    Arrow((0, 0), 0, 3, 1),
    Text((0, 0), "a", 2.5),
    Area(SQUARE, (), Hatching("lines")),
    Area(SQUARE, (), Hatching("grey", pitch=0.0)),
]


def test_finite_marks_come_as_they_are() -> None:
    assert list(finite_marks(GOOD, "here")) == GOOD


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf])
def test_each_kind_of_mark_is_refused_with_its_place(bad: float) -> None:
    marks: list[Mark] = [
        Line((0, 0), (1, bad), V),
        ArcMark((0, 0), bad, 0, 90, V),
        ArcMark((0, 0), 1, 0, bad, V),
        Dot((bad, 0), 1, V),
        Arrow((0, 0), bad, 3, 1),
        Text((0, 0), "a", bad),
        Text((bad, 0), "a", 2.5),
        Area(SQUARE, (), Hatching("lines", pitch=bad)),
        Area(SQUARE, (), Hatching("lines", angle_deg=bad)),
        Area(SQUARE, (), Hatching("lines"), clear=((0, 0, bad, 1),)),
    ]
    for mark in marks:
        with pytest.raises(NotFinite, match="sheet 3, front"):
            list(finite_marks([mark], "sheet 3, front"))


@pytest.mark.parametrize("mark", [Text((0, 0), "a", 0.0), Area(SQUARE, (), Hatching("lines", pitch=0.0))])
def test_heights_and_pitches_must_be_positive(mark: Mark) -> None:
    with pytest.raises(NotFinite):
        list(finite_marks([mark], "here"))
