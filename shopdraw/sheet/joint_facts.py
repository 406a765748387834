"""What the details of joints tell: the opening cut into the host, and in words its fit, gap and glue."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from shopdraw.drawing.mark import Line, Meaning
from shopdraw.lists.figures import Figures
from shopdraw.lists.joint_schedule import fixing, gap_words
from shopdraw.shape.frame import dot
from shopdraw.shape.path import Point
from shopdraw.sheet.details import Detail
from shopdraw.sheet.fact import Fact, Feature, Rank
from shopdraw.sheet.joint_body import corners_of, on_plane
from shopdraw.sheet.places import LEAST_LINK, Places
from shopdraw.sheet.sighting import Seen
from shopdraw.sheet.telling import note_at, size_between
from shopdraw.wood.assembly import Joint

NEAR_MM = 0.05
ROUNDED_MM = 1.2
"""A mortise with rounded ends is longer than its tenon's flat by up to this (its corner clears the tenon's)."""
BESIDE_MM = 3.0
"""How far from where two boards meet the host's own edges are looked for."""
SQUARE = 0.999


class Edge(NamedTuple):
    """A straight edge along an axis of the paper: where it lies across, from where to where it runs."""

    at: float
    low: float
    high: float


def joint_facts(places: Places, details: Sequence[Detail], figures: Figures) -> Iterator[Fact]:
    """The facts of all details that show a joint."""
    seen = {view.id: view for view in places.views}
    joints = {joint.id: joint for joint in places.assembly.joints}
    for detail in details:
        if detail.joint:
            joint = joints[detail.joint]
            yield from _opening(places, detail, joint, seen[detail.view])
            yield _words(places, detail, joint, figures)


def _opening(places: Places, detail: Detail, joint: Joint, seen: Seen) -> Iterator[Fact]:
    """Depth and width of what is cut into the host, where the section shows both edges of either."""
    box = on_plane(corners_of(places.assembly, joint), detail.plane)
    lines = list(_straight(seen))
    boards = joint.host, joint.guest
    if joint.body is None:
        for axis, name in ((0, "width"), (1, "depth")):
            beside = box[1 - axis] - BESIDE_MM, box[3 - axis] + BESIDE_MM
            one, two = (_edge(lines, boards[:1], axis, box[i], BESIDE_MM, beside) for i in (axis, axis + 2))
            if one is not None and two is not None:
                yield from _size(places, detail, joint, name, axis, one, two)
        return
    direction = detail.plane.plane.direction
    out = dot(joint.body.frame.w, direction.right), dot(joint.body.frame.w, direction.up)
    axis = 0 if abs(out[0]) > SQUARE else 1 if abs(out[1]) > SQUARE else -1
    if axis < 0:
        return
    low, high = (box[axis], box[axis + 2]), (box[1 - axis], box[3 - axis])
    shoulder, floor = (low[1], low[0]) if out[axis] > 0 else (low[0], low[1])
    one, two = (_edge(lines, boards, 1 - axis, at, joint.fit + ROUNDED_MM, low) for at in high)
    if one is not None and two is not None:
        yield from _size(places, detail, joint, "width", 1 - axis, one, two)
    deep = _edge(lines, boards, axis, floor, joint.fit + joint.relief + joint.gap + NEAR_MM, high)
    face = _edge(lines, (), axis, shoulder, NEAR_MM, (high[0] - BESIDE_MM, high[1] + BESIDE_MM))
    if deep is not None and face is not None:
        yield from _size(places, detail, joint, "depth", axis, face, deep)


def _size(
    places: Places, detail: Detail, joint: Joint, name: str, axis: int, one: Edge, two: Edge
) -> Iterator[Fact]:
    """One size along an axis of the paper, where it is long enough to be read."""
    if abs(two.at - one.at) * places.scale < LEAST_LINK:
        return
    ends: list[Feature] = []
    for edge, other in ((one, two), (two, one)):
        along = min(max((other.low + other.high) / 2, edge.low), edge.high)
        point: Point = (edge.at, along) if axis == 0 else (along, edge.at)
        ends.append(places.at(f"{detail.name} {joint.id}:{name} {len(ends)}", detail.view, point))
    yield size_between(
        ends[0], ends[1], Rank.SIZE, (detail.view,), direction_deg=90.0 * axis, rounding="cut", board=joint.host
    )


def _straight(seen: Seen) -> Iterator[Line]:
    for mark in seen.marks:
        if isinstance(mark, Line) and mark.meaning in (Meaning.CUT, Meaning.BEHIND):
            yield mark


def _edges(lines: Sequence[Line], axis: int) -> Iterator[Edge]:
    """The lines that lie square to an axis of the paper."""
    for line in lines:
        if abs(line.start[axis] - line.end[axis]) < NEAR_MM:
            low, high = sorted((line.start[1 - axis], line.end[1 - axis]))
            yield Edge(line.start[axis], low, high)


def _edge(
    lines: Sequence[Line], boards: Sequence[str], axis: int, at: float, within: float, beside: tuple[float, float]
) -> Edge | None:
    """The edge nearest to a place that runs beside a stretch of the other axis; of the first board that has one.

    An edge that two boards share is drawn once, as either's.
    """
    for board in boards or ("",):
        held = [
            edge
            for edge in _edges([line for line in lines if not board or line.board == board], axis)
            if abs(edge.at - at) <= within and edge.high > beside[0] + NEAR_MM and edge.low < beside[1] - NEAR_MM
        ]
        if held:
            return min(held, key=lambda edge: (round(abs(edge.at - at), 4), -round(edge.high - edge.low, 4), edge))
    return None


def _words(places: Places, detail: Detail, joint: Joint, figures: Figures) -> Fact:
    """The joint's name with its fit, gap in each season and glue, at a leader from its middle."""
    sizes = dict(joint.sizes)
    words = ["V-housing" if joint.kind == "v-housing" else joint.kind.replace("-", " ")]
    if joint.kind == "butt":
        words = [places.assembly.board(joint.guest).name]
    if "tails" in sizes:
        words[0] = f"{sizes['tails']:.0f} dovetails, slope 1:{sizes['slope']:.0f}"
    if "tenon" in sizes:
        words = [f"tenon {figures.size(sizes['tenon'])} in mortise {figures.size(sizes['mortise'])}"]
    if "angle" in sizes:
        words.append(figures.angle(sizes["angle"]))
    if joint.fit > NEAR_MM:
        words.append(f"fit {figures.gap(joint.fit)}")
    words += [said for said in (gap_words(places.assembly, joint, figures), fixing(joint, figures)) if said]
    words += [
        f"{fitting.quantity} {fitting.kind}s Ø {figures.size(dict(fitting.sizes)['diameter'])}"
        for fitting in places.assembly.hardware
        if set(fitting.on) == {joint.host, joint.guest} and "diameter" in dict(fitting.sizes)
    ]
    words += _splines(places, joint, figures)
    box = on_plane(corners_of(places.assembly, joint), detail.plane)
    middle = [(box[i] + box[i + 2]) / 2 for i in (0, 1)]
    reach = 0.6 * detail.radius
    at = tuple(min(max(m, c - reach), c + reach) for m, c in zip(middle, detail.centre, strict=True))
    place = places.point(f"{detail.name}:joint", {detail.view: (at[0], at[1])})
    return note_at(
        f"joint:{detail.name}", place, "; ".join(words), Rank.CLEARANCE, (detail.view,), board=joint.guest
    )


def _splines(places: Places, joint: Joint, figures: Figures) -> Iterator[str]:
    """What keys a mitre: the spline let into both boards, its thickness and width."""
    if joint.kind != "mitre":
        return
    keyed = [j for j in places.assembly.joints if j.kind == "groove" and j.host == joint.guest]
    for one in keyed:
        board = places.assembly.board(one.guest) if places.assembly.has(one.guest) else None
        if board is not None and board.member.endswith(".spline"):
            yield f"{board.name.split()[0]} {figures.size(board.thickness)} × {figures.size(board.width)}"
