"""Lines that coincide are drawn once, pieces that touch become one line, chords of a circle become arcs again."""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from shopdraw.drawing.mark import ArcMark, Line, Meaning
from shopdraw.view.scene import Floats, Ints

_SAME_WAY = 1e-6
_SAME_LINE_MM = 1e-4
_TOUCHING_MM = 1e-4
_DECIMALS = 9
"""A nanometre: the last decimals of a double differ from machine to machine."""

Piece = tuple[float, float, int, bool]
"""From, to, owner, covered."""


@dataclass(frozen=True, eq=False)
class Pieces:
    """Stretches of edges on paper.

    Attributes:
        start, end: (n, 2) mm.
        depth: (n,) how near; of pieces that coincide the nearest is drawn.
        facing: (n,) how squarely a face beside it looks at the viewer; of two at one depth the greater is drawn.
        owner: (n,) index of the board.
        covered: (n,).
        centre, radius: (n, 2), (n,) of the arc that a piece is a chord of; radius 0 for a line.
    """

    start: Floats
    end: Floats
    depth: Floats
    facing: Floats
    owner: Ints
    covered: np.typing.NDArray[np.bool_]
    centre: Floats
    radius: Floats


def marks_of(pieces: Pieces, boards: Sequence[str], visible: Meaning, covered: Meaning) -> tuple[Line | ArcMark, ...]:
    """The pieces as lines and arcs, each place drawn once; visible ones win over covered ones.

    Args:
        boards: ids by owner.
        visible, covered: what the two kinds of lines mean.
    """
    meanings = (visible, covered)
    straight = np.flatnonzero(pieces.radius == 0)
    round_ = np.flatnonzero(pieces.radius > 0)
    return (*_lines(pieces, straight, boards, meanings), *_arcs(pieces, round_, boards, meanings))


def _lines(
    pieces: Pieces, rows: Ints, boards: Sequence[str], meanings: tuple[Meaning, Meaning]
) -> list[Line]:
    if not len(rows):
        return []
    start, end = pieces.start[rows], pieces.end[rows]
    group, way, offset = _supports(start, end)
    out = np.stack((-way[:, 1], way[:, 0]), 1)
    low, high = (start * way).sum(axis=1), (end * way).sum(axis=1)
    low, high = np.minimum(low, high), np.maximum(low, high)
    order = np.lexsort((pieces.owner[rows], -pieces.facing[rows], -pieces.depth[rows], pieces.covered[rows], group))
    bounds = np.flatnonzero(np.concatenate(([True], np.diff(group[order]) > 0, [True])))
    columns = [c[order].tolist() for c in (low, high, pieces.owner[rows], pieces.covered[rows])]
    items: list[Piece] = list(zip(*columns, strict=True))
    places = np.column_stack((way, offset[:, None] * out))[order].tolist()
    lines = []
    for first, last in zip(bounds[:-1].tolist(), bounds[1:].tolist(), strict=True):
        wx, wy, ox, oy = places[first]
        found = items[first:last] if last - first == 1 else drawn_once(items[first:last], _TOUCHING_MM)
        for a, b, owner, hidden in found:
            here = (round(a * wx + ox, _DECIMALS) + 0.0, round(a * wy + oy, _DECIMALS) + 0.0)
            there = (round(b * wx + ox, _DECIMALS) + 0.0, round(b * wy + oy, _DECIMALS) + 0.0)
            lines.append(Line(here, there, meanings[hidden], boards[owner]))
    return lines


def _supports(start: Floats, end: Floats) -> tuple[Ints, Floats, Floats]:
    """For each piece the number of the straight line it lies on, that line's direction and its distance from (0, 0)."""
    way = end - start
    way /= np.hypot(way[:, 0], way[:, 1])[:, None]
    way[(way[:, 0] < -_SAME_WAY) | ((np.abs(way[:, 0]) <= _SAME_WAY) & (way[:, 1] < 0))] *= -1
    angle = np.arctan2(way[:, 1], way[:, 0])
    by_angle = np.argsort(angle, kind="stable")
    ways = _numbered(angle[by_angle], _SAME_WAY)
    turn = np.empty(len(angle), dtype=np.int64)
    turn[by_angle] = ways
    # one direction for all of a bundle: the longest piece's, which is the best known
    size = np.hypot(*(end - start).T)
    best = np.lexsort((-size, turn))
    lead = best[np.flatnonzero(np.concatenate(([True], np.diff(turn[best]) > 0)))]
    way = np.round(way[lead], 15)[turn]
    middle = (start + end) / 2
    offset = middle[:, 1] * way[:, 0] - middle[:, 0] * way[:, 1]
    order = np.lexsort((offset, turn))
    new_way = np.concatenate(([True], np.diff(turn[order]) > 0))
    apart = np.concatenate(([True], np.diff(offset[order]) > _SAME_LINE_MM))
    group = np.empty(len(order), dtype=np.int64)
    group[order] = np.cumsum(new_way | apart) - 1
    return group, way, offset


def _numbered(values: Floats, apart: float) -> Ints:
    """Sorted values numbered so that neighbours nearer than `apart` share a number."""
    return np.concatenate(([0], np.cumsum(np.diff(values) > apart))).astype(np.int64)


def drawn_once(pieces: Sequence[Piece], touching: float) -> list[Piece]:
    """Pieces on one line without overlaps: earlier ones win, and touching ones of one owner and kind are joined.

    Args:
        pieces: best first (visible before covered, near before far).
        touching: pieces nearer than this touch.
    """
    taken = _Taken()
    kept: dict[tuple[int, bool], list[tuple[float, float]]] = {}
    for low, high, owner, covered in pieces:
        rest = [(a, b) for a, b in taken.free(low, high) if b - a > touching]
        if rest:
            kept.setdefault((owner, covered), []).extend(rest)
            taken.take(low, high)
    found: list[Piece] = []
    for (owner, covered), parts in kept.items():
        found.extend((low, high, owner, covered) for low, high in _joined(parts, touching))
    return found


def _joined(parts: list[tuple[float, float]], touching: float) -> list[tuple[float, float]]:
    parts.sort()
    found = parts[:1]
    for a, b in parts[1:]:
        low, high = found[-1]
        if a - high > touching:
            found.append((a, b))
        else:
            found[-1] = (low, max(high, b))
    return found


class _Taken:
    """Stretches of a line that are drawn already, apart from each other and in order."""

    def __init__(self) -> None:
        self._lows: list[float] = []
        self._highs: list[float] = []

    def free(self, low: float, high: float) -> list[tuple[float, float]]:
        """What is left of a stretch."""
        first, last = bisect_left(self._highs, low), bisect_right(self._lows, high)
        starts = [low, *self._highs[first:last]]
        ends = [*self._lows[first:last], high]
        return list(zip(starts, ends, strict=True))

    def take(self, low: float, high: float) -> None:
        """Marks a stretch as drawn."""
        first, last = bisect_left(self._highs, low), bisect_right(self._lows, high)
        if first < last:
            low, high = min(low, self._lows[first]), max(high, self._highs[last - 1])
        self._lows[first:last], self._highs[first:last] = [low], [high]


def _arcs(pieces: Pieces, rows: Ints, boards: Sequence[str], meanings: tuple[Meaning, Meaning]) -> list[ArcMark]:
    circles: dict[tuple[int, int, int], list[int]] = {}
    for row in rows.tolist():
        (x, y), r = pieces.centre[row].tolist(), float(pieces.radius[row])
        key = (round(x / _SAME_LINE_MM), round(y / _SAME_LINE_MM), round(r / _SAME_LINE_MM))
        circles.setdefault(key, []).append(row)
    arcs = []
    for members in circles.values():
        members.sort(
            key=lambda row: (
                bool(pieces.covered[row]),
                -float(pieces.depth[row]),
                -float(pieces.facing[row]),
                int(pieces.owner[row]),
            )
        )
        (x, y), radius = pieces.centre[members[0]].tolist(), float(pieces.radius[members[0]])
        spans = [span for row in members for span in _spans(pieces, row, x, y)]
        touching = math.degrees(0.002 / radius) + 1e-6
        for low, high, owner, covered in _closed(drawn_once(spans, touching), touching):
            span = (round(low, _DECIMALS), round(high, _DECIMALS))
            centre = (round(x, _DECIMALS) + 0.0, round(y, _DECIMALS) + 0.0)
            arcs.append(ArcMark(centre, round(radius, _DECIMALS), *span, meanings[covered], boards[owner]))
    return arcs


def _spans(pieces: Pieces, row: int, x: float, y: float) -> list[Piece]:
    """The angles that a chord spans about the centre, in [0, 360], split where it passes 0."""
    (x0, y0), (x1, y1) = pieces.start[row].tolist(), pieces.end[row].tolist()
    a = math.degrees(math.atan2(y0 - y, x0 - x)) % 360.0
    b = math.degrees(math.atan2(y1 - y, x1 - x)) % 360.0
    owner, covered = int(pieces.owner[row]), bool(pieces.covered[row])
    low, high = min(a, b), max(a, b)
    if high - low <= 180.0:
        return [(low, high, owner, covered)]
    return [(high, 360.0, owner, covered), (0.0, low, owner, covered)]


def _closed(spans: list[Piece], touching: float) -> list[Piece]:
    """Spans of one owner and kind that meet at 0° made one; a full circle runs from 0 to 360."""
    found = list(spans)
    for tail in spans:
        if tail[1] < 360.0 - touching or tail[0] <= touching:
            continue
        for head in spans:
            if head[0] <= touching and head[2:] == tail[2:] and head[1] < tail[0]:
                found.remove(tail)
                found.remove(head)
                found.append((tail[0], 360.0 + head[1], *tail[2:]))
                break
    return found
