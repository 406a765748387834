"""Variants: addresses and values laid over the file."""

import tomllib

import pytest

from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.variant import variant_names, with_variant
from tests.piece.sample import SAMPLE


def test_a_variant_changes_what_it_names_and_nothing_else() -> None:
    plain, tall = parse_piece(SAMPLE).design, parse_piece(SAMPLE, variant="tall").design
    assert tall.case.height == pytest.approx(36 * 25.4)
    assert tall.slant is not None
    assert tall.slant.writing_height == pytest.approx(29.5 * 25.4)
    assert tall.model_copy(update={"case": plain.case, "slant": plain.slant}) == plain


def test_the_tables_given_stay_as_they_are() -> None:
    tables = tomllib.loads(SAMPLE)
    with_variant(tables, "tall")
    assert tables == tomllib.loads(SAMPLE)


def test_the_names_stand_in_file_order() -> None:
    assert variant_names(tomllib.loads("[variant.b]\n[variant.a]\n")) == ("b", "a")


@pytest.mark.parametrize(
    ("overlay", "name", "said"),
    [
        ("", "tal", "did you mean tall?"),
        ('"case..x" = 1', "odd", 'expected an address such as "case.width"'),
        ("case = 1", "odd", "case is a table"),
        ('"case.width.x" = 1', "odd", "case.width is a value, not a table"),
        ('unset = "case.width"', "odd", "expected a list of addresses"),
        ('unset = ["case..x"]', "odd", 'expected an address such as "case.width"'),
        ('unset = ["case.nothing"]', "odd", "nothing stands at case.nothing"),
    ],
)
def test_a_variant_that_cannot_be_laid_over_gives_one_line(overlay: str, name: str, said: str) -> None:
    with pytest.raises(PieceError) as error:
        parse_piece(SAMPLE + f"[variant.odd]\n{overlay}\n", variant=name)
    (line,) = error.value.lines()
    assert said in line


def test_a_fault_in_a_variant_has_the_variants_line() -> None:
    text = SAMPLE.replace('"case.height" = "36"', '"case.height" = "x"')
    with pytest.raises(PieceError) as error:
        parse_piece(text, variant="tall")
    (fault,) = error.value.faults
    assert text.split("\n")[fault.line - 1] == '"case.height" = "x"'
    assert parse_piece(text).design.case.height > 0


def test_a_variant_does_without_what_it_lists_and_gives_something_else_instead() -> None:
    text = SAMPLE + '[variant.steeper]\nunset = ["slant.top_depth"]\n"slant.angle" = 50\n'
    assert parse_piece(text).design.slant is not None
    slant = parse_piece(text, variant="steeper").design.slant
    assert slant is not None
    assert (slant.angle, slant.top_depth) == (50.0, None)


def test_a_whole_table_can_be_left_out() -> None:
    text = SAMPLE + '[note.wax]\non = "lid"\ntext = "waxed"\n[variant.plain]\nunset = ["note.wax"]\n'
    assert "wax" in parse_piece(text).design.note
    assert "wax" not in parse_piece(text, variant="plain").design.note
