"""Full-size templates: a board's outline and cuts at true size, with the words that tell which way it lies.

A template lies in the board's own coordinates: u to the right, v up, the reference face to the reader. Its lines are
cut to their middle. Any board will do.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import Mark, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet
from shopdraw.shape.path import Point, bounds
from shopdraw.sheet.box import Bounds, words_size
from shopdraw.sheet.check_line import LINE_TOLERANCE, CheckLine, check_line_marks
from shopdraw.sheet.clip import clipped
from shopdraw.sheet.cut_note import cut_notes
from shopdraw.sheet.cut_size import cut_sizes
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.free_spot import Spots
from shopdraw.sheet.printer import Correction
from shopdraw.sheet.template_line import template_lines
from shopdraw.sheet.template_word import MIDDLE, Template, lying_words, pocket_words
from shopdraw.sheet.wrap import wrapped
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face

SMALL = 2.5
MARGIN = 15.0
STRIPS = (58.0, 90.0, 130.0)
"""Paper below the part on a page of true size, for words and check lines: more where a part is too small for them."""
LEAST_PAGE = 290.0
"""A page of true size is at least that long, so that words and check lines have room beside a small part."""
LONGEST = 14400 * 25.4 / 72
"""Largest side of a PDF page without a unit of its own. Source: ISO 32000-1, annex C."""
CUT_TO = "cut to the centre of the line"
_BLOCKS = (
    (5.0, MIDDLE, 200.0),
    (MIDDLE, SMALL, 200.0),
    (5.0, MIDDLE, 80.0),
    (MIDDLE, SMALL, 80.0),
    (MIDDLE, SMALL, 55.0),
    (SMALL, SMALL, 40.0),
)
"""Heights of the first line and of the others, and the width of the block of a page's words, as they are tried."""


@dataclass(frozen=True, slots=True)
class Roll:
    """A roll of paper, mm.

    Attributes:
        width: of the paper; 36 in by default.
        margin: of it stays blank, both edges together: what plotters can't print, and some slack (common practice).
    """

    width: float = 914.4
    margin: float = 24.4

    @property
    def prints(self) -> float:
        """The widest page that goes on it, mm."""
        return self.width - self.margin

    @property
    def words(self) -> str:
        """Its width as the trade says it: "36 in (914 mm)", "610 mm"."""
        inches = self.width / 25.4
        whole = abs(inches - round(inches)) < 0.01
        return f"{round(inches)} in ({self.width:.0f} mm)" if whole else f"{self.width:.0f} mm"


class TemplateTooLong(ValueError):
    """A board whose template is longer than a page may be; the message names it."""


def template_of(board: Board, assembly: Assembly, writing: Writing, piece: str, *, inch: bool) -> Template:
    """The template of a board.

    Args:
        board: any one.
        assembly: the piece, for fits and the hinge line.
        writing: how sizes are written.
        piece: title and revision, printed on each page.
        inch: check lines of 4 in instead of 100 mm.
    """
    lines = template_lines(board, assembly)
    sizes = cut_sizes(board, assembly, writing)
    labels: list[tuple[str, Bounds]] = []
    beside: list[tuple[str, Point]] = []
    u0, _, u1, _ = bounds(board.shape.outline)
    for note in cut_notes(board, sizes):
        for index in note.cuts if note.view in (Face.FACE, Face.BACK) else ():
            cut = board.shape.cuts[index]
            if cut.face in (Face.FACE, Face.BACK):
                words = note.words.split(" × ", 1)[1] if note.words[0].isdigit() else note.words
                behind = ", other face" if note.view is Face.BACK else ""
                labels.append((words + behind, bounds(cut.outline)))
        if note.view in (Face.FOOT, Face.HEAD) and not all(
            board.shape.cuts[i].depth > (u1 - u0) / 2 for i in note.cuts
        ):
            v = sum(target[1] for target in note.targets) / len(note.targets)
            u = u0 + 75.0 if note.view is Face.FOOT else u1 - 75.0
            beside.append((f"{note.words}, dashed there", (u, v)))
    title, sign = f"{board.label} {board.name}", writing.decimal_sign
    return Template(board, lines, tuple(labels), tuple(beside), title, piece, inch, sign)


def true_size_sheet(
    template: Template,
    number: str = "1",
    correction: Correction | None = None,
    roll: Roll | None = None,
    *,
    turn: bool = False,
) -> Sheet:
    """The template on one page: as large as the part with its margins and a strip for words.

    Args:
        template: whose.
        number: of the sheet.
        correction: for the printer that it goes to.
        roll: that it may be printed on; None for the usual one.
        turn: a page that is too wide for the roll is turned, its long side along the roll.

    Raises:
        TemplateTooLong: a side of the page is longer than a PDF's page may be.
        NoRoomOnTemplate: a page has no room for its words or check lines.
    """
    for strip in STRIPS[:-1]:
        try:
            return _page_with(template, number, strip, correction, roll or Roll(), turn=turn)
        except NoRoomOnTemplate:
            continue
    return _page_with(template, number, STRIPS[-1], correction, roll or Roll(), turn=turn)


def _page_with(
    template: Template, number: str, strip: float, correction: Correction | None, roll: Roll, *, turn: bool
) -> Sheet:
    x0, y0, x1, y1 = template.box
    spare = max(0.0, LEAST_PAGE - (x1 - x0) - 2 * MARGIN)
    x0, x1 = x0 - spare / 2, x1 + spare / 2
    width, height = x1 - x0 + 2 * MARGIN, y1 - y0 + 2 * MARGIN + strip
    across, up = correction.on(width, height) if correction is not None else (1.0, 1.0)
    at = (MARGIN - x0 + width * (across - 1.0) / 2, MARGIN + strip - y0 + height * (up - 1.0) / 2)
    width, height = width * across, height * up
    if max(width, height) > LONGEST:
        raise TemplateTooLong(
            f"{template.title}: its page would be {max(width, height):.0f} mm long; "
            f"at most {LONGEST:.0f} mm are possible"
        )
    region = (x0 - MARGIN + 8.0, y0 - strip - MARGIN + 8.0, x1 + MARGIN - 8.0, y1 + MARGIN - 8.0)
    page = f"page {width:.1f} × {height:.1f} mm"
    turned = turn and width > roll.prints >= height
    held = min(width, height) <= roll.prints
    where = f"; goes {'along' if turned else 'on'} a roll of {roll.words}" if held else ""
    lines = (
        f"{template.title}, full size, one page",
        f"{template.piece}; {page}{where}",
        "Print at 100 %, do not fit to the paper.",
        *check_words(template.inch),
        CUT_TO,
        *correction_words(template, correction),
    )
    foot = (x0 + x1) / 2, y0 - strip / 2 - 4.0
    marks = furnished(template, region, lines, foot, both_ends=True)
    drawing = Drawing(f"template.{template.board.label}", "", marks)
    paper = Paper("true size", width, height, (5.0, 5.0, width - 5.0, height - 5.0), "small")
    key = f"template-{template.board.label}"
    placed = (Placed(drawing, 1.0, at),)
    return Sheet(key, number, f"Template {template.title}", paper, placed, (), (across, up), turned)


def correction_words(template: Template, correction: Correction | None) -> tuple[str, ...]:
    """What a page says of the correction that it carries."""
    return () if correction is None else (correction.words(template.decimal_sign),)


def check_words(inch: bool) -> tuple[str, ...]:
    """What is said beside check lines."""
    length = "4 in" if inch else "100 mm"
    return (
        f"Measure the check lines ({length}, both ways) before you cut;",
        LINE_TOLERANCE,
    )


def furnished(
    template: Template,
    region: Bounds,
    lines: Sequence[str],
    words_near: Point,
    *,
    both_ends: bool = False,
    fixed: Sequence[Mark] = (),
    inner: Bounds | None = None,
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
    places = tuple(_check_places(inner or region, words_near, both_ends=both_ends))
    # Check lines are long and stiff, words make way; only where these then find no room they come first.
    made = _words_and_checks(template, region, lines, words_near, held, inner, places, words_first=False)
    if made is None:
        made = _words_and_checks(template, region, lines, words_near, held, inner, places, words_first=True)
    if made is None:
        raise NoRoomOnTemplate(f"{lines[0]}: no room for the page's words and check lines; a larger paper is needed")
    marks = [*held, *made.marks]
    for group in (pocket_words(template, region, made.spots), lying_words(template, region, made.spots)):
        marks += group
    return tuple(marks)


@dataclass(frozen=True, slots=True)
class _Furniture:
    """The words and the check lines of a page, and what they leave free."""

    marks: tuple[Mark, ...]
    spots: Spots


def _words_and_checks(
    template: Template,
    region: Bounds,
    lines: Sequence[str],
    words_near: Point,
    held: Sequence[Mark],
    inner: Bounds | None,
    places: Sequence[tuple[Point, bool]],
    *,
    words_first: bool,
) -> _Furniture | None:
    """Both in the order asked for; None where one of them finds no room."""
    spots = Spots(inner or region)
    spots.add(held)
    apart = Spots(inner or region)
    apart.add(held)
    apart.add_boxes(box for _, box in template.labels)
    made: list[Mark] = []

    def stands(marks: Sequence[Mark]) -> None:
        spots.add(marks)
        apart.add(marks)
        made.extend(marks)

    def words() -> bool:
        block = _block(apart, lines, words_near) or _block(spots, lines, words_near)
        stands(block)
        return bool(block)

    if words_first and not words():
        return None
    for near, upright in places:
        line = CheckLine(template.inch, upright)
        at = (
            apart.find(*line.room, near, 1.0)
            or spots.find(*line.room, near, 1.0)
            or _over_lines(line, near, region, [*held, *made])
        )
        if at is None:
            return None
        stands(tuple(check_line_marks(line, at)))
    if not words_first and not words():
        return None
    return _Furniture(tuple(made), spots)


def _check_places(box: Bounds, words_near: Point, *, both_ends: bool) -> Iterator[tuple[Point, bool]]:
    """Where check lines would stand best, and whether upright."""
    x0, y0, x1, y1 = box
    if not both_ends:
        # Near the edges, so that the middle is left to words.
        yield ((x0 + x1) / 2, y0 + 0.2 * (y1 - y0)), False
        yield (x0 + 0.92 * (x1 - x0), (y0 + y1) / 2), True
        return
    for share in (0.12, 0.88):
        for upright in (False, True):
            y = y0 + 0.3 * (y1 - y0) if upright else words_near[1]
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
