"""Sheets that hold tables or a picture instead of dimensioned views, before they have their numbers."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.mark import Mark
from shopdraw.drawing.sheet import Sheet
from shopdraw.lists.table import Table
from shopdraw.sheet.arrange import Standing
from shopdraw.sheet.caution_note import with_cautions
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.table_page import table_pages
from shopdraw.sheet.title_block import TitleFields


@dataclass(frozen=True, slots=True)
class Leaf:
    """What such a sheet holds.

    Attributes:
        key, title: of the sheet.
        kind: of document, for the title block.
        marks: tables, cautions; paper mm.
        standing: a picture.
    """

    key: str
    title: str
    kind: str
    marks: tuple[Mark, ...]
    standing: tuple[Standing, ...] = ()


def table_leaves(
    key: str, title: str, tables: Sequence[Table], manner: Manner, given: Collection[str] = ()
) -> tuple[Leaf, ...]:
    """Tables one under the other on as many sheets as they need, each with its cautions.

    Args:
        key: of the first; further ones are `key-2`, `key-3`, ...
        title: in the title block.
        tables: in order.
        manner: paper and figures.
        given: what the tables give that calls for a caution.
    """
    area, cautions = with_cautions(given, manner.size, manner.look)
    pages = table_pages(tables, area, manner.look, manner.writing.decimal_sign)
    return tuple(
        Leaf(key if n == 0 else f"{key}-{n + 1}", title, "Schedule", (*marks, *cautions))
        for n, marks in enumerate(pages)
    )


def leaf_sheets(leaves: Sequence[Leaf], manner: Manner, fields: TitleFields, first: int, count: int) -> Iterator[Sheet]:
    """The sheets, numbered.

    Args:
        leaves: in order.
        manner: paper and look.
        fields: of the title block; scale and projection have no meaning here and are left out.
        first: number of the first.
        count: sheets in the whole set.
    """
    for number, leaf in enumerate(leaves, first):
        plain = replace(fields, document_type=leaf.kind, scale="", projection="", material="")
        yield compose_sheet(
            leaf.key, str(number), count, leaf.title, manner.size, leaf.standing, plain, manner.look, leaf.marks
        )
