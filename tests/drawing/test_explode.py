"""A dimension's marks: extension lines, dimension line, ends and figure, by style."""

import math
from typing import Any

import pytest

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import dimension_marks, drawing_marks
from shopdraw.drawing.letters import text_box, text_width
from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Text
from shopdraw.drawing.sheet import Drawing


def dimension(**other: Any) -> Dimension:
    """Along x from (0, 0) to (100, 0), its line 20 below."""
    given: dict[str, Any] = {
        "id": "a/b@front", "kind": "linear", "a": (0.0, 0.0), "b": (100.0, 0.0), "direction_deg": 0.0,
        "line": (0.0, -20.0), "words": "100", "words_at": (50.0, -19.0), "words_angle_deg": 0.0, "height": 2.5,
        "measured": 100.0,
    }  # fmt: skip
    return Dimension(**(given | other))


def lines(marks: tuple[Mark, ...]) -> list[Line]:
    return [m for m in marks if isinstance(m, Line)]


def arrows(marks: tuple[Mark, ...]) -> list[Arrow]:
    return [m for m in marks if isinstance(m, Arrow)]


def test_iso_extension_lines_start_at_the_feature_and_run_8_widths_past_the_line() -> None:
    left, right, line = lines(dimension_marks(dimension(), 1.0, "iso"))
    assert (left.start, left.end) == ((0.0, 0.0), (0.0, -22.0)), "8 × 0.25 past"
    assert (right.start, right.end) == ((100.0, 0.0), (100.0, -22.0))
    assert (line.start, line.end) == ((0.0, -20.0), (100.0, -20.0))
    assert lines(dimension_marks(dimension(), 1.0, "iso", "large"))[0].end[1] == pytest.approx(-22.8)


def test_asme_extension_lines_leave_a_gap_of_1_5_and_run_3_past() -> None:
    left = lines(dimension_marks(dimension(), 1.0, "asme"))[0]
    assert (left.start, left.end) == ((0.0, -1.5), (0.0, -23.0))


def test_paper_sizes_grow_with_the_scale_and_lengths_do_not() -> None:
    marks = dimension_marks(dimension(line=(0.0, -80.0)), 0.25, "asme")
    left, _, line = lines(marks)
    assert (left.start, left.end) == ((0.0, -6.0), (0.0, -92.0))
    assert math.dist(line.start, line.end) == 100.0
    assert {a.length for a in arrows(marks)} == {3.0}, "arrowheads are given in paper mm"


def test_arrows_point_outwards_inside_and_inwards_outside() -> None:
    assert [(a.tip, a.angle_deg) for a in arrows(dimension_marks(dimension(), 1.0, "iso"))] == [
        ((0.0, -20.0), 180.0),
        ((100.0, -20.0), 0.0),
    ]
    outside = arrows(dimension_marks(dimension(terminator="arrow-outside"), 1.0, "iso"))
    assert [a.angle_deg for a in outside] == [0.0, 180.0]


def test_line_reaches_past_arrows_outside_and_to_the_end_of_a_figure_that_stands_there() -> None:
    outside = dimension(terminator="arrow-outside", words_at=(120.0, -19.0))
    line = lines(dimension_marks(outside, 1.0, "iso"))[-1]
    assert line.start == pytest.approx((-6.0, -20.0))
    assert line.end[0] == pytest.approx(120.0 + text_width("100", 2.5) / 2)


def test_strokes_lie_at_45_degrees_through_the_ends() -> None:
    strokes = lines(dimension_marks(dimension(terminator="stroke"), 1.0, "iso"))[-2:]
    for stroke, end in zip(strokes, ((0.0, -20.0), (100.0, -20.0)), strict=True):
        (x0, y0), (x1, y1) = stroke.start, stroke.end
        assert abs(x1 - x0) == pytest.approx(abs(y1 - y0))
        assert ((x0 + x1) / 2, (y0 + y1) / 2) == pytest.approx(end)


@pytest.mark.parametrize("angle", [0.0, 90.0, 37.0])
def test_broken_line_leaves_its_figure_free(angle: float) -> None:
    turn = math.radians(angle)
    c, s = math.cos(turn), math.sin(turn)
    middle = (50 * c + 20 * s, 50 * s - 20 * c)
    broken = dimension(
        b=(100 * c, 100 * s), direction_deg=angle, line=(20 * s, -20 * c), broken=True,
        words_at=(middle[0], middle[1] - 1.25),
    )  # fmt: skip
    marks = dimension_marks(broken, 1.0, "asme")
    *_, first, second = lines(marks)
    drawn = math.dist(first.start, first.end) + math.dist(second.start, second.end)
    assert 85.0 < drawn < 100.0 - 2.5
    box = text_box(next(m for m in marks if isinstance(m, Text)))
    assert min(math.dist(end, corner) for end in (first.end, second.start) for corner in box) >= 1.0 - 1e-9


def test_vertical_dimension_measures_the_drop_between_points_that_are_not_above_each_other() -> None:
    upright = dimension(b=(30.0, 40.0), direction_deg=90.0, line=(-20.0, 0.0))
    line = lines(dimension_marks(upright, 1.0, "iso"))[-1]
    assert (line.start, line.end) == ((-20.0, 0.0), (-20.0, 40.0))


def test_extension_lines_can_be_left_out_one_by_one() -> None:
    assert len(lines(dimension_marks(dimension(extension=(False, True)), 1.0, "iso"))) == 2


def test_running_dimension_has_a_ring_at_its_origin_and_one_arrow() -> None:
    marks = dimension_marks(dimension(kind="running"), 1.0, "iso")
    ring = next(m for m in marks if isinstance(m, ArcMark))
    assert (ring.centre, ring.end_deg - ring.start_deg) == ((0.0, -20.0), 360.0)
    assert [(a.tip, a.angle_deg) for a in arrows(marks)] == [((100.0, -20.0), 0.0)]


def test_running_dimensions_share_their_ring_and_first_extension_line() -> None:
    first, second = dimension(kind="running"), dimension(kind="running", id="2", b=(60.0, 0.0), words="60")
    marks = drawing_marks(Drawing("front", "", (), (first, second)), 1.0, "iso")
    assert len([m for m in marks if isinstance(m, ArcMark)]) == 1
    assert len(marks) == len(set(marks))


def test_angular_arc_runs_between_the_legs_on_the_side_of_its_line() -> None:
    angle = dimension(
        kind="angular", a=(10.0, 0.0), b=(0.0, 10.0), vertex=(0.0, 0.0), line=(30 / math.sqrt(2), 30 / math.sqrt(2))
    )
    marks = dimension_marks(angle, 1.0, "iso")
    arc = next(m for m in marks if isinstance(m, ArcMark))
    assert (arc.radius, arc.start_deg, arc.end_deg) == pytest.approx((30.0, 0.0, 90.0))
    first, last = arrows(marks)
    assert first.tip == pytest.approx((30.0, 0.0))
    assert last.tip == pytest.approx((0.0, 30.0))
    # An arrowhead on an arc lies along a chord of about its own length: half of 3/30 rad off the tangent.
    assert first.angle_deg == pytest.approx(270.0 + math.degrees(3 / 30 / 2))
    assert last.angle_deg == pytest.approx(180.0 - math.degrees(3 / 30 / 2))
    assert lines(marks)[0].start == (10.0, 0.0), "the leg is drawn on to the arc"


def test_reflex_angle_is_taken_when_the_line_lies_there() -> None:
    angle = dimension(kind="angular", a=(10.0, 0.0), b=(0.0, 10.0), vertex=(0.0, 0.0), line=(-20.0, -20.0))
    arc = next(m for m in dimension_marks(angle, 1.0, "iso") if isinstance(m, ArcMark))
    assert arc.end_deg - arc.start_deg == pytest.approx(270.0)


def test_broken_arc_leaves_its_figure_free() -> None:
    angle = dimension(
        kind="angular", a=(30.0, 0.0), b=(0.0, 30.0), vertex=(0.0, 0.0), line=(0.0, 30.0), broken=True,
        words_at=(30 / math.sqrt(2), 30 / math.sqrt(2) - 1.25), words="90°",
    )  # fmt: skip
    arcs = [m for m in dimension_marks(angle, 1.0, "asme") if isinstance(m, ArcMark)]
    assert len(arcs) == 2
    assert arcs[0].end_deg < 45.0 < arcs[1].start_deg


def test_angular_dimension_without_its_vertex_is_refused() -> None:
    with pytest.raises(ValueError, match=r"a/b@front.*legs meet"):
        dimension_marks(dimension(kind="angular"), 1.0, "iso")


def test_radius_has_one_arrow_on_the_arc_and_diameter_two() -> None:
    radius = dimension_marks(dimension(kind="radius", a=(0.0, 0.0), b=(30.0, 40.0), line=(0.0, 0.0)), 1.0, "iso")
    assert [(a.tip, round(a.angle_deg, 6)) for a in arrows(radius)] == [((30.0, 40.0), 53.130102)]
    across = dimension_marks(dimension(kind="diameter", a=(0.0, 0.0), b=(0.0, 25.0), line=(0.0, 0.0)), 1.0, "iso")
    assert {a.tip for a in arrows(across)} == {(0.0, 25.0), (0.0, -25.0)}


def test_leader_is_drawn_and_the_line_is_not_stretched_to_its_figure() -> None:
    led = dimension(leader=((50.0, -20.0), (60.0, -40.0), (80.0, -40.0)), words_at=(170.0, -19.0))
    marks = lines(dimension_marks(led, 1.0, "iso"))
    assert [(m.start, m.end) for m in marks[-2:]] == [((50.0, -20.0), (60.0, -40.0)), ((60.0, -40.0), (80.0, -40.0))]
    assert marks[2].end == (100.0, -20.0)
