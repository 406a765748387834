"""Cautions as a table: each with its hazard, words, source, and every sheet that carries it."""

from shopdraw.lists.caution_table import caution_table
from shopdraw.trade.cautions import cautions_for


def test_each_caution_stands_on_each_sheet_that_calls_for_it():
    sheets = {"cover": ("tilt", "lift"), "parts": ("tilt", "cutter"), "plan": ()}
    table = caution_table(sheets)
    for row, caution in zip(table.rows, cautions_for(("tilt", "lift", "cutter")), strict=True):
        hazard, words, why, on = row
        assert (hazard, words) == (caution.hazard, caution.words)
        assert caution.source.publication in why
        wanted = [title for title, given in sheets.items() if set(given) & set(caution.on)]
        assert on == "; ".join(wanted)
