"""The facts of a cell's views: places from the reference corner, finished sizes, words of cuts."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from shopdraw.shape.path import Point, arc_of
from shopdraw.sheet.board_view import PLANES
from shopdraw.sheet.cell import Cell, needed_views
from shopdraw.sheet.cut_at import ACROSS, ALONG, CutNote, Place, frame_of
from shopdraw.sheet.fact import Fact, Feature, Rank, Sight
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Face

_SAME = 1e-3
VARYING = {"length": "L", "width": "W"}
"""What stands for a size that a table gives."""


def view_id(cell: Cell, face: Face) -> str:
    """Of one view of a cell."""
    return f"part.{cell.id}.{face.value}"


def cell_facts(cell: Cell, assembly: Assembly) -> Mapping[Face, tuple[Fact, ...]]:
    """What each view of a cell tells.

    Args:
        cell: whose.
        assembly: for the slant's own figures.
    """
    return {face: tuple(_view_facts(cell, face, assembly)) for face in needed_views(cell)}


def overall_facts(cell: Cell, view: str, side: str) -> tuple[Fact, ...]:
    """Length and width of the drawn board, on a view in the plane of its face."""
    frame = frame_of(cell.board)
    right = side != "left"
    y = frame.v0
    x = frame.u1 if right else frame.u0
    return (
        _overall(cell, view, "length", (frame.u0, y), (frame.u1, y), 0.0, "below"),
        _overall(cell, view, "width", (x, frame.v0), (x, frame.v1), 90.0, side),
    )


def _view_facts(cell: Cell, face: Face, assembly: Assembly) -> Iterator[Fact]:
    notes = [note for note in cell.notes if note.view is face]
    places = [place for note in notes for place in note.places]
    if face is Face.FACE:
        places += _outline_places(cell)
        if not cell.mirrored:
            yield from overall_facts(cell, view_id(cell, face), "right")
        yield from _outline_notes(cell, face, assembly)
    yield from _running(cell, face, ALONG, places)
    yield from _running(cell, face, ACROSS, places)
    used: list[Point] = []
    for number, note in enumerate(notes):
        target = _target(note.targets, used)
        used.append(target)
        feature = _feature(cell, face, f"{note.kind.strip()}-{number}", target)
        yield Fact(
            note_id(cell, face, note, number),
            feature,
            feature,
            Rank.SIZE,
            (view_id(cell, face),),
            kind="note",
            words=note.words,
            rounding="cut",
            board=cell.board.id,
        )


def note_id(cell: Cell, face: Face, note: CutNote, number: int) -> str:
    """The id of a note's fact: of so many alike on a view each has its own."""
    return f"{_feature(cell, face, f'{note.kind.strip()}-{number}', note.targets[0]).id}/words"


def _target(targets: Sequence[Point], used: Sequence[Point]) -> Point:
    """The first point that no earlier leader goes near to."""
    return next((p for p in targets if all(math.dist(p, q) > 30.0 for q in used)), targets[0])


def _feature(cell: Cell, face: Face, name: str, at: Point) -> Feature:
    return Feature(f"{cell.id}:{face.value}:{name}".replace("/", "-"), (Sight(view_id(cell, face), at),))


def _overall(cell: Cell, view: str, which: str, a: Point, b: Point, direction: float, side: str) -> Fact:
    one, two = (Feature(f"{cell.id}:{which}:{end}", (Sight(view, at),)) for end, at in (("start", a), ("end", b)))
    words = VARYING[which] if cell.varies == which else ""
    return Fact(
        f"{one.id}/{two.id}",
        one,
        two,
        Rank.OVERALL,
        (view,),
        direction,
        side=side,
        rounding="cut",
        words=words,
        board=cell.board.id,
    )


def _running(cell: Cell, face: Face, way: str, places: Sequence[Place]) -> Iterator[Fact]:
    """Distances from the reference end or edge, each once; those across the board at whichever end is nearer."""
    wanted = [place for place in places if place.way == way and place.distance > _SAME]
    flips = _edge_up(cell, face)
    if way == ALONG:
        yield from _row(cell, face, way, _nearest(wanted, way, flips), "above" if flips else "below")
    elif face in (Face.FOOT, Face.HEAD):
        side = "right" if face is Face.HEAD else "left"
        yield from _row(cell, face, way, _nearest(wanted, way, flips), side)
    else:
        best = _nearest(wanted, way, flips)
        middle = (frame_of(cell.board).u0 + frame_of(cell.board).u1) / 2
        for side in ("left", "right"):
            yield from _row(cell, face, way, [p for p in best if (p.at[0] > middle) is (side == "right")], side)


def _nearest(places: Sequence[Place], way: str, flips: bool) -> list[Place]:
    """Of places at one distance the one nearest to where its dimension stands; the nearest distances first."""
    best: dict[float, Place] = {}
    for place in places:
        key = round(place.distance, 3)
        held = best.get(key)
        if held is None or _nearer(place.at, held.at, way == ALONG, flips):
            best[key] = place
    return sorted(best.values(), key=lambda place: place.distance)


def _row(cell: Cell, face: Face, way: str, places: Sequence[Place], side: str) -> Iterator[Fact]:
    """One row of running dimensions beside a view."""
    if not places:
        return
    origin = origin_of(cell, face)
    right = side == "right"
    at = (max(place.at[0] for place in places), origin[1]) if right else origin
    name = f"{way}-right" if right else way
    start = _feature(cell, face, f"{name}-origin", at)
    for place in places:
        end = _feature(cell, face, place.feature, place.at)
        yield Fact(
            f"{start.id}/{end.id}",
            start,
            end,
            Rank.LOCATION,
            (view_id(cell, face),),
            0.0 if way == ALONG else 90.0,
            kind="running",
            side=side,
            rounding="cut",
            chain=f"{cell.id}:{face.value}:{name}",
            measured=place.distance,
            board=cell.board.id,
        )


def _nearer(one: Point, two: Point, along: bool, flips: bool) -> bool:
    """Whether a point lies nearer to the side that its dimension stands on."""
    if along:
        return one[1] > two[1] + _SAME if flips else one[1] < two[1] - _SAME
    return one[0] < two[0] - _SAME


def origin_of(cell: Cell, face: Face) -> Point:
    """The reference corner as a view has it."""
    frame = frame_of(cell.board)
    edge = frame.v1 if frame.far else frame.v0
    x, y = PLANES[face].at((frame.u0, edge, 0.0))
    if face in (Face.FOOT, Face.HEAD):
        return (PLANES[face].at((frame.u0, edge, -frame.thickness))[0] if face is Face.FOOT else x), y
    return x, y


def _edge_up(cell: Cell, face: Face) -> bool:
    """Whether the reference edge is the upper one in a view."""
    far = frame_of(cell.board).far
    return (face is Face.FACE and far) or (face is Face.BACK and not far)


def _outline_places(cell: Cell) -> Iterator[Place]:
    """Corners of the outline that aren't corners of the blank, and centres of its arcs."""
    frame = frame_of(cell.board)
    for n, (here, there) in enumerate(cell.board.shape.outline.pairs()):
        points = [(f"outline-{n + 1}", (here.x, here.y))]
        if here.bulge:
            points.append((f"arc-{n + 1}", _arc_place(cell, (here.x, here.y), (there.x, there.y), here.bulge)))
        for name, (u, v) in points:
            if frame.u0 + _SAME < u < frame.u1 - _SAME:
                yield Place(ALONG, u - frame.u0, (u, v), f"{name}-along")
            if frame.v0 + _SAME < v < frame.v1 - _SAME:
                yield Place(ACROSS, frame.from_edge(v), (u, v), f"{name}-across")


def _arc_place(cell: Cell, here: Point, there: Point, bulge: float) -> Point:
    """What an arc is located by: its centre, or its crown over or under a centre that lies off the board.

    So no extension line runs past the board to a point where nothing is.
    """
    frame, arc = frame_of(cell.board), arc_of(here, there, bulge)
    (x, y), radius = arc.centre, arc.radius
    if frame.v0 - _SAME < y < frame.v1 + _SAME:
        return arc.centre
    crowns = (
        (x, y + math.copysign(radius, math.sin(math.radians(turn))))
        for turn in (90.0, 270.0, 450.0, 630.0, -90.0, -270.0)
        if arc.start_deg - 1e-6 <= turn <= arc.end_deg + 1e-6
    )
    return next(crowns, arc.centre)


def _outline_notes(cell: Cell, face: Face, assembly: Assembly) -> Iterator[Fact]:
    """The angle of each slanted line in ( ), and the radius of each arc."""
    sizes, board = cell.sizes, cell.board
    view = view_id(cell, face)
    for n, (here, there) in enumerate(board.shape.outline.pairs()):
        if here.bulge:
            arc = arc_of((here.x, here.y), (there.x, there.y), here.bulge)
            angle = math.radians((arc.start_deg + arc.end_deg) / 2)
            on = (arc.centre[0] + arc.radius * math.cos(angle), arc.centre[1] + arc.radius * math.sin(angle))
            a, b = _feature(cell, face, f"arc-{n}-centre", arc.centre), _feature(cell, face, f"arc-{n}", on)
            yield Fact(f"{a.id}/{b.id}", a, b, Rank.RADIUS, (view,), kind="radius", rounding="cut", board=board.id)
        elif abs(here.x - there.x) > _SAME and abs(here.y - there.y) > _SAME:
            from_edge = math.degrees(math.atan2(abs(there.y - here.y), abs(there.x - here.x)))
            upright = board.member.split(".")[0] == "side" and assembly.slant is not None
            names = ("slant ", "level", "plumb") if upright else ("", "square", "the edge")
            words = (
                f"({names[0]}{sizes.angle(90.0 - from_edge)} from {names[1]}, {sizes.angle(from_edge)} from {names[2]})"
            )
            at = ((here.x + there.x) / 2, (here.y + there.y) / 2)
            feature = _feature(cell, face, f"slant-{n}", at)
            yield Fact(
                f"{feature.id}/words",
                feature,
                feature,
                Rank.LOCATION,
                (view,),
                kind="note",
                words=words,
                board=board.id,
            )


def moved_to(fact: Fact, view: str) -> Fact:
    """The same fact on another view in the same plane."""

    def over(feature: Feature) -> Feature:
        return Feature(feature.id, tuple(Sight(view, sight.point) for sight in feature.sights))

    return replace(fact, a=over(fact.a), b=over(fact.b), views=(view,))
