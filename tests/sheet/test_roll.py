"""Templates for a roll of a given width: pages no wider than it prints, turned where that helps, told where not."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader

from shopdraw.build import build
from shopdraw.drawing.sheet import SheetSet
from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.sheet.template import Roll
from shopdraw.sheet.template_set import roll_of, template_sheets
from shopdraw.shipped import sample_names, sample_path
from shopdraw.write.pdf import write_pdf

POINT = 25.4 / 72
PLOTTERS_EDGE = 5.0
"""What a plotter can't print at each edge of a roll, mm: CASES, a copy shop's 36 in roll (914.4 mm wide)."""


def shop(words=""):
    return parse_shop(f"format = 1\n{words}").shop


def made(name, words):
    text = sample_path(name).read_text(encoding="utf-8")
    design = parse_piece(text).design
    drawing = design.drawing.model_copy(update={"template_paper": "roll"})
    design = design.model_copy(update={"drawing": drawing})
    return list(template_sheets(design, build(design), None, shop(words)))


def printed(sheet):
    """Width across the roll and length along it of a page as it prints, mm."""
    held = io.BytesIO()
    write_pdf(SheetSet("t", "", "", "iso", (sheet,), true_size=True), held)
    page = PdfReader(held).pages[0]
    box = float(page.mediabox.width) * POINT, float(page.mediabox.height) * POINT
    return box[::-1] if page.rotation % 180 else box


@pytest.mark.parametrize("name", sample_names())
@pytest.mark.parametrize(
    ("words", "width"), [("", 914.4), ('[habit]\nroll = "24 in"\n', 609.6), ("[habit]\nroll = 420\n", 420.0)]
)
def test_case_43_every_page_goes_on_the_roll_or_is_told(name, words, width):
    told = fitted = 0
    for template in made(name, words):
        (sheet,) = template.whole
        across, along = printed(sheet)
        if template.why_not:
            assert min(across, along) > width - 24.4
            assert "habit.roll" in template.why_not
            assert f"{width:.0f} mm" in template.why_not
            told += 1
        else:
            assert across <= width - 2 * PLOTTERS_EDGE, template.title
            fitted += 1
    assert fitted
    assert width < 600 or fitted > told


def test_a_turned_page_shows_the_same_and_says_which_roll_it_goes_along():
    wide = next(t for t in made("harbour-office-desk", "") if t.whole[0].turned)
    (sheet,) = wide.whole
    held = io.BytesIO()
    write_pdf(SheetSet("t", "", "", "iso", (sheet,), true_size=True), held)
    page = PdfReader(held).pages[0]
    assert page.rotation == 90
    assert float(page.mediabox.width) * POINT == pytest.approx(sheet.paper.width, abs=0.01)
    assert "along a roll of 36 in (914 mm)" in " ".join(page.extract_text().split())


def test_a_shop_says_how_wide_its_roll_is():
    assert roll_of(None) == Roll(914.4, 24.4)
    assert roll_of(shop('[habit]\nroll = "42 in"\nroll_margin = 30\n')).prints == pytest.approx(42 * 25.4 - 30.0)
    assert roll_of(shop("[habit]\nroll = 610\n")).words == "610 mm"
    assert roll_of(shop('[habit]\nroll = "24 in"\n')).words == "24 in (610 mm)"


def test_a_roll_without_room_is_refused_with_what_would_be_right():
    with pytest.raises(PieceError, match=r"roll_margin.*less than the roll's own 20 mm"):
        shop("[habit]\nroll = 20\n")
