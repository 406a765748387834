"""Cut list and materials as sheets."""

from __future__ import annotations

from shopdraw.drawing.mark import Text
from shopdraw.lists.table import Column, Table
from shopdraw.sheet.list_sheet import count_list_sheets, list_sheets
from shopdraw.sheet.look import look_for
from shopdraw.sheet.table_sheet import count_table_sheets
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


def test_lists_share_sheets_only_where_that_takes_fewer() -> None:
    size = paper("A3")
    look = look_for("iso", size.group)
    buy = Table("Materials", COLUMNS, tuple((f"m{n}", "cherry " * 25, 2400.0 + n) for n in range(12)))
    seen = set()
    for rows in range(2, 40):
        cut = Table("Cut list", COLUMNS, tuple((f"p{n}", "a part " * 25, 100.0 + n) for n in range(rows)))
        sheets = list_sheets(cut, (buy,), size, TitleFields(title="Desk"), look, 8, 20)
        assert len(sheets) == count_list_sheets(cut, (buy,), size, look)
        words = [{mark.words for mark in sheet.marks if isinstance(mark, Text)} for sheet in sheets]
        assert {"p0", f"p{rows - 1}", "m0", "m11"} <= set().union(*words)
        apart = count_table_sheets((cut,), size, look) + count_table_sheets((buy,), size, look)
        titles = tuple(dict.fromkeys(sheet.title for sheet in sheets))
        seen.add(titles)
        assert (titles, len(sheets)) in ((("Cut list", "Materials"), apart), (("Cut list, Materials",), apart - 1))
    assert len(seen) == 2
