"""Sheets: views and facts become placed, dimensioned drawings on framed paper.

How a new sheet is made (`size` is a `shopdraw.trade.paper.PaperSize`, `scale` a ratio such as 0.2)::

    look = look_for("iso", size.group)                     # heights, line widths, row distances; inch=, reduction=
    facts = [Fact("case:left/case:right", left, right, Rank.OVERALL, ("front",), side="below", row=2), ...]
    figures = write_figures(facts, metric_writing())       # one string a fact, chains add up: once for the whole set
    front = PlainView("front", "Front", front_marks)       # marks from shopdraw.view, true-size mm
    done = dimension_views([front, side, plan], facts, 0.2, look, figures, {"front": [Balloon("1L", (10, 500))]})
    done.views["front"]                                    # ComposedView: a Drawing with Dimensions, and its room
    done.unplaced                                          # facts that no view had room for: findings "no room for"
    area = free_area(size, look)
    views = done.views
    at = stand_in_projection(views["front"], views["side"], views["plan"], area, third_angle=False)   # None: no room
    at = stand_in_rows([views["section.A"], ...], area)    # sections, details; `stand_on_pages` for cells of parts
    fields = TitleFields(title="Desk", units="mm", projection="first", scale="1:5")
    sheet = compose_sheet("general-arrangement", "2", 9, "General arrangement", size, at, fields, look, notes)

`write_figures` is called once for a set, so that a fact has the same string wherever it stands. `compose_view` does one
view where there is no choice between views; `choose_scale` tries papers and preferred scales until all fits.
Tables: `table_sheets("cut-list", "Cut list", tables, size, fields, look, first_number, count)` gives as many sheets as
they need; `count_table_sheets` tells beforehand how many.
A piece's whole set, from cover to materials: `shopdraw.sheet.set.sheet_set`.
Points of features are true-size mm in each view's own plane; rooms, boxes and sheet marks are paper mm.
"""

from shopdraw.sheet.arrange import (
    Choice,
    FreeArea,
    Standing,
    choose_scale,
    free_area,
    stand_in_projection,
    stand_in_rows,
    stand_on_pages,
)
from shopdraw.sheet.compose import compose_view
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.fact import BadFact, Fact, Feature, Rank, Sight, Unplaced, feature
from shopdraw.sheet.figure import Writing, inch_writing, metric_writing, write_figures
from shopdraw.sheet.look import Look, look_for
from shopdraw.sheet.spread import Dimensioned, dimension_views
from shopdraw.sheet.table_sheet import count_table_sheets, table_sheets
from shopdraw.sheet.title_block import TitleFields
from shopdraw.sheet.view import Balloon, ComposedView, PlainView

__all__ = [
    "BadFact",
    "Balloon",
    "Choice",
    "ComposedView",
    "Dimensioned",
    "Fact",
    "Feature",
    "FreeArea",
    "Look",
    "PlainView",
    "Rank",
    "Sight",
    "Standing",
    "TitleFields",
    "Unplaced",
    "Writing",
    "choose_scale",
    "compose_sheet",
    "compose_view",
    "count_table_sheets",
    "dimension_views",
    "feature",
    "free_area",
    "inch_writing",
    "look_for",
    "metric_writing",
    "stand_in_projection",
    "stand_in_rows",
    "stand_on_pages",
    "table_sheets",
    "write_figures",
]
