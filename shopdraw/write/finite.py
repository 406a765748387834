"""Refuses numbers that aren't finite before they reach a file: formats take them in silence, readers don't."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Text


class NotFinite(ValueError):
    """A mark holds a number that isn't finite; the message says where and which."""


def finite_marks(marks: Iterable[Mark], where: str) -> Iterator[Mark]:
    """The marks as they come.

    Args:
        marks: of a drawing or a sheet.
        where: words for the message: which sheet, which drawing.
    Raises:
        NotFinite: one of them holds a number that isn't finite.
    """
    finite = math.isfinite
    for mark in marks:
        match mark:
            case Line():
                (a, b), (c, d) = mark.start, mark.end
                # One sum tells for all: it isn't finite if one of them isn't.
                good = finite(a + b + c + d)
            case Text():
                good = finite(mark.at[0] + mark.at[1] + mark.height + mark.angle_deg) and mark.height > 0
            case ArcMark():
                good = finite(mark.centre[0] + mark.centre[1] + mark.radius + mark.start_deg + mark.end_deg)
            case Arrow():
                good = finite(mark.tip[0] + mark.tip[1] + mark.angle_deg + mark.length + mark.width)
            case Dot():
                good = finite(mark.centre[0] + mark.centre[1] + mark.radius)
            case Area():
                # Paths refuse such corners when they are made.
                pitched = mark.hatching.kind == "grey" or (0 < mark.hatching.pitch < math.inf)
                good = pitched and all(finite(sum(box)) for box in mark.clear) and finite(mark.hatching.angle_deg)
        if not good:
            raise NotFinite(f"{where}: a mark must have finite numbers and positive heights, found {mark}")
        yield mark
