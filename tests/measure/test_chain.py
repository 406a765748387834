"""Chains that add up as printed."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.measure import (
    ChainError,
    Unit,
    dual,
    fractions,
    millimetres,
    read_length,
    round_chain,
    round_to_step,
    steps_in,
    write_chain,
)

SIXTEENTH = Fraction(254, 160)


def test_case_19_graduated_drawers_add_up() -> None:
    rail = 0.703 * 25.4
    first = (24 * 25.4 - 2 * rail - 3 * 25.4) / 3
    links, overall = write_chain([first, rail, first + 25.4, rail, first + 50.8], fractions(16))
    assert overall == "24"
    assert links == ("6 1/2", "11/16", "7 9/16", "11/16", "8 9/16")


def test_case_20_a_chain_that_misses_its_overall_is_refused() -> None:
    with pytest.raises(ChainError, match=r"933\.45 mm.*958\.85 mm.*25\.40 mm off"):
        round_chain([101.6, 812.8, 19.05], SIXTEENTH, overall=958.85)


def test_case_20_the_right_chain_closes() -> None:
    assert write_chain([127, 812.8, 19.05], fractions(16), overall=958.85) == (("5", "32", "3/4"), "37 3/4")


def test_equal_links_print_equal_and_another_link_gives_way() -> None:
    third = Fraction(100, 3)
    assert round_chain([third, third, third, Fraction(41, 4)], Fraction(1)).links == (33, 33, 33, 11)


def test_equal_links_print_unequal_only_where_they_must() -> None:
    third = Fraction(100, 3)
    assert round_chain([third, third, third], Fraction(1)).links == (33, 33, 34)


def test_noise_in_floats_does_not_part_equal_links() -> None:
    half = 0.5 * 25.4 / 16
    chain = round_chain([half * 9 + 1e-12, half * 9 - 1e-12, 50.0], SIXTEENTH)
    assert chain.links == (4, 4, 32)


def test_a_link_below_zero_is_refused() -> None:
    with pytest.raises(ChainError):
        round_chain([5.0, -1.0], Fraction(1))


def test_an_overall_off_by_a_hair_keeps_its_own_figure() -> None:
    chain = round_chain([5.2499, 5.2499], Fraction(1), overall=10.5)
    assert chain.overall == sum(chain.links) == 11


def test_no_links_make_nothing() -> None:
    assert round_chain([], Fraction(1)).overall == 0


def test_both_figures_of_a_dual_chain_add_up() -> None:
    third = 800.1 / 3
    links, overall = write_chain([third] * 3, dual(fractions(16), millimetres("0.1")))
    assert overall == "31 1/2 [800.1]"
    assert links == ("10 1/2 [266.7]",) * 3


sizes = st.one_of(
    st.fractions(min_value=0, max_value=50, max_denominator=12),
    st.sampled_from([Fraction(0), Fraction(1), Fraction(1, 2), Fraction(7, 3)]),
)


@given(st.lists(sizes, max_size=25), st.sampled_from([Fraction(1), SIXTEENTH, Fraction(1, 2), Fraction(1, 10)]))
def test_a_chain_adds_up_and_stays_within_one_step(links: list[Fraction], step: Fraction) -> None:
    chain = round_chain(links, step)
    assert sum(chain.links) == chain.overall == steps_in(sum(links, Fraction(0)), step)
    assert all(abs(mm - exact) <= step and mm >= 0 for mm, exact in zip(chain.links_mm, links, strict=True))


@given(st.lists(sizes, min_size=1, max_size=5))
def test_equal_links_print_equal_whenever_any_set_allows_it(links: list[Fraction]) -> None:
    chain = round_chain(links, Fraction(1))
    kinds = sorted(set(links))
    near = [[n for n in range(int(x) - 1, int(x) + 3) if n >= 0 and abs(n - x) <= 1] for x in kinds]
    counts = [links.count(x) for x in kinds]
    totals = {sum(c * n for c, n in zip(counts, pick, strict=True)) for pick in product(*near)}
    possible = chain.overall in totals
    printed = {x: {n for n, y in zip(chain.links, links, strict=True) if x == y} for x in kinds}
    assert all(len(figures) == 1 for figures in printed.values()) == possible


@given(st.lists(st.floats(min_value=0, max_value=3000), max_size=60))
def test_long_chains_of_floats_add_up(links: list[float]) -> None:
    chain = round_chain(links, SIXTEENTH)
    assert sum(chain.links) == chain.overall


@given(st.lists(st.floats(min_value=0, max_value=3000), max_size=12), st.sampled_from([2, 8, 16, 64]))
def test_printed_links_read_back_add_up_to_the_printed_overall(links: list[float], denominator: int) -> None:
    printed, overall = write_chain(links, fractions(denominator))
    total = sum((read_length(text, Unit.INCH).exact for text in printed), Fraction(0))
    assert total == read_length(overall, Unit.INCH).exact


@given(st.floats(min_value=-3000, max_value=3000), st.sampled_from([SIXTEENTH, Fraction(1, 2)]))
def test_rounding_stays_within_half_a_step(size: float, step: Fraction) -> None:
    assert abs(round_to_step(size, step) - Fraction(size)) <= step / 2 + Fraction(1, 10**8)


def test_half_a_step_goes_away_from_zero() -> None:
    assert [steps_in(Fraction(n, 2), Fraction(1)) for n in (-3, -1, 1, 3, 5)] == [-2, -1, 1, 2, 3]
