"""A sheet's frame: ISO 5457's border, zones without I and O, centring marks."""

import pytest

from shopdraw.drawing.mark import Line, Text
from shopdraw.sheet import look_for
from shopdraw.sheet.box import box_of_text
from shopdraw.sheet.frame import frame_marks, paper_of
from shopdraw.trade.paper import paper, papers


def marks_of(size):
    return frame_marks(size, look_for("iso", size.group))


def test_the_border_of_a1_is_20_off_the_left_edge_and_10_off_the_others():
    """ISO 5457:1999."""
    lines = [m for m in marks_of(paper("A1")) if isinstance(m, Line)][:4]
    xs, ys = {m.start[0] for m in lines}, {m.start[1] for m in lines}
    assert (xs, ys) == ({20.0, 831.0}, {10.0, 584.0})
    assert {m.width for m in lines} == {0.7}


def test_a1_has_16_by_12_zones_lettered_without_i_and_o():
    """ISO 5457:1999; fields of 50 mm from the middle."""
    names = {m.words for m in marks_of(paper("A1")) if isinstance(m, Text)}
    assert names == {*map(str, range(1, 17)), *"ABCDEFGHJKLM"}


@pytest.mark.parametrize("size", papers(), ids=lambda size: size.name)
def test_zone_names_stand_between_border_and_paper_edge(size):
    x0, y0, x1, y1 = size.frame
    for mark in marks_of(size):
        if isinstance(mark, Text):
            bx0, by0, bx1, by1 = box_of_text(mark).bounds()
            assert bx0 > 0
            assert by0 > 0
            assert bx1 < size.width_mm
            assert by1 < size.height_mm
            assert bx1 <= x0 or bx0 >= x1 or by1 <= y0 or by0 >= y1


@pytest.mark.parametrize("size", papers(), ids=lambda size: size.name)
def test_no_frame_line_meets_a_zone_name(size):
    marks = marks_of(size)
    boxes = [box_of_text(m) for m in marks if isinstance(m, Text)]
    for line in (m for m in marks if isinstance(m, Line)):
        assert not any(box.grown((line.width or 0) / 2 - 0.01).meets_line(line.start, line.end) for box in boxes)


def test_the_paper_keeps_its_size_and_group():
    found = paper_of(paper("ARCH D"))
    assert (found.width, found.height, found.group) == (pytest.approx(914.4), pytest.approx(609.6), "large")
