"""Findings on a piece: fit, motions, wood left, movement, drawers, supports, slant; `gather.findings` asks all rules.

Nothing is mended here: a finding tells what is wrong, by how much and what would be right.
"""
