"""Lines that coincide are drawn once, pieces that touch become one line, chords of a circle become arcs again."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from shopdraw.drawing.mark import ArcMark, Line, Meaning
from shopdraw.view.drawn_once import Piece, Spans, groups_drawn_once
from shopdraw.view.standing import Bools, Floats, Ints

_SAME_WAY = 1e-6
_SAME_LINE_MM = 1e-4
_TOUCHING_MM = 1e-4
_CHORDS_TOUCH_MM = 0.002
_DECIMALS = 9
"""A nanometre: the last decimals of a double differ from machine to machine."""


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
    covered: Bools
    centre: Floats
    radius: Floats


def marks_of(
    pieces: Pieces, boards: Sequence[str], visible: Meaning, covered: Meaning
) -> tuple[Line | ArcMark, ...]:
    """The pieces as lines and arcs, each place drawn once; visible ones win over covered ones.

    Args:
        boards: ids by owner.
        visible, covered: what the two kinds of lines mean.
    """
    named = _Named(boards, (visible, covered))
    straight = np.flatnonzero(pieces.radius == 0)
    round_ = np.flatnonzero(pieces.radius > 0)
    return (*_lines(pieces, straight, named), *_arcs(pieces, round_, named))


@dataclass(frozen=True, eq=False)
class _Named:
    """What pieces are called: ids by owner, the meanings of visible and covered ones."""

    boards: Sequence[str]
    meanings: tuple[Meaning, Meaning]


def _lines(pieces: Pieces, rows: Ints, named: _Named) -> list[Line]:
    if not len(rows):
        return []
    start, end = pieces.start.take(rows, axis=0), pieces.end.take(rows, axis=0)
    group, way, offset = _supports(start, end)
    low = start[:, 0] * way[:, 0] + start[:, 1] * way[:, 1]
    high = end[:, 0] * way[:, 0] + end[:, 1] * way[:, 1]
    low, high = np.minimum(low, high), np.maximum(low, high)
    owner, covered = pieces.owner[rows], pieces.covered[rows]
    order = np.lexsort((owner, -pieces.facing[rows], -pieces.depth[rows], group * 2 + covered))
    spans = Spans(group, low, high, owner, covered).only(order)
    across = np.column_stack((-way[:, 1], way[:, 0])) * offset[:, None]
    places = np.concatenate((way, across), axis=1).take(order, axis=0).tolist()
    lines = []
    boards, meanings = named.boards, named.meanings
    for first, found in groups_drawn_once(spans, np.full(len(order), _TOUCHING_MM)):
        wx, wy, ox, oy = places[first]
        for a, b, board, hidden in found:
            here = (round(a * wx + ox, _DECIMALS) + 0.0, round(a * wy + oy, _DECIMALS) + 0.0)
            there = (round(b * wx + ox, _DECIMALS) + 0.0, round(b * wy + oy, _DECIMALS) + 0.0)
            lines.append(Line(here, there, meanings[hidden], boards[board]))
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
    most = np.maximum.reduceat(size[by_angle], np.flatnonzero(np.diff(ways, prepend=-1)))
    longest = np.flatnonzero(size == most[turn])[::-1]
    lead = np.zeros(len(most), dtype=np.int64)
    lead[turn[longest]] = longest  # of several the first
    way = np.round(way[lead], 15).take(turn, axis=0)
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


def _arcs(pieces: Pieces, rows: Ints, named: _Named) -> list[ArcMark]:
    if not len(rows):
        return []
    places = np.column_stack((pieces.centre[rows], pieces.radius[rows]))
    group = _alike(np.round(places / _SAME_LINE_MM))
    row, low, high = _spans(pieces, rows)
    covered, owner = pieces.covered[rows[row]], pieces.owner[rows[row]]
    order = np.lexsort((owner, -pieces.facing[rows[row]], -pieces.depth[rows[row]], covered, group[row]))
    spans = Spans(group[row], low, high, owner, covered).only(order)
    touching = np.degrees(_CHORDS_TOUCH_MM / places[row[order], 2]) + 1e-6
    arcs = []
    boards, meanings = named.boards, named.meanings
    for first, found in groups_drawn_once(spans, touching):
        x, y, radius = places[row[order[first]]].tolist()
        for a, b, board, hidden in _closed(found, float(touching[first])):
            span = (round(a, _DECIMALS), round(b, _DECIMALS))
            centre = (round(x, _DECIMALS) + 0.0, round(y, _DECIMALS) + 0.0)
            arcs.append(ArcMark(centre, round(radius, _DECIMALS), *span, meanings[hidden], boards[board]))
    return arcs


def _alike(keys: Floats) -> Ints:
    """Rows numbered in the order of their keys; equal ones share a number."""
    order = np.lexsort(keys.T[::-1])
    new = np.any(np.diff(keys.take(order, axis=0), axis=0) != 0, axis=1)
    found = np.empty(len(keys), dtype=np.int64)
    found[order] = np.concatenate(([0], np.cumsum(new)))
    return found


def _spans(pieces: Pieces, rows: Ints) -> tuple[Ints, Floats, Floats]:
    """The angles that chords span about their centres, in [0, 360], split where they pass 0: which chord, from, to."""
    a, b = (
        np.degrees(np.arctan2(reach[:, 1], reach[:, 0])) % 360.0
        for reach in (ends[rows] - pieces.centre[rows] for ends in (pieces.start, pieces.end))
    )
    low, high = np.minimum(a, b), np.maximum(a, b)
    passes = high - low > 180.0
    tails = np.flatnonzero(passes)
    return (
        np.concatenate((np.arange(len(rows)), tails)),
        np.concatenate((np.where(passes, high, low), np.zeros(len(tails)))),
        np.concatenate((np.where(passes, 360.0, high), low[tails])),
    )


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
