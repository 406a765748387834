"""A package of files that appears whole or not at all.

Everything is written to a folder beside the target first. Then each finished file takes its place; what stood there
before is kept aside until the last one is in, and comes back should any step fail. Files in the target that an earlier
export didn't write are never touched. `manifest.json` names every file of the package.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import tempfile
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path, PurePosixPath
from typing import Any

from shopdraw.cli.refused import reason_of, refused

MANIFEST = "manifest.json"
_NEW, _OLD = "new", "old"


def write_package(
    target: Path, kinds: Sequence[str], fill: Callable[[Path], Mapping[str, Any]], *, whole: bool = True
) -> tuple[str, ...]:
    """Writes a package and puts it in place.

    Args:
        target: the folder that a person named; made where it isn't there.
        kinds: the parts to write, each a folder of that name; parts of an earlier export that aren't among them stay.
        fill: writes these folders into the one that it is given, and returns what the manifest says besides the files.
        whole: these parts are written whole, and what an earlier export had in them goes; else it stays beside the new.
    Returns:
        The paths of the files written, relative to the target, with slashes.
    Raises:
        Refused: the target can't be written; it is then as it was.
    """
    place = _checked(target)
    try:
        staging = Path(tempfile.mkdtemp(prefix=f".{target.name[:40]}.", suffix=".part", dir=place))
    except OSError as error:
        raise refused(f"{place}: can't be written ({reason_of(error)}); nothing was exported") from error
    try:
        new, old = staging / _NEW, staging / _OLD
        new.mkdir()
        old.mkdir()
        head = fill(new)
        written = _files(new)
        listed = _listed(target)
        gone = [file["path"] for file in listed if whole and file["path"].split("/")[0] in kinds]
        kept = [file for file in listed if file["path"] not in (*gone, *written)]
        files = [*kept, *(_described(new, path) for path in written)]
        files.sort(key=lambda file: file["path"])
        manifest = json.dumps({"format": 1, **head, "files": files}, indent=1, ensure_ascii=False, allow_nan=False)
        (new / MANIFEST).write_text(manifest + "\n", encoding="utf-8", newline="\n")
        _swap(target, new, old, [*written, MANIFEST], gone)
    except OSError as error:
        where = error.filename2 or error.filename or target
        shown = str(where).replace(str(staging / _NEW), str(target))
        raise refused(f"{shown}: can't be written ({reason_of(error)}); {target} is as it was") from error
    finally:
        shutil.rmtree(staging, ignore_errors=True)
    return (*written, MANIFEST)


def _checked(target: Path) -> Path:
    """The folder in which to write first: the target's parent, or the target where the parent can't take it."""
    if "\0" in str(target):
        raise refused(f"{target}: found a NUL in it; expected a folder's name")
    try:
        if target.exists() and not target.is_dir():
            raise refused(f"{target}: found a file; expected a folder to write to")
        if not target.exists():
            target.parent.mkdir(parents=True, exist_ok=True)
            return target.parent
        if not os.access(target, os.W_OK | os.X_OK):
            raise refused(f"{target}: can't be written (permission denied); nothing was exported")
        parent = target.resolve().parent
        beside = os.access(parent, os.W_OK | os.X_OK) and parent.stat().st_dev == target.stat().st_dev
    except OSError as error:
        raise refused(f"{target}: can't be written ({reason_of(error)}); nothing was exported") from error
    return parent if beside else target


def _files(folder: Path) -> list[str]:
    found = [path.relative_to(folder) for path in folder.rglob("*") if path.is_file()]
    return sorted(PurePosixPath(path).as_posix() for path in found)


def _described(folder: Path, path: str) -> dict[str, Any]:
    data = (folder / path).read_bytes()
    return {"path": path, "bytes": len(data), "sha256": hashlib.sha256(data).hexdigest()}


def _listed(target: Path) -> list[dict[str, Any]]:
    """The files that the target's manifest names and that are still there; none where it can't be read."""
    try:
        files = json.loads((target / MANIFEST).read_text(encoding="utf-8"))["files"]
        return [file for file in files if _inside(file["path"]) and (target / file["path"]).is_file()]
    except (OSError, ValueError, TypeError, KeyError, AttributeError):
        return []


def _inside(path: str) -> bool:
    """Whether a manifest's path stays in its folder: a manifest that someone altered must not reach other files."""
    parts = PurePosixPath(path).parts
    return len(parts) > 1 and ".." not in parts and not PurePosixPath(path).is_absolute()


def _swap(target: Path, new: Path, old: Path, written: Sequence[str], stale: Sequence[str]) -> None:
    """Puts the new files in place of the old ones, and all back as it was should a step fail."""
    if not target.exists():
        new.replace(target)
        return
    moved: list[tuple[Path, Path]] = []

    def move(source: Path, place: Path) -> None:
        place.parent.mkdir(parents=True, exist_ok=True)
        source.replace(place)
        moved.append((source, place))

    try:
        for path in dict.fromkeys([*stale, *written]):
            if (target / path).is_file():
                move(target / path, old / path)
        for path in written:
            move(new / path, target / path)
    except BaseException:
        for source, place in reversed(moved):
            place.replace(source)
        raise
    for folder in {(target / path).parent for path in stale}:
        if folder != target and folder.is_dir() and not any(folder.iterdir()):
            folder.rmdir()
