"""Labels to print, cut apart and stick on the boards: which it is, how it lies, what it is joined to next.

A label goes on the reference face, its foot arrow to the reference end; its face and edge marks are then the board's.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet, SheetSet
from shopdraw.lists.figures import Figures
from shopdraw.lists.next_joint import next_joints
from shopdraw.measure import write_length
from shopdraw.piece.design import Design
from shopdraw.sheet.box import words_size
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.template_set import piece_words
from shopdraw.sheet.wrap import wrapped
from shopdraw.trade.paper import PaperSize, paper
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

PAPERS = {False: "A4", True: "Letter"}
"""Of mm and of inch pieces."""
MARGIN = 10.0
COLUMNS, ROWS = 3, 7
"""Labels on a page (own choice): about 63 × 39 mm each."""
INSET = 3.0
LARGE, WORDS, SMALL = 7.0, 2.5, 1.8
"""Heights of letters: the label, what is read first, the rest. Source: the series of ISO 3098-1."""
PITCH = 1.6
CUT_WIDTH = 0.18


@dataclass(frozen=True, slots=True)
class Sticker:
    """What a board's label says.

    Attributes:
        board: whose.
        lines: name, sizes, next joint.
    """

    board: Board
    lines: tuple[str, ...]


def stickers(design: Design, assembly: Assembly) -> tuple[Sticker, ...]:
    """A label for each board, in the piece's order.

    Args:
        design: for units.
        assembly: the piece.
    """
    writing = manner_of(design).writing
    figures = Figures(writing.cut, writing.fit, writing.decimal_sign)
    joints = next_joints(assembly, figures)
    made = []
    for board in assembly.boards:
        sizes = " × ".join(write_length(size, writing.cut) for size in (board.thickness, board.width, board.length))
        following = f"next: {joints[board.id]}" if board.id in joints else ""
        made.append(Sticker(board, tuple(line for line in (board.name, sizes, following) if line)))
    return tuple(made)


def sticker_sheets(design: Design, assembly: Assembly) -> SheetSet:
    """The labels of a piece on pages of A4 or Letter."""
    manner = manner_of(design)
    size = paper(PAPERS[manner.inch])
    every = stickers(design, assembly)
    count = COLUMNS * ROWS
    pages = [every[start : start + count] for start in range(0, len(every), count)]
    sheets = tuple(_page(page, number, size, piece_words(design)) for number, page in enumerate(pages, 1))
    piece = design.piece
    return SheetSet(f"{piece.title}: labels", piece.drawn_by, "Labels of boards", manner.style, sheets, true_size=True)


def _page(held: Sequence[Sticker], number: int, size: PaperSize, piece: str) -> Sheet:
    width, height = sorted((size.width_mm, size.height_mm))
    wide, tall = (width - 2 * MARGIN) / COLUMNS, (height - 2 * MARGIN) / ROWS
    marks: list[Mark] = []
    rows = -(-len(held) // COLUMNS)
    top = height - MARGIN
    levels = [top - n * tall for n in range(rows + 1)]
    marks += [Line((MARGIN, y), (width - MARGIN, y), Meaning.SIZE, "", CUT_WIDTH) for y in levels]
    for n in range(COLUMNS + 1):
        x = MARGIN + n * wide
        marks.append(Line((x, top), (x, top - rows * tall), Meaning.SIZE, "", CUT_WIDTH))
    for n, sticker in enumerate(held):
        x, y = MARGIN + (n % COLUMNS) * wide, top - (n // COLUMNS + 1) * tall
        marks += _sticker(sticker, x, y, wide, tall, piece)
    frame = (MARGIN, MARGIN, width - MARGIN, height - MARGIN)
    drawing = Drawing(f"labels.{number}", "", tuple(marks))
    sheet = Paper(size.name, width, height, frame, "small")
    return Sheet(f"labels-{number}", str(number), f"Labels {number}", sheet, (Placed(drawing, 1.0, (0.0, 0.0)),))


def _sticker(sticker: Sticker, x: float, y: float, wide: float, tall: float, piece: str) -> Iterator[Mark]:
    """One label in its place, lower left corner at x and y."""
    board = sticker.board
    far = board.reference_edge == "far"
    left, right = x + INSET, x + wide - INSET
    edge, into = (y + tall, -1.0) if far else (y, 1.0)
    strip = y if far else y + 9.0
    # The edge's marks take one long side, the words what is left.
    top = strip + tall - 9.0 - INSET
    beside = words_size(piece, SMALL)[0] + 4.0
    label_height = _height(board.label, right - left - beside if beside < 0.7 * (right - left) else right - left)
    yield Text((left, top - label_height), board.label, label_height, "left", 0.0, Meaning.WORD, board.id)
    at = top - label_height - max(1.2, words_size(board.label, label_height)[1])
    for n, line in enumerate(sticker.lines):
        height = WORDS if n == 0 else SMALL
        for part in wrapped(line, height, right - left):
            at -= height * PITCH
            if at < strip + 1.5:
                return
            yield Text((left, at + 0.4 * height), part, height, "left", 0.0, Meaning.WORD, board.id)
    yield from _edge_marks(left, right, edge, into, board.id)
    if beside <= right - left - words_size(board.label, label_height)[0]:
        yield Text((right, top - SMALL), piece, SMALL, "right", 0.0, Meaning.WORD, board.id)


def _height(label: str, room: float) -> float:
    """The largest height of the label's letters that leaves it on one line."""
    return next((h for h in (LARGE, 5.0, 3.5) if words_size(label, h)[0] <= room), WORDS)


def _edge_marks(left: float, right: float, edge: float, into: float, board: str) -> Iterator[Mark]:
    """The face mark with its tail to the reference edge, the edge mark, and the arrow to the reference end."""
    loop = 1.6
    centre = (left + 6.0, edge + into * 5.6)
    yield ArcMark(centre, loop, 0.0, 360.0, Meaning.WORD, board)
    yield Line((centre[0] - loop, centre[1]), (centre[0] + 1.0, edge), Meaning.WORD, board)
    tip = (left + 14.0, edge + into * 0.8)
    for side in (-1.0, 1.0):
        yield Line((tip[0] + side * 1.8, tip[1] + into * 3.6), tip, Meaning.WORD, board)
    middle = edge + into * 4.0 - SMALL / 2
    yield Text((left + 18.0, middle), "reference edge", SMALL, "left", 0.0, Meaning.WORD, board)
    y = edge + into * 4.0
    end = right - 12.0
    yield Line((end, y), (end + 5.0, y), Meaning.WORD, board)
    yield Arrow((end, y), 180.0, 3.0, 1.0, Meaning.WORD, board)
    yield Text((end + 6.0, middle), "foot", SMALL, "left", 0.0, Meaning.WORD, board)
