"""Sheets of tables: cut list, materials, schedules."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.drawing.sheet import Sheet
from shopdraw.lists.table import Table
from shopdraw.sheet.arrange import free_area
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.look import Look
from shopdraw.sheet.table_page import table_pages
from shopdraw.sheet.title_block import TitleFields
from shopdraw.trade.paper import PaperSize


def count_table_sheets(tables: Sequence[Table], size: PaperSize, look: Look, decimal_sign: str = ".") -> int:
    """How many sheets the tables take, so that "sheet m of n" can be known before they are made."""
    return len(table_pages(tables, free_area(size, look), look, decimal_sign))


def table_sheets(
    key: str,
    title: str,
    tables: Sequence[Table],
    size: PaperSize,
    fields: TitleFields,
    look: Look,
    first_number: int,
    count: int,
    decimal_sign: str = ".",
) -> tuple[Sheet, ...]:
    """Tables on as many framed sheets as they need.

    Args:
        key: of the first sheet; further ones are `key-2`, `key-3`, ...
        title: in the title block.
        tables: one under the other.
        size: the paper.
        fields: what the title block says.
        look: heights and widths.
        first_number: number of the first of these sheets.
        count: sheets in the whole set.
        decimal_sign: of numbers.
    """
    pages = table_pages(tables, free_area(size, look), look, decimal_sign)
    return tuple(
        compose_sheet(
            key if i == 0 else f"{key}-{i + 1}", str(first_number + i), count, title, size, (), fields, look, marks
        )
        for i, marks in enumerate(pages)
    )
