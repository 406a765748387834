"""The hardware: each fitting, how many, on which boards, of what size."""

from __future__ import annotations

from shopdraw.build.screw import KIND
from shopdraw.lists.figures import Figures
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.trade.hardware import pilot_mm, screw_gauge, wood_screw
from shopdraw.wood.assembly import Assembly, Hardware

TITLE = "Hardware"
DENSITY_OF_ONE = 1120.0
"""Of wood of a specific gravity of 1 at 12 % moisture, water included, kg/m³ (Wood Handbook FPL-GTR-282, chapter 4)."""


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
        pilots = "; ".join(dict.fromkeys(filter(None, (_pilot(assembly, fitting, figures) for fitting in alike))))
        made.append((kind, sum(fitting.quantity for fitting in alike), sizes, bites, ", ".join(where), pilots))
    heads = ("fitting", "quantity", "sizes", "goes through, bites", "on", "pilot hole")
    return Table(TITLE, tuple(map(Column, heads)), tuple(made))


def _bite(fitting: Hardware, figures: Figures) -> str:
    """What a screw passes before it bites, and how far it bites; "" for other fittings."""
    length = dict(fitting.sizes).get("length")
    if not fitting.through or length is None:
        return ""
    return f"{figures.size(fitting.through)}, {figures.size(length - fitting.through)}"


def _pilot(assembly: Assembly, fitting: Hardware, figures: Figures) -> str:
    """Diameter of a wood screw's pilot hole in the densest board that it bites into; "" for other fittings.

    Source:
        NDS, wood screws: a share of the thread's root by the wood's specific gravity, none in light woods.
    """
    if fitting.kind != KIND:
        return ""
    held = [assembly.board(one).stock for one in fitting.on[1:] or fitting.on if assembly.has(one)]
    root = wood_screw(screw_gauge(fitting.through)).root_mm
    if root is None or not held:
        return ""
    hole = pilot_mm(root, max(stock.density for stock in held) / DENSITY_OF_ONE)
    return "none needed" if hole is None else f"Ø {figures.size(hole)}"


def _label(assembly: Assembly, board: str) -> str:
    return assembly.board(board).label if assembly.has(board) else board
