"""A dimension's text says "measured" only where a redraw by its style would print the same figure."""

import io
import math
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.drawing.sheet import Drawing, Placed, Sheet, SheetSet
from shopdraw.write.dxf import write_dxf
from shopdraw.write.dxf_dimension import figure_of
from tests.write.dxf_tags import entities_of
from tests.write.sample_sheets import A3, linear


@pytest.mark.parametrize(
    ("words", "length_in", "text", "digits"),
    [
        ("31 1/2", 31.5, "<>", 4),
        ('31 1/2"', 31.5, '<>"', 4),
        ("31 33/64", 31 + 33 / 64, "<>", 6),
        ("31 1/2", 31.51, "<>", 4),
        ("31 1/2", 31.56, "31 1/2", 4),
        ("7/8", 0.875, "<>", 4),
        ("3", 3.0, "<>", 4),
        ("(31 1/2)", 31.5, "(31 1/2)", 4),
        ("3 EQ", 10.0, "3 EQ", 4),
        ("5 × 6 = 30", 30.0, "5 × 6 = 30", 4),
    ],
)
def test_inch_figures(words: str, length_in: float, text: str, digits: int) -> None:
    figure = figure_of(linear(words, length_in * 25.4), 25.4)
    assert (figure.text, figure.digits, figure.unit) == (text, digits, 5)


@pytest.mark.parametrize(
    ("words", "length", "text", "step", "comma"),
    [
        ("800", 800.0, "<>", 0.0, False),
        ("457.5", 457.3, "<>", 0.5, False),
        ("17,96", 17.96, "<>", 0.0, True),
        ("18.3 mm", 18.3, "<> mm", 0.0, False),
        ("457", 457.6, "457", 0.0, False),
        ("6.50", 6.5, "6.50", 0.0, False),
        ("(300)", 300.0, "(300)", 0.0, False),
    ],
)
def test_mm_figures(words: str, length: float, text: str, step: float, comma: bool) -> None:
    figure = figure_of(linear(words, length), 1.0)
    assert (figure.text, figure.unit) == (text, 2)
    if text.startswith("<>"):
        assert (figure.step, figure.comma) == (step, comma)


def test_figure_of_something_else_than_the_points_is_kept_as_printed() -> None:
    assert figure_of(linear("100", 100.0, b=(90.0, 0.0)), 1.0).text == "100"
    assert figure_of(linear("R80", 80.0, kind="radius"), 1.0).text == "R80"


def test_angle_is_measured_where_its_decimals_say_so() -> None:
    turned = linear("50.2°", 50.194, kind="angular", vertex=(0.0, 0.0))
    assert figure_of(turned, 1.0).text == "<>"
    assert figure_of(linear("50.3°", 50.194, kind="angular", vertex=(0.0, 0.0)), 1.0).text == "50.3°"


@given(st.integers(min_value=1, max_value=64 * 100), st.floats(min_value=-0.03, max_value=0.03))
def test_measured_inch_figure_always_reads_as_printed(sixty_fourths: int, off: float) -> None:
    printed = Fraction(sixty_fourths, 64)
    whole, rest = divmod(printed, 1)
    words = " ".join(str(part) for part in (whole, rest) if part) or "0"
    measured = float(printed) + off
    figure = figure_of(linear(words, measured * 25.4), 25.4)
    if figure.text == "<>":
        # What a program does with DIMLUNIT 5 and DIMDEC n: the nearest n-th power of two (DXF reference, DIMDEC).
        assert Fraction(math.floor(measured * 2**figure.digits + 0.5), 2**figure.digits) == printed
    else:
        assert figure.text == words


def entity(unit: str = "mm", **other: Any) -> dict[int, float]:
    drawing = Drawing("front", "", (), (linear("100", 100.0, **other),))
    out = io.BytesIO()
    sheet = Sheet("s", "1", "s", A3, (Placed(drawing, 0.5, (100, 100)),))
    write_dxf(SheetSet("", "", "", "iso", (sheet,)), out, unit)
    found = next(e for e in entities_of(out.getvalue(), "ENTITIES") if e.kind == "DIMENSION")
    return {code: float(value) for code, value in found.tags if 10 <= code <= 70}


def test_definition_points_measure_what_is_printed() -> None:
    linear_tags = entity()
    assert linear_tags[14] - linear_tags[13] == pytest.approx(100.0)
    assert linear_tags[23] - linear_tags[20] == pytest.approx(60.0), "the line lies 60 below the points"
    assert linear_tags[42] == pytest.approx(100.0)
    assert int(linear_tags[70]) & 7 == 0
    assert entity("in")[42] == pytest.approx(100.0 / 25.4)


def test_angle_lies_between_its_points_as_seen_from_its_vertex() -> None:
    tags = entity(kind="angular", a=(100.0, 0.0), b=(0.0, 100.0), vertex=(0.0, 0.0), line=(50.0, 50.0), measured=90.0)
    assert int(tags[70]) & 7 == 5
    first = math.atan2(tags[23] - tags[25], tags[13] - tags[15])
    last = math.atan2(tags[24] - tags[25], tags[14] - tags[15])
    assert last - first == pytest.approx(math.pi / 2)
    assert tags[42] == pytest.approx(math.pi / 2)


def test_diameter_has_its_two_ends() -> None:
    tags = entity(kind="diameter", a=(0.0, 0.0), b=(30.0, 40.0), measured=100.0)
    assert int(tags[70]) & 7 == 3
    assert math.hypot(tags[15] - tags[10], tags[25] - tags[20]) == pytest.approx(100.0)
