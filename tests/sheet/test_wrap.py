"""Words in cells: wrapped, made smaller, never wider or taller than the cell."""

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from shopdraw.drawing.letters import text_width
from shopdraw.sheet import look_for
from shopdraw.sheet.wrap import PITCH, cell_texts, fitted, wrapped

LOOK = look_for("iso", "large")
words = st.text(st.sampled_from("abcdefghij ÄÖéW10½/.-"), max_size=120)


@given(words, st.floats(12, 120))
def test_no_line_is_wider_than_the_cell(text, width):
    for line in wrapped(text, 3.5, width):
        assert text_width(line, 3.5) <= width


@given(words, st.floats(12, 120))
def test_nothing_but_spaces_is_lost_in_wrapping(text, width):
    assert "".join("".join(wrapped(text, 3.5, width)).split()) == "".join(text.split())


@given(words, st.floats(12, 120), st.floats(4, 40))
def test_fitted_words_stay_in_their_cell(text, width, room):
    found = fitted(text, width, room, 7.0, 2.5, LOOK)
    assert found.tall <= room or not found.lines
    assert all(text_width(line, found.height) <= width for line in found.lines)


def test_letters_shrink_before_a_word_is_parted():
    found = fitted("arrangement", 30.0, 20.0, 7.0, 2.5, LOOK)
    assert found.lines == ("arrangement",)
    assert found.height == 3.5


def test_a_single_line_rather_has_smaller_letters_than_two_lines():
    assert fitted("11 of 12", 20.0, 40.0, 7.0, 2.5, LOOK, single=True).lines == ("11 of 12",)


def test_what_fits_in_no_way_ends_in_an_ellipsis():
    found = fitted("far too much to say here " * 8, 30.0, 6.0, 3.5, 2.5, LOOK)
    assert found.lines[-1].endswith("…")
    assert found.tall <= 6.0


def test_lines_of_a_cell_stand_one_pitch_apart_from_the_top():
    cell = fitted("one two", 8.0, 30.0, 2.5, 2.5, LOOK)
    first, second = cell_texts(cell, 5.0, 50.0)
    assert first.at == (5.0, 47.5)
    assert first.at[1] - second.at[1] == 2.5 * PITCH


@given(st.floats(28, 90))
def test_a_number_keeps_its_fraction_and_its_unit(width):
    told = "glue up from 4 boards of 5 3/4 in clear; boards: 146.0 mm, (12 1/2 in) or 104.4 mm; 13 12 mm"
    lines = wrapped(told, 2.5, width)
    assert " ".join(lines) == told
    for before, after in pairwise(lines):
        assert not after.startswith(("3/4", "1/2", "mm", "in)", "in clear")), (before, after)


def test_a_figure_wider_than_its_cell_is_parted_all_the_same():
    assert wrapped("1000 3/4", 2.5, 9.0) == ("1000", "3/4")


def test_what_only_looks_like_a_figure_is_wrapped_as_ever():
    width = text_width("sheets 3, 4", 2.5)
    assert wrapped("sheets 3, 4 in all", 2.5, width)[0] in ("sheets 3, 4", "sheets 3,")
    assert wrapped("see sheet A 3/4 in", 2.5, text_width("see sheet A", 2.5))[0] == "see sheet A"
