"""The hardware: each fitting, how many, on which boards, of what size."""

from __future__ import annotations

from shopdraw.lists.figures import Figures
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.wood.assembly import Assembly, Hardware

TITLE = "Hardware"


def hardware_table(assembly: Assembly, figures: Figures) -> Table:
    """One row for fittings of one kind and size; boards by their labels, those that share a fitting with a +.

    Of a screw is told what it passes and how far it bites, so that its length can be checked against the boards.

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
        bites = "; ".join(dict.fromkeys(filter(None, (_bite(fitting, figures) for fitting in alike))))
        made.append((kind, sum(fitting.quantity for fitting in alike), sizes, bites, ", ".join(where)))
    heads = ("fitting", "quantity", "sizes", "goes through, bites", "on")
    return Table(TITLE, tuple(map(Column, heads)), tuple(made))


def _bite(fitting: Hardware, figures: Figures) -> str:
    """What a screw passes before it bites, and how far it bites; "" for other fittings."""
    length = dict(fitting.sizes).get("length")
    if not fitting.through or length is None:
        return ""
    return f"{figures.size(fitting.through)}, {figures.size(length - fitting.through)}"


def _label(assembly: Assembly, board: str) -> str:
    return assembly.board(board).label if assembly.has(board) else board
