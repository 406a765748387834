"""Compartments and the writing shelf in two boards: clear of the shut lid, points, laps, and what the seasons leave."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.build.clear_line import Proud, clear_of_lid
from shopdraw.build.compartment import back_groove
from shopdraw.build.compartment_plan import Compartments, compartments_of, front_behind_slant, least_front
from shopdraw.build.pigeonholes import full_point
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.build.small_drawer import small_drawer_id, small_drawer_size, small_plan
from shopdraw.build.writing import FRONT, REAR, TwoBoards, two_boards
from shopdraw.check.figure import mm
from shopdraw.check.movement import HANDBOOK
from shopdraw.check.subject import Subject
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of

PRACTICE = "common practice"
LEAST_PLAY_MM = 0.3
"""Over a small drawer in the wettest season (common practice)."""
STILL_IN_MM = 1.0
"""What a back keeps in its grooves in the driest season (common practice)."""
_SLIGHT = 1e-6


def compartment_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about compartments and the shelf that they stand on."""
    plan = subject.plan
    if isinstance(plan, SlantPlan) and subject.assembly.has(FRONT):
        yield from step_fouls_lid(subject, plan)
        yield from lap_short(plan)
        yield from hinge_across_lap(subject, plan)
    if not any(board.member in ("partition", "pigeonhole", "bracket") for board in subject.assembly.boards):
        return
    for one in compartments_of(plan):
        if one.room.slanted and isinstance(plan, SlantPlan):
            yield from front_fouls_lid(subject, plan)
        yield from points_deep(subject, one)
        yield from back_slips(subject, one)
        yield from small_drawers_stick(subject, one)


def front_fouls_lid(subject: Subject, plan: SlantPlan) -> Iterator[Finding]:
    """Must be fixed: boards or knobs of compartments stand so far forward that the lid doesn't shut clear of them."""
    front, need = front_behind_slant(plan), least_front(plan)
    boards = [b for b in subject.assembly.boards if b.member in ("partition", "pigeonhole")]
    if not boards or front is None:
        return
    foremost = min(box_of(board)[1] for board in boards)
    if foremost >= need - _SLIGHT:
        return
    table = subject.design.compartments
    proud = f", {mm(table.proud)} mm proud of the lid" if table.proud else ""
    yield Finding(
        "compartments-foul-lid",
        Severity.MUST_FIX,
        (*(board.id for board in boards[:1]), "lid"),
        f"the compartments' plumb front stands {mm(foremost)} mm behind the front plane; the shut lid, with "
        f"{mm(table.clearance)} mm of clearance{proud} and knobs that stand out {mm(table.knob)} mm, needs {mm(need)} "
        f"mm: right would be compartments.front {mm(need)} mm or more, or leave it out",
        foremost,
        need,
        basis="geometry",
        right=("compartments.front", f"{need + 0.005:.2f} mm"),
    )


def step_fouls_lid(subject: Subject, plan: SlantPlan) -> Iterator[Finding]:
    """Must be fixed: the rear board's front edge stands before the line that clears the shut lid."""
    sizes = two_boards(plan, front_behind_slant(plan))
    if sizes is None or not subject.assembly.has(REAR):
        return
    at = box_of(subject.assembly.board(REAR))[1]
    need = clear_of_lid(plan.slant, sizes.step, Proud(subject.design.compartments.clearance))
    if at >= need - _SLIGHT:
        return
    depth = need - sizes.front + sizes.lap
    yield Finding(
        "step-fouls-lid",
        Severity.MUST_FIX,
        (REAR, "lid"),
        f"the step of the writing shelf, {mm(sizes.step)} mm high, stands {mm(at)} mm behind the front plane; the shut "
        f"lid needs {mm(need)} mm: right would be a front board {mm(depth)} mm deep or more",
        at,
        need,
        basis="geometry",
        right=("writing.front_depth", f"{depth + 0.005:.2f} mm"),
    )


def lap_short(plan: SlantPlan) -> Iterator[Finding]:
    """The lap keeps 3 mm when both boards have shrunk, each held at its outer edge; else it opens."""
    sizes = two_boards(plan, front_behind_slant(plan))
    if sizes is None or sizes.lap >= sizes.least_lap - _SLIGHT:
        return
    yield Finding(
        "lap-short",
        Severity.CAUTION if sizes.lap > sizes.least_lap - 3.0 else Severity.MUST_FIX,
        (f"lap:{FRONT}:{REAR}", FRONT, REAR),
        f"the rear board laps {mm(sizes.lap)} mm over the front one, and both may draw apart by "
        f"{mm(sizes.least_lap - 3.0)} mm by the driest season; right would be writing.lap {mm(sizes.least_lap)} mm or "
        "more",
        sizes.lap,
        sizes.least_lap,
        basis=HANDBOOK,
        right=("writing.lap", f"{sizes.least_lap + 0.005:.2f} mm"),
    )


def hinge_across_lap(subject: Subject, plan: SlantPlan) -> Iterator[Finding]:
    """Must be fixed: a hinge's leaf reaches past the front board's rear edge or under the step: the lap is dry."""
    sizes = two_boards(plan, front_behind_slant(plan))
    if sizes is None:
        return
    reach = plan.slant.pin[0] + subject.design.lid.hinge_leaf
    if reach <= sizes.step_at + _SLIGHT:
        return
    depth = _front_depth(plan, sizes)
    yield Finding(
        "hinge-across-lap",
        Severity.MUST_FIX,
        (FRONT, REAR, "lid"),
        f"the hinges' leaves reach {mm(reach)} mm back and the rear board begins at {mm(sizes.step_at)} mm: a leaf "
        f"lies wholly on the front board; right would be a front board {mm(depth)} mm deep or more",
        reach,
        sizes.step_at,
        basis=PRACTICE,
        right=("writing.front_depth", f"{depth + 0.005:.2f} mm"),
    )


def _front_depth(plan: SlantPlan, sizes: TwoBoards) -> float:
    """The front board that carries the hinges' leaves whole."""
    return plan.slant.pin[0] + plan.design.lid.hinge_leaf - sizes.front + sizes.lap


def points_deep(subject: Subject, one: Compartments) -> Iterator[Finding]:
    """V points that leave too little of a partition: two at one level leave a third of it, one alone half."""
    if not any(len(bay.spaces) > 1 for bay in one.bays) or one.point <= one.most_point + _SLIGHT:
        return
    meet = one.most_point < one.thickness / 2 - _SLIGHT
    left = one.thickness - (2 if meet else 1) * one.point
    shelf = subject.plan.stocks.of("pigeonhole").thickness
    blunt = f"a blunt point {mm(one.most_point)} mm deep" if one.most_point < full_point(shelf) else "a full point"
    yield Finding(
        "v-points-deep",
        Severity.MUST_FIX if left < one.thickness / 6 else Severity.CAUTION,
        tuple(board.id for board in subject.assembly.boards if board.member == "partition"),
        f"V points {mm(one.point)} mm deep leave {mm(left)} mm of partitions {mm(one.thickness)} mm thick; right would "
        f"be {blunt}, or shelves stepped so that they don't meet",
        left,
        one.thickness - (2 if meet else 1) * one.most_point,
        basis=PRACTICE,
        right=("compartments.point", f"{int(one.most_point * 100) / 100:.2f} mm"),
    )


def back_slips(subject: Subject, one: Compartments) -> Iterator[Finding]:
    """A back held in the middle that shrinks out of its grooves, or has no room to grow in them."""
    if not one.room.back or not subject.assembly.has("compartment.back"):
        return
    board = subject.assembly.board("compartment.back")
    depths, _ = back_groove(subject.plan, one)
    box = box_of(board)
    ends = (("lower", one.room.floor - box[2], depths[0]), ("upper", box[5] - one.room.ceiling, depths[1]))
    half = (box[5] - box[2]) / 2
    shrinks, grows = subject.plan.season.loss(half, board.stock), subject.plan.season.gain(half, board.stock)
    for name, enters, depth in ends:
        if enters - shrinks < STILL_IN_MM - _SLIGHT or depth - enters < grows - _SLIGHT:
            yield Finding(
                "back-loose",
                Severity.CAUTION if enters > shrinks else Severity.MUST_FIX,
                (board.id,),
                f"{board.name} enters its {name} groove by {mm(enters)} mm of {mm(depth)} mm, shrinks {mm(shrinks)} mm "
                f"and grows {mm(grows)} mm there; right would be {mm(shrinks + STILL_IN_MM)} mm of entry and "
                f"{mm(grows)} mm of room: a deeper groove, quartered stock, or plywood",
                enters,
                shrinks + STILL_IN_MM,
                basis=HANDBOOK,
            )


def small_drawers_stick(subject: Subject, one: Compartments) -> Iterator[Finding]:
    """A small drawer's front or side that grows up to what lies over it."""
    plan = small_plan(subject.plan)
    for bay in one.bays:
        for number in range(1, bay.drawers + 1):
            floor, ceiling = bay.spaces[number - 1]
            key = small_drawer_id(bay, number)
            for name in (f"drawer.{key}.front", f"drawer.{key}.side-left"):
                if not subject.assembly.has(name):
                    continue
                board = subject.assembly.board(name)
                top = box_of(board)[5]
                wet = ceiling - top - plan.season.gain(top - floor, board.stock)
                if wet < LEAST_PLAY_MM - _SLIGHT:
                    need = small_drawer_size(plan, one, bay, number).top_clearance + LEAST_PLAY_MM - wet
                    reveal = plan.design.compartments.reveal + LEAST_PLAY_MM - wet
                    yield Finding(
                        "small-drawer-sticks",
                        Severity.MUST_FIX if wet < 0 else Severity.CAUTION,
                        (name,),
                        f"{mm(ceiling - top)} mm are open over {board.name} at build and {mm(wet)} mm in the wettest "
                        f"season; right would be {mm(need)} mm at build",
                        wet,
                        LEAST_PLAY_MM,
                        basis=HANDBOOK,
                        right=("compartments.reveal", f"{reveal:.2f} mm"),
                    )
