"""The judge of nested sheets, by the true arcs of what is cut."""

from __future__ import annotations

from shopdraw.cnc.flat import THROUGH
from shopdraw.cnc.nested_sheet import Nest
from shopdraw.shape.clearance import clearance
from shopdraw.shape.path import Path, bounds

_GRID_MM = 2e-3


def nest_faults(nest: Nest) -> tuple[str, ...]:
    """What is wrong with a sheet: gaps, margins, run-outs, keep-out strips, grain; empty where nothing is."""
    found: list[str] = []
    length, width = nest.size
    need = nest.cutter + 2 * nest.nesting.allowance
    margin = nest.nesting.margin
    for i, one in enumerate(nest.parts):
        x0, y0, x1, y1 = bounds(one.outline)
        room = min(x0, y0, length - x1, width - y1)
        if room < margin - _GRID_MM:
            found.append(f"{one.board.label} lies {room:.2f} mm from the sheet's edge; the margin is {margin:g}")
        if one.quarters % 2 and not one.free:
            found.append(f"{one.board.label} lies with its grain across the sheet and isn't free to")
        for low, high in nest.nesting.keep_out:
            if x0 < high - _GRID_MM and x1 > low + _GRID_MM:
                found.append(f"{one.board.label} lies in the keep-out strip from {low:g} to {high:g}")
        radius = max((r for _, r in one.setting.runs), default=0.0)
        swept = [shape for operation, shape in one.paths() if isinstance(shape, Path) and operation.layer != THROUGH]
        for j, other in enumerate(nest.parts):
            if j == i:
                continue
            apart = clearance(one.outline, other.outline) if j > i else need
            if apart < need - _GRID_MM:
                found.append(
                    f"{one.board.label} and {other.board.label} are {apart:.2f} mm apart; the cutter and twice its "
                    f"allowance need {need:.2f}"
                )
            for path in swept:
                past = clearance(path, other.outline)
                if past <= radius:
                    found.append(
                        f"a run-out of {one.board.label} comes within {past:.2f} mm of {other.board.label}; the "
                        f"cutter's radius is {radius:.2f}"
                    )
    return tuple(found)
