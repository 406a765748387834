"""The states that an open piece goes through: its text, and what follows from it. Frozen, without Qt.

A state is made from a text alone, so that undo needs no inverse: it shows an earlier text again.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from shopdraw.build import CannotBuild, build
from shopdraw.piece.address import NotAnAddress, address_path, address_text, value_at
from shopdraw.piece.alternatives import contradicted
from shopdraw.piece.design import Design
from shopdraw.piece.fault import Fault, PieceError, with_lines
from shopdraw.piece.reading import Piece, parse_piece
from shopdraw.piece.saving import CannotSet, Typed, remove_value, set_value
from shopdraw.piece.variant import UNSET, VARIANT, NoSuchVariant, place_in_variant, unset_in_variant
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


def state_of(text: str, source: str = "piece", variant: str | None = None, *, rough: bool = False) -> State:
    """The state that a text leads to; what is wrong with it becomes faults.

    Args:
        text: a piece file's text.
        source: what faults call it: the file's name.
        variant: a variant in it to lay over it.
        rough: built for a draft only.
    """
    try:
        piece = parse_piece(text, source, variant=variant)
    except PieceError as error:
        return State(text, None, None, error.faults)
    try:
        return State(piece.text, piece, build(piece.design, rough=rough))
    except CannotBuild as error:
        return State(piece.text, piece, None, _in_own_figures(piece.design, with_lines(error.faults, piece.text)))


def _in_own_figures(design: Design, faults: tuple[Fault, ...]) -> tuple[Fault, ...]:
    """Why a piece can't be built, in inches where it is an inch piece."""
    # Rules of the trade are loaded when the first piece can't be built: the window opens without them.
    from shopdraw.check.own_figures import words_in_own_figures

    return tuple(
        replace(one, found=words_in_own_figures(design, one.found), right=words_in_own_figures(design, one.right))
        for one in faults
    )


def changed_text(text: str, settings: Iterable[Setting], variant: str | None = None) -> str:
    """The text with values set or taken out, all else as it stands.

    Args:
        text: a piece file's text.
        settings: in turn.
        variant: the variant that is shown: what is set goes into it, the file's own values stay; what is taken out is
            taken out of the variant, and where the file itself gives it the variant does without it.
    Raises:
        CannotSet: an address can't take its value.
    """
    for setting in settings:
        if variant is not None:
            text = _changed_variant(text, setting, variant)
        elif setting.value is None:
            text = remove_value(text, setting.address)
        else:
            text = set_value(text, setting.address, setting.value)
    return text


def in_its_place(design: Design | None, settings: tuple[Setting, ...]) -> tuple[Setting, ...]:
    """The settings, and before them what has to go out: inputs of which one is given take each other's place."""
    if design is None:
        return settings
    named = {setting.address for setting in settings}
    others = [one for setting in settings if setting.value is not None for one in contradicted(setting.address)]
    return (*(Setting(one, None) for one in others if one not in named and _given(design, one)), *settings)


def _given(design: Design, address: str) -> bool:
    table, _, key = address.partition(".")
    return getattr(getattr(design, table), key, None) is not None


def as_variant(before: str, after: str, name: str) -> str:
    """The text of a file with what another text has different laid down as a variant.

    Args:
        before: the file as it stays.
        after: the same file changed; values that it lacks are left out by the variant.
        name: the variant's.
    Raises:
        CannotSet: the name can't stand there.
    """
    base, changed = dict(leaves_of(tomllib.loads(before))), dict(leaves_of(tomllib.loads(after)))
    settings = [Setting(address_text(path), None) for path in base if path[0] != VARIANT and path not in changed]
    settings += [
        Setting(address_text(path), value)
        for path, value in changed.items()
        if path[0] != VARIANT and base.get(path) != value
    ]
    return changed_text(before, settings, name)


def _changed_variant(text: str, setting: Setting, variant: str) -> str:
    tables = tomllib.loads(text)
    path = _path_of(setting.address)
    try:
        place = place_in_variant(tables, variant, path)
    except NoSuchVariant as error:
        raise CannotSet(error.fault.right) from error
    own = address_text(place if place is not None else (VARIANT, variant, setting.address))
    unset = [one for one in unset_in_variant(tables, variant) if _path_of(one) != path]
    base = value_at(tables, path) is not None
    if setting.value is not None:
        text = set_value(text, own, setting.value)
    else:
        text = remove_value(text, own)
        unset += [setting.address] if base else []
    if unset == list(unset_in_variant(tables, variant)):
        return text
    listed = address_text((VARIANT, variant, UNSET))
    return set_value(text, listed, unset) if unset else remove_value(text, listed)


def _path_of(address: str) -> tuple[str, ...]:
    try:
        return address_path(address)
    except NotAnAddress as error:
        raise CannotSet(f'"{address}": expected an address such as case.width') from error


def leaves_of(table: Mapping[str, Any], path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], Any]]:
    """Every plain value of a table with its path."""
    for key, value in table.items():
        if isinstance(value, Mapping):
            yield from leaves_of(value, (*path, key))
        else:
            yield (*path, key), value


__all__ = ["CannotSet", "Setting", "State", "as_variant", "changed_text", "in_its_place", "leaves_of", "state_of"]
