"""Desks for the rules, and ways to spoil them: each fault that is planted must be found."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import Any

from shopdraw.build import build
from shopdraw.check.gather import findings
from shopdraw.piece.design import Design
from shopdraw.shape.path import Corner, Path
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Cut
from shopdraw.wood.finding import Finding

SOUND: dict[str, dict[str, Any]] = {
    "case": {"width": 900.0, "height": 1040.0, "depth": 480.0},
    "slant": {"writing_height": 740.0, "top_depth": 230.0},
}


def design(**tables: dict[str, Any]) -> Design:
    """An ordinary desk with some tables' keys laid over it; None takes a key away."""
    merged: dict[str, dict[str, Any]] = {name: dict(table) for name, table in SOUND.items()}
    for name, table in tables.items():
        merged[name] = {**merged.get(name, {}), **table}
        merged[name] = {key: value for key, value in merged[name].items() if value is not None}
    return Design.model_validate(merged)


def checked(piece: Design, assembly: Assembly | None = None) -> tuple[Finding, ...]:
    """The findings on a design, or on a spoilt assembly of it."""
    return findings(piece, build(piece) if assembly is None else assembly)


def of_code(found: Iterable[Finding], code: str) -> list[Finding]:
    """The findings of one rule."""
    return [finding for finding in found if finding.code == code]


def must_fix(found: Iterable[Finding]) -> set[str]:
    """The codes of all that must be fixed."""
    return {finding.code for finding in found if finding.severity.value == "must-fix"}


def with_board(assembly: Assembly, board: Board) -> Assembly:
    """The piece with one board exchanged for another of the same id."""
    return replace(assembly, boards=tuple(board if one.id == board.id else one for one in assembly.boards))


def lengthened(board: Board, by: float) -> Board:
    """The board longer by mm at its head, cuts there carried along; shorter where it is negative."""
    end = board.length

    def carried(path: Path) -> Path:
        return Path(tuple(Corner(c.x + by if c.x > end - 0.01 else c.x, c.y, c.bulge) for c in path.corners))

    cuts = tuple(_carried(cut, carried) for cut in board.shape.cuts)
    return replace(board, shape=replace(board.shape, outline=carried(board.shape.outline), cuts=cuts))


def _carried(cut: Cut, carried: Any) -> Cut:
    if cut.face.value in ("foot", "head"):
        return cut
    return replace(cut, outline=carried(cut.outline))


def without_cuts(board: Board, guest: str) -> Board:
    """The board with the cuts for one guest forgotten."""
    kept = [i for i, name in enumerate(board.cut_ids) if not (name.split(":")[-1] + ".").startswith(f"{guest}.")]
    return replace(
        board,
        shape=replace(board.shape, cuts=tuple(board.shape.cuts[i] for i in kept)),
        cut_ids=tuple(board.cut_ids[i] for i in kept),
        cut_for=tuple(board.cut_for[i] for i in kept),
    )
