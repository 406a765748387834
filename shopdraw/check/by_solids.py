"""The rules that look at solids: boards at rest, on their way, and put together.

They know the assembly alone, not what a person decided, so that a process which knows nothing else can ask them.
"""

from __future__ import annotations

from enum import IntEnum

from shopdraw.check.assembly_order import assembly_findings
from shopdraw.check.fit import boards_overlap, joints_open
from shopdraw.check.motion import motions_blocked
from shopdraw.check.seasons import seasons
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Ruled


class Solid(IntEnum):
    """The rules, in the order in which `by_solids` gives what they find."""

    MOTION = 0
    FIT = 1
    ORDER = 2


def by_solids(assembly: Assembly) -> Ruled:
    """What each rule of `Solid` finds, in mm."""
    times = seasons(assembly)
    return (
        tuple(motions_blocked(times)),
        (*boards_overlap(times), *joints_open(assembly)),
        assembly_findings(assembly),
    )
