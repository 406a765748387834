"""The shop file on the command line: which one counts, and what it bears on."""

import csv
import json
from pathlib import Path

import pytest
from pypdf import PdfReader

from shopdraw.cli import main

DESK = Path(__file__).parents[2] / "sample_projects" / "harbour-office-desk.piece"


def findings(capsys: pytest.CaptureFixture[str], *words: str) -> set[str]:
    main(["check", *words, "--json"])
    return {finding["code"] for finding in json.loads(capsys.readouterr().out)["findings"]}


@pytest.fixture(autouse=True)
def _no_file_of_the_users_own(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "none"))


def test_the_shops_cutters_bear_on_the_findings(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    """A groove for 0.225 in (5.7 mm) ply takes a 3 mm cutter and none of 6.5."""
    shop = tmp_path / "shop.toml"
    shop.write_text('[cutter.six]\ndiameter = "6.5 mm"\n', encoding="utf-8")
    code = "groove-narrower-than-cutter"
    assert code not in findings(capsys, str(DESK))
    assert code in findings(capsys, str(DESK), "--shop", str(shop))
    named = tmp_path / "desk.piece"
    named.write_text(DESK.read_text().replace("[piece]\n", '[piece]\nshop = "shop.toml"\n'), encoding="utf-8")
    assert code in findings(capsys, str(named))


def test_a_shop_file_never_bears_on_a_boards_shape(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    shop = tmp_path / "shop.toml"
    shop.write_text('[saw]\nkerf = 6\n[cutter.a]\ndiameter = 30\n', encoding="utf-8")
    told = []
    for words in ([], ["--shop", str(shop)]):
        assert main(["facts", str(DESK), *words]) == 0
        told.append(json.loads(capsys.readouterr().out))
    assert told[0]["boards"] == told[1]["boards"]


def test_an_unknown_key_of_the_shop_file_is_a_caution(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    shop = tmp_path / "shop.toml"
    shop.write_text("[saw]\nkerv = 3\n", encoding="utf-8")
    main(["check", str(DESK), "--shop", str(shop)])
    out = capsys.readouterr().out
    assert "saw.kerv is no key of a shop file" in out
    assert '"kerf"' in out


@pytest.mark.parametrize("verb", ["check", "facts"])
def test_a_shop_file_that_cant_be_read_is_told_in_one_line(
    capsys: pytest.CaptureFixture[str], tmp_path: Path, verb: str
) -> None:
    shop = tmp_path / "shop.toml"
    shop.write_text("[saw]\nkerf = 'wide'\n", encoding="utf-8")
    assert main([verb, str(DESK), "--shop", str(shop)]) == 2
    error = capsys.readouterr().err
    assert error.count("\n") == 1
    assert "shop.toml:2: saw.kerf: found" in error
    assert main([verb, str(DESK), "--shop", str(tmp_path / "gone.toml")]) == 2
    assert "expected a shop file" in capsys.readouterr().err


def test_the_lists_hold_the_layouts_with_the_shops_money(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    shop = tmp_path / "shop.toml"
    shop.write_text(
        '[shop]\ncurrency = "crowns"\n[sheet.birch]\nspecies = "plywood_birch"\n'
        "width = 1525\nlength = 1525\nprice = 42\n",
        encoding="utf-8",
    )
    assert main(["export", str(DESK), str(tmp_path / "out"), "--only", "lists", "--shop", str(shop)]) == 0
    capsys.readouterr()
    lists = tmp_path / "out" / "lists"
    head, *rows = (lists / "buying-list.csv").read_text(encoding="utf-8").splitlines()
    assert head.endswith("cost (crowns)")
    assert any("birch" in row and row.endswith(",42.00,84.00") for row in rows), "two sheets"
    first = PdfReader(lists / "harbour-office-desk-layouts.pdf").pages[0].extract_text()
    assert "sheets to buy: 2" in first, "the headline"
    assert "least possible: 2" in first, "and the bound beside it"
    assert "crowns" not in first, "solid wood has no price here"
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text(encoding="utf-8"))
    assert "lists/order-of-cuts.csv" in {file["path"] for file in manifest["files"]}


HABITS = """
[habit]
separator = "semicolon"
decimal = "comma"
waste_solid = 22
waste_sheet = 33
rough_step = "1/2 in"
"""


def test_the_shops_habits_hold_in_every_list(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    shop = tmp_path / "shop.toml"
    shop.write_text(HABITS, encoding="utf-8")
    out = tmp_path / "out"
    assert main(["export", str(DESK), str(out), "--only", "lists", "--only", "cnc", "--shop", str(shop)]) == 0
    capsys.readouterr()
    manifest = json.loads((out / "manifest.json").read_text(encoding="utf-8"))
    assert manifest["csv"] == {"separator": "semicolon", "decimal": "comma"}
    tables = [*out.glob("lists/*.csv"), *out.glob("cnc/*.csv")]
    assert len(tables) > 10
    for path in tables:
        head = path.read_text(encoding="utf-8").splitlines()[0]
        assert head.count(";") > head.count(","), path.name
    with (out / "lists" / "cut-list.csv").open(encoding="utf-8", newline="") as lines:
        rows = list(csv.DictReader(lines, delimiter=";"))
    assert all("," in row["weight (kg)"] and "." not in row["weight (kg)"] for row in rows)
    assert {row["rough length (in)"].split()[-1] for row in rows} <= {
        row["rough length (in)"].split()[-1] for row in rows if "/" not in row["rough length (in)"]
    } | {"1/2"}, "whole and half inches"
    with (out / "lists" / "materials.csv").open(encoding="utf-8", newline="") as lines:
        materials = list(csv.DictReader(lines, delimiter=";"))
    assert {row["waste (%)"] for row in materials if row["kind"] != "hardware"} == {"22", "33"}


def boxes(path: Path) -> set[tuple[int, int]]:
    """Widths and heights of a PDF's pages, in whole points."""
    return {(round(page.mediabox.width), round(page.mediabox.height)) for page in PdfReader(path).pages}


def test_the_layouts_come_on_the_paper_that_the_shop_prints_on(tmp_path: Path) -> None:
    """Tabloid is 17 × 11 in, 1224 × 792 points; the piece's own style would take A3."""
    shop = tmp_path / "shop.toml"
    shop.write_text('[habit]\npaper = "Tabloid"\n', encoding="utf-8")
    assert main(["export", str(DESK), str(tmp_path / "out"), "--only", "lists", "--shop", str(shop)]) == 0
    assert boxes(tmp_path / "out" / "lists" / "harbour-office-desk-layouts.pdf") == {(1224, 792)}
    shop.write_text('[habit]\npaper = "A33"\n', encoding="utf-8")
    assert main(["export", str(DESK), str(tmp_path / "out"), "--only", "lists", "--shop", str(shop)]) == 2


def test_facts_tell_the_shops_waste(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    shop = tmp_path / "shop.toml"
    shop.write_text("[habit]\nwaste_solid = 22\n", encoding="utf-8")
    assert main(["facts", str(DESK), "--shop", str(shop)]) == 0
    told = json.loads(capsys.readouterr().out)["materials"]
    assert {each["waste_percent"] for each in told if each["kind"] == "solid"} == {22.0}
    assert all(each["quantity"] == pytest.approx(1.22 * each["net"]) for each in told if each["kind"] == "solid")


def test_tolerances_and_what_needs_holding_down_are_the_shops(tmp_path: Path) -> None:
    """A side of 19 1/2 in is narrow where 600 mm is; 0.05 in more or less is asked for on its outline."""
    shop = tmp_path / "shop.toml"
    shop.write_text('[router]\noutline_tolerance = "0.05 in"\nnarrow = 600\n', encoding="utf-8")
    told = []
    for words in ([], ["--shop", str(shop)]):
        out = tmp_path / str(len(words))
        assert main(["export", str(DESK), str(out), "--only", "cnc", *words]) == 0
        with (out / "cnc/covering-sheet_router-files.csv").open(encoding="utf-8", newline="") as lines:
            side = next(row for row in csv.DictReader(lines) if row["file"].startswith("1L_"))
        asked = (out / "cnc/covering-sheet_read-this-before-cutting.csv").read_text(encoding="utf-8")
        told.append((side["hold-down"], "0.050 in more or less" in asked))
    assert told == [("", False), ("narrow", True)]
