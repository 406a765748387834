"""Paths that cross themselves are told from sound ones."""

import math

import pytest

from shopdraw.shape.crossing import CrossesItself, crossing_of, refuse_crossing
from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle


def test_case_68_a_bow_tie_crosses_itself_in_its_middle():
    bow_tie = Path((Corner(0, 0), Corner(100, 60), Corner(100, 0), Corner(0, 60)))
    assert crossing_of(bow_tie) == pytest.approx((50.0, 30.0))


def test_a_spike_through_the_far_side_crosses():
    spike = Path((Corner(0, 0), Corner(100, 0), Corner(100, 60), Corner(0, 60), Corner(50, -10)))
    assert crossing_of(spike)[1] == pytest.approx(0.0, abs=1e-9)


def test_an_arc_that_bows_through_another_side_crosses():
    # a hollow of bulge b is b × half its chord deep: 40 reaches the far end, 45 passes it
    assert crossing_of(Path((Corner(0, 0), Corner(40, 0, -0.79), Corner(40, 100), Corner(0, 100)))) is None
    deep = Path((Corner(0, 0), Corner(40, 0, -0.9), Corner(40, 100), Corner(0, 100)))
    assert crossing_of(deep)[0] == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize(
    "sound",
    [
        rectangle(0, 0, 10, 5),
        circle((3, 4), 5),
        polygon(((0, 0), (10, 0), (10, 4), (4, 4), (4, 10), (0, 10))),
        Path((Corner(0, 0), Corner(10, 0), Corner(0, 10, math.tan(math.pi / 8)))),
        Path((Corner(0, 0), Corner(10, 0), Corner(5, 5), Corner(10, 10), Corner(0, 10), Corner(5, 5))),
    ],
)
def test_sound_paths_and_paths_that_touch_themselves_do_not(sound):
    assert crossing_of(sound) is None


def test_the_refusal_says_what_and_where():
    bow_tie = Path((Corner(0, 0), Corner(100, 60), Corner(100, 0), Corner(0, 60)))
    with pytest.raises(CrossesItself, match=r"the outline crosses itself at \(50\.000, 30\.000\)"):
        refuse_crossing(bow_tie, "the outline")
