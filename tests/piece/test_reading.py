"""Reading a piece file: what comes out, and the one line that each fault gives."""

from pathlib import Path

import pytest

from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import parse_piece, read_piece
from tests.piece.sample import SAMPLE


def only_line(text: str) -> str:
    with pytest.raises(PieceError) as error:
        parse_piece(text, "desk.piece")
    assert len(error.value.lines()) == 1, error.value.lines()
    return error.value.lines()[0]


def line_number(key: str) -> int:
    return next(i for i, line in enumerate(SAMPLE.split("\n"), start=1) if line.startswith(key))


def test_the_sample_is_read_in_mm() -> None:
    design = parse_piece(SAMPLE).design
    assert design.case.width == 800.1
    assert design.case.height == pytest.approx(34 * 25.4, abs=1e-9)
    assert design.stock["cherry 4/4"].thickness == 18.3
    assert design.slant is not None
    assert design.slant.writing_height == 740.0
    assert design.opening["bank"].divide.sizes == pytest.approx((139.7, 6 * 25.4, 165.1))


def test_tables_below_drawer_are_choices_for_one_drawer() -> None:
    assert parse_piece(SAMPLE).design.drawer.each["2"].knobs == 1


def test_case_33_an_unknown_key_is_a_caution_and_stays_in_the_text() -> None:
    piece = parse_piece(SAMPLE)
    (caution,) = piece.cautions
    assert (caution.address, caution.line) == ("piece.shop_note", line_number("shop_note"))
    assert piece.text == SAMPLE


def test_a_misspelt_key_is_a_caution_that_names_the_nearest() -> None:
    cautions = parse_piece(SAMPLE.replace("knobs", "knob").replace("shop_note", "shop")).cautions
    assert [(caution.address, caution.nearest) for caution in cautions] == [("drawer.2.knob", "knobs")]


def test_a_missing_size_names_the_key_that_looks_like_it() -> None:
    said = only_line(SAMPLE.replace("width", "widht"))
    place = f"desk.piece:{line_number('[case]')}: case.width"
    assert said.startswith(f'{place}: found "widht" in its place: expected a value')


@pytest.mark.parametrize(
    ("old", "new", "key", "address", "parts"),
    [
        ('"rabbeted"', '"rabbetted"', "seat", "slant.seat", ['found "rabbetted"', 'did you mean "rabbeted"?']),
        ('"31-1/2"', '"31 -1/2"', "width", "case.width", ['found "31 -1/2"', "31 1/2", "31 - 1/2"]),
        ('"31-1/2"', "true", "width", "case.width", ["found true", "expected a length"]),
        ('"31-1/2"', "nan", "width", "case.width", ["found nan", "expected a length"]),
        ('"31-1/2"', "1e9", "width", "case.width", ["found 1000000000.0", "expected a length"]),
        ('"31-1/2"', "0", "width", "case.width", ["found 0", "expected a length above 0"]),
        ('"31-1/2"', "-5", "width", "case.width", ["found -5", "expected a length above 0"]),
        ('"31-1/2"', "[1, 2]", "width", "case.width", ["found a list", "expected a length"]),
        ("measured = true", "measured = 1", "measured", 'stock."cherry 4/4".measured', ["found 1", "true or false"]),
        ("knobs = 1", "knobs = 1.5", "knobs", "drawer.2.knobs", ["found 1.5", "expected a whole number"]),
        ('"18,3 mm"', '"183,333 mm"', "thickness", 'stock."cherry 4/4".thickness', ["183.333", "183333"]),
    ],
)
def test_a_wrong_value_is_told_with_line_address_and_what_is_right(
    old: str, new: str, key: str, address: str, parts: list[str]
) -> None:
    said = only_line(SAMPLE.replace(old, new))
    assert said.startswith(f"desk.piece:{line_number(key)}: {address}: ")
    assert all(part in said for part in parts), said


def test_all_faults_are_told_at_once_in_the_order_of_the_file() -> None:
    text = SAMPLE.replace('"rabbeted"', '"x"').replace('"31-1/2"', "0")
    with pytest.raises(PieceError) as error:
        parse_piece(text)
    assert [fault.address for fault in error.value.faults] == ["case.width", "slant.seat"]


@pytest.mark.parametrize("text", ["", " \n\n", "\ufeff"])
def test_an_empty_file_says_what_a_piece_file_begins_with(text: str) -> None:
    assert "an empty file" in only_line(text)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("format = 1\n[case\n", "desk.piece:2: found `[case`: expected TOML"),
        ("format = 1\nformat = 1\n", "desk.piece:2: found `format = 1`: expected each key and each table once"),
        ("[case]\nwidth = 1\x00\n", "desk.piece:2: "),
        ("a = " + "[" * 5000, "desk.piece: expected lists and tables that are not nested"),
        ("a = " + "9" * 5000, "desk.piece: expected TOML"),
        ('format = "1"', 'desk.piece:1: format: found "1": expected format = 1'),
        ("format = 0", "desk.piece:1: format: found 0: expected format = 1"),
    ],
)
def test_what_is_no_piece_file_gives_one_line(text: str, said: str) -> None:
    assert only_line(text).startswith(said)


def test_a_file_of_a_later_format_is_refused_before_anything_else_in_it() -> None:
    said = only_line("[case]\nwidth = {}\n".replace("[case]", "format = 99\n[case]"))
    assert said.startswith("desk.piece:1: format: found 99")
    assert "later version" in said


def test_a_byte_order_mark_does_no_harm() -> None:
    assert parse_piece("\ufeff" + SAMPLE).design == parse_piece(SAMPLE).design


def test_line_ends_of_either_kind_are_kept(tmp_path: Path) -> None:
    path = tmp_path / "desk.piece"
    path.write_bytes(SAMPLE.replace("\n", "\r\n").encode())
    piece = read_piece(path)
    assert piece.text == SAMPLE.replace("\n", "\r\n")
    assert piece.design.case.width == 800.1


@pytest.mark.parametrize(
    ("make", "said"),
    [
        (lambda path: None, "no such file"),
        (lambda path: path.mkdir(), "found a folder"),
        (lambda path: path.write_bytes(b"\n\nt = '\xe9'"), ":3: found the byte 0xe9: expected text saved as UTF-8"),
        (lambda path: path.write_bytes(SAMPLE.encode("utf-16")), "UTF-8"),
        (lambda path: path.write_bytes(b"#" * 5_000_000), "more than 4 MB"),
    ],
)
def test_a_file_that_cannot_be_read_gives_one_line(tmp_path: Path, make, said: str) -> None:
    path = tmp_path / "desk.piece"
    make(path)
    with pytest.raises(PieceError) as error:
        read_piece(path)
    (line,) = error.value.lines()
    assert line.startswith(str(path))
    assert said in line


def test_case_37_names_with_accents(tmp_path: Path) -> None:
    path = tmp_path / "Büro" / "Žďár" / "écritoire.piece"
    path.parent.mkdir(parents=True)
    path.write_text(SAMPLE, encoding="utf-8")
    assert read_piece(path).design.piece.title == "Écritoire 7 ⅝″ – façade"


def test_very_many_faults_are_cut_short() -> None:
    text = SAMPLE + "".join(f'[note.n{i}]\non = "a"\ntext = 1\n' for i in range(50))
    with pytest.raises(PieceError) as error:
        parse_piece(text, "desk.piece")
    assert len(error.value.faults) == 50
    assert error.value.lines()[-1] == "desk.piece: 30 more like these"
