"""Links that make what longer rows print."""

from fractions import Fraction

from shopdraw.sheet.nested_chain import Links, nested_steps

STEP = Fraction(1)


def links(*sizes):
    return Links(tuple(map(float, sizes)), tuple((f"p{i}", f"p{i + 1}") for i in range(len(sizes))))


def test_a_stretch_makes_what_is_printed_for_it():
    """By itself the first pair would print 10 + 11 of its 20.8; a longer row prints 21 for both, so 10 + 11 make it."""
    chain = links(10.4, 10.4, 30.2)
    steps = nested_steps(chain, {frozenset(("p0", "p2")): 21}, STEP)
    assert sum(steps[:2]) == 21
    assert sum(steps) == 51


def test_a_known_stretch_in_the_middle_leaves_the_rest_to_the_others():
    steps = nested_steps(links(10.3, 5.3, 5.3, 10.3), {frozenset(("p1", "p3")): 11}, STEP)
    assert steps[1] + steps[2] == 11
    assert sum(steps) == 31


def test_no_figure_is_more_than_a_step_off_even_then():
    sizes = (10.4, 10.4, 30.2)
    steps = nested_steps(links(*sizes), {frozenset(("p0", "p2")): 25}, STEP)
    assert all(abs(count - size) <= 1 for count, size in zip(steps, sizes, strict=True))


def test_links_that_do_not_join_are_rounded_by_themselves():
    loose = Links((10.4, 10.4), (("a", "b"), ("c", "d")))
    assert sum(nested_steps(loose, {frozenset(("a", "b")): 11}, STEP)) == 21


def test_corners_are_found_whichever_way_the_links_run():
    assert Links((1.0, 1.0), (("b", "a"), ("b", "c"))).corners() == ("a", "b", "c")


def test_the_whole_of_a_chain_makes_what_a_longer_row_prints_for_it():
    """A row over plinth and case may have printed 257 for a case of 256.4; its two parts make 257 beside it."""
    steps = nested_steps(links(216.2, 40.2), {frozenset(("p0", "p2")): 257}, STEP)
    assert sum(steps) == 257
    assert all(abs(count - size) <= 1 for count, size in zip(steps, (216.2, 40.2), strict=True))
