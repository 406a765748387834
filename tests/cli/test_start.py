"""Starting a piece: a file for a person to read and edit, never written over another."""

from pathlib import Path

import pytest

from shopdraw.cli import main
from shopdraw.piece.reading import read_piece


def test_a_new_piece_is_read_without_a_caution(tmp_path: Path) -> None:
    path = tmp_path / "new.piece"
    assert main(["start", "slant-desk", str(path)]) == 0
    piece = read_piece(path)
    assert piece.cautions == ()
    assert piece.design.piece.kind == "slant-desk"


@pytest.mark.parametrize("kind", ["chest", "bookcase", "lectern", "free"])
def test_each_kind_starts_with_a_piece_that_can_be_built(tmp_path: Path, kind: str) -> None:
    path = tmp_path / "new.piece"
    assert main(["start", kind, str(path)]) == 0
    piece = read_piece(path)
    assert piece.cautions == ()
    assert piece.design.piece.kind == kind
    assert main(["check", str(path)]) == 0


def test_a_cell_of_an_opening_may_be_named_with_or_without_quotes(tmp_path: Path) -> None:
    path = tmp_path / "new.piece"
    main(["start", "chest", str(path)])
    quoted = read_piece(path)
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace('[opening."bank.1"]', "[opening.bank.1]"), encoding="utf-8")
    plain = read_piece(path)
    assert plain.cautions == ()
    assert plain.design == quoted.design


def test_what_is_offered_in_its_comments_is_read_too(tmp_path: Path) -> None:
    path = tmp_path / "new.piece"
    main(["start", "slant-desk", str(path)])
    lines = [
        line.removeprefix("# ") if line.startswith("# ") and ("= " in line or line.startswith("# [")) else line
        for line in path.read_text(encoding="utf-8").splitlines()
        if not line.startswith("angle")
    ]
    path.write_text("\n".join(lines), encoding="utf-8")
    piece = read_piece(path)
    assert piece.cautions == ()
    assert piece.design.slant is not None
    assert piece.design.slant.top_depth == 230.0
    assert piece.design.stock["cherry"].thickness == 20.0


def test_a_file_that_is_there_is_never_written_over(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "mine.piece"
    path.write_text("mine")
    assert main(["start", "slant-desk", str(path)]) == 2
    assert path.read_text() == "mine"
    assert capsys.readouterr().err.count("\n") == 1


@pytest.mark.parametrize("name", ["", "nowhere/new.piece", "x\0y"])
def test_a_place_that_cannot_be_written_gives_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str
) -> None:
    assert main(["start", "slant-desk", str(tmp_path / name)]) == 2
    assert capsys.readouterr().err.count("\n") == 1
    assert list(tmp_path.iterdir()) == []
