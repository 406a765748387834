"""Sheets and drawing in the package: one set, as a PDF and as DXF in two versions."""

import json
from pathlib import Path

import ezdxf
import pytest
from pypdf import PdfReader

from shopdraw.cli.export import export
from shopdraw.cli.refused import Refused

SAMPLES = Path(__file__).parents[2] / "sample_projects"
INCH_DESK, METRIC_DESK = SAMPLES / "harbour-office-desk.piece", SAMPLES / "pilot-station-desk.piece"


@pytest.fixture(scope="module")
def package(tmp_path_factory):
    folder = tmp_path_factory.mktemp("package")
    assert export(str(INCH_DESK), str(folder), ["sheets", "drawing"]) == 0
    return folder


def test_the_sheets_are_one_pdf_of_exact_pages(package):
    pages = PdfReader(package / "sheets" / "harbour-office-desk-sheets.pdf").pages
    assert len(pages) > 5
    # ARCH D is 36 × 24 in; a PDF's unit is 1/72 in (ISO 32000-1).
    assert (float(pages[0].mediabox.width), float(pages[0].mediabox.height)) == pytest.approx((36 * 72, 24 * 72))


def test_case_02_the_drawing_says_its_unit_in_its_name_and_in_its_header(package):
    names = sorted(path.name for path in (package / "drawing").glob("*.dxf"))
    assert names == ["harbour-office-desk-drawing-in-r12.dxf", "harbour-office-desk-drawing-in.dxf"]
    newer = ezdxf.readfile(package / "drawing" / names[1])
    assert newer.dxfversion == "AC1024"
    # DXF reference: $INSUNITS 1 is inches, $MEASUREMENT 0 English.
    assert newer.header["$INSUNITS"] == 1
    assert newer.header["$MEASUREMENT"] == 0
    assert ezdxf.readfile(package / "drawing" / names[0]).dxfversion == "AC1009"


def test_each_sheet_is_a_layout_of_the_drawing(package):
    pages = PdfReader(package / "sheets" / "harbour-office-desk-sheets.pdf").pages
    newer = ezdxf.readfile(package / "drawing" / "harbour-office-desk-drawing-in.dxf")
    assert len([layout for layout in newer.layouts if layout.name != "Model"]) == len(pages)


def test_what_found_no_room_stands_in_the_manifest(package):
    told = json.loads((package / "manifest.json").read_text(encoding="utf-8"))
    assert all("no room" in finding["message"] for finding in told["findings"])
    assert {file["path"].split("/")[0] for file in told["files"]} == {"sheets", "drawing"}


def test_the_same_piece_gives_the_same_bytes(package, tmp_path):
    assert export(str(INCH_DESK), str(tmp_path / "again"), ["sheets", "drawing"]) == 0
    for path in sorted(package.rglob("*")):
        if path.is_file():
            assert (tmp_path / "again" / path.relative_to(package)).read_bytes() == path.read_bytes(), path.name


def test_a_paper_that_nobody_knows_is_refused_with_the_nearest(tmp_path):
    piece = tmp_path / "desk.piece"
    piece.write_text(METRIC_DESK.read_text(encoding="utf-8") + 'paper = "A11"\n', encoding="utf-8")
    with pytest.raises(Refused) as refusal:
        export(str(piece), str(tmp_path / "out"), ["sheets"])
    assert "A11" in str(refusal.value)
    assert "A1" in str(refusal.value)
    assert not (tmp_path / "out").exists()


def test_each_view_and_picture_is_there_for_a_book_or_a_class(package):
    for ending in ("svg", "png"):
        names = {path.stem.removeprefix("harbour-office-desk-") for path in (package / "drawing").glob(f"*.{ending}")}
        assert {"front", "side", "plan", "section-A", "detail-d1", "isometric", "exploded"} <= names
