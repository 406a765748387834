"""Cut list and materials as sheets of a set."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from shopdraw.drawing.sheet import Sheet
from shopdraw.lists.table import Table
from shopdraw.sheet.look import Look
from shopdraw.sheet.table_sheet import count_table_sheets, table_sheets
from shopdraw.sheet.title_block import TitleFields
from shopdraw.trade.paper import PaperSize

CUT_LIST, MATERIALS = "Cut list", "Materials"


def list_sheets(
    cut_list: Table,
    materials: Sequence[Table],
    size: PaperSize,
    fields: TitleFields,
    look: Look,
    first_number: int,
    count: int,
    decimal_sign: str = ".",
) -> tuple[Sheet, ...]:
    """Sheets of the cut list, then sheets of the materials.

    Args:
        cut_list: one row a part.
        materials: boards, sheets and hardware, one under the other.
        size: the paper.
        fields: what the title block says; scale and projection have no meaning here and are left out.
        look: heights and widths.
        first_number: number of the first of these sheets.
        count: sheets in the whole set.
        decimal_sign: of numbers.
    """
    plain = replace(fields, document_type="Parts list", scale="", projection="", material="")
    first = table_sheets("cut-list", CUT_LIST, (cut_list,), size, plain, look, first_number, count, decimal_sign)
    after = first_number + len(first)
    return (*first, *table_sheets("materials", MATERIALS, materials, size, plain, look, after, count, decimal_sign))


def count_list_sheets(
    cut_list: Table, materials: Sequence[Table], size: PaperSize, look: Look, decimal_sign: str = "."
) -> int:
    """How many sheets the lists take."""
    return count_table_sheets((cut_list,), size, look, decimal_sign) + count_table_sheets(
        materials, size, look, decimal_sign
    )
