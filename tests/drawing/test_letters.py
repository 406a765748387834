"""Words have one width everywhere, fractions are built from figures, and no letter is lost."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import ImageFont

from shopdraw.drawing.letters import (
    FALLBACK,
    LETTERING,
    MISSING,
    font_file,
    has_glyph,
    lettered,
    one_font,
    plain_words,
    printable,
    text_box,
    text_runs,
    text_width,
)
from shopdraw.drawing.mark import Text
from tests.font_measures import FILE, measures


@pytest.mark.parametrize("words", ["Drawer front", "0123456789", "Écritoire", "Ø 12 ± 0.5°"])
def test_width_agrees_with_another_reader_of_the_font(words: str) -> None:
    # FreeType, through Pillow: the advance at an em of 1024, capitals of this font being 736 high.
    font = ImageFont.truetype(str(font_file(LETTERING)), 1024, layout_engine=ImageFont.Layout.BASIC)
    assert text_width(words, 2.5) == pytest.approx(font.getlength(words) * 2.5 / 736, abs=0.01)


@pytest.mark.parametrize("words", ["31 1/2", "31-1/2", "7 ⅝″", "5/8", "1/64"])
def test_fraction_is_a_raised_figure_a_bar_and_a_low_figure(words: str) -> None:
    runs = text_runs(words, 3.5)
    bar = next(i for i, run in enumerate(runs) if run.glyphs == "/")
    numerator, denominator = runs[bar - 1], runs[bar + 1]
    assert numerator.height == denominator.height == pytest.approx(0.7 * 3.5)
    assert numerator.dy + numerator.height == pytest.approx(3.5), "the numerator reaches as high as capitals"
    assert denominator.dy == 0.0


def test_fraction_figures_are_never_under_1_2_mm() -> None:
    assert min(run.height for run in text_runs("5/8", 1.5)) == 1.2


@pytest.mark.parametrize("words", ["3/4/2026", "d2 / 5-C4", "and/or", "1:4", "side/left"])
def test_what_only_looks_like_a_fraction_is_left_alone(words: str) -> None:
    assert [run.glyphs for run in text_runs(words, 2.5)] == [words]


def test_fraction_glyphs_read_on_in_order() -> None:
    assert "".join(run.glyphs for run in text_runs('31 1/2" × 5/8', 2.5)) == '31 1/2" × 5/8'


def test_case_37_accented_letters_fractions_and_signs_all_have_glyphs() -> None:
    for character in "Écritoire 7 ⅝″ – façade Büro/Žďár Seite, ä Ø°±×⅛⅜⅞½¼¾≤≥":
        assert has_glyph(character), character
    assert MISSING not in "".join(run.glyphs for run in text_runs("Büro/Žďár ≤ 3", 2.5))


def test_letter_that_the_lettering_lacks_comes_from_the_fallback_at_the_same_height() -> None:
    runs = text_runs("Žďár", 2.5)
    assert [(run.font, run.glyphs) for run in runs] == [(LETTERING, "Ž"), (FALLBACK, "ď"), (LETTERING, "ár")]
    assert {run.height for run in runs} == {2.5}


def test_missing_glyph_is_replaced_visibly() -> None:
    assert not has_glyph("中")
    assert "".join(run.glyphs for run in text_runs("oak 中", 2.5)) == f"oak {MISSING}"


@given(st.text(max_size=30))
def test_every_printable_character_is_drawn_or_replaced(words: str) -> None:
    drawn = "".join(run.glyphs for run in text_runs(words, 2.5))
    assert all(has_glyph(c) for c in drawn)
    assert text_width(words, 5.0) == pytest.approx(2 * text_width(words, 2.5), abs=1e-9)


def test_control_characters_are_taken_out() -> None:
    assert printable("a\x00b\nc\td") == "ab c d"


@pytest.mark.parametrize(("words", "plain"), [("7 ⅝″", "7 5/8″"), ("7⅝", "7 5/8"), ("½", "1/2"), ("31 1/2", "31 1/2")])
def test_plain_words_write_fractions_with_figures(words: str, plain: str) -> None:
    assert plain_words(words) == plain


def test_one_font_is_the_lettering_unless_it_lacks_a_letter() -> None:
    assert (one_font("side 1/2"), one_font("Žďár")) == (LETTERING, FALLBACK)


@pytest.mark.parametrize(("anchor", "left"), [("left", 10.0), ("middle", 10.0 - 0.5), ("right", 10.0 - 1.0)])
def test_box_starts_where_the_anchor_says(anchor: str, left: float) -> None:
    text = Text((10.0, 20.0), "HHH", 2.5, anchor)
    width = text_width("HHH", 2.5)
    low, right, top, _ = text_box(text)
    assert low == pytest.approx((10.0 + (left - 10.0) * width, 20.0))
    assert right[0] - low[0] == pytest.approx(width)
    assert top[1] == pytest.approx(22.5), "capitals without accents reach their height exactly"


def test_box_is_in_the_drawings_own_mm_and_turns_with_the_words() -> None:
    low, right, _, _ = text_box(Text((0.0, 0.0), "HHH", 2.5, angle_deg=90.0), scale=0.25)
    assert right == pytest.approx((0.0, 4 * text_width("HHH", 2.5)))
    assert low == pytest.approx((0.0, 0.0))


def test_ink_below_the_baseline_belongs_to_the_box() -> None:
    assert lettered("Hg", 2.5).below > 0.4
    assert lettered("HH", 2.5).below == 0.0


def test_the_measures_kept_beside_the_fonts_are_the_fonts_own() -> None:
    """Read again by fontTools from the font files."""
    kept = json.loads(FILE.read_text(encoding="utf-8"))
    assert kept == measures()
    assert len(kept["DejaVuSans"]["glyphs"]) > 500
