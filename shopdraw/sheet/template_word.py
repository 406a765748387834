"""The words of a template: each cut's, and those that tell which way the board lies. True-size mm."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point, bounds
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.face_mark import has_edge
from shopdraw.sheet.free_spot import Spots
from shopdraw.wood.board import Board

LARGE, MIDDLE = 7.0, 3.5
CLEAR = 3.0


@dataclass(frozen=True, slots=True)
class Template:
    """A board's template, in the board's own coordinates, mm.

    Attributes:
        board: whose.
        lines: outline, cuts, hinge line.
        labels: (words, box of the pocket that they belong to, in u and v).
        beside: (words, where they belong): cuts that are told in words beside them.
        title: "1L side, left".
        piece: title and revision of the piece.
        inch: check lines are in inches.
        decimal_sign: of figures that aren't sizes.
        rod: a strip with ticks: it has no face, no edge and no grain to tell of.
    """

    board: Board
    lines: tuple[Mark, ...]
    labels: tuple[tuple[str, Bounds], ...]
    beside: tuple[tuple[str, Point], ...]
    title: str
    piece: str
    inch: bool
    decimal_sign: str = "."
    rod: bool = False

    @property
    def box(self) -> Bounds:
        """Round the outline."""
        return bounds(self.board.shape.outline)


def pocket_words(template: Template, region: Bounds, spots: Spots) -> Iterator[Mark]:
    """Each pocket's words in it, as far as it lies in the region; beside it where it is too narrow."""
    for words, (u0, v0, u1, v1) in template.labels:
        x0, y0 = max(u0, region[0]), max(v0, region[1])
        x1, y1 = min(u1, region[2]), min(v1, region[3])
        if x1 - x0 <= 0 or y1 - y0 <= 0:
            continue
        width, below, above = words_size(words, MIDDLE)
        upright = y1 - y0 > x1 - x0
        w, h = (below + above, width) if upright else (width, below + above)
        for share in (0.3, 0.5, 0.7, 0.2, 0.8):
            at = (x0 + (0.5 if upright else share) * (x1 - x0), y0 + (share if upright else 0.5) * (y1 - y0))
            if w <= x1 - x0 and h <= y1 - y0 and spots.free(at, w, h, 0.6):
                middle = (above - below) / 2
                anchor = (at[0] + middle, at[1]) if upright else (at[0], at[1] - middle)
                text = Text(anchor, words, MIDDLE, "middle", 90.0 if upright else 0.0, Meaning.WORD, template.board.id)
                spots.add((text,))
                yield text
                break


def lying_words(template: Template, region: Bounds, spots: Spots) -> Iterator[Mark]:
    """Label, which hand, which face is up, which edge is the front, the grain."""
    board = template.board
    if template.rod:
        return
    x0, y0, _, y1 = template.box
    far = board.reference_edge == "far"
    side = board.member == "side"
    back_v, front_v = (y1, y0) if far else (y0, y1)
    front, back = ("front edge", "back edge, reference") if side else ("other edge", "reference edge")
    middle = ((region[0] + region[2]) / 2, (region[1] + region[3]) / 2)
    up = "inside face up" if side else "reference face up"
    yield from _face_mark(spots, middle[0], back_v, math.copysign(1.0, front_v - back_v), region, template)
    for words, height, at, reach in (
        (template.title, LARGE, middle, 150.0),
        (up, MIDDLE, (middle[0], middle[1] - 12.0), 150.0),
        (front, MIDDLE, (middle[0], front_v + math.copysign(5.0, back_v - front_v)), 60.0),
        (back, MIDDLE, (middle[0], back_v + math.copysign(12.0, front_v - back_v)), 60.0),
        ("foot, reference end", MIDDLE, (x0 + 30.0, middle[1]), 60.0),
        *((words, MIDDLE, at, 120.0) for words, at in template.beside),
    ):
        if not region[0] - 40 <= at[0] <= region[2] + 40 or not region[1] - 5 <= at[1] <= region[3] + 5:
            continue
        width, below, above = words_size(words, height)
        spot = spots.find(width, below + above, at, CLEAR, board.shape.outline)
        if spot is not None and math.dist(spot, at) < reach:
            text = Text((spot[0], spot[1] - (above - below) / 2), words, height, "middle", 0.0, Meaning.WORD, board.id)
            spots.add((text,))
            yield text
    yield from _grain(spots, middle, board)


def _face_mark(spots: Spots, x: float, edge: float, into: float, region: Bounds, template: Template) -> Iterator[Mark]:
    """The face mark: a loop whose tail runs to the reference edge (common practice), where that is still there."""
    board, y = template.board, edge + into * 16.0
    if not region[1] <= edge <= region[3]:
        return
    further = [sign * step * 20.0 for step in range(4, int((region[2] - region[0]) / 40.0)) for sign in (1.0, -1.0)]
    for shift in (30.0, -30.0, 45.0, -45.0, 60.0, 15.0, *further):
        if has_edge(template.lines, x + shift, edge, 4.0) and spots.free((x + shift, y), 8.0, 8.0, 1.0):
            made = (
                ArcMark((x + shift, y), 3.0, 0.0, 360.0, Meaning.WORD, board.id),
                Line((x + shift - 3.0, y), (x + shift + 1.5, edge), Meaning.WORD, board.id),
            )
            spots.add(made)
            yield from made
            return


def _grain(spots: Spots, near: Point, board: Board) -> Iterator[Mark]:
    spot = spots.find(44.0, 8.0, (near[0], near[1] + 14.0), CLEAR, board.shape.outline)
    if spot is None:
        return
    x, y = spot[0], spot[1] - 2.5
    yield Line((x - 20.0, y), (x + 20.0, y), Meaning.WORD, board.id)
    yield Arrow((x - 20.0, y), 180.0, 3.0, 1.0, Meaning.WORD, board.id)
    yield Arrow((x + 20.0, y), 0.0, 3.0, 1.0, Meaning.WORD, board.id)
    yield Text((x, y + 1.4), "grain", MIDDLE, "middle", 0.0, Meaning.WORD, board.id)
