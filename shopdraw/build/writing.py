"""The writing shelf: one board, or a rear one that laps over the front one and leaves a step with a moulded edge.

The front board carries the hinges and is held at its front edge. The rear board is rabbeted below at its front; its
lap over the front board stays dry. Unless it is just a step thicker than the front board it stands in dados of its own
at another level; a notch in each of its ends hides where they begin.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case import forward_of, lay_across, rear_gap, stand_in_sides
from shopdraw.build.clear_line import Proud, clear_of_lid
from shopdraw.build.joinery import Housing, house
from shopdraw.build.profile import edge_profile, mould
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Fixing

FRONT = "shelf.writing"
REAR = "shelf.rear"
LAP_MM = 12.0
"""No lap is made narrower than this (common practice)."""
LAP_PLAY_MM = 3.0
"""Of the lap is left when both boards have shrunk away from each other (common practice)."""
BEFORE_COMPARTMENTS_MM = 12.0
"""The step stands this far before the compartments' plumb front (common practice)."""
EDGE_SHARE = 0.4
"""Size of the step's moulding as a share of the step (common practice)."""
FRONT_SHARE = 0.55
"""Of the depth inside, the front board's, where no compartments stand on the rear one (common practice)."""


@dataclass(frozen=True, slots=True)
class TwoBoards:
    """Sizes of a writing shelf in two boards, mm.

    Attributes:
        front: world y of the front board's front edge.
        step_at: world y of the rear board's front edge.
        step: how far its upper face stands over the front board's.
        lap: how far it lies over the front board.
        room: open behind the front board's rear edge, for wood that moves otherwise than the sides'.
        thickness: of the rear board.
        least_lap: what the lap must not fall below.
    """

    front: float
    step_at: float
    step: float
    lap: float
    room: float
    thickness: float
    least_lap: float

    @property
    def front_end(self) -> float:
        """World y of the front board's rear edge."""
        return self.step_at + self.lap

    @property
    def rabbet_depth(self) -> float:
        """Of the rabbet below the rear board: its thickness less the step."""
        return self.thickness - self.step


def shelf_front(plan: SlantPlan) -> float:
    """World y of the shelf's front edge: half the joint gap behind the pin, and never before the front plane."""
    return max(forward_of(plan, plan.stocks.of("shelf")), plan.slant.pin[0] + plan.slant.joint_gap / 2)


def step_of(plan: SlantPlan) -> float:
    """How far the compartments' floor lies over the writing surface, mm; 0 for a shelf in one board."""
    table = plan.design.writing
    if table.boards == 1:
        return 0.0
    return table.step if table.step is not None else plan.stocks.of("shelf.rear").thickness / 2


def two_boards(plan: SlantPlan, compartments: float | None) -> TwoBoards | None:
    """Sizes of a shelf in two boards; None for one board.

    The lap is at least what both boards lose to the driest season, each from its outer edge, and 3 mm.

    Args:
        plan: the piece's sizes.
        compartments: world y of the plumb front of what stands on the rear board, or None.
    Raises:
        CannotBuild: a step, a lap or a front board that can't be made, with what would be right.
    """
    table = plan.design.writing
    if table.boards == 1:
        return None
    front, rear = plan.stocks.of("shelf"), plan.stocks.of("shelf.rear")
    step = step_of(plan)
    least_step = max(rear.thickness - front.thickness, 3.0)
    if not least_step <= step <= rear.thickness - 4.0:
        right = f"expected {least_step:g} to {rear.thickness - 4.0:g} mm for boards of {front.thickness:g} and "
        raise CannotBuild([fault("writing.step", f"{step:g} mm", f"{right}{rear.thickness:g} mm")])
    begin, end = shelf_front(plan), plan.rear - rear_gap(plan, rear)
    # Whatever each is held by, neither board is longer in the season than it is deep.
    shrink = plan.season.loss(1.0, front)
    lap_given = table.lap
    guess = _step_at(plan, table.front_depth, lap_given or LAP_MM, compartments, step, begin, end)
    least = shrink * (guess + (lap_given or LAP_MM) - begin) + plan.season.loss(end - guess, rear) + LAP_PLAY_MM
    lap = lap_given if lap_given is not None else max(LAP_MM, math.ceil(least))
    at = _step_at(plan, table.front_depth, lap, compartments, step, begin, end)
    least = plan.season.loss(at + lap - begin, front) + plan.season.loss(end - at, rear) + LAP_PLAY_MM
    most = (compartments if compartments is not None else end - 40.0) - begin
    if not lap + 30.0 <= at + lap - begin <= most + lap or end - at < 40.0 + lap:
        right = f"expected {lap + 30.0:.1f} to {most + lap:.1f} mm: a front board before it and a rear one behind"
        raise CannotBuild([fault("writing.front_depth", f"{at + lap - begin:.1f} mm", right)])
    return TwoBoards(begin, at, step, lap, _room(plan, at, lap), rear.thickness, least)


def _step_at(
    plan: SlantPlan,
    front_depth: float | None,
    lap: float,
    compartments: float | None,
    step: float,
    begin: float,
    end: float,
) -> float:
    """World y of the rear board's front edge."""
    if front_depth is not None:
        return begin + front_depth - lap
    clear = clear_of_lid(plan.slant, step, Proud(plan.design.compartments.clearance))
    if compartments is not None:
        return max(compartments - BEFORE_COMPARTMENTS_MM, min(clear, compartments))
    return max(begin + FRONT_SHARE * (end - begin), clear)


def _room(plan: SlantPlan, at: float, lap: float) -> float:
    """Behind the front board: by how much it would grow, or the sides carry the rear one, against its shoulder."""
    front, rear, season = plan.stocks.of("shelf"), plan.stocks.of("shelf.rear"), plan.season
    wet = season.gain(at + lap, front) - season.gain(at, plan.side) - season.gain(lap, rear)
    dry = season.loss(at, plan.side) + season.loss(lap, rear) - season.loss(at + lap, front)
    return max(0.0, math.ceil(10 * max(wet, dry) - 1e-6) / 10)


def lay_writing_shelf(bench: Bench, plan: SlantPlan, sizes: TwoBoards | None) -> tuple[Blank, ...]:
    """Lay the writing shelf and let it into the sides; the board that carries the hinges comes first."""
    begin = shelf_front(plan)
    shelf = lay_across(bench, plan, FRONT, "writing shelf", "shelf", plan.writing, begin)
    if sizes is None:
        stand_in_sides(bench, plan, shelf.id, (shelf,), shelf.box(), guest_front=begin)
        return (shelf,)
    shelf.name = "writing shelf, front board"
    shelf.grow("+y", sizes.front_end - sizes.room - shelf.box().y1)
    # Behind the front board its dado ends where the rear board hides it, with room for the cutter.
    stand_in_sides(bench, plan, shelf.id, (shelf,), shelf.box(), guest_front=begin, rear=sizes.front_end + plan.radius)
    return (shelf, _rear_board(bench, plan, sizes, shelf))


def _rear_board(bench: Bench, plan: SlantPlan, sizes: TwoBoards, front: Blank) -> Blank:
    top = plan.writing + sizes.step
    board = lay_across(bench, plan, REAR, "writing shelf, rear board", "shelf.rear", top, sizes.step_at)
    board.fixing = Fixing("side.left", (plan.width / 2, sizes.step_at, top))
    case = plan.design.case
    for hand, into, x in (("left", "-x", plan.left), ("right", "+x", plan.right)):
        section = board.box().with_side("-x", x).with_side("+x", x)._replace(y1=plan.depth)
        how = Housing(plan.dado, case.fit, relief=case.relief, stop=sizes.step_at + case.dado_stop, radius=plan.radius)
        side = bench[f"side.{hand}"]
        house(bench, "dado", side, REAR, (board,), section, into, how, purpose=REAR, guest_front=sizes.step_at)
    lap = board.box()._replace(y1=sizes.front_end, z1=plan.writing)
    board.sink_box("rabbet", lap, "+z", id=f"rabbet:{REAR}:{FRONT}", purpose=f"lap over {front.name}")
    sized = (("lap", sizes.lap), ("step", sizes.step), ("depth", sizes.rabbet_depth))
    bench.joints.append(
        Joint(f"lap:{FRONT}:{REAR}", "lap", FRONT, REAR, (REAR,), glued=False, floats=True, gap=sizes.room, sizes=sized)
    )
    _moulded(board, plan, sizes)
    return board


def _moulded(board: Blank, plan: SlantPlan, sizes: TwoBoards) -> None:
    """The step's upper edge, along the whole front."""
    edge = plan.design.writing.edge
    if edge == "square":
        return
    given = plan.design.writing.edge_size
    size = given if given is not None else max(1.0, round(EDGE_SHARE * sizes.step * 2) / 2)
    made = edge_profile(edge, size)
    if made.down_edge > sizes.step - 1.0:
        right = f"expected at most {(sizes.step - 1.0) * size / made.down_edge:g} mm on a step of {sizes.step:g} mm"
        raise CannotBuild([fault("writing.edge_size", f"{size:g} mm", right)])
    mould(board, "-y", "+z", made, id=f"moulding:{REAR}:step", purpose="edge of the step")


def shelf_under(bench: Bench, box: Box) -> tuple[Blank, ...]:
    """The rear board, where a cut into the shelf's underside reaches it."""
    if REAR not in bench.blanks:
        return ()
    rear = bench[REAR].box()
    return (bench[REAR],) if rear.z0 < box.z1 and rear.y0 < box.y1 else ()
