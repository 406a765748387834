"""Facts: what they are refused for, and how large they are in a view."""

import pytest

from shopdraw.sheet import BadFact, Fact, Rank
from tests.sheet.random_view import VIEW, at


def test_a_kind_that_there_is_not_is_refused_with_those_that_there_are():
    with pytest.raises(BadFact, match=r"fact a/b: kind is 'wavy'; it must be one of linear, running"):
        Fact("a/b", at("a", 0, 0), at("b", 1, 0), Rank.SIZE, (VIEW,), kind="wavy")


def test_a_fact_without_a_view_is_refused():
    with pytest.raises(BadFact, match="names no view"):
        Fact("a/b", at("a", 0, 0), at("b", 1, 0), Rank.SIZE, ())


def test_an_angle_needs_its_vertex():
    with pytest.raises(BadFact, match="needs the point where its legs meet"):
        Fact("a/b", at("a", 0, 0), at("b", 1, 0), Rank.SIZE, (VIEW,), kind="angular")


def test_a_height_is_measured_along_its_direction():
    fact = Fact("a/b", at("a", 0, 10), at("b", 70, 40), Rank.SIZE, (VIEW,), 90.0)
    assert fact.size() == pytest.approx(30.0)


def test_an_angle_is_the_smaller_one_between_its_legs():
    # 3-4-5 triangle: atan(3/4) = 36.8699 degrees.
    fact = Fact("a/b", at("a", 10, 0), at("b", 4, 3), Rank.SIZE, (VIEW,), kind="angular", vertex=at("v", 0, 0))
    assert fact.size() == pytest.approx(36.8698976458)


def test_a_diameter_is_twice_the_way_from_centre_to_arc():
    fact = Fact("c/e", at("c", 1, 1), at("e", 4, 5), Rank.RADIUS, (VIEW,), kind="diameter")
    assert fact.size() == pytest.approx(10.0)


def test_a_view_may_need_another_direction():
    fact = Fact("a/b", at("a", 0, 0), at("b", 5, 9), Rank.SIZE, (VIEW, "plan"), 0.0, directions=(("plan", 90.0),))
    assert (fact.direction_in(VIEW), fact.direction_in("plan")) == (0.0, 90.0)


def test_a_fact_that_no_view_has_needs_a_size():
    fact = Fact("a/b", at("a", 0, 0), at("b", 5, 9), Rank.SIZE, ("plan",))
    with pytest.raises(BadFact, match="no view has both a and b"):
        fact.size()
