"""d12, the profile of a shaped foot: a section through the plinth's front, its radii, and where their centres lie."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from shopdraw.drawing.mark import ArcMark
from shopdraw.shape.path import Point
from shopdraw.sheet.arrangement_facts import PLUMB
from shopdraw.sheet.details import Detail, radius_in_steps
from shopdraw.sheet.extent import extent, whole
from shopdraw.sheet.fact import Fact, Feature, Rank
from shopdraw.sheet.places import LEAST_LINK, Places
from shopdraw.sheet.planes import CuttingPlane, off_faces
from shopdraw.sheet.telling import running_from
from shopdraw.view.direction import FRONT
from shopdraw.view.section import Plane
from shopdraw.wood.assembly import Assembly

NAME, LETTER, BOARD = "d12", "M", "plinth.front"
VIEW = f"detail.{NAME}"
AROUND_MM = 12.0
SAME_MM = 0.05


def foot_plane(assembly: Assembly) -> Iterator[CuttingPlane]:
    """M–M, through the middle of a shaped plinth's front; looked at to the back."""
    if not _arcs_of(assembly):
        return
    boards = [board for board in assembly.boards if board.member.startswith("plinth")]
    box, all_round = extent([assembly.board(BOARD)]), whole(assembly)
    y = off_faces((box.y0 + box.y1) / 2, boards, 1)
    # on the plan, whose ends are freer than the side's foot
    ends = (all_round.x0, y), (all_round.x1, y)
    yield CuttingPlane(LETTER, Plane(FRONT, (0.0, y, 0.0)), "plan", ends, (0.0, 1.0), tuple(b.id for b in boards))


def foot_details(assembly: Assembly, planes: Sequence[CuttingPlane]) -> Iterator[Detail]:
    """d12 round the right foot, from the plinth's end to where its curve is over, and down to the floor."""
    plane = next((plane for plane in planes if plane.letter == LETTER and plane.shows), None)
    arcs = _arcs_of(assembly)
    if plane is None or not arcs:
        return
    box = extent([assembly.board(BOARD)])
    low = min(x for x, _ in (point for arc in arcs for point in arc))
    high = max(z for _, z in (point for arc in arcs for point in arc))
    centre = ((low + box.x1) / 2, (box.z0 + high) / 2)
    reach = math.hypot(box.x1 - low, high - box.z0) / 2 + AROUND_MM
    yield Detail(NAME, plane, centre, radius_in_steps(reach), board=BOARD)


def foot_facts(places: Places, details: Sequence[Detail]) -> Iterator[Fact]:
    """Each radius once; from the plinth's end and from the floor where centres lie and arcs begin and end."""
    detail = next((one for one in details if one.name == NAME), None)
    if detail is None:
        return
    seen = next(view for view in places.views if view.id == VIEW)
    arcs = sorted(
        (mark for mark in seen.marks if isinstance(mark, ArcMark) and mark.board == BOARD),
        key=lambda arc: (-arc.centre[0], arc.centre[1]),
    )
    box = places.extent(BOARD)
    end = places.at(f"{BOARD}:end", VIEW, (box.x1, box.z0))
    floor = places.at(f"{BOARD}:floor", VIEW, (box.x1, box.z0))
    points = [point for arc in arcs for point in (arc.centre, *_ends(arc))]
    for axis, origin, side in ((0, end, "below"), (1, floor, "left")):
        held = list(_apart(places, points, axis, box.x1 if axis == 0 else box.z0))
        turn = PLUMB if axis else 0.0
        yield from running_from(
            f"{NAME}.{side}", origin, held, Rank.LOCATION, (VIEW,), direction_deg=turn, side=side, rounding="cut"
        )
    told: list[float] = []
    for number, arc in enumerate(arcs, 1):
        if any(abs(arc.radius - other) < SAME_MM for other in told):
            continue
        told.append(arc.radius)
        middle = math.radians((arc.start_deg + arc.end_deg) / 2)
        on = arc.centre[0] + arc.radius * math.cos(middle), arc.centre[1] + arc.radius * math.sin(middle)
        named = (("centre", arc.centre), ("arc", on))
        a, b = (places.point(f"{NAME}:{what} {number}", {VIEW: at}) for what, at in named)
        fact = Fact(f"{NAME}:R {number}", a, b, Rank.RADIUS, (VIEW,), kind="radius", rounding="cut", board=BOARD)
        alike = sum(abs(other.radius - arc.radius) < SAME_MM for other in arcs)
        yield replace(fact, prefix=f"{alike} × R ") if alike > 1 else fact


def _apart(places: Places, points: Sequence[Point], axis: int, start: float) -> Iterator[Feature]:
    """Places along an axis, none nearer to another than can be dimensioned."""
    taken = [start]
    for point in sorted(points, key=lambda p: abs(p[axis] - start)):
        if all(abs(point[axis] - other) * places.scale > LEAST_LINK for other in taken):
            taken.append(point[axis])
            yield places.point(f"{NAME}:{'xz'[axis]} {len(taken) - 1}", {VIEW: point})


def _ends(arc: ArcMark) -> tuple[Point, Point]:
    x, y = arc.centre
    one, two = (math.radians(turn) for turn in (arc.start_deg, arc.end_deg))
    return (x + arc.radius * math.cos(one), y + arc.radius * math.sin(one)), (
        x + arc.radius * math.cos(two), y + arc.radius * math.sin(two)
    )  # fmt: skip


def _arcs_of(assembly: Assembly) -> list[tuple[Point, Point]]:
    """Both ends, (x, z), of the arcs in the right half of the plinth's front."""
    if not assembly.has(BOARD):
        return []
    board = assembly.board(BOARD)
    corners = list(board.shape.outline.corners)
    found = []
    for here, there in zip(corners, (*corners[1:], corners[0]), strict=True):
        ends = [board.frame.point((corner.x, corner.y, 0.0)) for corner in (here, there)]
        if here.bulge and min(x for x, _, _ in ends) > assembly.width / 2:
            found.append(((ends[0][0], ends[0][2]), (ends[1][0], ends[1][2])))
    return found
