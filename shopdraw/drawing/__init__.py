"""The Drawing's values: lines, arcs, hatched areas, words, dimensions and the sheets that hold them.

One Drawing feeds the screen, the PDF and the DXF. Knows widths of letters; knows nothing of boards or files.
"""
