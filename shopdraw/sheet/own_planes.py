"""Cutting planes that a person moved or added."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from shopdraw.shape.path import Point
from shopdraw.sheet.extent import whole
from shopdraw.sheet.own import Nowhere, OwnPlane
from shopdraw.sheet.planes import CuttingPlane, off_faces
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE
from shopdraw.view.section import Plane
from shopdraw.wood.assembly import Assembly

LETTERS = "ABCDEFGHJKLMNPRTUVW"
"""Letters of sections; I, O, Q, S, X, Y and Z are read as figures or stand for directions (ASME Y14.3 practice)."""
WAYS = {"front-to-back": 0, "side-to-side": 1, "level": 2}
_SQUARE = 0.999


def with_own_planes(
    assembly: Assembly, planes: Sequence[CuttingPlane], own: Sequence[OwnPlane]
) -> tuple[tuple[CuttingPlane, ...], tuple[Nowhere, ...]]:
    """The planes with a person's own, by letter, and which tables do nothing.

    Args:
        assembly: the piece.
        planes: that it has of itself.
        own: moved or added ones.
    """
    held = {plane.letter: plane for plane in planes}
    nowhere: list[Nowhere] = []
    for table in own:
        axis = _axis(held.get(table.letter), table)
        if isinstance(axis, str):
            nowhere.append(Nowhere(table.address, axis))
            continue
        box = whole(assembly)
        low, high = box[axis], box[axis + 3]
        if not low < table.at < high:
            nowhere.append(Nowhere(table.address, f"{table.at:g} mm lies outside the piece, {low:g} to {high:g} mm"))
            continue
        old = held.get(table.letter)
        across = old is not None and old.on == "front"
        made = _plane(assembly, table.letter, axis, off_faces(table.at, assembly.boards, axis), across=across)
        held[table.letter] = replace(made, shows=old.shows) if old is not None else made
    return tuple(held[letter] for letter in sorted(held)), tuple(nowhere)


def _axis(old: CuttingPlane | None, table: OwnPlane) -> int | str:
    """The axis that the plane is square to, or why there can't be such a plane."""
    if table.letter not in LETTERS or len(table.letter) != 1:
        return f"{table.letter!r} is no letter of a section; use one of {', '.join(LETTERS)}"
    if old is None:
        if not table.cuts:
            return f"there is no section {table.letter}–{table.letter} to move; with cuts = \"…\" it would be added"
        return WAYS[table.cuts]
    way = old.plane.direction.toward
    axis = next((i for i, share in enumerate(way) if abs(share) > _SQUARE), -1)
    if axis < 0:
        return f"section {table.letter}–{table.letter} lies aslant with the lid and stays where that is"
    if table.cuts and WAYS[table.cuts] != axis:
        running = next(name for name, number in WAYS.items() if number == axis)
        return f"section {table.letter}–{table.letter} runs {running}; it can be moved, not turned"
    return axis


def _plane(assembly: Assembly, letter: str, axis: int, at: float, *, across: bool) -> CuttingPlane:
    box = whole(assembly)
    point = (at if axis == 0 else 0.0, at if axis == 1 else 0.0, at if axis == 2 else 0.0)
    ends: tuple[Point, Point]
    if axis == 0:
        ends = (at, box.z0), (at, box.z1)
        return CuttingPlane(letter, Plane(RIGHT_SIDE, point), "front", ends, (-1.0, 0.0))
    if axis == 1:
        ends = (at, box.z0), (at, box.z1)
        return CuttingPlane(letter, Plane(FRONT, point), "side", ends, (1.0, 0.0))
    if across:
        return CuttingPlane(letter, Plane(PLAN, point), "front", ((box.x0, at), (box.x1, at)), (0.0, -1.0))
    ends = (box.y0, at), (box.y1, at)
    return CuttingPlane(letter, Plane(PLAN, point), "side", ends, (0.0, -1.0))
