"""Tables come back as they were: numbers as numbers, words as words, the same bytes each time."""

import csv
import io
import time
import zipfile

import openpyxl
import pytest

from shopdraw.lists.table import Column, Table
from shopdraw.piece.shop import HabitTable
from shopdraw.write.tables import write_csv, write_xlsx

COLUMNS = (Column("label"), Column("length", "mm"), Column("quantity", digits=0))
TABLE = Table("Cut list", COLUMNS, (("Seite, ä", 800.1, 2), ("=1+1", -0.0, None), ('7 ⅝″ "a"', 1 / 3, 1)))


def csv_bytes(table: Table) -> bytes:
    out = io.BytesIO()
    write_csv(table, out)
    return out.getvalue()


def workbook(*tables: Table) -> openpyxl.Workbook:
    out = io.BytesIO()
    write_xlsx(tables, out)
    return openpyxl.load_workbook(out)


def test_csv_has_points_commas_and_utf_8() -> None:
    rows = list(csv.reader(io.StringIO(csv_bytes(TABLE).decode("utf-8"), newline="")))
    assert rows == [
        ["label", "length (mm)", "quantity"],
        ["Seite, ä", "800.1", "2"],
        ["'=1+1", "0.0", ""],
        ['7 ⅝″ "a"', "0.3", "1"],
    ]
    assert csv_bytes(TABLE).count(b"\r\n") == 4, "RFC 4180"


@pytest.mark.parametrize(
    ("habit", "lines"),
    [
        ({"separator": "semicolon", "decimal": "comma"}, ["label;length (mm);quantity", "Seite, ä;800,1;2"]),
        ({"separator": "tab"}, ["label\tlength (mm)\tquantity", "Seite, ä\t800.1\t2"]),
        # RFC 4180, 2.6: a field that holds the separator stands in quotes
        ({"decimal": "comma"}, ["label,length (mm),quantity", '"Seite, ä","800,1",2']),
    ],
)
def test_separator_and_decimal_sign_are_the_shops(habit: dict[str, str], lines: list[str]) -> None:
    out = io.BytesIO()
    write_csv(TABLE, out, HabitTable.model_validate(habit))
    assert out.getvalue().decode().split("\r\n")[:2] == lines


def test_figures_in_words_have_the_shops_decimal_sign_and_labels_keep_their_points() -> None:
    table = Table("t", (Column("note"),), (("7.2a: 2 boards of 146.5 mm clear",),))
    out = io.BytesIO()
    write_csv(table, out, HabitTable(separator="semicolon", decimal="comma"))
    assert "7.2a: 2 boards of 146,5 mm clear" in out.getvalue().decode()


@pytest.mark.parametrize("words", ["=1+1", "+1", "-1", "@SUM(A1)", '=cmd|"/c calc"!A1', " =1+1"])
def test_formula_like_words_stay_words_in_csv(words: str) -> None:
    table = Table("t", (Column("note"),), ((words,),))
    field = next(csv.reader(io.StringIO(csv_bytes(table).decode().split("\r\n", 1)[1])))[0]
    assert field == "'" + words, "a spreadsheet's sign for text, and nothing lost behind it"


@pytest.mark.parametrize("words", ["=1+1", "+1", "-1", "@x", "#N/A", "=HYPERLINK(1)", "12", "TRUE"])
def test_formula_like_words_stay_words_in_a_workbook(words: str) -> None:
    cell = workbook(Table("t", (Column("note"),), ((words,),))).worksheets[0]["A2"]
    assert (cell.value, cell.data_type) == (words, "s")


def test_workbook_holds_real_numbers_with_units_in_the_head() -> None:
    sheet = workbook(TABLE).worksheets[0]
    assert [cell.value for cell in sheet[1]] == ["label", "length (mm)", "quantity"]
    assert [(cell.value, cell.data_type) for cell in sheet[2]] == [("Seite, ä", "s"), (800.1, "n"), (2, "n")]
    assert sheet["B2"].number_format == "0.0"
    assert sheet["C3"].value is None


def test_each_table_has_a_worksheet_with_a_name_of_its_own() -> None:
    long = Table("Materials: [boards] / sheets and hardware", COLUMNS, ())
    names = workbook(TABLE, TABLE, long).sheetnames
    assert names[:2] == ["Cut list", "Cut list 2"]
    assert len(names[2]) <= 31
    assert not set(names[2]) & set("[]:*?/\\")


def test_same_tables_give_the_same_bytes_at_another_time() -> None:
    first, second = io.BytesIO(), io.BytesIO()
    write_xlsx([TABLE], first)
    time.sleep(2.1)  # archives date their entries to two seconds
    write_xlsx([TABLE], second)
    assert first.getvalue() == second.getvalue()
    assert {entry.date_time[0] for entry in zipfile.ZipFile(first).infolist()} == {1980}


def test_control_characters_are_left_out() -> None:
    table = Table("t", (Column("note"),), (("a\x00b\x07c",),))
    assert workbook(table).worksheets[0]["A2"].value == "abc"
    assert b"abc\r\n" in csv_bytes(table)


def test_no_table_is_an_error() -> None:
    with pytest.raises(ValueError, match="at least one table"):
        write_xlsx([], io.BytesIO())
