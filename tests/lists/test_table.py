"""A table's rows fit its columns, and its numbers are numbers."""

import pytest

from shopdraw.lists.table import BadTable, Column, Table

COLUMNS = (Column("label"), Column("length", "mm"), Column("quantity", digits=0))


def test_head_is_printed_with_its_unit() -> None:
    assert [column.title for column in COLUMNS] == ["label", "length (mm)", "quantity"]


def test_rows_must_fit_their_columns_and_be_finite() -> None:
    with pytest.raises(BadTable, match="row 1: 1 cells"):
        Table("Cut list", COLUMNS, (("a",),))
    with pytest.raises(BadTable, match=r"row 1, length: found inf"):
        Table("Cut list", COLUMNS, (("a", float("inf"), 1),))
