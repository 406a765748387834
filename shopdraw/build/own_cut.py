"""A person's own holes and notches: in a board that there is, each with its reason."""

from __future__ import annotations

from shopdraw.build.bench import Bench, Blank
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.relief import rounded
from shopdraw.piece.design import CutTable
from shopdraw.shape.path import Path, circle, rectangle
from shopdraw.wood.board import Face

_EDGES = (Face.NEAR, Face.FAR)
_ENDS = (Face.FOOT, Face.HEAD)


def lay_own_cuts(bench: Bench, plan: CasePlan) -> None:
    """Cut them when all else stands; one whose board is gone stays in the file, and a rule tells of it."""
    for key, table in plan.design.cut.items():
        blank = bench.blanks.get(table.board)
        if blank is not None:
            _cut(blank, key, table)


def own_id(board: str, key: str) -> str:
    """The id of a person's own cut."""
    return f"own:{board}:{key}"


def _cut(blank: Blank, key: str, table: CutTable) -> None:
    face = Face(table.face)
    middle = _middle(blank, face, table)
    outline = _outline(middle, table)
    low, high = blank.low, blank.high
    axis = {Face.FACE: 2, Face.BACK: 2, Face.NEAR: 1, Face.FAR: 1, Face.FOOT: 0, Face.HEAD: 0}[face]
    from_high = face in (Face.FACE, Face.FAR, Face.HEAD)
    floor = None
    if table.depth is not None and table.depth < high[axis] - low[axis] - 1e-6:
        floor = high[axis] - table.depth if from_high else low[axis] + table.depth
    kind = "bore" if table.shape == "round" else "notch"
    blank.sink(kind, face, outline, floor=floor, id=own_id(blank.id, key), purpose=table.reason or "own cut")


def _middle(blank: Blank, face: Face, table: CutTable) -> tuple[float, float]:
    """Its middle in the face's own two coordinates, from where a person measures."""
    from_edge = table.across if face not in _ENDS else table.along
    v = blank.low[1] + from_edge if blank.reference_edge == "near" else blank.high[1] - from_edge
    if face in _EDGES:
        return blank.low[0] + table.along, blank.high[2] - table.across
    if face in _ENDS:
        return v, blank.high[2] - table.across
    return blank.low[0] + table.along, v


def _outline(middle: tuple[float, float], table: CutTable) -> Path:
    if table.shape == "round":
        return circle(middle, table.diameter / 2)
    x, y = middle
    path = rectangle(x - table.length / 2, y - table.width / 2, x + table.length / 2, y + table.width / 2)
    return rounded(path, table.radius) if table.radius else path
