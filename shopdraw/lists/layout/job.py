"""What is to be cut and what it may be cut from."""

from __future__ import annotations

import math
from dataclasses import dataclass

Span = tuple[float, float]
"""From and to, mm from the stock's reference end."""


class BadJob(ValueError):
    """A job that can't be laid out as it stands; the message says what was found and what would be right."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """One part to cut, at its rough size.

    Attributes:
        id: names it in the answer; no two parts of a job share one.
        length: along the grain, mm.
        width: across the grain, mm.
        free: it may lie turned, grain across; never unless somebody said so.
        strip: parts that name the same strip are cut one behind the other from one strip, in the job's order.
        label: what stands on the part in a drawing.
    """

    id: str
    length: float
    width: float
    free: bool = False
    strip: str = ""
    label: str = ""


@dataclass(frozen=True, slots=True)
class Piece:
    """A board, a sheet or an offcut that may be cut up.

    Attributes:
        id: as the yard or the rack knows it.
        length: along the grain, mm.
        width: across the grain, mm.
        cost: of one: its price, or wood as a measure of it; 0 for what is there already.
        count: how many there are; None for as many as are wanted.
        defects: what is no good, over the whole width, mm from the reference end; only on pieces that are there and
            cost nothing.
        on_hand: it is an offcut or lies in the rack.
        name: what people read, where that isn't the id.
        sold: thickness and width as the yard sells it, mm; zeros where nobody sells it.
    """

    id: str
    length: float
    width: float
    cost: float
    count: int | None = None
    defects: tuple[Span, ...] = ()
    on_hand: bool = False
    name: str = ""
    sold: Span = (0.0, 0.0)

    @property
    def called(self) -> str:
        """What people read."""
        return self.name or self.id


@dataclass(frozen=True, slots=True)
class BoardJob:
    """Parts to be crosscut from boards of one width class.

    Attributes:
        parts: each once.
        stock: boards of one width or nearly, each kind once.
        kerf: what the saw takes, mm.
        end_trim: cut off each end of a board before the first part (saw kerf within it), mm.
    """

    parts: tuple[Wanted, ...]
    stock: tuple[Piece, ...]
    kerf: float
    end_trim: float = 0.0

    def __post_init__(self) -> None:
        _check(self.parts, self.stock, self.kerf, self.end_trim)

    def clear(self, piece: Piece) -> tuple[float, float, float, float]:
        """What of a board may be used, defects apart: x0, y0, x1, y1, mm."""
        return self.end_trim, 0.0, piece.length - self.end_trim, piece.width


@dataclass(frozen=True, slots=True)
class SheetJob:
    """Parts to be cut from sheets (or wide boards) with cuts that run edge to edge.

    Attributes:
        parts: each once.
        stock: kinds of sheets, each once; without defects.
        kerf: what the saw takes, mm.
        trim: cut off each edge along the grain first (saw kerf within it), mm.
        end_trim: cut off each end; None for as much as off the edges.
    """

    parts: tuple[Wanted, ...]
    stock: tuple[Piece, ...]
    kerf: float
    trim: float = 0.0
    end_trim: float | None = None

    def __post_init__(self) -> None:
        _check(self.parts, self.stock, self.kerf, min(self.trim, self.trim if self.end_trim is None else self.end_trim))
        if any(piece.defects for piece in self.stock):
            raise BadJob("a sheet with defects; cut it down to clear pieces and list these as offcuts")

    def clear(self, piece: Piece) -> tuple[float, float, float, float]:
        """What of a sheet may be used: x0, y0, x1, y1, mm."""
        ends = self.trim if self.end_trim is None else self.end_trim
        return ends, self.trim, piece.length - ends, piece.width - self.trim


Job = BoardJob | SheetJob


def _check(parts: tuple[Wanted, ...], stock: tuple[Piece, ...], kerf: float, trim: float) -> None:
    for name, things in (("part", parts), ("stock", stock)):
        ids = [thing.id for thing in things]
        if len(set(ids)) < len(ids):
            twice = next(one for one in ids if ids.count(one) > 1)
            raise BadJob(f'{name} "{twice}" is there twice; each id must stand once')
        for thing in things:
            if not (0 < thing.length < math.inf and 0 < thing.width < math.inf):
                raise BadJob(f'{name} "{thing.id}" is {thing.length} × {thing.width} mm; both must be above 0')
    for piece in stock:
        if not 0 <= piece.cost < math.inf or (piece.count is not None and piece.count < 0):
            raise BadJob(f'stock "{piece.id}" costs {piece.cost}, {piece.count} there; neither may be below 0')
        if piece.defects and piece.cost:
            raise BadJob(f'stock "{piece.id}" has defects and a price; only what is on hand (cost 0) has known defects')
    if not (0 <= kerf < math.inf and 0 <= trim < math.inf):
        raise BadJob(f"kerf {kerf}, trim {trim}; neither may be below 0")
