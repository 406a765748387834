"""A board as the router gets it: what each setting cuts, what is left for another one. Made in the worker. No Qt."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path as FilePath

from shopdraw.cnc.flat import THROUGH, Circle, FlatPart, NotFlat, OpenLine, Operation
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.cnc.shop_cutters import cutters_of
from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Hatching, Line, Mark, Meaning, Text
from shopdraw.editor.shop_of import shop_of
from shopdraw.piece.design import Design
from shopdraw.shape.path import Path, Point, arc_of
from shopdraw.wood.board import Board
from shopdraw.wood.part import Part

GAP = 0.12
"""Between two settings, as a part of the board's length."""
PITCH = 1.6
"""Between the lines that fill a pocket, paper mm."""


@dataclass(frozen=True, slots=True)
class Layer:
    """One layer of a setting: its name, its depth in mm, what is cut, by which cutter."""

    name: str
    depth: float
    purpose: str
    cutter: str


@dataclass(frozen=True, slots=True)
class Left:
    """What a file leaves to another setting, or to a chisel.

    Attributes:
        kind: the trade's word for a cut, or "".
        what: how it is made, and for what.
        where: side and place, or "".
        volume: of the wood that stays, mm³.
    """

    kind: str
    what: str
    where: str
    volume: float


@dataclass(frozen=True, slots=True)
class RouterSight:
    """A board as the router gets it.

    Attributes:
        board: its id.
        marks: its settings below each other, each as it lies on the table; letters at true mm.
        settings: for each its face and its layers.
        left: what is left.
        why_not: why there is nothing to see, or "".
    """

    board: str
    marks: tuple[Mark, ...] = ()
    settings: tuple[tuple[str, tuple[Layer, ...]], ...] = ()
    left: tuple[Left, ...] = ()
    why_not: str = ""


def router_sight(design: Design, board: Board, path: FilePath | None) -> RouterSight:
    """A board as the router gets it, with the cutters of the shop that the piece names.

    Args:
        design: the piece's inputs.
        board: one of its boards.
        path: of the piece file, if it has one.
    """
    shop = shop_of(design, path)
    try:
        made = router_part(Part(board.id, (board,)), design, None, cutters_of(shop), marks=shop.router.marks)
    except NotFlat as error:
        return RouterSight(board.id, why_not=str(error))
    settings = tuple(
        (setting.face.value, tuple(Layer(use.name, use.depth, use.purpose, use.cutter) for use in setting.layers))
        for setting in made.settings
    )
    return RouterSight(board.id, _stacked(made), settings, tuple(_left(made)))


def _left(made: RouterPart) -> Iterator[Left]:
    for second in made.second:
        yield Left(second.kind, second.setting, f"{second.on}, {second.place}", second.volume)
    for wood in made.corners:
        yield Left("", f"{wood.places} × {wood.what}", wood.cutter, wood.volume)


def _stacked(made: RouterPart) -> tuple[Mark, ...]:
    """The settings below each other."""
    found: list[Mark] = []
    low = 0.0
    for setting in made.settings:
        marks = tuple(flat_marks(setting.flat))
        _, y0, _, y1 = marks_box(marks)
        down = low - y1 if found else 0.0
        found += [_moved(mark, down) for mark in marks]
        low = y0 + down - GAP * made.part.first.length
    return tuple(found)


def flat_marks(flat: FlatPart) -> Iterator[Mark]:
    """What a router's file holds, as marks: pockets hatched, what goes through thick, notes as they stand in it."""
    for operation in flat.operations:
        yield from _operation(operation)
    if flat.outline is not None:
        yield from _outline(flat.outline, Meaning.CUT if flat.cut_outline else Meaning.BEHIND)
    for note in flat.notes:
        yield replace(note, meaning=Meaning.MOVING) if isinstance(note, Line) else note


def _operation(operation: Operation) -> Iterator[Mark]:
    shape = operation.shape
    through = operation.layer.startswith(THROUGH)
    if isinstance(shape, OpenLine):
        yield from _side(shape.start, shape.end, shape.bulge, Meaning.CENTRE)
    elif isinstance(shape, Circle):
        yield ArcMark(shape.centre, shape.radius, 0.0, 360.0, Meaning.CUT if through else Meaning.VISIBLE)
    else:
        if not through and not operation.island:
            yield Area(shape, (), Hatching("lines", 45.0, PITCH))
        yield from _outline(shape, Meaning.CUT if through else Meaning.VISIBLE)


def _outline(path: Path, meaning: Meaning) -> Iterator[Mark]:
    for here, there in path.pairs():
        yield from _side((here.x, here.y), (there.x, there.y), here.bulge, meaning)


def _side(start: Point, end: Point, bulge: float, meaning: Meaning) -> Iterator[Mark]:
    if abs(bulge) < 1e-9:
        yield Line(start, end, meaning)
        return
    arc = arc_of(start, end, bulge)
    yield ArcMark(arc.centre, arc.radius, arc.start_deg, arc.end_deg, meaning)


def _moved(mark: Mark, down: float) -> Mark:
    def at(point: Point) -> Point:
        return (point[0], point[1] + down)

    match mark:
        case Line():
            return replace(mark, start=at(mark.start), end=at(mark.end))
        case ArcMark() | Dot():
            return replace(mark, centre=at(mark.centre))
        case Arrow():
            return replace(mark, tip=at(mark.tip))
        case Text():
            return replace(mark, at=at(mark.at))
        case Area():
            islands = tuple(island.moved(0.0, down) for island in mark.islands)
            return replace(mark, outline=mark.outline.moved(0.0, down), islands=islands)
