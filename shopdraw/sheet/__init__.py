"""Sheets: views and facts become placed, dimensioned drawings on framed paper.

How a new sheet is made::

    look = look_for("iso", paper.group)                      # heights, line widths, row distances
    facts = [Fact("case:left/case:right", left, right, Rank.OVERALL, ("front",), side="below", row=2), ...]
    figures = write_figures(facts, writing)                  # one string a fact, chains add up: once for the whole set
    front = PlainView("front", "front", front_marks)         # marks from shopdraw.view, true-size mm
    done = dimension_views([front, side], facts, 0.2, look, figures, balloons)
    done.views["front"]                                      # ComposedView: a Drawing with Dimensions, and its room
    done.unplaced                                            # facts that no view had room for: findings "no room for"
    spot = stand_in_projection(views, free_area(paper), third_angle=False)   # None: doesn't fit, take a smaller scale
    spot = stand_in_rows(views, free_area(paper))            # sections, details, cells: rows from left to right
    sheet = compose_sheet("general-arrangement", "2", "General arrangement", paper, spot, fields, look)

`write_figures` is called once for a set, so that a fact has the same string wherever it stands. `compose_view` does one
view where there is no choice between views. `choose_scale` tries preferred scales and papers until all fits.
Tables: `compose_tables(tables, paper, fields, look, first_number)` gives as many sheets as they need.
Points of features are true-size mm in each view's own plane; rooms, boxes and sheet marks are paper mm.
"""
