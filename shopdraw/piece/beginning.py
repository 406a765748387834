"""The text of a new piece file: the sizes that must be given, and beside them the choices that may be."""

SLANT_DESK = """\
# A slant-front desk.
# Lengths: a bare number is in the piece's unit; "800 mm", "31 1/2 in", "2' 7 1/2\\"" and "31 1/2 + 3/4" are read too.
format = 1

[piece]
title = "Slant-front desk"
kind = "slant-desk"
units = "mm"                # mm or inch: the unit of bare numbers here and of the sizes on the sheets
# revision = "A"
# date = "2026-01-31"       # as it shall stand in the title block

[case]                      # over the finished outsides
width = 900
height = 1040               # from the floor to the top's upper face
depth = 480                 # from the front plane to the sides' rear edges

[slant]
writing_height = 740        # from the floor to the writing surface
angle = 50                  # from level, degrees; give this or top_depth, the other one follows
# top_depth = 230
seat = "rabbeted"           # how the lid lies: on, rabbeted or flush

# Everything below has a default; take the # away and put in what you decided.

# [stock.cherry]
# species = "cherry_black"
# thickness = 20            # as measured, not as sold

# [use]                     # which member is made of which stock
# side = "cherry"

# [climate]                 # moisture of the wood in percent: when built, in the driest and in the wettest season
# build = 8
# dry = 6
# wet = 12

# [drawer]
# front = "inset"           # or lipped
"""
