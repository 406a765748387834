"""Where the figure of a dimension on a row can stand, best first. Paper mm.

The order is: centred on its line; arrows outside; past an arrow, on its line; stepped off the line; at the end of a
leader with a shelf. Each spot is a whole `Dimension` in paper mm, so that what is tested is what is drawn.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import ARROW_LENGTH_MM, CLEAR_MM, TAIL_MM
from shopdraw.shape.path import Point
from shopdraw.sheet.box import words_size
from shopdraw.sheet.ground import WORDS_APART
from shopdraw.sheet.look import Look
from shopdraw.sheet.side import Run, Side, Span

LEAST_ARROWED = 2 * ARROW_LENGTH_MM + 1.0
"""Shortest line that two arrows fit inside."""
SHORT_LINK = 2 * ARROW_LENGTH_MM
"""A chain with a link shorter than this has strokes."""
BENT_LEAD = 4.0
"""How far a bent leader carries a running figure off its extension line; each row keeps room for it."""
STEPS = ("centred", "arrows outside", "past an arrow", "stepped", "leader")
LEVELS = 3
"""How many lines of words a figure may be stepped off its line."""
_OFF_END, _BETWEEN_LEVELS = 0.8, 1.3
"""From an extension line's end to a stepped figure, and from one level to the next."""
_SHELF_ANGLES = (45.0, 60.0, 30.0)


@dataclass(frozen=True, slots=True)
class Row:
    """The row that a span stands on: its side, its distance out, and the run that it is part of."""

    side: Side
    out: float
    run: Run


@dataclass(frozen=True, slots=True)
class _Words:
    """A figure's size and the way it is read on a row."""

    width: float
    below: float
    above: float
    read: Point
    up: Point

    @property
    def angle_deg(self) -> float:
        return math.degrees(math.atan2(self.read[1], self.read[0]))

    def reach(self, direction: Point) -> float:
        """Half the extent of its box along a direction."""
        along = abs(self.read[0] * direction[0] + self.read[1] * direction[1])
        across = abs(self.up[0] * direction[0] + self.up[1] * direction[1])
        return along * self.width / 2 + across * (self.below + self.above) / 2

    def baseline(self, middle: Point) -> Point:
        """The middle of the baseline when the middle of the box is given."""
        by = (self.above - self.below) / 2
        return middle[0] - self.up[0] * by, middle[1] - self.up[1] * by


def words_on(side: Side, words: str, look: Look, *, running: bool = False) -> _Words:
    """The size and reading direction of a figure on a side.

    ISO 129-1: along the dimension line, read from below or from the right; running figures along the extension
    line. ASME Y14.5 practice: always read from below.
    """
    width, below, above = words_size(words, look.figure)
    read = (1.0, 0.0)
    if look.style == "iso":
        upright = abs(side.along[0]) > abs(side.along[1])
        read = ((0.0, 1.0) if upright else (1.0, 0.0)) if running else side.along
    return _Words(width, below, above, read, (-read[1], read[0]))


def reach_of_row(side: Side, run: Run, look: Look) -> tuple[float, float]:
    """How far a row's figures reach towards the view and away from it when all stand where they should."""
    inner, outer = 0.0, look.extension_past
    for span in run.spans:
        words = words_on(side, span.words, look, running=run.running)
        half = words.reach(side.out)
        if run.running:
            outer = max(outer, look.extension_past + look.text_gap + 2 * half + BENT_LEAD)
        elif look.style == "asme":
            inner, outer = max(inner, half), max(outer, half)
        else:
            up = words.up[0] * side.out[0] + words.up[1] * side.out[1]
            reach = look.text_gap + words.above
            inner, outer = (inner, max(outer, reach)) if up > 0 else (max(inner, reach), outer)
    return inner, outer


def bare(span: Span, row: Row, look: Look, extension: tuple[bool, bool] = (True, True)) -> Dimension:
    """The dimension without its figure: the lines that are there whatever the figure does."""
    return _dimension(span, row, look, "", (0.0, 0.0), 0.0, terminator_of(row.run, look), extension=extension)


def terminator_of(run: Run, look: Look) -> str:
    """Strokes where the look asks for them, or where a chain has a link too short for arrows."""
    short = len(run.spans) > 1 and not run.running and min(s.high - s.low for s in run.spans) < SHORT_LINK
    return "stroke" if look.strokes or short else "arrow"


def spots(span: Span, row: Row, look: Look) -> Iterator[tuple[int, Dimension]]:
    """Every spot for a linear dimension's figure, best first, with the number of its step (see `STEPS`)."""
    words = words_on(row.side, span.words, look)
    yield from _centred(span, row, look, words)
    yield from _past_an_arrow(span, row, look, words)
    yield from _stepped(span, row, look, words)
    yield from _on_a_shelf(span, row, look, words)


def _centred(span: Span, row: Row, look: Look, words: _Words) -> Iterator[tuple[int, Dimension]]:
    terminator = terminator_of(row.run, look)
    room = span.high - span.low
    half = words.reach(row.side.along)
    needed = 2 * half
    if look.style == "asme":
        needed += 2 * CLEAR_MM + (2 * (ARROW_LENGTH_MM + 1.0) if terminator == "arrow" else 2.0)
    spare = max(0.0, (room - needed) / 2)
    shifts = (0.0, *(sign * spare * share for share in (0.35, 0.7, 1.0) for sign in (1, -1))) if spare else (0.0,)
    middle = (span.low + span.high) / 2
    if terminator == "stroke" or room >= max(needed, LEAST_ARROWED):
        for shift in shifts:
            yield 0, _on_line(span, row, look, words, middle + shift, terminator)
    elif len(row.run.spans) == 1 and room >= 2 * half + 2 * CLEAR_MM:
        yield 1, _on_line(span, row, look, words, middle, "arrow-outside")


def _past_an_arrow(span: Span, row: Row, look: Look, words: _Words) -> Iterator[tuple[int, Dimension]]:
    run = row.run
    stroke = terminator_of(run, look) == "stroke"
    room = span.high - span.low
    outside = not stroke and room < LEAST_ARROWED
    if outside and len(run.spans) > 1:
        return
    lead = (ARROW_LENGTH_MM + TAIL_MM) if outside else look.extension_past
    reach = lead + words.reach(row.side.along) + CLEAR_MM
    terminator = "stroke" if stroke else "arrow-outside" if outside else "arrow"
    for place, last in ((span.high + reach, span.high == run.high), (span.low - reach, span.low == run.low)):
        if last:
            yield 2, _on_line(span, row, look, words, place, terminator)


def _stepped(span: Span, row: Row, look: Look, words: _Words) -> Iterator[tuple[int, Dimension]]:
    side = row.side
    terminator = _short_terminator(span, row, look)
    if terminator is None:
        return
    middle = (span.low + span.high) / 2
    along, out = words.reach(side.along), words.reach(side.out)
    for level in range(LEVELS):
        t = row.out + stepped_reach(span, row, look, level) - out
        for share in (0.0, 0.8, -0.8):
            box = side.point(middle + share * along, t)
            leader = (side.point(middle, row.out), side.point(middle, t - out - 0.6))
            at = words.baseline(box)
            yield 3, _dimension(span, row, look, span.words, at, words.angle_deg, terminator, leader=leader)


def stepped_reach(span: Span, row: Row, look: Look, level: int) -> float:
    """How far off its line a figure stepped to a level reaches."""
    tall = 2 * words_on(row.side, span.words, look).reach(row.side.out)
    return look.extension_past + _OFF_END + tall + level * (tall + _BETWEEN_LEVELS)


def _on_a_shelf(span: Span, row: Row, look: Look, words: _Words) -> Iterator[tuple[int, Dimension]]:
    side = row.side
    terminator = _short_terminator(span, row, look)
    if terminator is None:
        return
    start = ((span.low + span.high) / 2, row.out)
    lean = words.read[0] * side.along[0] + words.read[1] * side.along[1]
    outward = words.read[0] * side.out[0] + words.read[1] * side.out[1]
    for level in range(4):
        rise = look.extension_past + 2.0 + level * look.pitch
        for angle in _SHELF_ANGLES:
            for sign in (1.0, -1.0):
                knee = side.point(start[0] + sign * rise / math.tan(math.radians(angle)), row.out + rise)
                way = math.copysign(1.0, sign * lean) if abs(lean) > 0.5 else math.copysign(1.0, outward)
                yield 4, _shelf(span, row, look, words, side.point(*start), knee, way, terminator)


def _shelf(
    span: Span, row: Row, look: Look, words: _Words, start: Point, knee: Point, way: float, terminator: str
) -> Dimension:
    run, up = words.read, words.up
    end = (knee[0] + way * words.width * run[0], knee[1] + way * words.width * run[1])
    middle = ((knee[0] + end[0]) / 2 + up[0] * look.text_gap, (knee[1] + end[1]) / 2 + up[1] * look.text_gap)
    return _dimension(span, row, look, span.words, middle, words.angle_deg, terminator, leader=(start, knee, end))


def _short_terminator(span: Span, row: Row, look: Look) -> str | None:
    """The ends of a dimension whose figure stands off its line; None where they would lie on their neighbours."""
    terminator = terminator_of(row.run, look)
    if terminator == "arrow" and span.high - span.low < LEAST_ARROWED:
        return "arrow-outside" if len(row.run.spans) == 1 else "arrow"
    return terminator


def _on_line(span: Span, row: Row, look: Look, words: _Words, s: float, terminator: str) -> Dimension:
    side = row.side
    if look.style == "asme":
        at = words.baseline(side.point(s, row.out))
    else:
        x, y = side.point(s, row.out)
        at = (x + words.up[0] * look.text_gap, y + words.up[1] * look.text_gap)
    return _dimension(span, row, look, span.words, at, words.angle_deg, terminator)


def running_spots(row: Row, look: Look, fixed: tuple[float, ...]) -> tuple[Dimension, ...]:
    """The running dimensions of a run, each figure at its extension line's end.

    Figures that would touch are moved along the row as little as it takes, in their order, none over a line at
    `fixed` (extension lines of rows further out); then each stands at the end of a bent leader.
    """
    side = row.side
    spans = sorted(row.run.spans, key=lambda span: (span.b[0], span.fact.id))
    sized = [words_on(side, span.words, look, running=True) for span in spans]
    wanted = [span.b[0] for span in spans]
    in_line = any(abs(words.read[0] * side.along[0] + words.read[1] * side.along[1]) > 0.5 for words in sized)
    halves = [words.reach(side.along) + (WORDS_APART / 2 + 0.05 if in_line else 0.6) for words in sized]
    places = spread(wanted, halves, fixed)
    bent = any(abs(place - want) > 0.05 for place, want in zip(places, wanted, strict=True))
    foot = row.out + look.extension_past
    lead = BENT_LEAD if bent else 0.0
    made = []
    for span, words, place in zip(spans, sized, places, strict=True):
        out = words.reach(side.out)
        middle = side.point(place, foot + lead + 0.8 + out)
        leader = (side.point(span.b[0], foot), side.point(place, foot + lead)) if bent else ()
        made.append(
            _dimension(span, row, look, span.words, words.baseline(middle), words.angle_deg, "arrow", leader=leader)
        )
    return tuple(made)


def spread(wanted: list[float], halves: list[float], fixed: tuple[float, ...]) -> list[float]:
    """Places in ascending order, as near as may be to those wanted, that don't overlap and keep off fixed lines.

    Args:
        wanted: ascending.
        halves: half of the room that each needs.
        fixed: positions that none may cover.
    """
    walls = [-math.inf, *sorted(fixed), math.inf]
    cells: dict[int, list[int]] = {}
    for i, want in enumerate(wanted):
        cell = sum(1 for wall in walls[1:-1] if wall < want - 1e-6)
        if cell + 1 < len(walls) - 1 and abs(walls[cell + 1] - want) <= 1e-6 and i == len(wanted) - 1:
            cell += 1
        cells.setdefault(max(cell, max(cells, default=0)), []).append(i)
    places = [0.0] * len(wanted)
    for cell, members in cells.items():
        own = [wanted[i] for i in members]
        found = _spread_between(own, [halves[i] for i in members], walls[cell], walls[cell + 1])
        for i, place in zip(members, found, strict=True):
            places[i] = place
    return places


def _spread_between(wanted: list[float], halves: list[float], low: float, high: float) -> list[float]:
    """As `spread`, between two walls: blocks that touch move together about their mean (pool adjacent violators)."""
    offsets, run = [], 0.0
    for i, half in enumerate(halves):
        run += half if i == 0 else half + halves[i - 1]
        offsets.append(run)
    blocks: list[tuple[float, int]] = []
    for want, offset in zip(wanted, offsets, strict=True):
        mean, count = want - offset, 1
        while blocks and blocks[-1][0] > mean:
            before, many = blocks.pop()
            mean = (before * many + mean * count) / (many + count)
            count += many
        blocks.append((mean, count))
    starts = [mean for mean, count in blocks for _ in range(count)]
    least, most = low, high - run - halves[-1]
    return [min(max(start, least), most) + offset for start, offset in zip(starts, offsets, strict=True)]


def _dimension(
    span: Span, row: Row, look: Look, words: str, at: Point, angle_deg: float, terminator: str,
    *, leader: tuple[Point, ...] = (), extension: tuple[bool, bool] = (True, True),
) -> Dimension:
    side, fact = row.side, span.fact
    broken = look.style == "asme" and bool(words) and not leader and not row.run.running
    return Dimension(
        fact.id, "running" if row.run.running else "linear", side.point(*span.a), side.point(*span.b),
        side.direction_deg, side.point(span.low, row.out), words, at, angle_deg, look.figure, fact.size(), terminator,
        leader, None, fact.board, extension, broken,
    )
