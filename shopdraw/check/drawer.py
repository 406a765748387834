"""Drawers: room above them in all seasons, room behind them in the driest, lips that meet, boxes that rack."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from shopdraw.build.case_plan import Row, laps
from shopdraw.build.drawer import drawer_size
from shopdraw.check.figure import mm, opened
from shopdraw.check.movement import HANDBOOK
from shopdraw.check.subject import Subject, back_front
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of

WIDEST_RATIO = 1.5
"""A drawer wider than this many times its length racks (common practice)."""
BETWEEN_LIPS_MM = 1.0
"""Between the lips of two drawers in the wettest season (common practice)."""
LEAST_PLAY_MM = 0.4
"""Over a front or a box in the wettest season (common practice)."""


def drawer_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about drawers, from the top down."""
    yield from gaps_above(subject)
    yield from stands_proud(subject)
    yield from lips_meet(subject)
    yield from racks(subject)


def gaps_above(subject: Subject) -> Iterator[Finding]:
    """The gap over each drawer at build and in both seasons: a note, or what must be given where it closes."""
    plan, assembly = subject.plan, subject.assembly
    for row in plan.rows:
        size = drawer_size(plan, row)
        ceiling = plan.ceiling(row)
        gaps = []
        for end in ("front" if size.inner is None else "box-front", "side-left"):
            board = assembly.board(f"drawer.{row.key}.{end}")
            stock = assembly.board(board.fixing.moves_with or board.id).stock
            box = box_of(board)
            top = size.box.z1 if size.lipped and end == "front" else box[5]
            # the wood stands on the opening's floor and grows upwards
            tall = top - row.floor
            gap = ceiling - top
            gaps.append((gap - plan.season.gain(tall, stock), gap, gap + plan.season.loss(tall, stock), board))
        wet, build, dry, board = min(gaps, key=lambda gap: gap[0])
        told = f"{mm(build)} mm at build, {mm(dry)} mm in the driest and {mm(wet)} mm in the wettest season"
        where = (board.id, row.opening)
        if wet < LEAST_PLAY_MM - 1e-9:
            more = LEAST_PLAY_MM - wet
            inset = board.id.endswith(".front") and not size.lipped
            key = "reveal" if inset else "top_clearance"
            yield Finding(
                "drawer-sticks",
                Severity.MUST_FIX if wet < 0 else Severity.CAUTION,
                where,
                f"the gap over {board.name} is {told}: it sticks; right would be {mm(build + more)} mm at build",
                wet,
                LEAST_PLAY_MM,
                basis=HANDBOOK,
                right=(f"drawer.{row.key}.{key}", f"{build + more:.2f} mm"),
            )
        else:
            yield Finding(
                "drawer-gap",
                Severity.NOTE,
                where,
                f"the gap over {board.name} is {told}",
                wet,
                LEAST_PLAY_MM,
                basis=HANDBOOK,
            )


def stands_proud(subject: Subject) -> Iterator[Finding]:
    """Drawers and supports keep their length while the case shrinks: what is left behind them in the driest season."""
    plan, assembly = subject.plan, subject.assembly
    back = back_front(assembly) - plan.season.loss(plan.depth, plan.side)
    least: tuple[float, str] | None = None
    for motion in assembly.motions:
        if motion.kind != "slide":
            continue
        rear = max(box_of(assembly.board(name))[4] for name in motion.boards)
        left = back - rear
        if left < 0:
            yield Finding(
                "stands-proud",
                Severity.MUST_FIX,
                (motion.id, "back"),
                f"by the driest season the case loses {mm(plan.season.loss(plan.depth, plan.side))} mm from front to "
                f"back and {opened(motion.id)} nothing: it would "
                f"stand {mm(-left)} mm proud; right would be {mm(-left + 1.0)} mm less length, with its stop in "
                "front and not at the back",
                left,
                0.0,
                basis=HANDBOOK,
            )
        elif least is None or left < least[0]:
            least = (left, motion.id)
    if least is not None:
        yield Finding(
            "behind-drawers",
            Severity.NOTE,
            (least[1], "back"),
            f"drawers and supports keep {mm(least[0])} mm before the back in the driest season; their stops are in "
            "front",
            least[0],
            0.0,
            basis=HANDBOOK,
        )


def lips_meet(subject: Subject) -> Iterator[Finding]:
    """Must be fixed: the lips of two drawers touch, or would in the wettest season."""
    plan, assembly = subject.plan, subject.assembly
    for upper, lower in combinations(plan.rows, 2):
        if not _lies_over(upper, lower):
            continue
        above, below = assembly.board(f"drawer.{upper.key}.front"), assembly.board(f"drawer.{lower.key}.front")
        if not (laps(subject.design, upper.key) or laps(subject.design, lower.key)):
            continue
        a, b = box_of(above), box_of(below)
        grown = plan.season.gain(upper.floor - a[2], above.stock) + plan.season.gain(b[5] - lower.floor, below.stock)
        gap = a[2] - b[5]
        wet = gap - grown
        if wet < BETWEEN_LIPS_MM - 1e-9:
            more = BETWEEN_LIPS_MM - wet
            lip = max(subject.design.drawer.lip - more / 2, 0.0)
            yield Finding(
                "lips-meet",
                Severity.MUST_FIX if wet < 0 else Severity.CAUTION,
                (above.id, below.id),
                f"between the lips of {above.name} and {below.name} there are {mm(gap)} mm at build and {mm(wet)} mm "
                "in the wettest season; right "
                f"would be {mm(BETWEEN_LIPS_MM)} mm then: drawer.lip {mm(lip)} mm, or a rail {mm(more)} mm higher",
                wet,
                BETWEEN_LIPS_MM,
                basis=HANDBOOK,
                right=("drawer.lip", f"{lip:.2f} mm"),
            )


def _lies_over(upper: Row, lower: Row) -> bool:
    """Whether one opening lies over another, however far."""
    return upper.floor > lower.floor and min(upper.right, lower.right) > max(upper.left, lower.left)


def racks(subject: Subject) -> Iterator[Finding]:
    """A caution: a drawer much wider than long jams when pushed on one side."""
    for row in subject.plan.rows:
        size = drawer_size(subject.plan, row)
        width, length = size.box.x1 - size.box.x0, size.box.y1 - size.front.y0
        ratio = width / length
        if ratio > WIDEST_RATIO:
            yield Finding(
                "drawer-wide",
                Severity.CAUTION,
                (f"drawer.{row.key}.side-left", f"drawer.{row.key}.side-right"),
                f"drawer {row.key} is {mm(width)} mm wide and {mm(length)} mm long, ratio {ratio:.2f}: pushed on one "
                "side it racks, with "
                f"{mm(size.side_clearance)} mm clearance a side; right would be {WIDEST_RATIO:g} at most: two "
                "drawers, a centre guide, or longer sides",
                ratio,
                WIDEST_RATIO,
                "",
                "common practice",
            )
