"""``shopdraw freeze``: keeps in the piece file what a revision was made of, so that later changes can be told."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path

from shopdraw.check.freezing import CannotFreeze, frozen_text
from shopdraw.cli.refused import refused
from shopdraw.cli.work import work_on
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.saving import CannotSave, CannotSet, save_piece


def freeze(file: str, name: str, cut: Sequence[str] = (), date: str = "") -> int:
    """Writes [revision.NAME] into a piece file; 0 when it is done.

    Args:
        file: the piece file.
        name: of the revision; one that is there already stays as it is.
        cut: boards already cut, by label or id.
        date: as the revision's date is to read.
    Raises:
        Refused: the piece can't be read or built, has that revision, or can't be saved; no such board.
    """
    work = work_on(file)
    try:
        text = frozen_text(work.piece.text, work.piece.design, work.assembly, name, cut, date)
        parse_piece(text, file)
        save_piece(Path(file), text)
    except (CannotFreeze, CannotSet, CannotSave) as error:
        raise refused(str(error)) from error
    sys.stdout.write(f"revision {name}: {len(work.assembly.boards)} boards frozen in {file}\n")
    return 0
