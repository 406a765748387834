"""The plan of compartments: where they stand, their bays, partitions, small shelves and drawers.

Behind a slant they stand on the writing shelf, clear of the shut lid; in another kind of piece in each opening filled
with pigeonholes, between two boards. Heights are world z, depths world y, mm.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import rear_gap
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.clear_line import Proud, clear_of_lid
from shopdraw.build.pigeonholes import (
    Bay,
    choice_of,
    full_point,
    keys_of_bays,
    most_point,
    points_meet,
    refuse_bracket,
    refuse_point,
    refuse_strangers,
    spaces_of,
    widths_of_bays,
)
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.build.writing import FRONT, REAR, step_of
from shopdraw.piece.design import CompartmentsTable, OpeningTable

LEAST_DEPTH_MM = 60.0
"""No compartments shallower than this are built (common practice)."""
BEHIND_GROOVE_MM = 8.0
"""Wood left behind the back's groove (common practice)."""
BACK_GROOVE_MM = 6.0
"""Depth of the back's grooves, at least (common practice)."""
PLAY_MM = 0.5
"""Kept beside every computed movement gap."""
KNOB_RADIUS_MM = 8.0
"""Half a small knob (common practice)."""


@dataclass(frozen=True, slots=True)
class Room:
    """The clear space that compartments fill.

    Attributes:
        opening: its path.
        prefix: what the names of its bays begin with: "" behind a slant, else the opening's path and a hyphen.
        left, right, floor, ceiling: its sides, mm.
        front: world y of the plumb front.
        rear: world y of the back's front face, or of what else ends it behind.
        below, above, on_left, on_right: ids of the boards round it.
        back: whether it has a back of its own.
        slanted: whether it stands behind a slant.
    """

    opening: str
    prefix: str
    left: float
    right: float
    floor: float
    ceiling: float
    front: float
    rear: float
    below: str
    above: str
    on_left: str
    on_right: str
    back: bool
    slanted: bool


@dataclass(frozen=True, slots=True)
class Compartments:
    """A room with its bays.

    Attributes:
        room: where they stand.
        bays: from the left.
        thickness: of the partitions.
        groove: depth of their grooves.
        stop: how far behind the front these stop.
        point: depth of the V joints' points, v.
        most_point: the deepest that leaves a third of a partition, where points meet in one; else half of it.
        rear: world y where partitions and small shelves end: free to grow before the back.
    """

    room: Room
    bays: tuple[Bay, ...]
    thickness: float
    groove: float
    stop: float
    point: float
    most_point: float
    rear: float

    @property
    def partition_height(self) -> float:
        """Clear height and two grooves, less half a millimetre."""
        return self.room.ceiling - self.room.floor + 2 * self.groove - PLAY_MM


def wanted(plan: CasePlan) -> bool:
    """Whether a piece has compartments: by its table, or by an opening over the writing shelf filled with them."""
    if "compartments" in plan.design.model_fields_set:
        return True
    return isinstance(plan, SlantPlan) and _over_writing(plan) is not None


def compartments_of(plan: CasePlan) -> tuple[Compartments, ...]:
    """All compartments of a piece.

    Raises:
        CannotBuild: bays, shelves or fronts that don't fit, with their addresses and what would be right.
    """
    if not wanted(plan):
        return ()
    if isinstance(plan, SlantPlan):
        return (_divided(plan, _behind_slant(plan)),)
    cells = [cell for cell in plan.space.cells if cell.fill == "pigeonhole"]
    return tuple(_divided(plan, _in_opening(plan, cell)) for cell in cells)


def front_behind_slant(plan: SlantPlan) -> float | None:
    """World y of the plumb front behind a slant; None without compartments."""
    return _front(plan) if wanted(plan) else None


def least_front(plan: SlantPlan) -> float:
    """The foremost plumb front that clears the shut lid, with the knobs of small drawers, mm.

    A typed front is judged by it.
    """
    table = plan.design.compartments
    floor = step_of(plan)
    tall = plan.height - plan.stocks.of("top").thickness - plan.writing
    fronts = [clear_of_lid(plan.slant, tall, Proud(table.clearance, table.proud))]
    for height in _knob_heights(plan, table, tall - floor):
        kept = Proud(table.clearance, table.proud + table.knob)
        fronts.append(clear_of_lid(plan.slant, floor + height + KNOB_RADIUS_MM, kept))
    return max(fronts)


def _front(plan: SlantPlan) -> float:
    given = plan.design.compartments.front
    if given is not None:
        return given
    grid = 1.5875 if plan.design.piece.units == "inch" else 1.0
    return math.ceil(least_front(plan) / grid - 1e-9) * grid


def _knob_heights(plan: SlantPlan, table: CompartmentsTable, tall: float) -> list[float]:
    """Over the floor, of the knob of each small drawer."""
    shelf = plan.stocks.of("pigeonhole").thickness
    heights: list[float] = []
    for key in keys_of_bays(plan, _over_writing(plan)):
        spaces = spaces_of(f"compartments.{key}", choice_of(table, key), 0.0, tall, shelf)
        drawers = choice_of(table, key).drawers or 0
        heights += [(low + high) / 2 for low, high in spaces[:drawers]]
    return heights


def _over_writing(plan: SlantPlan) -> tuple[str, OpeningTable] | None:
    for id, table in plan.design.opening.items():
        if table.above == "writing" and table.fill == "pigeonhole":
            return id, table
    return None


def _behind_slant(plan: SlantPlan) -> Room:
    table = plan.design.compartments
    opening = _over_writing(plan)
    floor = plan.writing + step_of(plan)
    member = "shelf" if plan.design.writing.boards == 1 else "shelf.rear"
    end = plan.rear - rear_gap(plan, plan.stocks.of(member))
    with_back = table.back is not False
    back = plan.stocks.of("compartment.back").thickness + plan.design.case.fit
    rear = end - BEHIND_GROOVE_MM - back if with_back else end
    return Room(
        opening[0] if opening else "compartments",
        "",
        plan.left,
        plan.right,
        floor,
        plan.height - plan.stocks.of("top").thickness,
        _front(plan),
        rear,
        FRONT if plan.design.writing.boards == 1 else REAR,
        "top",
        "side.left",
        "side.right",
        with_back,
        slanted=True,
    )


def _in_opening(plan: CasePlan, cell: Row) -> Room:
    """A room between two boards of a case without a slant."""
    table = plan.design.compartments
    if table.back:
        right = "expected false: a back in grooves goes in from above, and here a board lies above"
        raise CannotBuild([fault("compartments.back", "true", right)])
    ceiling = plan.ceiling(cell)
    above = next((v.id for v in plan.space.levels if abs(v.under - ceiling) < 1e-6), "top")
    for id in (cell.level, above):
        if id.startswith("frame") or (id == "top" and plan.design.case.top_joint == "overhanging"):
            right = "expected a board below and above compartments, for the partitions' grooves: a shelf in its place"
            raise CannotBuild([fault(f"opening.{cell.opening}", "a web frame", right)])
    wood = plan.stocks.of("divider").thickness
    uprights = plan.space.uprights
    left = next((u.id for u in uprights if _at(u.left + wood, cell.left) and _at(u.floor, cell.floor)), "side.left")
    right_of = next((u.id for u in uprights if _at(u.left, cell.right) and _at(u.floor, cell.floor)), "side.right")
    front = table.front if table.front is not None else plan.front
    prefix = cell.opening.replace(".", "-") + "-"
    return Room(
        cell.opening, prefix, cell.left, cell.right, cell.floor, ceiling, front, plan.rear, cell.level, above, left,
        right_of, back=False, slanted=False,
    )  # fmt: skip


def _at(one: float, other: float) -> bool:
    return abs(one - other) < 1e-6


def _divided(plan: CasePlan, room: Room) -> Compartments:
    table = plan.design.compartments
    opening = _over_writing(plan) if isinstance(plan, SlantPlan) else None
    keys = keys_of_bays(plan, opening)
    refuse_strangers(table, keys)
    partition, shelf = plan.stocks.of("partition"), plan.stocks.of("pigeonhole")
    free = math.ceil(10 * (plan.season.gain(room.rear - room.front, partition) + PLAY_MM)) / 10
    rear = room.rear - free
    if rear - room.front < LEAST_DEPTH_MM:
        right = f"expected at least {LEAST_DEPTH_MM:g} mm: a front further forward, a steeper slant or a deeper case"
        raise CannotBuild([fault("compartments.front", f"compartments {rear - room.front:.1f} mm deep", right)])
    bays, left = [], room.left
    for key, width in zip(keys, widths_of_bays(plan, (room.left, room.right), opening, keys), strict=True):
        own = choice_of(table, key)
        spaces = spaces_of(f"compartments.{key}", own, room.floor, room.ceiling, shelf.thickness)
        bay = Bay(key, room.prefix + key, left, left + width, spaces, own.drawers or 0, own.bracket or "none")
        refuse_bracket(table, bay)
        bays.append(bay)
        left += width + partition.thickness
    most = most_point(partition.thickness, meet=points_meet(bays, shelf.thickness))
    point = table.point if table.point is not None else min(full_point(shelf.thickness), most)
    refuse_point(bays, point, partition.thickness, shelf.thickness)
    hosts = min(plan.stocks.of(_member(id)).thickness for id in (room.below, room.above))
    inch = plan.design.piece.units == "inch"
    usual = min(4.7625 if inch else 4.0, hosts / 3) if room.slanted else hosts / 6
    groove = table.groove if table.groove is not None else usual
    if groove > hosts / 2:
        right = f"expected at most {hosts / 3:.1f} mm, a third of the thinner board"
        raise CannotBuild([fault("compartments.groove", f"{groove:g} mm", right)])
    return Compartments(room, tuple(bays), partition.thickness, groove, table.stop, point, most, rear)


def _member(board: str) -> str:
    return board if board in ("top", "bottom", REAR) else board.partition(".")[0]
