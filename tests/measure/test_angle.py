"""Angles: reading and writing."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.measure import AngleError, read_angle, write_angle, write_with_complement

FORMS = {
    "50": 50,
    "50.2°": 50.2,
    "50,2 deg": 50.2,
    "50 degrees": 50,
    "50° 12'": 50.2,
    "50°12′36″": 50.21,
    ".5": 0.5,
    "+7": 7,
}

NO_ANGLES = [
    "",
    "nan",
    "inf",
    "1e2",
    "361",
    "99999",
    "50° 60'",
    "50.5° 12'",
    "50 12'",
    "1:6",
    "50°°",
    "-5",
    "5 in",
    "٣",
]


@pytest.mark.parametrize(("text", "degrees"), FORMS.items())
def test_forms_are_read(text: str, degrees: float) -> None:
    assert read_angle(text) == degrees


@pytest.mark.parametrize("text", NO_ANGLES)
def test_what_is_no_angle_is_refused(text: str) -> None:
    with pytest.raises(AngleError):
        read_angle(text)


def test_below_zero_where_it_makes_sense() -> None:
    assert read_angle("-7.5°", negative=True) == -7.5
    assert math.copysign(1, read_angle("-0")) == 1


@given(st.text(max_size=20))
def test_any_text_gives_an_angle_or_the_one_error(text: str) -> None:
    try:
        degrees = read_angle(text)
    except AngleError:
        return
    assert 0 <= degrees <= 360


@given(st.floats(min_value=0, max_value=360))
def test_a_written_angle_reads_back_to_its_step(degrees: float) -> None:
    assert abs(read_angle(write_angle(degrees)) - degrees) <= 0.05 + 1e-7


def test_case_21_slant_and_saw_tilt() -> None:
    slant = math.degrees(math.atan2(304.8, 254))
    assert write_with_complement(slant) == ("50.2°", "39.8°")
    assert write_angle(slant, ",") == "50,2°"


@given(st.floats(min_value=0, max_value=90))
def test_an_angle_and_its_complement_make_a_right_angle(degrees: float) -> None:
    printed = [read_angle(text) for text in write_with_complement(degrees)]
    assert sum(printed) == pytest.approx(90, abs=1e-9)
