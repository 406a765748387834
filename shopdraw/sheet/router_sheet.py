"""The covering sheet of the router files as sheets of its own: what to read first, then its tables."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from shopdraw.drawing.sheet import SheetSet
from shopdraw.lists.table import Column, Table
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.sheet.manner import PAPER, manner_of, title_fields
from shopdraw.sheet.table_sheet import count_table_sheets, table_sheets
from shopdraw.trade.paper import paper

TITLE = "Router files"
CHECK_SUM = "SHA-256"
SHOWN = 12
"""Letters of a check sum on paper; whole ones stand in the tables beside the files."""


def router_sheets(tables: Sequence[Table], design: Design, shop: Shop | None = None) -> SheetSet:
    """The covering sheet's tables on the shop's paper or the small one of the piece's style, what to read first first.

    Args:
        tables: as `covering_tables` gives them, the words last.
        design: the piece's inputs.
        shop: whose paper; None for the stated defaults.
    Raises:
        NotInTable: the piece names a paper that isn't known.
    """
    asked = manner_of(design)
    own = shop.habit.paper if shop is not None else ""
    manner = asked.on(paper(own or PAPER[asked.style, "bench"]))
    fields = replace(title_fields(design, manner), document_type=TITLE, scale="", projection="", material="")
    printed = [_printed(table) for table in (tables[-1], *tables[:-1]) if table.rows]
    sign = manner.writing.decimal_sign
    count = count_table_sheets(printed, manner.size, manner.look, sign)
    sheets = table_sheets("router-files", TITLE, printed, manner.size, fields, manner.look, 1, count, sign)
    piece = design.piece
    return SheetSet(piece.title, piece.drawn_by, TITLE, manner.style, sheets)


def _printed(table: Table) -> Table:
    """A table as paper holds it: check sums by their first letters."""
    columns = tuple(
        Column(f"{CHECK_SUM}, first {SHOWN}", one.unit, one.digits) if one.head == CHECK_SUM else one
        for one in table.columns
    )
    rows = tuple(
        tuple(
            cell[:SHOWN] if column.head == CHECK_SUM and isinstance(cell, str) else cell
            for column, cell in zip(table.columns, row, strict=True)
        )
        for row in table.rows
    )
    return replace(table, columns=columns, rows=rows)
