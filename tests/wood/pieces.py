"""Small pieces made by hand, for judging solids, views and weights."""

from __future__ import annotations

import math

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Corner, Path, arc_of, circle, polygon, rectangle
from shopdraw.wood.board import Board, Cut, Face, Shape, Stock

PINE = Stock("pine", "pine", "solid", 20.0, "", 0.0025, 500.0)
PLY = Stock("ply", "ply", "sheet", 6.0, "", 0.0, 600.0)

UPRIGHT_LEFT = Frame((0.0, 0.0, 1.0), (0.0, 1.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 0.0))
"""u up, v to the back, reference face to the left."""
UPRIGHT_INSIDE_RIGHT = Frame((0.0, 0.0, 1.0), (0.0, -1.0, 0.0), (1.0, 0.0, 0.0), (20.0, 300.0, 0.0))
"""A left side: u up, v from back to front, reference face to the right (inside)."""
LYING = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
"""u to the right, v to the back, reference face up."""


def board(name: str, shape: Shape, frame: Frame, stock: Stock = PINE) -> Board:
    return Board(name, name, name, name, shape, frame, stock)


def plain(length: float, width: float, thickness: float, *cuts: Cut) -> Shape:
    return Shape(rectangle(0.0, 0.0, length, width), thickness, cuts)


def box_board() -> Board:
    return board("box", plain(100.0, 60.0, 20.0), LYING.moved((0.0, 0.0, 20.0)))


def dado(start: float, width: float, depth: float, across: tuple[float, float]) -> Cut:
    return Cut("dado", Face.FACE, 0.0, depth, rectangle(start, across[0], start + width, across[1]))


def bored(radius: float = 5.0) -> Shape:
    return plain(100.0, 60.0, 20.0, Cut("bore", Face.FACE, 0.0, 20.0, circle((40.0, 30.0), radius)))


def slanted_side(*cuts: Cut) -> Shape:
    """400 high, 300 deep, slant from (250 up, front) to (400 up, 150 from the back); v runs from back to front."""
    return Shape(polygon(((0.0, 0.0), (400.0, 0.0), (400.0, 150.0), (250.0, 300.0), (0.0, 300.0))), 20.0, cuts)


def cupboard() -> tuple[Board, ...]:
    """Two slanted sides with dados and rear rabbets, a shelf, a bottom and a thin back: 400 wide, 300 deep."""
    rabbet = Cut("rabbet", Face.FACE, 0.0, 8.0, rectangle(0.0, 0.0, 400.0, 6.0))
    left = slanted_side(dado(50.0, 20.0, 6.0, (0.0, 300.0)), dado(200.0, 20.0, 6.0, (6.0, 290.0)), rabbet)
    right_cuts = (
        Cut("dado", Face.FACE, 0.0, 6.0, rectangle(50.0, 0.0, 70.0, 300.0)),
        Cut("dado", Face.FACE, 0.0, 6.0, rectangle(200.0, 10.0, 220.0, 294.0)),
        Cut("rabbet", Face.FACE, 0.0, 8.0, rectangle(0.0, 294.0, 400.0, 300.0)),
    )
    right = Shape(
        polygon(((0.0, 0.0), (250.0, 0.0), (400.0, 150.0), (400.0, 300.0), (0.0, 300.0))), 20.0, right_cuts
    )
    notch = (
        Cut("notch", Face.FACE, 0.0, 20.0, rectangle(0.0, 0.0, 6.0, 10.0)),
        Cut("notch", Face.FACE, 0.0, 20.0, rectangle(366.0, 0.0, 372.0, 10.0)),
    )
    return (
        board("side.left", left, Frame((0, 0, 1), (0, -1, 0), (1, 0, 0), (20.0, 300.0, 0.0))),
        board("side.right", right, Frame((0, 0, 1), (0, 1, 0), (-1, 0, 0), (380.0, 0.0, 0.0))),
        board("bottom", plain(372.0, 294.0, 20.0), LYING.moved((14.0, 0.0, 70.0))),
        board("shelf", plain(372.0, 294.0, 20.0, *notch), LYING.moved((14.0, 0.0, 220.0))),
        board("back", plain(400.0, 376.0, 6.0), Frame((0, 0, 1), (1, 0, 0), (0, 1, 0), (12.0, 300.0, 0.0)), PLY),
    )


def tenoned_rail() -> Shape:
    """A rail 240 long with a tenon 30 long, 8 thick and 40 wide on its foot, and an edge moulding with an arc."""
    tenon = Cut(
        "tenon", Face.FOOT, 0.0, 30.0, rectangle(0.0, -20.0, 60.0, 0.0), (rectangle(10.0, -14.0, 50.0, -6.0),)
    )
    cove = Path((Corner(52.0, 0.0, math.tan(math.pi / 8)), Corner(60.0, -8.0), Corner(60.0, 0.0)))
    cove = cove.anticlockwise()
    return plain(240.0, 60.0, 20.0, tenon, Cut("moulding", Face.HEAD, 0.0, 240.0, cove))


def rack(across: int = 5, up: int = 4) -> tuple[Board, ...]:
    """Cupboards side by side and on one another: five boards each."""
    return tuple(
        board(f"{i}.{j}.{b.id}", b.shape, b.frame.moved((400.0 * i, 0.0, 400.0 * j)), b.stock)
        for j in range(up)
        for i in range(across)
        for b in cupboard()
    )


def arcs_mm2(shape):
    """Length of all arcs of a shape's outline and cuts times how deep they go, mm²."""
    curved = [(shape.outline, shape.thickness)]
    curved += [(path, cut.depth) for cut in shape.cuts for path in (cut.outline, *cut.islands)]
    total = 0.0
    for path, depth in curved:
        for here, there in path.pairs():
            if here.bulge:
                arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
                total += arc.radius * 4 * abs(math.atan(here.bulge)) * depth
    return total
