"""A piece with what is wrong with it."""

from __future__ import annotations

from shopdraw.check.by_solids import by_solids
from shopdraw.check.gather import by_figures, when_open
from shopdraw.cli.built import Work, built
from shopdraw.cli.found import with_findings
from shopdraw.cli.solids import solids_judged
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
    with solids_judged() as solids:
        work = built(file, shop_file)
        solids.begin(work.assembly)
        figures, further = further_findings(work)
        return with_findings(work, solids.found(), figures, further)


def checked(work: Work) -> Work:
    """The same work with what is wrong with it, found by this process alone."""
    return with_findings(work, by_solids(work.assembly), *further_findings(work))


def further_findings(work: Work) -> tuple[Ruled, tuple[Finding, ...]]:
    """What needs hardly a solid: rules about figures, how the piece stands open, what cutters can't do well."""
    design, assembly = work.piece.design, work.assembly
    return (
        by_figures(design, assembly),
        (*when_open(design, assembly), *router_findings(assembly, design, cutters_of(work.shop.shop))),
    )
