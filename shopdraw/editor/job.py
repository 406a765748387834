"""Jobs of the worker process: full views, findings, sheets. Knows no Qt, so that the worker starts without it."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.views import Views, full_views
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding


@dataclass(frozen=True, slots=True)
class Worked:
    """What a worker made of a state.

    Attributes:
        views: full views.
        found: findings, worst first.
        sheets: the set of sheets.
    """

    views: Views | None = None
    found: tuple[Finding, ...] | None = None
    sheets: SheetSet | None = None


def views_job(assembly: Assembly) -> Worked:
    """Full views of a piece."""
    return Worked(views=full_views(assembly))


def findings_job(design: Design, assembly: Assembly) -> Worked:
    """What is wrong with a piece."""
    # Only the worker process needs the checks: the window opens without loading them.
    from shopdraw.check import findings

    return Worked(found=tuple(findings(design, assembly)))


def sheets_job(design: Design, assembly: Assembly, found: tuple[Finding, ...]) -> Worked:
    """The sheets of a piece."""
    from shopdraw.sheet.sheet_set import sheet_set

    return Worked(sheets=sheet_set(design, assembly, found))


def nothing_job() -> Worked:
    """Nothing: loads what the other jobs need."""
    return Worked()
