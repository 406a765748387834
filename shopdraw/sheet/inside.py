"""Dimensions inside a view: clearances and sizes beside what they measure, and angles. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from heapq import heappop, heappush

from shopdraw.drawing.dimension import Dimension
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, Segment, crossing, overlap, words_size
from shopdraw.sheet.fact import Fact
from shopdraw.sheet.figure_spot import LEAST_ARROWED, Row, bare, spots
from shopdraw.sheet.ground import Ground, What
from shopdraw.sheet.leader import price_of_shelf
from shopdraw.sheet.look import Look
from shopdraw.sheet.side import COST_OF_CROSSING, Run, Side, Span, crossings
from shopdraw.sheet.trial import Tried, fits, stand, tried, words_free

_STEP = 2.0
_SLANT_ROWS = 40
_DEAREST = 400.0
"""A dimension whose extension lines cost more (eight lines crossed) isn't read any more: it goes elsewhere."""
_COST_OF_STEP = 8.0
_BESIDE, _ON_IT = 2.5, 6.0
"""A dimension line this near to a line of the view is read with it; one that lies on it costs that many times more."""
_PRICES = {What.DIMENSION: (COST_OF_CROSSING, 30.0), What.LEADER: (3.0, 5.0)}
"""What it costs that a line crosses one of the view's, and that it runs beside one."""
_FAR_FROM_ARC = 12.0
"""Words whose middle would be further from their arc get a leader."""
_RADII = (12.0, 16.0, 20.0, 25.0, 30.0, 36.0, 44.0, 54.0, 66.0, 80.0)


def place_inside(
    fact: Fact, direction_deg: float, a: Point, b: Point, words: str, outline: Bounds, ground: Ground, look: Look
) -> Dimension | None:
    """A linear dimension inside the view where it costs least; None where there is no room.

    Args:
        fact: what is told.
        direction_deg: measured along, degrees from +x, 0 to under 180.
        a, b: its features on paper.
        words: its figure.
        outline: box round the view.
        ground: what stands there; the dimension is added to it.
        look: heights and distances.
    """
    best: tuple[float, Tried] | None = None
    for side in _both_ways(direction_deg):
        span = Span(fact, side.place(a), side.place(b), words)
        best = _best_row(span, side, _distances(span, side, outline, look), best, ground, look)
    return _stood(best, ground)


def place_slant(fact: Fact, side: Side, a: Point, b: Point, words: str, ground: Ground, look: Look) -> Dimension | None:
    """A dimension along a slope, off the view's outline as far as a first row or further; None where there is no room.

    Args:
        fact: what is told.
        side: of the slope, from `slant_side`.
        a, b: its features on paper.
        words: its figure.
        ground: what stands there; the dimension is added to it.
        look: heights and distances.
    """
    span = Span(fact, side.place(a), side.place(b), words)
    outs = [side.start + _STEP * i for i in range(_SLANT_ROWS)]
    return _stood(_best_row(span, side, outs, None, ground, look), ground)


def _best_row(
    span: Span, side: Side, outs: Iterable[float], best: tuple[float, Tried] | None, ground: Ground, look: Look
) -> tuple[float, Tried] | None:
    """The cheapest free place among rows, those with the cheapest extension lines tried first."""
    run = Run(span.fact.id, (span,))
    for price, row in _cheapest_first([Row(side, out, run) for out in outs], span, ground):
        if price >= (best[0] if best is not None else _DEAREST):
            break
        found = _first_free(span, row, price, best, ground, look)
        best = found if found is not None else best
    return best


def _cheapest_first(rows: Sequence[Row], span: Span, ground: Ground) -> Iterator[tuple[float, Row]]:
    """Rows by what their extension lines cost; what they cross is only counted when their length is due."""
    reaches = sorted((abs(row.out - span.a[1]) + abs(row.out - span.b[1]), i) for i, row in enumerate(rows))
    due: list[tuple[float, int]] = []
    for reach, i in reaches:
        while due and due[0][0] <= reach:
            price, first = heappop(due)
            yield price, rows[first]
        heappush(due, (reach + _price_of_extensions(span, rows[i], ground), i))
    while due:
        price, first = heappop(due)
        yield price, rows[first]


def _stood(best: tuple[float, Tried] | None, ground: Ground) -> Dimension | None:
    """The best one put on the ground, or None."""
    if best is None:
        return None
    stand(best[1], ground)
    return best[1].dimension


def place_angle(
    fact: Fact, vertex: Point, a: Point, b: Point, words: str, ground: Ground, look: Look
) -> Dimension | None:
    """An angle between two legs, its figure beside the arc or at a leader; None where there is no room."""
    best: tuple[float, Tried] | None = None
    for price, dimension in _angle_spots(fact, vertex, a, b, words, look):
        if (best is not None and price >= best[0]) or not words_free(dimension, ground):
            continue
        attempt = tried(dimension, look)
        if fits(attempt, ground):
            full = price + _price_of_lines(attempt, ground)
            full += price_of_shelf((dimension.leader[-2], dimension.leader[-1]), ground) if dimension.leader else 0.0
            if best is None or full < best[0]:
                best = (full, attempt)
    return _stood(best, ground)


def _first_free(
    span: Span, row: Row, price: float, best: tuple[float, Tried] | None, ground: Ground, look: Look
) -> tuple[float, Tried] | None:
    """The row's first free spot, if it costs less than the best so far."""
    lines = tried(bare(span, row, look), look)
    if _too_near_a_row(lines, ground, look) or not fits(lines, ground):
        return None
    least = price + _price_of_lines(lines, ground)
    dearest = best[0] if best is not None else _DEAREST
    for step, dimension in spots(span, row, look):
        if least + _COST_OF_STEP * step >= dearest:
            return None
        if not words_free(dimension, ground):
            continue
        attempt = tried(dimension, look)
        if _too_near_a_row(attempt, ground, look) or not fits(attempt, ground):
            continue
        full = price + _COST_OF_STEP * step + _price_of_lines(attempt, ground)
        if full < dearest:
            return full, attempt
    return None


def _both_ways(direction_deg: float) -> Iterator[Side]:
    """Sides without a place, so that figures may step off either way."""
    radians = math.radians(direction_deg if direction_deg <= 90.0 else direction_deg - 180.0)
    along = (round(math.cos(radians), 12), round(math.sin(radians), 12))
    for sign in (1.0, -1.0):
        yield Side("inside", along, (-along[1] * sign, along[0] * sign), 0.0, 0.0)


def _distances(span: Span, side: Side, outline: Bounds, look: Look) -> Iterator[float]:
    """Where the dimension line may lie: between its features first, then further and further away, inside the view
    or as far off it as a first row.
    """
    x0, y0, x1, y1 = outline
    outs = [side.place(p)[1] for p in ((x0, y0), (x1, y0), (x1, y1), (x0, y1))]
    low, high = min(outs), max(outs)
    middle = (span.a[1] + span.b[1]) / 2
    places = [middle]
    for i in range(1, math.ceil((high - low) / _STEP)):
        places += [middle + i * _STEP, middle - i * _STEP]
    places += [high + look.first_row, low - look.first_row]
    near = look.first_row
    kept = [out for out in places if low <= out <= high or out >= high + near or out <= low - near]
    yield from sorted(kept, key=lambda out: abs(out - middle))


def _price_of_extensions(span: Span, row: Row, ground: Ground) -> float:
    return COST_OF_CROSSING * sum(
        crossings(row.side.point(s, t), row.side.point(s, row.out), ground) for s, t in (span.a, span.b)
    )


def _price_of_lines(attempt: Tried, ground: Ground) -> float:
    """What it costs that dimension lines and leaders cross lines of the view, or lie on them or close beside them."""
    price = 0.0
    for stroke in attempt.strokes:
        if stroke.what not in _PRICES:
            continue
        share, beside = _PRICES[stroke.what]
        x0, y0, x1, y1 = _bounds(stroke.line)
        for other in ground.strokes_near((x0 - _BESIDE, y0 - _BESIDE, x1 + _BESIDE, y1 + _BESIDE), (What.VIEW,)):
            if crossing(stroke.line, other.line, 0.3) is not None:
                price += share
            elif _parallel(stroke.line, other.line) and overlap(stroke.line, other.line, _BESIDE) > 1.0:
                price += beside * (_ON_IT if overlap(stroke.line, other.line, 0.7) > 1.0 else 1.0)
    return price


def _too_near_a_row(attempt: Tried, ground: Ground, look: Look) -> bool:
    """Whether its line runs beside another dimension line, nearer than rows may stand."""
    for stroke in attempt.strokes:
        if stroke.what is not What.DIMENSION:
            continue
        x0, y0, x1, y1 = _bounds(stroke.line)
        by = look.next_row
        for other in ground.strokes_near((x0 - by, y0 - by, x1 + by, y1 + by), (What.DIMENSION,)):
            if _parallel(stroke.line, other.line) and overlap(stroke.line, other.line, by - 0.02) > 0.3:
                return True
    return False


def _parallel(one: Segment, two: Segment) -> bool:
    """Whether two lines run the same way within 3°."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = *one, *two
    turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    return abs(turn) < 0.05 * math.dist(*one) * math.dist(*two)


def _bounds(line: Segment) -> Bounds:
    (x0, y0), (x1, y1) = line
    return min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)


def _angle_spots(
    fact: Fact, vertex: Point, a: Point, b: Point, words: str, look: Look
) -> Iterator[tuple[float, Dimension]]:
    first = math.degrees(math.atan2(a[1] - vertex[1], a[0] - vertex[0]))
    last = math.degrees(math.atan2(b[1] - vertex[1], b[0] - vertex[0]))
    if (last - first) % 360.0 > 180.0:
        first, last = last, first
    sweep = (last - first) % 360.0
    width, below, above = words_size(words, look.figure)
    for radius in _RADII:
        terminator = "arrow" if math.radians(sweep) * radius >= LEAST_ARROWED else "arrow-outside"
        on = _polar(vertex, radius, first + sweep / 2)
        for share in (0.5, 0.35, 0.65, 0.2, 0.8):
            angle = first + sweep * share
            c, s = math.cos(math.radians(angle)), math.sin(math.radians(angle))
            half = abs(c) * width / 2 + abs(s) * (below + above) / 2
            for out in (1.0, -1.0):
                off = half + look.text_gap + 0.4
                if half > _FAR_FROM_ARC or (out < 0 and off + half > radius):
                    continue
                middle = _polar(vertex, radius + out * off, angle)
                at = (middle[0], middle[1] - (above - below) / 2)
                price = radius + abs(share - 0.5) * 10 + off
                yield price, _angle_dimension(fact, vertex, a, b, on, words, at, (), terminator, look)
        for share in (0.5, 0.3, 0.7):
            start = _polar(vertex, radius, first + sweep * share)
            for length in (8.0, 12.0, 18.0, 26.0, 36.0):
                for lean in (45.0, 135.0, 315.0, 225.0):
                    knee = _polar(start, length, lean)
                    way = math.copysign(1.0, math.cos(math.radians(lean)))
                    end = (knee[0] + way * width, knee[1])
                    at = ((knee[0] + end[0]) / 2, knee[1] + look.text_gap)
                    leader = (start, knee, end)
                    price = radius + 10.0 + length
                    yield price, _angle_dimension(fact, vertex, a, b, on, words, at, leader, terminator, look)


def _angle_dimension(
    fact: Fact, vertex: Point, a: Point, b: Point, on: Point, words: str, at: Point, leader: tuple[Point, ...],
    terminator: str, look: Look,
) -> Dimension:
    return Dimension(
        fact.id, "angular", a, b, 0.0, on, words, at, 0.0, look.figure, fact.size(), terminator, leader, vertex,
        fact.board,
    )


def _polar(centre: Point, radius: float, degrees: float) -> Point:
    radians = math.radians(degrees)
    return centre[0] + radius * math.cos(radians), centre[1] + radius * math.sin(radians)
