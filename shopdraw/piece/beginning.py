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

_HEAD = """\
# {words}.
# Lengths: a bare number is in the piece's unit; "800 mm", "31 1/2 in", "2' 7 1/2\\"" and "31 1/2 + 3/4" are read too.
format = 1

[piece]
title = "{title}"
kind = "{kind}"
units = "mm"                # mm or inch: the unit of bare numbers here and of the sizes on the sheets
# revision = "A"
# date = "2026-01-31"       # as it shall stand in the title block

[case]                      # over the finished outsides
width = {width}
height = {height}               # from the floor to the top's upper face
depth = {depth}                 # from the front plane to the sides' rear edges
"""

_TAIL = """\

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
"""


def _text(words: str, title: str, kind: str, size: tuple[int, int, int], middle: str) -> str:
    width, height, depth = size
    head = _HEAD.format(words=words, title=title, kind=kind, width=width, height=height, depth=depth)
    return head + middle + _TAIL


CHEST = _text(
    "A chest of drawers",
    "Chest",
    "chest",
    (800, 900, 480),
    """\
top_joint = "dovetail"      # dovetail, housed or overhanging

[opening.bank]              # the bank of drawers, from the bottom up to the top
divide = { keys = ["1", "2", "3", "4"], rule = "step", step = 20 }   # from the top down; equal, given, step or ratio

[opening."bank.1"]          # the topmost row: two drawers beside each other, a divider between them
divide = { by = "columns", keys = ["left", "right"] }
""",
)

BOOKCASE = _text(
    "A bookcase",
    "Bookcase",
    "bookcase",
    (850, 1500, 300),
    """\
top_joint = "dovetail"      # dovetail, housed or overhanging

[level.1]                   # from the bottom up; one without a top shares the space evenly with its neighbours
member = "pinned-shelf"     # loose, on pins

[level.2]
member = "shelf"            # fixed in dados

[level.3]
member = "pinned-shelf"

# [pins]
# pitch = 32                # from hole to hole

# [face]                    # a face frame before the front edges
# overhang = 3              # of its stiles beyond the sides
""",
)

LECTERN = _text(
    "A lectern",
    "Lectern",
    "lectern",
    (560, 1150, 430),
    """\

[slant]
hinge_edge = "upper"        # the lid's: upper, or lower as a desk has it
writing_height = 960        # from the floor to the shelf under the lid
angle = 22                  # from level, degrees; or give top_depth, or start: where the slant begins in front

[level.1]                   # a shelf in the case below
member = "shelf"
# top = 520
""",
)

FREE = _text(
    "A piece put together freely: an empty case, and what you put into it",
    "Free piece",
    "free",
    (800, 900, 400),
    """\

# [level.middle]            # shelf, pinned-shelf or web-frame
# member = "shelf"
# top = 480                 # its upper face, from the floor

# [opening.under]           # the clear space above a level
# above = "bottom"
# fill = "none"             # drawer, pigeonhole or none
# divide = { by = "columns", keys = ["left", "right"] }   # rows or columns
""",
)

BEGINNINGS = {
    "slant-desk": SLANT_DESK, "chest": CHEST, "bookcase": BOOKCASE, "lectern": LECTERN, "free": FREE,
}  # fmt: skip
"""The text of a new piece file, by the piece's kind."""
