"""``shopdraw freeze``: keeps in the piece file what a revision was made of, so that later changes can be told."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path

from shopdraw.check.revision import frozen_boards
from shopdraw.cli.refused import refused
from shopdraw.cli.work import work_on
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.saving import CannotSave, CannotSet, save_piece, set_value


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
    if not name.replace("-", "").replace("_", "").isalnum():
        raise refused(f'revision: found "{name}"; expected a name of letters and figures, such as A')
    if name in work.piece.design.revision:
        raise refused(f"revision.{name}: it is frozen already; expected a new name")
    boards = frozen_boards(work.assembly)
    known = {word for board in boards for word in (board.board, board.label)}
    for board in cut:
        if board not in known:
            raise refused(f'--cut: found "{board}"; expected a board\'s label or id, such as {boards[0].label}')
    text = work.piece.text
    try:
        if date:
            text = set_value(text, f"revision.{name}.date", date)
        text = set_value(text, f"revision.{name}.boards", [board.line for board in boards])
        if cut:
            text = set_value(text, f"revision.{name}.cut", list(cut))
        parse_piece(text, file)
        save_piece(Path(file), text)
    except (CannotSet, CannotSave) as error:
        raise refused(str(error)) from error
    sys.stdout.write(f"revision {name}: {len(boards)} boards frozen in {file}\n")
    return 0
