"""What can't be built: inputs that can't all hold, told like faults of the file they stand in."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.piece.fault import Fault


class CannotBuild(Exception):
    """Inputs of a piece that can't all hold."""

    def __init__(self, faults: Sequence[Fault]) -> None:
        super().__init__("\n".join(one.told("piece") for one in faults))
        self.faults = tuple(faults)


def fault(address: str, found: str, right: str) -> Fault:
    """A fault at an address of the piece file; the line is found by who knows the file."""
    return Fault(0, address, found, right)
