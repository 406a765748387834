"""What each board is joined to first, in the order of assembly: told on its label."""

from __future__ import annotations

from collections.abc import Mapping

from shopdraw.check.assembly_order import Step, assembly_order
from shopdraw.lists.figures import Figures
from shopdraw.lists.joint_schedule import fixing, labels
from shopdraw.wood.assembly import Assembly, Joint


def next_joints(assembly: Assembly, figures: Figures) -> Mapping[str, str]:
    """The first joint of each board in words, by its id: "dado into 1L, 1R, glued"; no key where it has none.

    Args:
        assembly: the piece.
        figures: how sizes are written.
    """
    told: dict[str, str] = {}
    for step in assembly_order(assembly).steps:
        for board in (*step.boards, *step.onto):
            if board not in told:
                words = _first(assembly, step, board, figures)
                if words:
                    told[board] = words
    return told


def _first(assembly: Assembly, step: Step, board: str, figures: Figures) -> str:
    """The step's first kind of joint of a board, with all the boards that it joins it to."""
    held = [joint for joint in step.joints if board == joint.host or board in _guests(joint)]
    if not held:
        return ""
    first = held[0]
    alike = [joint for joint in held if joint.kind == first.kind and (joint.host == board) == (first.host == board)]
    if first.host == board:
        others = dict.fromkeys(guest for joint in alike for guest in _guests(joint))
        way = "takes"
    else:
        others, way = dict.fromkeys(joint.host for joint in alike), "into"
    return f"{first.kind.replace('-', ' ')}, {way} {labels(assembly, list(others))}, {fixing(first, figures)}"


def _guests(joint: Joint) -> tuple[str, ...]:
    return joint.guest_boards or (joint.guest,)
