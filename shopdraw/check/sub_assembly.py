"""Which boards are put together on the bench before they go into the piece: a web frame, a drawer, a plinth, a lid."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from shopdraw.wood.assembly import Assembly


def sub_assemblies(assembly: Assembly) -> Mapping[str, tuple[str, ...]]:
    """Boards by what they are put together to, in the piece's order; a board that stands alone is a group of its own.

    An id is the path of what made a board, so boards of one sub-assembly share all of it but the last word; joints
    among themselves tell them from a mere pair, such as two sides.

    Returns:
        Ids of boards by the id of the sub-assembly, or of the board.
    """
    families: dict[str, list[str]] = {}
    for board in assembly.boards:
        families.setdefault(_family(board.id, assembly), []).append(board.id)
    beside = jointed(assembly, held=True)
    found: dict[str, tuple[str, ...]] = {}
    for family, members in families.items():
        for group in groups_of(members, beside):
            found[family if len(group) > 1 else group[0]] = group
    order = {board.id: place for place, board in enumerate(assembly.boards)}
    return dict(sorted(found.items(), key=lambda item: order[item[1][0]]))


def _family(board_id: str, assembly: Assembly) -> str:
    """The path that a board shares with those it is made together with: `lid` for `lid` and for `lid.cap-left`."""
    if any(other.id.startswith(f"{board_id}.") for other in assembly.boards):
        return board_id
    return board_id.rpartition(".")[0] or board_id


def jointed(assembly: Assembly, *, held: bool = False) -> Mapping[str, frozenset[str]]:
    """For each board the boards that it has a joint with.

    Args:
        held: leave out dry laps, which hold nothing together.
    """
    beside = {board.id: set[str]() for board in assembly.boards}
    for joint in assembly.joints:
        if held and joint.kind == "lap" and not joint.glued:
            continue
        for guest in joint.guest_boards or (joint.guest,):
            if joint.host in beside and guest in beside:
                beside[joint.host].add(guest)
                beside[guest].add(joint.host)
    return {board: frozenset(others) for board, others in beside.items()}


def groups_of(members: Collection[str], beside: Mapping[str, frozenset[str]]) -> list[tuple[str, ...]]:
    """Boards in groups that joints hold together, each in the order given."""
    left = dict.fromkeys(members)
    groups = []
    while left:
        first = next(iter(left))
        reached, waiting = {first}, [first]
        while waiting:
            new = {other for other in beside[waiting.pop()] if other in left and other not in reached}
            reached |= new
            waiting += new
        groups.append(tuple(member for member in left if member in reached))
        left = {member: None for member in left if member not in reached}
    return groups
