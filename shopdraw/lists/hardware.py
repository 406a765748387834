"""The hardware: each fitting, how many, on which boards, of what size."""

from __future__ import annotations

from shopdraw.lists.figures import Figures
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.wood.assembly import Assembly, Hardware

TITLE = "Hardware"


def hardware_table(assembly: Assembly, figures: Figures) -> Table:
    """One row for fittings of one kind and size; boards by their labels, those that share a fitting with a +.

    Args:
        assembly: the piece.
        figures: how the drawings write sizes.
    """
    rows: dict[tuple[str, str], list[Hardware]] = {}
    for fitting in assembly.hardware:
        sizes = ", ".join(f"{name.replace('-', ' ')} {figures.size(size)}" for name, size in fitting.sizes)
        rows.setdefault((fitting.kind, sizes), []).append(fitting)
    made: list[tuple[Cell, ...]] = []
    for (kind, sizes), alike in rows.items():
        where = dict.fromkeys(" + ".join(_label(assembly, board) for board in fitting.on) for fitting in alike)
        made.append((kind, sum(fitting.quantity for fitting in alike), sizes, ", ".join(where)))
    return Table(TITLE, (Column("fitting"), Column("quantity"), Column("sizes"), Column("on")), tuple(made))


def _label(assembly: Assembly, board: str) -> str:
    return assembly.board(board).label if assembly.has(board) else board
