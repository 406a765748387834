"""Tables as CSV and as a workbook: numbers stay numbers, words stay words, whatever they begin with."""

from __future__ import annotations

import csv
import datetime
import io
import re
import zipfile
from collections.abc import Sequence
from pathlib import Path as FilePath
from typing import IO

from openpyxl import Workbook
from openpyxl.styles import Alignment, Font
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet
from openpyxl.writer.excel import ExcelWriter

from shopdraw.drawing.letters import printable
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import with_comma
from shopdraw.piece.shop import HabitTable

SEPARATORS = {"comma": ",", "semicolon": ";", "tab": "\t"}
"""What stands between the fields of CSV, by its name in the shop file."""
FORMULA_SIGNS = ("=", "+", "-", "@")
"""What makes a spreadsheet take a CSV field for a formula. Source: OWASP, CSV injection."""
TEXT_SIGN = "'"
"""Set before such words in CSV: the spreadsheets' own sign for text."""
LONGEST_SHEET_NAME = 31
"""Characters in a worksheet's name, and those it may not have. Source: ECMA-376, sheet names as Excel limits them."""
_NOT_IN_SHEET_NAME = re.compile(r"[\[\]:*?/\\]")
# The format's dates bear no time zone.
_FIXED_DATE = datetime.datetime(2000, 1, 1, tzinfo=datetime.UTC).replace(tzinfo=None)
_FIRST_ZIP_DATE = (1980, 1, 1, 0, 0, 0)


def write_csv(table: Table, to: FilePath | str | IO[bytes], habit: HabitTable | None = None) -> None:
    """A table as CSV in UTF-8, heads with their units first; commas and decimal points, or as the shop likes it.

    Words that a spreadsheet would take for a formula get an apostrophe before them.

    Args:
        table: what to write.
        to: a path, or something to write bytes to.
        habit: the shop's, for what stands between fields and the decimal sign.
    Source:
        RFC 4180 for quotes and line ends; a number whose decimal comma is also the separator is quoted as it says.
    """
    habit = habit or HabitTable()
    text = io.StringIO(newline="")
    writer = csv.writer(text, delimiter=SEPARATORS[habit.separator])
    comma = habit.decimal == "comma"
    writer.writerow([_csv_cell(column.title, column, comma) for column in table.columns])
    for row in table.rows:
        writer.writerow([_csv_cell(cell, column, comma) for cell, column in zip(row, table.columns, strict=True)])
    _put(text.getvalue().encode("utf-8", "replace"), to)


def write_xlsx(tables: Sequence[Table], to: FilePath | str | IO[bytes]) -> None:
    """Tables as a workbook, one worksheet each: real numbers, words never formulas. Same tables, same bytes.

    Raises:
        ValueError: there is no table.
    """
    if not tables:
        raise ValueError("a workbook needs at least one table, found none")
    book = Workbook()
    book.remove(book.worksheets[0])
    for table in tables:
        _fill(book.create_sheet(_sheet_name(table.title, book.sheetnames)), table)
    book.properties.creator = "shopdraw"
    book.properties.created = book.properties.modified = _FIXED_DATE
    packed = io.BytesIO()
    # `Workbook.save` would set the date to now.
    ExcelWriter(book, zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED)).save()
    _put(_with_fixed_dates(packed.getvalue()), to)


def _csv_cell(cell: Cell, column: Column, comma: bool) -> str:
    if cell is None:
        return ""
    if isinstance(cell, str):
        words = printable(with_comma(cell) if comma else cell)
        return TEXT_SIGN + words if words.lstrip().startswith(FORMULA_SIGNS) else words
    if isinstance(cell, int):
        return str(cell)
    return _number(cell, column.digits).replace(".", "," if comma else ".")


def _number(value: float, digits: int) -> str:
    """With a decimal point, never -0."""
    return f"{round(value, digits) + 0.0:.{digits}f}"


def _fill(sheet: Worksheet, table: Table) -> None:
    for place, column in enumerate(table.columns, 1):
        head = sheet.cell(1, place)
        _set_words(head, column.title)
        head.font = Font(bold=True)
        head.alignment = Alignment(wrap_text=True, vertical="top")
        widest = max([len(column.title), *(len(str(row[place - 1] or "")) for row in table.rows)])
        sheet.column_dimensions[get_column_letter(place)].width = min(max(widest + 2, 8), 60)
    for line, row in enumerate(table.rows, 2):
        for place, (cell, column) in enumerate(zip(row, table.columns, strict=True), 1):
            if cell is None:
                continue
            target = sheet.cell(line, place)
            if isinstance(cell, str):
                _set_words(target, cell)
            else:
                target.value = cell if isinstance(cell, int) else round(cell, 9) + 0.0
                if isinstance(cell, float):
                    target.number_format = "0." + "0" * column.digits if column.digits else "0"
    sheet.freeze_panes = "A2"


def _set_words(cell: object, words: str) -> None:
    """Words as text, also where they begin like a formula or an error."""
    shown = printable(words)
    cell.value = shown  # type: ignore[attr-defined]
    cell.data_type = "s"  # type: ignore[attr-defined]
    if shown.startswith(FORMULA_SIGNS):
        cell.quotePrefix = True  # type: ignore[attr-defined]


def _sheet_name(title: str, taken: list[str]) -> str:
    name = _NOT_IN_SHEET_NAME.sub("-", printable(title)).strip().strip("'")[:LONGEST_SHEET_NAME] or "table"
    number = 1
    wanted = name
    while wanted.casefold() in (t.casefold() for t in taken):
        number += 1
        wanted = f"{name[: LONGEST_SHEET_NAME - 4]} {number}"
    return wanted


def _with_fixed_dates(packed: bytes) -> bytes:
    """The same archive with every entry dated alike."""
    fixed = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(packed)) as old, zipfile.ZipFile(fixed, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            entry = zipfile.ZipInfo(name, _FIRST_ZIP_DATE)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            new.writestr(entry, old.read(name))
    return fixed.getvalue()


def _put(data: bytes, to: FilePath | str | IO[bytes]) -> None:
    if isinstance(to, (str, FilePath)):
        FilePath(to).write_bytes(data)
    else:
        to.write(data)
