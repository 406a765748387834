"""Bad input: one clear line and exit 2, or a finding; nothing lost, no traceback."""

import csv
import hashlib
import json
from pathlib import Path

import openpyxl
import pytest

from shopdraw.cli import main
from shopdraw.shipped import sample_names, sample_path

VERBS = ("check", "facts", "export")
PARTS = ("--only", "cnc", "lists")


@pytest.fixture
def desk(tmp_path: Path) -> Path:
    path = tmp_path / "desk.piece"
    path.write_bytes(sample_path(sample_names()[0]).read_bytes())
    return path


def run(verb: str, file: Path | str, out: Path) -> int:
    return main([verb, str(file), *([str(out), *PARTS] if verb == "export" else [])])


@pytest.mark.parametrize("verb", VERBS)
@pytest.mark.parametrize(
    "content", [None, b"\x00\x01\xff", b"", b"[case", "naïve".encode("latin-1"), b"a = 1\n" * 800_000]
)
def test_unreadable_file_gives_one_line_and_exit_2(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], verb: str, content: bytes | None
) -> None:
    file = tmp_path / "broken.piece"
    if content is not None:
        file.write_bytes(content)
    assert run(verb, file, tmp_path / "out") == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert 1 <= said.err.count("\n") <= 3
    assert all(line.startswith(str(file)) for line in said.err.splitlines())
    assert "Traceback" not in said.err
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize("verb", VERBS)
def test_folder_in_place_of_a_piece_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str], verb: str) -> None:
    assert run(verb, tmp_path, tmp_path / "out") == 2
    assert str(tmp_path) in capsys.readouterr().err


@pytest.mark.parametrize(
    ("addition", "told"),
    [
        ('[use]\nside = "nothing"\n', "nothing"),
        ("[case]\nwidth = 0\nheight = 1000\ndepth = 480\n", "case.width"),
        ('[case]\nwidth = "-3 in"\nheight = 1000\ndepth = 480\n', "case.width"),
        ("[case]\nwidth = 900\nheight = 1000\ndepth = inf\n", "case.depth"),
        ("[case]\nwidth = 900\nheight = 1000\n", "case.depth"),
    ],
)
def test_impossible_sizes_name_their_key(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], addition: str, told: str
) -> None:
    case = "" if "[case]" in addition else "[case]\nwidth = 900\nheight = 1040\ndepth = 480\n"
    text = f"format = 1\n{case}{addition}[slant]\nwriting_height = 740\nangle = 50\n"
    file = tmp_path / "odd.piece"
    file.write_text(text, encoding="utf-8")
    assert main(["check", str(file)]) == 2
    assert told in capsys.readouterr().err


def test_drawers_taller_than_their_opening_are_refused_with_numbers(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "tall.piece"
    file.write_text(
        "format = 1\n[case]\nwidth = 900\nheight = 1040\ndepth = 480\n[slant]\nwriting_height = 740\nangle = 50\n"
        '[opening.bank]\ndivide = { keys = ["1", "2"], rule = "given", sizes = [600, 600] }\n',
        encoding="utf-8",
    )
    assert main(["check", str(file)]) == 2
    said = capsys.readouterr().err
    assert "opening.bank" in said
    assert "1200" in said or "600" in said


def test_folder_that_can_not_be_written_is_named(desk: Path, capsys: pytest.CaptureFixture[str]) -> None:
    # nobody can make a folder in there, not even root
    assert run("export", desk, Path("/proc/drawings")) == 2
    said = capsys.readouterr().err
    assert said.startswith("/proc: can't be written")
    assert said.count("\n") == 1


def test_file_in_place_of_the_folder_stays_as_it_was(desk: Path, capsys: pytest.CaptureFixture[str]) -> None:
    target = desk.parent / "out"
    target.write_text("mine", encoding="utf-8")
    assert run("export", desk, target) == 2
    assert "expected a folder" in capsys.readouterr().err
    assert target.read_text(encoding="utf-8") == "mine"


def test_case_37_titles_with_accents_and_path_separators_go_through(tmp_path: Path) -> None:
    folder = tmp_path / "Büro" / "Žďár"
    folder.mkdir(parents=True)
    file = folder / "écritoire – 7⅝.piece"
    text = sample_path(sample_names()[0]).read_text(encoding="utf-8")
    title = 'title = "Écritoire 7 ⅝″ – façade ../a\\\\b"'
    file.write_text(text.replace(text[text.index("title") : text.index("\n", text.index("title"))], title), "utf-8")
    assert run("export", file, folder / "out") == 0
    assert not (folder / "a").exists()
    manifest = json.loads((folder / "out" / "manifest.json").read_text(encoding="utf-8"))
    assert "Écritoire 7 ⅝″ – façade ../a\\b" in manifest["piece"]
    assert all((folder / "out" / each["path"]).is_file() for each in manifest["files"])


def test_formula_like_words_stay_words_in_lists(tmp_path: Path) -> None:
    file = tmp_path / "sums.piece"
    text = sample_path("harbour-office-desk").read_text(encoding="utf-8")
    file.write_text(text.replace('species = "plywood_birch"', 'species = "=1+1"'), encoding="utf-8")
    assert run("export", file, tmp_path / "out") == 0
    with (tmp_path / "out/lists/materials.csv").open(encoding="utf-8", newline="") as lines:
        bought = [row["material"] for row in csv.DictReader(lines)]
    assert any(buy.startswith("'=1+1") for buy in bought)
    book = openpyxl.load_workbook(tmp_path / "out/lists/lists.xlsx")
    cells = [cell for sheet in book for row in sheet for cell in row]
    assert any(str(cell.value).startswith("=1+1") for cell in cells)
    assert all(cell.data_type != "f" for cell in cells)


def test_case_35_numbers_in_csv_have_a_point_whatever_the_sheets_have(tmp_path: Path) -> None:
    file = sample_path("pilot-station-desk")
    assert 'decimal = "comma"' in file.read_text(encoding="utf-8")
    assert run("export", file, tmp_path / "out") == 0
    with (tmp_path / "out/lists/cut-list.csv").open(encoding="utf-8", newline="") as lines:
        rows = list(csv.DictReader(lines))
    assert float(rows[0]["thickness (mm)"]) == 18.0
    assert all("," not in row["exact length (mm)"] for row in rows)


def test_manifest_lists_every_file_with_its_check_sum(desk: Path) -> None:
    out = desk.parent / "out"
    assert run("export", desk, out) == 0
    manifest = json.loads((out / "manifest.json").read_text(encoding="utf-8"))
    there = {path.relative_to(out).as_posix() for path in out.rglob("*") if path.is_file()} - {"manifest.json"}
    assert {each["path"] for each in manifest["files"]} == there
    for each in manifest["files"]:
        assert hashlib.sha256((out / each["path"]).read_bytes()).hexdigest() == each["sha256"]
    with (out / "cnc/covering-sheet_router-files.csv").open(encoding="utf-8", newline="") as lines:
        told = {row["file"]: row["SHA-256"] for row in csv.DictReader(lines)}
    sums = {each["path"].removeprefix("cnc/"): each["sha256"] for each in manifest["files"]}
    assert told
    assert all(sums[name] == value for name, value in told.items())
    assert {"cnc/r12/1L_side-left_f1_mm.dxf", "cnc/1R_side-right_f1_mm.dxf"} <= there
