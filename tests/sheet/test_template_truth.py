"""Templates joined from their tiles, out of the PDF alone: every corner of a side lies where `facts` has it.

Nothing is taken from the layout: pages are joined by their crosses as a person would do it, then the sheet is laid on
the board's outline.
"""

from __future__ import annotations

import json
import math
import re
import tempfile
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.drawing.sheet import SheetSet
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.template import template_of
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.write.facts import facts
from shopdraw.write.pdf import write_pdf
from tests.sheet.page_reader import Page, Point, Stroke, read_pages

SAMPLES = FilePath(__file__).parents[2] / "sample_projects"
DESKS = ("chart-room-desk", "harbour-office-desk", "pilot-station-desk", "harbour-master-desk")
PAPERS = ("A4", "Letter", "A3", "Tabloid")
ARM = 10.0
"""Length of a cross's arms."""
CORNER_MM, CROSS_MM = 0.1, 0.05
"""How far a corner of the joined outline, and a cross on the next page, may lie from where they belong."""


@dataclass(frozen=True)
class Cross:
    """A registration mark as a page has it; named where its name stands beside it."""

    at: Point
    name: str


def crosses(page: Page) -> list[Cross]:
    """Where a level and an upright stroke of a cross's length share their middles."""
    arms = [s for s in page.strokes if abs(math.dist(s.start, s.end) - ARM) < 0.02]
    level = [_middle(s) for s in arms if abs(s.start[1] - s.end[1]) < 0.01]
    upright = [_middle(s) for s in arms if abs(s.start[0] - s.end[0]) < 0.01]
    found = []
    for at in level:
        if any(math.dist(at, other) < 0.02 for other in upright):
            names = [w for w in page.words if math.dist(w.middle, at) < 9.0 and re.fullmatch(r"\d+|[AB]", w.words)]
            nearest = min(names, key=lambda w: math.dist(w.middle, at), default=None)
            found.append(Cross(at, nearest.words if nearest is not None else ""))
    return found


def row_and_column(page: Page) -> tuple[int, int]:
    """As the page's own words say it."""
    said = " ".join(word.words for word in page.words)
    found = re.search(r"row (\d+) of \d+, column (\d+) of \d+", said)
    assert found, f"a page doesn't say its row and column: {said}"
    return int(found[1]), int(found[2])


def joined(pages: tuple[Page, ...]) -> tuple[list[Stroke], list[float]]:
    """The pages laid on each other cross on cross: all strokes in one plane, and how far the second crosses miss."""
    places = {row_and_column(page): page for page in pages}
    assert len(places) == len(pages), "two pages say the same row and column"
    shifts: dict[tuple[int, int], Point] = {min(places): (0.0, 0.0)}
    misses: list[float] = []
    waiting = [min(places)]
    while waiting:
        here = waiting.pop()
        row, column = here
        for there in ((row, column + 1), (row + 1, column), (row, column - 1), (row - 1, column)):
            if there in places:
                (dx, dy), miss = _shift(places[here], places[there], (there[1] - column, row - there[0]))
                misses.append(miss)
                at = (shifts[here][0] + dx, shifts[here][1] + dy)
                if there not in shifts:
                    shifts[there] = at
                    waiting.append(there)
                else:
                    misses.append(math.dist(shifts[there], at))
    strokes = [
        replace(s, start=_moved(s.start, shifts[place]), end=_moved(s.end, shifts[place]))
        for place, page in places.items()
        for s in page.strokes
    ]
    return strokes, misses


def _shift(page: Page, other: Page, way: tuple[int, int]) -> tuple[Point, float]:
    """What lays the next page on a page: one pair of like-named crosses on each other; how far the others miss."""
    pairs = []
    for one in crosses(page):
        for two in crosses(other):
            same = one.name == two.name or not (one.name and two.name)
            dx, dy = one.at[0] - two.at[0], one.at[1] - two.at[1]
            across, along = (dx, dy) if way[0] else (dy, dx)
            # The next page lies beside this one, and most of a page further on.
            least = 0.5 * (page.width if way[0] else page.height)
            if same and one.name not in "AB"[: 2 * bool(one.name)] and abs(along) < 1.0 and across * sum(way) > least:
                pairs.append((one, two, (dx, dy)))
    named = [pair for pair in pairs if pair[0].name and pair[0].name == pair[1].name]
    assert len(pairs) >= 2, f"pages {row_and_column(page)} and {row_and_column(other)} share {len(pairs)} crosses"
    assert named, f"pages {row_and_column(page)} and {row_and_column(other)} share no cross that is named on both"
    base = named[0][2]
    return base, max(math.dist(base, shift) for _, _, shift in pairs)


def _moved(point: Point, by: Point) -> Point:
    return point[0] + by[0], point[1] + by[1]


def _middle(stroke: Stroke) -> Point:
    return (stroke.start[0] + stroke.end[0]) / 2, (stroke.start[1] + stroke.end[1]) / 2


def laid_on(strokes: list[Stroke], corners: list[Point]) -> tuple[Point, list[float]]:
    """The shift that lays a joined sheet on an outline, and how far each corner lies from the line ends there."""
    ends = [end for s in strokes if not s.dashes and not s.filled for end in (s.start, s.end)]
    first = corners[0]
    best: tuple[Point, list[float]] = ((0.0, 0.0), [math.inf] * len(corners))
    for end in dict.fromkeys((round(x, 3), round(y, 3)) for x, y in ends):
        by = (end[0] - first[0], end[1] - first[1])
        off = []
        for corner in corners:
            at = _moved(corner, by)
            off.append(min(math.dist(at, other) for other in ends))
            if off[-1] > 2.0:
                break
        if len(off) == len(corners) and max(off) < max(best[1]):
            best = (by, off)
    return best


def bare_runs(strokes: list[Stroke], a: Point, b: Point) -> float:
    """How much of the line from a to b no continuous stroke lies along, mm."""
    long = math.dist(a, b)
    ux, uy = (b[0] - a[0]) / long, (b[1] - a[1]) / long
    covered = []
    for s in strokes:
        if s.dashes or s.filled:
            continue
        offs = [abs((p[1] - a[1]) * ux - (p[0] - a[0]) * uy) for p in (s.start, s.end)]
        if max(offs) < CORNER_MM:
            places = sorted((p[0] - a[0]) * ux + (p[1] - a[1]) * uy for p in (s.start, s.end))
            covered.append((max(0.0, places[0]), min(long, places[1])))
    reached, bare = 0.0, 0.0
    for low, high in sorted(covered):
        if high > reached:
            bare += max(0.0, low - reached)
            reached = high
    return bare + max(0.0, long - reached)


@lru_cache(maxsize=32)
def tiles(name: str, size: str) -> tuple[tuple[Page, ...], list[list[float]]]:
    """Pages as read from the PDF, and the left side's outline as `facts` has it."""
    design = read_piece(SAMPLES / f"{name}.piece").design
    assembly, manner = build(design), manner_of(design)
    told = json.loads(json.dumps(facts(design, assembly, ())))
    (board,) = [one for one in told["boards"] if one["id"] == "side.left"]
    made = template_of(assembly.board("side.left"), assembly, manner.writing, design.piece.title, inch=manner.inch)
    sheets = tiled_sheets(made, paper(size))
    path = _folder() / f"{name}-{size}.pdf"
    write_pdf(SheetSet("template", "", "", "iso", sheets, true_size=True), path)
    return read_pages(path), board["outline_mm"]


@lru_cache(maxsize=1)
def _folder() -> FilePath:
    return FilePath(tempfile.mkdtemp())


@pytest.mark.parametrize("size", PAPERS)
@pytest.mark.parametrize("name", DESKS)
def test_case_23_the_joined_outline_is_the_side_to_a_tenth_at_every_corner(name: str, size: str) -> None:
    pages, outline = tiles(name, size)
    strokes, misses = joined(pages)
    assert len(misses) >= len(pages) - 1
    assert max(misses, default=0.0) <= CROSS_MM
    corners = [(x, y) for x, y, _ in outline]
    assert len(corners) >= 5, "a slanted side has five corners or more"
    by, off = laid_on(strokes, corners)
    assert max(off) <= CORNER_MM, off
    at = [_moved(corner, by) for corner in corners]
    for a, b, bulge in zip(at, at[1:] + at[:1], [bulge for _, _, bulge in outline], strict=True):
        assert bulge == 0.0
        assert bare_runs(strokes, a, b) <= 2 * CORNER_MM, f"the line from {a} to {b} isn't whole"


@pytest.mark.parametrize("spoil", ["page", "corner", "gap"])
def test_the_joining_notices_what_is_off(spoil: str) -> None:
    pages, outline = tiles("chart-room-desk", "A4")
    corners = [(x, y) for x, y, _ in outline]
    if spoil == "page":
        moved = [replace(s, start=_moved(s.start, (0.2, 0.0)), end=_moved(s.end, (0.2, 0.0))) for s in pages[1].strokes]
        kept = [s for s in pages[1].strokes if abs(math.dist(s.start, s.end) - ARM) < 0.02]
        twisted = replace(pages[1], strokes=(*kept[:2], *(s for s in moved if s not in kept)))
        _, misses = joined((pages[0], twisted, *pages[2:]))
        assert max(misses) > CROSS_MM
    strokes, _ = joined(pages)
    if spoil == "corner":
        corners[2] = (corners[2][0] + 0.3, corners[2][1])
        assert max(laid_on(strokes, corners)[1]) > CORNER_MM
    if spoil == "gap":
        by, _ = laid_on(strokes, corners)
        a, b = (_moved(corner, by) for corner in corners[:2])
        bare = [s for s in strokes if bare_runs([s], a, b) > math.dist(a, b) - 1.0]
        assert bare_runs(strokes, a, b) <= 2 * CORNER_MM < bare_runs(bare, a, b)
