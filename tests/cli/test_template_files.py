"""The templates of a package: which files there are, and that they may not be scaled."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from shopdraw.cli.template_files import write_templates
from shopdraw.cli.work import work_on

SAMPLES = Path(__file__).parents[2] / "sample_projects"

LABELS = ("1L", "1R", "2", "rod-height", "rod-width", "rod-depth")
"""Both sides, the top with its tails, and the piece's rods."""
PROFILES = {
    "chart-room-desk": (),
    "harbour-office-desk": ("profile-7.1a", "profile-7.2a", "profile-7.3a", "profile-7.4a"),
}
"""Of lipped drawer fronts."""


def written(piece: Path, folder: Path) -> set[str]:
    folder.mkdir()
    assert write_templates(work_on(str(piece)), folder) == ()
    return {path.name for path in folder.iterdir()}


@pytest.mark.parametrize(("name", "paper"), [("chart-room-desk", "A4"), ("harbour-office-desk", "Letter")])
def test_each_side_on_one_page_and_on_the_paper_of_its_unit(name: str, paper: str, tmp_path: Path) -> None:
    names = written(SAMPLES / f"{name}.piece", tmp_path / "out")
    labels = (*LABELS, *PROFILES[name])
    wanted = {f"{name}-template-{label}{end}.pdf" for label in labels for end in ("", f"-{paper}")}
    assert names == wanted | {f"{name}-template-printer-test-{paper}.pdf"}
    for path in (tmp_path / "out").iterdir():
        assert PdfReader(path).trailer["/Root"]["/ViewerPreferences"]["/PrintScaling"] == "/None"


@pytest.mark.parametrize(("asked", "ends"), [("roll", ("",)), ("A3", ("", "-A3")), ("Tabloid", ("", "-Tabloid"))])
def test_the_piece_chooses_the_paper(asked: str, ends: tuple[str, ...], tmp_path: Path) -> None:
    text = (SAMPLES / "chart-room-desk.piece").read_text(encoding="utf-8")
    piece = tmp_path / "desk.piece"
    piece.write_text(f'{text}\n[drawing]\ntemplate_paper = "{asked}"\n', encoding="utf-8")
    wanted = {f"desk-template-{label}{end}.pdf" for label in LABELS for end in ends}
    assert written(piece, tmp_path / "out") == wanted | {f"desk-template-printer-test-{asked}.pdf"}


def test_the_same_piece_gives_the_same_bytes(tmp_path: Path) -> None:
    for folder in ("one", "two"):
        written(SAMPLES / "pilot-station-desk.piece", tmp_path / folder)
    for path in (tmp_path / "one").iterdir():
        assert path.read_bytes() == (tmp_path / "two" / path.name).read_bytes()
