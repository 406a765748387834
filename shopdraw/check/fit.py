"""Whether the piece goes together: boards that share wood, and joints that don't close."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.check.figure import mm
from shopdraw.check.seasons import Season
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import SHARED_MM3, Closing, closing, overlaps


def boards_overlap(seasons: Sequence[Season]) -> Iterator[Finding]:
    """Must be fixed: two boards share wood; each pair is told once, for the first season in which it does."""
    told: set[tuple[str, str]] = set()
    for season in seasons:
        for one, other, volume in overlaps(season.assembly.boards, wood=season.wood):
            if (one, other) in told:
                continue
            told.add((one, other))
            least, direction = _least_way_out(season, one, other)
            yield Finding(
                "boards-overlap",
                Severity.MUST_FIX,
                (one, other),
                f"{_name(season.assembly, one)} and {_name(season.assembly, other)} share {volume:.1f} mm³ of wood "
                f"{season.words}; they would be clear with about {mm(least)} mm less {direction}",
                volume,
                SHARED_MM3,
                "mm³",
            )


_WAYS = ("in width", "from front to back", "in height")


def _least_way_out(season: Season, one: str, other: str) -> tuple[float, str]:
    """How thick the shared wood is where it is thinnest, mm, and that direction in words."""
    shared = season.wood(season.assembly.board(one)) ^ season.wood(season.assembly.board(other))
    box, volume = shared.bounding_box(), float(shared.volume())
    spans = [box[axis + 3] - box[axis] for axis in range(3)]
    whole = spans[0] * spans[1] * spans[2]
    # thickness on average over the two other spans: skins of no volume don't widen it
    thick = [volume / (whole / span) for span in spans]
    least = min(range(3), key=lambda axis: thick[axis])
    return thick[least], _WAYS[least]


def joints_open(assembly: Assembly) -> Iterator[Finding]:
    """Must be fixed: a guest doesn't end where its joint says, off the host's floor by the stated relief."""
    for joint in assembly.joints:
        if not assembly.has(joint.host) or not all(assembly.has(name) for name in joint.guest_boards):
            continue
        found = closing(assembly, joint)
        if found is None or found.closes():
            continue
        yield _joint_open(assembly, joint, found)


def _joint_open(assembly: Assembly, joint: Joint, found: Closing) -> Finding:
    guest = " and ".join(_name(assembly, name) for name in joint.guest_boards) or joint.guest
    host = _name(assembly, joint.host)
    stated = 0.0 if found.through else joint.relief
    where = (joint.id, joint.host, *joint.guest_boards)
    if found.gap is None:
        message = f"no wood of {guest} stands in {host}: the board ends before its joint"
        return Finding("joint-open", Severity.MUST_FIX, where, message, None, stated)
    depth = joint.body.depth + stated if joint.body is not None else stated
    enters = depth - found.gap
    if found.gap < stated and found.gap < 0:
        said = f"it would need {mm(depth, 3)} mm of room and {host} has no such cut"
    elif found.gap < stated:
        said = f"it is {mm(stated - found.gap, 3)} mm too long"
    else:
        said = f"it ends {mm(found.gap - stated, 3)} mm short of where it should"
    return Finding(
        "joint-open",
        Severity.MUST_FIX,
        where,
        f"{guest} enters {host} by {mm(enters, 3)} mm, its {joint.kind} is {mm(depth, 3)} mm deep with a relief of "
        f"{mm(stated, 3)} mm: {said}; right would be {mm(depth - stated, 3)} mm",
        found.gap,
        stated,
    )


def _name(assembly: Assembly, board_id: str) -> str:
    return assembly.board(board_id).name if assembly.has(board_id) else board_id
