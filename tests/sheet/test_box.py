"""Boxes against lines and boxes, held against shapely."""

import math

import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from shopdraw.drawing.mark import Text
from shopdraw.sheet.box import Box, box_of_text, crossing, overlap, united

number = st.floats(-50, 50, allow_nan=False).map(lambda v: round(v, 3))
point = st.tuples(number, number)


@st.composite
def boxes(draw):
    angle = math.radians(draw(st.sampled_from([0, 90, 30, 45, -60, 13])))
    size = st.floats(0.5, 20)
    return Box(draw(number), draw(number), draw(size), draw(size), math.cos(angle), math.sin(angle))


def area_shared(one, two):
    return shapely.Polygon(one.corners()).intersection(shapely.Polygon(two.corners())).area


@given(boxes(), boxes())
def test_boxes_meet_where_shapely_says_so(one, two):
    shared = area_shared(one, two)
    assume(shared == 0 or shared > 1e-6)
    assert one.meets_box(two) == (shared > 0)


@given(boxes(), point, point)
def test_a_line_meets_a_box_where_shapely_says_so(box, p, q):
    assume(math.dist(p, q) > 0.1)
    inside = shapely.Polygon(box.corners()).intersection(shapely.LineString([p, q])).length
    assume(inside == 0 or inside > 1e-6)
    assert box.meets_line(p, q) == (inside > 0)


@given(point, point, point, point)
def test_lines_cross_where_shapely_says_so(a, b, c, d):
    assume(math.dist(a, b) > 1 and math.dist(c, d) > 1)
    one, two = shapely.LineString([a, b]), shapely.LineString([c, d])
    found = crossing((a, b), (c, d))
    meeting = one.intersection(two)
    ends = min(meeting.distance(shapely.Point(p)) for p in (a, b, c, d)) if not meeting.is_empty else 0
    if found is None:
        assert meeting.is_empty or ends < 0.06 or meeting.geom_type != "Point"
    else:
        assert shapely.Point(found).distance(meeting) < 1e-6


def test_lines_on_one_another_overlap_by_their_common_part():
    assert overlap(((0, 0), (10, 0)), ((6, 0.01), (20, 0.01))) == 4.0
    assert overlap(((0, 0), (10, 0)), ((6, 1.0), (20, 1.0))) == 0.0


def test_a_text_read_from_the_right_has_an_upright_box():
    box = box_of_text(Text((10.0, 20.0), "1067", 3.5, "middle", 90.0))
    x0, y0, x1, y1 = box.bounds()
    assert y1 - y0 > 2 * (x1 - x0)
    assert (y0 + y1) / 2 == 20.0
    assert 10.0 - 3.6 <= x0 < x1 <= 10.1


def test_a_text_in_a_drawing_takes_its_paper_size():
    on_paper = box_of_text(Text((50.0, 40.0), "18", 2.5))
    in_view = box_of_text(Text((250.0, 200.0), "18", 2.5), 0.2)
    assert math.isclose(on_paper.along, in_view.along)
    assert math.isclose(on_paper.x, in_view.x)


def test_united_boxes_reach_round_all():
    assert united([(0, 0, 1, 1), (-2, 3, 0, 5)]) == (-2, 0, 1, 5)
