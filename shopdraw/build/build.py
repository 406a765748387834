"""Which kind of piece is built by what."""

from __future__ import annotations

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.desk import desk
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly


def build(design: Design) -> Assembly:
    """The whole piece, derived from what a person decided.

    Raises:
        CannotBuild: inputs that can't all hold, or a kind that isn't built yet.
    """
    if design.piece.kind != "slant-desk":
        raise CannotBuild(
            [fault("piece.kind", f'"{design.piece.kind}"', 'expected "slant-desk": other kinds can\'t be built yet')]
        )
    return desk(design)
