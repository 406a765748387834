"""Templates at full size, read back from their PDFs."""

from __future__ import annotations

import math
import subprocess
from collections.abc import Sequence
from functools import lru_cache
from pathlib import Path as FilePath

import numpy as np
import pytest
from PIL import Image
from pypdf import PdfReader

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.template import Template, template_of, true_size_sheet
from shopdraw.sheet.tile import MARGIN, OVERLAP, grid_for, seam_crosses, tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.write.pdf import write_pdf
from tests.sheet.page_reader import read_pages

SAMPLES = FilePath(__file__).parents[2] / "sample_projects"
NAMES = ("chart-room-desk", "harbour-office-desk", "pilot-station-desk")
POINT = 25.4 / 72
"""ISO 32000-1, 8.3.2.3."""


@lru_cache
def template(name: str, board: str = "side.left") -> Template:
    piece = read_piece(SAMPLES / f"{name}.piece")
    assembly, manner = build(piece.design), manner_of(piece.design)
    return template_of(assembly.board(board), assembly, manner.writing, piece.design.piece.title, inch=manner.inch)


def written(sheets: Sequence[Sheet], folder: FilePath) -> FilePath:
    path = folder / "template.pdf"
    write_pdf(SheetSet("template", "", "", "iso", tuple(sheets), true_size=True), path)
    return path


@pytest.mark.parametrize(("name", "columns", "rows"), [("Letter", 5, 2), ("A4", 3, 3)])
def test_case_23_pages_of_a_panel(name: str, columns: int, rows: int) -> None:
    """457.2 × 800.1 with margins of 10 and an overlap of 15: Letter 10 pages, A4 9."""
    grid = grid_for(800.1, 457.2, paper(name))
    size = paper(name)
    counts = []
    for width, height in (sorted((size.width_mm, size.height_mm)), sorted((size.width_mm, size.height_mm))[::-1]):
        counts.append(math.ceil((800.1 - 15) / (width - 35)) * math.ceil((457.2 - 15) / (height - 35)))
    assert grid.pages == min(counts) == columns * rows
    assert {grid.columns, grid.rows} == {columns, rows}


def test_the_assembled_sheet_covers_the_part() -> None:
    for name in ("A4", "Letter", "A3", "Tabloid"):
        grid = grid_for(981.0, 490.0, paper(name), (0.0, 0.0))
        x0, y0, x1, y1 = grid.box
        assert x0 <= 1e-9
        assert y0 <= 1e-9
        assert x1 >= 981.0 - 1e-9
        assert y1 >= 490.0 - 1e-9


@pytest.mark.parametrize("name", NAMES)
def test_one_page_is_the_part_with_its_margins_and_its_outline_is_true(name: str, tmp_path: FilePath) -> None:
    one = template(name)
    sheet = true_size_sheet(one)
    path = written([sheet], tmp_path)
    reader = PdfReader(path)
    box = reader.pages[0].mediabox
    assert float(box.width) * POINT == pytest.approx(one.board.length + 30.0, abs=0.1)
    assert max(float(box.width), float(box.height)) <= 14400
    assert reader.trailer["/Root"]["/ViewerPreferences"]["/PrintScaling"] == "/None"
    (page,) = read_pages(path)
    dx, dy = sheet.placed[0].at
    drawn = [((s.start[0] - dx, s.start[1] - dy), (s.end[0] - dx, s.end[1] - dy), s.width) for s in page.strokes]
    for a, b in one.board.shape.outline.pairs():
        found = [
            width
            for p, q, width in drawn
            if (_near(p, (a.x, a.y)) and _near(q, (b.x, b.y))) or (_near(q, (a.x, a.y)) and _near(p, (b.x, b.y)))
        ]
        assert found, (
            f"the outline from ({a.x:.2f}, {a.y:.2f}) to ({b.x:.2f}, {b.y:.2f}) isn't on the page in true size"
        )
        assert found[0] == pytest.approx(0.25, abs=0.005)


def _near(p: tuple[float, float], q: tuple[float, float]) -> bool:
    return math.dist(p, q) < 0.01


@pytest.mark.parametrize(
    ("name", "size"), [("chart-room-desk", "A4"), ("harbour-office-desk", "Letter"), ("pilot-station-desk", "A4")]
)
@pytest.mark.parametrize("side", ["side.left", "side.right"])
def test_case_03_every_page_says_how_to_check_it(name: str, size: str, side: str, tmp_path: FilePath) -> None:
    one = template(name, side)
    sheets = tiled_sheets(one, paper(size))
    path = written(sheets, tmp_path)
    reader = PdfReader(path)
    wanted = sorted((paper(size).width_mm, paper(size).height_mm))
    length = "4 in" if one.inch else "100 mm"
    for n, page in enumerate(reader.pages):
        box = page.mediabox
        assert sorted((float(box.width) * POINT, float(box.height) * POINT)) == pytest.approx(wanted, abs=0.1)
        words = " ".join(page.extract_text().split())
        assert words.count(f"check {length}") == 2, f"page {n + 1} has no check line both ways"
        for said in ("before you cut", "0.5 mm in 200", "is no good", size, "centre of the line", "100 %"):
            assert said in words, f"page {n + 1} doesn't say {said!r}"
        assert one.board.label in words
        assert " of " in words
    assert reader.trailer["/Root"]["/ViewerPreferences"]["/PrintScaling"] == "/None"


@pytest.mark.parametrize(("name", "size"), [("chart-room-desk", "A4"), ("harbour-office-desk", "Letter")])
def test_check_lines_measure_true_both_ways(name: str, size: str) -> None:
    one = template(name)
    true = 101.6 if one.inch else 100.0
    for sheet in tiled_sheets(one, paper(size)):
        marks = [m for m in sheet.placed[0].drawing.marks if isinstance(m, Line) and m.meaning is Meaning.SIZE]
        level = [
            m for m in marks if abs(m.start[1] - m.end[1]) < 1e-9 and math.dist(m.start, m.end) == pytest.approx(true)
        ]
        upright = [
            m for m in marks if abs(m.start[0] - m.end[0]) < 1e-9 and math.dist(m.start, m.end) == pytest.approx(true)
        ]
        assert level, sheet.title
        assert upright, sheet.title


def test_a_check_line_of_100_mm_in_pixels(tmp_path: FilePath) -> None:
    """At 300 dpi 100 mm are 1181.1 pixels (300 / 25.4 a mm); measured on the picture that poppler makes."""
    sheets = tiled_sheets(template("chart-room-desk"), paper("A4"))[:1]
    path = written(sheets, tmp_path)
    subprocess.run(["pdftoppm", "-r", "300", "-gray", "-png", str(path), str(tmp_path / "page")], check=True)
    (picture,) = tmp_path.glob("page*.png")
    pixels = np.asarray(Image.open(picture).convert("L")) < 128
    dot = 300 / 25.4
    drawing = sheets[0].placed[0]
    for upright in (False, True):
        line = next(
            m
            for m in drawing.drawing.marks
            if isinstance(m, Line)
            and m.meaning is Meaning.SIZE
            and math.dist(m.start, m.end) == pytest.approx(100.0)
            and (abs(m.start[0] - m.end[0]) < 1e-9) is upright
        )
        x, y = ((line.start[0] + line.end[0]) / 2 + drawing.at[0], (line.start[1] + line.end[1]) / 2 + drawing.at[1])
        column, row = round(x * dot), round(pixels.shape[0] - y * dot)
        # Beside the line, half a tick's length away, only the two ticks are black.
        off = round(1.8 * dot)
        strip = pixels[:, column + off] if upright else pixels[row + off, :]
        middle = row if upright else column
        near = np.flatnonzero(strip[max(0, middle - 640) : middle + 640]) + max(0, middle - 640)
        low = near[near < middle - 500]
        high = near[near > middle + 500]
        first, last = _runs(low)[-1], _runs(high)[0]
        assert (last - first) == pytest.approx(100 * dot, abs=1.0)


def _runs(places: np.ndarray) -> list[float]:
    """Middles of unbroken runs of pixels."""
    groups = np.split(places, np.flatnonzero(np.diff(places) > 1) + 1)
    return [float(group.mean()) for group in groups if len(group)]


def test_crosses_stand_at_the_same_place_of_the_piece_on_both_pages(tmp_path: FilePath) -> None:
    one = template("harbour-office-desk")
    size = paper("Letter")
    x0, y0, x1, y1 = one.box
    grid = grid_for(x1 - x0, y1 - y0, size, (x0, y0))
    sheets = tiled_sheets(one, size)
    pages = read_pages(written(sheets, tmp_path))
    for cross in seam_crosses(grid):
        on = []
        for n, (sheet, page) in enumerate(zip(sheets, pages, strict=True)):
            dx, dy = sheet.placed[0].at
            at = (cross.at[0] + dx, cross.at[1] + dy)
            arms = [
                s
                for s in page.strokes
                if _near(((s.start[0] + s.end[0]) / 2, (s.start[1] + s.end[1]) / 2), at)
                and math.dist(s.start, s.end) == pytest.approx(10.0, abs=0.01)
            ]
            named = any(w.words == cross.name and math.dist(w.middle, at) < 12.0 for w in page.words)
            if len(arms) == 2:
                on.append((n, named))
        assert len(on) == 2, f"cross {cross.name} stands on {len(on)} pages; it belongs on the two that share the strip"
        assert any(named for _, named in on), f"cross {cross.name} has no name on either page"


def test_every_shared_strip_is_drawn_on_both_neighbours() -> None:
    one = template("chart-room-desk")
    size = paper("A4")
    x0, y0, x1, y1 = one.box
    grid = grid_for(x1 - x0, y1 - y0, size, (x0, y0))
    sheets = {(n // grid.columns, n % grid.columns): sheet for n, sheet in enumerate(tiled_sheets(one, size))}
    for (row, column), sheet in sheets.items():
        for other in ((row, column + 1), (row + 1, column)):
            if other not in sheets:
                continue
            a, b = grid.tile(column, row), grid.tile(other[1], other[0])
            strip = (max(a[0], b[0]), max(a[1], b[1]), min(a[2], b[2]), min(a[3], b[3]))
            assert min(strip[2] - strip[0], strip[3] - strip[1]) == pytest.approx(OVERLAP)
            assert _inside(sheet, strip) == _inside(sheets[other], strip)


def _inside(sheet: Sheet, strip: tuple[float, float, float, float]) -> set[tuple[float, ...]]:
    """Template lines as far as they lie in a strip, cut by a way of its own: points every half mm."""
    found: set[tuple[float, ...]] = set()
    for mark in sheet.placed[0].drawing.marks:
        if not isinstance(mark, Line) or mark.meaning is not Meaning.TEMPLATE:
            continue
        (ax, ay), (bx, by) = mark.start, mark.end
        level, upright = abs(ay - by) < 1e-9, abs(ax - bx) < 1e-9
        if level and strip[1] <= ay <= strip[3] and max(ax, bx) > strip[0] and min(ax, bx) < strip[2]:
            found.add((0, round(ay, 4), round(max(min(ax, bx), strip[0]), 4), round(min(max(ax, bx), strip[2]), 4)))
        if upright and strip[0] <= ax <= strip[2] and max(ay, by) > strip[1] and min(ay, by) < strip[3]:
            found.add((1, round(ax, 4), round(max(min(ay, by), strip[1]), 4), round(min(max(ay, by), strip[3]), 4)))
    return found


def test_nothing_stands_in_the_margins(tmp_path: FilePath) -> None:
    sheets = tiled_sheets(template("chart-room-desk"), paper("A4"))
    for page in read_pages(written(sheets, tmp_path)):
        for stroke in page.strokes:
            for x, y in (stroke.start, stroke.end):
                assert MARGIN - 0.01 <= x <= page.width - MARGIN + 0.01
                assert MARGIN - 0.01 <= y <= page.height - MARGIN + 0.01
        for word in page.words:
            for x, y in word.corners:
                assert MARGIN <= x <= page.width - MARGIN
                assert MARGIN <= y <= page.height - MARGIN


def test_the_overall_check_line_spans_the_joined_sheet() -> None:
    one = template("chart-room-desk")
    sheets = tiled_sheets(one, paper("A4"))
    texts = [m for s in sheets for m in s.placed[0].drawing.marks if getattr(m, "words", "") in ("A", "B")]
    said = {m.words for s in sheets for m in s.placed[0].drawing.marks if "A to B" in getattr(m, "words", "")}
    assert {t.words for t in texts} == {"A", "B"}
    assert said == {"Joined sheet, A to B: 900.0 mm"}
    ends = sorted(
        {
            (round(x, 3), round(y, 3))
            for s in sheets
            for m in s.placed[0].drawing.marks
            if isinstance(m, Line) and m.meaning is Meaning.MOVING
            for x, y in (m.start, m.end)
        }
    )
    assert math.dist(ends[0], ends[-1]) == pytest.approx(900.0)


def test_case_66_lines_have_a_width_and_say_where_to_cut(tmp_path: FilePath) -> None:
    for sheets in (
        [true_size_sheet(template("pilot-station-desk"))],
        tiled_sheets(template("pilot-station-desk"), paper("A4")),
    ):
        for page in read_pages(written(sheets, tmp_path)):
            assert all(s.width >= 0.15 for s in page.strokes if not s.filled)
            assert any(
                "cut to the centre of the line" in " ".join((w.words, v.words)) for w in page.words for v in page.words
            )


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("board", ["side.left", "top", "plinth.front"])
def test_case_43_a_page_for_a_roll_stays_off_its_edges_and_is_checked_at_both_ends(
    name: str, board: str, tmp_path: FilePath
) -> None:
    """A roll of 36 in is 914.4 wide; less 5 a side that its plotter can't print that is 904.4. Fitted, 800.1 printed
    791.4; so the page says that it isn't to be fitted, and repeats its check lines at both ends."""
    one = template(name, board)
    path = written([true_size_sheet(one)], tmp_path)
    box = PdfReader(path).pages[0].mediabox
    width, height = float(box.width) * POINT, float(box.height) * POINT
    assert min(width, height) <= 914.4 - 2 * 5.0 - 10.0
    (page,) = read_pages(path)
    said = " ".join(word.words for word in page.words)
    for words in ("Print at 100 %, do not fit", "roll of 36 in"):
        assert words in said
    true = 101.6 if one.inch else 100.0
    lines = [s for s in page.strokes if math.dist(s.start, s.end) == pytest.approx(true, abs=0.02) and not s.dashes]
    for level in (True, False):
        held = [s for s in lines if (abs(s.start[1] - s.end[1]) < 0.01) is level]
        middles = [(s.start[0] + s.end[0]) / 2 for s in held]
        assert min(middles, default=width) < 0.4 * width, f"no check line at the left end, level: {level}"
        assert max(middles, default=0.0) > 0.6 * width, f"no check line at the right end, level: {level}"


def test_left_and_right_templates_are_mirror_images() -> None:
    left, right = template("chart-room-desk"), template("chart-room-desk", "side.right")
    width = left.board.width

    def plain(one: Template, turn: bool) -> set[tuple[float, ...]]:
        found = set()
        for mark in one.lines:
            if isinstance(mark, Line) and mark.meaning is Meaning.TEMPLATE:
                ends = sorted(
                    (round(x, 3), round(width - y if turn else y, 3) + 0.0) for x, y in (mark.start, mark.end)
                )
                found.add((*ends[0], *ends[1]))
        return found

    assert plain(left, False) == plain(right, True)
    assert plain(left, False) != plain(right, False)


def test_any_board_has_a_template() -> None:
    for board in ("drawer.1.side-left", "frame.1.front", "lid", "plinth.front"):
        one = template("pilot-station-desk", board)
        assert true_size_sheet(one).placed
        for sheet in tiled_sheets(one, paper("A4")):
            assert sheet.placed[0].drawing.marks
