"""The router part of a package: files, nests and covering sheet name each other; a shop file bears on all of them."""

import csv
import hashlib
from pathlib import Path

import ezdxf
import pytest
from pypdf import PdfReader

from shopdraw.cli.command import main
from shopdraw.shipped import sample_path

SHOP = """
format = 1
[router]
dxf = "R12"
margin = 30
allowance = 1
keep_out = [[1000, 1100]]
marks = true
[cutter.quarter]
diameter = 6.35
cutting_length = 19
[cutter.thin]
diameter = 4
cutting_length = 15
"""


def export(folder: Path, *options: str) -> Path:
    assert main(["export", str(sample_path("pilot-station-desk")), str(folder), "--only", "cnc", *options]) == 0
    return folder / "cnc"


@pytest.fixture(scope="module")
def plain(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return export(tmp_path_factory.mktemp("plain") / "p")


@pytest.fixture(scope="module")
def of_a_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    place = tmp_path_factory.mktemp("shop")
    (place / "shop.toml").write_text(SHOP)
    return export(place / "p", "--shop", str(place / "shop.toml"))


def rows(folder: Path, table: str) -> list[dict[str, str]]:
    with (folder / f"covering-sheet_{table}.csv").open(encoding="utf-8-sig") as lines:
        return list(csv.DictReader(lines))


def test_every_file_stands_on_the_covering_sheet_with_its_check_sum(plain: Path) -> None:
    told = {row["file"]: row["SHA-256"] for t in ("router-files", "nested-sheets") for row in rows(plain, t)}
    there = {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in plain.glob("*.dxf")}
    assert told == there
    assert any(name.startswith("sheet-01_P1_mm") for name in there)


def test_cuts_counted_add_up_in_the_last_row(plain: Path) -> None:
    last = [int(value) for key, value in rows(plain, "cuts-counted")[-1].items() if key != "labels"]
    assert last[0] == last[1] + last[2]
    assert last[0] > 50


def test_covering_sheet_is_a_pdf_that_begins_with_what_to_read_first(plain: Path) -> None:
    pages = PdfReader(plain / "covering-sheet.pdf").pages
    first = pages[0].extract_text()
    assert "Read this before cutting" in first
    assert "must measure" in first
    words = " ".join(" ".join(page.extract_text() for page in pages).split())
    for told in ("Corner wood", "Second settings", "Nested sheets", "SHA-256", "OSHA 3157"):
        assert told in words


def test_shop_that_asks_for_r12_gets_every_file_in_it(of_a_shop: Path, plain: Path) -> None:
    versions = {path.name: ezdxf.readfile(path).dxfversion for path in of_a_shop.glob("*.dxf")}
    assert set(versions.values()) == {"AC1009"}
    assert not (of_a_shop / "r12").exists()
    assert {ezdxf.readfile(path).dxfversion for path in plain.glob("*.dxf")} == {"AC1024"}


def test_sheets_keep_the_shops_margin_allowance_and_strips(of_a_shop: Path) -> None:
    for row in rows(of_a_shop, "nested-sheets"):
        if row["file"] != "not nested":
            assert float(row["gap at least (mm)"]) >= 6.35 + 2
            assert float(row["edge margin (mm)"]) == 30.0
            assert row["keep-out strips"] == "1000 to 1100 mm"


def test_cutters_of_the_shop_are_named_and_checked(of_a_shop: Path) -> None:
    named = {row["least cutter"] for row in rows(of_a_shop, "layers-of-the-router-files")}
    assert named & {"quarter", "thin"}
    assert not named & {"3 mm", "6 mm", "12 mm"}
    told = [row["words"] for row in rows(of_a_shop, "read-this-before-cutting")]
    assert any("as the shop file has them" in words for words in told)
    # sides of 20 mm and half a millimetre into the bed are more than 19
    assert any("the cutter quarter cuts 19.00 mm" in words for words in told)


def test_marks_are_scored_where_the_shop_asks(of_a_shop: Path, plain: Path) -> None:
    def marked(folder: Path) -> bool:
        return any(row["layer"].startswith("MARK_30H") for row in rows(folder, "layers-of-the-router-files"))

    assert marked(of_a_shop)
    assert not marked(plain)
