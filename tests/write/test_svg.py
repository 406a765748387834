"""SVG: true to size, well formed, the same bytes, and what another renderer draws is what the PNG shows."""

import re
import xml.etree.ElementTree as ET
from dataclasses import replace

import pytest
from PIL import Image

from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import Sheet
from shopdraw.write.finite import NotFinite
from shopdraw.write.png import write_png
from shopdraw.write.svg import svg_of, write_svg
from tests.write.sample_sheets import A4, HUNDRED, sheet_set

SVG = "{http://www.w3.org/2000/svg}"


def bare(*marks):
    return Sheet("bare", "1", 'A <title> & "more"', A4, (), marks)


def opened(path):
    with Image.open(path) as image:
        return image.convert("L")


def paths(sheet):
    return list(ET.fromstring(svg_of(sheet, "iso")).iter(f"{SVG}path"))


def test_a_line_of_a_hundred_millimetres_is_a_hundred_long():
    root = ET.fromstring(svg_of(bare(HUNDRED), "iso"))
    assert root.get("width") == "210mm"
    assert root.get("viewBox") == "0 0 210 297"
    (path,) = root.iter(f"{SVG}path")
    x0, y0, x1, y1 = map(float, re.findall(r"-?[\d.]+", path.get("d")))
    # y counts from the upper edge: SVG 1.1, 7.3
    assert (x0, y0, x1, y1) == (50.0, 257.0, 150.0, 257.0)
    assert float(path.get("stroke-width")) == 0.25


def test_no_line_is_a_hairline():
    for sheet in sheet_set().sheets:
        widths = [float(path.get("stroke-width")) for path in paths(sheet) if path.get("stroke-width")]
        assert widths
        assert min(widths) >= 0.13


def test_words_can_be_read_by_those_who_hear_the_page():
    told = [path.get("aria-label") for path in paths(bare(Text((20.0, 20.0), "7 ⅝ & <8>", 2.5)))]
    assert told == ["7 ⅝ & <8>"]


def test_the_title_is_the_sheets_own():
    assert ET.fromstring(svg_of(bare(HUNDRED), "iso")).find(f"{SVG}title").text == 'A <title> & "more"'


def test_the_same_sheet_gives_the_same_bytes(tmp_path):
    for name in ("one", "two"):
        write_svg(sheet_set().sheets[0], "iso", tmp_path / f"{name}.svg")
    assert (tmp_path / "one.svg").read_bytes() == (tmp_path / "two.svg").read_bytes()


def test_a_number_that_is_not_finite_is_refused():
    with pytest.raises(NotFinite, match="sheet 1"):
        svg_of(bare(Line((0.0, 0.0), (float("nan"), 1.0), Meaning.VISIBLE)), "iso")


@pytest.mark.parametrize("index", [0, 1])
def test_another_renderer_draws_what_the_png_shows(tmp_path, index):
    svg = pytest.importorskip("PySide6.QtSvg")
    from PySide6.QtGui import QImage, QPainter

    sheet = sheet_set().sheets[index]
    write_png(sheet, "iso", tmp_path / "ours.png", 100)
    ours = opened(tmp_path / "ours.png")
    write_svg(sheet, "iso", tmp_path / "ours.svg")
    renderer = svg.QSvgRenderer(str(tmp_path / "ours.svg"))
    assert renderer.isValid()
    image = QImage(*ours.size, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    renderer.render(painter)
    painter.end()
    image.save(str(tmp_path / "theirs.png"))
    theirs = opened(tmp_path / "theirs.png")
    # compared a few millimetres at a time: what is drawn where, not how edges are smoothed
    small = (ours.width // 8, ours.height // 8)
    a, b = (list(image.resize(small, Image.Resampling.BOX).tobytes()) for image in (ours, theirs))
    assert min(a) < 200
    worst = max(abs(x - y) for x, y in zip(a, b, strict=True))
    assert worst < 40
    assert sum(abs(x - y) for x, y in zip(a, b, strict=True)) / len(a) < 1.0


def test_a_bare_view_needs_no_frame():
    sheet = sheet_set().sheets[0]
    alone = replace(sheet, marks=())
    assert len(paths(alone)) < len(paths(sheet)) + 1
