"""The cells of part sheets: one for each distinct part, for a mirrored pair, or for parts alike but for one size."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.lists.rough_size import Rough
from shopdraw.sheet.cut_at import CutNote, frame_of
from shopdraw.sheet.cut_note import cut_notes
from shopdraw.sheet.cut_size import CutSizes, cut_sizes
from shopdraw.sheet.figure import Writing
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face
from shopdraw.wood.part import Part, other_hand, parts

GROUPS: tuple[tuple[str, ...], ...] = (
    ("side",),
    ("top", "bottom", "shelf", "back"),
    ("frame", "face", "rail", "strip", "guide", "kicker", "divider", "stop"),
    ("drawer",),
    ("lid", "ledge", "support"),
    ("partition", "pigeonhole", "compartment", "bracket"),
    ("plinth", "block"),
)
"""Members by group, in the order of the sheets; what isn't named comes with the lid."""
TABLE_ROWS = 6
"""Lines of a table of one size, at most."""


@dataclass(frozen=True, slots=True)
class Cell:
    """What one cell shows.

    Attributes:
        parts: the part that is drawn, and further ones alike but for one size.
        mirrored: the other hand of each of them, drawn as they lie on the bench; empty where there is none.
        varies: "length" or "width" for parts alike but for it, or "".
        sizes: how sizes of the drawn one are written.
        notes: its cuts.
        rough: of the drawn one, where it is to be told.
    """

    parts: tuple[Part, ...]
    mirrored: tuple[Part, ...]
    varies: str
    sizes: CutSizes
    notes: tuple[CutNote, ...]
    rough: Rough | None = None

    @property
    def board(self) -> Board:
        """The board that is drawn: one whose reference edge is the near one, where there is one."""
        return drawn_board(self.parts[0])

    @property
    def id(self) -> str:
        """Of its views: the label of the board that is drawn."""
        return self.board.label

    @property
    def boards(self) -> tuple[str, ...]:
        """Ids of all boards that it stands for."""
        return tuple(board.id for part in (*self.parts, *self.mirrored) for board in part.boards)

    @property
    def group(self) -> int:
        """Which of `GROUPS` it belongs to."""
        return group_of(self.board.member)


def drawn_board(part: Part) -> Board:
    """The board that stands for a part: the first whose reference edge can lie below with the foot at the left."""
    return next((board for board in part.boards if board.reference_edge == "near"), part.first)


def group_of(member: str) -> int:
    """The number of a member's group; what isn't named goes with the lid."""
    family = member.split(".", maxsplit=1)[0]
    return next((i for i, names in enumerate(GROUPS) if family in names), 4)


@lru_cache(maxsize=64)
def cells(assembly: Assembly, writing: Writing) -> tuple[Cell, ...]:
    """Every cell of a piece, in the order of the sheets.

    Args:
        assembly: the piece.
        writing: how sizes are written.
    """
    singles = _paired(parts(assembly.boards), assembly, writing)
    order = {board.id: i for i, board in enumerate(assembly.boards)}
    made: list[Cell] = []
    by_look: dict[object, list[int]] = {}
    for cell in singles:
        place = next((i for i in by_look.get(_look(cell), ()) if _joins(made[i], cell)), None)
        if place is None:
            by_look.setdefault(_look(cell), []).append(len(made))
            made.append(cell)
        else:
            one = made[place]
            varies = one.varies or ("length" if abs(one.board.length - cell.board.length) > 1e-3 else "width")
            made[place] = Cell((*one.parts, *cell.parts), (*one.mirrored, *cell.mirrored), varies, one.sizes, one.notes)
    return tuple(sorted(made, key=lambda cell: (cell.group, order[cell.parts[0].id])))


def _paired(every: Sequence[Part], assembly: Assembly, writing: Writing) -> list[Cell]:
    """A cell for each part, left and right together."""
    taken: set[str] = set()
    made: list[Cell] = []
    for part in every:
        if part.id in taken:
            continue
        other = other_hand(part, [p for p in every if p.id not in taken and p.id != part.id])
        pair = (part,) if other is None else (part, other)
        if other is not None and drawn_board(other).reference_edge == "near":
            pair = (other, part)
        taken.update(one.id for one in pair)
        drawn = drawn_board(pair[0])
        sizes = cut_sizes(drawn, assembly, writing)
        made.append(Cell(pair[:1], pair[1:], "", sizes, cut_notes(drawn, sizes)))
    return made


def _look(cell: Cell) -> object:
    """What must be alike for parts to share a view: all but length and width."""
    board = cell.board
    notes = tuple(
        (note.view, note.kind, note.words, tuple((p.way, round(p.distance, 2)) for p in note.places))
        for note in cell.notes
    )
    square = len(board.shape.outline.corners) == 4
    outline = () if square else tuple((round(c.x, 2), round(c.y, 2), c.bulge) for c in board.shape.outline.corners)
    return (
        board.member,
        board.stock,
        round(board.thickness, 2),
        len(cell.mirrored),
        notes,
        outline,
        board.reference_edge,
    )


def _joins(one: Cell, other: Cell) -> bool:
    """Whether another cell differs from one in its varying size alone, with room left in the table."""
    long = abs(one.board.length - other.board.length) > 1e-3
    wide = abs(one.board.width - other.board.width) > 1e-3
    differs = {("length" if long else "width")} if long != wide else set()
    same = not one.varies or one.varies in differs
    return bool(differs) and same and len(one.parts) + len(other.parts) <= TABLE_ROWS


def labels(parts_told: Sequence[Part]) -> str:
    """Labels of all boards: "6.2f, 6.2g"."""
    return ", ".join(part.labels for part in parts_told)


def needed_views(cell: Cell) -> tuple[Face, ...]:
    """The views that a cell draws: the face, and each other one that carries a cut."""
    views = dict.fromkeys((Face.FACE, *(note.view for note in cell.notes)))
    if any(cut.face in (Face.FOOT, Face.HEAD) and cut.islands for cut in cell.board.shape.cuts):
        views[Face.NEAR] = None
    return tuple(views)


def view_titles(cell: Cell) -> Mapping[Face, str]:
    """What stands under each view; nothing under a face that stands alone."""
    far = frame_of(cell.board).far
    alone = len(needed_views(cell)) == 1
    edge, other = ("other edge", "reference edge") if far else ("reference edge", "other edge")
    whose = f" of {cell.id}" if cell.mirrored else ""
    return {
        Face.FACE: "" if alone else "reference face",
        Face.BACK: f"other face{whose}, turned about the long edge",
        Face.NEAR: f"{edge}{whose}",
        Face.FAR: f"{other}{whose}",
        Face.FOOT: f"reference end{whose}",
        Face.HEAD: f"other end{whose}",
    }
