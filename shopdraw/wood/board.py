"""Boards: a shape (outline, thickness, cuts), a place, an id and a stock.

A shape has no place and no name and is compared by value, so that two boards which are one part share one
solid and one set of faces.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import Path, bounds
from shopdraw.wood.glue_up import Width


class Face(Enum):
    """The six faces of a blank, and the tilted plane of a cut off square.

    Each is a plane with two coordinates of the board (u along the grain, v across it, w out of the reference
    face): `face` and `back` (u, v), `near` and `far` edges (u, w), `foot` and `head` ends (v, w).
    """

    FACE = "face"
    BACK = "back"
    NEAR = "near"
    FAR = "far"
    FOOT = "foot"
    HEAD = "head"
    TILTED = "tilted"


@dataclass(frozen=True)
class Cut:
    """A prism of wood to take away.

    Attributes:
        kind: the trade's word: dado, groove, rabbet, notch, mortise, tenon, dovetail, bevel, bore, ...
        face: the face it is entered from.
        start: depth below that face at which it begins, mm; 0 for nearly all.
        depth: from `start` to its floor, mm.
        outline: in the face's two coordinates, anticlockwise in these two numbers, mm.
        islands: closed paths inside it that stay standing.
        open: indices of outline segments at which the cutter may run out of the wood.
        frame: for `tilted` only: cut's frame in the board's frame, third axis out of the wood.
    """

    kind: str
    face: Face
    start: float
    depth: float
    outline: Path
    islands: tuple[Path, ...] = ()
    open: tuple[int, ...] = ()
    frame: Frame | None = None

    @property
    def stopped(self) -> bool:
        """None of the outline's segments lets the cutter run out."""
        return not self.open


@dataclass(frozen=True)
class Shape:
    """A board without a place or a name: outline (u, v) from the blank's corner, thickness, cuts, in mm."""

    outline: Path
    thickness: float
    cuts: tuple[Cut, ...] = ()

    def __post_init__(self) -> None:
        object.__setattr__(self, "_bounds", bounds(self.outline))

    def __hash__(self) -> int:
        # Kept, since solids and views are looked up by it; made when it is first asked for.
        try:
            return self._hash  # type: ignore[attr-defined, no-any-return]
        except AttributeError:
            object.__setattr__(self, "_hash", hash((self.outline, self.thickness, self.cuts)))
            return self._hash  # type: ignore[attr-defined, no-any-return]

    def __reduce__(self) -> tuple[type[Shape], tuple[Path, float, tuple[Cut, ...]]]:
        # Without the hash: another process has others for the same words.
        return Shape, (self.outline, self.thickness, self.cuts)

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Least and greatest u and v of the outline, as (u0, v0, u1, v1), mm."""
        return self._bounds  # type: ignore[attr-defined, no-any-return]

    @property
    def length(self) -> float:
        """Extent along the grain, mm, tenons and long points included."""
        box: tuple[float, float, float, float] = self._bounds  # type: ignore[attr-defined]
        return box[2] - box[0]

    @property
    def width(self) -> float:
        """Extent across the grain, mm."""
        box: tuple[float, float, float, float] = self._bounds  # type: ignore[attr-defined]
        return box[3] - box[1]


@dataclass(frozen=True, slots=True)
class Stock:
    """What a board is made of, as measured.

    Attributes:
        name: the stock's key in the piece file, such as "primary".
        species: the species' or sheet's key in the trade tables.
        kind: "solid" or "sheet".
        thickness: as measured, mm.
        nominal: what the yard calls it, or "".
        coefficient: change across the grain per 1 % of moisture content, as a fraction; 0 for sheet goods.
        density: kg/m³ at 12 % moisture content.
        measured: false while the thickness is still the nominal one.
        at_hand: widths of the boards at hand, where the piece names them; a wider panel is glued up from them.
    """

    name: str
    species: str
    kind: str
    thickness: float
    nominal: str
    coefficient: float
    density: float
    measured: bool = True
    at_hand: tuple[Width, ...] = ()


@dataclass(frozen=True, slots=True)
class Lean:
    """What a hinged board rests on when shut: as that wood moves, the board is turned further open, never closer.

    Attributes:
        pin: a point on the hinge line, world, mm.
        axis: unit direction of the hinge line; a right-handed turn about it opens the board.
        on: id of the board it rests on.
        at: the point of contact, in world coordinates at build, mm.
        offset: distance of the pin from the plane of contact, mm.
    """

    pin: Vec3
    axis: Vec3
    on: str
    at: Vec3
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Fixing:
    """Where a board is held, so that it is known what stays when the wood moves.

    Attributes:
        to: id of the board that carries it, "" for the piece's front plane and floor.
        at: the point held, in world coordinates at build, mm.
        lean: what it rests on, for a hinged board that leans shut.
        dry: the point held in seasons drier than at build, where it is another: a mitre that opens at its heel then
            is held at its toe.
        moves_with: id of a board that it is dovetailed to along its width: glued so, both move as that one does.
    """

    to: str = ""
    at: Vec3 = (0.0, 0.0, 0.0)
    lean: Lean | None = None
    moves_with: str = ""
    dry: Vec3 | None = None


@dataclass(frozen=True)
class Board:
    """A shape put in place.

    Attributes:
        id: path of what made it: `side.left`, `drawer.2.front`.
        label: short name for sheets and stickers, number first: `1L`, `7.2a`.
        name: what a person reads: "side, left".
        member: the family that chooses stock and grouping: "side", "drawer.front".
        shape: outline, thickness, cuts.
        frame: board frame in the world; a proper rotation.
        stock: what it is made of.
        cut_ids: for each of the shape's cuts, `kind:host:guest`.
        cut_for: for each cut, what it is for, in words.
        reference_edge: "near", or "far" on the right one of a mirrored pair.
        fixing: where it is held when the wood moves.
        between_shoulders: length without tenons and tongues, mm, or None when it has none.
        layers: thicknesses of a laminated board's layers, mm, or empty.
        staves: finished widths of the boards that it is glued up from, from its near edge, mm, or empty.
    """

    id: str
    label: str
    name: str
    member: str
    shape: Shape
    frame: Frame
    stock: Stock
    cut_ids: tuple[str, ...] = ()
    cut_for: tuple[str, ...] = ()
    reference_edge: str = "near"
    fixing: Fixing = Fixing()
    between_shoulders: float | None = None
    layers: tuple[float, ...] = ()
    staves: tuple[float, ...] = ()

    @property
    def length(self) -> float:
        """Finished extent along the grain, mm."""
        return self.shape.length

    @property
    def width(self) -> float:
        """Finished extent across the grain, mm."""
        return self.shape.width

    @property
    def thickness(self) -> float:
        """Finished thickness, mm."""
        return self.shape.thickness
