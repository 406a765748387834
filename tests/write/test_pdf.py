"""A PDF's pages have the paper's size, its lines their length, its words their letters; read by pypdf and poppler."""

import hashlib
import io
import math
import os
import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from pypdf import PdfReader
from pypdf.generic import ContentStream

from shopdraw.drawing.letters import text_width
from shopdraw.drawing.mark import Area, Hatching, Line, Meaning, Text
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.shape.path import rectangle
from shopdraw.write.finite import NotFinite
from shopdraw.write.pdf import arc_curves, write_pdf
from tests.write.sample_sheets import A4, LETTER, PLACE, TITLE, sheet_set

MM = 72 / 25.4
ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def pdf(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("pdf") / "set.pdf"
    write_pdf(sheet_set(), path)
    return path


def poppler(program: str, *arguments: str | Path) -> str:
    return subprocess.run([program, *map(str, arguments)], capture_output=True, check=True, text=True).stdout


def one_sheet(*marks: Line | Text | Area) -> SheetSet:
    return SheetSet("", "", "", "iso", (Sheet("s", "1", "s", A4, (), marks),))


def test_page_sizes_are_the_papers_to_a_tenth_of_a_mm(pdf: Path) -> None:
    pages = PdfReader(pdf).pages
    sizes = [(float(p.mediabox.width) / MM, float(p.mediabox.height) / MM) for p in pages]
    assert sizes == [pytest.approx((420.0, 297.0), abs=0.01), pytest.approx((210.0, 297.0), abs=0.01)]
    info = poppler("pdfinfo", "-f", "1", "-l", "2", pdf)
    found = [tuple(map(float, m)) for m in re.findall(r"size:\s+([\d.]+) x ([\d.]+) pts", info)]
    assert [(w / MM, h / MM) for w, h in found] == [
        pytest.approx((420.0, 297.0), abs=0.1),
        pytest.approx((210.0, 297.0), abs=0.1),
    ]


def test_inch_paper_is_exact_too(tmp_path: Path) -> None:
    write_pdf(SheetSet("", "", "", "asme", (Sheet("s", "1", "s", LETTER),)), tmp_path / "a.pdf")
    box = PdfReader(tmp_path / "a.pdf").pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx((612.0, 792.0), abs=1e-3)


def test_line_of_100_mm_is_1181_pixels_at_300_dpi(pdf: Path, tmp_path: Path) -> None:
    poppler("pdftoppm", "-r", "300", "-gray", "-f", "2", "-l", "2", pdf, tmp_path / "page")
    raw = next(tmp_path.glob("page*.pgm")).read_bytes()
    head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", raw)
    assert head is not None
    width, height = int(head[1]), int(head[2])
    grey = np.frombuffer(raw, dtype=np.uint8, offset=head.end()).reshape(height, width)
    row = height - round(40.0 / 25.4 * 300)
    black = np.flatnonzero(grey[row] < 128)
    assert abs((black[-1] - black[0] + 1) - 100 / 25.4 * 300) <= 1.0
    assert np.all(np.diff(black) == 1), "one unbroken line"


def test_words_can_be_found_and_copied_with_their_fractions(pdf: Path) -> None:
    text = poppler("pdftotext", "-f", "1", "-l", "1", pdf, "-")
    for words in ('31 1/2"', "drawer 31 1/2 × 5/8", "up 1/2", "R80", "Ø160", "90°", "(300)"):
        assert words in text, words
    copied = PdfReader(pdf).pages[0].extract_text()
    for words in ('31 1/2"', "drawer 31 1/2 × 5/8", "(300)"):
        assert words in copied, words


def test_case_37_accented_title_and_place_come_back_whole(pdf: Path) -> None:
    text = poppler("pdftotext", pdf, "-")
    assert TITLE in text
    assert PLACE in text
    copied = PdfReader(pdf).pages[0].extract_text()
    assert PLACE in copied
    assert TITLE.replace("⅝", "5/8") in copied, "a reader that knows no replacement text finds the figures"
    assert PdfReader(pdf).metadata.title == TITLE  # type: ignore[union-attr]


def test_words_are_as_wide_as_the_layout_thinks(tmp_path: Path) -> None:
    write_pdf(one_sheet(Text((50, 100), "Writing-shelf", 5.0)), tmp_path / "w.pdf")
    box = re.search(
        r'xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)"', poppler("pdftotext", "-bbox", tmp_path / "w.pdf", "-")
    )
    assert box is not None
    assert float(box[1]) / MM == pytest.approx(50.0, abs=0.02)
    assert (float(box[2]) - float(box[1])) / MM == pytest.approx(text_width("Writing-shelf", 5.0), abs=0.05)


def test_only_our_own_letters_are_used_and_all_are_embedded(pdf: Path) -> None:
    rows = poppler("pdffonts", pdf).splitlines()[2:]
    assert {row.split()[0].split("+")[1] for row in rows} == {"RoutedGothic", "DejaVuSans"}
    assert all(row.split()[-5:-2] == ["yes", "yes", "yes"] for row in rows), "embedded, subset, with Unicode"


def test_bookmarks_labels_and_metadata_name_the_sheets(pdf: Path) -> None:
    reader = PdfReader(pdf)
    assert [item.title for item in reader.outline] == [f"1  {TITLE}", "2  Parts"]  # type: ignore[union-attr]
    assert reader.page_labels == ["1", "2"]
    assert reader.metadata is not None
    assert (reader.metadata.author, reader.metadata.subject) == ("A. Maker", "a desk for the harbour office")
    assert reader.pdf_header == "%PDF-1.7"


def test_case_3_only_true_size_sheets_ask_printers_not_to_scale() -> None:
    for true_size in (True, False):
        out = io.BytesIO()
        write_pdf(sheet_set(true_size=true_size), out)
        reader = PdfReader(out)
        preferences = reader.viewer_preferences
        assert (preferences is not None and preferences.print_scaling == "/None") is true_size


def test_widths_are_the_styles_and_nothing_is_a_hairline(pdf: Path) -> None:
    widths = set()
    for page in PdfReader(pdf).pages:
        stream = ContentStream(page.get_contents(), None)
        widths |= {round(float(operands[0]) / MM, 2) for operands, operator in stream.operations if operator == b"w"}
    assert widths - {round(1 / MM, 2)} <= {0.25, 0.5}, "beside reportlab's own start of 1 pt"
    assert min(widths) > 0.1


def test_drawing_is_placed_by_scale_and_place(tmp_path: Path) -> None:
    out = tmp_path / "p.pdf"
    write_pdf(sheet_set(), out)
    stream = ContentStream(PdfReader(out).pages[0].get_contents(), None)
    lines = []
    for operands, operator in stream.operations:
        if operator == b"m":
            start = [float(v) / MM for v in operands]
        elif operator == b"l":
            end = [float(v) / MM for v in operands]
            lines.append((*start, *end))
            start = end
    # The side's lower edge: 800.1 at 1:4 from (70, 150).
    assert any(line == pytest.approx((70.0, 150.0, 70.0 + 800.1 / 4, 150.0), abs=1e-3) for line in lines)


def test_wide_lines_that_meet_are_one_closed_stroke_and_narrow_ones_stay_apart(tmp_path: Path) -> None:
    corners = ((20.0, 20.0), (90.0, 20.0), (90.0, 70.0), (20.0, 70.0))
    for meaning, closed, strokes in ((Meaning.VISIBLE, 1, 1), (Meaning.SIZE, 0, 4)):
        edges = [Line(corners[i], corners[(i + 1) % 4], meaning) for i in (0, 2, 1, 3)]
        write_pdf(one_sheet(*edges), tmp_path / "r.pdf")
        stream = ContentStream(PdfReader(tmp_path / "r.pdf").pages[0].get_contents(), None)
        operators = [operator for _, operator in stream.operations]
        assert (operators.count(b"h"), operators.count(b"S")) == (closed, strokes)


def test_two_sheets_with_one_key_have_a_bookmark_each() -> None:
    out = io.BytesIO()
    sheet = Sheet("parts", "1", "Parts", A4)
    write_pdf(SheetSet("", "", "", "iso", (sheet, replace(sheet, number="2"))), out)
    reader = PdfReader(out)
    assert [reader.get_destination_page_number(d) for d in reader.outline] == [0, 1]  # type: ignore[arg-type]


def test_hatch_stays_out_of_words_and_grey_is_filled(tmp_path: Path) -> None:
    clear = (40.0, 90.0, 60.0, 110.0)
    hatched = Area(rectangle(20, 20, 100, 200), (), Hatching("lines"), clear=(clear,))
    grey = Area(rectangle(120, 20, 140, 21), (), Hatching("grey"))
    write_pdf(one_sheet(hatched, grey), tmp_path / "h.pdf")
    stream = ContentStream(PdfReader(tmp_path / "h.pdf").pages[0].get_contents(), None)
    ends = [[float(v) / MM for v in operands] for operands, operator in stream.operations if operator in (b"m", b"l")]
    assert not [e for e in ends if 40.1 < e[0] < 59.9 and 90.1 < e[1] < 109.9]
    assert b"f*" in [operator for _, operator in stream.operations]
    assert [0.5] in [[float(v) for v in operands] for operands, operator in stream.operations if operator == b"g"]


@pytest.mark.parametrize(("radius", "start", "end"), [(3.0, 0.0, 360.0), (250.0, 10.0, 200.0), (5000.0, -3.0, 4.0)])
def test_curves_lie_within_a_hundredth_of_a_mm_of_the_arc(radius: float, start: float, end: float) -> None:
    first, curves = arc_curves((7.0, -2.0), radius, start, end, 0.01)
    point = first
    for a, b, c in curves:
        for t in np.linspace(0.0, 1.0, 41):
            w = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
            x, y = (sum(k * p[i] for k, p in zip(w, (point, a, b, c), strict=True)) for i in (0, 1))
            assert abs(math.hypot(x - 7.0, y + 2.0) - radius) <= 0.01
        point = c
    turned = math.radians(end)
    assert point == pytest.approx((7.0 + radius * math.cos(turned), -2.0 + radius * math.sin(turned)))


def test_number_that_is_not_finite_is_refused_with_its_sheet() -> None:
    with pytest.raises(NotFinite, match=r"sheet 1: .*nan"):
        write_pdf(one_sheet(Line((0.0, 0.0), (math.nan, 1.0), Meaning.VISIBLE)), io.BytesIO())


def test_control_characters_and_brackets_in_words_do_no_harm(tmp_path: Path) -> None:
    write_pdf(one_sheet(Text((20, 20), "oak (red) \\ a\x00b\n<b>c</b>", 2.5)), tmp_path / "c.pdf")
    assert "oak (red) \\ ab <b>c</b>" in poppler("pdftotext", tmp_path / "c.pdf", "-")


def test_letter_that_no_font_has_is_seen_and_still_copied(tmp_path: Path) -> None:
    write_pdf(one_sheet(Text((20, 20), "oak 中", 2.5)), tmp_path / "m.pdf")
    assert "oak 中" in poppler("pdftotext", tmp_path / "m.pdf", "-")
    assert "\N{REPLACEMENT CHARACTER}" in PdfReader(tmp_path / "m.pdf").pages[0].extract_text()


def test_no_sheet_is_an_error() -> None:
    with pytest.raises(ValueError, match="at least one sheet"):
        write_pdf(replace(sheet_set(), sheets=()), io.BytesIO())


def test_same_set_gives_the_same_bytes_in_another_process() -> None:
    script = (
        "import io, hashlib; from shopdraw.write.pdf import write_pdf\n"
        "from tests.write.sample_sheets import sheet_set\n"
        "out = io.BytesIO(); write_pdf(sheet_set('asme'), out); print(hashlib.sha256(out.getvalue()).hexdigest())"
    )
    out = io.BytesIO()
    write_pdf(sheet_set("asme"), out)
    found = {hashlib.sha256(out.getvalue()).hexdigest()}
    for seed in ("1", "2", "3", "4"):
        ran = subprocess.run(
            [sys.executable, "-c", script], capture_output=True, check=True, text=True, cwd=ROOT,
            env=os.environ | {"PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)},
        )  # fmt: skip
        found.add(ran.stdout.strip())
    assert len(found) == 1
