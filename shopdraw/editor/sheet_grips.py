"""What can be taken hold of on the sheets of a set, worked out beside the sheets in the worker process. Knows no Qt."""

from __future__ import annotations

import re
from collections.abc import Iterator

from shopdraw.drawing.letters import lettered
from shopdraw.drawing.mark import Line, Meaning
from shopdraw.drawing.sheet import Placed
from shopdraw.editor.on_sheet import (
    Box,
    DimensionGrip,
    OnSheet,
    OnSheets,
    PlaceOnSheet,
    PlaneGrip,
    ViewOnSheet,
    rows_of,
)
from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import Point
from shopdraw.sheet.extent import extent, whole
from shopdraw.sheet.own_facts import BESIDE, StandingDimension, standing_dimensions
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.sheet.set import Set
from shopdraw.sheet.view import ComposedView
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE, Direction
from shopdraw.wood.assembly import Assembly

_SQUARE = 0.999
_SAME_MM = 0.01
_EDGES = (("left", "right"), ("front", "rear"), ("lower", "upper"))
_SEEN = (Meaning.VISIBLE, Meaning.CUT)


def grips_of(made: Set, assembly: Assembly) -> OnSheets:
    """By page: dimensions and planes that can be moved, places that can be measured between.

    Args:
        made: a set of sheets.
        assembly: the piece that it shows.
    """
    found: dict[str, OnSheet] = {}
    for sheet in made.sheets.sheets:
        views = [placed for placed in sheet.placed if placed.drawing.id in made.drawn.views.done.views]
        if not views:
            continue
        dimensions: list[DimensionGrip] = []
        planes: list[PlaneGrip] = []
        places: list[PlaceOnSheet] = []
        for placed in views:
            view = made.drawn.views.done.views[placed.drawing.id]
            standing = standing_dimensions({view.drawing.id: view})
            held = _held(placed, view, standing)
            dimensions += _dimensions(made, placed, held, standing)
            planes += _planes(made, placed, assembly)
            places += _places(made, placed, held, assembly)
        found[sheet.key] = OnSheet(tuple(dimensions), tuple(planes), tuple(places))
    return found


def _on_paper(placed: Placed, point: Point) -> Point:
    return placed.at[0] + point[0] * placed.scale, placed.at[1] + point[1] * placed.scale


def _held(placed: Placed, view: ComposedView, standing: tuple[StandingDimension, ...]) -> ViewOnSheet:
    x0, y0, x1, y1 = view.outline
    x, y = placed.at
    outs: dict[str, list[float]] = {}
    for one in standing:
        if one.side:
            outs.setdefault(one.side, []).append(one.out)
    return ViewOnSheet(view.drawing.id, (x0 + x, y0 + y, x1 + x, y1 + y), placed.scale, rows_of(outs))


def _dimensions(
    made: Set, placed: Placed, view: ViewOnSheet, standing: tuple[StandingDimension, ...]
) -> Iterator[DimensionGrip]:
    kinds = {fact.id: fact.kind for fact in made.drawn.views.facts}
    drawn = {one.id: one for one in placed.drawing.dimensions}
    for one in standing:
        if not one.side or kinds.get(one.of.rpartition("@")[0]) not in BESIDE:
            continue
        dimension = drawn[one.of]
        upright = dimension.words_angle_deg % 180.0 == 90.0
        box = _box(_on_paper(placed, one.words_at), one.words, dimension.height, upright=upright)
        ends = _on_paper(placed, dimension.a), _on_paper(placed, dimension.b)
        row = view.row_at(one.side, one.out)
        yield DimensionGrip(one.of, view, one.words, box, ends, one.side, row, one.out)


def _box(at: Point, words: str, height: float, *, upright: bool) -> Box:
    line = lettered(words, height)
    half = line.width / 2
    if upright:  # read from the right: upwards, its foot to the right
        return at[0] - line.above, at[1] - half, at[0] + line.below, at[1] + half
    return at[0] - half, at[1] - line.below, at[0] + half, at[1] + line.above

_IN_A_DETAIL = re.compile(r"(d\d+\w*) ([a-z-]+):.*:([a-z]+)(?: \d+)?$")
"""A size of a joint: its detail, the kind of cut, which size."""


def _planes(made: Set, placed: Placed, assembly: Assembly) -> Iterator[PlaneGrip]:
    box = whole(assembly)
    for plane in made.drawn.views.planes:
        axis = _axis_of(plane)
        if plane.on != placed.drawing.id or axis is None:
            continue
        ends = _on_paper(placed, plane.ends[0]), _on_paper(placed, plane.ends[1])
        upright = abs(ends[0][0] - ends[1][0]) < abs(ends[0][1] - ends[1][1])
        yield PlaneGrip(
            plane.letter, plane.title, ends, upright, plane.plane.through[axis], box[axis], box[axis + 3], placed.scale
        )


def _axis_of(plane: CuttingPlane) -> int | None:
    """The axis that a plane is square to; None where it lies aslant."""
    return next((i for i, share in enumerate(plane.plane.direction.toward) if abs(share) > _SQUARE), None)


def _places(made: Set, placed: Placed, view: ViewOnSheet, assembly: Assembly) -> Iterator[PlaceOnSheet]:
    """Where the view's own dimensions go, then the edges of the boards that it shows."""
    found: dict[str, PlaceOnSheet | None] = {}
    for fact in made.drawn.views.facts:
        if fact.kind not in BESIDE or fact.direction_in(view.id) not in (0.0, 90.0):
            continue
        across = fact.direction_in(view.id) == 0.0
        for feature in (fact.a, fact.b):
            sight = feature.sight(view.id)
            if sight is None or not sight.shown:
                continue
            name = feature.id.split(",")[0]
            place = PlaceOnSheet(name, view, _on_paper(placed, sight.point), across, _said(name, assembly))
            # A name means the first feature that bears it: one that another place bears as well is left out.
            found[name] = place if found.get(name, place) == place else None
    for place in _edges(made, placed, view, assembly):
        found.setdefault(place.name, place)
    yield from (place for place in found.values() if place is not None)


def _edges(made: Set, placed: Placed, view: ViewOnSheet, assembly: Assembly) -> Iterator[PlaceOnSheet]:
    direction = _direction(made, view.id)
    axes = [_axis_along(direction.right), _axis_along(direction.up)] if direction is not None else []
    for mark in placed.drawing.marks:
        if not isinstance(mark, Line) or mark.meaning not in _SEEN or not mark.board or not assembly.has(mark.board):
            continue
        (x0, y0), (x1, y1) = mark.start, mark.end
        for flat, axis in enumerate(axes):
            low, high = ((x0, x1), (y0, y1))[flat]
            if axis is None or abs(low - high) > _SAME_MM:
                continue
            box = extent([assembly.board(mark.board)])
            for far in (0, 1):
                if abs(box[axis + 3 * far] - low) < _SAME_MM:
                    at = _on_paper(placed, ((x0 + x1) / 2, (y0 + y1) / 2))
                    name = f"{mark.board}:{_EDGES[axis][far]}"
                    yield PlaceOnSheet(name, view, at, flat == 0, _said(name, assembly))


def _said(name: str, assembly: Assembly) -> str:
    """What a person calls a place, in English: a board by its label and name, an opening or a level by its key."""
    of, _, edge = name.rpartition(":")
    edge = "upper" if edge == "top" else edge
    if assembly.has(of):
        board = assembly.board(of)
        return f"{board.label} {board.name}: {edge}"
    detail = _IN_A_DETAIL.match(name)
    if detail is not None:
        return f"detail {detail[1]}: {detail[3]} of the {detail[2]}"
    kind, _, key = of.partition(".")
    if kind == "opening":
        return f"opening {key}: {edge}"
    if kind == "level":
        return f"level {key}: {edge}"
    return f"{of.partition(' ')[0]}: {edge}"


def _direction(made: Set, view: str) -> Direction | None:
    flat = {"front": FRONT, "side": RIGHT_SIDE, "plan": PLAN}.get(view)
    return flat or next((plane.plane.direction for plane in made.drawn.views.planes if plane.view == view), None)


def _axis_along(way: Vec3) -> int | None:
    """The world axis that runs along a direction of the paper, the same way; None where none does."""
    return next((i for i, share in enumerate(way) if share > _SQUARE), None)
