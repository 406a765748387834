"""Names of layers: a verb and a depth, in hundredths of a millimetre or thousandths of an inch."""

from __future__ import annotations

from collections.abc import Iterable

from shopdraw.cnc.flat import Unit
from shopdraw.measure import MM_PER_INCH

SAME_DEPTH_MM = 1e-4
_INCH = float(MM_PER_INCH)


def depth_figure(depth_mm: float, unit: Unit) -> str:
    """A depth as it stands in a layer's name: `635H` in a mm file, `250T` in an inch file; rounded to that unit."""
    if unit is Unit.MM:
        return f"{round(depth_mm * 100 + 1e-9)}H"
    return f"{round(depth_mm / _INCH * 1000 + 1e-9)}T"


def sink_layers(depths_mm: Iterable[float], unit: Unit) -> dict[float, str]:
    """The layer of each depth; depths that differ but round alike get `_N1`, `_N2`.

    Args:
        depths_mm: distinct depths, see `distinct`.
    """
    by_figure: dict[str, list[float]] = {}
    for depth in sorted(depths_mm):
        by_figure.setdefault(depth_figure(depth, unit), []).append(depth)
    named = {}
    for figure, alike in by_figure.items():
        for number, depth in enumerate(alike, 1):
            named[depth] = f"SINK_{figure}" + (f"_N{number}" if len(alike) > 1 else "")
    return named


def distinct(depths_mm: Iterable[float]) -> tuple[float, ...]:
    """Depths without their noise: those nearer than 0.0001 mm are one, the first of them."""
    found: list[float] = []
    for depth in depths_mm:
        if not any(abs(depth - other) <= SAME_DEPTH_MM for other in found):
            found.append(depth)
    return tuple(found)
