"""A piece with what is wrong with it."""

from __future__ import annotations

from shopdraw.check.gather import Part, ruled, when_open
from shopdraw.cli.beside import Beside, Other, has_cores, may_split
from shopdraw.cli.built import Work, built
from shopdraw.cli.found import with_findings
from shopdraw.cnc.part import router_findings
from shopdraw.cnc.shop_cutters import cutters_of
from shopdraw.wood.finding import Finding, Ruled


def work_on(file: str, shop_file: str | None = None) -> Work:
    """Reads, builds and checks the piece in a file.

    Args:
        file: the piece file.
        shop_file: the shop file for this run; else the one that the piece names, the user's own, the stated defaults.
    Raises:
        Refused: a file can't be read or what it asks for can't be built, one line for each fault.
    """
    return checked(built(file, shop_file), split=has_cores() and may_split(wholly=True))


def checked(work: Work, *, split: bool = False) -> Work:
    """The same work with what is wrong with it.

    Args:
        split: whether a second process may share the checks out, see `may_split`.
    """
    design, assembly = work.piece.design, work.assembly
    if not split:
        return with_findings(work, ruled(design, assembly, (Part.SOLIDS,)), *further_findings(work))
    with Beside(_further, work, split=True) as other:
        return with_findings(work, ruled(design, assembly, (Part.SOLIDS,)), *other.outcome())


def further_findings(work: Work) -> tuple[Ruled, tuple[Finding, ...]]:
    """What needs hardly a solid: rules about figures, how the piece stands open, what cutters can't do well."""
    design, assembly = work.piece.design, work.assembly
    return (
        ruled(design, assembly, (Part.FIGURES,)),
        (*when_open(design, assembly), *router_findings(assembly, design, cutters_of(work.shop.shop))),
    )


def _further(_: Other, work: Work) -> tuple[Ruled, tuple[Finding, ...]]:
    return further_findings(work)
