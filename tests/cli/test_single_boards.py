"""One board's part sheet, template and router file by its label: only these, and an earlier export stays."""

import hashlib
import json
from pathlib import Path

import pytest
from pypdf import PdfReader

from shopdraw.cli.command import main
from shopdraw.shipped import sample_path

DESK = str(sample_path("pilot-station-desk"))


def files(folder: Path) -> set[str]:
    return {str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file()}


@pytest.fixture(scope="module")
def one(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("one") / "out"
    assert main(["export", DESK, str(folder), "--board", "1L"]) == 0
    return folder


def test_a_board_by_label_has_its_sheet_its_template_and_its_router_file(one: Path) -> None:
    assert files(one) == {
        "manifest.json",
        "sheets/pilot-station-desk-part-1L.pdf",
        "templates/pilot-station-desk-template-1L.pdf",
        "templates/pilot-station-desk-template-1L-A4.pdf",
        "cnc/1L_side-left_f1_mm.dxf",
    }


def test_the_manifest_names_these_boards_and_files_with_their_sums(one: Path) -> None:
    manifest = json.loads((one / "manifest.json").read_text())
    assert manifest["boards"] == ["1L"]
    assert {file["path"] for file in manifest["files"]} == files(one) - {"manifest.json"}
    for file in manifest["files"]:
        assert file["sha256"] == hashlib.sha256((one / file["path"]).read_bytes()).hexdigest()


def test_the_sheet_shows_that_board_and_no_other(one: Path) -> None:
    pages = PdfReader(one / "sheets" / "pilot-station-desk-part-1L.pdf").pages
    words = " ".join(page.extract_text() for page in pages)
    assert "1L side, left" in words
    assert "5 back" not in words


def test_a_figure_is_the_same_string_as_in_the_whole_set(one: Path, tmp_path: Path) -> None:
    assert main(["export", DESK, str(tmp_path / "all"), "--only", "sheets"]) == 0
    pages = PdfReader(tmp_path / "all" / "sheets" / "pilot-station-desk-sheets.pdf").pages
    whole = {line for page in pages for line in page.extract_text().splitlines()}
    alone = PdfReader(one / "sheets" / "pilot-station-desk-part-1L.pdf").pages[0].extract_text().splitlines()
    figures = {line for line in alone if line.replace(",", "").isdigit()}
    assert len(figures) > 5
    assert figures - whole <= {"1", "2", "3", "4", "5", "6", "7", "8"}  # zones of the frame


def test_an_earlier_export_stays_beside_it(one: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert main(["export", DESK, str(out), "--board", "1R", "--only", "templates"]) == 0
    before = files(out)
    assert main(["export", DESK, str(out), "--board", "1L", "1L", "--only", "cnc"]) == 0
    assert files(out) == before | {"cnc/1L_side-left_f1_mm.dxf"}
    manifest = json.loads((out / "manifest.json").read_text())
    assert {file["path"] for file in manifest["files"]} == files(out) - {"manifest.json"}


def test_an_unknown_label_names_the_nearest_and_writes_nothing(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["export", DESK, str(tmp_path / "out"), "--board", "1l"]) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    assert '"1l"' in said
    assert "nearest label is 1L" in said
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize("part", ["lists", "drawing"])
def test_parts_that_are_of_the_whole_piece_are_refused(
    part: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["export", DESK, str(tmp_path / "out"), "--board", "1L", "--only", part]) == 2
    assert f"--only: {part}" in capsys.readouterr().err


def test_every_board_of_a_piece_has_its_three(tmp_path: Path) -> None:
    from shopdraw.cli.work import work_on

    piece = str(sample_path("tide-lectern"))
    labels = [board.label for board in work_on(piece).assembly.boards]
    assert main(["export", piece, str(tmp_path / "out"), "--board", *labels]) == 0
    there = files(tmp_path / "out")
    for label in labels:
        assert f"sheets/tide-lectern-part-{label}.pdf" in there
        assert f"templates/tide-lectern-template-{label}.pdf" in there
