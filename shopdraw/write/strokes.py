"""Lines and arcs that meet are drawn as one stroke, so that wide lines close at their corners.

Points are the words that the page prints for them ("12.500 80.250"): two ends meet if they print alike. Ends that meet
nothing stay square and exact: a line of 100 mm is 100 mm long on paper.
"""

from __future__ import annotations

from typing import NamedTuple

Curve = tuple[str, str, str]
"""Two control points and an end."""


class Segment(NamedTuple):
    """A line, or an arc as curves.

    Attributes:
        start, end: its ends as printed.
        curves: the arc's curves in order, or empty for a line.
    """

    start: str
    end: str
    curves: tuple[Curve, ...] = ()

    def reversed(self) -> Segment:
        """The same stroke drawn from its other end."""
        if not self.curves:
            return Segment(self.end, self.start)
        starts = (self.start, *(end for _, _, end in self.curves[:-1]))
        back = [(b, a, start) for start, (a, b, _) in zip(starts, self.curves, strict=True)]
        return Segment(self.end, self.start, tuple(back[::-1]))

    def drawn(self) -> str:
        """The operators that draw it from the current point. Source: ISO 32000-1, 8.5.2."""
        if not self.curves:
            return f"{self.end} l"
        return " ".join(f"{a} {b} {c} c" for a, b, c in self.curves)


def stroke(segments: list[Segment]) -> str:
    """The operators of one stroke through segments that follow each other, closed if it comes back to its start."""
    start = segments[0].start
    operators = [f"{start} m", *(segment.drawn() for segment in segments)]
    if segments[-1].end == start:
        operators.append("h")
    return " ".join(operators)


def joined(segments: list[Segment]) -> list[list[Segment]]:
    """Segments in strokes: those that share an end follow each other, each segment is there once.

    Args:
        segments: of one pen, any order.
    Returns:
        Strokes in the order of their first segments; what has no length is left out.
    """
    ends: dict[str, list[int]] = {}
    for number, segment in enumerate(segments):
        ends.setdefault(segment.start, []).append(number)
        ends.setdefault(segment.end, []).append(number)
    used = [segment.start == segment.end and not segment.curves for segment in segments]
    strokes = []
    for number, segment in enumerate(segments):
        if used[number]:
            continue
        used[number] = True
        onward = _onward(segment.end, segments, ends, used)
        before = _onward(segment.start, segments, ends, used)
        strokes.append([*(s.reversed() for s in reversed(before)), segment, *onward])
    return strokes


def _onward(point: str, segments: list[Segment], ends: dict[str, list[int]], used: list[bool]) -> list[Segment]:
    """Unused segments from a point on, one after the other."""
    found: list[Segment] = []
    while len(ends[point]) > 1:
        number = next((n for n in ends[point] if not used[n]), None)
        if number is None:
            break
        used[number] = True
        segment = segments[number]
        found.append(segment if segment.start == point else segment.reversed())
        point = found[-1].end
    return found
