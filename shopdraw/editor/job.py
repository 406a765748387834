"""Jobs of the worker process: full views, findings, sheets. Knows no Qt, so that the worker starts without it."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.views import Views, full_views
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding

if TYPE_CHECKING:
    from shopdraw.editor.router_job import RouterSight


PATIENCE = 10
"""How far jobs that can wait step back: POSIX niceness."""


@dataclass(frozen=True, slots=True)
class Worked:
    """What a worker made of a state.

    Attributes:
        views: full views.
        found: findings, worst first.
        sheets: sets of sheets: what prints on paper, then what prints at true size.
        router: a board as the router gets it.
    """

    views: Views | None = None
    found: tuple[Finding, ...] | None = None
    sheets: tuple[SheetSet, ...] | None = None
    router: RouterSight | None = None


def views_job(assembly: Assembly, section: bool) -> Worked:  # handed on by position
    """Full views of a piece."""
    return Worked(views=full_views(assembly, section=section))


def findings_job(design: Design, assembly: Assembly) -> Worked:
    """What is wrong with a piece."""
    # Only the worker process needs the checks: the window opens without loading them.
    from shopdraw.check import findings

    return Worked(found=tuple(findings(design, assembly)))


def sheets_job(design: Design, assembly: Assembly, found: tuple[Finding, ...], path: Path | None) -> Worked:
    """The sheets of a piece, and its templates in tiles."""
    # Sheets and lists are loaded by the process that draws them, never by the window.
    from shopdraw.editor.sheet_job import sheet_sets

    return Worked(sheets=sheet_sets(design, assembly, found, path))


def router_job(design: Design, board: Board, path: Path | None) -> Worked:
    """A board as the router gets it."""
    from shopdraw.editor.router_job import router_sight

    return Worked(router=router_sight(design, board, path))


def collisions_job(boards: tuple[Board, ...]) -> frozenset[str]:
    """Ids of boards that share wood where they stand."""
    from shopdraw.wood.interference import overlaps

    return frozenset(name for one, other, _ in overlaps(boards) for name in (one, other))


def nothing_job() -> Worked:
    """Nothing: loads what the other jobs need."""
    # The sheets tell which hidden lines print: loaded now, not when the first views are asked for.
    import shopdraw.sheet.arrangement  # noqa: F401

    return Worked()


def give_way() -> None:
    """Lets the window and the views go first on a busy machine; where a system knows no priorities nothing happens."""
    if hasattr(os, "nice"):
        os.nice(PATIENCE)
