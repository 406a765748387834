"""Jobs of the worker process: full views, findings, sheets. Knows no Qt, so that the worker starts without it."""

from __future__ import annotations

import gc
import os
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.on_sheet import OnSheets
from shopdraw.editor.scene import Views
from shopdraw.piece.design import Design
from shopdraw.piece.unknown import UnknownKey
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding

if TYPE_CHECKING:
    from shopdraw.editor.kept_wood import KeptWood
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
        on_sheets: what can be taken hold of on the sheets.
        of_layout: findings that only the sheets could make.
        router: a board as the router gets it.
    """

    views: Views | None = None
    found: tuple[Finding, ...] | None = None
    sheets: tuple[SheetSet, ...] | None = None
    on_sheets: OnSheets = field(default_factory=dict)
    of_layout: tuple[Finding, ...] = ()
    router: RouterSight | None = None


def views_job(assembly: Assembly, section: bool) -> Worked:  # handed on by position
    """Full views of a piece."""
    # Hidden lines need solids: the window opens without loading them.
    from shopdraw.editor.views import full_views

    return Worked(views=full_views(assembly, section=section, wood=_kept_wood().of))


def views_ahead_job(design: Design, number: int) -> Worked:
    """Full views of a piece that a hand is passing; given up when a newer one is wanted."""
    from shopdraw.build import build
    from shopdraw.editor.views import full_views

    kept = _kept_wood()
    kept.tidy()

    def stale() -> bool:
        return bool(_newest and _newest[0].value != number)

    return Worked(views=None if stale() else full_views(build(design, rough=True), stale=stale, wood=kept.of))


@lru_cache(maxsize=1)
def _kept_wood() -> KeptWood:
    """The wood that this worker process keeps between its jobs."""
    from shopdraw.editor.kept_wood import KeptWood

    return KeptWood()


_newest: list[Any] = []
"""In a worker process: where the window keeps the number of the newest job."""


def know_newest(newest: Any) -> None:  # a ctypes value, which has no type of its own
    """Tells a worker process where the number of the newest job is kept.

    It never searches for dead rings: that would hold a hand's views up for a tenth of a second now and then, and views
    leave none behind.
    """
    _newest.append(newest)
    gc.disable()


def findings_job(
    design: Design, assembly: Assembly, cautions: tuple[UnknownKey, ...], path: Path | None
) -> Worked:  # fmt: skip
    """What is wrong with a piece."""
    # Only the worker process needs the checks: the window opens without loading them.
    from shopdraw.editor.finding_job import piece_findings

    return Worked(found=piece_findings(design, assembly, cautions, path))


def sheets_job(design: Design, assembly: Assembly, found: tuple[Finding, ...], path: Path | None) -> Worked:
    """The sheets of a piece, and its templates in tiles."""
    # Sheets and lists are loaded by the process that draws them, never by the window.
    from shopdraw.editor.sheet_job import sheet_sets

    drawn = sheet_sets(design, assembly, found, path)
    return Worked(sheets=drawn.sets, on_sheets=drawn.held, of_layout=drawn.findings)


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
    import shopdraw.editor.views
    import shopdraw.sheet.arrangement  # noqa: F401

    # What has been loaded stays: no search for dead rings goes through it.
    gc.freeze()
    return Worked()


def give_way() -> None:
    """Lets the window and the views go first on a busy machine; where a system knows no priorities nothing happens."""
    if hasattr(os, "nice"):
        os.nice(PATIENCE)
