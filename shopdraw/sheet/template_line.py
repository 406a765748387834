"""The lines of a template: outline, cuts, sockets behind, hinge pin; in the board's own coordinates, true-size mm."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from shopdraw.drawing.line_style import TEMPLATE_MM
from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning, Text
from shopdraw.shape.path import Path, arc_of, bounds
from shopdraw.sheet.board_view import board_marks
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face

PIN_WORDS = 2.5
"""Height of the words at the hinge's pin."""


def template_lines(board: Board, assembly: Assembly) -> tuple[Mark, ...]:
    """What a template draws of a board.

    Args:
        board: any one.
        assembly: the piece, for the hinge's pin.
    """
    lines: list[Mark] = list(outline_marks(board))
    seen = {_key(mark) for mark in lines}
    lines += [
        replace(mark, meaning=Meaning.TEMPLATE)
        for mark in board_marks(board.shape, Face.FACE, board.id)
        if isinstance(mark, Line | ArcMark) and _key(mark) not in seen and not _on_outline(mark, board.shape.outline)
    ]
    seen |= {_key(mark) for mark in lines}
    behind = [mark for mark in _behind(board) if _key(mark) not in seen]
    return (*lines, *behind, *_sockets_behind(board), *_hinge_line(board, assembly))


def outline_marks(board: Board) -> Iterator[Line | ArcMark]:
    """The blank's outline whole: the panel is sawn out before its sockets are cut."""
    return path_marks(board.shape.outline, Meaning.TEMPLATE, board.id)


def path_marks(path: Path, meaning: Meaning, board: str) -> Iterator[Line | ArcMark]:
    """A closed path as lines and arcs, mm."""
    for here, there in path.pairs():
        if here.bulge:
            arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
            yield ArcMark(arc.centre, arc.radius, arc.start_deg, arc.end_deg, meaning, board)
        else:
            yield Line((here.x, here.y), (there.x, there.y), meaning, board)


def _behind(board: Board) -> Iterator[Line | ArcMark]:
    """Cuts of the other face, dashed where they don't come through; not where they end at the outline."""
    shape = board.shape
    for cut in shape.cuts:
        if cut.face is Face.BACK and cut.start + cut.depth < shape.thickness - 1e-3:
            for path in (cut.outline, *cut.islands):
                marks = path_marks(path, Meaning.HIDDEN, board.id)
                yield from (mark for mark in marks if not _on_outline(mark, shape.outline))


def _key(mark: Mark) -> object:
    if isinstance(mark, Line):
        return tuple(sorted((round(x, 3), round(y, 3)) for x, y in (mark.start, mark.end)))
    assert isinstance(mark, ArcMark)
    return (
        *(round(v, 3) for v in mark.centre),
        round(mark.radius, 3),
        round(mark.start_deg, 3),
        round(mark.end_deg, 3),
    )


def _on_outline(mark: Line | ArcMark, outline: Path) -> bool:
    """Whether a straight line lies whole on a straight part of the outline."""
    if isinstance(mark, ArcMark):
        return False
    for a, b in outline.pairs():
        long = math.hypot(b.x - a.x, b.y - a.y)
        off = [abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / long for x, y in (mark.start, mark.end)]
        if not a.bulge and max(off) < 1e-3:
            return True
    return False


def _sockets_behind(board: Board) -> Iterator[Mark]:
    """Sides of end sockets where they are wider at the other face: dashed."""
    u0, _, u1, _ = bounds(board.shape.outline)
    for cut in board.shape.cuts:
        if cut.face not in (Face.FOOT, Face.HEAD) or cut.islands or cut.start > 0.0 or len(cut.outline.corners) != 4:
            continue
        near, far = (u0, u0 + cut.depth) if cut.face is Face.FOOT else (u1 - cut.depth, u1)
        if far - near > (u1 - u0) / 2:
            continue
        back = min(corner.y for corner in cut.outline.corners)
        for corner in cut.outline.corners:
            if abs(corner.y - back) < 1e-6:
                yield Line((near, corner.x), (far, corner.x), Meaning.HIDDEN, board.id)


def _hinge_line(board: Board, assembly: Assembly) -> Iterator[Mark]:
    """Where the hinge's pin stands beside a case side: a cross of centre lines with its name."""
    if board.member != "side" or assembly.slant is None:
        return
    y, z = assembly.slant.hinge_pin_mm
    u, v, _ = board.frame.local((board.frame.at[0], y, z))
    reach = 9.0
    yield Line((u - reach, v), (u + reach, v), Meaning.CENTRE, board.id, TEMPLATE_MM)
    yield Line((u, v - reach), (u, v + reach), Meaning.CENTRE, board.id, TEMPLATE_MM)
    into = -1.0 if v > (bounds(board.shape.outline)[1] + bounds(board.shape.outline)[3]) / 2 else 1.0
    yield Text((u - 1.5, v + into * 4.75 - PIN_WORDS / 2), "hinge pin", PIN_WORDS, "right", 0.0, Meaning.WORD, board.id)
