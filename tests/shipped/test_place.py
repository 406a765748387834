"""Shipped files are found in a checkout and inside an installed package, and no name leads out."""

from __future__ import annotations

from pathlib import Path

import pytest

from shopdraw.shipped import NotShipped, place, resource_path, sample_names, sample_path


def _ship(top: Path) -> None:
    (top / "resources" / "trade").mkdir(parents=True)
    (top / "resources" / "trade" / "x.toml").write_text("a = 1")
    (top / "sample_projects").mkdir()
    for name in ("b", "a"):
        (top / "sample_projects" / f"{name}.piece").write_text("format = 1")
    (top / "sample_projects" / "notes.txt").write_text("")
    (top / "secret").write_text("")


@pytest.fixture(params=["checkout", "installed"])
def top(request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    package = tmp_path / "shopdraw"
    found = tmp_path if request.param == "checkout" else package / "_shipped"
    _ship(found)
    monkeypatch.setattr(place, "_PACKAGE", package)
    return found


def test_files_are_found_in_both_places(top: Path) -> None:
    assert resource_path("trade/x.toml") == top / "resources" / "trade" / "x.toml"
    assert sample_path("a") == sample_path("a.piece") == top / "sample_projects" / "a.piece"
    assert sample_names() == ("a", "b")


@pytest.mark.parametrize(
    "name", ["", ".", "trade", "../secret", "trade/../../secret", "/etc/passwd", "..\\secret", "y.toml"]
)
def test_no_name_leads_out_or_to_nothing(top: Path, name: str) -> None:
    with pytest.raises(NotShipped, match="no file"):
        resource_path(name)


def test_the_packed_folder_goes_first(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    package = tmp_path / "site" / "shopdraw"
    _ship(package / "_shipped")
    _ship(tmp_path / "site")
    monkeypatch.setattr(place, "_PACKAGE", package)
    assert resource_path("trade/x.toml").is_relative_to(package)


def test_a_broken_installation_says_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(place, "_PACKAGE", tmp_path / "shopdraw")
    with pytest.raises(NotShipped, match="install shopdraw again"):
        sample_names()


def test_this_projects_own_tables_are_found() -> None:
    assert resource_path("trade/species.toml").is_file()
