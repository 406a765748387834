"""Full-size templates: a board's outline and cuts at true size, with the words that tell which way it lies.

A template lies in the board's own coordinates: u to the right, v up, the reference face to the reader. Its lines are cut
to their middle. Any board will do.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.line_style import TEMPLATE_MM
from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet
from shopdraw.shape.path import Path, Point, arc_of, bounds
from shopdraw.sheet.board_view import board_marks
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.check_line import LINE_TOLERANCE, CheckLine, check_line_marks
from shopdraw.sheet.clip import clipped
from shopdraw.sheet.cut_note import cut_notes
from shopdraw.sheet.cut_size import cut_sizes
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.free_spot import Spots
from shopdraw.sheet.wrap import wrapped
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face

LARGE, MIDDLE, SMALL = 7.0, 3.5, 2.5
MARGIN = 15.0
STRIP = 58.0
"""Paper below the part on a page of true size, for words and check lines."""
ROLL = 890.0
"""Widest page for a roll of 36 in: 914.4 less what its plotter can't print, and some slack (common practice)."""
LONGEST = 14400 * 25.4 / 72
"""Largest side of a PDF page without a unit of its own. Source: ISO 32000-1, annex C."""
CUT_TO = "cut to the centre of the line"
_CLEAR = 3.0
_BLOCKS = (
    (5.0, MIDDLE, 200.0), (MIDDLE, SMALL, 200.0), (5.0, MIDDLE, 80.0), (MIDDLE, SMALL, 80.0), (MIDDLE, SMALL, 55.0),
    (SMALL, SMALL, 40.0),
)
"""Heights of the first line and of the others, and the width of the block of a page's words, as they are tried."""


class TemplateTooLong(ValueError):
    """A board whose template is longer than a page may be; the message names it."""


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
    """

    board: Board
    lines: tuple[Mark, ...]
    labels: tuple[tuple[str, Bounds], ...]
    beside: tuple[tuple[str, Point], ...]
    title: str
    piece: str
    inch: bool

    @property
    def box(self) -> Bounds:
        """Round the outline."""
        return bounds(self.board.shape.outline)


def template_of(board: Board, assembly: Assembly, writing: Writing, piece: str, *, inch: bool) -> Template:
    """The template of a board.

    Args:
        board: any one.
        assembly: the piece, for fits and the hinge line.
        writing: how sizes are written.
        piece: title and revision, printed on each page.
        inch: check lines of 4 in instead of 100 mm.
    """
    lines: list[Mark] = list(_outline(board))
    seen = {_key(mark) for mark in lines}
    for mark in board_marks(board.shape, Face.FACE, board.id):
        if isinstance(mark, Line | ArcMark) and _key(mark) not in seen and not _on_outline(mark, board.shape.outline):
            lines.append(replace(mark, meaning=Meaning.TEMPLATE))
    lines += _sockets_behind(board)
    lines += _hinge_line(board, assembly)
    sizes = cut_sizes(board, assembly, writing)
    labels: list[tuple[str, Bounds]] = []
    beside: list[tuple[str, Point]] = []
    u0, _, u1, _ = bounds(board.shape.outline)
    for note in cut_notes(board, sizes):
        for index in note.cuts if note.view is Face.FACE else ():
            cut = board.shape.cuts[index]
            if cut.face in (Face.FACE, Face.BACK):
                labels.append((note.words.split(" × ", 1)[1] if note.words[0].isdigit() else note.words, bounds(cut.outline)))
        if note.view in (Face.FOOT, Face.HEAD) and not all(board.shape.cuts[i].depth > (u1 - u0) / 2 for i in note.cuts):
            v = sum(target[1] for target in note.targets) / len(note.targets)
            u = u0 + 75.0 if note.view is Face.FOOT else u1 - 75.0
            beside.append((f"{note.words}, dashed there", (u, v)))
    return Template(board, tuple(lines), tuple(labels), tuple(beside), f"{board.label} {board.name}", piece, inch)


def true_size_sheet(template: Template, number: str = "1") -> Sheet:
    """The template on one page: as large as the part with its margins and a strip for words.

    Raises:
        TemplateTooLong: a side of the page is longer than a PDF's page may be.
    """
    x0, y0, x1, y1 = template.box
    width, height = x1 - x0 + 2 * MARGIN, y1 - y0 + 2 * MARGIN + STRIP
    if max(width, height) > LONGEST:
        raise TemplateTooLong(
            f"{template.title}: its page would be {max(width, height):.0f} mm long; at most {LONGEST:.0f} mm are possible"
        )
    region = (x0 - MARGIN + 8.0, y0 - STRIP - MARGIN + 8.0, x1 + MARGIN - 8.0, y1 + MARGIN - 8.0)
    page = f"page {width:.1f} × {height:.1f} mm"
    roll = "; goes on a roll of 36 in (914 mm)" if min(width, height) <= ROLL else ""
    lines = (
        f"{template.title}, full size, one page",
        f"{template.piece}; {page}{roll}",
        "Print at 100 %, do not fit to the paper.",
        *check_words(template.inch),
        CUT_TO,
    )
    foot = (x0 + x1) / 2, y0 - STRIP / 2 - 4.0
    marks = furnished(template, region, lines, foot, both_ends=True)
    drawing = Drawing(f"template.{template.board.label}", "", marks)
    paper = Paper("true size", width, height, (5.0, 5.0, width - 5.0, height - 5.0), "small")
    at = (MARGIN - x0, MARGIN + STRIP - y0)
    key = f"template-{template.board.label}"
    return Sheet(key, number, f"Template {template.title}", paper, (Placed(drawing, 1.0, at),), ())


def check_words(inch: bool) -> tuple[str, ...]:
    """What is said beside check lines."""
    length = "4 in" if inch else "100 mm"
    return (
        f"Measure the check lines ({length}, both ways) before you cut;",
        LINE_TOLERANCE,
    )


def furnished(
    template: Template, region: Bounds, lines: Sequence[str], words_near: Point, *, both_ends: bool = False,
    fixed: Sequence[Mark] = (), inner: Bounds | None = None,
) -> tuple[Mark, ...]:
    """All that stands on a page: the template's lines in the region, check lines, words.

    Args:
        template: whose.
        region: of the page, in the board's coordinates.
        lines: words of the page, the first one larger.
        words_near: where they would stand best.
        both_ends: check lines at both ends of the page.
        fixed: marks that stand where they are: crosses, key map.
        inner: where words and check lines go, if not anywhere in the region.
    """
    held = [*clipped(template.lines, region), *fixed]
    spots = Spots(inner or region)
    spots.add(held)
    apart = Spots(inner or region)
    apart.add(held)
    apart.add_boxes(box for _, box in template.labels)
    made = list(held)
    block = _block(apart, lines, words_near) or _block(spots, lines, words_near)
    if not block:
        raise NoRoomOnTemplate(f"{lines[0]}: no room for the page's words; a larger paper is needed")
    spots.add(block)
    apart.add(block)
    made += block
    for near, upright in _check_places(inner or region, words_near, both_ends=both_ends):
        line = CheckLine(template.inch, upright)
        at = apart.find(*line.room, near, 1.0) or spots.find(*line.room, near, 1.0) or _over_lines(line, near, region, made)
        if at is None:
            raise NoRoomOnTemplate(f"{template.title}: no room for a check line on a page; a larger paper is needed")
        marks = tuple(check_line_marks(line, at))
        spots.add(marks)
        apart.add(marks)
        made += marks
    for group in (_pocket_words(template, region, spots), _lying_words(template, region, spots)):
        made += group
    return tuple(made)


def _check_places(box: Bounds, words_near: Point, *, both_ends: bool) -> Iterator[tuple[Point, bool]]:
    """Where check lines would stand best, and whether upright."""
    x0, y0, x1, y1 = box
    for share in (0.12, 0.88) if both_ends else (0.5,):
        for upright in (False, True):
            y = words_near[1] if both_ends and not upright else y0 + 0.3 * (y1 - y0)
            yield (x0 + share * (x1 - x0), y), upright


def _over_lines(line: CheckLine, near: Point, region: Bounds, marks: Sequence[Mark]) -> Point | None:
    """A place for a check line that crosses lines of the part, its own words clear of them."""
    loose, strict = Spots(region), Spots(region)
    loose.add_words(marks)
    strict.add(marks)

    def words_free(at: Point) -> bool:
        middle, width, height = line.words_box(at)
        return strict.free(middle, width, height, 0.5)

    return loose.find(*line.room, near, 1.0, also=words_free)


class NoRoomOnTemplate(ValueError):
    """A page on which the check lines or the words of the page find no room; the message says which."""


def _block(spots: Spots, lines: Sequence[str], near: Point) -> tuple[Mark, ...]:
    """The page's words as one block, in the largest letters that find room; nothing where none do."""
    for first, height, widest in _BLOCKS:
        sized = [
            (part, first if n == 0 else height)
            for n, line in enumerate(lines)
            for part in wrapped(line, first if n == 0 else height, widest)
        ]
        width = max(words_size(line, h)[0] for line, h in sized)
        tall = sum(1.7 * h for _, h in sized)
        at = spots.find(width, tall, near)
        if at is None:
            continue
        y = at[1] + tall / 2
        made = []
        for line, h in sized:
            y -= 1.7 * h
            made.append(Text((at[0] - width / 2, y + 0.4 * h), line, h))
        return tuple(made)
    return ()


def _outline(board: Board) -> Iterator[Mark]:
    """The blank's outline whole: the panel is sawn out before its sockets are cut."""
    for here, there in board.shape.outline.pairs():
        if here.bulge:
            arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
            yield ArcMark(arc.centre, arc.radius, arc.start_deg, arc.end_deg, Meaning.TEMPLATE, board.id)
        else:
            yield Line((here.x, here.y), (there.x, there.y), Meaning.TEMPLATE, board.id)


def _key(mark: Mark) -> object:
    if isinstance(mark, Line):
        return tuple(sorted((round(x, 3), round(y, 3)) for x, y in (mark.start, mark.end)))
    assert isinstance(mark, ArcMark)
    return (*(round(v, 3) for v in mark.centre), round(mark.radius, 3), round(mark.start_deg, 3), round(mark.end_deg, 3))


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
    yield Text((u - 1.5, v + into * 4.75 - SMALL / 2), "hinge pin", SMALL, "right", 0.0, Meaning.WORD, board.id)


def _pocket_words(template: Template, region: Bounds, spots: Spots) -> Iterator[Mark]:
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


def _lying_words(template: Template, region: Bounds, spots: Spots) -> Iterator[Mark]:
    """Label, which hand, which face is up, which edge is the front, the grain."""
    board = template.board
    x0, y0, x1, y1 = template.box
    far = board.reference_edge == "far"
    side = board.member == "side"
    back_v, front_v = (y1, y0) if far else (y0, y1)
    front, back = ("front edge", "back edge, reference") if side else ("other edge", "reference edge")
    middle = ((region[0] + region[2]) / 2, (region[1] + region[3]) / 2)
    up = "inside face up" if side else "reference face up"
    yield from _face_mark(spots, middle[0], back_v, math.copysign(1.0, front_v - back_v), region, board)
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
        spot = spots.find(width, below + above, at, _CLEAR, board.shape.outline)
        if spot is not None and math.dist(spot, at) < reach:
            text = Text((spot[0], spot[1] - (above - below) / 2), words, height, "middle", 0.0, Meaning.WORD, board.id)
            spots.add((text,))
            yield text
    yield from _grain(spots, middle, board)


def _face_mark(
    spots: Spots, x: float, edge: float, into: float, region: Bounds, board: Board
) -> Iterator[Mark]:
    """The face mark: a loop whose tail runs to the reference edge (common practice)."""
    y = edge + into * 16.0
    for shift in (30.0, -30.0, 45.0, -45.0, 60.0, 15.0):
        if region[1] <= edge <= region[3] and spots.free((x + shift, y), 8.0, 8.0, 1.0):
            made = (
                ArcMark((x + shift, y), 3.0, 0.0, 360.0, Meaning.WORD, board.id),
                Line((x + shift - 3.0, y), (x + shift + 1.5, edge), Meaning.WORD, board.id),
            )
            spots.add(made)
            yield from made
            return


def _grain(spots: Spots, near: Point, board: Board) -> Iterator[Mark]:
    spot = spots.find(44.0, 8.0, (near[0], near[1] + 14.0), _CLEAR, board.shape.outline)
    if spot is None:
        return
    x, y = spot[0], spot[1] - 2.5
    yield Line((x - 20.0, y), (x + 20.0, y), Meaning.WORD, board.id)
    yield Arrow((x - 20.0, y), 180.0, 3.0, 1.0, Meaning.WORD, board.id)
    yield Arrow((x + 20.0, y), 0.0, 3.0, 1.0, Meaning.WORD, board.id)
    yield Text((x, y + 1.4), "grain", MIDDLE, "middle", 0.0, Meaning.WORD, board.id)
