"""How a board lies on the router: grain along x, reference edge on y = 0, its lower left at (0, 0).

The reference face up: a left one has its reference end at x = 0; a right one (reference edge `far`) lies turned half
round, so that it is the left one's reflection about an upright line. The second face up: the same, turned about its
long edge, so x stays and y runs from the other side.
"""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.shape.path import Path, Point
from shopdraw.shape.region import Region, region
from shopdraw.wood.board import Board, Face


@dataclass(frozen=True, slots=True)
class Lay:
    """A board on the table with one of its faces up.

    Attributes:
        length, width: of the board, mm.
        far: its reference edge is `far`.
        face: `Face.FACE` or `Face.BACK`, the one that is up.
    """

    length: float
    width: float
    far: bool
    face: Face

    def point(self, point: Point) -> Point:
        """A point of the board's u, v as x, y on the table."""
        x, y = (self.length - point[0], self.width - point[1]) if self.far else point
        return (x, self.width - y) if self.face is Face.BACK else (x, y)

    def path(self, path: Path) -> Path:
        """A path of the board on the table; it keeps its hand."""
        return path.mapped(self.point, mirrored=self.face is Face.BACK)

    def region(self, paths: Region) -> Region:
        """A region of the board on the table."""
        return region(*(self.path(path) for path in paths))

    def edge_at(self, face: Face) -> str:
        """Where one of the board's edges or ends lies on the table: "y = 0", "x = 800.1"."""
        u, v = {
            Face.NEAR: (self.length / 2, 0.0),
            Face.FAR: (self.length / 2, self.width),
            Face.FOOT: (0.0, self.width / 2),
            Face.HEAD: (self.length, self.width / 2),
        }[face]
        x, y = self.point((u, v))
        if face in (Face.NEAR, Face.FAR):
            return "at the bottom" if y < self.width / 2 else "at the top"
        return "on the left" if x < self.length / 2 else "on the right"

    def side_at_low(self, axis: str) -> Face:
        """The edge that lies on y = 0, or the end on x = 0."""
        edges = (Face.NEAR, Face.FAR) if axis == "y" else (Face.FOOT, Face.HEAD)
        low = "at the bottom" if axis == "y" else "on the left"
        return next(face for face in edges if self.edge_at(face) == low)


def lay(board: Board, face: Face) -> Lay:
    """A board with a face up."""
    return Lay(board.length, board.width, board.reference_edge == "far", face)
