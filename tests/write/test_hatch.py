"""Hatch lines fill what is to be filled, keep their pitch on paper, and are the same every run."""

import math
from itertools import pairwise

import pytest
from shapely.geometry import LineString, Polygon

from shopdraw.drawing.mark import Area, Hatching
from shopdraw.shape.path import circle, flattened, rectangle
from shopdraw.write.hatch import hatch_lines


@pytest.mark.parametrize("angle", [0.0, 45.0, 135.0, 90.0])
@pytest.mark.parametrize("scale", [1.0, 0.2])
def test_length_of_lines_times_pitch_is_the_area(angle: float, scale: float) -> None:
    area = Area(rectangle(3, 7, 403, 307), (circle((200, 150), 80),), Hatching("lines", angle, 2.0))
    filled = 400 * 300 - math.pi * 80**2
    drawn = sum(math.dist(a, b) for a, b in hatch_lines(area, scale))
    assert drawn * 2.0 / scale == pytest.approx(filled, rel=0.03)


def test_lines_lie_inside_the_outline_and_outside_islands_and_clear_boxes() -> None:
    outline, island, box = rectangle(0, 0, 100, 60), circle((30, 30), 15), (60.0, 20.0, 80.0, 40.0)
    area = Area(outline, (island,), Hatching("lines", 45.0, 1.5), clear=(box,))
    x0, y0, x1, y1 = box
    free = Polygon(flattened(outline), [flattened(island)]) - Polygon([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])
    for line in hatch_lines(area, 1.0):
        assert free.buffer(0.05).covers(LineString(line))


def test_no_line_lies_on_the_edge_of_a_board_that_is_whole_pitches_high() -> None:
    lines = hatch_lines(Area(rectangle(0, 0, 50, 20), (), Hatching("lines", 0.0, 2.0)), 1.0)
    assert len(lines) == 10
    assert all(min(abs(y), abs(y - 20)) > 0.5 for (_, y), _ in lines)


def test_area_thinner_than_the_pitch_has_one_line_along_its_middle() -> None:
    lines = hatch_lines(Area(rectangle(0, 0, 300, 0.6), (), Hatching("lines", 0.0, 2.0)), 1.0)
    assert lines == (((0.0, 0.3), (300.0, 0.3)),)


def test_broken_lines_follow_their_seed_alone() -> None:
    def lines(seed: int) -> object:
        return hatch_lines(Area(rectangle(0, 0, 300, 20), (), Hatching("broken", 0.0, 2.6, seed)), 1.0)

    assert lines(3) == lines(3)
    assert lines(3) != lines(4)


def test_broken_lines_have_gaps_of_1_to_3_mm_on_paper() -> None:
    pieces = hatch_lines(Area(rectangle(0, 0, 1200, 3), (), Hatching("broken", 0.0, 2.6, 5)), 0.25)
    gaps = [b[0][0] - a[1][0] for a, b in pairwise(pieces) if a[0][1] == b[0][1]]
    assert len(gaps) > 5
    assert all(1.0 - 1e-6 <= gap * 0.25 <= 3.5 for gap in gaps)


def test_grey_has_no_lines() -> None:
    assert hatch_lines(Area(rectangle(0, 0, 50, 1), (), Hatching("grey")), 1.0) == ()
