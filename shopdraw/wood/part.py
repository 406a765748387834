"""Which boards are one part: those that can be laid on each other, face to face and grain to grain."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Corner, Path, Point, bounds
from shopdraw.wood.board import Board, Cut, Face, Shape

SAME_MM = 1e-3
"""Sizes nearer than this are one size: far below any saw, far above the noise of doubles."""
_SAME_BULGE = 1e-5

_MIRRORED = {Face.NEAR: Face.FAR, Face.FAR: Face.NEAR}
_TURNED = {Face.NEAR: Face.FAR, Face.FAR: Face.NEAR, Face.FOOT: Face.HEAD, Face.HEAD: Face.FOOT}


@dataclass(frozen=True, slots=True)
class Part:
    """Boards that are made alike.

    Attributes:
        id: the first board's id.
        boards: in the order they were given.
    """

    id: str
    boards: tuple[Board, ...]

    @property
    def first(self) -> Board:
        """The board that speaks for all."""
        return self.boards[0]

    @property
    def quantity(self) -> int:
        """How many are made."""
        return len(self.boards)

    @property
    def labels(self) -> str:
        """The labels of all its boards: "15p, 15q"."""
        return ", ".join(board.label for board in self.boards)


def parts(boards: Iterable[Board]) -> tuple[Part, ...]:
    """Boards gathered into parts, in the order of each part's first board."""
    found: list[list[Board]] = []
    by_size: dict[object, list[list[Board]]] = {}
    for board in boards:
        near = by_size.setdefault((board.stock, board.layers), [])
        for group in near:
            if same_part(group[0], board):
                group.append(board)
                break
        else:
            group = [board]
            near.append(group)
            found.append(group)
    return tuple(Part(group[0].id, tuple(group)) for group in found)


def same_part(one: Board, two: Board) -> bool:
    """Whether one board can be laid on the other: in the same stock, same shape, as it is or turned half round.

    Reference face lies on reference face and grain on grain, so a left and a right are two parts.
    """
    return one.stock == two.stock and one.layers == two.layers and same_shape(one.shape, two.shape)


@lru_cache(maxsize=16384)
def same_shape(one: Shape, two: Shape) -> bool:
    """Whether two shapes are one, as they are or turned half round in the plane of the face."""
    if (
        abs(one.thickness - two.thickness) > SAME_MM
        or abs(one.length - two.length) > SAME_MM
        or abs(one.width - two.width) > SAME_MM
        or len(one.cuts) != len(two.cuts)
    ):
        return False
    return _same(one, two) or _same(one, turned(two))


def turned(shape: Shape) -> Shape:
    """The shape turned half round in the plane of its face: foot for head, near edge for far edge."""
    u0, v0, u1, v1 = bounds(shape.outline)

    def over(point: Point) -> Point:
        return (u0 + u1 - point[0], v0 + v1 - point[1])

    def path_over(path: Path, face: Face) -> Path:
        if face in (Face.FACE, Face.BACK):
            return path.mapped(over)
        along = u0 + u1 if face in (Face.NEAR, Face.FAR) else v0 + v1
        return path.mapped(lambda point: (along - point[0], point[1]), mirrored=True)

    def cut_over(cut: Cut) -> Cut:
        if cut.face is Face.TILTED and cut.frame is not None:
            frame = cut.frame
            half = Frame((-1.0, 0.0, 0.0), (0.0, -1.0, 0.0), (0.0, 0.0, 1.0), (u0 + u1, v0 + v1, 0.0))
            return Cut(cut.kind, cut.face, cut.start, cut.depth, cut.outline, cut.islands, cut.open, frame.within(half))
        islands = tuple(path_over(island, cut.face) for island in cut.islands)
        face = _TURNED.get(cut.face, cut.face)
        return Cut(cut.kind, face, cut.start, cut.depth, path_over(cut.outline, cut.face), islands)

    return Shape(shape.outline.mapped(over), shape.thickness, tuple(cut_over(cut) for cut in shape.cuts))


def mirrored(shape: Shape) -> Shape:
    """The other hand of a shape: near edge for far edge, face and foot kept, mm."""
    _, v0, _, v1 = bounds(shape.outline)

    def path(outline: Path, face: Face) -> Path:
        if face in (Face.FACE, Face.BACK):
            return outline.mapped(lambda p: (p[0], v0 + v1 - p[1]), mirrored=True)
        if face in (Face.FOOT, Face.HEAD):
            return outline.mapped(lambda p: (v0 + v1 - p[0], p[1]), mirrored=True)
        return outline

    def cut(one: Cut) -> Cut:
        islands = tuple(path(island, one.face) for island in one.islands)
        return Cut(
            one.kind, _MIRRORED.get(one.face, one.face), one.start, one.depth, path(one.outline, one.face), islands
        )

    return Shape(path(shape.outline, Face.FACE), shape.thickness, tuple(cut(one) for one in shape.cuts))


def other_hand(part: Part, others: Iterable[Part]) -> Part | None:
    """Among other parts the one that is the mirror image of a part, in the same stock and as often."""
    board = part.first
    if any(cut.face is Face.TILTED for cut in board.shape.cuts):
        return None
    for other in others:
        two = other.first
        alike = board.member == two.member and board.stock == two.stock and part.quantity == other.quantity
        opposite = {board.reference_edge, two.reference_edge} == {"near", "far"}
        if alike and opposite and same_shape(mirrored(board.shape), two.shape):
            return other
    return None


def _same(one: Shape, two: Shape) -> bool:
    """Whether two shapes are one as they lie; the order of cuts doesn't matter."""
    if not _same_path(one.outline, two.outline):
        return False
    left = list(two.cuts)
    for cut in one.cuts:
        match = next((other for other in left if _same_cut(cut, other)), None)
        if match is None:
            return False
        left.remove(match)
    return True


def _same_cut(one: Cut, two: Cut) -> bool:
    if (
        one.face is not two.face
        or abs(one.start - two.start) > SAME_MM
        or abs(one.depth - two.depth) > SAME_MM
        or len(one.islands) != len(two.islands)
        or not _same_path(one.outline, two.outline)
    ):
        return False
    if (one.frame is None) != (two.frame is None):
        return False
    if one.frame is not None and two.frame is not None:
        pairs = zip(one.frame.rows(), two.frame.rows(), strict=True)
        if any(abs(a - b) > SAME_MM * (1.0 if i % 4 == 3 else 1e-3) for i, (a, b) in enumerate(pairs)):
            return False
    left = list(two.islands)
    for island in one.islands:
        match = next((other for other in left if _same_path(island, other)), None)
        if match is None:
            return False
        left.remove(match)
    return True


def _same_path(one: Path, two: Path) -> bool:
    """Whether two closed paths are one, wherever they start and whichever way they run."""
    first, count = one.anticlockwise().corners, len(one.corners)
    second = two.anticlockwise().corners
    if count != len(second):
        return False
    return any(
        all(_same_corner(first[i], second[(i + shift) % count]) for i in range(count)) for shift in range(count)
    )


def _same_corner(one: Corner, two: Corner) -> bool:
    return (
        abs(one.x - two.x) <= SAME_MM and abs(one.y - two.y) <= SAME_MM and abs(one.bulge - two.bulge) <= _SAME_BULGE
    )
