"""Words of facts: chains that add up, rows within rows, each size told once."""

import itertools
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.measure import dual, fractions, millimetres
from shopdraw.sheet import BadFact, Fact, Rank, Writing, inch_writing, metric_writing, write_figures
from tests.sheet.judge import figure_in as value
from tests.sheet.random_view import VIEW, at


def chain(points, name="c", rank=Rank.OPENING):
    ends = [at(f"p{p:g}", 0.0, p) for p in points]
    return [Fact(f"{a.id}/{b.id}", a, b, rank, (VIEW,), 90.0, chain=name) for a, b in itertools.pairwise(ends)]


def lone(low, high, rank=Rank.OVERALL):
    return Fact(f"p{low:g}/p{high:g}", at(f"p{low:g}", 0.0, low), at(f"p{high:g}", 0.0, high), rank, (VIEW,), 90.0)


def test_case_19_three_graduated_drawers_add_up_to_24_inches():
    rail, first = 0.703, (24 - 2 * 0.703 - 3) / 3
    sizes = [first, rail, first + 1, rail, first + 2]
    points = [sum(sizes[:i]) * 25.4 for i in range(6)]
    links = chain(points)
    words = write_figures(links, inch_writing())
    printed = [value(words[link.id]) for link in links]
    assert sum(printed) == 24
    assert all(abs(got - exact) <= Fraction(1, 16) for got, exact in zip(printed, sizes, strict=True))


def test_short_links_give_way_where_long_ones_would_be_more_than_a_step_off():
    points = [0.0]
    for size in [300] * 6 + [3227, 3227, 7529]:
        points.append(points[-1] + size * 0.137)
    fine, coarse = chain(points, "fine"), chain([points[0], points[6], points[-1]], "coarse", Rank.LEVEL)
    coarse = [Fact(f"coarse {i}", f.a, f.b, f.rank, f.views, 90.0, chain="coarse") for i, f in enumerate(coarse)]
    words = write_figures([*fine, *coarse, lone(points[0], points[-1])], metric_writing())
    assert sum(value(words[f.id]) for f in fine[:6]) == value(words[coarse[0].id])
    assert sum(value(words[f.id]) for f in fine[6:]) == value(words[coarse[1].id])


def rows_add_up_to_each_other(points, cut, writing):
    """A row of all points, one of the two stretches that `cut` makes of it, and the whole."""
    fine, coarse = chain(points, "fine"), chain([points[0], points[cut], points[-1]], "coarse", Rank.LEVEL)
    coarse = [Fact(f"coarse {i}", f.a, f.b, f.rank, f.views, 90.0, chain="coarse") for i, f in enumerate(coarse)]
    whole = lone(points[0], points[-1])
    words = write_figures([*fine, *coarse, whole], writing)
    below, above = (value(words[f.id]) for f in coarse)
    assert sum(value(words[f.id]) for f in fine[:cut]) == below
    assert sum(value(words[f.id]) for f in fine[cut:]) == above
    assert below + above == value(words[whole.id])


@given(st.lists(st.integers(300, 9000), min_size=2, max_size=9), st.data())
def test_rows_within_rows_add_up_to_each_other(tenths, data):
    points = [0.0]
    for size in tenths:
        points.append(points[-1] + size * 0.137)
    rows_add_up_to_each_other(points, data.draw(st.integers(1, len(points) - 2)), metric_writing())


def test_the_same_two_features_told_twice_stand_in_brackets_the_second_time():
    first = lone(0, 100.26)
    second = Fact("again", first.b, first.a, Rank.SIZE, (VIEW,), 90.0, "running")
    words = write_figures([second, first], metric_writing())
    assert (words[first.id], words[second.id]) == ("100,5", "(100,5)")


def test_a_reference_size_stands_in_brackets():
    fact = Fact("a/b", at("a", 0, 0), at("b", 0, 50), Rank.SIZE, (VIEW,), 90.0, reference=True)
    assert write_figures([fact], metric_writing(".")) == {"a/b": "(50)"}


def test_a_fit_that_the_step_would_eat_is_printed_finer():
    fact = Fact("a/b", at("a", 0, 0), at("b", 0, 0.08), Rank.CLEARANCE, (VIEW,), 90.0, rounding="fit", prefix="gap ")
    assert write_figures([fact], metric_writing(".")) == {"a/b": "gap 0.08"}


def test_radius_and_diameter_have_their_signs():
    centre, edge = at("c", 0, 0), at("e", 3, 4)
    radius = Fact("r", centre, edge, Rank.RADIUS, (VIEW,), kind="radius")
    diameter = Fact("d", centre, edge, Rank.RADIUS, (VIEW,), kind="diameter")
    assert write_figures([radius, diameter], metric_writing()) == {"r": "R5", "d": "Ø10"}


def test_a_sign_stands_off_a_fraction():
    radius = Fact("r", at("c", 0, 0), at("e", 11.1125, 0), Rank.RADIUS, (VIEW,), kind="radius")
    assert write_figures([radius], inch_writing()) == {"r": "R 7/16"}


def test_case_62_two_units_come_each_from_the_exact_size():
    style = dual(fractions(16), millimetres("0.1", "."))
    words = write_figures([lone(0, 800.0)], Writing(style, style, style))
    assert words == {"p0/p800": "31 1/2 [800.0]"}


def test_two_units_add_up_each_by_itself():
    style = dual(fractions(16), millimetres("0.5", "."))
    links, whole = chain([0, 101.3, 233.9, 401.1]), lone(0, 401.1)
    words = write_figures([*links, whole], Writing(style, style, style))
    inches, brackets = zip(*(words[f.id].rstrip("]").split(" [") for f in [*links, whole]), strict=True)
    for figures in (inches, brackets):
        assert sum(value(f) for f in figures[:-1]) == value(figures[-1])


def test_two_facts_with_one_id_are_refused():
    with pytest.raises(BadFact, match="there are two facts with this id"):
        write_figures([lone(0, 1), lone(0, 1)], metric_writing())


def test_a_chain_with_two_roundings_is_refused():
    a, b = chain([0, 10, 20])
    other = Fact("x", b.a, b.b, b.rank, b.views, 90.0, chain="c", rounding="cut")
    with pytest.raises(BadFact, match=r"chain c: its links are rounded as \['cut', 'general'\]"):
        write_figures([a, other], metric_writing())


def test_a_note_without_words_is_refused():
    with pytest.raises(BadFact, match="a note needs words"):
        write_figures([Fact("n", at("n", 0, 0), at("n", 0, 0), Rank.SIZE, (VIEW,), kind="note")], metric_writing())


def test_a_rows_link_that_is_told_alone_elsewhere_still_makes_the_longer_rows_figure():
    # Sixteenths: 115.97 and 127.37 make 243.34; a longer row rounds the same stretch up to 244, so one link is 128.
    front, end, rear, plinth = 0.0, 115.969, 243.339, -13.165
    sixteenth = 25.4 / 16
    longer = chain([at * sixteenth for at in (plinth, front, rear)], "depths", Rank.LEVEL)
    above = chain([at * sixteenth for at in (front, end, rear)], "above", Rank.LEVEL)
    alone = Fact("alone", above[1].a, above[1].b, Rank.LEVEL, (VIEW,), 90.0)
    whole = lone(plinth * sixteenth, rear * sixteenth)
    words = write_figures([*longer, *above, alone, whole], inch_writing())
    told = {fact.id: value(words[fact.id]) for fact in (*longer, *above, alone, whole)}
    assert sum(told[link.id] for link in above) == told[longer[1].id]
    assert sum(told[link.id] for link in longer) == told[whole.id]
    assert told["alone"] == told[above[1].id]


def test_a_lone_1_in_an_inch_dimension_carries_the_sign_for_inches():
    # In a broken plumb dimension line a bare 1 reads as a piece of the line.
    one = lone(0, 25.4)
    again = Fact("again", one.a, one.b, Rank.SIZE, (VIEW,), 90.0, "running")
    other = lone(30, 30 + 25.4 * 1.5)
    words = write_figures([one, again, other], inch_writing())
    assert [words[fact.id] for fact in (one, again, other)] == ['1"', '(1")', "1 1/2"]
    assert write_figures([lone(0, 1)], metric_writing())[lone(0, 1).id] == "1"


def test_exact_sizes_keep_their_figures_where_the_row_is_exact_in_the_step_of_cuts():
    """Two sides of 25/32 in and 21 7/16 between them make 23: none of the three is to be rounded away."""
    links = chain([0.0, 25 / 32 * 25.4, (23 - 25 / 32) * 25.4, 23 * 25.4])
    words = write_figures([*links, lone(0.0, 23 * 25.4)], inch_writing())
    assert [words[link.id] for link in links] == ["25/32", "21 7/16", "25/32"]
    assert words[lone(0.0, 23 * 25.4).id] == "23"
    # sides of 3/4 are exact in sixteenths already
    plain = chain([0.0, 0.75 * 25.4, 22.25 * 25.4, 23 * 25.4])
    assert [words for _, words in sorted(write_figures(plain, inch_writing()).items())] == ["3/4", "21 1/2", "3/4"]
    # an overall between two sixteenths is rounded, and its row with it
    odd = chain([0.0, 25 / 32 * 25.4, 21.5 * 25.4])
    figures = write_figures([*odd, lone(0.0, 21.5 * 25.4)], inch_writing())
    assert sum(value(figures[link.id]) for link in odd) == Fraction(43, 2)


@given(st.lists(st.integers(16, 900), min_size=2, max_size=7), st.data())
def test_rows_of_thirty_seconds_add_up_within_each_other_too(sizes, data):
    points = [0.0]
    for size in sizes:
        points.append(points[-1] + size * 25.4 / 32)
    rows_add_up_to_each_other(points, data.draw(st.integers(1, len(points) - 2)), inch_writing())
