"""``shopdraw export --board``: what a single board needs at the bench and at the router, and nothing else."""

from __future__ import annotations

import difflib
import sys
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any

from shopdraw.cli.built import Work, built
from shopdraw.cli.check import finding_line
from shopdraw.cli.drawing_files import write_board_sheets
from shopdraw.cli.package import write_package
from shopdraw.cli.refused import Refused, refused
from shopdraw.cli.router_files import write_board_files
from shopdraw.cli.template_files import write_board_templates
from shopdraw.cli.work import checked
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding
from shopdraw.write.finding_facts import finding_facts

OF_A_BOARD: Mapping[str, Callable[[Work, Path, Sequence[Board]], Sequence[Finding]]] = {
    "sheets": write_board_sheets,
    "templates": write_board_templates,
    "cnc": write_board_files,
}
"""The parts of a package that there are of one board, and what writes them."""


def export_boards(
    file: str, folder: str, labels: Sequence[str], only: Sequence[str] = (), shop: str | None = None
) -> int:
    """Writes what belongs to the named boards; other files of an earlier export stay. 0 whatever the findings say.

    Args:
        file: the piece file.
        folder: where to write.
        labels: of the boards, or their ids.
        only: parts of the package; all that there are of a board where none is named.
        shop: the shop file for this run, if one was named.
    Raises:
        Refused: the piece can't be read or built, has no such board, or the folder can't be written; it is then as it
            was.
    """
    for kind in only:
        if kind not in OF_A_BOARD:
            raise refused(f"--only: {kind} is of the whole piece; expected one of {', '.join(OF_A_BOARD)} with --board")
    kinds = [kind for kind in OF_A_BOARD if not only or kind in only]
    work = built(file, shop)
    boards = boards_named(work.assembly, labels)
    work = checked(work)

    def fill(place: Path) -> Mapping[str, Any]:
        found: list[Finding] = []
        for kind in kinds:
            (place / kind).mkdir()
            found += OF_A_BOARD[kind](work, place / kind, boards)
        return {
            "piece": work.piece.design.piece.title,
            "boards": [board.label for board in boards],
            "must_fix": [finding_facts(finding) for finding in work.must_fix],
            "findings": [finding_facts(finding) for finding in found],
        }

    written = write_package(Path(folder), kinds, fill, whole=False)
    for finding in work.must_fix:
        sys.stderr.write(finding_line(finding) + "\n")
    sys.stdout.write(f"{len(written)} files in {folder}\n")
    return 0


def boards_named(assembly: Assembly, labels: Sequence[str]) -> tuple[Board, ...]:
    """The boards of these labels or ids, each once, in the piece's order.

    Raises:
        Refused: there is no such board; a line for each, with the label that comes nearest.
    """
    known = {word: board.id for board in assembly.boards for word in (board.id, board.label)}
    strangers = [word for word in dict.fromkeys(labels) if word not in known]
    if strangers:
        raise Refused(_unknown(word, [board.label for board in assembly.boards]) for word in strangers)
    chosen = {known[word] for word in labels}
    return tuple(board for board in assembly.boards if board.id in chosen)


def _unknown(word: str, labels: Sequence[str]) -> str:
    by_small = {label.lower(): label for label in reversed(labels)}
    near = difflib.get_close_matches(word.lower(), list(by_small), 1, 0.0)
    return f'--board: found "{word}", which is no board of this piece; the nearest label is {by_small[near[0]]}'
