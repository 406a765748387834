"""A package of files appears whole or not at all, and touches nothing that isn't its own."""

import errno
import hashlib
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

from shopdraw.cli.package import MANIFEST, write_package
from shopdraw.cli.refused import Refused


class Full(OSError):
    pass


def filler(content: str, *paths: str, fails: bool = False):
    def fill(place: Path) -> Mapping[str, Any]:
        for path in paths:
            (place / path).parent.mkdir(parents=True, exist_ok=True)
            (place / path).write_text(content)
        if fails:
            raise OSError(errno.ENOSPC, "No space left on device", str(place / paths[-1]))
        return {"piece": "Bureau"}

    return fill


def snapshot(folder: Path) -> dict[str, bytes]:
    return {str(path.relative_to(folder)): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def listed(folder: Path) -> list[str]:
    return [file["path"] for file in json.loads((folder / MANIFEST).read_text())["files"]]


BOTH = ("sheets", "lists")


@pytest.fixture
def target(tmp_path: Path) -> Path:
    """A folder with an export in it, and a file of the person's own in each place."""
    target = tmp_path / "out"
    write_package(target, BOTH, filler("one", "sheets/a.pdf", "sheets/b.pdf", "lists/a.csv"))
    (target / "mine.txt").write_text("mine")
    (target / "sheets" / "mine.txt").write_text("mine")
    return target


def test_the_manifest_names_every_file_with_its_sum(tmp_path: Path) -> None:
    write_package(tmp_path / "new" / "out", BOTH, filler("one", "sheets/a.pdf", "lists/a.csv"))
    files = json.loads((tmp_path / "new" / "out" / MANIFEST).read_text())["files"]
    assert [file["path"] for file in files] == ["lists/a.csv", "sheets/a.pdf"]
    assert all(file["sha256"] == hashlib.sha256(b"one").hexdigest() and file["bytes"] == 3 for file in files)
    assert set(snapshot(tmp_path / "new" / "out")) == {MANIFEST, *(file["path"] for file in files)}


def test_a_second_export_replaces_its_own_files_and_nothing_else(target: Path) -> None:
    write_package(target, BOTH, filler("two", "sheets/a.pdf", "sheets/c.pdf"))
    assert listed(target) == ["sheets/a.pdf", "sheets/c.pdf"]
    files = snapshot(target)
    assert files["sheets/a.pdf"] == b"two"
    assert set(files) == {MANIFEST, "mine.txt", "sheets/mine.txt", "sheets/a.pdf", "sheets/c.pdf"}
    assert not (target / "lists").exists()


def test_parts_that_were_not_asked_for_stay(target: Path) -> None:
    write_package(target, ["lists"], filler("two", "lists/a.csv"))
    files = snapshot(target)
    assert (files["sheets/a.pdf"], files["lists/a.csv"]) == (b"one", b"two")
    assert listed(target) == ["lists/a.csv", "sheets/a.pdf", "sheets/b.pdf"]


def test_case_32_a_failed_export_leaves_the_last_good_one(target: Path) -> None:
    before = snapshot(target.parent)
    with pytest.raises(Refused, match=r"sheets/a.pdf: can't be written \(no space left on device\)"):
        write_package(target, BOTH, filler("two", "sheets/a.pdf", fails=True))
    assert snapshot(target.parent) == before


@pytest.mark.parametrize("at", range(6))
def test_a_failure_while_files_are_put_in_place_undoes_every_step(
    target: Path, monkeypatch: pytest.MonkeyPatch, at: int
) -> None:
    before = snapshot(target.parent)
    really, steps = Path.replace, iter(range(100))

    def replace(self: Path, other: Path) -> Path:
        if next(steps) == at:
            raise OSError(errno.EACCES, "Permission denied", str(other))
        return really(self, other)

    monkeypatch.setattr(Path, "replace", replace)
    with pytest.raises(Refused, match="permission denied"):
        write_package(target, BOTH, filler("two", "sheets/a.pdf", "sheets/c.pdf"))
    monkeypatch.undo()
    assert snapshot(target.parent) == before


def test_any_other_error_leaves_the_last_good_one_too(target: Path) -> None:
    before = snapshot(target.parent)

    def fill(place: Path) -> Mapping[str, Any]:
        (place / "sheets").mkdir()
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        write_package(target, BOTH, fill)
    assert snapshot(target.parent) == before


def test_a_target_that_is_a_file_is_refused_before_any_work(tmp_path: Path) -> None:
    (tmp_path / "out").write_text("mine")
    worked: list[Path] = []
    for target in (tmp_path / "out", tmp_path / "out" / "deeper", tmp_path / "x\0y"):
        with pytest.raises(Refused):
            write_package(target, BOTH, lambda place: worked.append(place) or {})
    assert worked == []
    assert snapshot(tmp_path) == {"out": b"mine"}


def test_a_manifest_that_someone_altered_reaches_no_other_file(target: Path) -> None:
    manifest = json.loads((target / MANIFEST).read_text())
    (target.parent / "precious").write_text("x")
    manifest["files"] += [{"path": "sheets/../../precious"}, {"path": "/etc/hostname"}, {"path": "mine.txt"}]
    (target / MANIFEST).write_text(json.dumps(manifest))
    write_package(target, [*BOTH, ".."], filler("two", "sheets/a.pdf"))
    assert (target.parent / "precious").exists()
    assert (target / "mine.txt").exists()


@pytest.mark.parametrize("manifest", ["", "[]", '{"files": 1}', '{"files": [1]}', '{"files": [{}]}'])
def test_a_broken_manifest_does_no_harm(target: Path, manifest: str) -> None:
    (target / MANIFEST).write_text(manifest)
    write_package(target, BOTH, filler("two", "sheets/a.pdf"))
    assert listed(target) == ["sheets/a.pdf"]


def test_case_37_a_folder_with_accents(tmp_path: Path) -> None:
    target = tmp_path / "Büro" / "Žďár"
    write_package(target, ["lists"], filler("ä", "lists/écritoire.csv"))
    assert listed(target) == ["lists/écritoire.csv"]


def test_same_files_same_bytes(tmp_path: Path) -> None:
    for name in ("a", "b"):
        write_package(tmp_path / name, BOTH, filler("one", "sheets/a.pdf", "lists/a.csv"))
    assert snapshot(tmp_path / "a") == snapshot(tmp_path / "b")
