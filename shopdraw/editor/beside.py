"""Files that a piece file speaks of, by paths relative to it: they lead there from wherever the two lie. No Qt."""

from __future__ import annotations

import os
from pathlib import Path

from shopdraw.editor.state import Setting
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design


def beside(file: Path, folder: Path | None) -> str:
    """A path as a piece file keeps it: relative to its own folder where that is possible.

    Args:
        file: what is meant.
        folder: of the piece file; None where it isn't saved yet.
    """
    if folder is None:
        return str(file)
    try:
        return Path(os.path.relpath(file.resolve(), folder.resolve())).as_posix()
    except ValueError:  # another drive
        return str(file)


def moved_with(design: Design, before: Path | None, after: Path) -> tuple[Setting, ...]:
    """What must be set so that a piece file's paths lead to the same files from another folder.

    Args:
        design: of the piece.
        before: the folder that its paths lead from; None where it was never saved.
        after: the folder that it is saved to.
    """
    if before is not None and before.resolve() == after.resolve():
        return ()
    named = {address_text(("photo", key, "file")): table.file for key, table in design.photo.items()}
    if design.piece.shop:
        named["piece.shop"] = design.piece.shop
    found = []
    for address, file in named.items():
        path = Path(file)
        if before is None and not path.is_absolute():
            continue
        # What a person gave from the root on stays so; a photo of a piece that had no folder yet had no other way.
        if before is not None and path.is_absolute():
            continue
        told = beside(path if before is None else before / path, after)
        if told != file:
            found.append(Setting(address, told))
    return tuple(found)
