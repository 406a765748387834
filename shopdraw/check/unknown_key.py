"""Keys of a file that mean nothing, as findings."""

from __future__ import annotations

from shopdraw.piece.unknown import UnknownKey
from shopdraw.wood.finding import Finding, Severity


def unknown_key(caution: UnknownKey) -> Finding:
    """The finding that a key of the file means nothing."""
    return Finding(
        code="unknown-key",
        severity=Severity.CAUTION,
        where=(caution.address,),
        message=f"line {caution.line}: {caution.message}",
        unit="",
        basis=f"the keys of {caution.file}",
    )
