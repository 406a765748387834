"""A piece file that uses what a piece file may use: comments, quotes, dotted keys, inline tables, keyed tables."""

SAMPLE = '''\
format = 1   # the first one

[piece]
title = "Écritoire 7 ⅝″ – façade"   # for the harbour office
kind = "slant-desk"
units = "inch"
shop_note = "ask about grain"

# over the finished outsides
[case]
width = "31-1/2"
height = "2' 10\\""
depth = '18 7/8'

[slant]
writing_height = "740 mm"
top_depth = "9"
seat = "rabbeted"

[stock."cherry 4/4"]
species = "cherry_black"
thickness = "18,3 mm"
measured = true

[use]
side = "cherry 4/4"
"drawer.front" = "cherry 4/4"

[level.bottom]
member = "bottom"

[opening.bank]
above = "bottom"
divide = { by = "rows", keys = ["1", "2", "3"], rule = "given", sizes = ["5 1/2", 6, "6-1/2"] }

[drawer]
front = "lipped"
lip = "5/16"

[drawer.2]
knobs = 1

[climate]
build = 8.0
dry = "6 %"

[note.grain]
on = "side.left"
text = """
Keep the cathedral
in the middle."""

[variant.tall]
"case.height" = "36"
slant.writing_height = "29 1/2 in"
'''
