"""Cut list and materials as sheets of a set."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

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
    """Sheets of the cut list, then sheets of the materials; both on the same ones where that takes fewer.

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
    made: list[Sheet] = []
    for key, title, tables in _series(cut_list, tuple(materials), size, look, decimal_sign):
        made += table_sheets(key, title, tables, size, plain, look, first_number + len(made), count, decimal_sign)
    return tuple(made)


def count_list_sheets(
    cut_list: Table, materials: Sequence[Table], size: PaperSize, look: Look, decimal_sign: str = "."
) -> int:
    """How many sheets the lists take."""
    series = _series(cut_list, tuple(materials), size, look, decimal_sign)
    return sum(count_table_sheets(tables, size, look, decimal_sign) for _, _, tables in series)


@lru_cache(maxsize=4)
def _series(
    cut_list: Table, materials: tuple[Table, ...], size: PaperSize, look: Look, decimal_sign: str
) -> tuple[tuple[str, str, tuple[Table, ...]], ...]:
    """Which tables share sheets, with key and title of these; kept, since sheets are counted before they are made."""
    apart = (("cut-list", CUT_LIST, (cut_list,)), ("materials", MATERIALS, materials))
    single = sum(count_table_sheets(tables, size, look, decimal_sign) for _, _, tables in apart)
    together = (cut_list, *materials)
    if count_table_sheets(together, size, look, decimal_sign) < single:
        return (("cut-list", f"{CUT_LIST}, {MATERIALS}", together),)
    return apart
