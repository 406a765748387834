"""The cautions of a set as a table: the hazard, the words, where they come from, the sheets that they stand on."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from shopdraw.lists.table import Column, Table
from shopdraw.trade.cautions import cautions_for

TITLE = "Cautions"


def caution_table(sheets: Mapping[str, Collection[str]]) -> Table:
    """Every caution that a sheet of the set carries.

    Args:
        sheets: what each sheet gives ("tilt", "cutter", "lift", ...), by the sheet's title.
    """
    every = {what for given in sheets.values() for what in given}
    rows = []
    for caution in cautions_for(every):
        on = [title for title, given in sheets.items() if set(given) & set(caution.on)]
        rows.append((caution.hazard, caution.words, f"{caution.basis} ({caution.source.publication})", "; ".join(on)))
    heads = ("hazard", "caution", "why, and source", "stands on")
    return Table(TITLE, tuple(Column(head) for head in heads), tuple(rows))
