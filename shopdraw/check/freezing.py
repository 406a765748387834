"""Freezing a revision: what the piece file keeps of it, so that later changes can be told."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.check.revision import frozen_boards
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design
from shopdraw.piece.saving import set_value
from shopdraw.wood.assembly import Assembly


class CannotFreeze(Exception):
    """The revision can't be kept; the message says where, what was found and what would be right."""


def frozen_text(
    text: str, design: Design, assembly: Assembly, name: str, cut: Sequence[str] = (), date: str = ""
) -> str:
    """A piece file's text with [revision.NAME] in it.

    Args:
        text: of the piece file.
        design, assembly: what it says, and the boards that follow.
        name: of the revision; one that is there already stays as it is.
        cut: boards already cut, by label or id.
        date: as the revision's date is to read.
    Raises:
        CannotFreeze: no name for a revision, one that is frozen already, or no such board.
        CannotSet: the file is laid out so that the revision can't be put in.
    """
    if not name.replace("-", "").replace("_", "").isalnum():
        raise CannotFreeze(f'revision: found "{name}"; expected a name of letters and figures, such as A')
    if name in design.revision:
        raise CannotFreeze(f"revision.{name}: it is frozen already; expected a new name")
    boards = frozen_boards(assembly)
    known = {word for board in boards for word in (board.board, board.label)}
    for board in cut:
        if board not in known:
            raise CannotFreeze(f'cut: found "{board}"; expected a board\'s label or id, such as {boards[0].label}')
    if date:
        text = set_value(text, address_text(("revision", name, "date")), date)
    text = set_value(text, address_text(("revision", name, "boards")), [board.line for board in boards])
    return set_value(text, address_text(("revision", name, "cut")), list(cut)) if cut else text
