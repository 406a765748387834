"""Cut list and materials as sheets."""

from __future__ import annotations

from shopdraw.drawing.mark import Text
from shopdraw.lists.table import Column, Table
from shopdraw.sheet.list_sheet import count_list_sheets, list_sheets
from shopdraw.sheet.look import look_for
from shopdraw.sheet.title_block import TitleFields
from shopdraw.trade.paper import paper

COLUMNS = (Column("label"), Column("name"), Column("length", "mm"))


def test_lists_are_numbered_on_and_every_row_is_there() -> None:
    size = paper("A3")
    look = look_for("iso", size.group)
    cut = Table("Cut list", COLUMNS, tuple((f"p{n}", f"part {n}", 100.0 + n) for n in range(120)))
    buy = Table("Materials", COLUMNS, (("m1", "cherry", 2400.0),))
    count = count_list_sheets(cut, (buy,), size, look)
    sheets = list_sheets(cut, (buy,), size, TitleFields(title="Desk", scale="1:5", projection="first"), look, 8, 20)
    assert len(sheets) == count
    assert [sheet.number for sheet in sheets] == [str(8 + n) for n in range(count)]
    assert len({sheet.key for sheet in sheets}) == count
    words = [mark.words for sheet in sheets for mark in sheet.marks if isinstance(mark, Text)]
    assert {f"p{n}" for n in range(120)} | {"m1"} <= set(words)
    assert "1:5" not in words
