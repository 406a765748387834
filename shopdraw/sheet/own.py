"""A person's own on the sheets: dimensions moved, dimensions added, cutting planes moved or added.

Each is kept by the names of what it is about (`feature/feature@view`), a side and a row, never by a place on paper: so
it survives every change of size.
"""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.piece.design import Design


@dataclass(frozen=True, slots=True)
class OwnMove:
    """Where a dimension is to stand.

    Attributes:
        address: of its table: "move.ID".
        fact, view: whose, and where.
        side: "left", "right", "above", "below", or "" for any.
        row: 1 for the nearest, 0 for any.
        offset: how much further out the row stands, paper mm.
    """

    address: str
    fact: str
    view: str
    side: str = ""
    row: int = 0
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class OwnDimension:
    """One more dimension: between two features of a view; the rest as for a move."""

    address: str
    a: str
    b: str
    view: str
    side: str = ""
    row: int = 0
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class OwnPlane:
    """A cutting plane moved or added.

    Attributes:
        address: of its table: "plane.LETTER".
        letter: of the section.
        at: from the case's left side, the front plane or the floor, mm.
        cuts: "front-to-back", "side-to-side", "level", or "" for the way that the letter's own plane runs.
    """

    address: str
    letter: str
    at: float
    cuts: str = ""


@dataclass(frozen=True, slots=True)
class Own:
    """All that a person moved or added."""

    moves: tuple[OwnMove, ...] = ()
    dimensions: tuple[OwnDimension, ...] = ()
    planes: tuple[OwnPlane, ...] = ()


@dataclass(frozen=True, slots=True)
class Nowhere:
    """A table that does nothing: its address, and why."""

    address: str
    why: str


def own_of(design: Design) -> Own:
    """What a piece file says of it, in the file's order."""
    moves = []
    for key, move in design.move.items():
        fact, _, view = move.of.rpartition("@")
        moves.append(OwnMove(f"move.{key}", fact, view, move.side or "", move.row or 0, move.offset))
    dimensions = []
    for key, told in design.dimension.items():
        a, _, b = told.of.partition("/")
        dimensions.append(
            OwnDimension(f"dimension.{key}", a, b, told.view, told.side or "", told.row or 0, told.offset)
        )
    planes = tuple(OwnPlane(f"plane.{key}", key, plane.at, plane.cuts or "") for key, plane in design.plane.items())
    return Own(tuple(moves), tuple(dimensions), planes)


NOTHING = Own()
"""Nobody moved or added anything."""
