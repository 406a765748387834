"""Lengths as they are printed."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.measure import Style, decimal_inches, dual, fractions, millimetres, read_length, write_length, write_steps


@pytest.mark.parametrize(
    ("mm", "style", "printed"),
    [
        (800.1, fractions(16), "31 1/2"),
        (19.05, fractions(16), "3/4"),
        (914.4, fractions(16), "36"),
        (0.0, fractions(16), "0"),
        (17.8562, fractions(64), "45/64"),
        (25.39, fractions(16), "1"),
        (-12.7, fractions(16), "-1/2"),
        (19.05, fractions(1), "1"),
        (17.8562, decimal_inches(3), ".703"),
        (800.1, decimal_inches(3), "31.500"),
        (25.4, decimal_inches(1), "1.0"),
        (-2.54, decimal_inches(2), "-.10"),
        (800.0, millimetres("0.1"), "800.0"),
        (0.5, millimetres("0.5", ","), "0,5"),
        (18.26, millimetres("0.05", ","), "18,25"),
        (800.24, millimetres("0.5", trailing_zeros=False), "800"),
        (800.25, millimetres("0.5", trailing_zeros=False), "800.5"),
        (800.6, millimetres("1"), "801"),
    ],
)
def test_figures(mm: float, style: Style, printed: str) -> None:
    assert write_length(mm, style) == printed


def test_case_62_both_figures_come_from_the_exact_size() -> None:
    assert write_length(800.0, dual(fractions(16), millimetres("0.1"))) == "31 1/2 [800.0]"
    assert write_length(6.0, dual(millimetres("1"), fractions(64))) == "6 [15/64]"


# ASME Y14.5: a decimal inch below 1 has no zero before the point, a millimetre has one.
def test_zero_before_the_point_only_in_millimetres() -> None:
    assert write_length(12.7, decimal_inches(2)) == ".50"
    assert write_length(0.5, millimetres("0.1")) == "0.5"
    assert write_length(0, decimal_inches(2)) == "0.00"


@pytest.mark.parametrize("denominator", [0, -2, 3, 12, 256])
def test_denominators_are_powers_of_two(denominator: int) -> None:
    with pytest.raises(ValueError, match="power of two"):
        fractions(denominator)


def test_steps_that_would_read_as_thousands_are_refused() -> None:
    with pytest.raises(ValueError, match="steps are"):
        millimetres("0.001", ",")


def test_decimal_places_have_limits() -> None:
    with pytest.raises(ValueError, match="places"):
        decimal_inches(0)


styles = st.one_of(
    st.sampled_from([1, 2, 4, 8, 16, 32, 64, 128]).map(fractions),
    st.integers(min_value=1, max_value=4).map(decimal_inches),
    st.builds(
        millimetres,
        st.sampled_from(["1", "0.5", "0.1", "0.05", "0.01"]),
        st.sampled_from(".,"),
        trailing_zeros=st.booleans(),
    ),
)


@given(st.integers(min_value=-3900, max_value=3900), styles)
def test_what_is_written_in_whole_steps_reads_back_exactly(steps: int, style: Style) -> None:
    assert read_length(write_steps(steps, style), style.unit, negative=True).exact == steps * style.step_mm


@given(st.floats(min_value=-5000, max_value=5000), styles)
def test_what_is_written_reads_back_within_half_a_step(mm: float, style: Style) -> None:
    back = read_length(write_length(mm, style), style.unit, negative=True).exact
    assert abs(back - Fraction(mm)) <= style.step_mm / 2 + Fraction(1, 10**8)
