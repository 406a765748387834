"""Revisions: what a frozen revision held of each board, and what has changed since.

A board is frozen as one line: id, label, finished sizes and a fingerprint of its shape and stock. Its place isn't in
it: a board that only moved needn't be cut again.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.piece.design import Design, RevisionTable
from shopdraw.shape.path import Path
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Cut
from shopdraw.wood.finding import Finding, Severity

STEP_MM = 1e-3
"""Sizes nearer than this are one size in a fingerprint."""
_LENGTH = 12
_FIELDS = 4


@dataclass(frozen=True, slots=True)
class Frozen:
    """A board as a revision froze it: id, label, "length × width × thickness" in mm, fingerprint."""

    board: str
    label: str
    sizes: str
    fingerprint: str

    @property
    def line(self) -> str:
        """As it stands in the piece file."""
        return f"{self.board} {self.label} {self.sizes} {self.fingerprint}"


@dataclass(frozen=True, slots=True)
class Change:
    """What became of a board since a revision.

    Attributes:
        board, label: of the board as it is now, or as it was where it is gone.
        kind: "changed", "new", "gone" or "label".
        was, now: sizes, mm; "" where there are none.
        old_label: at the revision.
        cut: whether the board had been cut already.
    """

    board: str
    label: str
    kind: str
    was: str = ""
    now: str = ""
    old_label: str = ""
    cut: bool = False

    @property
    def words(self) -> str:
        """What changed, for a person."""
        match self.kind:
            case "changed":
                sizes = f"was {self.was}, is {self.now} mm" if self.was != self.now else "its cuts, outline or stock"
                return f"changed: {sizes}"
            case "label":
                return f"called {self.old_label} before"
            case _:
                return self.kind


def frozen_boards(assembly: Assembly) -> tuple[Frozen, ...]:
    """Every board as a revision keeps it."""
    return tuple(Frozen(b.id, b.label, sizes_of(b), fingerprint(b)) for b in assembly.boards)


def sizes_of(board: Board) -> str:
    """Length × width × thickness, mm, without spaces."""
    return "×".join(f"{round(size, 2):g}" for size in (board.length, board.width, board.thickness))


def fingerprint(board: Board) -> str:
    """The same for boards of one shape in one stock, on any machine; another one as soon as a cut differs."""
    shape = board.shape
    cuts = sorted(_cut_words(cut) for cut in shape.cuts)
    layers = ",".join(map(_size, board.layers))
    words = [
        board.stock.species, board.stock.kind, _size(shape.thickness), layers, _path_words(shape.outline), *cuts
    ]  # fmt: skip
    return hashlib.sha256("\n".join(words).encode()).hexdigest()[:_LENGTH]


def _size(size: float) -> str:
    return str(round(size / STEP_MM))


def _path_words(path: Path) -> str:
    """A closed path from its least corner on, so that it reads alike wherever it starts."""
    corners = [f"{_size(c.x)},{_size(c.y)},{round(c.bulge * 1e6)}" for c in path.anticlockwise().corners]
    start = corners.index(min(corners))
    return " ".join([*corners[start:], *corners[:start]])


def _cut_words(cut: Cut) -> str:
    frame = "" if cut.frame is None else " ".join(_size(number) for number in cut.frame.rows())
    islands = sorted(_path_words(island) for island in cut.islands)
    return "|".join((cut.face.value, _size(cut.start), _size(cut.depth), _path_words(cut.outline), *islands, frame))


def read_frozen(table: RevisionTable) -> Iterator[Frozen]:
    """The boards that a revision froze; a line that isn't one is left out, see `revision_findings`."""
    for line in table.boards:
        words = line.split()
        if len(words) == _FIELDS:
            yield Frozen(*words)


def last_revision(design: Design) -> tuple[str, RevisionTable] | None:
    """The revision frozen last: the last one of the file."""
    return next(reversed(design.revision.items()), None)


def changes_since(assembly: Assembly, table: RevisionTable) -> tuple[Change, ...]:
    """What became of each board since a revision; boards that are as they were are left out.

    Args:
        assembly: the piece as it is.
        table: the revision.
    """
    before = {frozen.board: frozen for frozen in read_frozen(table)}
    if not before:
        return ()
    cut = set(table.cut)
    found = []
    for now in frozen_boards(assembly):
        was = before.pop(now.board, None)
        done = now.board in cut or now.label in cut
        if was is None:
            found.append(Change(now.board, now.label, "new", "", now.sizes))
        elif was.fingerprint != now.fingerprint:
            found.append(Change(now.board, now.label, "changed", was.sizes, now.sizes, was.label, done))
        elif was.label != now.label:
            found.append(Change(now.board, now.label, "label", was.sizes, now.sizes, was.label, done))
    for was in before.values():
        done = was.board in cut or was.label in cut
        found.append(Change(was.board, was.label, "gone", was.sizes, "", was.label, done))
    return tuple(found)


def revision_findings(design: Design, assembly: Assembly) -> tuple[Finding, ...]:
    """Boards already cut that are wrong now; what of a revision can't be read, or points nowhere."""
    found: list[Finding] = []
    for name, table in design.revision.items():
        found += _unread(name, table)
    last = last_revision(design)
    if last is not None:
        name, table = last
        for change in changes_since(assembly, table):
            if change.cut and change.kind in ("changed", "gone"):
                found.append(_wrong(name, change))
    return tuple(found)


def _wrong(name: str, change: Change) -> Finding:
    if change.kind == "gone":
        told = "is no longer in the piece"
    else:
        told = f"was cut to revision {name} and is wrong now ({change.words})"
    message = f"{change.label} {told}: cut it again, or take the change back"
    return Finding("cut-board-wrong", Severity.MUST_FIX, (change.board,), message, unit="", basis=f"revision {name}")


def _unread(name: str, table: RevisionTable) -> Iterator[Finding]:
    known = list(read_frozen(table))
    for line in table.boards:
        if len(line.split()) != _FIELDS:
            yield _caution(
                name, f'revision.{name}.boards: found "{line}"; expected an id, a label, sizes and a fingerprint'
            )
    names = {word for frozen in known for word in (frozen.board, frozen.label)}
    for board in table.cut:
        if board not in names:
            yield _caution(name, f'revision.{name}.cut: found "{board}"; expected a board that the revision froze')


def _caution(name: str, message: str) -> Finding:
    where = (f"revision.{name}",)
    return Finding("revision-unread", Severity.CAUTION, where, message, unit="", basis="the piece file's own keys")
