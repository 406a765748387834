"""Lengths as people type them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.measure import Length, LengthError, Unit, length_of, read_length

# One inch is 25.4 mm exactly (international yard and pound agreement of 1959); the figures below follow from it.
INCH_FORMS = {
    "31 1/2": "800.1",
    "31-1/2": "800.1",
    '31 1/2"': "800.1",
    "31 1/2 in": "800.1",
    "31 1/2in.": "800.1",
    "2' 7 1/2\"": "800.1",
    "2'-7 1/2\"": "800.1",
    "2' 7-1/2\"": "800.1",
    "2'7½\"": "800.1",
    "2′ 7½″": "800.1",
    "2 ft 7 1/2 in": "800.1",
    "2' 7 1/2": "800.1",
    "2 feet": "609.6",
    "2 1/2'": "762",
    "7½″": "190.5",
    "7 ½": "190.5",
    "7-½": "190.5",
    "½": "12.7",
    "7 1⁄2''": "190.5",
    "31.5 in": "800.1",
    "31,5 in": "800.1",
    ".703": "17.8562",
    "0,703": "17.8562",
    "1.250": "31.75",
    "1234,567 mm": "1234.567",
    "800 mm": "800",
    "18,3 mm": "18.3",
    "80 cm": "800",
    "0.8 m": "800",
    "80 CM": "800",
    "1/3": "8.4666666666666666667",
    "31 1/2 + 3/4": "819.15",
    "31 1/2+3/4": "819.15",
    "31 1/2 - 3/4": "781.05",
    "31 1/2 − 3/4": "781.05",
    "36 - 3/4 - 3/4": "876.3",
    "36 in + 10 mm": "924.4",
    '31-1/2 + 3/4"': "819.15",
    "+5": "127",
    "  5 ": "127",
    "5\u00a01/2": "139.7",
    "0": "0",
}


@pytest.mark.parametrize(("text", "mm"), INCH_FORMS.items())
def test_forms_are_read_in_an_inch_piece(text: str, mm: str) -> None:
    expected = Fraction(254, 30) if text == "1/3" else Fraction(mm)
    assert read_length(text, Unit.INCH).exact == expected


@pytest.mark.parametrize(
    ("text", "mm"),
    [("800", 800.0), ("800,5", 800.5), ("31 1/2 in", 800.1), ("2' 7 1/2\"", 800.1), ("600 + 18,3", 618.3), (".5", 0.5)],
)
def test_a_bare_number_is_in_the_pieces_unit(text: str, mm: float) -> None:
    assert read_length(text, Unit.MM).mm == mm


@pytest.mark.parametrize(("text", "mm"), [("5 1/2", 139.7), ("5-1/2", 139.7), ("11/4", 69.85), ("1 1/4", 31.75)])
def test_case_36_mixed_fractions(text: str, mm: float) -> None:
    assert read_length(text, Unit.INCH).mm == mm


@pytest.mark.parametrize("unit", Unit)
def test_case_35_decimal_comma(unit: Unit) -> None:
    assert read_length("18,3 mm", unit).mm == 18.3


AMBIGUOUS = {
    "1,234": ("1.234", "1234"),
    "12,500 mm": ("12.500", "12500"),
    "31 -1/2": ("31 1/2", "31 - 1/2"),
    "31- 1/2": ("31 1/2", "31 - 1/2"),
    "2' - 7\"": ("2' 7\"", '24" - 7"'),
}


@pytest.mark.parametrize(("text", "readings"), AMBIGUOUS.items())
def test_two_readings_are_refused_with_both_right_forms(text: str, readings: tuple[str, str]) -> None:
    with pytest.raises(LengthError) as caught:
        read_length(text, Unit.INCH)
    assert text in str(caught.value)
    for reading in readings:
        assert reading in caught.value.right
        if "'" not in reading:
            read_length(reading, Unit.MM)


REFUSED = [
    *("", " ", "\t", "-", "+", "in", "a", "nan", "NaN", "inf", "-inf", "1e9", "1E9", "1e+9", "1_000", "0x10"),
    *("1000000000", "9" * 79, "9" * 5000, "٣", "５", "5\n1/2", "5\x00", "=1+1", "(5)", "5 x 3", "5*3"),
    *("1.234,5", "1,234.5", "1.234.567", "1 234", "5.", "5..5"),
    *("1/0", "1/", "/2", "1/2/3", "1.5/2", "1 11/4", "1/2 1/2", "31.5 1/2", "½½", "1/½", "7.½"),
    *("31 1/2-3/4", "800-20", "31−1/2", "--5", "5 + -3", "5 +", "+ + 5", "5 - - 3"),
    *("2' 14\"", "2.5' 3\"", "7\" 2'", '7"1/2', "2 m 20 cm", "5 furlongs", "5 inn", "1 in 2"),
    *("31 1/2 [800]", "31 1/2 + 3/4 mm", "5 mm + 1"),
]


@pytest.mark.parametrize("text", REFUSED)
def test_what_cannot_be_read_is_refused_in_one_line(text: str) -> None:
    with pytest.raises(LengthError) as caught:
        read_length(text, Unit.INCH)
    message = str(caught.value)
    assert "\n" not in message
    assert len(message) < 250
    assert caught.value.right in message


def test_feet_and_a_bare_number_are_refused_in_a_metric_piece() -> None:
    with pytest.raises(LengthError):
        read_length("2' 7", Unit.MM)


def test_below_zero_is_read_only_where_it_makes_sense() -> None:
    assert read_length("-5 1/2", Unit.INCH, negative=True).mm == -139.7
    assert read_length("−3 mm + 1 mm", Unit.INCH, negative=True).mm == -2
    assert read_length("3 - 2 - 1", Unit.MM).mm == 0
    for text in ("-5", "3 - 4"):
        with pytest.raises(LengthError, match="below zero"):
            read_length(text, Unit.MM)


def test_sums_are_exact() -> None:
    assert read_length("0.1 + 0.2", Unit.MM) == read_length("0.3", Unit.MM) == Length(Fraction(3, 10))


keys = st.text(alphabet="0123456789 /.,'\"+-−½¼′″incmft", max_size=20)


@given(st.one_of(st.text(max_size=90), keys), st.sampled_from(Unit))
def test_any_text_gives_a_length_or_the_one_error(text: str, unit: Unit) -> None:
    try:
        length = read_length(text, unit, negative=True)
    except LengthError:
        return
    assert abs(length.mm) <= 100_000


@pytest.mark.parametrize("number", [float("nan"), float("inf"), -1, 1e9, True])
def test_bare_numbers_that_are_no_size_are_refused(number: float) -> None:
    with pytest.raises(LengthError):
        length_of(number, Unit.INCH)


def test_bare_numbers_are_taken_as_typed() -> None:
    assert length_of(18.3, Unit.MM).exact == Fraction(183, 10)
    assert length_of(36, Unit.INCH).mm == 914.4
    assert length_of(-2, Unit.MM, negative=True).mm == -2


def test_numbers_too_long_to_print_are_refused() -> None:
    with pytest.raises(LengthError, match="too long"):
        length_of(10**5000, Unit.MM)
