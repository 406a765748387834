"""The test page of a printer: lines of 200 mm along the feed and across it, and where to write what they measure."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.drawing.line_style import TEMPLATE_MM
from shopdraw.drawing.mark import Arrow, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet
from shopdraw.shape.path import Point
from shopdraw.sheet.box import words_size
from shopdraw.sheet.printer import FEED, Correction
from shopdraw.sheet.wrap import wrapped
from shopdraw.trade.paper import PaperSize

LINE = 200.0
"""What the shop file takes a measured line to be where it says nothing else."""
INNER = 150.0
"""Ticks for printers that can't reach the ends."""
TICK, INNER_TICK = 5.0, 3.0
WORDS, PITCH = 3.0, 5.2
FRAME = 4.0
QUARTER = 78.0
"""Width of the words in a quarter of the page."""
ROLL = (420.0, 297.0)
"""Page for a roll, mm."""


def printer_test_sheets(paper: PaperSize | None, correction: Correction | None) -> tuple[Sheet, ...]:
    """The page as it prints without any correction, and again with the one in hand, which is to come out true.

    Args:
        paper: that templates are tiled on; None for a roll.
        correction: in hand, if any.
    """
    if paper is None:
        size = Paper("true size", *ROLL, _frame(*ROLL), "small")
    else:
        width, height = sorted((paper.width_mm, paper.height_mm))
        size = Paper(paper.name, width, height, _frame(width, height), "small")
    plain = _sheet(size, "1", _to_measure(), (1.0, 1.0))
    if correction is None:
        return (plain,)
    words = (
        correction.words(),
        "This page carries it: both lines are to measure 200 mm now, within 0.2 mm.",
    )
    return plain, _sheet(size, "2", words, correction.on(size.width, size.height))


def _frame(width: float, height: float) -> tuple[float, float, float, float]:
    return FRAME, FRAME, width - FRAME, height - FRAME


def _to_measure() -> tuple[str, ...]:
    return (
        "Print at 100 %, do not fit to the paper. This page carries no correction.",
        f"F: {FEED}; A: across it. Measure both between the middles of their end ticks, to 0.1 mm.",
        f"An end that isn't printed: measure between the inner ticks, and write line = {INNER:.0f} too.",
        "Then, in the shop file, with your figures:",
        "[printer.NAME]",
        'feed = "F mm"',
        'across = "A mm"',
        "[habit]",
        'printer = "NAME"',
        "More than 2 % off looks like fitting is on, and is refused.",
    )


def _sheet(size: Paper, number: str, words: tuple[str, ...], stretch: Point) -> Sheet:
    marks = tuple(_marks(size, words))
    title = "Printer test page" if number == "1" else "Printer test page, corrected"
    drawing = Drawing(f"template.printer-test.{number}", "", marks)
    placed = (Placed(drawing, 1.0, (size.width / 2, size.height / 2)),)
    return Sheet(f"template-printer-test-{number}", number, title, size, placed, (), stretch)


def _marks(size: Paper, words: tuple[str, ...]) -> Iterator[Mark]:
    """Everything on the page, from its middle."""
    lying = size.width > size.height
    for upright in (False, True):
        along = upright != lying
        yield from _line(upright)
        name = "F, along the feed: 200 mm" if along else "A, across: 200 mm"
        at = (-1.5, 38.0) if upright else (-38.0, 1.5)
        yield Text(at, name, WORDS, "middle", 90.0 if upright else 0.0)
    y = -10.0
    for line in words:
        for part in wrapped(line, WORDS, QUARTER):
            yield Text((8.0, y), part, WORDS)
            y -= PITCH
    yield from _feed(lying)


def _line(upright: bool) -> Iterator[Mark]:
    def at(along: float, off: float) -> Point:
        return (off, along) if upright else (along, off)

    yield Line(at(-LINE / 2, 0.0), at(LINE / 2, 0.0), Meaning.SIZE, "", TEMPLATE_MM)
    for length, tick in ((LINE, TICK), (INNER, INNER_TICK)):
        for end in (-length / 2, length / 2):
            yield Line(at(end, -tick), at(end, tick), Meaning.SIZE, "", TEMPLATE_MM)


def _feed(lying: bool) -> Iterator[Mark]:
    """An arrow each way along the feed, named, in the upper left quarter."""
    x, y, half = -45.0, 45.0, 20.0
    ends = ((x - half, y), (x + half, y)) if lying else ((x, y - half), (x, y + half))
    yield Line(*ends, Meaning.WORD)
    for end, angle in zip(ends, (180.0, 0.0) if lying else (270.0, 90.0), strict=True):
        yield Arrow(end, angle, 3.0, 1.0, Meaning.WORD)
    _, below, above = words_size("feed", WORDS)
    place = (x, y + 1.5) if lying else (x - 1.5, y - (above - below) / 2)
    yield Text(place, "feed", WORDS, "middle" if lying else "right")
