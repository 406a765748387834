"""The states that an open piece goes through: its text, and what follows from it. Frozen, without Qt.

A state is made from a text alone, so that undo needs no inverse: it shows an earlier text again.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from shopdraw.build import CannotBuild, build
from shopdraw.piece.design import Design
from shopdraw.piece.fault import Fault, PieceError, with_lines
from shopdraw.piece.reading import Piece, parse_piece
from shopdraw.piece.saving import CannotSet, Typed, remove_value, set_value
from shopdraw.wood.assembly import Assembly


@dataclass(frozen=True, slots=True)
class State:
    """A piece file's text and what follows from it.

    Attributes:
        text: the file's text.
        piece: as read, or None where the text can't be read.
        assembly: as built, or None where it can't be built.
        faults: why it can't be read or built; empty otherwise.
    """

    text: str
    piece: Piece | None
    assembly: Assembly | None
    faults: tuple[Fault, ...] = ()

    @property
    def design(self) -> Design | None:
        """What a person decided, where the text can be read."""
        return self.piece.design if self.piece else None

    @property
    def sound(self) -> bool:
        """Whether the piece can be read and built."""
        return self.assembly is not None


@dataclass(frozen=True, slots=True)
class Setting:
    """One value to be set in the text; None takes it out, so that its default holds again."""

    address: str
    value: Typed | None


def state_of(text: str, source: str = "piece", variant: str | None = None) -> State:
    """The state that a text leads to; what is wrong with it becomes faults.

    Args:
        text: a piece file's text.
        source: what faults call it: the file's name.
        variant: a variant in it to lay over it.
    """
    try:
        piece = parse_piece(text, source, variant=variant)
    except PieceError as error:
        return State(text, None, None, error.faults)
    try:
        return State(piece.text, piece, build(piece.design))
    except CannotBuild as error:
        return State(piece.text, piece, None, with_lines(error.faults, piece.text))


def changed_text(text: str, settings: Iterable[Setting]) -> str:
    """The text with values set or taken out, all else as it stands.

    Raises:
        CannotSet: an address can't take its value.
    """
    for setting in settings:
        if setting.value is None:
            text = remove_value(text, setting.address)
        else:
            text = set_value(text, setting.address, setting.value)
    return text


__all__ = ["CannotSet", "Setting", "State", "changed_text", "state_of"]
