"""check, facts and export on real piece files: exit codes, what goes to which stream, nothing half done."""

import json
from pathlib import Path

import pytest

from shopdraw.cli import main
from shopdraw.cli.built import Work
from shopdraw.cli.export import export
from shopdraw.cli.refused import Refused
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.finding import Finding, Severity

SAMPLES = [str(sample_path(name)) for name in sample_names()]
SAMPLE = SAMPLES[0]
BAD = [
    ("width = 900", "widht = 900", "case.width"),
    ("width = 900", "width = nan", "case.width"),
    ("width = 900", "width = 1e9", "case.width"),
    ("depth = 480", "depth = -480", "case.depth"),
    ("height = 1040 ", 'height = "1,040"', "case.height"),
    ("angle = 50", "# angle", "slant"),
    ("angle = 50", "angle = 50\ntop_depth = 230", "slant"),
    ("angle = 50", "top_depth = 600", "slant"),
    ('kind = "slant-desk"', 'kind = "boat"', "piece.kind"),
    ("format = 1", "format = 2", "format"),
]


@pytest.fixture
def desk(tmp_path: Path) -> Path:
    path = tmp_path / "Büro" / "écritoire.piece"
    path.parent.mkdir()
    assert main(["start", "slant-desk", str(path)]) == 0
    return path


@pytest.mark.parametrize("sample", SAMPLES)
def test_nothing_in_a_sample_must_be_fixed(sample: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", sample]) == 0
    assert capsys.readouterr().out.splitlines()[-1].startswith("0 must-fix, ")


def test_a_piece_just_started_has_nothing_that_must_be_fixed(desk: Path) -> None:
    assert main(["check", str(desk)]) == 0


def test_check_tells_the_same_as_facts(capsys: pytest.CaptureFixture[str]) -> None:
    main(["check", SAMPLE, "--json"])
    checked = json.loads(capsys.readouterr().out)
    main(["facts", SAMPLE])
    assert json.loads(capsys.readouterr().out)["findings"] == checked["findings"]


def test_an_unknown_key_is_a_finding_that_names_its_line(desk: Path, capsys: pytest.CaptureFixture[str]) -> None:
    capsys.readouterr()
    desk.write_text(desk.read_text(encoding="utf-8").replace("seat =", "saet ="), encoding="utf-8")
    assert main(["check", str(desk), "--json"]) == 0
    (told,) = [one for one in json.loads(capsys.readouterr().out)["findings"] if one["code"] == "unknown-key"]
    assert (told["severity"], told["where"]) == ("caution", ["slant.saet"])
    assert 'did you mean "seat"?' in told["message"]


@pytest.mark.parametrize("verb", ["check", "facts", "export"])
@pytest.mark.parametrize(("old", "new", "address"), BAD)
def test_a_bad_piece_gives_one_line_and_exit_2(
    desk: Path, capsys: pytest.CaptureFixture[str], verb: str, old: str, new: str, address: str
) -> None:
    capsys.readouterr()
    text = desk.read_text(encoding="utf-8")
    assert old in text
    desk.write_text(text.replace(old, new, 1), encoding="utf-8")
    out = desk.parent / "out"
    assert main([verb, str(desk), *([str(out)] if verb == "export" else [])]) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert said.err.startswith(f"{desk}:")
    assert address in said.err
    assert not out.exists()


def no_lists(work: Work, folder: Path) -> tuple[Finding, ...]:
    (folder / f"{work.stem}.csv").write_text("label\n", encoding="utf-8")
    return (Finding("no-room", Severity.NOTE, ("side.left",), "no room for a balloon"),)


def full_disk(work: Work, folder: Path) -> tuple[Finding, ...]:
    (folder / "half.csv").write_text("la", encoding="utf-8")
    raise OSError(28, "No space left on device", str(folder / "half.csv"))


def contents(folder: Path) -> dict[str, bytes]:
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_findings_of_the_layout_stand_in_the_manifest(desk: Path) -> None:
    out = desk.parent / "out"
    assert export(str(desk), str(out), ("lists",), {"lists": no_lists}) == 0
    manifest = json.loads((out / "manifest.json").read_text(encoding="utf-8"))
    assert [file["path"] for file in manifest["files"]] == ["lists/écritoire.csv"]
    assert [finding["code"] for finding in manifest["findings"]] == ["no-room"]


def test_case_32_an_export_that_fails_leaves_the_last_good_one(desk: Path) -> None:
    out = desk.parent / "out"
    export(str(desk), str(out), ("lists",), {"lists": no_lists})
    before = contents(out)
    with pytest.raises(Refused, match=r"lists/half.csv: can't be written \(no space left on device\)"):
        export(str(desk), str(out), ("lists",), {"lists": full_disk})
    assert contents(out) == before


def test_export_names_what_must_be_fixed_and_still_exits_0(
    desk: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    wrong = Finding("lid-strikes", Severity.MUST_FIX, ("lid.panel",), "the lid runs into the side")
    monkeypatch.setattr("shopdraw.cli.work.when_open", lambda design, assembly: (wrong,))
    capsys.readouterr()
    assert export(str(desk), str(desk.parent / "out"), ("lists",), {"lists": no_lists}) == 0
    assert capsys.readouterr().err == "must-fix lid-strikes lid.panel: the lid runs into the side\n"
    assert main(["check", str(desk)]) == 1


def test_a_silenced_finding_stops_nobody(desk: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    seen = Finding("lid-strikes", Severity.MUST_FIX, ("lid.panel",), "it runs into the side", silenced="tried it")
    monkeypatch.setattr("shopdraw.cli.found.worded", lambda design, assembly, found: (seen,))
    assert main(["check", str(desk)]) == 0


def test_the_whole_package_has_one_folder_for_each_part(tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert main(["export", SAMPLE, str(out)]) == 0
    manifest = json.loads((out / "manifest.json").read_text(encoding="utf-8"))
    there = set(contents(out))
    assert there == {"manifest.json", *(file["path"] for file in manifest["files"])}
    assert {path.split("/")[0] for path in there} == {
        "manifest.json", "sheets", "templates", "drawing", "cnc", "lists"
    }  # fmt: skip


def test_same_piece_same_bytes(tmp_path: Path) -> None:
    for name in ("a", "b"):
        main(["export", SAMPLE, str(tmp_path / name)])
    first, second = (contents(tmp_path / name) for name in ("a", "b"))
    assert first == second
