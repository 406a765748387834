"""Settings of moulding, dovetail and V cutters: each profile once, with the boards that get it."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping

from shopdraw.build.profile import QUIRK, told_of
from shopdraw.lists.figures import Figures
from shopdraw.lists.table import Column, Table
from shopdraw.shape.path import Path, bounds
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Cut, Face

MOULDING, V_GROOVE = "moulding", "v-groove"
_SAME = 1e-3
HEADS = (
    "cut",
    "reach over face × down edge, or widest × deep",
    "radius, or angle from square",
    "steps, or root",
    "boards",
)


def is_shaped(cut: Cut) -> bool:
    """Whether a shaped cutter makes a cut: a moulding, a dovetail along an edge or end, or a V-groove across a face."""
    return cut.kind == MOULDING or (cut.kind in ("dovetail", V_GROOVE) and cut.face in (Face.NEAR, Face.FAR))


def shaped_table(assembly: Assembly, figures: Figures) -> Table:
    """The table of shaped cutters; without rows where a piece has none."""
    rows: dict[tuple[str, ...], list[str]] = {}
    for board in assembly.boards:
        for cut in board.shape.cuts:
            if is_shaped(cut):
                rows.setdefault(_TOLD[cut.kind](cut, figures), []).append(board.label)
    told_rows = tuple((*words, ", ".join(_counted(labels))) for words, labels in rows.items())
    return Table("Moulding, dovetail and V cutters", tuple(Column(head) for head in HEADS), told_rows)


def _counted(labels: list[str]) -> list[str]:
    """Labels once each, with how often where it is more than once: "7.1a (4 ×)"."""
    return [
        label if labels.count(label) == 1 else f"{label} ({labels.count(label)} ×)" for label in dict.fromkeys(labels)
    ]


def _moulding(cut: Cut, figures: Figures) -> tuple[str, ...]:
    told = told_of(cut.outline)
    if told.name == QUIRK:
        size = f"{figures.size(told.step)} × {figures.size(told.radius)}"
        return "quirk beside a bead", size, f"R {figures.size(told.radius)}", ""
    size = f"{figures.size(told.across)} × {figures.size(told.deep)}"
    radius = f"R {figures.size(told.radius)}" if told.radius else ""
    return told.name, size, radius, figures.size(told.step) if told.step > 1e-6 else ""


def _dovetail(cut: Cut, figures: Figures) -> tuple[str, ...]:
    """A socket by its outline, a tongue by its island: widest and narrowest, and the flanks' angle."""
    path, along = (cut.islands[0], True) if cut.islands else (cut.outline, False)
    x0, y0, x1, y1 = bounds(path)
    deep, wide = (x1 - x0, y1 - y0) if along else (y1 - y0, x1 - x0)
    root = _narrowest(path, along)
    angle = math.degrees(math.atan2((wide - root) / 2, deep))
    name = "sliding dovetail on an end" if along else "dovetail socket"
    return name, f"{figures.size(wide)} × {figures.size(deep)}", figures.angle(angle), figures.size(root)


def _v_groove(cut: Cut, figures: Figures) -> tuple[str, ...]:
    """A V-groove by its section: how wide at the face, how deep, how its flanks lean, how wide its floor is."""
    x0, w0, x1, w1 = bounds(cut.outline)
    floor_w = w0 if abs(w1) < _SAME else w1
    floor = [corner.x for corner in cut.outline.corners if abs(corner.y - floor_w) < _SAME]
    flat = max(floor) - min(floor)
    angle = math.degrees(math.atan2((x1 - x0 - flat) / 2, w1 - w0))
    size = f"{figures.size(x1 - x0)} × {figures.size(w1 - w0)}"
    return "V-groove", size, figures.angle(angle), figures.size(flat) if flat > _SAME else ""


def _narrowest(path: Path, along: bool) -> float:
    levels: dict[float, list[float]] = {}
    for corner in path.corners:
        level, across = (corner.x, corner.y) if along else (corner.y, corner.x)
        levels.setdefault(round(level, 6), []).append(across)
    return min(max(found) - min(found) for found in levels.values())


_TOLD: Mapping[str, Callable[[Cut, Figures], tuple[str, ...]]] = {
    MOULDING: _moulding, "dovetail": _dovetail, V_GROOVE: _v_groove
}  # fmt: skip
