"""A printer's correction on templates, measured in the PDF's own operands."""

from __future__ import annotations

import math
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import read_piece
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.printer import Correction, correction_of
from shopdraw.sheet.printer_test import printer_test_sheets
from shopdraw.sheet.template import Template, template_of, true_size_sheet
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.write.pdf import write_pdf
from tests.sheet.page_reader import Page, read_pages

DESK = FilePath(__file__).parents[2] / "sample_projects" / "chart-room-desk.piece"
FED, ACROSS = 199.2 / 200, 200.1 / 200
"""What becomes of a mm in a printer whose lines of 200 mm measure 199.2 along the feed and 200.1 across it."""
OFFICE = Correction("office", 200 / 199.2, 200 / 200.1)


@pytest.fixture(scope="module")
def template() -> Template:
    piece = read_piece(DESK)
    assembly, manner = build(piece.design), manner_of(piece.design)
    return template_of(assembly.board("side.left"), assembly, manner.writing, "desk", inch=manner.inch)


def pages(sheets: tuple[Sheet, ...], folder: FilePath) -> tuple[Page, ...]:
    path = folder / "t.pdf"
    write_pdf(SheetSet("t", "", "", "iso", sheets, true_size=True), path)
    return tuple(read_pages(path))


def lengths(page: Page, *, upright: bool) -> list[float]:
    """Of level or upright lines, as that printer prints them: the feed runs along a page's long side."""
    lying = page.width > page.height
    factor = FED if upright != lying else ACROSS
    same = 0 if upright else 1
    return [
        math.dist(s.start, s.end) * factor for s in page.strokes if abs(s.start[same] - s.end[same]) < 0.002
    ]


def test_case_24_check_lines_come_out_true_of_that_printer(template: Template, tmp_path: FilePath) -> None:
    for page in pages(tiled_sheets(template, paper("A4"), OFFICE), tmp_path):
        for upright in (False, True):
            assert any(length == pytest.approx(100.0, abs=0.005) for length in lengths(page, upright=upright))
        words = " ".join(" ".join(word.words for word in page.words).split())
        assert "printer office" in words
        assert "1,00402" in words or "1.00402" in words
        assert "0,99950" in words or "0.99950" in words


def test_a_page_for_a_roll_grows_by_what_its_lines_grow(template: Template, tmp_path: FilePath) -> None:
    (plain,) = pages((true_size_sheet(template),), tmp_path)
    (page,) = pages((true_size_sheet(template, correction=OFFICE),), tmp_path)
    assert page.width == pytest.approx(plain.width * 200 / 199.2, abs=0.01)
    assert page.height == pytest.approx(plain.height * 200 / 200.1, abs=0.01)
    back = template.board.length
    assert any(length == pytest.approx(back, abs=0.01) for length in lengths(page, upright=False))


def test_tiles_keep_the_paper_and_their_lines_its_edge(template: Template, tmp_path: FilePath) -> None:
    worst = Correction("worst", 1.02, 1.02)
    for page in pages(tiled_sheets(template, paper("A4"), worst), tmp_path):
        assert sorted((page.width, page.height)) == pytest.approx([210.0, 297.0], abs=0.01)
        for x, y in (end for stroke in page.strokes for end in (stroke.start, stroke.end)):
            assert 6.0 < x < page.width - 6.0
            assert 6.0 < y < page.height - 6.0


def test_without_a_correction_nothing_is_said_of_one(template: Template, tmp_path: FilePath) -> None:
    for page in pages(tiled_sheets(template, paper("A4")), tmp_path):
        assert not any("orrected" in word.words for word in page.words)


def test_the_test_page_has_lines_of_200_both_ways(tmp_path: FilePath) -> None:
    for size in (paper("A4"), paper("Letter"), None):
        (page,) = pages(printer_test_sheets(size, None), tmp_path)
        for same in (0, 1):
            drawn = [math.dist(s.start, s.end) for s in page.strokes if abs(s.start[same] - s.end[same]) < 0.002]
            assert max(drawn) == pytest.approx(200.0, abs=0.002)


def test_the_second_test_page_comes_out_true(tmp_path: FilePath) -> None:
    for size in (paper("A4"), None):
        _, page = pages(printer_test_sheets(size, OFFICE), tmp_path)
        for upright in (False, True):
            assert max(lengths(page, upright=upright)) == pytest.approx(200.0, abs=0.005)


def test_the_habit_chooses_among_printers() -> None:
    two = '[printer.a]\nfeed = "199 mm"\n[printer.b]\nacross = "201 mm"\n'
    assert correction_of(parse_shop("format = 1\n").shop) is None
    assert correction_of(parse_shop(two).shop) is None
    chosen = correction_of(parse_shop(two + '[habit]\nprinter = "b"\n').shop)
    assert chosen == Correction("b", 1.0, 200 / 201)
    only = correction_of(parse_shop('[printer.a]\nfeed = "199 mm"\n').shop)
    assert only == Correction("a", 200 / 199, 1.0)


def test_a_printer_that_is_not_there_is_told() -> None:
    with pytest.raises(PieceError) as told:
        parse_shop('[printer.a]\nfeed = "199 mm"\n[habit]\nprinter = "c"\n', "shop.toml")
    (line,) = told.value.lines()
    assert "habit" in line
    assert '"c"' in line
