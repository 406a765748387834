"""Findings on a piece: fit, motions, wood left, movement, drawers, supports, slant.

Nothing is mended here: a finding tells what is wrong, by how much and what would be right.
"""

from shopdraw.check.gather import findings

__all__ = ["findings"]
