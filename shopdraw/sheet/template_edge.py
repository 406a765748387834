"""Templates of a board's edge and end: the profile of a drawer front, the jig that guides a router in a cap's edge.

The jig is a plate over the edge: its openings are the pockets of the edge, larger all round by half of what the guide
collar is larger than the cutter, so that the collar's rim leads the cutter along the pocket's side.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.line_style import TEMPLATE_MM
from shopdraw.drawing.mark import ArcMark, Line, Mark, Meaning, Text
from shopdraw.lists.machine_settings import Tools
from shopdraw.measure import write_length
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Path, bounds, rectangle
from shopdraw.sheet.board_view import board_marks
from shopdraw.sheet.box import Bounds
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.template_line import path_marks
from shopdraw.sheet.template_word import Template
from shopdraw.wood.board import Board, Cut, Face, Shape, Stock

ROUND = 40.0
"""Plate round the pockets of a jig, for the router's base (common practice)."""
WORDS = 3.5


class NoCollar(ValueError):
    """No cutter and collar of the shop pass a pocket; the message says which."""


@dataclass(frozen=True, slots=True)
class Making:
    """What every page of a template says and how.

    Attributes:
        writing: how sizes are written.
        piece: title and revision.
        inch: check lines of 4 in instead of 100 mm.
    """

    writing: Writing
    piece: str
    inch: bool


def profile_template(board: Board, making: Making) -> Template:
    """The profile of a board: its reference end at full size, the reference face to the right, the near edge below.

    Args:
        board: lipped or moulded round its face.
        making: words of the page.
    """
    marks = [
        replace(mark, meaning=Meaning.TEMPLATE)
        for mark in board_marks(board.shape, Face.FOOT, board.id)
        if isinstance(mark, Line | ArcMark)
    ]
    _, v0, _, v1 = bounds(board.shape.outline)
    outline = rectangle(-board.thickness, v0, 0.0, v1)
    title = f"Profile of {board.label} {board.name}: its end, reference face to the right"
    return _template(board, "profile", outline, marks, title, making)


def jig_template(board: Board, tools: Tools, making: Making) -> Template:
    """The plate that guides a router with a collar in a board's edge.

    Args:
        board: with pockets in one of its long edges.
        tools: the shop's cutters and collars.
        making: words of the page.
    Raises:
        NoCollar: no cutter and collar pass a pocket.
    """
    cuts = [cut for cut in board.shape.cuts if cut.face in (Face.NEAR, Face.FAR)]
    below = cuts[0].face is Face.FAR
    u0, _, u1, _ = bounds(board.shape.outline)
    outline = rectangle(u0 - ROUND, -board.thickness - ROUND, u1 + ROUND, ROUND)
    edge = rectangle(u0, -board.thickness, u1, 0.0)
    marks: list[Mark] = [*path_marks(outline, Meaning.TEMPLATE, board.id), *path_marks(edge, Meaning.SIZE, board.id)]
    told: list[str] = []
    for cut in cuts:
        offset, words = _offset(board, cut, tools, making.writing)
        marks += _opening(_seen(cut, board.thickness), offset, (u0, u1), board.id)
        told.append(words)
    title = f"Jig for {board.label} {board.name}: guide collar"
    face = "below" if below else "above"
    lines = [
        *dict.fromkeys(told),
        f"inner lines: edge of {board.label}, reference face {face}; dashed: its pocket",
        "saw out the plate and its opening, which is the line next to the edge's",
    ]
    for n, line in enumerate(lines):
        at = (u0 + 5.0, ROUND - 3.0 - WORDS - 1.7 * WORDS * n)
        marks.append(Text(at, line, WORDS, "left", 0.0, Meaning.WORD, board.id))
    return _template(board, "jig", outline, marks, title, making)


def _offset(board: Board, cut: Cut, tools: Tools, writing: Writing) -> tuple[float, str]:
    """How much larger than the pocket the jig's opening is on each side, mm, and words for it."""
    a0, b0, a1, b1 = bounds(cut.outline)
    cutter = tools.cutter_for(min(a1 - a0, b1 - b0))
    collar = tools.collar_for(cutter) if cutter is not None else None
    if cutter is None or collar is None:
        raise NoCollar(
            f"{board.label} {board.name}: no cutter with a guide collar passes its {cut.kind} "
            f"{min(a1 - a0, b1 - b0):.2f} mm wide"
        )
    sizes = [write_length(size, writing.cut) for size in (collar, cutter, (collar - cutter) / 2, cut.depth)]
    words = "collar {}, cutter {}: opening {} larger all round; cut {} deep below the edge".format(*sizes)
    return (collar - cutter) / 2, words


def _seen(cut: Cut, thickness: float) -> Bounds:
    """A pocket of an edge as it is seen from outside, reference end left; the far edge is seen face down."""
    a0, b0, a1, b1 = bounds(cut.outline)
    return (a0, -thickness - b1, a1, -thickness - b0) if cut.face is Face.FAR else (a0, b0, a1, b1)


def _opening(box: Bounds, offset: float, ends: tuple[float, float], board: str) -> Iterator[Line | ArcMark]:
    """A jig's opening, run past the board's end where its pocket is open there, and the pocket itself dashed."""
    a0, b0, a1, b1 = box
    past = offset + ROUND / 2
    left = past if a0 <= ends[0] + 1e-6 else offset
    right = past if a1 >= ends[1] - 1e-6 else offset
    yield from path_marks(rectangle(a0 - left, b0 - offset, a1 + right, b1 + offset), Meaning.TEMPLATE, board)
    for mark in path_marks(rectangle(a0, b0, a1, b1), Meaning.HIDDEN, board):
        yield replace(mark, width=TEMPLATE_MM) if isinstance(mark, Line) else mark


def _template(
    board: Board, kind: str, outline: Path, marks: Sequence[Mark], title: str, making: Making
) -> Template:
    frame = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
    stock = Stock("", "", "sheet", 1.0, "", 0.0, 0.0)
    strip = Board(f"{kind}.{board.id}", f"{kind}-{board.label}", title, kind, Shape(outline, 1.0), frame, stock)
    sign = making.writing.decimal_sign
    return Template(strip, tuple(marks), (), (), title, making.piece, making.inch, sign, rod=True)
