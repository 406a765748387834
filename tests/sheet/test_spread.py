"""Facts over views: the first candidate that shows it at true size and has room."""

import itertools

from shopdraw.sheet import (
    Fact,
    Feature,
    PlainView,
    Rank,
    Sight,
    dimension_views,
    look_for,
    metric_writing,
    write_figures,
)
from tests.sheet.random_view import box_lines

LOOK = look_for("iso", "large")
VIEWS = [PlainView(name, name, tuple(box_lines(0, 0, 600, 900))) for name in ("front", "section.A", "detail.d1")]


def seen(name, **sights):
    return Feature(name, tuple(Sight(view.replace("_", "."), *sight) for view, sight in sights.items()))


def spread(facts, scales=0.2):
    return dimension_views(VIEWS, facts, scales, LOOK, write_figures(facts, metric_writing()))


def test_a_hidden_edge_sends_a_fact_to_the_section():
    a = seen("a", front=((0, 0), False), section_A=((0, 0), True))
    b = seen("b", front=((0, 300), True), section_A=((0, 300), True))
    done = spread([Fact("a/b", a, b, Rank.SIZE, ("front", "section.A"), 90.0)])
    assert done.views["section.A"].placed == ("a/b",)
    assert done.moved == (("a/b", "section.A"),)
    assert not done.unplaced


def test_features_nearer_than_2_mm_on_paper_go_to_a_detail():
    a = seen("a", front=((0, 0),), detail_d1=((0, 0),))
    b = seen("b", front=((0, 6.4),), detail_d1=((0, 6.4),))
    done = spread(
        [Fact("a/b", a, b, Rank.SIZE, ("front", "detail.d1"), 90.0)], {"front": 0.2, "section.A": 0.2, "detail.d1": 1.0}
    )
    assert done.views["detail.d1"].placed == ("a/b",)


def test_a_chain_stays_together_in_the_view_that_has_all_of_it():
    ends = [seen(f"z{z}", front=((0, z), z != 400), section_A=((0, z), True)) for z in (0, 200, 400, 900)]
    facts = [
        Fact(f"{a.id}/{b.id}", a, b, Rank.OPENING, ("front", "section.A"), 90.0, chain="c")
        for a, b in itertools.pairwise(ends)
    ]
    done = spread(facts)
    assert len(done.views["section.A"].placed) == 3
    assert not done.views["front"].placed


def test_what_no_view_shows_is_left_over_with_its_reason():
    a, b = seen("a", front=((0, 0), False)), seen("b", front=((0, 300), True))
    done = spread([Fact("a/b", a, b, Rank.SIZE, ("front",), 90.0)])
    assert [(left.fact, left.reason) for left in done.unplaced] == [("a/b", "a is a hidden edge in this view")]


def test_a_view_that_is_not_drawn_is_passed_over():
    a = seen("a", plan=((0, 0),), front=((0, 0),))
    b = seen("b", plan=((300, 0),), front=((300, 0),))
    done = spread([Fact("a/b", a, b, Rank.SIZE, ("plan", "front"), 0.0)])
    assert done.views["front"].placed == ("a/b",)
