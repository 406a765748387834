"""Shelves that sag under what stands on them, at once and in time, and the span that would hold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.trade.loads import figure, sag_mm
from shopdraw.trade.species import species
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity

_SHELVES = ("shelf", "pinned-shelf")
BASIS = "Wood Handbook FPL-GTR-190, eq. 9-2; limit: Fine Woodworking (2007), 0.02 in per ft; in time: NDS 3.5.2"


@dataclass(frozen=True, slots=True)
class Sag:
    """A shelf under its load, mm.

    Attributes:
        at_once, in_time: how far its middle goes down.
        limit: how far it may go down at once.
        span_that_holds: the widest one within the limit, thickness and load as they are.
        thickness_that_holds: the least one within the limit, span and load as they are.
    """

    at_once: float
    in_time: float
    limit: float
    span_that_holds: float
    thickness_that_holds: float


def sag_of(span: float, width: float, thickness: float, kg_per_m: float, stiffness_mpa: float) -> Sag:
    """How far a shelf sags that lies on its two ends.

    Args:
        span: clear width between its ends, mm.
        width: of the board, mm.
        thickness: of the board, mm.
        kg_per_m: what stands on each metre of it.
        stiffness_mpa: modulus of elasticity along its grain.
    """
    at_once = sag_mm(span, width, thickness, kg_per_m, stiffness_mpa)
    limit = figure("limit", "sag").value * span
    share = limit / at_once
    return Sag(
        at_once,
        at_once * figure("limit", "creep").value,
        limit,
        span * share ** (1 / 3),
        thickness * share ** (-1 / 3),
    )


def sag_findings(subject: Subject) -> Iterator[Finding]:
    """A caution for each shelf that sags more than the eye bears; from the bottom up."""
    given = subject.design.load.shelf
    load = figure("load", "shelf").value if given is None else given
    for level in subject.assembly.levels:
        if level.kind not in _SHELVES or not subject.assembly.has(level.id):
            continue
        board = subject.assembly.board(level.id)
        span = clear_span(subject, board)
        sag = sag_of(span, board.width, board.thickness, load, stiffness_mpa(subject, board))
        if sag.at_once > sag.limit + 1e-9:
            yield Finding(
                "shelf-sags",
                Severity.CAUTION,
                (board.id,),
                f"{board.name} spans {mm(span)} mm and sags {mm(sag.at_once, 1)} mm at once, {mm(sag.in_time, 1)} mm "
                f"in time, under {mm(load, 1)} kg a metre; it may {mm(sag.limit, 1)} mm. Right would be a span of "
                f"{mm(sag.span_that_holds, 0)} mm, a shelf {mm(sag.thickness_that_holds, 1)} mm thick, or a strip "
                "glued on edge under its front",
                sag.at_once,
                sag.limit,
                basis=BASIS,
            )


def clear_span(subject: Subject, board: Board) -> float:
    """The clear width between a shelf's ends: of the case's inside, or of the board where it is shorter, mm."""
    return min(board.length, subject.plan.inside)


def stiffness_mpa(subject: Subject, board: Board) -> float:
    """Modulus of elasticity along a board's grain: as stated in the piece, else as the table of species has it."""
    table = subject.design.stock.get(board.stock.name)
    if table is not None and table.stiffness is not None:
        return table.stiffness * 1000.0
    if board.stock.kind == "sheet":
        return figure("limit", "panel_stiffness").value
    return species(board.stock.species).stiffness_mpa
