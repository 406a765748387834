"""A piece as far as every verb needs it before it is checked: read and built.

The rules and what they need are imported elsewhere (`work.py`), so that two processes can share that out.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

from shopdraw.build import CannotBuild, build
from shopdraw.cli.refused import Refused
from shopdraw.piece.fault import PieceError, with_lines
from shopdraw.piece.reading import Piece, read_piece
from shopdraw.piece.shop_reading import ShopFile, shop_for
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity


@dataclass(frozen=True, slots=True)
class Work:
    """What the verbs hand on.

    Attributes:
        piece: the piece file as read.
        assembly: its boards, joints, places and motions.
        findings: what is wrong with it, silenced ones included.
        shop: where it is made.
    """

    piece: Piece
    assembly: Assembly
    findings: tuple[Finding, ...]
    shop: ShopFile = field(default_factory=ShopFile)

    @property
    def must_fix(self) -> tuple[Finding, ...]:
        """The findings that must be fixed, those left out that a person has silenced."""
        return tuple(f for f in self.findings if f.severity is Severity.MUST_FIX and f.silenced is None)

    @property
    def stem(self) -> str:
        """The piece file's name without its ending: what exported files are called after."""
        return self.piece.path.stem if self.piece.path else "piece"


def built(file: str, shop_file: str | None = None) -> Work:
    """Reads and builds the piece in a file, and leaves it unchecked: the work has no findings yet.

    Args:
        file: the piece file.
        shop_file: the shop file for this run; else the one that the piece names, the user's own, the stated defaults.
    Raises:
        Refused: a file can't be read or what it asks for can't be built, one line for each fault.
    """
    piece = read(file)
    try:
        shop = shop_for(piece.path, piece.design, shop_file)
    except PieceError as error:
        raise Refused(error.lines()) from error
    try:
        assembly = build(piece.design)
    except CannotBuild as error:
        raise Refused(PieceError(file, with_lines(error.faults, piece.text)).lines()) from error
    return Work(piece, assembly, (), shop)


def read(file: str) -> Piece:
    """The piece in a file.

    Raises:
        Refused: it can't be read.
    """
    try:
        piece = read_piece(Path(file))
    except PieceError as error:
        raise Refused(error.lines()) from error
    return piece
